import { curveFrom } from '../curve/check-curve-data.js';
import { curveFromCoefficients } from '../curve/from-coefficients.js';
import type { SolvedSource } from './solved-source.js';
import type { SourceOf } from './source.js';

/** A curve that is given is its own answer. @throws InputError with all that is wrong with it */
export const solveGiven = (source: SourceOf<'curve' | 'coefficients'>): SolvedSource => ({
  camber:
    source.kind === 'curve' ? curveFrom(source.curve).data : curveFromCoefficients({ ...source, quantity: 'camber' }),
});
