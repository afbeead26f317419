import type { TriedSource } from '../curve-sources/solved-source.js';
import { numberChecks } from '../quantity/number-problem.js';
import type { Problem } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import { MOST_READ_LOWER } from './most-read-lower.js';

/**
 * How the wheels are steered, into the turn: by the radius of the turn, from its centre to the middle of the rear axle, and the
 * wheelbase, both in m; by the rack, mm; by the angle of the wheel planes on the road, degrees, mean of both wheels. Kinematic steer only:
 * no slip angles.
 */
export type SteerInTurn = { radius: number; wheelbase: number } | { rack: number } | { angle: number };

/** How do both wheels of an axle stand on the road in a turn? */
export interface CorneringRequest<S = TriedSource> {
  /** Links: hard points or a driveway, bare or with parts. From readings and curves of camber alone: the front view, without steer. */
  source: S;
  /** How far below stock height both corners ride, mm. */
  drop: number;
  /** How far below stock height the car stood when its links were measured, mm. Default 0. */
  measuredAt?: number;
  /** How much lower than there it stood when its static camber was read, mm. Default 0. */
  camberReadLower?: number;
  /** Suspension roll, degrees, not negative: the outer wheel goes into bump. A photo shows it with the tyres' share, cable ties without. */
  roll: number;
  /** Standard uncertainty of that, degrees; one more cause of doubt. */
  rollUncertainty?: number;
  /** By how much the body leans further because the tyres give way, degrees. Default 0. */
  tyreRoll?: number;
  /** Half the track, mm, where the source has no hard points. */
  halfTrack?: number;
  /** How far the wheels are turned. */
  steer?: SteerInTurn;
  /** Static camber that is set again at the drop, degrees: at the top mount, or by the upper arm. Default: as the links leave it. */
  camber?: number;
  /** Static toe-in of each wheel that is set again at the drop, degrees. Default: as the links leave it. */
  toe?: number;
}

/** Common practice, no source: wide enough for any road car. */
export const MOST_ROLL = 15;
const MOST_TYRE_ROLL = 5;
const HALF_TRACK = [400, 1200] as const;
const RADIUS_M = [2, 10_000] as const;
const WHEELBASE_M = [1.2, 6] as const;
const MOST_RACK = 200;

/** What is wrong with a request besides its source. */
export function corneringProblems(request: CorneringRequest<unknown>): Problem[] {
  const problems: Problem[] = [];
  const check = numberChecks(problems);
  const { drop, travel, camber, toe } = QUANTITIES;
  check('drop', request.drop, drop.min, drop.max);
  check('roll', request.roll, 0, MOST_ROLL);
  const optional = {
    measuredAt: [travel.min, travel.max],
    camberReadLower: [0, MOST_READ_LOWER],
    rollUncertainty: [0, MOST_ROLL],
    tyreRoll: [0, MOST_TYRE_ROLL],
    halfTrack: HALF_TRACK,
    camber: [camber.min, camber.max],
    toe: [toe.min, toe.max],
  } as const;
  for (const [path, [least, most]] of Object.entries(optional)) {
    const value = request[path as keyof typeof optional];
    if (value !== undefined) check(path, value, least, most);
  }
  return [...problems, ...steerProblems(request.steer)];
}

function steerProblems(steer: unknown): Problem[] {
  if (steer === undefined) return [];
  if (steer === null || typeof steer !== 'object') {
    return [{ code: 'wrong-shape', path: 'steer', value: steer }];
  }
  const problems: Problem[] = [];
  const check = numberChecks(problems);
  const given = steer as Partial<Record<'radius' | 'wheelbase' | 'rack' | 'angle', unknown>>;
  const ways = (['radius', 'rack', 'angle'] as const).filter((way) => given[way] !== undefined);
  const [way, second] = ways;
  if (second)
    problems.push({ code: 'wrong-shape', path: `steer.${second}`, value: given[second], other: `steer.${way}` });
  else if (way === 'rack') check('steer.rack', given.rack, 0, MOST_RACK);
  else if (way === 'angle') check('steer.angle', given.angle, 0, QUANTITIES.steer.max);
  else {
    check('steer.radius', given.radius, ...RADIUS_M);
    check('steer.wheelbase', given.wheelbase, ...WHEELBASE_M);
  }
  return problems;
}
