import { cornerSourceOf } from '../../core/answers/car-request.js';
import type { CarDocument } from '../../core/document/car.js';
import { CORRECTED } from './corrected-by.words.js';

/** That the links of a car are taken as its readings correct them; undefined where they are as they were measured. */
export function correctedBy(car: CarDocument): string | undefined {
  if (car.links !== 'learnt') return undefined;
  const source = cornerSourceOf(car);
  if (source.kind !== 'learnt') return undefined;
  const { readings = [], toe = [], setups = [] } = source;
  const all = [readings, toe, ...setups.flatMap((set) => [set.readings ?? [], set.toe ?? []])];
  const count = all.reduce((sum, { length }) => sum + length, 0);
  return count === 1 ? CORRECTED.one : CORRECTED.many(count);
}
