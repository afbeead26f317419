import { bumpTravelOf, type CarDocument } from '../../core/document/car.js';
import { readLengthAttribute } from '../../core/quantity/attribute.js';
import type { BumplineCompare } from './bumpline-compare.js';

/** What the inside wheel does is looked at over so much droop, mm. */
export const DROOP_MM = 20;
const USUAL_HEIGHTS: readonly number[] = [0, 25];
const USUAL_OVER_MM = 40;

/** The drops that are compared: the car's, else the page's. What is no number is told by the comparison. */
export function heightsOf({ compare }: CarDocument, { heights }: Pick<BumplineCompare, 'heights'>): readonly number[] {
  const page = heights
    ?.split(/[,;\s]+/)
    .filter(Boolean)
    .map(Number);
  return compare?.heights ?? (page?.length ? page : USUAL_HEIGHTS);
}

/** The bump over which changes are compared, mm. */
export function overOf({ compare }: CarDocument, { over }: Pick<BumplineCompare, 'over'>): number {
  if (compare?.over !== undefined) return compare.over;
  if (over === undefined || over === null) return USUAL_OVER_MM;
  const parsed = readLengthAttribute(String(over), 'travel', 'over');
  return parsed.ok ? parsed.value : Number.NaN;
}

/** Travel from stock height at which the suspension is solid, where somebody gave bump travel: with shorter springs it stays there. */
export function solidOf(car: CarDocument): number | undefined {
  const bumpTravel = bumpTravelOf(car);
  return bumpTravel === undefined || car.lowered === 'dampers' ? undefined : bumpTravel + (car.measuredAt ?? 0);
}
