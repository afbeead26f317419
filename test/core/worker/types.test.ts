import { describe, expectTypeOf, it } from 'vitest';
import type { Bridge } from '../../../core/worker/create-bridge.js';
import type { AnswerOf, CoreApi, RequestOf } from '../../../core/worker/protocol.js';

interface Answer {
  change: number;
}
declare const questions: {
  plain: (request: { drop: number }) => Answer;
  sliced: (request: { seed: string }) => Generator<void, Answer>;
  either: (request: { fast: boolean }) => Answer | Generator<void, Answer>;
};
type Q = typeof questions;

/** Checked by tsc over the tests; here they hold by being compiled. */
describe('the types of questions', () => {
  it('unwrap the answer of a generator', () => {
    expectTypeOf<AnswerOf<Q, 'plain'>>().toEqualTypeOf<Answer>();
    expectTypeOf<AnswerOf<Q, 'sliced'>>().toEqualTypeOf<Answer>();
    expectTypeOf<AnswerOf<Q, 'either'>>().toEqualTypeOf<Answer>();
  });

  it('tie each request to its question', () => {
    expectTypeOf<RequestOf<Q, 'sliced'>>().toEqualTypeOf<{ seed: string }>();
    const use = (bridge: Bridge<Q>) => {
      expectTypeOf(bridge.ask('either', { fast: true }, { slot: 'a' })).toEqualTypeOf<Promise<Answer>>();
      // @ts-expect-error: a drop is not a seed
      void bridge.ask('sliced', { drop: 30 }, { slot: 'a' });
      // @ts-expect-error: nobody answers that
      void bridge.ask('raise', { drop: 30 }, { slot: 'a' });
    };
    expectTypeOf(use).parameter(0).toEqualTypeOf<Bridge<Q>>();
    expectTypeOf<CoreApi<Q>>().not.toBeAny();
  });
});
