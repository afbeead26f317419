import { compareCurves } from '../../../core/answers/compare.js';
import { curveFrom } from '../../../core/curve/check-curve-data.js';
import { type FitOptions, fitCurve } from '../../../core/curve/fit.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { ballJointExtended } from '../../../core/linkage/parts/index.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { DEFAULT_DOUBTS } from '../../../core/readings/doubts.js';
import { normal, randomCar, randomNumbers, SURE_TRAVEL_MM } from '../driveway/random-car.js';
import type { Claim } from '../study-limits.js';
import type { Goal } from './noise-cells.js';
import { type Noise, readingsOf } from './noisy-series.js';

type Linkage = ReturnType<typeof buildLinkage>;

/** Bump over which the two sets of parts are compared, mm, and the lowest and highest height that is read. */
const BUMP_MM = 40;
const [LOW_MM, HIGH_MM] = [-25, 65];
/** Common practice, no source. */
const JOINTS_MM = [8, 22] as const;

/** A random strut, and the same with a longer ball joint whose tie rod is corrected. */
function randomPair(random: () => number): { linkages: [Linkage, Linkage]; truth: number } {
  for (;;) {
    try {
      const old = buildLinkage(randomCar(random));
      const mm = JOINTS_MM[0] + (JOINTS_MM[1] - JOINTS_MM[0]) * random();
      const now = ballJointExtended({ mm, correctTieRod: true })(old);
      if (Math.min(old.reach.bump, now.reach.bump) < SURE_TRAVEL_MM) continue;
      const truth = trueBreakEven(old, now);
      if (truth !== undefined) return { linkages: [old, now], truth };
    } catch {
      // Does not close.
    }
  }
}

/** By bisection on the linkages themselves; undefined where there is none inside what is read. */
function trueBreakEven(old: Linkage, now: Linkage): number | undefined {
  const change = (linkage: Linkage, from: number) => {
    const { camber } = sweepTravel(linkage, [from, from + BUMP_MM]);
    return camber[1]! - camber[0]!;
  };
  const wanted = change(old, 0);
  let [low, high] = [0, HIGH_MM - BUMP_MM];
  const lacks = (drop: number) => change(now, drop) - wanted < 0;
  if (!lacks(low) || lacks(high)) return undefined;
  while (high - low > 1e-6) {
    const middle = (low + high) / 2;
    if (lacks(middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

export interface BreakEvenCell {
  name: string;
  goal: Goal;
  /** Of both sets; what it draws is drawn for each by itself. */
  noise: Noise;
  /** mm, of the reference and of the other. */
  zeros?: readonly [number, number];
  options?: FitOptions;
  /** One gauge and one tape for both sets: in truth, and as declared. */
  hasSameInstruments?: boolean;
  isDeclaredSame?: boolean;
  /** The interval of scatter alone covers less than this. */
  plainMost?: number;
}

const stated = (plusMinus: number) => (random: () => number) => (plusMinus / 1.96) * normal(random);
const { gaugeScale, tapeScale, zeroHeight, drift } = DEFAULT_DOUBTS;
const TURNS: Noise = { layout: 'in turn', gauge: [0.02, 0.06] };
const SCALES: Noise = { gaugeScale: stated(gaugeScale / 100), tapeScale: stated(tapeScale / 100) };
const STATED: Noise = { ...TURNS, ...SCALES, heightZero: stated(zeroHeight), drift: stated(drift) };

export const BREAK_EVEN_CELLS: readonly BreakEvenCell[] = [
  { name: 'as stated, up and down in turn', goal: 'stated', noise: STATED },
  { name: 'as stated, all up', goal: 'stated', noise: { ...STATED, layout: 'up' } },
  {
    name: 'as stated, one gauge and tape, declared',
    goal: 'stated',
    noise: STATED,
    hasSameInstruments: true,
    isDeclaredSame: true,
  },
  { name: 'as stated, one gauge and tape, not declared', goal: 'stated', noise: STATED, hasSameInstruments: true },
  { name: 'as stated, correlation 0.5', goal: 'stated', noise: { ...STATED, correlation: 0.5 } },
  {
    name: 'as stated, zero heights ±5 mm, declared',
    goal: 'stated',
    noise: { ...STATED, heightZero: stated(5) },
    options: { zeroHeight: 5 },
  },
  { name: 'nothing wrong, in turn', goal: 'inside', noise: TURNS },
  { name: 'zero heights 2 mm apart', goal: 'inside', noise: TURNS, zeros: [1, -1] },
  { name: 'zero heights 4 mm apart', goal: 'beyond', noise: TURNS, zeros: [2, -2], plainMost: 0.75 },
  {
    name: 'zero heights 4 mm apart, ±4 mm declared',
    goal: 'inside',
    noise: TURNS,
    zeros: [2, -2],
    options: { zeroHeight: 4 },
  },
];

export interface BreakEvenCoverage {
  pairs: number;
  covered: number;
  /** Mean width of intervals that end on both sides, mm. */
  width: number;
  /** Share of intervals with an open end. */
  open: number;
}

export function breakEvenCoverage(
  seeds: readonly number[],
  count: number,
  { noise, zeros, options = {}, hasSameInstruments = false, isDeclaredSame = false }: BreakEvenCell,
): BreakEvenCoverage {
  const heights = Array.from({ length: (HIGH_MM - LOW_MM) / 5 + 1 }, (_, i) => LOW_MM + 5 * i);
  let [n, covered, closed, width] = [0, 0, 0, 0];
  for (const seed of seeds) {
    const random = randomNumbers(seed);
    for (const end = n + count; n < end; ) {
      const { linkages, truth } = randomPair(random);
      const one = { gaugeScale: drawn(noise.gaugeScale, random), tapeScale: drawn(noise.tapeScale, random) };
      const curves = linkages.map((linkage, i) => {
        const scatter = noise.gauge![0] + (noise.gauge![1] - noise.gauge![0]) * random();
        const own = { ...noise, ...(hasSameInstruments && one), ...(zeros && { heightZero: zeros[i]! }) };
        const plan = { passes: 3, heights, missing: 0.1, isPartial: false };
        const { curve } = fitCurve(readingsOf(linkage, plan, scatter, random, own), options);
        return { curve: curveFrom(curve), ...(isDeclaredSame && { instruments: 'one' }) };
      });
      const { change } = compareCurves({ heights: [0], bump: BUMP_MM, curves }).breakEvens[0]!;
      if (!change) continue;
      n++;
      if (change.kind === 'none') continue;
      const { low, high, isLowOpen, isHighOpen } = change.interval;
      if ((isLowOpen || truth >= low) && (isHighOpen || truth <= high)) covered++;
      if (isLowOpen || isHighOpen) continue;
      closed++;
      width += high - low;
    }
  }
  return { pairs: n, covered: covered / n, width: width / closed, open: 1 - closed / n };
}

const drawn = (of: Noise['gaugeScale'], random: () => number) => (typeof of === 'function' ? of(random) : (of ?? 0));

/** What a cell claims of its pairs: 93 to 97 % covered; where an error is fixed inside what is allowed for, 93 % at least. */
export const coveredClaim = (
  { goal }: Pick<BreakEvenCell, 'goal'>,
  { covered, pairs }: Pick<BreakEvenCoverage, 'covered' | 'pairs'>,
): Claim => ({ what: 'covered', share: covered, draws: pairs, least: 0.93, ...(goal === 'stated' && { most: 0.97 }) });

export const scatterClaim = (most: number, { covered, pairs }: BreakEvenCoverage): Claim => ({
  what: 'covered by the scatter alone',
  share: covered,
  draws: pairs,
  most,
});
