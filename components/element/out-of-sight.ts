import type { LitElement, ReactiveController } from 'lit';
import { inTurn } from './in-turn.js';

/**
 * An element this near below the window is drawn as if it stood in it. One above is not: each grows in its turn, lest the reader's place
 * is lost.
 */
const NEAR = '0px 0px 600px 0px';

/**
 * An element that is out of sight is drawn late: the first time, and at every step of a drag. It is drawn when it comes near, when
 * somebody waits for it, for print, and in its turn when the page rests. What it answers is never late.
 */
export class OutOfSight implements ReactiveController {
  readonly #host: LitElement;
  readonly #painted: () => Promise<unknown> | undefined;
  #observer: IntersectionObserver | undefined;
  /** Undefined until the browser has told. */
  #isSeen: boolean | undefined;
  #waiting: Promise<void> | undefined;
  #release = () => {};
  #leaveRow = () => {};

  /** @param painted resolves when nothing of the element waits for a frame any more */
  constructor(host: LitElement, painted: () => Promise<unknown> | undefined) {
    this.#host = host;
    this.#painted = painted;
    host.addController(this);
  }

  hostConnected(): void {
    this.#observer = new IntersectionObserver(
      (entries) => {
        this.#isSeen = entries.at(-1)!.isIntersecting;
        if (this.#isSeen) this.show();
      },
      { rootMargin: NEAR },
    );
    this.#observer.observe(this.#host);
    if (this.#waiting) this.#getInRow();
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
    this.#isSeen = undefined;
    this.#leaveRow();
  }

  /** What the first drawing waits for. */
  get first(): Promise<void> {
    return this.#isSeen ? Promise.resolve() : this.#wait();
  }

  /** What the next drawing waits for; undefined where it need not. A dialog may be in sight where its element is not. */
  get wait(): Promise<void> | undefined {
    return this.#isSeen === false && !this.#host.matches(':focus-within') ? this.#wait() : undefined;
  }

  /** Draws what waits. */
  show(): void {
    this.#leaveRow();
    this.#release();
  }

  #wait(): Promise<void> {
    if (!this.#waiting) {
      this.#waiting = new Promise((resolve) => {
        this.#release = () => {
          this.#waiting = undefined;
          this.#release = () => {};
          resolve();
        };
      });
      if (this.#host.isConnected) this.#getInRow();
    }
    return this.#waiting;
  }

  #getInRow(): void {
    this.#leaveRow();
    this.#leaveRow = inTurn(async () => {
      this.#release();
      // What waited for this goes on before the next has its turn.
      await Promise.resolve();
      if (this.#host.isUpdatePending) await this.#host.updateComplete;
      await this.#painted();
    });
  }
}
