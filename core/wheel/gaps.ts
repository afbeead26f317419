import type { Vector3 } from '../linkage/corner.js';
import { DEG } from '../math/angle.js';
import { add, cross, dot, length, scale, subtract, unit, type Vec } from '../math/vector.js';
import { forwardOf, type Place } from './place.js';
import type { TyreSection } from './tyre-section.js';
import { indexAhead, type WheelMotion } from './wheel-motion.js';

/** A wheel on the hub: its section, and how far its middle plane lies outboard of the wheel's that the motion knows, mm. */
export interface Envelope {
  readonly section: TyreSection;
  readonly shift: number;
}

/** Where a wheel is: its centre in the motion's own plane, and its outboard spin axis. */
interface Pose {
  readonly centre: Vec;
  readonly spin: Vec;
}

/** Signed distance of a point to a wheel in a pose, mm: positive where it clears. The tyre is a solid of revolution. */
export function gapTo({ section, shift }: Envelope, { centre, spin }: Pose, point: Vec): number {
  const x = point[0] - centre[0];
  const y = point[1] - centre[1];
  const z = point[2] - centre[2];
  const along = x * spin[0] + y * spin[1] + z * spin[2];
  const square = x * x + y * y + z * z - along * along;
  return section.distance(along - shift, Math.sqrt(Math.max(0, square)));
}

/**
 * A motion that can be asked at any travel, with a camber change on top: the carrier leaned about its lower ball joint, as a top
 * mount does, or about the wheel's centre where no joint is known.
 */
export class Poses {
  readonly motion: WheelMotion;
  readonly ahead: number;
  readonly #camberBy: number;
  readonly #sine: number;
  readonly #cosine: number;
  #doubted: readonly Poses[] | undefined;

  constructor(motion: WheelMotion, camberByDeg = 0) {
    this.motion = motion;
    this.ahead = indexAhead(motion);
    this.#camberBy = camberByDeg;
    this.#sine = Math.sin(-camberByDeg * DEG);
    this.#cosine = Math.cos(camberByDeg * DEG);
  }

  /** Those of the motion with each of its doubts, in their order. */
  get doubted(): readonly Poses[] {
    this.#doubted ??= (this.motion.doubts ?? []).map(({ motion }) => new Poses(motion, this.#camberBy));
    return this.#doubted;
  }

  /** Between samples along straight lines; NaN where the links do not reach. */
  at(travel: number, rack = this.ahead): Pose {
    const { motion } = this;
    const centre = this.#vector(motion.centre, travel, rack);
    const spin = unit(this.#vector(motion.spin, travel, rack));
    if (this.#sine === 0) return { centre, spin };
    const about = this.joint('ball', travel, rack) ?? centre;
    return { centre: add(about, this.lean(subtract(centre, about))), spin: this.lean(spin) };
  }

  /** A joint of the links; undefined where none is known. */
  joint(name: 'ball' | 'tieOuter', travel: number, rack = this.ahead): Vec | undefined {
    const found = this.motion.joints?.[name];
    return found && this.#vector(found, travel, rack);
  }

  /** Turned about the car's length by the camber change. */
  lean([x, y, z]: Vec): Vec {
    return [x, y * this.#cosine - z * this.#sine, y * this.#sine + z * this.#cosine];
  }

  #vector(from: Float64Array, at: number, rack: number): Vec {
    const { travel, rack: racks } = this.motion;
    let low = 0;
    let high = travel.length - 1;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (travel[middle]! <= at) low = middle;
      else high = middle;
    }
    const share = (at - travel[low]!) / (travel[high]! - travel[low]!);
    const a = 3 * (low * racks.length + rack);
    const b = 3 * (high * racks.length + rack);
    // A sample itself stands alone: beyond it the links may not reach.
    const mix = (axis: number) =>
      share === 0
        ? from[a + axis]!
        : share === 1
          ? from[b + axis]!
          : from[a + axis]! + share * (from[b + axis]! - from[a + axis]!);
    return [mix(0), mix(1), mix(2)];
  }
}

/** A place made ready: where it is in any pose. */
export interface Placed {
  readonly place: Place;
  /** Where it was measured. */
  readonly measured: Vec;
  at(poses: Poses, travel: number, rack?: number): Vec;
  /** Where it would have been measured with each doubt of the motion, in their order. */
  readonly doubted: readonly Placed[];
}

/**
 * A place as measured with the old wheel on.
 *
 * @param measuredAt travel at which the car stood, mm
 */
export function placed(place: Place, before: Envelope, poses: Poses, measuredAt: number, isLeft: boolean): Placed {
  const home = poses.at(measuredAt);
  const measured = 'point' in place.at ? place.at.point : fromClock(place.at, before, home, isLeft);
  const rest = subtract(measured, home.centre);
  const { joints } = poses.motion;

  /** Carried by the wheel carrier: as far along its axis and away from it as before. */
  const carried = ({ centre, spin }: Pose): Vec => add(centre, turned(rest, home.spin, spin));
  const between = (inner: Vec | undefined, outer: 'ball' | 'tieOuter', rackMoves: boolean) => {
    const outerHome = poses.joint(outer, measuredAt);
    if (!inner || !outerHome) return carriedShare(0.5);
    const rod = subtract(outerHome, inner);
    const share = Math.min(1, Math.max(0, dot(subtract(measured, inner), rod) / dot(rod, rod)));
    return (now: Poses, travel: number, rack = now.ahead): Vec => {
      const out = subtract(now.joint(outer, travel, rack)!, outerHome);
      const aside = rackMoves ? (1 - share) * now.motion.rack[rack]! : 0;
      return add(add(measured, scale(out, share)), [0, aside, 0]);
    };
  };
  const carriedShare =
    (share: number) =>
    (now: Poses, travel: number, rack?: number): Vec => {
      const moved = subtract(carried(now.at(travel, rack)), measured);
      return add(measured, scale(moved, share));
    };
  const ways: Record<Place['fixedTo'], () => Placed['at']> = {
    body: () => () => measured,
    carrier: () => carriedShare(1),
    tieRod: () => between(joints?.tieInner, 'tieOuter', true),
    lowerArm: () => between(joints?.armPivot, 'ball', false),
    between: () => carriedShare(place.share ?? 0.5),
  };
  return {
    place,
    measured,
    at: ways[place.fixedTo](),
    doubted: poses.doubted.map((other) => placed(place, before, other, measuredAt, isLeft)),
  };
}

/** Beside the old tyre's sidewall at that clock position, as a plumb line or a level shows it. */
function fromClock(
  { clock, distance, out, from = 'outer' }: Extract<Place['at'], { clock: number }>,
  { section, shift }: Envelope,
  { centre, spin }: Pose,
  isLeft: boolean,
): Vec {
  const angle = forwardOf(clock, isLeft) * DEG;
  const away: Vec = [Math.sin(angle), 0, Math.cos(angle)];
  const inPlane = unit(subtract(away, scale(spin, dot(away, spin))));
  const side = from === 'outer' ? section.bulge.u : -section.bulge.u;
  const sidewall = centre[1] + (shift + side) * spin[1] + section.bulge.r * inPlane[1];
  return [centre[0] + distance * away[0], sidewall + out, centre[2] + distance * away[2]];
}

/** A vector turned by the least turn that takes one axis to another. */
function turned(v: Vec, from: Vector3, to: Vector3): Vec {
  const axis = cross(from, to);
  const sine = length(axis);
  if (sine < 1e-12) return v;
  const cosine = dot(from, to);
  const k = scale(axis, 1 / sine);
  return add(add(scale(v, cosine), scale(cross(k, v), sine)), scale(k, dot(k, v) * (1 - cosine)));
}
