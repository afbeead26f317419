import { inverse, Matrix } from 'ml-matrix';
import { withLoweredJoint } from './independent-joint.js';
import { type IndependentCorner, independentStrutSweep, type Point } from './independent-strut.js';

/*
 * What readings say of a strut's hard points, a second time, as one linear problem: generalised least squares of the readings with what
 * a tape said beforehand as a prior, which is ridge regression in units of the tape's doubt (Hoerl and Kennard, Technometrics 12, 1970;
 * the same as the Gaussian prior of Gelman et al., Bayesian Data Analysis, 14.8; both from memory). Normal equations by ml-matrix, the
 * derivatives by central differences of the second solver. Nothing is imported from core/.
 */

const NUDGE_MM = 0.05;

/** Every coordinate that a tape measures, as ways to put a corner off by so many mm. In the order of the project's own points. */
const PLACES: readonly (readonly [string, string?])[] = [
  ['lowerArm', 'front'],
  ['lowerArm', 'rear'],
  ['lowerArm', 'ball'],
  ['strut', 'top'],
  ['strut', 'low'],
  ['tieRod', 'inner'],
  ['tieRod', 'outer'],
  ['wheelCentre'],
];

type Off = (corner: IndependentCorner, mm: number) => IndependentCorner;

export const COORDINATES: readonly { id: string; off: Off }[] = PLACES.flatMap(([group, point]) =>
  ['forward', 'sideways', 'height'].map((name, axis) => {
    const moved = (at: Point, mm: number) => at.map((one, k) => (k === axis ? one + mm : one)) as unknown as Point;
    const off: Off = (corner, mm) => {
      const whole = corner as unknown as Record<string, Record<string, Point> & Point>;
      const next = point ? { ...whole[group]!, [point]: moved(whole[group]![point]!, mm) } : moved(whole[group]!, mm);
      return { ...corner, [group]: next };
    };
    return { id: point ? `${group}.${point}.${name}` : `${group}.${name}`, off };
  }),
);

type Angle = 'camber' | 'toe';

/** Of an angle at some travels by each coordinate, degrees a mm: a row a travel. */
export function independentDerivatives(corner: IndependentCorner, travels: readonly number[], angle: Angle): number[][] {
  const columns = COORDINATES.map(({ off }) => {
    const [more, less] = [NUDGE_MM, -NUDGE_MM].map((mm) => independentStrutSweep(off(corner, mm), travels));
    return travels.map((_, i) => (more![i]![angle] - less![i]![angle]) / (2 * NUDGE_MM));
  });
  return travels.map((_, i) => columns.map((column) => column[i]!));
}

/** Of the camber change from stock height to a travel with a lower joint and its rod on, toe set again, degrees a mm. */
export function independentJointGradient(corner: IndependentCorner, mm: number, travel: number): number[] {
  const change = (of: IndependentCorner) => {
    const [start, end] = independentStrutSweep(withLoweredJoint(of, { mm, isTieRodCorrected: true }), [0, travel]);
    return end!.camber - start!.camber;
  };
  return COORDINATES.map(({ off }) => (change(off(corner, NUDGE_MM)) - change(off(corner, -NUDGE_MM))) / (2 * NUDGE_MM));
}

export interface LinearProblem {
  /** A row a reading: derivatives by each coordinate, degrees a mm, and which pass it belongs to. */
  rows: readonly (readonly number[])[];
  passOf: readonly number[];
  /** Of a reading, degrees; of a coordinate beforehand, mm; of a pass's zero, degrees. */
  sd: number;
  tapedMm: number;
  zeroDeg: number;
}

/** (XᵀX/σ² + P⁻¹)⁻¹, zeros of the passes first. */
export function independentCovariance(problem: LinearProblem): Matrix {
  const { sd, tapedMm, zeroDeg } = problem;
  const design = designOf(problem);
  const passes = Math.max(...problem.passOf) + 1;
  const information = design.transpose().mmul(design).div(sd ** 2);
  for (let j = 0; j < design.columns; j++) {
    information.set(j, j, information.get(j, j) + 1 / (j < passes ? zeroDeg : tapedMm) ** 2);
  }
  return inverse(information);
}

/** Where the unknowns are by readings: of each what the taped corner leaves, degrees. */
export function independentEstimate(problem: LinearProblem, left: readonly number[]): number[] {
  const right = designOf(problem).transpose().mmul(Matrix.columnVector([...left])).div(problem.sd ** 2);
  return independentCovariance(problem).mmul(right).to1DArray();
}

function designOf({ rows, passOf }: LinearProblem): Matrix {
  const passes = Math.max(...passOf) + 1;
  return new Matrix(rows.map((row, i) => [...Array.from({ length: passes }, (_, p) => Number(passOf[i] === p)), ...row]));
}

/** Standard deviation of what a gradient by the coordinates gives, zeros of the passes left alone. */
export function independentDeviation(gradient: readonly number[], covariance: Matrix): number {
  const whole = Matrix.columnVector([...Array<number>(covariance.rows - gradient.length).fill(0), ...gradient]);
  return Math.sqrt(whole.transpose().mmul(covariance).mmul(whole).get(0, 0));
}
