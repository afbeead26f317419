import type { Linkage } from './linkage.js';
import { type SweepOptions, sweepTravel, type TravelSweep } from './sweep.js';

/**
 * A RIGHT corner over wheel travel. The linkage is given as its mirror image, a left one, as every corner is.
 *
 * Angles, offsets and rates are defined alike on both sides (camber and inclination positive top outward, toe positive in,
 * caster, kingpin, scrub radius and trail as their names say), and `halfTrack` is a distance: all stay as the mirror image has
 * them. `instantCentreY` is a coordinate, left positive, and changes its sign.
 *
 * @param options rack displacement of the CAR, mm, positive towards its left: the mirror image gets the opposite
 */
export function sweepRight(linkage: Linkage, travels: ArrayLike<number>, options?: SweepOptions): TravelSweep {
  const sweep = sweepTravel(linkage, travels, { rack: -(options?.rack ?? 0) });
  return { ...sweep, instantCentreY: sweep.instantCentreY.map((y) => -y) };
}
