import { RACK_SIDES, type RackSide } from '../linkage/toe-adjustment.js';
import { numberChecks, shown } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { type Contribution, contributions, plusMinus95 } from '../uncertainty/combine.js';
import type { Source } from '../uncertainty/estimate.js';
import { NORMAL_95 } from '../uncertainty/normal.js';

/** What was measured of a wheel that steers itself. */
export interface ShimRequest {
  /** Toe rate at ride height, degrees of toe-in per mm of bump, with its standard uncertainty: `slopeEstimate` of a curve of toe. */
  rate: { value: number; standardUncertainty: number /** Default: infinitely many. */; dof?: number };
  /** Between the centres of the tie rod's two ball joints, mm; half-width of its 95 % interval. */
  rodLength: { value: number; plusMinus: number };
  /** From the steering axis to the tie rod's line, mm: at the height of the outer joint, seen from above, square to the rod. */
  lever: { value: number; plusMinus: number };
  rack: RackSide;
}

export interface ShimAnswer {
  /** By how much the tie rod's outer end is to stand higher in the knuckle, mm; negative: lower. */
  amount: number;
  /** Half-width of its 95 % interval, mm. */
  plusMinus: number;
  /** Where that comes from: shares of variance, largest first. `rule` is the rule's own. */
  contributions: Contribution[];
}

/**
 * How fast the outer joint rises per mm of bump, and what else is not plane. Over random struts by test/core/answers/shim-study.ts (seed
 * 9001, 2000 cars; lowered by up to 50 mm, a third of them on ball joints extended by 10 to 25 mm with the rod left alone) 0.901 and 0.946,
 * standard deviation 0.054; of the struts of test/core/linkage/random-corner.ts, further apart than cars are, 0.90 with 0.08.
 */
const FACTOR: Record<RackSide, { value: number; standardUncertainty: number }> = {
  behind: { value: 0.9, standardUncertainty: 0.058 },
  ahead: { value: 0.945, standardUncertainty: 0.058 },
};

const RADIANS = Math.PI / 180;
/** Beyond these, degrees per mm and mm, it is no tie rod of a car. Common practice, no source. */
const LIMITS = { rate: 0.5, rodLength: [100, 900], lever: [40, 300], plusMinus: 100 } as const;

/**
 * The shim that flattens a curve of toe where no hard points are known: by its slope, the rod's length and the steering arm's lever, all
 * measured. Raised by `a`, the outer end makes the rod pull a × factor ÷ length more per mm of bump, which turns the wheel by that ÷
 * lever: a = ±rate (radians) × length × lever ÷ factor. With the rack behind, toe-in in bump is cured by raising the outer end, with the
 * rack ahead by lowering it.
 *
 * A rule for a strut, to begin with: set toe again and measure again after fitting. It tells neither what bend remains nor whether the
 * part may carry it: a tie-rod end is a steering part.
 *
 * @throws InputError with everything that is wrong: `rate.value`, `rate.standardUncertainty`, `rate.dof`, `rodLength.value`,
 *   `rodLength.plusMinus`, `lever.value`, `lever.plusMinus`, `rack`
 */
export function shimFromToe(request: ShimRequest): ShimAnswer {
  const { rate, rodLength, lever, rack } = checked(request);
  const { value: factor, standardUncertainty: ofFactor } = FACTOR[rack];
  const perRate = ((rack === 'behind' ? 1 : -1) * RADIANS * rodLength.value * lever.value) / factor;
  const amount = perRate * rate.value + 0;
  const causes: [Source, number][] = [
    [source('rate', 'the toe readings', rate.dof), perRate * rate.standardUncertainty],
    [source('rodLength', 'the rod’s length'), (amount / rodLength.value) * (rodLength.plusMinus / NORMAL_95)],
    [source('lever', 'the lever'), (amount / lever.value) * (lever.plusMinus / NORMAL_95)],
    [source('rule', 'the rule'), (amount / factor) * ofFactor],
  ];
  const estimate = { value: amount, parts: Float64Array.from(causes, ([, part]) => part) };
  const sources = causes.map(([one]) => one);
  return { amount, plusMinus: plusMinus95(estimate, sources), contributions: contributions(estimate, sources) };
}

const source = (id: string, label: string, dof = Number.POSITIVE_INFINITY): Source => ({ id, label, dof });

function checked(request: ShimRequest): ShimRequest {
  const { rate, rodLength, lever, rack } = (request ?? {}) as Partial<ShimRequest>;
  const problems: Problem[] = [];
  const check = numberChecks(problems);
  check('rate.value', rate?.value, -LIMITS.rate, LIMITS.rate);
  check('rate.standardUncertainty', rate?.standardUncertainty, 0, LIMITS.rate);
  if (rate?.dof !== undefined && !(rate.dof > 0)) {
    problems.push({ code: 'out-of-range', path: 'rate.dof', value: shown(rate.dof), limit: 0 });
  }
  for (const [path, length, [least, most]] of [
    ['rodLength', rodLength, LIMITS.rodLength],
    ['lever', lever, LIMITS.lever],
  ] as const) {
    check(`${path}.value`, length?.value, least, most);
    check(`${path}.plusMinus`, length?.plusMinus, 0, LIMITS.plusMinus);
  }
  if (!RACK_SIDES.includes(rack as RackSide)) {
    const code = rack === undefined ? 'missing' : 'unknown-name';
    problems.push({ code, path: 'rack', value: shown(rack), names: RACK_SIDES });
  }
  if (problems.length > 0) throw new InputError(problems);
  return request;
}
