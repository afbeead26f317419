import { describe, expect, it } from 'vitest';
import { clearanceSteered } from '../../../core/answers/clearance.js';
import { wheelMotion } from '../../../core/answers/from-source.js';
import { Poses } from '../../../core/wheel/gaps.js';
import { columnAt } from '../../../core/wheel/wheel-motion.js';
import { independentStrutSweep } from '../../reference/independent-strut.js';
import { independentGap } from '../../reference/independent-tyre-section.js';
import { randomCar, randomNumbers } from '../driveway/random-car.js';
import { broken, compareCars } from './between-samples-study.js';
import { finished } from './finished.js';

describe('between the travels and rack positions that are worked out', () => {
  it('no gap of invented cars is more than 0.01 mm too hopeful, and no verdict another', () => {
    // 192 places on 32 of these cars and 1080 on others in the bench: `node test/bench/run.mjs between-samples`.
    const compared = [11, 12].flatMap((seed) => compareCars(6, seed));
    expect(compared).toHaveLength(72);
    expect(broken(compared)).toEqual([]);
    // All three verdicts' neighbourhoods were there.
    const near = (gap: number) => compared.filter(({ said }) => Math.abs(said - gap) < 15).length;
    expect(Math.min(near(-5), near(13))).toBeGreaterThan(7);
    // Below what the grid finds it is only by what the grid's own step leaves: of places outside the tyre.
    const outside = compared.filter(({ found }) => found > 0);
    for (const { said, found } of outside) expect(found - said).toBeLessThan(0.1);
  });

  it('the pose is the general solver’s, to 0.006 mm of the wheel’s centre and 0.001 degrees', () => {
    const random = randomNumbers(31);
    for (let n = 0; n < 5; n++) {
      const corner = randomCar(random);
      const motion = wheelMotion({ source: { kind: 'corner', corner }, lock: 26 + 12 * random() });
      const poses = new Poses(motion);
      for (let k = 0; k < 4; k++) {
        const travel = -40 + 95 * random();
        const steer = motion.toe[0]! + (motion.toe.at(-1)! - motion.toe[0]!) * random();
        const rack = poses.rack(travel, steer);
        const [found] = independentStrutSweep(corner, [travel], { rack });
        const { centre, spin } = poses.at(travel, steer);
        centre.forEach((x, i) => {
          expect(Math.abs(x - (found!.wheelCentre[i]! - corner.wheelCentre[i]!))).toBeLessThan(0.006);
        });
        spin.forEach((x, i) => {
          expect(Math.abs(x - found!.spin[i]!)).toBeLessThan(2e-5);
        });
      }
    }
  });

  it('the tightest spot has the gap of an independent wheel there, and a column of the motion has it too', () => {
    const random = randomNumbers(41);
    for (let n = 0; n < 4; n++) {
      const corner = randomCar(random);
      const motion = wheelMotion({ source: { kind: 'corner', corner }, lock: 34 });
      const size = { size: '225/45R17', rimWidthInch: 7.5, offset: 40 };
      const at = { point: [-180 + 20 * random(), -190 - 20 * random(), 180] as [number, number, number] };
      const answer = finished(
        clearanceSteered({
          motion,
          isLeft: true,
          before: size,
          after: size,
          places: [{ name: 'invented', fixedTo: 'body', is: 'chassis', at }],
          limits: { shaftBump: 55 },
          drop: 0,
        }),
      );
      const { travel, toe, gap } = answer.places[0]!.worst;
      const poses = new Poses(motion);
      const [found] = independentStrutSweep(corner, [travel], { rack: poses.rack(travel, toe) });
      const centre = found!.wheelCentre.map((x, i) => x - corner.wheelCentre[i]!) as [number, number, number];
      const { sectionWidth, freeRadius, dimensions } = answer.wheels.after;
      const shape = { sectionWidth, freeRadius, rimRadius: dimensions.rimDiameter / 2, rimWidth: 7.5 * 25.4 };
      expect(Math.abs(independentGap({ centre, spin: found!.spin, shape })(at.point) - gap)).toBeLessThan(0.03);
      const column = new Poses(columnAt(motion, toe)).at(travel);
      column.centre.forEach((x, i) => {
        expect(x).toBeCloseTo(poses.at(travel, toe).centre[i]!, 9);
      });
      expect(columnAt(motion, toe).rack[0]).toBeCloseTo(poses.rack(0, toe), 9);
    }
  });
});
