import { mean } from '../../math/sums.js';
import { ARCMINUTES_PER_DEGREE, MM_PER_INCH } from '../../quantity/units.js';
import type { Reading } from '../reading.js';
import { type DataWarning, type FigureOf, LIMITS } from './data-warning.js';
import {
  median,
  passOf,
  type Row,
  robustFit,
  type Shape,
  shapeOf,
  type WeightedFit,
  weightedFit,
} from './robust-fit.js';

/** A reading's figure in another unit or with the other sign. */
export interface Turn {
  of: FigureOf;
  factor: number;
  /** In which it seems to be written; a sign has none. */
  unit?: 'arcminutes' | 'degrees' | 'in' | 'mm';
}

export const SIGNS: readonly Turn[] = [
  { of: 'travel', factor: -1 },
  { of: 'value', factor: -1 },
];
/** Of heights among heights in mm, and of angles. */
export const SMALL_UNITS: readonly Turn[] = [
  { of: 'value', factor: 1 / ARCMINUTES_PER_DEGREE, unit: 'arcminutes' },
  { of: 'value', factor: ARCMINUTES_PER_DEGREE, unit: 'degrees' },
  { of: 'travel', factor: MM_PER_INCH, unit: 'in' },
];
/** Heights far outside the others. */
export const FAR_UNIT: Turn = { of: 'travel', factor: 1 / MM_PER_INCH, unit: 'mm' };
const UNITS = [...SMALL_UNITS, FAR_UNIT];

export const turned = <R extends Row | Reading>(row: R, { of, factor }: Turn): R => ({
  ...row,
  [of]: row[of] * factor,
});

/** Fewer readings of a pass show no course. */
const LEAST = 4;
/** A pass in another unit spreads this many times wider, or narrower, than the rest: half of 25.4. */
const SPREAD = 12;

/** Half of the figures lie this near their median: a block in other units does not widen it. */
const spread = (rows: readonly Row[], of: FigureOf) => {
  const middle = median(rows.map((row) => row[of]));
  return median(rows.map((row) => Math.abs(row[of] - middle)));
};

/**
 * Whole passes that run the other way or are written in other units: told where that lets all readings lie much closer to one curve.
 * Turns them in `rows`.
 *
 * @param names of the groups; with two passes that contradict each other, camber is taken to fall in bump
 */
export function turnPasses(rows: Row[], names: readonly string[], quantity: string): DataWarning[] {
  const warnings: DataWarning[] = [];
  const of = names.map((_, group) => rows.flatMap((row, i) => (row.group === group ? [i] : [])));
  const groups = [...names.keys()];
  const long = groups.filter((group) => of[group]!.length >= LEAST);
  if (long.length < 2) return warnings;
  // Each pass for itself, which no other can disturb: how closely this gauge reads.
  const own = median(
    long.flatMap((group) => {
      const rowsOfPass = of[group]!.map((i) => ({ ...rows[i]!, group: 0 }));
      const { residuals, scatter } = robustFit(rowsOfPass, shapeOf(rowsOfPass, 2));
      return residuals.map(() => scatter);
    }),
  );
  for (let turns = 0; turns < long.length - 1; turns++) {
    const now = robustFit(rows, shapeOf(rows, 3));
    const apart = (group: number, residuals: readonly number[]) =>
      median(of[group]!.map((i) => Math.abs(residuals[i]!)));
    let best = now.cost;
    let found: { group: number; turn: Turn; made: Row[] } | undefined;
    for (const group of long) {
      const rest = rows.filter((row) => row.group !== group && long.includes(row.group));
      const mine = rows.filter((row) => row.group === group);
      for (const turn of apart(group, now.residuals) > LIMITS.passApart * own ? [...SIGNS, ...UNITS] : UNITS) {
        // What shrinks a pass would let any pass lie closer.
        const ratio = spread(mine, turn.of) / spread(rest, turn.of);
        if (turn.unit && !(turn.factor < 1 ? ratio > SPREAD && ratio < Infinity : ratio > 0 && ratio * SPREAD < 1))
          continue;
        const made = rows.map((row) => (row.group === group ? turned(row, turn) : row));
        const shape = shapeOf(made, 3);
        let { cost, residuals } = robustFit(made, shape);
        if (!turn.unit && apart(group, residuals) > own) continue;
        // No pass is so much narrower by chance: there a little gain will do.
        if (!turn.unit) cost *= LIMITS.passGain;
        // With two passes either may be the one: the one that rises in bump, which camber seldom does.
        if (long.length === 2 && !turn.unit && quantity === 'camber' && slopeOf(mine) < 0) cost *= 1.5;
        // Heights and values turned about differ in the bend and in the zero: that of the right one lies near the others'.
        if (!turn.unit) cost += mine.length * Math.abs(offsetFrom(weightedFit(made, shape), groups, group)) * 0.1;
        if (cost < best) [best, found] = [cost, { group, turn, made }];
      }
    }
    if (!found) break;
    const { group, turn, made } = found;
    rows.splice(0, rows.length, ...made);
    const pass = names[group]!;
    const readings = of[group]!;
    if (turn.unit) {
      warnings.push({ kind: 'mixed-units', readings, ...turn, unit: turn.unit, isWholePass: true, pass });
    } else {
      const other = names.length === 2 ? { other: names[1 - group]! } : {};
      warnings.push({ kind: 'reversed-pass', readings, of: turn.of, pass, ...other });
    }
  }
  return warnings;
}

/** Of a pass for itself, over its travels. */
function slopeOf(rows: readonly Row[]): number {
  const line = weightedFit(rows, { ...shapeOf(rows), degree: 1 });
  const at = (travel: number) => -line.residual({ ...rows[0]!, travel, value: 0 });
  return at(1) - at(0);
}

/** How far the zero of a group lies from the middle of all, with two from the other, degrees. */
export function offsetFrom(fit: WeightedFit, groups: readonly number[], group: number): number {
  const all = groups.filter((one) => groups.length > 2 || one !== group).map(fit.offset);
  all.sort((a, b) => a - b);
  const half = all.length / 2;
  return fit.offset(group) - (all[Math.ceil(half) - 1]! + all[Math.floor(half)]!) / 2;
}

/** In the order in which they were taken: up from low to high, down from high to low, what came first first; else as listed. */
export function asTaken(readings: readonly Reading[], indexes: readonly number[]): number[] {
  const going = (i: number) => readings[i]!.going;
  if (!indexes.every(going)) return [...indexes];
  const first = going(indexes[0]!);
  return [...indexes].sort((i, j) => {
    if (going(i) !== going(j)) return going(i) === first ? -1 : 1;
    const [one, other] = [readings[i]!, readings[j]!];
    return (one.travel - other.travel) * (going(i) === 'up' ? 1 : -1) || one.value - other.value;
  });
}

/**
 * Places inside a pass from which on all its readings are shifted: the gauge slipped. Gives the rows after each a group of their own
 * in `rows`, so that the rest is judged without it.
 */
export function slipsWithin(rows: Row[], readings: readonly Reading[]): DataWarning[] {
  const warnings: DataWarning[] = [];
  const shape = shapeOf(rows);
  const { slipReadings, slipErrors, slipDegrees } = LIMITS;
  let now = robustFit(rows, shape);
  const groups = new Map<number, number[]>();
  rows.forEach(({ group }, i) => {
    groups.set(group, [...(groups.get(group) ?? []), i]);
  });
  const parts = [...groups.values()].map((indexes) => asTaken(readings, indexes));
  // A pass whose rest slipped is looked at again.
  for (const part of parts) {
    const clipped = part.map((i) => Math.max(-4 * now.scatter, Math.min(4 * now.scatter, now.residuals[i]!)));
    const whole = clipped.reduce((sum, one) => sum + one, 0);
    let [most, at, sum] = [slipErrors / 2.6, 0, 0];
    for (let cut = 1; cut <= part.length - slipReadings; cut++) {
      sum += clipped[cut - 1]!;
      if (cut < slipReadings) continue;
      const rest = part.length - cut;
      const errors = Math.abs((whole - sum) / rest - sum / cut) / (now.scatter * Math.sqrt(1 / cut + 1 / rest));
      if (errors > most) [most, at] = [errors, cut];
    }
    if (!at || isSlope(part, clipped, at, readings)) continue;
    const later = part.slice(at);
    const group = Math.max(...rows.map((row) => row.group)) + 1;
    const made = rows.map((row, i) => (later.includes(i) ? { ...row, group } : row));
    const split = robustFit(made, shape);
    // Wild rows count as four scatters: they neither make a slip nor hide one.
    const tame = made.map((row, i) => {
      const off = split.residuals[i]!;
      return { ...row, value: row.value - Math.sign(off) * Math.max(0, Math.abs(off) - 4 * split.scatter) };
    });
    const fit = weightedFit(tame, shape);
    const before = rows[part[0]!]!.group;
    const shift = fit.offset(group) - fit.offset(before);
    const error = slipError(tame, shape, group, before, Math.max(fit.sd, shape.least));
    if (!(fit.dof > 3 && Math.abs(shift) > Math.max(slipErrors * error, slipDegrees, 6 * shape.least))) continue;
    const travel = (i: number) => readings[i]!.travel;
    warnings.push({
      kind: 'slipped-within',
      readings: later,
      pass: passOf(readings[later[0]!]!),
      shift,
      before: travel(part[at - 1]!),
      from: travel(later[0]!),
    });
    rows.splice(0, rows.length, ...made);
    now = split;
    if (warnings.length < rows.length / 8) parts.push(part.slice(0, at), later);
  }
  return warnings;
}

/** Whether a slope of the whole pass explains its residuals better than a jump at one place: its gauge drifted, or its heights are off. */
function isSlope(
  part: readonly number[],
  residuals: readonly number[],
  at: number,
  readings: readonly Reading[],
): boolean {
  const travels = part.map((i) => readings[i]!.travel);
  const [middle, level] = [mean(travels), mean(residuals)];
  const away = travels.map((travel) => travel - middle);
  const together = away.reduce((sum, one, k) => sum + one * (residuals[k]! - level), 0);
  const bySlope = together ** 2 / away.reduce((sum, one) => sum + one * one, 0);
  const [before, after] = [residuals.slice(0, at), residuals.slice(at)];
  const byJump = ((before.length * after.length) / residuals.length) * (mean(after) - mean(before)) ** 2;
  return bySlope > byJump;
}

/** Standard error of the difference of two zeros: `sd` over the root of the squares that joining the two groups would cost at a difference of 1. */
function slipError(rows: readonly Row[], shape: Shape, group: number, before: number, sd: number): number {
  const step = rows.map((row) => ({
    ...row,
    value: row.group === group ? 1 : 0,
    group: row.group === group ? before : row.group,
  }));
  const joined = weightedFit(step, shape);
  const squares = step.reduce((sum, row) => sum + joined.residual(row) ** 2, 0);
  return sd / Math.sqrt(squares);
}
