import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { InputError, type Problem } from '../../core/quantity/problem.js';
import { coreBridge, type Questions } from '../../core/worker/bridge.js';
import type { Layer } from '../../core/worker/layer.js';
import type { AnswerOf, RequestOf } from '../../core/worker/protocol.js';

type Answer<N extends keyof Questions> = AnswerOf<Questions, N>;

/** Which question, and which layers of the core answer it. */
export interface AnswerWay<N extends keyof Questions, R> {
  readonly question: N;
  readonly layers: readonly Layer[];
  /** Those that solve the request's source besides, where it has one. */
  readonly layersFor?: (request: R) => readonly Layer[] | Promise<readonly Layer[]>;
  /** What is added to an answer on the page, by what only some requests need. */
  readonly finish?: (request: R, answer: Answer<N>) => Answer<N> | Promise<Answer<N>>;
}

/**
 * Keeps one question of a host answered. The last good answer stays while a newer request is under way or has problems: what is
 * on the sheet is never taken away, only marked as no longer current.
 */
export class AnswerController<N extends keyof Questions, R extends RequestOf<Questions, N> = RequestOf<Questions, N>>
  implements ReactiveController
{
  answer?: Answer<N>;
  problems: Problem[] = [];
  fault?: string;
  /** The request that `answer` belongs to. */
  answered?: R;
  #host: ReactiveControllerHost;
  #to: AnswerWay<N, R>;
  #onAnswer: (() => void) | undefined;
  #abort = new AbortController();
  #pending: Promise<void> | undefined;
  #latest = 0;
  #held: { answer: Answer<N>; answered: R } | undefined;
  #isEditing = false;
  #onFallBack: (() => void) | undefined;

  /**
   * @param onAnswer called after each good answer, before the host renders it
   * @param onFallBack called when the answer from before an edit stands again
   */
  constructor(host: ReactiveControllerHost, to: AnswerWay<N, R>, onAnswer?: () => void, onFallBack?: () => void) {
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
    const options = { slot: this, signal };
    try {
      const { question, layers, layersFor, finish } = this.#to;
      const coming = layersFor?.(request) ?? [];
      const more = coming instanceof Promise ? await coming : coming;
      // While they were fetched a newer one may have come.
      if (number !== this.#latest) return;
      const bridge = coreBridge();
      bridge.join([...layers, ...more]);
      const found = await bridge.ask(question, request, options);
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
