import { cornering, corneringDoubt } from '../../../core/answers/from-source.js';
import { plusMinus95 } from '../../../core/uncertainty/combine.js';
import { readOffMore, six, withErrors } from '../driveway/coverage.js';
import { normal, ORDINARY, randomCar, randomNumbers } from '../driveway/random-car.js';

/** Between the wheel centres, of a tape, mm, 95 %. */
const TRACK_PLUS_MINUS = 5;
const NORMAL = 1.959964;

/**
 * Random three-dimensional cars, each measured once in the driveway with normal errors of the stated ±, lowered, rolled and steered: how
 * often does the ± hold the true inclination of the outer wheel, and of the inner one?
 *
 * @param steer mean angle of both wheels, degrees; undefined leaves the rack in the middle
 */
export function corneringCoverage({ seed, cars, steer }: { seed: number; cars: number; steer?: number | undefined }) {
  const random = randomNumbers(seed);
  const found = { outer: 0, inner: 0, plusMinus: 0, error: 0 };
  for (let n = 0; n < cars; n++) {
    const corner = randomCar(random, ORDINARY);
    const [drop, roll] = [25 + 15 * random(), 1 + 2 * random()];
    const driveway = {
      ...withErrors({ ...six(corner), camber: readOffMore(corner).camber! }, random),
      track: {
        value: 2 * corner.wheelCentre[1] + (normal(random) * TRACK_PLUS_MINUS) / NORMAL,
        plusMinus: TRACK_PLUS_MINUS,
      },
    };
    const turn = { drop, roll, ...(steer !== undefined && { steer: { angle: steer } }) };
    const truth = cornering({ source: { kind: 'corner', corner }, ...turn });
    const source = { kind: 'driveway', driveway } as const;
    const told = cornering({ source, ...turn });
    const doubt = corneringDoubt({ source, ...turn });
    for (const side of ['outer', 'inner'] as const) {
      const { inclination } = told[side];
      const plusMinus = plusMinus95({ value: inclination, parts: doubt[side] }, doubt.sources);
      const error = inclination - truth[side].inclination;
      if (Math.abs(error) <= plusMinus) found[side] += 1 / cars;
      if (side === 'outer') {
        found.plusMinus += plusMinus / cars;
        found.error += error ** 2 / cars;
      }
    }
  }
  return { ...found, error: Math.sqrt(found.error) };
}
