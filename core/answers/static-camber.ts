import type { SolvedSource, TriedSource } from '../curve-sources/solved-source.js';
import type { Corner } from '../linkage/corner.js';
import type { Linkage } from '../linkage/linkage.js';
import { partOf } from '../linkage/parts/part-data.js';
import type { PartData } from '../linkage/parts/part-kinds.js';
import { ifJoined, staticAngles } from '../linkage/parts/targets.js';
import { opened } from '../linkage/travel.js';
import { numberChecks } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import { asRead } from './aligned-at-drop.js';
import { CAMBER_WAYS, type CamberWay, LOWEST_MORE_MM, MOST_ADDED_DEG, PART_WAYS } from './camber-ways.js';
import {
  type Asked,
  bumpUntil,
  type CornerFigures,
  camberOfPose,
  damperLengthOf,
  figuresOf,
  heldAtTravel,
  type Standing,
  standingWithToe,
  strutToWheelPlane,
  toeWithRodOf,
} from './corner-at.js';
import { linksOf } from './links-of.js';
import { MOST_READ_LOWER } from './most-read-lower.js';
import { leastMiss, nearestRoot } from './nearest-root.js';
import { checkReach } from './within-reach.js';

/** Which way of adding static camber costs what elsewhere? mm and degrees. */
export interface StaticCamberRequest<S = TriedSource> {
  /** Hard points or a driveway, bare or with parts on. */
  source: S;
  /** Travel from stock height to where the car stands. */
  drop: number;
  /** Travel from stock height to where the source was measured. Default 0. */
  measuredAt?: number;
  /** How much lower than that the car stood when its camber was read, people aboard: mm. Default 0. */
  camberReadLower?: number;
  /** Static camber that is to be added; negative adds negative camber. Within ±6. */
  by: number;
  /** Default: all that this kind of corner has. */
  ways?: readonly CamberWay[];
  /** Bump over which the change of camber is told. Default 40. */
  over?: number;
  /** Droop and bump over which bump steer is told. Default [−40, 40]. */
  window?: readonly [number, number];
}

/** One way, toe set again where the car then stands. */
export interface WayAnswer {
  /** Which way it is. */
  way: CamberWay;
  /** What it takes, in the sense of `PART_WAYS`; of lowering, mm lower still. NaN where no amount that the links allow does it. */
  amount: number;
  /** Of `amount`. */
  unit: 'mm' | 'degrees';
  /** Whether what is sold, or set, goes so far. */
  isReached: boolean;
  /** Where it does not: the amount within that which comes nearest, and static camber with it, degrees. All figures below are for that then. */
  ends?: { amount: number; camber: number };
  /** What was put on the car. Not of lowering. */
  part?: PartData;
  /** With it. */
  figures: CornerFigures;
  /** By how much each of them is more than as the car is. */
  change: CornerFigures;
  /** Toe before it is set again, degrees. Left out where the tie rod is not known; NaN where the rod does not join. */
  toeBefore?: number;
  /** How much more of its stroke the damper leaves in bump, mm at the wheel. Left out of a corner without one. */
  bumpTravel?: number;
  /** By how much further the strut is from the tyre, mm: see `strutToWheelPlane`. Left out where there is none beside it. */
  gapStrut?: number;
}

export interface StaticCamberAnswer {
  /** How far below stock height the car stands, mm. */
  drop: number;
  /** Static camber that is added, degrees. */
  by: number;
  /** The bump over which camber gain is told, mm. */
  over: number;
  /** Between which travels bump steer is told, mm. */
  window: readonly [number, number];
  /** Toe-in that is set where the car stands, as it is and with each way, degrees: that of where the source was measured. */
  toeSet: number;
  /** Without any of the ways. */
  asItIs: CornerFigures;
  /** In the order of `CAMBER_WAYS`. */
  ways: WayAnswer[];
}

/** Over which a turn, a kerb or a brake dive moves the wheel: common practice, no source. */
const USUAL_OVER_MM = 40;
const USUAL_WINDOW_MM = [-40, 40] as const;
const CLOSE_DEG = 1e-10;
/** Times what is sold, within which it is told how much it would take. */
const BEYOND = 3;

/** A way ready to be tried: where the corner's links are with an amount, as far as they join, and at which travel it stands. */
interface Tried {
  linkage: Linkage;
  travel: number;
}

/** What all ways have in common. */
interface Car {
  linkage: Linkage;
  corner: Corner;
  here: number;
  toe: number;
  standing: Standing;
  figures: CornerFigures;
  asked: Asked;
}

/**
 * Every way solved on the exact linkage: the amount by a root search on camber at the ride height with toe held there, then everything
 * else with the rod set for it. The wheel centre's height is held, but by lowering. Compliance is not modelled. A way a step.
 *
 * @throws InputError of what is wrong with the source; `wrong-shape`, path `source`, of one without links; from `drop`, `measuredAt`,
 *   `camberReadLower`, `by`, `over`, `window.0`, `window.1`, `ways.0`; `out-of-range`, path `by`, with the most that any way gives as limit, where none
 *   gives as much; `wrong-shape`, path `ways`, where this kind of corner has none of those asked for
 */
export function* staticCamberSteps(request: StaticCamberRequest): Generator<undefined, StaticCamberAnswer> {
  const { source, drop, measuredAt = 0, by, over = USUAL_OVER_MM, window = USUAL_WINDOW_MM } = request;
  const { linkage: measured, corner } = linksOf(source, problemsOf(request));
  const linkage = asRead(measured, source as SolvedSource, request);
  const here = drop - measuredAt;
  const isToeTold = !('driveway' in source && source.driveway);
  const car = carAt(linkage, corner, { drop, here }, { over, window, isToeTold });
  const ways: WayAnswer[] = [];
  for (const way of waysOf(request, linkage)) {
    ways.push(wayAnswer(way, by, car, drop));
    yield;
  }
  if (!ways.some(({ isReached }) => isReached)) {
    const given = ways.map(({ change }) => change.camber).filter(Number.isFinite);
    // No change at all is always had.
    const limit = given.reduce((best, one) => (Math.abs(one - by) < Math.abs(best - by) ? one : best), 0);
    throw new InputError([{ code: 'out-of-range', path: 'by', value: by, limit }]);
  }
  return { drop, by, over, window, toeSet: car.toe, asItIs: car.figures, ways };
}

function carAt(linkage: Linkage, corner: Corner, { drop, here }: { drop: number; here: number }, asked: Asked): Car {
  const { over, window } = asked;
  checkReach(linkage.reach, [
    ['drop', here, drop],
    ['over', here + over, over],
    ['window.0', here + window[0], window[0]],
    ['window.1', here + window[1], window[1]],
  ]);
  const { toe } = staticAngles(linkage);
  const standing = standingWithToe(linkage, here, toe);
  if (!standing) throw new InputError([{ code: 'outside-domain', path: 'drop', value: drop }]);
  return { linkage, corner, here, toe, standing, figures: figuresOf(standing, asked), asked };
}

function wayAnswer(way: CamberWay, by: number, car: Car, drop: number): WayAnswer {
  const { linkage, corner, here, toe, standing, figures: asItIs, asked } = car;
  const part = way === 'lowering' ? undefined : PART_WAYS[way];
  const bare = opened(linkage);
  const tried = (amount: number): Tried | undefined => {
    if (!part) return { linkage: standing.linkage, travel: here + amount };
    const built = amount === 0 ? bare : ifJoined(() => partOf(part.data(amount, corner))(bare));
    return built && { linkage: built, travel: here };
  };
  const wanted = asItIs.camber + by;
  const miss = (amount: number) => {
    const one = tried(amount);
    const pose = one && heldAtTravel(one.linkage, one.travel, toe);
    return pose ? camberOfPose(pose) - wanted : Number.NaN;
  };
  const sold = part ? ([-part.most, part.most] as const) : ([Math.min(0, -drop), LOWEST_MORE_MM] as const);
  const standsAt = (amount: number) => {
    const one = tried(amount);
    return one && standingWithToe(one.linkage, one.travel, toe);
  };
  const root = nearestRoot(miss, [BEYOND * sold[0], BEYOND * sold[1]], CLOSE_DEG);
  // What was tried did not look whether a rod joins there.
  const reached = root !== undefined && root >= sold[0] && root <= sold[1] ? standsAt(root) : undefined;
  const isReached = reached !== undefined;
  const fitted = isReached ? root! : leastMiss(miss, sold);
  const stands = reached ?? standsAt(fitted);
  const figures = stands ? figuresOf(stands, asked) : lost(asItIs);
  const bumpTravel = stands && bumpUntil(stands, damperLengthOf(standing));
  const [gap, gapBefore] = [stands && strutToWheelPlane(stands.linkage), strutToWheelPlane(linkage)];
  return {
    way,
    amount: root ?? Number.NaN,
    unit: part?.unit ?? 'mm',
    isReached,
    ...(!isReached && { ends: { amount: fitted, camber: figures.camber } }),
    ...(part && { part: part.data(fitted, corner) }),
    figures,
    change: changeOf(asItIs, figures),
    ...(asked.isToeTold && { toeBefore: stands ? toeWithRodOf(standing, stands) : Number.NaN }),
    ...(bumpTravel !== undefined && { bumpTravel }),
    ...(gap !== undefined && gapBefore !== undefined && { gapStrut: gap - gapBefore }),
  };
}

const eachOf = (figures: CornerFigures, by: (value: number, name: keyof CornerFigures) => number): CornerFigures =>
  Object.fromEntries(
    Object.entries(figures).map(([name, value]) => [name, by(value, name as keyof CornerFigures)]),
  ) as unknown as CornerFigures;

const changeOf = (before: CornerFigures, after: CornerFigures) => eachOf(after, (value, name) => value - before[name]!);

const lost = (figures: CornerFigures) => eachOf(figures, () => Number.NaN);

function waysOf({ ways = CAMBER_WAYS }: StaticCamberRequest, { kind }: Linkage): CamberWay[] {
  const has = (way: CamberWay) => kind === 'strut' || way === 'lowering' || !PART_WAYS[way].isOnStrutAlone;
  const own = CAMBER_WAYS.filter((way) => ways.includes(way) && has(way));
  if (own.length === 0) throw new InputError([{ code: 'wrong-shape', path: 'ways', value: kind }]);
  return own;
}

function problemsOf({ drop, measuredAt, camberReadLower, by, ways, over, window }: StaticCamberRequest): Problem[] {
  const problems: Problem[] = [];
  const number = numberChecks(problems);
  number('drop', drop, QUANTITIES.drop.min, QUANTITIES.drop.max);
  if (measuredAt !== undefined) number('measuredAt', measuredAt, QUANTITIES.drop.min, QUANTITIES.drop.max);
  if (camberReadLower !== undefined) number('camberReadLower', camberReadLower, 0, MOST_READ_LOWER);
  number('by', by, -MOST_ADDED_DEG, MOST_ADDED_DEG);
  if (over !== undefined) number('over', over, 1, QUANTITIES.drop.max);
  if (window !== undefined) {
    number('window.0', window?.[0], QUANTITIES.drop.min, 0);
    number('window.1', window?.[1], 0, QUANTITIES.drop.max);
  }
  if (ways !== undefined && !Array.isArray(ways))
    problems.push({ code: 'wrong-shape', path: 'ways', value: undefined });
  else if (ways?.length === 0) problems.push({ code: 'missing', path: 'ways', value: undefined });
  else {
    ways?.forEach((way, i) => {
      if (CAMBER_WAYS.includes(way)) return;
      const value = typeof way === 'string' ? way : undefined;
      problems.push({ code: 'unknown-name', path: `ways.${i}`, value, names: CAMBER_WAYS });
    });
  }
  return problems;
}
