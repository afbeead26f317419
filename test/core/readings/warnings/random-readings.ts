import { buildLinkage } from '../../../../core/linkage/build-linkage.js';
import type { Corner } from '../../../../core/linkage/corner.js';
import { sweepTravel } from '../../../../core/linkage/sweep.js';
import type { Reading } from '../../../../core/readings/reading.js';
import { normal, randomCar } from '../../driveway/random-car.js';

/** How a set of readings is taken. Ranges: common practice, no source. */
export interface Care {
  /** How many passes, at least and at most. */
  passes?: readonly [number, number];
  /** mm between heights. */
  steps?: readonly number[];
  /** Standard deviation of the gauge, degrees. */
  gauge?: readonly [number, number];
  /** Standard deviation of the height, mm. */
  travelError?: number;
  /** Share of readings not taken. */
  missing?: number;
  /** Of a pass, either way, degrees. */
  offset?: number;
  /** To which a gauge is written down, degrees. */
  resolution?: number;
  /** Up less down, degrees; going is then marked. */
  play?: number;
  /** A plausible road car's strut when left out. */
  corner?: (random: () => number) => Corner;
  /** A rule on the body, read to 0.5 mm. */
  hasBody?: boolean;
}

/**
 * Readings of the inclination of a random strut's wheel, as a gauge on the hub would give them: heights off by a millimetre, another
 * zero in each pass, some heights left out. Half of the sets mark which way the wheel went.
 */
export function randomReadings(random: () => number, care: Care = {}): Reading[] {
  const {
    passes = [2, 4],
    steps = [4, 5, 6, 8],
    gauge = [0.03, 0.1],
    travelError = 1,
    missing = 0.1,
    offset = 0.3,
    resolution = random() < 0.5 ? 0.01 : 0.05,
    play = 0,
    hasBody = false,
    corner = randomCar,
  } = care;
  const between = (least: number, most: number) => least + (most - least) * random();
  const pick = <T>(list: readonly T[]) => list[Math.floor(random() * list.length)]!;
  const linkage = buildLinkage(corner(random));
  const step = pick(steps);
  const low = -step * Math.round(between(25, 50) / step);
  const high = step * Math.round(between(35, 60) / step);
  const sd = between(gauge[0], gauge[1]);
  const isMarked = play !== 0 || random() < 0.5;
  const count = Math.floor(between(passes[0], passes[1] + 1));
  return Array.from({ length: count }, (_, p) => {
    const zero = between(-offset, offset);
    const isUp = p % 2 === 0;
    const heights = Array.from({ length: Math.round((high - low) / step) + 1 }, (_, i) => low + i * step);
    if (!isUp && isMarked) heights.reverse();
    return heights.flatMap((travel): Reading[] => {
      if (random() < missing) return [];
      const { inclination } = sweepTravel(linkage, [travel + travelError * normal(random)]);
      const exact = inclination[0]! + zero + sd * normal(random) + (isUp ? play : -play) / 2;
      return [
        {
          travel,
          value: Number((Math.round(exact / resolution) * resolution).toFixed(4)),
          pass: `Pass ${p + 1}`,
          ...(isMarked && { going: isUp ? 'up' : 'down' }),
          ...(hasBody && { body: 640 + Math.round(normal(random) * 0.4 * 2) / 2 }),
        },
      ];
    });
  }).flat();
}
