import { DEG } from '../math/angle.js';
import { add, cross, dot, scale, subtract, type Vec } from '../math/vector.js';
import { between, blendAcross, blendVector, samples } from './between-samples.js';
import type { TyreSection } from './tyre-section.js';
import { indexAhead, type WheelMotion } from './wheel-motion.js';

/** A wheel on the hub: its section, and how far its middle plane lies outboard of the wheel's that the motion knows, mm. */
export interface Envelope {
  readonly section: TyreSection;
  readonly shift: number;
}

/** Where a wheel is: its centre in the motion's own plane, and its outboard spin axis. */
export interface Pose {
  readonly centre: Vec;
  readonly spin: Vec;
}

/** Where a point lies as the wheel sees it: u along its axis from the motion's own plane, r away from the axis, mm. */
export function besideWheel({ centre, spin }: Pose, point: Vec): [u: number, r: number] {
  const x = point[0] - centre[0];
  const y = point[1] - centre[1];
  const z = point[2] - centre[2];
  const along = x * spin[0] + y * spin[1] + z * spin[2];
  return [along, Math.sqrt(Math.max(0, x * x + y * y + z * z - along * along))];
}

/** Signed distance of a point to a wheel in a pose, mm: positive where it clears. The tyre is a solid of revolution. */
export function gapTo({ section, shift }: Envelope, pose: Pose, point: Vec): number {
  const [u, r] = besideWheel(pose, point);
  return section.distance(u - shift, r);
}

/**
 * A motion that can be asked at any travel and steer, with a camber change on top: the carrier leaned about its lower ball joint,
 * as a top mount does, or about the wheel's centre where no joint is known.
 */
export class Poses {
  readonly motion: WheelMotion;
  /** Steer straight ahead, degrees: that of the motion's `toe`. */
  readonly ahead: number;
  readonly #sine: number;
  readonly #cosine: number;
  readonly #samples = samples();
  #travel = Number.NaN;
  #steer = Number.NaN;

  constructor(motion: WheelMotion, camberByDeg = 0) {
    this.motion = motion;
    this.ahead = motion.toe[indexAhead(motion)]!;
    this.#sine = Math.sin(-camberByDeg * DEG);
    this.#cosine = Math.cos(camberByDeg * DEG);
  }

  /** @param steer toe at reference height, degrees. NaN where the links do not reach. */
  at(travel: number, steer = this.ahead): Pose {
    const centre = this.#vector(this.motion.centre, travel, steer);
    const raw = this.#vector(this.motion.spin, travel, steer);
    const size = 1 / Math.sqrt(raw[0] * raw[0] + raw[1] * raw[1] + raw[2] * raw[2]);
    const spin: Vec = [raw[0] * size, raw[1] * size, raw[2] * size];
    if (this.#sine === 0) return { centre, spin };
    const about = this.joint('ball', travel, steer) ?? centre;
    return { centre: add(about, this.lean(subtract(centre, about))), spin: this.lean(spin) };
  }

  /** A joint of the links; undefined where none is known. */
  joint(name: 'ball' | 'tieOuter', travel: number, steer = this.ahead): Vec | undefined {
    const found = this.motion.joints?.[name];
    return found && this.#vector(found, travel, steer);
  }

  /** Displacement of the rack, mm. */
  rack(travel: number, steer: number): number {
    this.#ask(travel, steer);
    return blendAcross(this.#samples, this.motion.rack);
  }

  /** Turned about the car's length by the camber change. */
  lean([x, y, z]: Vec): Vec {
    return [x, y * this.#cosine - z * this.#sine, y * this.#sine + z * this.#cosine];
  }

  #vector(from: Float64Array, travel: number, steer: number): Vec {
    this.#ask(travel, steer);
    return blendVector(this.#samples, from);
  }

  /** Centre, axis and joints are asked for together: their weights are the same. */
  #ask(travel: number, steer: number): void {
    if (travel === this.#travel && steer === this.#steer) return;
    between(this.#samples, this.motion, travel, steer);
    this.#travel = travel;
    this.#steer = steer;
  }
}

/** A vector turned by the least turn that takes one unit vector to another: Rodrigues' formula. */
export function turned(v: Vec, from: Vec, to: Vec): Vec {
  // The axis times the turn's sine.
  const across = cross(from, to);
  const cosine = dot(from, to);
  return add(add(scale(v, cosine), cross(across, v)), scale(across, dot(across, v) / (1 + cosine)));
}
