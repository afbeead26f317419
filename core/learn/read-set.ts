import { curveOf } from '../curve/curve.js';
import type { CurveFit } from '../curve/curve-fit.js';
import { fitCurve } from '../curve/fit.js';
import { arrange, type Rows } from '../curve/fit-rows.js';
import type { Alignment } from '../curve-sources/source.js';
import type { PartData } from '../linkage/parts/part-kinds.js';
import { InputError } from '../quantity/problem.js';
import { DEFAULT_DOUBTS, type ReadingDoubts } from '../readings/doubts.js';
import type { Reading, ReadingQuantity } from '../readings/reading.js';
import { NORMAL_95 } from '../uncertainty/normal.js';

/** Readings of one angle, taken with certain parts on the corner. */
export interface ReadSetRequest {
  quantity: ReadingQuantity;
  readings: readonly Reading[];
  /** None: the corner as it was measured. */
  parts: readonly PartData[];
  /** What was set again once the parts were on. */
  alignment: Alignment;
  allowances: ReadingDoubts;
  inOrder: boolean;
  /** What is added to every travel, mm: the corner's own height 0 is not always that of the readings. */
  raisedBy: number;
}

/** Something of gauge, tape or passes that is not known, and what one standard uncertainty of it does to each reading, degrees. */
export interface Nuisance {
  id: string;
  label: string;
  /** Of readings of one instrument: the same unknown in every set that it was used for. */
  column: Float64Array;
  /** Its standard uncertainty beforehand, in its own unit: what one unit of the unknown stands for. */
  unit: number;
}

/** Readings in the order of their rows, ready to be set against a linkage. */
export interface ReadSet extends ReadSetRequest {
  /** Stands before the ids of what belongs to this set alone. */
  name: string;
  rows: Rows;
  fit: CurveFit;
  /** Different travels of the corner, ascending, mm; and which of them each row has. */
  travels: Float64Array;
  at: Int32Array;
  values: Float64Array;
  /** Standard deviation of one reading, degrees, and the degrees of freedom behind it. */
  sd: number;
  dof: number;
  nuisances: Nuisance[];
}

/** A gauge shows 0.05° or 0.1°: no scatter is smaller than such a step leaves (step/√12). Common practice, no source. */
const LEAST_SD = 0.015;
/** What gauges scatter by, degrees, counted as so many degrees of freedom: few readings say little of their own. Common practice, no source. */
const USUAL_SD = 0.05;
export const USUAL_DOF = 2;
/** Heights below which a fit of the readings says nothing of their scatter. */
export const LEAST_HEIGHTS = 4;
/** Of the gauge's zero, degrees: nothing is known of it. */
const ZERO_SD = 20;
/** Of half the difference between up and down, degrees. */
const WAY_SD = 0.25;
/** Of what one pass drifts by itself, as a share of the drift that all may have alike. */
const OWN_DRIFT = 0.3;
/** Of how one pass was started at another height than the others, as a share of what the zero height may be off. */
const OWN_HEIGHT = 0.5;
const PER_CENT = 0.01;

/** @throws InputError of readings that say too little, or nothing that can be read */
export function readSet(request: ReadSetRequest, name: string): ReadSet {
  const { readings, quantity, allowances, inOrder, raisedBy } = request;
  const fit = fitCurve(readings, { ...allowances, quantity, inOrder });
  const rows = arrange(readings, inOrder);
  const heights = [...new Set(rows.travel)].sort((a, b) => a - b);
  if (heights.length < LEAST_HEIGHTS) {
    const [value, limit] = [heights.length, LEAST_HEIGHTS];
    throw new InputError([{ code: 'too-few', path: 'readings', value, limit, other: 'travel' }]);
  }
  const { scatter, residualSd } = fit;
  const inflated = Math.sqrt(rows.n / Math.min(rows.n, scatter.effectiveReadings));
  return {
    ...request,
    name,
    rows,
    fit,
    travels: Float64Array.from(heights, (travel) => travel + raisedBy),
    at: Int32Array.from(rows.travel, (travel) => heights.indexOf(travel)),
    values: rows.value,
    sd:
      Math.max(LEAST_SD, Math.sqrt((fit.dof * residualSd ** 2 + USUAL_DOF * USUAL_SD ** 2) / (fit.dof + USUAL_DOF))) *
      inflated,
    dof: USUAL_DOF + (scatter.correlation > 0 ? scatter.dof : fit.dof),
    nuisances: nuisancesOf(rows, curveOf(fit.curve), request, name),
  };
}

/**
 * What gauge, tape and passes may add to readings.
 *
 * @param curve the one that was read, over the readings' own travel: how steep it is does not wait for the links
 */
export function nuisancesOf(
  rows: Rows,
  curve: { value(travel: number): number; slope(travel: number): number },
  { quantity, allowances: doubts }: Pick<ReadSetRequest, 'quantity' | 'allowances'>,
  set: string,
): Nuisance[] {
  const { passes, passOf, direction, travel } = rows;
  const slope = travel.map((t) => curve.slope(t));
  const middle = curve.value((rows.low + rows.high) / 2);
  const shown = travel.map((t) => curve.value(t) - middle);
  const progress = driftOf(rows);
  const all: Nuisance[] = [];
  const add = (id: string, label: string, unit: number, of: (i: number) => number) => {
    if (unit > 0) all.push({ id, label, unit, column: travel.map((_, i) => unit * of(i)) });
  };
  const doubt = (key: keyof ReadingDoubts) => (doubts[key] ?? DEFAULT_DOUBTS[key]) / NORMAL_95;
  passes.forEach(({ name }, p) => {
    const inPass = (value: number) => (i: number) => (passOf[i] === p ? value : 0);
    add(`${set}.zero.${name}`, `zero of pass ${name}`, ZERO_SD, inPass(1));
    if (passes.length > 1) {
      add(`${set}.height.${name}`, `height of pass ${name}`, OWN_HEIGHT * doubt('zeroHeight'), (i) =>
        inPass(slope[i]!)(i),
      );
      add(`${set}.drift.${name}`, `drift of pass ${name}`, OWN_DRIFT * doubt('drift'), (i) => inPass(progress[i]!)(i));
    }
  });
  if (direction.some((one) => one !== 0)) add(`${set}.way`, 'up against down', WAY_SD, (i) => direction[i]!);
  // One gauge of each angle, one tape: the same in every set.
  const gauge = quantity === 'toe' ? 'toe.' : '';
  add(`${gauge}drift`, 'the gauge’s drift, alike in all passes', doubt('drift'), (i) => progress[i]!);
  add(`${gauge}gaugeScale`, 'the gauge’s scale', PER_CENT * doubt('gaugeScale'), (i) => shown[i]!);
  add('tapeScale', 'the tape’s scale', PER_CENT * doubt('tapeScale'), (i) => travel[i]! * slope[i]!);
  add(`${set}.zeroHeight`, 'the zero height', doubt('zeroHeight'), (i) => slope[i]!);
  return all;
}

/**
 * Share of a pass's drift at each row, −½ to ½ of a whole pass. A gauge drifts with time, so a pass of half as many readings drifts half
 * as far, and inside a pass that went one way it drifts with travel: a reading left out, or a pass cut short, must not make drift look like
 * something that the others tell apart from the curve.
 */
function driftOf({ passes, passOf, travel, taken: { progress, unknownProgress } }: Rows): Float64Array {
  const most = Math.max(...passes.map(({ count }) => count - 1), 1);
  const drift = progress.map((known, i) => known + unknownProgress[i]!);
  for (const [p, { count }] of passes.entries()) {
    // By travel, ascending.
    const own = [...passOf.keys()].filter((i) => passOf[i] === p);
    const [low, high] = [travel[own[0]!]!, travel[own.at(-1)!]!];
    const way = Math.sign(drift[own.at(-1)!]! - drift[own[0]!]!);
    const isOneWay = way !== 0 && own.every((i, k) => k === 0 || way * (drift[i]! - drift[own[k - 1]!]!) >= 0);
    for (const i of own) {
      if (isOneWay && high > low) drift[i] = way * ((travel[i]! - low) / (high - low) - 0.5);
      drift[i]! *= (count - 1) / most;
    }
  }
  return drift;
}
