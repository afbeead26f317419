import { shimFromToe } from '../../../core/answers/shim.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { StrutCorner, Vector3 } from '../../../core/linkage/corner.js';
import type { Linkage } from '../../../core/linkage/linkage.js';
import { partsOn } from '../../../core/linkage/parts/part-data.js';
import { toeReset } from '../../../core/linkage/parts/targets.js';
import { tieRodEndRaised, tieRodLonger } from '../../../core/linkage/parts/tie-rod.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import type { RackSide } from '../../../core/linkage/toe-adjustment.js';
import { opened } from '../../../core/linkage/travel.js';
import { MUCH_BUMP_STEER, normal, randomCar, randomNumbers, STEERING } from '../driveway/random-car.js';
import type { Claim } from '../study-limits.js';

/** 97.5 % quantile of the normal distribution (NIST/SEMATECH e-Handbook 1.3.6.7.1: 1.960). */
const NORMAL = 1.959964;
const RADIANS = Math.PI / 180;
/** Of a tape between two ball joints, and of one to a line that is only thought: half-widths of 95 %, mm. Common practice, no source. */
const ROD_PLUS_MINUS = 3;
const LEVER_PLUS_MINUS = 5;
/** A slope by a good afternoon's readings: standard uncertainty, as a share of it and degrees per mm. */
const RATE_SHARE = 0.03;
const RATE_LEAST = 0.0002;
/** Below this the shares of an amount say nothing, mm. */
const LEAST_MM = 0.5;
/** No more is shimmed, mm. */
const MOST_MM = 40;

/** One wheel that steers itself, and the amount that makes its slope vanish where it stands. */
export interface ShimCase {
  rack: RackSide;
  /** Degrees per mm; mm. */
  rate: number;
  rodLength: number;
  lever: number;
  /** mm, the outer joint's rise in the knuckle, with toe set again where the car stands. */
  exact: number;
}

/** What a tape would measure, without error. */
function tapeOf({ tieRod: { inner, outer }, lowerArm: { ball }, strut: { top } }: StrutCorner) {
  const up = (outer[2] - ball[2]) / (top[2] - ball[2]);
  const axis = [0, 1].map((i) => ball[i]! + up * (top[i]! - ball[i]!)) as [number, number];
  const [x, y] = [outer[0] - inner[0], outer[1] - inner[1]];
  const [dx, dy] = [outer[0] - axis[0], outer[1] - axis[1]];
  return {
    rodLength: Math.hypot(x, y, outer[2] - inner[2]),
    lever: Math.abs(dx * y - dy * x) / Math.hypot(x, y),
    rack: (outer[0] < axis[0] ? 'behind' : 'ahead') as RackSide,
  };
}

/** A root by the secant rule; undefined where it leads nowhere. */
function rootOf(miss: (x: number) => number, step: number, tolerance: number): number | undefined {
  let [a, b] = [0, step];
  let [fa, fb] = [miss(a), miss(b)];
  for (let i = 0; i < 40; i++) {
    if (Math.abs(fb) < tolerance || a === b) return b;
    const next = b - (fb * (b - a)) / (fb - fa);
    if (!Number.isFinite(next) || Math.abs(next) > 3 * MOST_MM) return undefined;
    [a, fa] = [b, fb];
    [b, fb] = [next, miss(next)];
  }
  return undefined;
}

/** By the exact solver: outer end raised, the rod turned until toe where the car stands is as before, the slope there zero. */
export function exactAmount(linkage: Linkage, at: number): number | undefined {
  const toe = sweepTravel(linkage, [at]).toe[0]!;
  const rateWith = (mm: number) => {
    const raised = tieRodEndRaised({ mm })(linkage);
    const turned = (rod: number) => sweepTravel(tieRodLonger({ mm: rod })(raised), [at]);
    const rod = rootOf((one) => turned(one).toe[0]! - toe, 0.5, 1e-9);
    return rod === undefined ? Number.NaN : turned(rod).toeRate[0]!;
  };
  return rootOf(rateWith, 2, 1e-9);
}

/** Random struts of common proportions, lowered by up to 50 mm, a third of them on extended ball joints with the rod left alone. */
export function* shimCases({ seed, cars }: { seed: number; cars: number }): Generator<ShimCase> {
  const random = randomNumbers(seed);
  for (let n = 0; n < cars; n++) {
    const corner = randomCar(random, random() < 0.5 ? STEERING : MUCH_BUMP_STEER);
    const [at, joint] = [50 * random(), random() < 1 / 3 ? 10 + 15 * random() : 0];
    const part = joint === 0 ? [] : [{ part: 'ballJointExtended' as const, mm: joint }];
    const bare = opened(buildLinkage(corner));
    const linkage = part.length === 0 ? bare : toeReset(partsOn(part)(bare), corner.toe);
    const exact = exactAmount(linkage, at);
    if (exact === undefined || Math.abs(exact) > MOST_MM) continue;
    yield { ...tapeOf(withJoint(corner, joint)), rate: sweepTravel(linkage, [at]).toeRate[0]!, exact };
  }
}

/** Where the tape finds the lower ball joint with an extended one on: lower in the knuckle, the rest where it was. */
function withJoint(corner: StrutCorner, mm: number): StrutCorner {
  const [x, y, z] = corner.lowerArm.ball;
  return { ...corner, lowerArm: { ...corner.lowerArm, ball: [x, y, z - mm] as Vector3 } };
}

export interface ShimStudy {
  cars: number;
  /** By rack side: mean and standard deviation of the factor that would have been right. */
  factors: Record<RackSide, { mean: number; deviation: number; cases: number }>;
  covered: number;
  /** Of those that need a shim of 3 mm or more: the 95 % quantile of |error| ÷ |amount|, without errors of measurement. */
  ruleError: number;
  /** Share of amounts with the right sign, of those of 1 mm or more. */
  sign: number;
}

/** Each case measured once, with normal errors: how often does the band hold the exact amount? */
export function shimStudy(options: { seed: number; cars: number }): ShimStudy {
  const random = randomNumbers(options.seed + 50_000);
  const factors: Record<RackSide, number[]> = { behind: [], ahead: [] };
  const shares: number[] = [];
  let [cars, covered, signs, signed] = [0, 0, 0, 0];
  for (const { rack, rate, rodLength, lever, exact } of shimCases(options)) {
    cars++;
    const off = (standard: number) => normal(random) * standard;
    const u = RATE_SHARE * Math.abs(rate) + RATE_LEAST;
    const { amount, plusMinus } = shimFromToe({
      rate: { value: rate + off(u), standardUncertainty: u },
      rodLength: { value: rodLength + off(ROD_PLUS_MINUS / NORMAL), plusMinus: ROD_PLUS_MINUS },
      lever: { value: lever + off(LEVER_PLUS_MINUS / NORMAL), plusMinus: LEVER_PLUS_MINUS },
      rack,
    });
    if (Math.abs(amount - exact) <= plusMinus) covered++;
    if (Math.abs(exact) > LEAST_MM) factors[rack].push(Math.abs((rate * RADIANS * rodLength * lever) / exact));
    const known = { plusMinus: 0 };
    const rule = shimFromToe({
      rate: { value: rate, standardUncertainty: 0 },
      rodLength: { ...known, value: rodLength },
      lever: { ...known, value: lever },
      rack,
    }).amount;
    if (Math.abs(exact) >= 1) {
      signed++;
      if (rule * exact > 0) signs++;
    }
    if (Math.abs(exact) >= 3) shares.push(Math.abs(rule / exact - 1));
  }
  const told = (side: RackSide) => {
    const all = factors[side];
    const mean = all.reduce((sum, one) => sum + one, 0) / all.length;
    const deviation = Math.sqrt(all.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (all.length - 1));
    return { mean, deviation, cases: all.length };
  };
  return {
    cars,
    factors: { behind: told('behind'), ahead: told('ahead') },
    covered: covered / cars,
    ruleError: shares.sort((a, b) => a - b)[Math.floor(0.95 * (shares.length - 1))]!,
    sign: signs / signed,
  };
}

/** What is claimed of the band. */
export const shimClaims = (what: string, { covered, cars }: ShimStudy): Claim[] => [
  { what: `${what}: covered`, share: covered, draws: cars, least: 0.93, most: 0.97 },
];
