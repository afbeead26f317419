import type { At } from '../../core/answers/compare.js';
import type { CarDocument } from '../../core/document/car.js';

/* Which two cells are compared: the first tap chooses one, the second the other. They stand in the car, so that a link brings them. */

type Compare = NonNullable<CarDocument['compare']>;

export const tapped = ({ from, to, ...others }: Compare = {}, { curve, height }: At): Compare =>
  from && !to ? { ...others, from, to: [curve, height] } : { ...others, from: [curve, height] };

/** The sets are others: what was chosen of those before is no choice of these. */
export function withoutChoice(car: CarDocument): CarDocument {
  if (!car.compare?.from) return car;
  const { compare, ...rest } = car;
  const { from: _, to: __, ...others } = compare;
  return Object.keys(others).length > 0 ? { ...rest, compare: others } : rest;
}

/** Inside a table that may have become smaller. After one tap both are the same cell; before any, the two that come first. */
export function chosenWithin(
  { from, to }: Compare = {},
  curves: number,
  heights: number,
  first: { from: At; to: At },
): { from: At; to: At } {
  const inside = ({ curve, height }: At): At => ({
    curve: Math.min(curve, curves - 1),
    height: Math.min(height, heights - 1),
  });
  const at = (cell: typeof from): At | undefined => cell && { curve: cell[0], height: cell[1] };
  return { from: inside(at(from) ?? first.from), to: inside(at(to) ?? at(from) ?? first.to) };
}
