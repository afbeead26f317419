import { readFileSync } from 'node:fs';
import { EXAMPLE_CORNER } from '../../core/document/example-corner.js';
import { withLoweredJoint } from '../reference/independent-joint.js';
import { type IndependentCorner, independentStrutSweep, type Point } from '../reference/independent-strut.js';
import { doubtOf } from './worked-lower-joint.js';

/*
 * The worked numbers of the page on bump steer. Those of the example car by test/reference/independent-strut.ts and independent-joint.ts,
 * which share nothing with core/; only the example's hard points come from there. Those of the flat strut from bump_steer_planar.csv, and
 * those of the gauges from toe_gauge_cases.csv, both in test/reference with their sources.
 */

export const corner: IndependentCorner = EXAMPLE_CORNER;
const BUMP = 40;
const JOINT_MM = 22;
const RACK_MM = 30;
/** Across which the element tells toe as a length. */
const RIM_MM = 450;
const DEGREES = 180 / Math.PI;

export const withOuterRaised = (of: IndependentCorner, mm: number): IndependentCorner => {
  const { inner, outer } = of.tieRod;
  // Where the corner is put together its toe is what it says: the rod's length follows.
  return { ...of, tieRod: { inner, outer: [outer[0], outer[1], outer[2] + mm] } };
};
export const withInner = (of: IndependentCorner, inner: Point): IndependentCorner => ({
  ...of,
  tieRod: { ...of.tieRod, inner },
});
export const lowered = withLoweredJoint(corner, { mm: JOINT_MM, isTieRodCorrected: false });
export const corrected = withLoweredJoint(corner, { mm: JOINT_MM, isTieRodCorrected: true });

/** Toe at each travel less that at stock height, degrees. */
export function toeChanges(of: IndependentCorner, travels: readonly number[], rack = 0): number[] {
  const [here, ...rest] = independentStrutSweep(of, [0, ...travels], { rack });
  return rest.map(({ toe }) => toe - here!.toe);
}
const overBump = (of: IndependentCorner, rack = 0) => toeChanges(of, [BUMP], rack)[0]!;

/** From 40 mm of droop to 40 mm of bump: the largest toe less the smallest. */
function spread(of: IndependentCorner): number {
  const toe = toeChanges(
    of,
    Array.from({ length: 81 }, (_, i) => i - BUMP),
  );
  return Math.max(...toe) - Math.min(...toe);
}

/** By how much the rod's outer end has to go down with the joint for the least spread, mm: golden-section search. */
function shim(): number {
  const left = (down: number) => spread(withOuterRaised(lowered, -down));
  let [low, high] = [10, 30];
  while (high - low > 1e-3) {
    const [a, b] = [0.381966, 0.618034].map((share) => low + share * (high - low)) as [number, number];
    if (left(a) < left(b)) high = b;
    else low = a;
  }
  return (low + high) / 2;
}
let found: number | undefined;
export const shimMm = (): number => {
  found ??= shim();
  return found;
};

/** Of the outer joint from the steering axis, mm. */
function lever(): number {
  const { ball } = corner.lowerArm;
  const axis = [0, 1, 2].map((i) => corner.strut.top[i]! - ball[i]!);
  const arm = [0, 1, 2].map((i) => corner.tieRod.outer[i]! - ball[i]!);
  const along = axis.reduce((sum, v, i) => sum + v * arm[i]!, 0) / Math.hypot(...axis);
  return Math.sqrt(arm.reduce((sum, v) => sum + v * v, 0) - along * along);
}

/** Rows of a file of test/reference by their first cell, which may be quoted; the others as numbers. */
function referenceRows(file: string): Map<string, number[]> {
  const text = readFileSync(new URL(`../reference/${file}`, import.meta.url), 'utf8');
  const [, ...lines] = text.split(/\r?\n/).filter((line) => line && !line.startsWith('#'));
  return new Map(
    lines.map((line) => {
      const [, quoted, plain, rest] = /^(?:"([^"]*)"|([^,]*)),(.*)$/.exec(line)!;
      return [quoted ?? plain!, rest!.split(',').map(Number)];
    }),
  );
}
const rowOf = (file: string, name: string): number[] => {
  const row = referenceRows(file).get(name);
  if (!row) throw new Error(`test/reference/${file} has no row "${name}".`);
  return row;
};
/** Of the flat strut: inner end (y, z), rod length, then what the rod lacks at −60, −40 … 60 mm of travel. */
export const planar = (name: string): number[] => rowOf('bump_steer_planar.csv', name);
const [DROOP_40, BUMP_40] = [4, 8];
/** Base and difference in mm, toe in degrees, then arc minutes, small-angle toe, and the doubt of 0.01 mm a reading. */
const gauge = (name: string): number[] => rowOf('toe_gauge_cases.csv', name);
const DIALS = 'dials 300 mm apart, 1.00 mm';
const PLATE = 'rim flange 430 mm, 1.5 mm';
const TOE = 2;
const DOUBT_OF_0_01 = 5;

/** By data-name. */
export const workedToe = (): Record<string, { unit: string; value: () => number }> => {
  const degrees = (value: () => number) => ({ unit: '°', value });
  const mm = (value: () => number) => ({ unit: 'mm', value });
  return {
    'toe.standard': degrees(() => overBump(corner)),
    'toe.lowered': degrees(() => overBump(lowered)),
    // By the method of the page on lower joints, whose table of points this page shows as well.
    'toe.lowered-plus-minus': degrees(() => doubtOf((of) => overBump(of), 'as-it-was')),
    'toe.lowered-across': mm(() => RIM_MM * Math.tan(overBump(lowered) / DEGREES)),
    'toe.shim': mm(shimMm),
    'toe.shim-spread': degrees(() => spread(withOuterRaised(lowered, -shimMm()))),
    'toe.matched-spread': degrees(() => spread(corrected)),
    'toe.per-misfit': degrees(() => Math.atan(1 / lever()) * DEGREES),
    'toe.turned': degrees(() => independentStrutSweep(corner, [0], { rack: RACK_MM })[0]!.toe - corner.toe),
    'toe.turned-outer': degrees(() => overBump(corner, RACK_MM)),
    'toe.turned-inner': degrees(() => overBump(corner, -RACK_MM)),
    'toe.high-droop': mm(() => planar('ideal raised 10 mm')[DROOP_40]!),
    'toe.high-bump': mm(() => planar('ideal raised 10 mm')[BUMP_40]!),
    'toe.short-droop': mm(() => planar('on IC line, rod 300 mm')[DROOP_40]!),
    'toe.short-bump': mm(() => planar('on IC line, rod 300 mm')[BUMP_40]!),
    'toe.dials': degrees(() => gauge(DIALS)[TOE]!),
    'toe.dials-plus-minus': degrees(() => gauge(DIALS)[DOUBT_OF_0_01]!),
    'toe.plate': degrees(() => gauge(PLATE)[TOE]!),
    'toe.plate-plus-minus': degrees(() => 50 * gauge(PLATE)[DOUBT_OF_0_01]!),
  };
};
