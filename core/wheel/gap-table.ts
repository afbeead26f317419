import { type Envelope, gapTo, type Placed, type Poses } from './gaps.js';

/** Gaps of some places at every travel and rack of a motion: `gap[place][travel · racks + rack]`, mm; NaN out of the links' reach. */
export interface GapTable {
  racks: readonly number[];
  gap: Float64Array[];
}

/**
 * Works a table out, a row of travel a step.
 *
 * @param racks indexes into the motion's rack positions
 */
export function* gapTable(
  places: readonly Placed[],
  envelope: Envelope,
  poses: Poses,
  racks: readonly number[],
): Generator<undefined, GapTable> {
  const { travel } = poses.motion;
  const gap = places.map(() => new Float64Array(travel.length * racks.length));
  for (let i = 0; i < travel.length; i++) {
    const t = travel[i]!;
    for (let k = 0; k < racks.length; k++) {
      const pose = poses.at(t, racks[k]!);
      const isReached = !Number.isNaN(pose.centre[0]);
      places.forEach((place, p) => {
        gap[p]![i * racks.length + k] = isReached ? gapTo(envelope, pose, place.at(poses, t, racks[k]!)) : Number.NaN;
      });
    }
    yield;
  }
  return { racks, gap };
}

/** Of every travel the smallest over the racks, and at which of them it is. */
export function leastOverRacks({ racks, gap }: GapTable, place: number): { least: Float64Array; rack: Int32Array } {
  const count = gap[place]!.length / racks.length;
  const least = new Float64Array(count).fill(Number.NaN);
  const rack = new Int32Array(count);
  for (let i = 0; i < count; i++) {
    for (let k = 0; k < racks.length; k++) {
      const here = gap[place]![i * racks.length + k]!;
      if (here < least[i]! || Number.isNaN(least[i]!)) {
        least[i] = here;
        rack[i] = racks[k]!;
      }
    }
  }
  return { least, rack };
}
