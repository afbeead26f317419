import { curveFromCoefficients } from '../curve/from-coefficients.js';
import type { SolvedSource } from './solved-source.js';
import type { SourceOf } from './source.js';

/** A curve that is given is its own answer. */
export const solveGiven = (source: SourceOf<'curve' | 'coefficients'>): SolvedSource => ({
  camber: source.kind === 'curve' ? source.curve : curveFromCoefficients({ ...source, quantity: 'camber' }),
});
