import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { InputError, type Problem } from '../../core/quantity/problem.js';
import type { Bridge } from '../../core/worker/create-bridge.js';
import type { AnswerOf, AskOptions, QuestionRecord, RequestOf } from '../../core/worker/protocol.js';

let counter = 0;

/** Which question, of which core function, and what has to be done to a request before it can be asked. */
export interface AnswerWay<Q extends QuestionRecord, N extends keyof Q & string, R> {
  bridge: () => Bridge<Q>;
  question: N;
  ready: (request: R, options: AskOptions) => RequestOf<Q, N> | Promise<RequestOf<Q, N>>;
  /** What is added to an answer on the page, by what only some requests need. */
  finish?: (request: R, answer: AnswerOf<Q, N>) => AnswerOf<Q, N> | Promise<AnswerOf<Q, N>>;
}

/**
 * Keeps one question of a host answered. The last good answer stays while a newer request is under way or has problems: what is
 * on the sheet is never taken away, only marked as no longer current.
 */
export class AnswerController<Q extends QuestionRecord, N extends keyof Q & string, R = RequestOf<Q, N>>
  implements ReactiveController
{
  answer?: AnswerOf<Q, N>;
  problems: Problem[] = [];
  fault?: string;
  /** The request that `answer` belongs to. */
  answered?: R;
  #host: ReactiveControllerHost;
  #to: AnswerWay<Q, N, R>;
  #onAnswer: (() => void) | undefined;
  #slot = `answer-${counter++}`;
  #abort = new AbortController();
  #pending: Promise<void> | undefined;
  #latest = 0;
  #held: { answer: AnswerOf<Q, N>; answered: R } | undefined;
  #isEditing = false;
  #onFallBack: (() => void) | undefined;

  /**
   * @param onAnswer called after each good answer, before the host renders it
   * @param onFallBack called when the answer from before an edit stands again
   */
  constructor(host: ReactiveControllerHost, to: AnswerWay<Q, N, R>, onAnswer?: () => void, onFallBack?: () => void) {
    this.#host = host;
    this.#to = to;
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

  ask(request: R): void {
    const number = ++this.#latest;
    const pending = this.#run(request, number).finally(() => {
      if (this.#pending === pending) this.#pending = undefined;
    });
    this.#pending = pending;
  }

  async #run(request: R, number: number): Promise<void> {
    const { signal } = this.#abort;
    const options = { slot: this.#slot, signal };
    try {
      const { bridge, question, ready, finish } = this.#to;
      const made = ready(request, options);
      const asked = made instanceof Promise ? await made : made;
      // While it was made ready a newer one may have come.
      if (number !== this.#latest) return;
      const found = await bridge().ask(question, asked, options);
      const finished = finish?.(request, found) ?? found;
      const answer = finished instanceof Promise ? await finished : finished;
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
