import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { InputError, type Problem } from '../../core/quantity/problem.js';
import type { AskOptions } from '../../core/worker/protocol.js';

/** Asks the core one question, as `Ask` does: calls of one slot settle in order, and the latest is never dropped. */
export type Asking<Request, Answer> = (request: Request, options: AskOptions) => Promise<Answer>;

let counter = 0;

/**
 * Keeps one question of a host answered. The last good answer stays while a newer request is under way or has problems: what is
 * on the sheet is never taken away, only marked as no longer current.
 */
export class AnswerController<Request, Answer> implements ReactiveController {
  answer?: Answer;
  problems: Problem[] = [];
  fault?: string;
  /** The request that `answer` belongs to. */
  answered?: Request;
  #host: ReactiveControllerHost;
  #asking: Asking<Request, Answer>;
  #onAnswer: (() => void) | undefined;
  #slot = `answer-${counter++}`;
  #abort = new AbortController();
  #pending: Promise<void> | undefined;
  #latest = 0;
  #held: { answer: Answer; answered: Request } | undefined;
  #isEditing = false;
  #onFallBack: (() => void) | undefined;

  /**
   * @param onAnswer called after each good answer, before the host renders it
   * @param onFallBack called when the answer from before an edit stands again
   */
  constructor(
    host: ReactiveControllerHost,
    asking: Asking<Request, Answer>,
    onAnswer?: () => void,
    onFallBack?: () => void,
  ) {
    this.#host = host;
    this.#asking = asking;
    this.#onAnswer = onAnswer;
    this.#onFallBack = onFallBack;
    host.addController(this);
  }

  /**
   * An edit begins. Until it ends, a request with problems brings back the answer from before the edit, not that of a number
   * that was half typed on the way.
   */
  beginEdit(): void {
    this.#isEditing = true;
    if (this.answer && this.answered) this.#held ??= { answer: this.answer, answered: this.answered };
  }

  endEdit(): void {
    this.#isEditing = false;
    if (!this.#pending) this.#held = undefined;
  }

  hostConnected(): void {
    if (this.#abort.signal.aborted) this.#abort = new AbortController();
  }

  hostDisconnected(): void {
    this.#abort.abort();
  }

  /** Resolves when the latest request has its answer, problem or fault. Never rejects. */
  async settle(): Promise<void> {
    while (this.#pending) await this.#pending;
  }

  ask(request: Request): void {
    const number = ++this.#latest;
    const pending = this.#run(request, number).finally(() => {
      if (this.#pending === pending) this.#pending = undefined;
    });
    this.#pending = pending;
  }

  async #run(request: Request, number: number): Promise<void> {
    const { signal } = this.#abort;
    try {
      const answer = await this.#asking(request, { slot: this.#slot, signal });
      this.answer = answer;
      this.answered = request;
      if (number === this.#latest) {
        this.problems = [];
        delete this.fault;
      }
      this.#onAnswer?.();
    } catch (error) {
      if (signal.aborted || (error instanceof DOMException && error.name === 'AbortError')) return;
      // A newer request is on its way: it will speak for itself.
      if (number !== this.#latest) return;
      if (error instanceof InputError) {
        this.problems = error.problems;
        delete this.fault;
        if (this.#held) {
          Object.assign(this, this.#held);
          this.#onFallBack?.();
        }
      } else {
        this.fault = error instanceof Error ? error.message : String(error);
      }
    }
    if (number === this.#latest && !this.#isEditing) this.#held = undefined;
    this.#host.requestUpdate();
  }
}
