import { DEG } from '../math/angle.js';
import { add, dot, scale, subtract, unit, type Vec } from '../math/vector.js';
import { type Envelope, type Pose, type Poses, turned } from './gaps.js';
import { forwardOf, type Place } from './place.js';

/** A place made ready: where it is in any pose. */
export interface Placed {
  readonly place: Place;
  /** Where it was measured. */
  readonly measured: Vec;
  /** Where it would have been measured with each doubt of the motion, in their order. */
  readonly doubted: readonly Placed[];
  /** @param steer degrees; see Poses */
  at(poses: Poses, travel: number, steer?: number): Vec;
  /** Of a place that goes a share of the carrier's way: the same with so much more of it. */
  further?(poses: Poses, travel: number, steer: number, more: number): Vec;
}

/**
 * A place as measured with the old wheel on. What is fixed to the lower arm swings about the line through its pivots, as the
 * ball joint does. What is fixed to the tie rod keeps its distances to both its ends: the rod is turned by the least turn that
 * takes it from where it lay to where it lies, and not about its own line, which no length decides.
 *
 * @param measuredAt travel at which the car stood, mm
 */
export function placed(place: Place, before: Envelope, poses: Poses, measuredAt: number, isLeft: boolean): Placed {
  const home = poses.at(measuredAt);
  const measured = 'point' in place.at ? place.at.point : fromClock(place.at, before, home, isLeft);
  const rest = subtract(measured, home.centre);
  const { joints } = poses.motion;
  const [ball, tieOuter] = [poses.joint('ball', measuredAt), poses.joint('tieOuter', measuredAt)];

  /** Carried by the wheel carrier: as far along its axis and away from it as before. */
  const carried = ({ centre, spin }: Pose): Vec => add(centre, turned(rest, home.spin, spin));
  const goes = (share: number, now: Poses, travel: number, steer?: number): Vec =>
    add(measured, scale(subtract(carried(now.at(travel, steer)), measured), share));
  const between = (share = 0.5): Ways => ({
    at: (now, travel, steer) => goes(share, now, travel, steer),
    further: (now, travel, steer, more) => goes(share + more, now, travel, steer),
  });
  const onRod = (): Ways => {
    if (!joints || !tieOuter) return between();
    const from = unit(subtract(tieOuter, joints.tieInner));
    const onIt = subtract(measured, joints.tieInner);
    return {
      at: (now, travel, steer = now.ahead) => {
        const inner = add(joints.tieInner, [0, now.rack(travel, steer), 0]);
        return add(inner, turned(onIt, from, unit(subtract(now.joint('tieOuter', travel, steer)!, inner))));
      },
    };
  };
  const onArm = (): Ways => {
    if (!joints || !ball) return between();
    const { armPivot, armAxis } = joints;
    const across = (point: Vec): Vec => {
      const out = subtract(point, armPivot);
      return subtract(out, scale(armAxis, dot(out, armAxis)));
    };
    const [from, onIt] = [unit(across(ball)), subtract(measured, armPivot)];
    return {
      at: (now, travel, steer) => add(armPivot, turned(onIt, from, unit(across(now.joint('ball', travel, steer)!)))),
    };
  };
  const ways: Record<Place['fixedTo'], () => Ways> = {
    body: () => ({ at: () => measured }),
    carrier: () => ({ at: (now, travel, steer) => goes(1, now, travel, steer) }),
    tieRod: onRod,
    lowerArm: onArm,
    between: () => between(place.share),
  };
  const doubted = poses.doubted.map((other) => placed(place, before, other, measuredAt, isLeft));
  return { place, measured, doubted, ...ways[place.fixedTo]() };
}

type Ways = Pick<Placed, 'at' | 'further'>;

/** Beside the old tyre's sidewall at that clock position, as a plumb line or a level shows it. */
function fromClock(
  { clock, distance, beyond, out, from = 'outer' }: Extract<Place['at'], { clock: number }>,
  { section, shift }: Envelope,
  { centre, spin }: Pose,
  isLeft: boolean,
): Vec {
  const angle = forwardOf(clock, isLeft) * DEG;
  const away: Vec = [Math.sin(angle), 0, Math.cos(angle)];
  const inPlane = unit(subtract(away, scale(spin, dot(away, spin))));
  const side = from === 'outer' ? section.bulge.u : -section.bulge.u;
  const sidewall = centre[1] + (shift + side) * spin[1] + section.bulge.r * inPlane[1];
  const reach = distance + (beyond === 'tread' ? section.freeRadius : 0);
  return [centre[0] + reach * away[0], sidewall + out, centre[2] + reach * away[2]];
}
