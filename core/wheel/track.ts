import { between, blend, samples } from './between-samples.js';
import { besideWheel, type Envelope, type Poses } from './gaps.js';
import type { Placed } from './placed.js';
import type { WheelMotion } from './wheel-motion.js';

/**
 * Where one place lies beside the wheel over a whole motion. Whatever tyre is put on, and however far out: it stays where it is
 * beside the wheel, so that another wheel needs its section asked and nothing moved.
 */
export interface Track {
  readonly motion: WheelMotion;
  /** At travel i and rack j, i · racks + j: along the wheel's axis, mm; and squared, away from it. NaN where the links do not reach. */
  readonly along: Float64Array;
  readonly awaySquare: Float64Array;
}

/** Follows places through a motion, a travel a step. */
export function* tracksOf(places: readonly Placed[], poses: Poses): Generator<undefined, Track[]> {
  const { motion } = poses;
  const { travel, toe } = motion;
  const tracks = places.map(() => ({
    motion,
    along: new Float64Array(travel.length * toe.length),
    awaySquare: new Float64Array(travel.length * toe.length),
  }));
  for (let i = 0; i < travel.length; i++) {
    for (let j = 0; j < toe.length; j++) {
      const pose = poses.at(travel[i]!, toe[j]!);
      for (let p = 0; p < places.length; p++) {
        const [u, r] = besideWheel(pose, places[p]!.at(poses, travel[i]!, toe[j]!));
        tracks[p]!.along[i * toe.length + j] = u;
        tracks[p]!.awaySquare[i * toe.length + j] = r * r;
      }
    }
    yield;
  }
  return tracks;
}

/** At a sample of the motion, by its index. */
export const gapAtSample = ({ along, awaySquare }: Track, { section, shift }: Envelope, index: number): number =>
  Number.isNaN(along[index]!) ? Number.NaN : section.distance(along[index]! - shift, Math.sqrt(awaySquare[index]!));

const here = samples();

/** At any travel and steer, mm; NaN where the links do not reach. */
export function gapAlong(track: Track, { section, shift }: Envelope, travel: number, steer: number): number {
  between(here, track.motion, travel, steer);
  const u = blend(here, track.along);
  return Number.isNaN(u) ? u : section.distance(u - shift, Math.sqrt(Math.max(0, blend(here, track.awaySquare))));
}
