import { describe, expect, it } from 'vitest';
import { curveOf } from '../../../core/curve/curve.js';
import { learnCorner } from '../../../core/learn/learn-corner.js';
import { predictCurve } from '../../../core/learn/predict-curve.js';
import { solveLearnt } from '../../../core/learn/solve-learnt.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { standardUncertainty } from '../../../core/uncertainty/combine.js';
import { six, withErrors } from '../driveway/coverage.js';
import { ORDINARY, randomCar, randomNumbers } from '../driveway/random-car.js';
import { missed, together } from '../study-limits.js';
import { drivewayClaims, drivewayRows, LEARNT_PARTS, learntDriveway, pooledDriveways } from './driveway-coverage.js';
import { drawnAfternoon, EXACT, readAfternoon } from './study.js';

/** The full study runs in the bench: `node test/bench/run.mjs learn`. */
const CARS = 9;
const rows = drivewayRows(
  pooledDriveways([
    learntDriveway({ seed: 1, cars: CARS, doubts: EXACT, level: 1 }),
    learntDriveway({ seed: 2, cars: CARS, doubts: EXACT, level: 1 }),
  ]),
);
const row = (what: string) => rows.find((one) => one.what === what)!;

describe('six measurements in a driveway corrected by readings, over random three-dimensional cars', () => {
  it('hold what parts change over 40 mm, and the roll centre', () => {
    const claims = drivewayClaims(rows);
    expect(missed(claims, true)).toEqual([]);
    // All asked of one car is one draw.
    const all = together('all', claims);
    expect(missed([{ ...all, draws: 2 * CARS }], true)).toEqual([]);
  });

  it('tell a lower joint with its rod to some ±0.02° where six measurements alone had ±0.09°, the roll centre to some 11 mm', () => {
    const joint = row('22 mm lower joint, rod corrected, 40 mm');
    expect(joint.plusMinus).toBeLessThan(0.028);
    expect(joint.before! / joint.plusMinus).toBeGreaterThan(3.3);
    expect(row('roll centre, stock').plusMinus).toBeLessThan(13);
  });

  it('leave a lower joint without its rod as open as before: nothing tells on which side of the axle the rod lies', () => {
    const joint = row('22 mm lower joint, 40 mm');
    expect(joint.plusMinus / joint.before!).toBeGreaterThan(0.8);
  });

  it('and toe readings tell the toe of the car as it stands, and nothing of it with parts on', () => {
    const random = randomNumbers(5);
    const car = randomCar(random, ORDINARY);
    const day = () => drawnAfternoon(random, EXACT);
    const of = { kind: 'driveway', driveway: withErrors(six(car), random, 1) } as const;
    const linkage = buildLinkage(car);
    const readings = readAfternoon(random, linkage, day());
    const source = {
      kind: 'learnt',
      of,
      readings,
      toe: readAfternoon(random, linkage, day(), { quantity: 'toe' }),
    } as const;
    const stock = curveOf(solveLearnt(source).toe!).changeEstimate(40, 0);
    const { toe } = sweepTravel(linkage, [0, 40]);
    expect(Math.abs(stock.value - (toe[1]! - toe[0]!))).toBeLessThan(3 * standardUncertainty(stock));
    const fitted = solveLearnt({ ...source, parts: LEARNT_PARTS['22 mm lower joint']! });
    expect(fitted.toe).toBeUndefined();
    // As wide as without the readings of toe.
    const wide = (one: ReturnType<typeof solveLearnt>) =>
      standardUncertainty(curveOf(one.camber).changeEstimate(40, 0));
    const { toe: _, ...without } = source;
    const blind = solveLearnt({ ...without, parts: LEARNT_PARTS['22 mm lower joint']! });
    expect(wide(fitted) / wide(blind)).toBeGreaterThan(0.8);
  });

  it('tell nothing of toe', () => {
    const driveway = { armLength: { value: 350, plusMinus: 3 } };
    const readings = [-40, -20, 0, 20, 40].map((travel) => ({ travel, value: -0.02 * travel + 1e-4 * travel ** 2 }));
    const learnt = learnCorner({ driveway, readings });
    expect(() => predictCurve(learnt, LEARNT_PARTS['10 mm longer arm']!, 'toe')).toThrow(RangeError);
  });
});
