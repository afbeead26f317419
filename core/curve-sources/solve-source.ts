import { checkCorner } from '../document/check-corner.js';
import { solveLearnt } from '../learn/solve-learnt.js';
import { InputError } from '../quantity/problem.js';
import { fitReadings } from './fit-readings.js';
import { noSource } from './no-source.js';
import { solveCorner, solveDriveway } from './solve-corner.js';
import { solveGiven } from './solve-given.js';
import { solveParts } from './solve-parts.js';
import type { SolvedCamber, SolvedSource } from './solved-source.js';
import type { AnySource, SourceOf } from './source.js';

/**
 * Solves a source of any kind. On a page each kind is solved by the layer of the core that can (core/worker/layers).
 *
 * @throws InputError with every problem of the source.
 */
export function solveSource(
  source: SourceOf<'corner' | 'driveway' | 'parts' | 'learnt' | 'coefficients'>,
): SolvedCamber;
export function solveSource(source: AnySource): SolvedSource;
export function solveSource(source: AnySource): SolvedSource {
  switch (source?.kind) {
    case 'corner':
      return solveCorner(checkCorner(source.corner));
    case 'driveway':
      return solveDriveway(source.driveway);
    case 'readings':
      return fitReadings(source);
    case 'parts':
      return solveParts(source);
    case 'learnt':
      return solveLearnt(source);
    case 'curve':
    case 'coefficients':
      return solveGiven(source);
    default:
      throw new InputError([noSource(source)]);
  }
}
