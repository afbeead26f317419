import { expose, wrap } from 'comlink';
import { vi } from 'vitest';
import { createCore } from '../../../core/worker/core-api.js';
import type { Layer } from '../../../core/worker/layer.js';
import type { CoreApi, Outcome, QuestionRecord, WireOutcome } from '../../../core/worker/protocol.js';

/** A call as it arrived in a fake worker. */
export interface ArrivedCall {
  id: number;
  question: string;
  request: unknown;
  answer(value: unknown): void;
  end(outcome: WireOutcome<unknown>): void;
}

/**
 * Stands in for the browser's Worker: messages are cloned and arrive later, calls arrive through Comlink, and the test decides what
 * becomes of them. Nothing happens after `terminate`, as with a real one.
 */
export class FakeWorker extends EventTarget {
  static all: FakeWorker[] = [];
  /** What the constructor throws, if anything. */
  static blocked: Error | undefined;
  /** Whether workers say by themselves that they are ready. */
  static prompt = true;

  static get last(): FakeWorker {
    return FakeWorker.all.at(-1) as FakeWorker;
  }

  readonly calls: ArrivedCall[] = [];
  readonly cancelled: number[] = [];
  terminated = false;
  #scope = new EventTarget();

  readonly url: string;

  constructor(url: string) {
    super();
    this.url = url;
    if (FakeWorker.blocked) throw FakeWorker.blocked;
    FakeWorker.all.push(this);
    expose(
      {
        answer: (id: number, question: string, request: unknown) =>
          new Promise((end) => {
            this.calls.push({ id, question, request, end, answer: (value) => end({ ok: true, value }) });
          }),
        cancel: (id: number) => {
          this.cancelled.push(id);
        },
      },
      {
        postMessage: (message: unknown) => this.say(message),
        addEventListener: this.#scope.addEventListener.bind(this.#scope),
        removeEventListener: this.#scope.removeEventListener.bind(this.#scope),
      },
    );
    if (FakeWorker.prompt) this.say('ready');
  }

  /** Sends a message to the page. */
  say(data: unknown): void {
    this.#deliver(this, data);
  }

  fire(type: 'error' | 'messageerror', message?: string): void {
    this.dispatchEvent(Object.assign(new Event(type, { cancelable: true }), message && { message }));
  }

  postMessage(data: unknown): void {
    this.#deliver(this.#scope, data);
  }

  terminate(): void {
    this.terminated = true;
  }

  #deliver(target: EventTarget, data: unknown): void {
    const copy = structuredClone(data);
    queueMicrotask(() => {
      if (!this.terminated) target.dispatchEvent(new MessageEvent('message', { data: copy }));
    });
  }
}

/** Lets everything happen that needs no timer. */
export async function settle(): Promise<void> {
  for (let i = 0; i < 5; i++) await new Promise((resume) => setImmediate(resume));
}

export function useFakeWorkers(): void {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  vi.stubGlobal('Worker', FakeWorker);
  FakeWorker.all = [];
  FakeWorker.blocked = undefined;
  FakeWorker.prompt = true;
}

export function endFakeWorkers(): void {
  vi.useRealTimers();
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
}

/** A core for the page that says it ran there. */
export function pageCore(): CoreApi<TestQuestions> {
  const running = new Map<number, (outcome: Outcome<never>) => void>();
  return {
    answer: (id: number, question: string, request: unknown) =>
      question === 'wait'
        ? new Promise<Outcome<never>>((end) => running.set(id, end))
        : { ok: true, value: { page: request } },
    cancel: (id: number) => running.get(id)?.({ ok: false, cancelled: true }),
    serve: () => {},
  } as CoreApi<TestQuestions>;
}

/** A base whose core is the given one. */
export const baseOf = (createCore: () => unknown): Layer => ({
  name: 'base',
  needs: [],
  make: () => ({ createCore, wrap }) as never,
});

/** The core of one layer with these questions. */
export const coreOf = <Q extends QuestionRecord>(questions: Q): CoreApi<Q> => createCore<Q>({ test: { questions } });

export interface TestQuestions extends QuestionRecord {
  work: (request: unknown) => unknown;
  wait: (request: unknown) => unknown;
}
