import type { CornerFigures } from '../../core/answers/corner-at.js';
import type { WayAnswer } from '../../core/answers/static-camber.js';
import { CAMBER_COSTS, type CamberCost } from '../../core/document/camber-costs.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import type { NAMES } from './bumpline-static-camber.labels.js';
import type { WaysOnSheet } from './static-camber-view.js';

/** How one figure is told, mm or degrees. */
export interface Cost {
  key: CamberCost;
  group: keyof (typeof NAMES)['groups'];
  /** Of its change, and of what it becomes. */
  quantity: { change: Quantity; after: Quantity };
  /** What stands first when its change is sorted by: by its size, or `most` and `least` with its sign. */
  first: 'smallest' | 'largest' | 'most' | 'least';
}

/** A figure of one way. NaN where it cannot be told; undefined where nothing tells it. */
export interface CostOfWay {
  change?: number | undefined;
  after?: number | undefined;
  /** It is still worked out. */
  isComing?: boolean;
}

/** What each way does to the outer wheel in the turn, degrees to the road; NaN out of reach. `roll`: of the suspension, as the car is. */
export interface TurnFigures {
  asItIs: number;
  roll: number;
  ways: ReadonlyMap<WayAnswer['way'], number>;
  /** Bump that the car as it is has left until it is solid, and what the turn takes of it, mm; undefined where nobody told what ends it. */
  bump?: { left: number; taken: number };
  /** Those in which the outer wheel is solid on its stop before it is there. */
  solid: readonly WayAnswer['way'][];
}

/** Those, or that they are still worked out; undefined where there are none. */
export type Turn = TurnFigures | 'coming' | undefined;

const ANGLE = { change: 'camberChange', after: 'camberChange' } as const;
const LENGTH = { change: 'travel', after: 'coordinate' } as const;
const TOE = { change: 'toe', after: 'toe' } as const;

const cost = (
  key: CamberCost,
  group: Cost['group'],
  quantity: Cost['quantity'],
  { first = 'smallest' }: Partial<Pick<Cost, 'first'>> = {},
): Cost => ({ key, group, quantity, first });

/** Camber is added for this: who keeps most of it stands first. */
const KEPT = { first: 'largest' } as const;
const MORE_IS_BETTER = { first: 'most' } as const;
const LESS_IS_BETTER = { first: 'least' } as const;

/** In the order of the table. */
export const COSTS: readonly Cost[] = [
  cost('inclinationAt15', 'turn', ANGLE, KEPT),
  cost('inclinationAt30', 'turn', ANGLE, KEPT),
  cost('innerAt15', 'turn', ANGLE, KEPT),
  cost('innerAt30', 'turn', ANGLE, KEPT),
  cost('inTurn', 'turn', ANGLE, KEPT),
  cost('camberChange', 'travel', ANGLE),
  cost('rollCentreHeight', 'travel', LENGTH),
  cost('toeBefore', 'setting', TOE),
  cost('bumpSteer', 'setting', TOE, LESS_IS_BETTER),
  cost('kingpin', 'steering', ANGLE),
  cost('scrubRadius', 'steering', LENGTH),
  cost('caster', 'steering', ANGLE),
  cost('casterTrail', 'steering', LENGTH),
  cost('halfTrack', 'room', LENGTH),
  cost('bumpTravel', 'room', LENGTH, MORE_IS_BETTER),
  cost('gapStrut', 'room', LENGTH, MORE_IS_BETTER),
];

export const costOf = (key: CamberCost): Cost => COSTS.find((one) => one.key === key)!;

/** Those that this car has: of a wishbone there is no strut beside the tyre. */
export const costsOf = ({ ways }: WaysOnSheet): readonly Cost[] =>
  COSTS.filter(({ key }) => (key !== 'gapStrut' && key !== 'bumpTravel') || ways.some((one) => one[key] !== undefined));

const isInFigures = (key: CamberCost): key is CamberCost & keyof CornerFigures =>
  CAMBER_COSTS.includes(key) && !['toeBefore', 'inTurn', 'bumpTravel', 'gapStrut'].includes(key);

/** What a way changes of one figure, and what it becomes. */
export function ofWay(key: CamberCost, way: WayAnswer, answer: WaysOnSheet, turn: Turn): CostOfWay {
  if (isInFigures(key)) return { change: way.change[key], after: way.figures[key] };
  if (key === 'toeBefore') {
    const { toeBefore } = way;
    return toeBefore === undefined ? {} : { change: toeBefore - answer.toeSet, after: toeBefore };
  }
  if (key !== 'inTurn') return { change: way[key as 'bumpTravel' | 'gapStrut'] };
  if (!turn || turn === 'coming') return { isComing: turn === 'coming' };
  const after = turn.ways.get(way.way);
  return after === undefined ? {} : { change: after - turn.asItIs, after };
}

/** As the car is; undefined where the figure is one of changes alone, or nothing tells it. */
export function asItIs(key: CamberCost, answer: WaysOnSheet, turn: Turn): number | undefined {
  if (isInFigures(key)) return answer.asItIs[key];
  if (key === 'toeBefore') return answer.asItIs.bumpSteer === undefined ? undefined : answer.toeSet;
  return key === 'inTurn' && turn && turn !== 'coming' ? turn.asItIs : undefined;
}

/** The ways in the order that was asked for; those that do not get there, and then those of which it is not known, stand last either way. */
export function sortedWays(
  answer: WaysOnSheet,
  turn: Turn,
  { sortBy, order }: { sortBy?: CamberCost | undefined; order?: 'reversed' | undefined },
): readonly WayAnswer[] {
  const { ways } = answer;
  if (!sortBy) return ways;
  const by = costOf(sortBy);
  const size = (way: WayAnswer): number => {
    const told = ofWay(sortBy, way, answer, turn).change ?? Number.NaN;
    return { smallest: Math.abs(told), largest: -Math.abs(told), most: -told, least: told }[by.first];
  };
  const sense = order === 'reversed' ? -1 : 1;
  const rank = (way: WayAnswer) => (way.isReached ? 0 : 1) + (Number.isNaN(size(way)) ? 2 : 0);
  return [...ways].sort((a, b) => rank(a) - rank(b) || sense * (size(a) - size(b)) || 0);
}
