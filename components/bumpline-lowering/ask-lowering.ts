import type { CamberSource, SolvableSource } from '../../core/answers/camber-source.js';
import type { LoweringAnswer, LoweringRequest } from '../../core/answers/lowering.js';
import type { ReadingsSource } from '../../core/answers/readings-source.js';
import { InputError } from '../../core/quantity/problem.js';
import { loweringBridge } from '../../core/worker/lowering-bridge.js';
import type { AskOptions } from '../../core/worker/protocol.js';
import type { Asking } from '../shared/answer-controller.js';

/** Fetches a module when it is first wanted. One promise for all, so that they go on in order; after a failure it is tried again. */
function lazily<Module>(load: () => Promise<Module>): () => Promise<Module> {
  let coming: Promise<Module> | undefined;
  return () => {
    coming ??= load().catch((error) => {
      coming = undefined;
      throw error;
    });
    return coming;
  };
}

type PreparedSource = Extract<CamberSource, { kind: 'corner' | 'readings' }>;

/** Readings are never changed in place: the same objects say the same. */
const isSame = (a: ReadingsSource, b: ReadingsSource): boolean =>
  a.degree === b.degree &&
  a.zeroAt === b.zeroAt &&
  a.readings.length === b.readings.length &&
  a.readings.every((reading, i) => reading === b.readings[i]);

/**
 * Asks what lowering does. What only some cars need is fetched for them: a corner handed over is checked first, and readings are
 * made a curve first, by the core that knows readings; while only heights change, the last curve serves.
 */
export function askLowering(): Asking<LoweringRequest, LoweringAnswer> {
  const checker = lazily(() => import('../../core/document/check-corner.js'));
  const fitter = lazily(() => import('../../core/worker/readings-bridge.js'));
  let last: { source: ReadingsSource; fitted: SolvableSource } | undefined;
  let asked = 0;
  let latest = 0;

  async function prepared(source: PreparedSource, options: AskOptions): Promise<SolvableSource> {
    try {
      if (source.kind === 'corner') return { kind: 'checked', corner: (await checker()).checkCorner(source.corner) };
      const { readingsBridge } = await fitter();
      const solved = await readingsBridge().ask('curveOfReadings', source, options);
      const fitted: SolvableSource = { kind: 'fitted', ...solved };
      last = { source, fitted };
      return fitted;
    } catch (error) {
      if (error instanceof InputError) return { kind: 'refused', problems: error.problems };
      throw error;
    }
  }

  return async (request, options) => {
    const number = ++asked;
    const { source } = request;
    let solvable: SolvableSource;
    if (source.kind === 'readings' && last && isSame(last.source, source)) solvable = last.fitted;
    else if (source.kind === 'readings' || source.kind === 'corner') solvable = await prepared(source, options);
    else solvable = source;
    // A newer call went past while this one waited: it must not take that one's place in the slot.
    if (number < latest) throw new DOMException('Lowering was asked again meanwhile.', 'AbortError');
    latest = number;
    return loweringBridge().ask('lowering', { ...request, source: solvable }, options);
  };
}
