import { describe, expect, it } from 'vitest';
import { learnCorner } from '../../../core/learn/learn-corner.js';
import { predictCurve } from '../../../core/learn/predict-curve.js';
import { missed, together } from '../study-limits.js';
import { drivewayClaims, drivewayRows, LEARNT_PARTS, learntDriveway, pooledDriveways } from './driveway-coverage.js';
import { EXACT } from './study.js';

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

  it('tell nothing of toe', () => {
    const driveway = { armLength: { value: 350, plusMinus: 3 } };
    const readings = [-40, -20, 0, 20, 40].map((travel) => ({ travel, value: -0.02 * travel + 1e-4 * travel ** 2 }));
    const learnt = learnCorner({ driveway, readings });
    expect(() => predictCurve(learnt, LEARNT_PARTS['10 mm longer arm']!, 'toe')).toThrow(RangeError);
  });
});
