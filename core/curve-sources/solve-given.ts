import { curveFrom } from '../curve/check-curve-data.js';
import { curveFromCoefficients } from '../curve/from-coefficients.js';
import type { SolvedSource } from './solved-source.js';
import type { SourceOf } from './source.js';

/** A curve that is given is its own answer. @throws InputError with all that is wrong with it */
export function solveGiven(source: SourceOf<'curve' | 'coefficients'>): SolvedSource {
  if (source.kind !== 'curve') return { camber: curveFromCoefficients({ ...source, quantity: 'camber' }) };
  const { data } = curveFrom(source.curve);
  return data.quantity === 'toe' ? { toe: data } : { camber: data };
}
