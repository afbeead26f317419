import { expose } from 'comlink';
import { InputError } from '../quantity/problem.js';
import { KeptSources, UNKNOWN } from './kept-sources.js';
import type { CoreApi, MadeLayer, NumberedSource, Outcome, QuestionRecord } from './protocol.js';
import { yieldToEventLoop } from './yield-to-event-loop.js';

/** A slice of a generator's work ends before it is this long, ms: half a frame at 60 Hz is left to the page. */
const SLICE_MS = 8;

/** Makes the core of some layers, by their names; more may be put there later. */
export function createCore<Q extends QuestionRecord>(layers: Readonly<Record<string, MadeLayer>>): CoreApi<Q> {
  const sources = new KeptSources(layers);
  /** The calls being pumped; true once cancelled. */
  const pumped = new Map<number, boolean>();

  async function pump(id: number, steps: Generator, announce?: () => void): Promise<Outcome<unknown>> {
    pumped.set(id, false);
    try {
      for (;;) {
        let now = performance.now();
        const end = now + SLICE_MS;
        let longest = 0;
        do {
          const before = now;
          const step = steps.next();
          if (step.done) return { ok: true, value: step.value };
          now = performance.now();
          longest = Math.max(longest, now - before);
        } while (now + longest < end);
        await yieldToEventLoop();
        if (pumped.get(id)) {
          steps.return(undefined);
          return { ok: false, cancelled: true };
        }
        announce?.();
      }
    } catch (error) {
      return failure(error);
    } finally {
      pumped.delete(id);
    }
  }

  function answer(id: number, question: string, request: unknown, announce?: () => void) {
    announce?.();
    try {
      const questions = Object.values(layers).find((layer) =>
        Object.hasOwn(layer.questions ?? {}, question),
      )?.questions;
      if (!questions) throw new RangeError(`There is no question "${question}".`);
      const asked = sources.solvedIn(request);
      if (asked === UNKNOWN) return { ok: false, unknown: (request as { source: NumberedSource }).source.number };
      const value = (questions[question] as (request: unknown) => unknown)(asked);
      return isGenerator(value) ? pump(id, value, announce) : { ok: true, value };
    } catch (error) {
      return failure(error);
    }
  }

  function cancel(id: number): void {
    if (pumped.has(id)) pumped.set(id, true);
  }

  return {
    answer: answer as CoreApi<Q>['answer'],
    cancel,
    serve(scope) {
      expose(
        {
          answer: (id: number, question: string, request: unknown) =>
            answer(id, question, request, () => scope.postMessage(id)),
          cancel,
        },
        scope,
      );
      scope.postMessage('ready');
    },
  };
}

function isGenerator(value: unknown): value is Generator {
  return typeof (value as Generator | null | undefined)?.next === 'function';
}

function failure(error: unknown): Outcome<never> {
  return error instanceof InputError ? { ok: false, problems: error.problems } : { ok: false, fault: String(error) };
}
