import { numberProblem } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import { constantPath, type DamperPath, motionRatioAt, travelAfter } from './damper-path.js';
import { type Lowered, type TravelLimits, USUAL_STOP_USABLE } from './travel-limits.js';

/** What can end travel. `given`: bump travel that was measured at the wheel. */
export type LimitId = 'stop' | 'damper' | 'spring' | 'linkage' | 'shaft' | 'given';

export interface BudgetRequest {
  /** How the damper follows the wheel; undefined where nothing is known of it. */
  path: DamperPath | undefined;
  limits: TravelLimits;
  /** Usable bump travel at the wheel, as in `LoweringRequest`: from reference height, or with `dampers` what is left at any. */
  bumpTravel?: number;
  /** The drop at which the limits were found, mm. Default 0. */
  measuredAt?: number;
  drop: number;
  /** Default: shorter springs. */
  lowered?: Lowered;
  /** What the links allow, from reference height. */
  reach?: { droop: number; bump: number };
}

/** One end of travel, mm at the wheel. */
export interface End {
  /** From the height asked about; in bump negative where that is past it, in droop counted downward. */
  left: number;
  /** From reference height. */
  travel: number;
  governedBy: LimitId;
  /** 95 %, from how sure the gap is. */
  plusMinus?: number;
}

export interface TravelBudget {
  bump: {
    /** The stop is touched. Never after solid. */
    touch?: End;
    solid?: End;
    limits: End[];
  };
  droop: { solid?: End; limits: End[] };
  /** Drops at which another limit takes over, ascending. */
  changes: { drop: number; direction: 'bump' | 'droop'; from: LimitId; to: LimitId }[];
}

const LONGEST_MM = 400;
const LARGEST_DROP_MM = 150;
const DROP_STEP_MM = 5;

/**
 * What is left of bump and droop at a height, and what ends it. With shorter springs every limit keeps its place in the body's
 * frame; with a height-adjustable lower body what is measured along the damper keeps its gap on the rod, and is followed from
 * the new height, so another limit may come to govern.
 *
 * @throws InputError with all problems at once; `limits.motionRatio` missing where a gap on the rod has no damper to follow
 */
export function travelBudget(request: BudgetRequest): TravelBudget {
  check(request);
  const { drop, limits } = request;
  const at = (d: number) => endsAt(request, d);
  const ends = at(drop);
  const solids = ends.bump.filter(({ isTouch }) => !isTouch).map(({ isTouch: _, ...end }) => end);
  const touches = ends.bump.map(({ isTouch: _, ...end }) => end);
  const solid = least(solids);
  const touch = limits.stopGap === undefined ? undefined : least(touches);
  const droop = least(ends.droop);
  return {
    bump: { ...(touch && { touch }), ...(solid && { solid }), limits: touches },
    droop: { ...(droop && { solid: droop }), limits: ends.droop },
    changes: request.lowered === 'dampers' ? changes(at) : [],
  };
}

interface BumpEnd extends End {
  isTouch?: true;
}

function endsAt(
  { path, limits, bumpTravel, measuredAt = 0, lowered = 'springs', reach }: BudgetRequest,
  drop: number,
): { bump: BumpEnd[]; droop: End[] } {
  const rod = limits.motionRatio === undefined ? path : constantPath(limits.motionRatio);
  // What goes with the damper's body is found from where the car stands, the rest from where it stood.
  const from = lowered === 'dampers' ? drop : measuredAt;
  const bump: BumpEnd[] = [];
  const droop: End[] = [];
  const add = (to: BumpEnd[], governedBy: LimitId, travel: number | undefined, more: Partial<BumpEnd> = {}) => {
    if (travel === undefined) return;
    to.push({ left: to === bump ? travel - drop : drop - travel, travel, governedBy, ...more });
  };
  const along = (amount: number | undefined) =>
    amount === undefined || !rod ? undefined : travelAfter(rod, from, amount);

  const { stopGap, stopGapPlusMinus = 0, stopLength, stopTrimmed = 0, stopUsable = USUAL_STOP_USABLE } = limits;
  const touch = along(stopGap);
  const doubt =
    touch !== undefined && stopGapPlusMinus > 0 ? { plusMinus: stopGapPlusMinus / motionRatioAt(rod!, touch) } : {};
  add(bump, 'stop', touch, { isTouch: true, ...doubt });
  if (stopGap !== undefined && stopLength !== undefined) {
    add(bump, 'stop', along(stopGap + stopUsable * (stopLength - stopTrimmed)), doubt);
  }
  add(bump, 'damper', along(limits.strokeBump));
  add(bump, 'spring', along(limits.springBind));
  add(bump, 'linkage', reach?.bump);
  if (limits.shaftBump !== undefined) add(bump, 'shaft', measuredAt + limits.shaftBump);
  if (bumpTravel !== undefined) {
    add(bump, 'given', lowered === 'dampers' ? drop + bumpTravel : measuredAt + bumpTravel);
  }
  add(droop, 'damper', limits.strokeDroop === undefined ? undefined : along(-limits.strokeDroop));
  add(droop, 'linkage', reach?.droop);
  if (limits.shaftDroop !== undefined) add(droop, 'shaft', measuredAt - limits.shaftDroop);
  return { bump, droop };
}

const least = (ends: readonly End[]): End | undefined =>
  ends.reduce((a, b) => (a && a.left <= b.left ? a : b), undefined as End | undefined);

/** Where another limit takes over between two drops: found by steps, then by halves, not read off a grid. */
function changes(at: (drop: number) => { bump: BumpEnd[]; droop: End[] }): TravelBudget['changes'] {
  const found: TravelBudget['changes'] = [];
  for (const direction of ['bump', 'droop'] as const) {
    const governor = (drop: number) => least(at(drop)[direction].filter((end: BumpEnd) => !end.isTouch))?.governedBy;
    for (let d = 0; d < LARGEST_DROP_MM; d += DROP_STEP_MM) {
      const [from, to] = [governor(d), governor(d + DROP_STEP_MM)];
      if (from === undefined || to === undefined || from === to) continue;
      let [low, high] = [d, d + DROP_STEP_MM];
      while (high - low > 1e-9) {
        const middle = (low + high) / 2;
        if (governor(middle) === from) low = middle;
        else high = middle;
      }
      found.push({ drop: (low + high) / 2, direction, from, to });
    }
  }
  return found.sort((a, b) => a.drop - b.drop);
}

/** Gaps and lengths that are measured along the damper. */
const ALONG_ROD = ['stopGap', 'strokeBump', 'strokeDroop', 'springBind'] as const;

function check({ path, limits, bumpTravel, measuredAt, drop }: BudgetRequest): void {
  const problems: Problem[] = [];
  const number = (name: string, value: unknown, fewest: number, most: number) => {
    const problem = value === undefined ? undefined : numberProblem(name, value, fewest, most);
    if (problem) problems.push(problem);
  };
  const { min, max } = QUANTITIES.drop;
  for (const [name, value] of Object.entries({ drop, measuredAt })) number(name, value, min, max);
  number('bumpTravel', bumpTravel, 0, LONGEST_MM);
  for (const key of [...ALONG_ROD, 'stopLength', 'shaftBump', 'shaftDroop'] as const) {
    number(`limits.${key}`, limits[key], 0, LONGEST_MM);
  }
  number('limits.stopTrimmed', limits.stopTrimmed, 0, limits.stopLength ?? LONGEST_MM);
  number('limits.stopGapPlusMinus', limits.stopGapPlusMinus, 0, 100);
  number('limits.stopUsable', limits.stopUsable, 0.05, 0.95);
  number('limits.motionRatio', limits.motionRatio, QUANTITIES.ratio.min, QUANTITIES.ratio.max);
  if (!path && limits.motionRatio === undefined && ALONG_ROD.some((key) => limits[key] !== undefined)) {
    problems.push({ code: 'missing', path: 'limits.motionRatio', value: undefined });
  }
  if (problems.length > 0) throw new InputError(problems);
}
