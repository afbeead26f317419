import { InputError } from '../../../core/quantity/problem.js';

/** Where this code runs: a worker has no document. */
const where = () => ('document' in globalThis ? 'page' : 'worker');

/** Counts, because a loop without effect is nothing to a minifier. */
let rounds = 0;

function busy(untilMs: number): void {
  while (Date.now() < untilMs) rounds++;
}

let answered = 0;

/** Questions that do what questions can do, and what they must not. */
export const questions = {
  sum: ({ numbers }: { numbers: Float64Array }) => ({
    sum: numbers.reduce((a, b) => a + b, 0),
    numbers,
    where: where(),
    /** Which answer of this core it is: a fresh core starts at 1. */
    turn: ++answered,
    rounds,
  }),

  refuse: ({ drop }: { drop: number }): { drop: number } => {
    throw new InputError([
      { code: 'out-of-range', path: 'drop', value: drop, limit: 150 },
      { code: 'missing', path: 'lowerArm.ball', value: undefined },
      { code: 'ambiguous', path: 'camber', value: '1.30', choices: [1.3, 1.5] },
    ]);
  },

  fail: (_request: { any?: string }): number => {
    throw new TypeError('no such link');
  },

  /** Whether the language is the strict one here, as in modules. */
  strict: (_request: object) =>
    (function (this: unknown) {
      return this === undefined;
    })(),

  /** A mistake in a question: methods do not cross. */
  methods: (_request: object) => ({ value: () => 1 }),

  /** Keeps its thread busy until that time, ms since 1970. */
  busyUntil: ({ until }: { until: number }) => {
    busy(until);
    return where();
  },

  /** Answers, and ends its own worker from within: no error event. */
  quit: (_request: object) => {
    (globalThis as unknown as { close(): void }).close();
    return where();
  },

  /** Ends its own worker from within half way, when asked before that time: no answer, no error event. */
  *quitBefore({ until }: { until: number }): Generator<void, string> {
    if (Date.now() < until) {
      (globalThis as unknown as { close(): void }).close();
      busy(Date.now() + 20);
      yield;
    }
    return where();
  },

  /** Throws outside of any call when asked before that time, while the call goes on. */
  *crashBefore({ until }: { until: number }): Generator<void, string> {
    if (Date.now() < until) {
      setTimeout(() => {
        throw new Error('out of thin air');
      });
      for (;;) {
        busy(Date.now() + 1);
        yield;
      }
    }
    return where();
  },

  /** Work of about `steps` ms, 1 ms a step; sends `steps done` to the channel when stopped or finished. */
  *steps({ steps, channel }: { steps: number; channel?: string }): Generator<void, { done: number; where: string }> {
    let done = 0;
    try {
      for (; done < steps; done++) {
        busy(Date.now() + 1);
        yield;
      }
    } finally {
      if (channel) {
        const out = new BroadcastChannel(channel);
        out.postMessage(done);
        out.close();
      }
    }
    return { done, where: where() };
  },
};
