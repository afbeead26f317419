import { describe, expect, it } from 'vitest';
import { curveOf } from '../../../core/curve/curve.js';
import { learnCorner } from '../../../core/learn/learn-corner.js';
import { predictCurve } from '../../../core/learn/predict-curve.js';
import { slopesOfSet } from '../../../core/learn/set-model.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { hardPointKeys } from '../../../core/linkage/corner.js';
import { standardUncertainty } from '../../../core/uncertainty/combine.js';
import {
  COORDINATES,
  independentCovariance,
  independentDerivatives,
  independentDeviation,
  independentEstimate,
  independentJointGradient,
} from '../../reference/independent-learning.js';
import { independentStrutSweep } from '../../reference/independent-strut.js';
import { randomNumbers } from '../driveway/random-car.js';
import { referenceCorner } from '../linkage/reference-corner.js';
import { drawnAfternoon, EXACT, JOINT_MM, readAfternoon, TAPED_MM, taped } from './study.js';

/** Of a pass's zero beforehand, degrees: nothing is known of it. */
const ZERO_DEG = 20;
const random = randomNumbers(11);
const corner = taped(random, referenceCorner);
const readings = readAfternoon(random, buildLinkage(referenceCorner), drawnAfternoon(random, EXACT));
const learnt = learnCorner({ corner, readings, allowances: EXACT });
const { estimated } = learnt;
const [set] = estimated.sets;
const points = estimated.unknowns.sources.map(({ id }) => id);
const found = { ...learnt.known.corner } as typeof referenceCorner;
const passOf = set!.rows.passOf;
const rowsOf = (by: readonly (readonly number[])[]) => Array.from(set!.at, (i) => by[i]!);

describe('a corner learnt, beside generalised least squares by normal equations and another solver', () => {
  const rows = rowsOf(independentDerivatives(found, [...set!.travels], 'camber'));
  const problem = { rows, passOf, sd: set!.sd, tapedMm: TAPED_MM, zeroDeg: ZERO_DEG };

  it('asks for the same coordinates', () => {
    expect(points).toEqual(COORDINATES.map(({ id }) => id));
    expect(hardPointKeys(corner)).toHaveLength(points.length / 3);
  });

  it('has the derivatives that differences of the other solver have', () => {
    const own = slopesOfSet(estimated.unknowns, estimated.at.subarray(estimated.passes.length), set!);
    own.forEach((column, s) => {
      set!.at.forEach((i, row) => {
        expect(Math.abs(column[i]! - TAPED_MM * rows[row]![s]!), `${points[s]} at ${set!.travels[i]} mm`).toBeLessThan(
          2e-6,
        );
      });
    });
  });

  it('lies where the linear problem about it has its solution', () => {
    const camber = independentStrutSweep(found, [...set!.travels]).map((pose) => pose.camber);
    const moved = estimated.at.subarray(estimated.passes.length).map((one) => TAPED_MM * one);
    const left = Array.from(set!.values, (value, i) => {
      return value - camber[set!.at[i]!]! + rows[i]!.reduce((sum, by, s) => sum + by * moved[s]!, 0);
    });
    const solution = independentEstimate(problem, left);
    const zeros = estimated.passes.length;
    expect(estimated.passes.map(({ id }) => id)).toEqual(['camber.0.zero.a', 'camber.0.zero.b', 'camber.0.zero.c']);
    solution.forEach((value, j) => {
      const own = j < zeros ? ZERO_DEG * estimated.at[j]! : TAPED_MM * estimated.at[j]!;
      expect(Math.abs(value - own), j < zeros ? `zero ${j}` : points[j - zeros]).toBeLessThan(1e-4);
    });
  });

  it('has its covariance, by which a lower joint’s curve is as uncertain as there', () => {
    const covariance = independentCovariance(problem);
    const { factor, passes } = estimated;
    points.forEach((id, s) => {
      const j = passes.length + s;
      const own = TAPED_MM ** 2 * factor.reduce((sum, column) => sum + column[j]! ** 2, 0);
      expect(own / covariance.get(j, j), id).toBeCloseTo(1, 4);
    });
    const parts = [{ part: 'ballJointExtended', mm: JOINT_MM, correctTieRod: true, plusMinus: 0 }] as const;
    const predicted = curveOf(predictCurve(learnt, parts, 'camber', { alignment: 'toe' }));
    for (const mm of [-48, 25, 50]) {
      const expected = independentDeviation(independentJointGradient(found, JOINT_MM, mm), covariance);
      expect(standardUncertainty(predicted.changeEstimate(mm, 0)) / expected, `${mm} mm`).toBeCloseTo(1, 2);
    }
  });
});

describe('three passes of a 0.05° gauge on points known to 5 mm, all of it by the other solver', () => {
  // An outside calculation on another invented strut: 0.049° to 0.008° at 25 mm, 0.103° to 0.015° at 50 mm.
  const heights = Array.from({ length: 17 }, (_, i) => -60 + 7.5 * i);
  const by = independentDerivatives(referenceCorner, heights, 'camber');
  const one = { rows: [...by, ...by, ...by], passOf: [0, 1, 2].flatMap((p) => heights.map(() => p)) };
  const sd = { sd: 0.05, tapedMm: TAPED_MM, zeroDeg: ZERO_DEG };
  const covariance = independentCovariance({ ...one, ...sd });
  it.each([
    [25, 0.049, 0.008],
    [50, 0.103, 0.015],
  ])(
    'make the standard deviation of a 22 mm lower joint’s change at %d mm some six times smaller',
    (mm, before, after) => {
      const gradient = independentJointGradient(referenceCorner, JOINT_MM, mm);
      const taped = TAPED_MM * Math.hypot(...gradient);
      const left = independentDeviation(gradient, covariance);
      expect(taped / before).toBeGreaterThan(0.75);
      expect(taped / before).toBeLessThan(1.35);
      expect(left / after).toBeGreaterThan(0.6);
      expect(left / after).toBeLessThan(1.4);
      expect(taped / left).toBeGreaterThan(5);
    },
  );
});
