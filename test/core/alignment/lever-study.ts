import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { StrutCorner } from '../../../core/linkage/corner.js';
import { tieRodLonger } from '../../../core/linkage/parts/tie-rod.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import type { RackSide } from '../../../core/linkage/toe-adjustment.js';
import { opened } from '../../../core/linkage/travel.js';
import { MUCH_BUMP_STEER, randomCar, randomNumbers, STEERING } from '../driveway/random-car.js';

const RADIANS = Math.PI / 180;

export interface LeverCase {
  rack: RackSide;
  /** mm, as a tape would have it. */
  lever: number;
  /** By which the rod was made longer, mm, and what toe that made, degrees of toe-in. */
  longer: number;
  toeChange: number;
}

/** What a tape would measure at stock height, without error. */
function tapeOf({ tieRod: { inner, outer }, lowerArm: { ball }, strut: { top } }: StrutCorner) {
  const up = (outer[2] - ball[2]) / (top[2] - ball[2]);
  const [dx, dy] = [0, 1].map((i) => outer[i]! - ball[i]! - up * (top[i]! - ball[i]!)) as [number, number];
  const [x, y] = [outer[0] - inner[0], outer[1] - inner[1]];
  return { lever: Math.abs(dx * y - dy * x) / Math.hypot(x, y), rack: (dx < 0 ? 'behind' : 'ahead') as RackSide };
}

/** Random struts of common proportions, lowered by up to 50 mm, their rods up to 1.5 mm longer or shorter, by the exact solver. */
export function* leverCases({ seed, cars }: { seed: number; cars: number }): Generator<LeverCase> {
  const random = randomNumbers(seed);
  for (let n = 0; n < cars; n++) {
    const corner = randomCar(random, random() < 0.5 ? STEERING : MUCH_BUMP_STEER);
    const at = 50 * random();
    const longer = (random() < 0.5 ? -1 : 1) * (0.3 + 1.2 * random());
    const linkage = opened(buildLinkage(corner));
    const toe = (of: typeof linkage) => sweepTravel(of, [at]).toe[0]!;
    const toeChange = toe(tieRodLonger({ mm: longer })(linkage)) - toe(linkage);
    if (Number.isFinite(toeChange)) yield { ...tapeOf(corner), longer, toeChange };
  }
}

/** By rack side and together: which factor of the arc's length would have been right. */
export function leverFactors(options: { seed: number; cars: number }) {
  const found: Record<RackSide, number[]> = { behind: [], ahead: [] };
  for (const { rack, lever, longer, toeChange } of leverCases(options)) {
    found[rack].push(((rack === 'behind' ? 1 : -1) * longer) / (lever * toeChange * RADIANS));
  }
  const summary = (all: number[]) => {
    const mean = all.reduce((sum, one) => sum + one, 0) / all.length;
    const deviation = Math.sqrt(all.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (all.length - 1));
    return { mean, deviation, cases: all.length, least: Math.min(...all), most: Math.max(...all) };
  };
  return {
    behind: summary(found.behind),
    ahead: summary(found.ahead),
    all: summary([...found.behind, ...found.ahead]),
  };
}
