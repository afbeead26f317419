import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { pageWide } from '../../core/worker/page-wide.js';

/** An element this near to the window is drawn as if it stood in it. */
const NEAR = '300px';
/** After a rest as long as this, ms, whatever is out of sight says the same as what is in sight. */
const REST_MS = 350;

/** When somebody last changed a car in any element of the page, whichever copy of this module it came with; ms. */
const last = pageWide('last-change', () => ({ change: Number.NEGATIVE_INFINITY }));

/**
 * An element that is out of sight is not drawn at every step of a drag: it is when it comes near, when somebody waits for it, for
 * print, and after a rest at the latest.
 */
export class OutOfSight implements ReactiveController {
  readonly #host: ReactiveControllerHost & HTMLElement;
  #observer: IntersectionObserver | undefined;
  #isSeen = true;
  #waiting: Promise<void> | undefined;
  #release = () => {};

  constructor(host: ReactiveControllerHost & HTMLElement) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    this.#observer = new IntersectionObserver(
      (entries) => {
        this.#isSeen = entries.at(-1)!.isIntersecting;
        if (this.#isSeen) this.#release();
      },
      { rootMargin: NEAR },
    );
    this.#observer.observe(this.#host);
    addEventListener('beforeprint', this.show);
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
    removeEventListener('beforeprint', this.show);
    this.show();
  }

  /** What the next drawing waits for; undefined where it need not. */
  get wait(): Promise<void> | undefined {
    if (this.#isSeen || performance.now() - last.change > REST_MS) return undefined;
    this.#waiting ??= new Promise((resolve) => {
      this.#release = () => {
        this.#waiting = undefined;
        this.#release = () => {};
        resolve();
      };
      const rest = () => {
        const left = last.change + REST_MS - performance.now();
        if (left > 0) setTimeout(rest, left);
        else this.#release();
      };
      setTimeout(rest, REST_MS);
    });
    return this.#waiting;
  }

  /** Somebody changes a car: what is out of sight, of whatever element, waits until they rest. */
  noteChange(): void {
    last.change = performance.now();
  }

  /** Draws what waits. */
  readonly show = (): void => this.#release();
}
