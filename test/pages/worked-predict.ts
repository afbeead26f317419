import { EXAMPLE_CORNER } from '../../core/document/example-corner.js';
import { EXAMPLE_SETUPS } from '../../core/document/example-setups.js';
import {
  type AfternoonAllowances,
  independentLearnt,
  independentPlusMinus,
} from '../reference/independent-afternoon.js';
import { type IndependentChange, withChange } from '../reference/independent-joint.js';
import { COORDINATES } from '../reference/independent-learning.js';
import { independentRegression } from '../reference/independent-regression.js';
import { secantRoot } from '../reference/independent-static-camber.js';
import { type IndependentCorner, independentStrutSweep, type Point } from '../reference/independent-strut.js';

/*
 * The worked numbers of the page on predicting parts, by test/reference/independent-afternoon.ts and the second solver, which share
 * nothing with core/; only the example's hard points and readings come from there. Figures of the study of random cars are in
 * studied-predict.ts.
 */

export const stock: IndependentCorner = EXAMPLE_CORNER;
export const [{ readings }] = EXAMPLE_SETUPS as unknown as [{ readings: Parameters<typeof independentLearnt>[2] }];
export const JOINT_MM = 22;
export const DROP = 25;
export const OVER = 40;
/** As the element allows of gauge and tape unless somebody says otherwise: common practice, no source. */
export const ALLOWANCES: AfternoonAllowances = { gaugeScale: 1, tapeScale: 1, zeroHeight: 2, drift: 0.13 };
const NORMAL_95 = 1.959964;
/** Of a joint's amount, and of how well a rod's end matches it: ±1 mm (95 %) each. */
const PART_MM = 1 / NORMAL_95;
const NUDGE_MM = 0.05;

const kept = new Map<string, unknown>();
/** Worked out once: a corner is learnt in seconds. */
function once<T>(name: string, work: () => T): T {
  if (!kept.has(name)) kept.set(name, work());
  return kept.get(name) as T;
}

/** ±3 mm (95 %) each, the damper's low point ±4 mm. */
export const tapedMm = COORDINATES.map(({ id }) => (id.startsWith('strut.low') ? 4 : 3) / NORMAL_95);

/** Of the curve through the readings, with what gauges scatter by (0.05°, counted as two degrees of freedom). */
export const readingSd = () => {
  const { dof, residualSd } = independentRegression(readings, 3, true);
  return Math.sqrt((dof * residualSd ** 2 + 2 * 0.05 ** 2) / (dof + 2));
};

export const learnt = () => once('learnt', () => independentLearnt(stock, tapedMm, readings, ALLOWANCES, readingSd()));

export type Parts = 'stock' | 'corrected' | 'leftAlone';
const down = (mm: number): Point => [0, 0, -mm];
const CHANGES: Record<Parts, (joint: number, match: number) => IndependentChange | undefined> = {
  stock: () => undefined,
  corrected: (joint, match) => ({ ballBy: down(JOINT_MM + joint), outerBy: down(JOINT_MM + joint - match) }),
  leftAlone: (joint) => ({ ballBy: down(JOINT_MM + joint) }),
};

export const fitted = (of: IndependentCorner, parts: Parts, joint = 0, match = 0): IndependentCorner => {
  const change = CHANGES[parts](joint, match);
  return change ? withChange(of, change) : of;
};

type Figure = (of: IndependentCorner) => number;
const bump =
  (angle: 'camber' | 'toe'): Figure =>
  (of) => {
    const [here, there] = independentStrutSweep(of, [DROP, DROP + OVER]);
    return there![angle] - here![angle];
  };
/** Above the ground, mm: for symmetric heave the contact point moves square to its line to the instant centre. */
const rollCentre: Figure = (of) => {
  const [below, here, above] = independentStrutSweep(of, [DROP - 0.05, DROP, DROP + 0.05]).map(
    ({ contact }) => contact,
  );
  return (here![1] * (above![1] - below![1])) / (above![2] - below![2]);
};
const FIGURES = { camber: bump('camber'), toe: bump('toe'), rollCentre };
export type FigureName = keyof typeof FIGURES;

export const figureOf = (parts: Parts, figure: FigureName, of = learnt().corner): number =>
  once(`${parts} ${figure} ${JSON.stringify(of)}`, () => FIGURES[figure](fitted(of, parts)));

/** @param from the corner that the derivatives are of, and what is not known of it */
export function plusMinusOf(parts: Parts, figure: FigureName, from: 'tape' | 'learnt'): number {
  return once(`± ${parts} ${figure} ${from}`, () => {
    const of = from === 'tape' ? stock : learnt().corner;
    const asked = (corner: IndependentCorner, joint = 0, match = 0) =>
      FIGURES[figure](fitted(corner, parts, joint, match));
    const slope = (value: (mm: number) => number) => (value(NUDGE_MM) - value(-NUDGE_MM)) / (2 * NUDGE_MM);
    const gradient = COORDINATES.map(({ off }) => slope((mm) => asked(off(of, mm))));
    const ofParts = parts === 'stock' ? [] : [slope((mm) => asked(of, mm)), slope((mm) => asked(of, 0, mm))];
    return independentPlusMinus(
      gradient,
      from === 'tape' ? learnt().before : learnt().covariance,
      ofParts.map((one) => one * PART_MM),
    );
  });
}

/** The fit of the stock readings, moved by 1.1 times the joint's height. */
export const SHIFT = 1.1 * JOINT_MM;
export const shifted = (): number =>
  independentRegression(readings, 3, true).change(DROP + OVER - SHIFT, DROP - SHIFT).value;

/** By how many times its height the joint moves the stock curve, so that the change over the same bump is that of the joint. */
export const shiftPerMm = (): number =>
  once('shift', () => {
    const { corner } = learnt();
    const wanted = figureOf('corrected', 'camber');
    const miss = (mm: number) => {
      const [here, there] = independentStrutSweep(corner, [DROP - mm, DROP + OVER - mm]);
      return there!.camber - here!.camber - wanted;
    };
    return secantRoot(miss, 20, 28) / JOINT_MM;
  });

/** By how much a point is too high, mm, in the two corners of the drawing: inner ends of arm and tie rod, then their outer ends. */
export const WRONG_MM = 6;
export const WRONG = { together: [WRONG_MM, WRONG_MM], apart: [WRONG_MM, -WRONG_MM] } as const;
export type Wrong = keyof typeof WRONG;
/** Where the drawing's curves are worked out: mm. */
export const TRAVELS = Array.from({ length: 11 }, (_, i) => -35 + 10 * i);

/** The example as a tape has it that is wrong. */
export function wrongCorner(name: Wrong): IndependentCorner {
  const [inner, outer] = WRONG[name];
  const up = ([x, y, z]: Point, mm: number): Point => [x, y, z + mm];
  const { lowerArm, tieRod } = stock;
  return {
    ...stock,
    lowerArm: { front: up(lowerArm.front, inner), rear: up(lowerArm.rear, inner), ball: up(lowerArm.ball, outer) },
    tieRod: { inner: up(tieRod.inner, inner), outer: up(tieRod.outer, outer) },
  };
}

/** Camber change from travel 0 of such a corner less that of the example, degrees. */
export const differences = (name: Wrong, parts: Parts): number[] =>
  once(`differences ${name} ${parts}`, () => {
    const [wrong, right] = [wrongCorner(name), stock].map((of) => {
      const [zero, ...poses] = independentStrutSweep(fitted(of, parts), [0, ...TRAVELS]);
      return poses.map(({ camber }) => camber - zero!.camber);
    });
    return wrong!.map((one, i) => one - right![i]!);
  });
const farthest = (name: Wrong, parts: Parts) => Math.max(...differences(name, parts).map(Math.abs));

/** By data-name. */
export function workedPredict(): Record<string, { unit: string; value: () => number }> {
  const degrees = (value: () => number) => ({ unit: '°', value });
  const mm = (value: () => number) => ({ unit: 'mm', value });
  const PARTS = { stock: 'stock', joint: 'corrected', alone: 'leftAlone' } as const;
  const ofParts = ([name, parts]: [string, Parts]) => ({
    [`predict.${name}`]: degrees(() => figureOf(parts, 'camber')),
    [`predict.${name}-plus-minus`]: degrees(() => plusMinusOf(parts, 'camber', 'learnt')),
    [`predict.${name}-tape`]: degrees(() => plusMinusOf(parts, 'camber', 'tape')),
    [`predict.${name}-toe`]: degrees(() => figureOf(parts, 'toe')),
    [`predict.${name}-toe-plus-minus`]: degrees(() => plusMinusOf(parts, 'toe', 'learnt')),
    [`predict.${name}-toe-tape`]: degrees(() => plusMinusOf(parts, 'toe', 'tape')),
    [`predict.${name}-roll-centre`]: mm(() => figureOf(parts, 'rollCentre')),
    [`predict.${name}-roll-centre-plus-minus`]: mm(() => plusMinusOf(parts, 'rollCentre', 'learnt')),
    [`predict.${name}-roll-centre-tape`]: mm(() => plusMinusOf(parts, 'rollCentre', 'tape')),
  });
  return {
    ...Object.assign({}, ...Object.entries(PARTS).map(ofParts)),
    'predict.gain': degrees(() => figureOf('corrected', 'camber') - figureOf('stock', 'camber')),
    'predict.shift': mm(() => SHIFT),
    'predict.shifted': degrees(shifted),
    'predict.together-stock': degrees(() => farthest('together', 'stock')),
    'predict.together-joint': degrees(() => farthest('together', 'corrected')),
    'predict.apart-stock': degrees(() => farthest('apart', 'stock')),
    'predict.apart-joint': degrees(() => farthest('apart', 'corrected')),
  };
}
