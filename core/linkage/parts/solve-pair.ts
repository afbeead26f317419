import type { Linkage } from '../linkage.js';

const CLOSE_ENOUGH_DEG = 1e-10;
/** Differences for the slopes: mm or degrees of a part. */
const NUDGE = 1e-3;
const MOST_STEPS = 40;
/** A step of less than a 256th of Newton's leads nowhere. */
const MOST_HALVINGS = 8;

type Pair = readonly [number, number];

/** A linkage that was tried, and by how much it misses its targets, degrees. */
export interface Trial {
  linkage: Linkage;
  miss: Pair;
}

/** The linkage for two amounts, mm or degrees; undefined where the links do not join. */
type At = (x: number, y: number) => Trial | undefined;

/** Newton's step in two unknowns, slopes by central differences; undefined where nothing moves the angles, or an end is too near. */
function newtonStep(at: At, [x, y]: Pair, miss: Pair): Pair | undefined {
  const [left, right, below, above] = [at(x - NUDGE, y), at(x + NUDGE, y), at(x, y - NUDGE), at(x, y + NUDGE)];
  if (!left || !right || !below || !above) return undefined;
  const slope = (from: Trial, to: Trial, i: 0 | 1) => (to.miss[i] - from.miss[i]) / (2 * NUDGE);
  const [ax, ay, bx, by] = [
    slope(left, right, 0),
    slope(below, above, 0),
    slope(left, right, 1),
    slope(below, above, 1),
  ];
  const determinant = ax * by - ay * bx;
  if (!(Math.abs(determinant) > 1e-12)) return undefined;
  return [(miss[1] * ay - miss[0] * by) / determinant, (miss[0] * bx - miss[1] * ax) / determinant];
}

/** The root that Newton's rule leads to from zero; a step to where the links do not join is halved. Undefined when it leads to none. */
export function solvePair(at: At): { x: number; y: number } | undefined {
  let [x, y] = [0, 0];
  let trial = at(x, y);
  for (let i = 0; trial && i < MOST_STEPS; i++) {
    const { miss } = trial;
    if (Math.hypot(...miss) < CLOSE_ENOUGH_DEG) return { x, y };
    const step = newtonStep(at, [x, y], miss);
    if (!step) return undefined;
    let share = 1;
    trial = at(x + step[0], y + step[1]);
    for (let halving = 0; !trial && halving < MOST_HALVINGS; halving++) {
      share /= 2;
      trial = at(x + share * step[0], y + share * step[1]);
    }
    x += share * step[0];
    y += share * step[1];
  }
  return undefined;
}
