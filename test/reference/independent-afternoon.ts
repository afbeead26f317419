import { inverse, Matrix } from 'ml-matrix';
import { COORDINATES, independentDerivatives } from './independent-learning.js';
import { type IndependentCorner, independentStrutSweep } from './independent-strut.js';

/*
 * A strut learnt from an afternoon's readings of camber, a second time: its taped points and whatever is wrong with gauge, tape and
 * passes in one nonlinear problem, by Gauss and Newton's rule on central differences of the second solver and normal equations by
 * ml-matrix. Everything that is known beforehand is a normal prior (Gelman et al., Bayesian Data Analysis, 14.8; from memory). Unlike the
 * project it takes the steepness of the curve, which turns millimetres into degrees, from the links. Nothing is imported from core/.
 */

export interface AfternoonReading {
  travel: number;
  value: number;
  pass?: string;
  going?: 'up' | 'down';
}

/** Half-widths of 95 % intervals: per cent, per cent, mm, degrees. What single passes have of their own is a share of it. */
export interface AfternoonAllowances {
  gaugeScale: number;
  tapeScale: number;
  zeroHeight: number;
  drift: number;
}

const NORMAL_95 = 1.959964;
/** Of a pass's zero beforehand, degrees: nothing is known of it. */
const ZERO_DEG = 20;
const OWN_HEIGHT = 0.5;
const OWN_DRIFT = 0.3;
const ROUNDS = 4;

export interface IndependentLearnt {
  corner: IndependentCorner;
  /** Of `COORDINATES`, mm². */
  covariance: Matrix;
  /** The same before anything was read. */
  before: Matrix;
}

/** @param tapedMm standard deviation of each of `COORDINATES` @param sd of a reading, degrees */
export function independentLearnt(
  taped: IndependentCorner,
  tapedMm: readonly number[],
  readings: readonly AfternoonReading[],
  allowances: AfternoonAllowances,
  sd: number,
): IndependentLearnt {
  const travels = [...new Set(readings.map(({ travel }) => travel))].sort((a, b) => a - b);
  const at = readings.map(({ travel }) => travels.indexOf(travel));
  const passes = [...new Set(readings.map(({ pass }) => pass))];
  const taken = readings.map((reading) => {
    const own = readings.filter(({ pass }) => pass === reading.pass);
    const before = own.filter(({ travel }) =>
      reading.going === 'down' ? travel > reading.travel : travel < reading.travel,
    );
    return before.length / (own.length - 1) - 0.5;
  });
  const of = (key: keyof AfternoonAllowances) => allowances[key] / NORMAL_95;
  /** Columns of what is wrong besides the points, and its standard deviation beforehand. */
  const nuisances = (camber: readonly number[], slope: readonly number[]) => {
    const middle = (Math.max(...camber) + Math.min(...camber)) / 2;
    const inPass = (name: string | undefined, by: (i: number) => number) =>
      readings.map(({ pass }, i) => (pass === name ? by(i) : 0));
    return [
      ...passes.flatMap((name) => [
        { column: inPass(name, () => 1), prior: ZERO_DEG },
        { column: inPass(name, (i) => slope[at[i]!]!), prior: OWN_HEIGHT * of('zeroHeight') },
        { column: inPass(name, (i) => taken[i]!), prior: OWN_DRIFT * of('drift') },
      ]),
      { column: taken, prior: of('drift') },
      { column: at.map((k) => camber[k]! - middle), prior: of('gaugeScale') / 100 },
      { column: readings.map(({ travel }, i) => travel * slope[at[i]!]!), prior: of('tapeScale') / 100 },
      { column: at.map((k) => slope[k]!), prior: of('zeroHeight') },
    ];
  };
  const placed = (mm: readonly number[]) =>
    COORDINATES.reduce((corner, { off }, j) => (mm[j] === 0 ? corner : off(corner, mm[j]!)), taped);
  let moved: number[] = COORDINATES.map(() => 0);
  for (let round = 0; ; round++) {
    const corner = placed(moved);
    const camber = independentStrutSweep(corner, travels).map((pose) => pose.camber);
    const steps = independentStrutSweep(
      corner,
      travels.flatMap((travel) => [travel - 0.5, travel + 0.5]),
    ).map((pose) => pose.camber);
    const slope = travels.map((_, i) => steps[2 * i + 1]! - steps[2 * i]!);
    const others = nuisances(camber, slope);
    const by = independentDerivatives(corner, travels, 'camber');
    const design = new Matrix(readings.map((_, i) => [...others.map(({ column }) => column[i]!), ...by[at[i]!]!]));
    const information = design.transpose().mmul(design).div(sd ** 2);
    [...others.map(({ prior }) => prior), ...tapedMm].forEach((prior, j) => {
      information.set(j, j, information.get(j, j) + 1 / prior ** 2);
    });
    const whole = inverse(information);
    const first = others.length;
    const last = design.columns - 1;
    if (round === ROUNDS)
      return {
        corner,
        covariance: whole.subMatrix(first, last, first, last),
        before: Matrix.diag(tapedMm.map((one) => one ** 2)),
      };
    // Zeros and the like are found anew each round, as if nothing were known of them; the points stay where the prior has them.
    const left = readings.map(({ value }, i) => {
      const linear = by[at[i]!]!.reduce((sum, one, j) => sum + one * moved[j]!, 0);
      return value - camber[at[i]!]! + linear;
    });
    const right = design.transpose().mmul(Matrix.columnVector(left)).div(sd ** 2);
    moved = whole.mmul(right).to1DArray().slice(first);
  }
}

/** Half-width of the 95 % interval of what a gradient by `COORDINATES` gives, others that are independent added: standard deviations. */
export const independentPlusMinus = (gradient: readonly number[], covariance: Matrix, others: readonly number[] = []): number => {
  const column = Matrix.columnVector([...gradient]);
  const own = column.transpose().mmul(covariance).mmul(column).get(0, 0);
  return NORMAL_95 * Math.sqrt(own + others.reduce((sum, one) => sum + one ** 2, 0));
};
