import { InputError } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import { type Contribution, contributions } from '../uncertainty/combine.js';
import { NORMAL_95 } from '../uncertainty/normal.js';
import { budgetProblems } from './budget-problems.js';
import type { BudgetRequest } from './budget-request.js';
import { constantPath, type DamperPath, motionRatioAt, travelAfter } from './damper-path.js';
import { ASSUMED_STOP_USABLE, type TravelLimits, USUAL_STOP_USABLE } from './travel-limits.js';

export type { BudgetRequest } from './budget-request.js';

export type LimitId = 'stop' | 'damper' | 'spring' | 'linkage' | 'shaft' | 'bumpTravel';

interface LimitPosition {
  /** Wheel travel from ride height at the drop, positive in bump: of droop, negative while there is some. left + drop = travel. */
  left: number;
  /** From reference height. */
  travel: number;
  /** The damper's motion is known no further: it lies there or beyond. */
  atLeast?: true;
}

/** What is in doubt about a stop: the gap as far as one was stated, and of where it is solid also a share that was assumed. */
interface Doubt {
  /** Half-width of the 95 % interval, mm at the wheel. */
  plusMinus?: number;
  /** What that is made of, largest first: `stopGap`, `stopUsable`. */
  contributions?: Contribution[];
}

export interface LimitAt extends LimitPosition, Doubt {
  id: LimitId;
}

export interface End extends LimitPosition, Doubt {
  governedBy: LimitId;
}

/** An end is left out where nothing is known of it. `limits`: the first to end travel first; of the stop, where it is solid. */
export interface TravelBudget {
  /** The upper end: travels from stock height, mm. */
  bump: {
    /** The stop is first touched: never after `solid`. */
    touch?: End;
    solid?: End;
    limits: LimitAt[];
  };
  /** The lower end, likewise. */
  droop: { solid?: End; limits: LimitAt[] };
  /** Drops from 0 to 150 mm, as far as the damper's motion is known, at which another limit begins to govern `solid`. */
  changes: Change[];
}

export interface Change {
  drop: number;
  from: LimitId;
  to: LimitId;
  direction: 'bump' | 'droop';
}

/** A limit, and at which travel from reference height it lies on a car with that drop. */
interface Limit {
  id: LimitId;
  /** Standard uncertainties on the rod, mm. */
  doubt?: readonly RodDoubt[];
  at(drop: number): Pick<LimitPosition, 'travel' | 'atLeast'>;
}

interface RodDoubt {
  id: 'stopGap' | 'stopUsable';
  label: string;
  u: number;
}

export interface PreparedBudget {
  path: DamperPath | undefined;
  touch: Limit | undefined;
  bump: Limit[];
  droop: Limit[];
}

/** Further than any limit within range at the least motion ratio. */
const FAR_MM = 5000;
/** Between two drops this far apart, the governing limit is taken to change once. */
const SCAN_MM = 1;
const SOLVED_MM = 1e-10;
/** Limits this near to each other differ by rounding. */
const TIED_MM = 1e-11;

/** @throws InputError with all problems at once. */
export function travelBudget(request: BudgetRequest): TravelBudget {
  const problems = budgetProblems(request);
  if (problems.length > 0) throw new InputError(problems);
  const prepared = prepareBudget(request);
  const { bump, droop, path } = prepared;
  const least = Math.max(0, path?.travel[0] ?? 0);
  const most = Math.min(QUANTITIES.drop.max, path?.travel.at(-1) ?? FAR_MM);
  const changes =
    request.lowered === 'dampers'
      ? [...changesOf('bump', bump, least, most), ...changesOf('droop', droop, least, most)]
      : [];
  return { ...budgetAt(prepared, request.drop), changes };
}

/** A request without problems, made ready to be asked at many drops. */
export function prepareBudget({
  limits,
  bumpTravel,
  measuredAt = 0,
  lowered,
  reach,
  ...request
}: BudgetRequest): PreparedBudget {
  const path = pathOf({ limits, ...request });
  const isDampers = lowered === 'dampers';
  const rod = (id: LimitId, shortening: number | undefined, doubt: readonly RodDoubt[] = []): Limit[] =>
    shortening === undefined || !path
      ? []
      : [
          {
            id,
            doubt,
            at(drop) {
              const travel = travelAfter(path, isDampers ? drop : measuredAt, shortening);
              return travel === undefined
                ? { travel: path.travel.at(shortening < 0 ? 0 : -1)!, atLeast: true }
                : { travel };
            },
          },
        ];
  const fixed = (id: LimitId, travel: number | undefined): Limit[] =>
    travel === undefined || Number.isNaN(travel) ? [] : [{ id, at: () => ({ travel }) }];
  const { stopGap, stopLength, stopTrimmed = 0, stopUsable = USUAL_STOP_USABLE, strokeDroop } = limits;
  const { ofGap, ofSolid } = stopDoubts(limits);
  const solid = stopLength === undefined ? undefined : stopGap! + stopUsable * (stopLength - stopTrimmed);
  // Of those along the rod the shortest first: beyond what is known of the path they are alike.
  const rods = (
    [
      ['stop', solid, ofSolid],
      ['damper', limits.strokeBump, []],
      ['spring', limits.springBind, []],
    ] as const
  )
    .filter(([, gap]) => gap! >= 0)
    .sort(([, a], [, b]) => a! - b!);
  return {
    path,
    touch: rod('stop', stopGap, ofGap)[0],
    bump: [
      ...rods.flatMap(([id, gap, doubt]) => rod(id, gap, doubt)),
      ...fixed('linkage', reach?.bump),
      ...fixed('shaft', measuredAt + limits.shaftBump!),
      ...(bumpTravel === undefined
        ? []
        : [
            {
              id: 'bumpTravel' as const,
              at: (drop: number) => ({ travel: (isDampers ? drop : measuredAt) + bumpTravel }),
            },
          ]),
    ],
    droop: [
      ...rod('damper', strokeDroop && -strokeDroop),
      ...fixed('linkage', reach?.droop),
      ...fixed('shaft', measuredAt - limits.shaftDroop!),
    ],
  };
}

/** On the rod: of the gap as stated, and of where the stop is solid that of an assumed share too. */
function stopDoubts({ stopGapPlusMinus = 0, stopLength = 0, stopTrimmed = 0, stopUsable }: TravelLimits) {
  const ofGap: RodDoubt[] =
    stopGapPlusMinus > 0 ? [{ id: 'stopGap', label: 'the gap to the bump stop', u: stopGapPlusMinus / NORMAL_95 }] : [];
  if (stopUsable !== undefined) return { ofGap, ofSolid: ofGap };
  const [least, most] = ASSUMED_STOP_USABLE;
  // Uniform: GUM, JCGM 100:2008, 4.3.7.
  const u = ((most - least) / Math.sqrt(12)) * (stopLength - stopTrimmed);
  const label = 'the share of the bump stop that gives, assumed';
  return { ofGap, ofSolid: u > 0 ? [...ofGap, { id: 'stopUsable' as const, label, u }] : ofGap };
}

/** An entered motion ratio wins: its user has measured it. */
export const pathOf = ({ limits, path }: Pick<BudgetRequest, 'limits' | 'path'>): DamperPath | undefined =>
  limits.motionRatio === undefined ? path : constantPath(limits.motionRatio, -FAR_MM, FAR_MM);

export function budgetAt(prepared: PreparedBudget, drop: number): Omit<TravelBudget, 'changes'> {
  const at = (limits: Limit[], sign: number): LimitAt[] =>
    limits.map((limit) => placed(limit, drop, prepared.path)).sort((a, b) => sign * (a.travel - b.travel));
  const end = (first: LimitAt | undefined): End | undefined => {
    if (!first) return undefined;
    const { id, ...position } = first;
    return { ...position, governedBy: id };
  };
  const [bump, droop] = [at(prepared.bump, 1), at(prepared.droop, -1)];
  const touch = prepared.touch && placed(prepared.touch, drop, prepared.path);
  const [touched, solid, dropped] = [
    end(touch && bump[0] && bump[0].travel < touch.travel ? bump[0] : touch),
    end(bump[0]),
    end(droop[0]),
  ];
  return {
    bump: { ...(touched && { touch: touched }), ...(solid && { solid }), limits: bump },
    droop: { ...(dropped && { solid: dropped }), limits: droop },
  };
}

/** @param path left out where doubt is not asked for */
function placed({ id, at, doubt = [] }: Limit, drop: number, path?: DamperPath): LimitAt {
  const position = at(drop);
  const left = { id, left: position.travel - drop, ...position };
  if (!path || position.atLeast || doubt.length === 0) return left;
  const ratio = motionRatioAt(path, position.travel);
  const parts = Float64Array.from(doubt, ({ u }) => u / ratio);
  const estimate = { value: position.travel, parts };
  return {
    ...left,
    plusMinus: NORMAL_95 * Math.hypot(...parts),
    contributions: contributions(
      estimate,
      doubt.map(({ id: source, label }) => ({ id: source, label, dof: Number.POSITIVE_INFINITY })),
    ),
  };
}

function changesOf(direction: 'bump' | 'droop', limits: Limit[], least: number, most: number): Change[] {
  const sign = direction === 'bump' ? 1 : -1;
  const governing = (drop: number) =>
    limits
      .map((limit) => placed(limit, drop))
      .reduce((first, next) => (sign * (first.travel - next.travel) > TIED_MM ? next : first)).id;
  const between = (low: number, high: number, from: LimitId, to: LimitId): Change[] => {
    if (from === to) return [];
    const drop = (low + high) / 2;
    if (high - low < SOLVED_MM) return [{ drop, from, to, direction }];
    const middle = governing(drop);
    return [...between(low, drop, from, middle), ...between(drop, high, middle, to)];
  };
  const changes: Change[] = [];
  if (limits.length < 2) return changes;
  for (let low = least, from = governing(least); low < most; low += SCAN_MM) {
    const high = Math.min(low + SCAN_MM, most);
    const to = governing(high);
    changes.push(...between(low, high, from, to));
    from = to;
  }
  return changes;
}
