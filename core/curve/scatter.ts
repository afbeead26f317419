import { dot } from '../math/sums.js';
import {
  correlated,
  effectiveCount,
  expected,
  type Hat,
  lagOne,
  neighbours,
  type Runs,
  squaredTrace,
} from './correlation.js';
import { durbinWatson, durbinWatsonChance } from './durbin-watson.js';
import type { Solution } from './fit-model.js';
import { type Rows, withinPasses } from './fit-rows.js';

/** What the residuals say of the scatter. */
export interface Scatter {
  /** Correlation of a reading's scatter with that of the one read before it in its pass, 0 where the residuals show none. */
  correlation: number;
  /** Variance of a reading, degrees². */
  variance: number;
  /** Degrees of freedom behind it. */
  dof: number;
  /** As many independent readings as tell the mean of all of them equally well. */
  effectiveReadings: number;
  durbinWatson: number;
  /** The chance of a Durbin–Watson statistic as small or smaller where readings know nothing of each other; exact. */
  chance: number;
  /** How the passes run apart: by pass its travel, and the standard deviation of their slopes over it, degrees. */
  apart: { columns: Float64Array[]; sd: number; dof: number };
}

/** Beyond this the readings of a run are all but one, and no residuals of so few tell how much. */
const MOST_CORRELATION = 0.85;
/**
 * By how much the correlation of readings is larger than their residuals say, and what is left of the degrees of freedom: the degree
 * was chosen by the same readings, the scatter of a height and the rounding of a value are independent and thin out what neighbours
 * share (of 0.5 they leave 0.4), and a small correlation is told badly by few readings. Set on seeds 9001 to 9003 of the study of
 * coverage.
 */
const THINNED = 1.5;
const LEFT_DOF = 0.6;
/** A few degrees of freedom say loudly enough by themselves how little is known. */
const FEW_DOF = 4;
/** What is expected must differ by so much between none and the most, or the residuals tell no correlation. */
const LEAST_TOLD = 0.05;
/** Fewer readings of a pass show no slope of their own. */
const LEAST_OF_PASS = 3;
/** Readings left over by the model and the passes' own slopes, below which these are not asked of them; and so many for each slope. */
const ROOM = 8;
const ROOM_OF_SLOPE = 3;
/** A slope of which the model leaves less than this part is the model's. */
const LEAST_LEFT = 0.2;
/** Added to the passes' own: slopes are not wholly unknown beforehand, and Student's t at one degree of freedom would say they were. */
const KNOWN_DOF = 3;

/** Travel inside each pass, −1 to 1 over the whole range, about its mean there. */
function slopesOf(rows: Rows): Float64Array[] {
  const { passes, passOf, x } = rows;
  if (passes.length < 2) return [];
  const { column } = withinPasses(x, rows);
  return passes.flatMap(({ count }, p) =>
    count < LEAST_OF_PASS ? [] : [column.map((at, i) => (passOf[i] === p ? at : 0))],
  );
}

/** What of the columns is in none of the orthonormal ones, nor in those before it: orthonormal, by Gram and Schmidt, twice. */
function besides(q: readonly Float64Array[], columns: readonly Float64Array[]): Float64Array[] {
  const found: Float64Array[] = [];
  for (const column of columns) {
    const left = column.slice();
    const length = Math.sqrt(dot(column, column));
    for (let turn = 0; turn < 2; turn++) {
      for (const one of [...q, ...found]) {
        const share = dot(one, left);
        for (let i = 0; i < left.length; i++) left[i]! -= share * one[i]!;
      }
    }
    const rest = Math.sqrt(dot(left, left));
    if (rest > LEAST_LEFT * length) found.push(left.map((one) => one / rest));
  }
  return found;
}

/** The correlation at which products of neighbours are expected to have the share of the squares that they have. */
function correlationOf(found: number, hat: Hat, runs: Runs): number {
  const near = hat.q.map((column) => neighbours(column, runs));
  const lack = (rho: number) => {
    const { squares, products } = expected(hat, runs, rho, near);
    return products / squares - found;
  };
  let [low, high] = [0, MOST_CORRELATION];
  // A fit without anything left over has NaN.
  if (!(lack(low) < 0)) return 0;
  if (lack(high) - lack(low) < LEAST_TOLD) return 0;
  if (lack(high) < 0) low = high;
  while (high - low > 1e-4) {
    const middle = (low + high) / 2;
    if (lack(middle) < 0) low = middle;
    else high = middle;
  }
  return Math.min(MOST_CORRELATION, THINNED * low);
}

/**
 * The scatter by its residuals. Squares and products of neighbours are expected from the fit's own hat matrix, as residuals of
 * independent scatter go against each other. A correlation that comes out negative counts as none, any other in full, whether or not
 * it can be told from nothing.
 *
 * Passes may run at slopes of their own: the heights of one lie some millimetres off, or its gauge drifted. Their variance is what
 * the squares of their slopes have more than the scatter explains, less where that is little beside it: half of the clean sets would
 * have some otherwise.
 */
export function scatterOf(rows: Rows, { q, residuals }: Solution, isIndependent: boolean): Scatter {
  const { n, passOf, passes, taken } = rows;
  const { runs } = taken;
  const columns = slopesOf(rows);
  const room = n - passes.length - q.length;
  const hasRoom = room - columns.length >= ROOM && room >= ROOM_OF_SLOPE * columns.length;
  const own = isIndependent || !hasRoom ? [] : besides(q, columns);
  const left = residuals.slice();
  let ownSquares = 0;
  for (const column of own) {
    const share = dot(column, residuals);
    ownSquares += share * share;
    for (let i = 0; i < n; i++) left[i]! -= share * column[i]!;
  }
  const hat: Hat = { q: [...q, ...own], passOf, counts: passes.map(({ count }) => count) };
  const squares = dot(left, left);
  const correlation = isIndependent ? 0 : correlationOf(lagOne(left, runs), hat, runs);
  const { squares: trace } = expected(hat, runs, correlation);
  const variance = squares / trace;
  const byScatter = variance * own.reduce((sum, column) => sum + dot(column, correlated(column, runs, correlation)), 0);
  const bySlopes = own.reduce((sum, one) => columns.reduce((more, slope) => more + dot(one, slope) ** 2, sum), 0);
  const excess = Math.max(0, ownSquares - byScatter);
  const dof = trace ** 2 / squaredTrace(hat, runs, correlation);
  const found = durbinWatson(left, runs);
  return {
    correlation,
    variance,
    dof: isIndependent ? dof : Math.max(Math.min(dof, FEW_DOF), LEFT_DOF * dof),
    effectiveReadings: effectiveCount(
      runs.map(({ length }) => length),
      correlation,
    ),
    durbinWatson: found,
    chance: Number.isFinite(found) ? durbinWatsonChance(found, { q: hat.q, passes: byPass(rows) }) : Number.NaN,
    apart: {
      columns,
      sd: excess > 0 ? Math.sqrt((excess / bySlopes) * (excess / ownSquares)) : 0,
      dof: own.length + KNOWN_DOF,
    },
  };
}

/** The runs of each pass. */
function byPass({ passes, passOf, taken }: Rows): number[][][] {
  const all = passes.map((): number[][] => []);
  for (const run of taken.runs) all[passOf[run[0]!]!]!.push(run);
  return all;
}
