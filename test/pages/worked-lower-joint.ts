import { independentJointBreakEven, withLoweredJoint } from '../reference/independent-joint.js';
import { type IndependentCorner, independentStrutSweep } from '../reference/independent-strut.js';
import { cornerFromTable, inside, page } from './site-source.js';

/*
 * The worked numbers of the page on lower ball joints, from the hard points in its own table: by test/reference/independent-strut.ts and
 * independent-joint.ts, which share nothing with core/. The roll centre by plane geometry: for symmetric heave the contact point moves
 * square to its line to the instant centre, and that line cuts the centre plane at y · dy/dz above the contact point.
 */

const { corner } = cornerFromTable(inside(page('what-a-lower-ball-joint-does/index.html'), 'table', 'data-example'));
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
  return Object.fromEntries([...all, ...evens]);
};
