import { InputError } from '../quantity/problem.js';
import type { CamberSource } from './camber-source.js';
import { type LoweringAnswer, type LoweringRequest, lowering, requestProblems } from './lowering.js';
import { fitReadings, type ReadingsSource } from './readings-source.js';

/** A source of camber, readings among them. */
export type AnySource = CamberSource | ReadingsSource;

/**
 * The answer about lowering from any source, at once. On a page readings are fitted by a core function of their own, so that
 * whoever has none does not fetch the fit.
 *
 * @throws InputError as `lowering` and `fitReadings` do, with the problems of both.
 */
export function loweringFrom(request: LoweringRequest<AnySource>): LoweringAnswer {
  const { source } = request;
  if (source?.kind !== 'readings') return lowering({ ...request, source });
  try {
    return lowering({ ...request, source: fitReadings(source) });
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const known = new Set(error.problems.map(({ path }) => path));
    throw new InputError([...requestProblems(request).filter(({ path }) => !known.has(path)), ...error.problems]);
  }
}
