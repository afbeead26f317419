import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { drivewayCorner } from '../../../core/driveway/driveway-corner.js';
import { readDriveway } from '../../../core/driveway/read-driveway.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { ARM_ANGLE, CLOSED, POSE_SIZE, poseAt, RACK, SPIN } from '../../../core/linkage/pose.js';

/*
 * test/reference/caster_kpi_camber.csv: camber with steer by exact rotation about an axis of given caster and kingpin inclination,
 * two independent evaluations, for the angle of the wheel plane on the road (a turn plate) and for the angle about the axis.
 */
const [heading, ...lines] = readFileSync(new URL('../../reference/caster_kpi_camber.csv', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .filter((line) => !line.startsWith('#'));
const names = heading!.split(',');
const rows = lines.map((line) =>
  Object.fromEntries(line.split(',').map((cell, i) => [names[i]!, Number(cell)])),
) as Record<string, number>[];

const DEGREES = 180 / Math.PI;
const of = (value: number) => ({ value, plusMinus: 0 });

/** A strut from a driveway with that caster and kingpin inclination, turned about its steering axis: the arm stays where it is. */
function steered({ caster, kpi, static_camber }: Record<string, number>) {
  const linkage = buildLinkage(
    drivewayCorner(readDriveway({ caster: of(caster!), kingpin: of(kpi!), camber: of(static_camber!) })),
  );
  const pose = new Float64Array(POSE_SIZE);
  const at = (rack: number) => {
    pose[ARM_ANGLE] = linkage.home;
    pose[RACK] = rack;
    expect(poseAt(pose, linkage)).toBe(CLOSED);
    // Positive to the left, and top outward: the wheel plane's trace on the road, and its inclination.
    return {
      steer: -Math.atan2(pose[SPIN]!, pose[SPIN + 1]!) * DEGREES,
      inclination: Math.asin(-pose[SPIN + 2]!) * DEGREES,
    };
  };
  const straight = at(0).inclination;
  return (wanted: number): number => {
    let [low, high] = [-110, 110];
    const sign = Math.sign(at(1).steer);
    for (let i = 0; i < 80; i++) {
      const middle = (low + high) / 2;
      if (sign * at(middle).steer < sign * wanted) low = middle;
      else high = middle;
    }
    return at((low + high) / 2).inclination - straight;
  };
}

describe('a wheel steered by a strut from a driveway', () => {
  it('has the reference’s eight cases before it', () => expect(rows).toHaveLength(8));

  it.each(rows)(
    'leans as exact rotation says: caster $caster°, kingpin $kpi°, steered $steer°, static camber $static_camber°',
    (row) => {
      const change = steered(row);
      expect(change(row.steer!)).toBeCloseTo(row.left_change_groundsteer!, 6);
      // A right wheel is its mirror image: it leans as this one does when steered the other way.
      expect(change(-row.steer!)).toBeCloseTo(row.right_change_groundsteer!, 6);
    },
  );

  it('leans nearly by kingpin (1 − cos δ) ± caster sin δ, static camber aside: the rule of small angles', () => {
    for (const row of rows) expect(Math.abs(steered(row)(row.steer!) - row.left_small!)).toBeLessThan(0.1);
  });
});
