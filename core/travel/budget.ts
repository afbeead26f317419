import { InputError } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import { budgetProblems } from './budget-problems.js';
import { constantPath, type DamperPath, motionRatioAt, travelAfter } from './damper-path.js';
import { type Lowered, type TravelLimits, USUAL_STOP_USABLE } from './travel-limits.js';

/** How much wheel travel is left at a drop, and what ends it? Lengths in mm. */
export interface BudgetRequest {
  /** Of the damper. Not needed where `limits.motionRatio` is given, which a user has measured: it wins. */
  path: DamperPath | undefined;
  limits: TravelLimits;
  /** Usable bump at the wheel, from where the limits were found until something is solid: a limit of its own. */
  bumpTravel?: number;
  /** Travel, from reference height, at which the car stood when the limits were found. Default 0. */
  measuredAt?: number;
  drop: number;
  /**
   * Default `springs`: every limit stays where it is in the body's frame and comes nearer by the drop. The spring's own, as far as
   * the new spring binds where the old one did. `dampers`: what is along the rod stays as it was found, at any height; links and
   * shaft stay where they are; `bumpTravel` is what is left.
   */
  lowered?: Lowered;
  /** Travels from reference height at which the links themselves end. */
  reach?: { droop: number; bump: number };
}

export type LimitId = 'stop' | 'damper' | 'spring' | 'linkage' | 'shaft' | 'bumpTravel';

interface Place {
  /** Wheel travel from ride height at the drop, positive in bump: of droop, negative while there is some. left + drop = travel. */
  left: number;
  /** From reference height. */
  travel: number;
  /** The damper's motion is known no further: it lies there or beyond. */
  atLeast?: true;
}

export interface LimitAt extends Place {
  id: LimitId;
}

export interface End extends Place {
  governedBy: LimitId;
  /** Half-width of the 95 % interval that the doubt of the stop's gap makes, at the wheel. */
  plusMinus?: number;
}

/** An end is left out where nothing is known of it. `limits`: the first to end travel first; of the stop, where it is solid. */
export interface TravelBudget {
  bump: {
    /** The stop is first touched: never after `solid`. */
    touch?: End;
    solid?: End;
    limits: LimitAt[];
  };
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
  at(drop: number): Pick<Place, 'travel' | 'atLeast'>;
}

export interface PreparedBudget {
  path: DamperPath | undefined;
  touch: Limit | undefined;
  bump: Limit[];
  droop: Limit[];
  stopGapPlusMinus: number | undefined;
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
  const rod = (id: LimitId, shortening: number | undefined): Limit[] =>
    shortening === undefined || !path
      ? []
      : [
          {
            id,
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
  const solid = stopLength === undefined ? undefined : stopGap! + stopUsable * (stopLength - stopTrimmed);
  // Of those along the rod the shortest first: beyond what is known of the path they are alike.
  const rods = (
    [
      ['stop', solid],
      ['damper', limits.strokeBump],
      ['spring', limits.springBind],
    ] as const
  )
    .filter(([, gap]) => gap! >= 0)
    .sort(([, a], [, b]) => a! - b!);
  return {
    path,
    touch: rod('stop', stopGap)[0],
    bump: [
      ...rods.flatMap(([id, gap]) => rod(id, gap)),
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
    stopGapPlusMinus: limits.stopGapPlusMinus,
  };
}

/** An entered motion ratio wins: its user has measured it. */
export const pathOf = ({ limits, path }: Pick<BudgetRequest, 'limits' | 'path'>): DamperPath | undefined =>
  limits.motionRatio === undefined ? path : constantPath(limits.motionRatio, -FAR_MM, FAR_MM);

export function budgetAt(prepared: PreparedBudget, drop: number): Omit<TravelBudget, 'changes'> {
  const at = (limits: Limit[], sign: number): LimitAt[] =>
    limits.map((limit) => placed(limit, drop)).sort((a, b) => sign * (a.travel - b.travel));
  const end = (first: LimitAt | undefined): End | undefined => {
    if (!first) return undefined;
    const { id, ...place } = first;
    const { stopGapPlusMinus, path } = prepared;
    const isDoubted = id === 'stop' && stopGapPlusMinus !== undefined && !place.atLeast;
    return {
      ...place,
      governedBy: id,
      ...(isDoubted && { plusMinus: stopGapPlusMinus / motionRatioAt(path!, place.travel) }),
    };
  };
  const [bump, droop] = [at(prepared.bump, 1), at(prepared.droop, -1)];
  const touch = prepared.touch && placed(prepared.touch, drop);
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

function placed({ id, at }: Limit, drop: number): LimitAt {
  const place = at(drop);
  return { id, left: place.travel - drop, ...place };
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
