import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { InputError, type Problem } from '../../core/quantity/problem.js';
import { coreBridge, type Questions } from '../../core/worker/bridge.js';
import type { Layer } from '../../core/worker/layer.js';
import type { AnswerOf, AskOptions, RequestOf } from '../../core/worker/protocol.js';

/** How a request is answered: at once where it can be. A promise that rejects with an AbortError is of a request that is not wanted any more. */
export type AnswerWay<Answer, R> = (request: R, options: WayOptions) => Answer | Promise<Answer>;

export interface WayOptions extends AskOptions {
  /** Whether no newer request has come. */
  isNewest(): boolean;
}

/**
 * Has a question answered by the core, in its worker where there is one.
 *
 * @param layersFor those that solve the request's source besides, where it has one
 */
export function askCore<N extends keyof Questions & string, R extends RequestOf<Questions, N>>(
  question: N,
  layers: readonly Layer[],
  layersFor: (request: R) => readonly Layer[] | Promise<readonly Layer[]> = () => [],
): AnswerWay<AnswerOf<Questions, N>, R> {
  const ask = (request: R, options: WayOptions, more: readonly Layer[]) => {
    // While they were fetched a newer one may have come.
    if (!options.isNewest()) throw new DOMException(question, 'AbortError');
    const bridge = coreBridge();
    bridge.join([...layers, ...more]);
    return bridge.ask(question, request, options);
  };
  return (request, options) => {
    const more = layersFor(request);
    return more instanceof Promise ? more.then((late) => ask(request, options, late)) : ask(request, options, more);
  };
}

/**
 * Keeps one question of a host answered. The last good answer stays while a newer request is under way or has problems: what is
 * on the sheet is never taken away, only marked as no longer current.
 */
export class AnswerController<Answer, R> implements ReactiveController {
  answer?: Answer;
  problems: Problem[] = [];
  fault?: string;
  /** The request that `answer` belongs to. */
  answered?: R;
  #host: ReactiveControllerHost;
  #way: AnswerWay<Answer, R>;
  #onAnswer: (() => void) | undefined;
  #abort = new AbortController();
  #pending: Promise<void> | undefined;
  #latest = 0;
  /** The number of the request that `answer` stands for: no older one takes its place. */
  #shown = 0;
  #held: { answer: Answer; answered: R } | undefined;
  #isEditing = false;
  #onFallBack: (() => void) | undefined;

  /**
   * @param onAnswer called after each good answer, before the host renders it
   * @param onFallBack called when the answer from before an edit stands again
   */
  constructor(host: ReactiveControllerHost, way: AnswerWay<Answer, R>, onAnswer?: () => void, onFallBack?: () => void) {
    this.#host = host;
    this.#way = way;
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
    const options = { slot: this, signal, isNewest: () => number === this.#latest };
    try {
      const found = this.#way(request, options);
      const answer = found instanceof Promise ? await found : found;
      // A newer one may have been answered at once.
      if (number < this.#shown) return;
      this.#shown = number;
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
          // What was half typed before may still be on its way: it stays out.
          this.#shown = number;
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
