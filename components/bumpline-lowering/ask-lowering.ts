import type { FittedSource } from '../../core/answers/camber-source.js';
import type { LoweringAnswer, LoweringRequest } from '../../core/answers/lowering.js';
import type { ReadingsSource } from '../../core/answers/readings-source.js';
import { InputError } from '../../core/quantity/problem.js';
import { loweringBridge } from '../../core/worker/lowering-bridge.js';
import type { AskOptions } from '../../core/worker/protocol.js';
import type { Asking } from '../shared/answer-controller.js';

/** Readings are never changed in place: the same objects say the same. */
const isSame = (a: ReadingsSource, b: ReadingsSource): boolean =>
  a.degree === b.degree &&
  a.zeroAt === b.zeroAt &&
  a.readings.length === b.readings.length &&
  a.readings.every((reading, i) => reading === b.readings[i]);

/**
 * Asks what lowering does. A car that is answered by readings has them made a curve first, by the core that knows readings, which is
 * fetched only then; while only heights change, the last curve serves.
 */
export function askLowering(): Asking<LoweringRequest, LoweringAnswer> {
  let fetched: Promise<typeof import('../../core/worker/readings-bridge.js')> | undefined;
  let last: { source: ReadingsSource; fitted: FittedSource } | undefined;
  let asked = 0;
  let latest = 0;

  async function curveOf(source: ReadingsSource, options: AskOptions): Promise<FittedSource> {
    // One promise for all, so that they are asked in order; after a failure it is tried again.
    fetched ??= import('../../core/worker/readings-bridge.js').catch((error) => {
      fetched = undefined;
      throw error;
    });
    const { readingsBridge } = await fetched;
    try {
      const fitted: FittedSource = {
        kind: 'fitted',
        ...(await readingsBridge().ask('curveOfReadings', source, options)),
      };
      last = { source, fitted };
      return fitted;
    } catch (error) {
      // What is wrong with the readings is told together with what is wrong with the rest.
      if (error instanceof InputError) return { kind: 'refused', problems: error.problems };
      throw error;
    }
  }

  return async (request, options) => {
    const number = ++asked;
    const { source } = request;
    const solvable =
      source.kind !== 'readings'
        ? source
        : last && isSame(last.source, source)
          ? last.fitted
          : await curveOf(source, options);
    // A newer call went past while this one waited for its curve: it must not take that one's place in the slot.
    if (number < latest) throw new DOMException('Lowering was asked again meanwhile.', 'AbortError');
    latest = number;
    return loweringBridge().ask('lowering', { ...request, source: solvable }, options);
  };
}
