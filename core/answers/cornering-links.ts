import type { SolvedLinks, SolvedSource } from '../curve-sources/solved-source.js';
import { type AxleState, axleIfReached, lastReached } from '../linkage/axle.js';
import type { Linkage } from '../linkage/linkage.js';
import { ARM_ANGLE, POSE_SIZE, RACK, SPIN, TRAVEL } from '../linkage/pose-layout.js';
import { sweepTravel } from '../linkage/sweep.js';
import { findReach, moveTo, openReach } from '../linkage/travel.js';
import { leftwards, rackForMeanSteer } from '../linkage/turned-in.js';
import { DEG } from '../math/angle.js';
import { InputError } from '../quantity/problem.js';
import { unlessRefused } from '../quantity/unless-refused.js';
import { ackermannAngles, radiusOfMean } from './ackermann.js';
import { alignedAtDrop } from './aligned-at-drop.js';
import type { CarInTurn, CorneringAnswer, WheelInTurn, WheelReach } from './cornering-answer.js';
import type { CorneringRequest } from './cornering-request.js';

/** Roll is put off by so much either way for what a degree of it does. */
const ROLL_STEP = 0.01;

/** A car whose links are known. */
export interface LinksInTurn extends CarInTurn {
  /**
   * The outer wheel's inclination alone, degrees, as `at` has it; NaN where a link or the steer ends. Steered, whether each wheel is within
   * its own reach is left to `at`, for it costs more than all else.
   */
  outerInclination(roll: number): number;
}

/** A car whose links are known: both wheels solved exactly in one rolled frame. */
export function linksInTurn(request: CorneringRequest, source: SolvedSource, links: SolvedLinks): CarInTurn {
  const isDriveway = source.driveway !== undefined;
  const { steer } = request;
  // Nobody measured its steering arm.
  if (isDriveway && steer && 'rack' in steer) {
    throw new InputError([{ code: 'unknown-name', path: 'steer', value: 'rack', names: ['radius', 'angle'] }]);
  }
  const linkage = alignedAtDrop(links.linkage, source, request);
  return turnOf(linkage, request, { isToeUnknown: isDriveway && request.toe === undefined });
}

/**
 * The same of a linkage that stands at the drop at its own travel 0.
 *
 * @param isNear the linkage is nearly one that is in reach: its own ends are not looked for
 */
export function turnOf(
  linkage: Linkage,
  request: CorneringRequest<unknown>,
  { isToeUnknown = false, isNear = false }: { isToeUnknown?: boolean; isNear?: boolean } = {},
): LinksInTurn {
  const { drop, tyreRoll = 0, steer } = request;
  const axleOf = (roll: number, rack: number) => axleIfReached(linkage, linkage, { roll, rack }, 'found-if-needed');
  const standing = bodyAngles(linkage, 0, 0).camber;
  const direction = leftwards(linkage);

  /** The wheel that ends at a roll with the rack there; none where it is the steer that cannot be had any more. */
  const endedAt = (roll: number, rack: number) => {
    const axle = axleIfReached(linkage, linkage, { roll, rack });
    if (!axle) return undefined;
    const { outer, inner } = reachesAt(linkage, rack);
    const left = Math.min(outer.bump - axle.right.travel, axle.left.travel - inner.droop);
    return left < AT_END_MM ? firstOf(axle, { outer, inner }) : undefined;
  };

  /** Up to which roll can it be had, with the rack in the middle, where bump is counted, and steered? */
  const refuse = (roll: number): never => {
    // Where it cannot be steered so without roll either, that is what is wrong.
    rackOf(linkage, request, 0, direction);
    const straight = axleOf(roll, 0) ? roll : (lastReached((one) => axleOf(one, 0) !== undefined, roll) ?? 0);
    const rackAt = (one: number) => unlessRefused(() => rackOf(linkage, request, one, direction));
    const steered = (one: number) => {
      const rack = rackAt(one);
      return rack !== undefined && axleIfReached(linkage, linkage, { roll: one, rack }) !== undefined;
    };
    const isStraight = straight < roll && steered(straight);
    const limit = isStraight ? straight : (lastReached(steered, straight) ?? 0);
    const other = endedAt(limit, isStraight ? 0 : (rackAt(limit) ?? 0));
    throw new InputError([{ code: 'outside-domain', path: 'roll', value: roll, limit, ...(other && { other }) }]);
  };

  const at = (roll: number): CorneringAnswer => {
    const straight = axleOf(roll, 0) ?? refuse(roll);
    const rack = rackOf(linkage, request, roll, direction);
    const axle = rack === 0 ? straight : (axleOf(roll, rack) ?? refuse(roll));
    const reaches = isNear ? NO_ENDS : reachesAt(linkage, rack);
    if (!isWithin(axle, reaches)) refuse(roll);
    const wheel = (side: 1 | -1): WheelInTurn => {
      const { travel, camber, toe, steer: points } = side > 0 ? axle.right : axle.left;
      // Steered, a wheel may go some hundredths of a millimetre beyond what the rack in the middle allows.
      const { droop, bump } = linkage.reach;
      const middle = bodyAngles(linkage, Math.min(Math.max(travel, droop), bump), 0);
      // The right wheel is solved as a left one, by its mirror image.
      const turned = rack === 0 ? middle : bodyAngles(linkage, travel, -side * rack);
      const inclination = inclinationOf(camber, toe, side * (roll + tyreRoll));
      const parts = {
        static: standing,
        travel: middle.camber - standing,
        steer: turned.lean - middle.lean,
        roll: side * roll,
        tyre: side * tyreRoll,
      };
      const told = parts.static + parts.travel + parts.steer + parts.roll + parts.tyre;
      return {
        travel: travel + drop,
        camber,
        inclination,
        toe: isToeUnknown ? Number.NaN : toe,
        steer: points,
        bars: { ...parts, rest: inclination - told },
      };
    };
    const moved = (reach: WheelReach): WheelReach => ({ ...reach, droop: reach.droop + drop, bump: reach.bump + drop });
    return {
      outer: wheel(1),
      inner: wheel(-1),
      roll: roll + tyreRoll,
      rack: rack * direction || 0,
      ...(steer && 'radius' in steer && { ackermann: ackermannAngles(steer, pivotTrack(linkage)) }),
      rollCentre: { height: axle.rollCentreHeight, offset: -axle.rollCentreOffset },
      perDegreeOfRoll: perDegree(roll, rack, axle),
      limits: { outer: moved(reaches.outer), inner: moved(reaches.inner), first: firstOf(axle, reaches) },
    };
  };

  const perDegree = (roll: number, rack: number, here: AxleState) => {
    const [more, less] = [axleOf(roll + ROLL_STEP, rack), axleOf(roll - ROLL_STEP, rack)];
    const [to, from] = [more ?? here, less ?? here];
    const span = (more ? ROLL_STEP : 0) + (less ? ROLL_STEP : 0);
    const slope = (of: 'left' | 'right') => (to[of].inclination - from[of].inclination) / span;
    return { outer: slope('right'), inner: slope('left') };
  };

  const outerInclination = (roll: number): number => {
    const rack = unlessRefused(() => rackOf(linkage, request, roll, direction));
    const axle = rack === undefined ? undefined : axleOf(roll, rack);
    return axle ? inclinationOf(axle.right.camber, axle.right.toe, roll + tyreRoll) : Number.NaN;
  };

  return { at, outerInclination };
}

/** Of both wheels: no road car's lock goes further, whatever its links allow. Common practice, no source. */
const MOST_MEAN_STEER_DEG = 45;

/** Where the rack is in the turn, mm, positive to the left. @throws InputError where it is not reached */
function rackOf(linkage: Linkage, { steer }: CorneringRequest<unknown>, roll: number, direction: 1 | -1): number {
  if (!steer) return 0;
  if ('rack' in steer) {
    const rack = steer.rack * direction;
    const reaches = (one: number) =>
      axleIfReached(linkage, linkage, { roll, rack: one }, 'found-if-needed') !== undefined;
    if (reaches(rack)) return rack;
    const limit = Math.abs(lastReached(reaches, rack) ?? 0);
    throw new InputError([{ code: 'out-of-range', path: 'steer.rack', value: steer.rack, limit }]);
  }
  const byRadius = 'radius' in steer;
  const pivots = byRadius ? pivotTrack(linkage) : 0;
  const wanted = byRadius ? meanOf(ackermannAngles(steer, pivots)) : steer.angle;
  const { rack, angle, isReached } = rackForMeanSteer(linkage, roll, wanted);
  const isInLock = !byRadius || wanted <= MOST_MEAN_STEER_DEG;
  if (isReached && isInLock) return rack;
  throw new InputError([
    byRadius
      ? {
          code: 'out-of-range',
          path: 'steer.radius',
          value: steer.radius,
          limit: radiusOfMean(isInLock ? angle : Math.min(angle, MOST_MEAN_STEER_DEG), steer.wheelbase, pivots),
        }
      : { code: 'out-of-range', path: 'steer.angle', value: steer.angle, limit: angle },
  ]);
}

const meanOf = ({ outer, inner }: { outer: number; inner: number }): number => (outer + inner) / 2;

/** Between the points where both steering axes meet the road at the drop, mm. */
export function pivotTrack(linkage: Linkage): number {
  const { halfTrack, scrubRadius } = sweepTravel(linkage, [0]);
  return 2 * (halfTrack[0]! - scrubRadius[0]!);
}

/** Of a left wheel to the body: camber, toe, and the inclination of its plane to the body's upright, degrees. */
export function bodyAngles(linkage: Linkage, travel: number, rack: number) {
  const pose = new Float64Array(POSE_SIZE);
  pose[TRAVEL] = travel;
  pose[RACK] = rack;
  pose[ARM_ANGLE] = linkage.home;
  if (!moveTo(pose, linkage, rack === 0 ? linkage.reach : openReach(linkage.home))) {
    return { camber: Number.NaN, toe: Number.NaN, lean: Number.NaN };
  }
  const [x, y, z] = [pose[SPIN]!, pose[SPIN + 1]!, pose[SPIN + 2]!];
  return { camber: Math.atan2(-z, y) / DEG, toe: Math.atan2(x, y) / DEG, lean: Math.asin(-z) / DEG };
}

/**
 * Of a wheel plane to the normal of a road that leans by `roll` under it: asin(−s·n) with the spin axis s = (tan toe, 1, −tan camber)/|…|
 * and n = (0, −sin roll, cos roll). Degrees; roll positive where this wheel is the outer one.
 */
function inclinationOf(camber: number, toe: number, roll: number): number {
  const [forward, down] = [Math.tan(toe * DEG), Math.tan(camber * DEG)];
  const [sine, cosine] = [Math.sin(roll * DEG), Math.cos(roll * DEG)];
  return Math.asin((sine + down * cosine) / Math.hypot(forward, 1, down)) / DEG;
}

type Reaches = Record<'outer' | 'inner', WheelReach>;

const OPEN: WheelReach = { droop: Number.NEGATIVE_INFINITY, bump: Number.POSITIVE_INFINITY };
const NO_ENDS: Reaches = { outer: OPEN, inner: OPEN };
/** The travel at an end of reach is found to about this, mm. */
const ROUNDING_MM = 1e-6;
/** As near as a wheel comes to its end at the last roll that is found. */
const AT_END_MM = 0.05;

/** Whether both wheels are within their own reach. */
const isWithin = ({ left, right }: AxleState, { outer, inner }: Reaches): boolean =>
  right.travel >= outer.droop - ROUNDING_MM &&
  right.travel <= outer.bump + ROUNDING_MM &&
  left.travel >= inner.droop - ROUNDING_MM &&
  left.travel <= inner.bump + ROUNDING_MM;

/** From the drop, mm. */
function reachesAt(linkage: Linkage, rack: number): Reaches {
  const of = (own: number): WheelReach => {
    const { droop, bump, droopEndedBy, bumpEndedBy } = own === 0 ? linkage.reach : findReach(linkage, own);
    return { droop, bump, droopEndedBy, bumpEndedBy };
  };
  return { outer: of(-rack), inner: of(rack) };
}

/** Which wheel is nearer to its end. */
const firstOf = ({ left, right }: AxleState, { outer, inner }: Reaches): 'outer' | 'inner' =>
  outer.bump - right.travel <= left.travel - inner.droop ? 'outer' : 'inner';
