import type { LinksOverTravel } from '../../core/answers/geometry-at.js';
import { bumpTravelOf, type CarDocument, limitsOf } from '../../core/document/car.js';
import { InputError } from '../../core/quantity/problem.js';
import { type BudgetRequest, type End, type TravelBudget, travelBudget } from '../../core/travel/budget.js';
import { damperPathOf } from '../../core/travel/damper-path.js';
import type { ChartRegion } from '../chart/model.js';
import { limitName } from '../element/limits.words.js';
import { type Display, show } from '../element/sentence.js';
import { NAMES } from './bumpline-geometry.labels.js';
import type { WorkbenchAnswer } from './geometry-view.js';

const { ends: WORDS } = NAMES;

/** Where travel ends, from stock height; left out where nothing is known of it. */
export interface TravelEnds {
  bump?: End;
  droop?: End;
}

/** What ends the travel of the set in the sentence: what the car says of it, and the reach of its links. */
export function travelEnds({ bare, sets, shown, drop }: WorkbenchAnswer, car: CarDocument): TravelEnds {
  const { curves }: LinksOverTravel = sets[shown] ?? bare;
  const { stopGap, limits } = limitsOf(car);
  const { measuredAt, lowered } = car;
  const bumpTravel = bumpTravelOf(car);
  const reach: BudgetRequest = { path: undefined, limits: {}, drop, reach: curves.reach };
  try {
    return known(
      travelBudget({
        ...reach,
        path: damperPathOf(curves.motion),
        limits: { ...limits, ...(stopGap !== undefined && { stopGap }) },
        ...(bumpTravel !== undefined && { bumpTravel }),
        ...(measuredAt !== undefined && { measuredAt }),
        ...(lowered && { lowered }),
      }),
    );
  } catch (error) {
    // Told where the limits are given; here less is known.
    if (error instanceof InputError) return known(travelBudget(reach));
    throw error;
  }
}

/** An end that lies somewhere beyond what is known ends nothing here. */
function known({ bump, droop }: TravelBudget): TravelEnds {
  const isKnown = (end: End | undefined): end is End => end !== undefined && !end.atLeast;
  const [up, down] = [bump.solid ?? bump.touch, droop.solid];
  return { ...(isKnown(up) && { bump: up }), ...(isKnown(down) && { droop: down }) };
}

/** The hatching beyond, where it begins inside what is drawn. */
export function regionsOf({ bump, droop }: TravelEnds, [low, high]: readonly [number, number]): ChartRegion[] {
  return [
    ...(bump && bump.travel < high
      ? [{ from: bump.travel, to: Number.POSITIVE_INFINITY, label: labelOf(bump, WORDS.bump), kind: 'limit' as const }]
      : []),
    ...(droop && droop.travel > low
      ? [
          {
            from: Number.NEGATIVE_INFINITY,
            to: droop.travel,
            label: labelOf(droop, WORDS.droop),
            kind: 'limit' as const,
          },
        ]
      : []),
  ];
}

const labelOf = ({ governedBy }: End, name: string): string => (governedBy === 'linkage' ? WORDS.links : name);

/** What the hatching is, in a sentence; nothing where there is none. */
export function endsText(ends: TravelEnds, domain: readonly [number, number], display: Display): string {
  const { bump, droop } = ends;
  const at = ({ travel }: End) => show(Math.abs(travel), 'travel', display);
  const regions = regionsOf(ends, domain);
  return [
    bump && regions.some(({ to }) => to > 0) ? WORDS.inBump(at(bump), limitName(bump.governedBy)) : '',
    droop && regions.some(({ from }) => from < 0 && !Number.isFinite(from))
      ? WORDS.inDroop(at(droop), limitName(droop.governedBy))
      : '',
  ]
    .filter(Boolean)
    .join(' ');
}
