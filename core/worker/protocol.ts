import type { SolvedData } from '../answers/solved.js';
import type { SolvedSource, TriedSource } from '../curve-sources/solved-source.js';
import type { AnySource } from '../curve-sources/source.js';
import type { Problem } from '../quantity/problem.js';

/**
 * Questions by name. Each takes one plain request and gives one plain answer (both survive a structured clone), or a generator that
 * yields nothing every millisecond or so and returns the answer: needed for work over 10 ms.
 */
export type QuestionRecord = Record<string, (request: never) => unknown>;

/** What the question named N takes: where it answers from a source, that is asked with; the core solves it once and keeps it. */
export type RequestOf<Q extends QuestionRecord, N extends keyof Q> = Asked<Parameters<Q[N]>[0]>;

type Asked<R> = R extends { source: SolvedData | TriedSource } ? Omit<R, 'source'> & { source: AnySource } : R;

/** What a layer of the core adds to it. */
export interface MadeLayer {
  questions?: QuestionRecord;
  /** By the kind of source. */
  solvers?: Record<string, (source: never) => SolvedSource>;
}

/** A source on the wire: the core keeps what it has solved under the page's number for it. */
export interface NumberedSource {
  number: number;
  /** The source itself, the first time. */
  given?: unknown;
  /** What it was solved to elsewhere, in its place. */
  solved?: SolvedData;
}

/** What the question named N answers in the end, whether it is a generator or not. */
export type AnswerOf<Q extends QuestionRecord, N extends keyof Q> = Finished<ReturnType<Q[N]>>;

type Finished<A> = A extends Generator<unknown, infer Answer, never> ? Answer : A;

/** An answer, what is wrong with the request, or what went wrong here. Plain data, because errors lose their class on the way. */
export type Reply<T> = { ok: true; value: T } | { ok: false; problems: Problem[] } | { ok: false; fault: string };

/** What a call comes to: a reply, or word that a generator was stopped before its end. */
export type Outcome<T> = Reply<T> | { ok: false; cancelled: true };

/** What crosses the wire: that, or word that the source of a number is not kept and has to be sent again. */
export type WireOutcome<T> = Outcome<T> | { ok: false; unknown: number };

export interface AskOptions {
  /** Who asks, by identity: copies of the code would count alike. Of one slot, one call is in flight and one waits; the latest wins. */
  slot: unknown;
  /** Drops the answer: the promise rejects with an AbortError. */
  signal?: AbortSignal | undefined;
}

/**
 * Asks a question of the core. Rejects with InputError (something is wrong with the request), WorkerFault (something is wrong with
 * the program) or a DOMException named AbortError (aborted, or a newer call of the same slot took its place).
 */
export type Ask<Q extends QuestionRecord> = <N extends keyof Q & string>(
  question: N,
  request: RequestOf<Q, N>,
  options: AskOptions,
) => Promise<AnswerOf<Q, N>>;

/** As `Ask`, with what is wrong as data; rejects with AbortError only. */
export type AskForReply<Q extends QuestionRecord> = <N extends keyof Q & string>(
  question: N,
  request: RequestOf<Q, N>,
  options: AskOptions,
) => Promise<Reply<AnswerOf<Q, N>>>;

/** The end of a worker (its own side) that calls arrive at. */
export interface ServeScope {
  postMessage(message: unknown, transfer?: Transferable[]): void;
  addEventListener(type: string, listener: EventListenerOrEventListenerObject): void;
  removeEventListener(type: string, listener: EventListenerOrEventListenerObject): void;
}

/** The computation as one object, the same in a worker and on the page. */
export interface CoreApi<Q extends QuestionRecord> {
  /**
   * Runs a question; never throws or rejects. A plain question is answered at once, a generator is pumped in slices with a macrotask
   * between them. `announce` is called before each slice, the first included.
   */
  answer<N extends keyof Q & string>(
    id: number,
    question: N,
    request: RequestOf<Q, N>,
    announce?: () => void,
  ): WireOutcome<AnswerOf<Q, N>> | Promise<WireOutcome<AnswerOf<Q, N>>>;
  /** Stops call `id` before its next slice. Nothing happens when it is not being pumped. */
  cancel(id: number): void;
  /** Answers calls that arrive at `scope`: posts 'ready', then the id of the call it works on before each of its slices. */
  serve(scope: ServeScope): void;
}

/** The core as the bridge sees it, wherever it runs; names are not checked any more here. */
export interface ServedCore {
  answer(id: number, question: string, request: unknown): Promise<WireOutcome<unknown>>;
  cancel(id: number): unknown;
}
