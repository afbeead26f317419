import { independentJointBreakEven, withChange, withLoweredJoint } from '../reference/independent-joint.js';
import { type IndependentCorner, independentStrutSweep, type Point } from '../reference/independent-strut.js';
import { cornerFromTable, inside, page } from './site-source.js';

/*
 * The worked numbers of the page on lower ball joints, from the hard points in its own table: by test/reference/independent-strut.ts and
 * independent-joint.ts, which share nothing with core/. The roll centre by plane geometry: for symmetric heave the contact point moves
 * square to its line to the instant centre, and that line cuts the centre plane at y · dy/dz above the contact point. Each ± by central
 * differences (first order: GUM, JCGM 100:2008, 5.1.2): every coordinate off by its own ± in the table, and of a joint with the rod's end to
 * match the part's tolerance and how well the end matches, ±1 mm each, which is what the element assumes.
 */

const { corner, plusMinus } = cornerFromTable(
  inside(page('what-a-lower-ball-joint-does/index.html'), 'table', 'data-example'),
);
const JOINT_MM = 22;
const DROP = 25;
const BUMP = 40;
const STEP = 0.05;

const built = {
  standard: corner,
  lowered: withLoweredJoint(corner, { mm: JOINT_MM, isTieRodCorrected: false }),
  corrected: withLoweredJoint(corner, { mm: JOINT_MM, isTieRodCorrected: true }),
};

function rollCentre(of: IndependentCorner, travel: number): number {
  const [below, here, above] = independentStrutSweep(of, [travel - STEP, travel, travel + STEP]).map(
    ({ contact }) => contact,
  );
  return (here![1] * (above![1] - below![1])) / (above![2] - below![2]);
}

const bump = (of: IndependentCorner, angle: 'camber' | 'toe', from: number): number => {
  const [here, there] = independentStrutSweep(of, [from, from + BUMP]);
  return there![angle] - here![angle];
};

/** Where the steering axis meets the ground, inboard of the contact point. */
function scrubRadius(of: IndependentCorner): number {
  const { contact, ball } = independentStrutSweep(of, [0])[0]!;
  const share = (contact[2] - ball[2]) / (of.strut.top[2] - ball[2]);
  return contact[1] - (ball[1] + share * (of.strut.top[1] - ball[1]));
}

/** A corner with the joint off by some mm, and the rod's end off its match by others. */
const corrected = (of: IndependentCorner, { joint = 0, match = 0 } = {}): IndependentCorner => {
  const down = JOINT_MM + joint;
  return withChange(of, { ballBy: [0, 0, -down], outerBy: [0, 0, match - down] });
};

/** The same with the rod's end where it was. */
const leftAlone = (of: IndependentCorner, { joint = 0 } = {}): IndependentCorner =>
  withChange(of, { ballBy: [0, 0, -JOINT_MM - joint] });

/** The rows of the table, each with its point put elsewhere. */
const MOVES: Record<string, (of: IndependentCorner, by: Point) => IndependentCorner> = {
  'Lower arm, front pivot': (of, by) => ({ ...of, lowerArm: { ...of.lowerArm, front: off(of.lowerArm.front, by) } }),
  'Lower arm, rear pivot': (of, by) => ({ ...of, lowerArm: { ...of.lowerArm, rear: off(of.lowerArm.rear, by) } }),
  'Lower ball joint': (of, by) => ({ ...of, lowerArm: { ...of.lowerArm, ball: off(of.lowerArm.ball, by) } }),
  'Top mount': (of, by) => ({ ...of, strut: { ...of.strut, top: off(of.strut.top, by) } }),
  'Damper, low point': (of, by) => ({ ...of, strut: { ...of.strut, low: off(of.strut.low, by) } }),
  'Tie rod, inner end': (of, by) => ({ ...of, tieRod: { ...of.tieRod, inner: off(of.tieRod.inner, by) } }),
  'Tie rod, outer end': (of, by) => ({ ...of, tieRod: { ...of.tieRod, outer: off(of.tieRod.outer, by) } }),
  'Wheel centre': (of, by) => ({ ...of, wheelCentre: off(of.wheelCentre, by) }),
};
const off = (point: Point, by: Point): Point => [point[0] + by[0], point[1] + by[1], point[2] + by[2]];
/** Of a ±, put on either side. */
const SHARE = 0.1;

/** @param rod what became of the tie rod's end when the joint was put on; undefined: there is no joint */
export function doubtOf(value: (of: IndependentCorner) => number, rod?: 'matched' | 'as-it-was'): number {
  const put = rod === 'as-it-was' ? leftAlone : corrected;
  const on = (of: IndependentCorner) => value(rod ? put(of) : of);
  const slope = (at: (times: number) => number) => (at(SHARE) - at(-SHARE)) / (2 * SHARE);
  const ofPoints = Object.entries(MOVES).flatMap(([row, move]) =>
    [0, 1, 2].map((axis) =>
      slope((times) => on(move(corner, [0, 1, 2].map((i) => (i === axis ? times * plusMinus[row]! : 0)) as never))),
    ),
  );
  const amounts = rod === 'matched' ? (['joint', 'match'] as const) : rod ? (['joint'] as const) : [];
  const ofPart = amounts.map((what) => slope((times) => value(put(corner, { [what]: times }))));
  return Math.hypot(...ofPoints, ...ofPart);
}

/** By data-name. */
export const workedLowerJoint = (): Record<string, { unit: string; value: () => number }> => {
  const degrees = (value: () => number) => ({ unit: '°', value });
  const mm = (value: () => number) => ({ unit: 'mm', value });
  const all = Object.entries(built).flatMap(([name, of]) => [
    [`joint.roll-centre-${name}-0`, mm(() => rollCentre(of, 0))],
    [`joint.roll-centre-${name}-25`, mm(() => rollCentre(of, DROP))],
    [`joint.camber-${name}-0`, degrees(() => bump(of, 'camber', 0))],
    [`joint.camber-${name}-25`, degrees(() => bump(of, 'camber', DROP))],
    [`joint.toe-${name}-25`, degrees(() => bump(of, 'toe', DROP))],
    [`joint.scrub-${name}`, mm(() => scrubRadius(of))],
  ]);
  const evens = [10, 15, JOINT_MM].flatMap((lower) =>
    [true, false].map((isTieRodCorrected) => [
      `joint.break-even-${isTieRodCorrected ? 'corrected' : 'lowered'}-${lower}`,
      mm(() => independentJointBreakEven(corner, { mm: lower, isTieRodCorrected }, BUMP)),
    ]),
  );
  const rollCentreAtDrop = (of: IndependentCorner) => rollCentre(of, DROP);
  return {
    ...Object.fromEntries([...all, ...evens]),
    'joint.roll-centre-standard-25-plus-minus': mm(() => doubtOf(rollCentreAtDrop)),
    'joint.roll-centre-corrected-25-plus-minus': mm(() => doubtOf(rollCentreAtDrop, 'matched')),
    'joint.camber-corrected-25-plus-minus': degrees(() => doubtOf((of) => bump(of, 'camber', DROP), 'matched')),
  };
};
