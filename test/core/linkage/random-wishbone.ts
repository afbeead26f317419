import fc from 'fast-check';
import type { Vector3, WishboneCorner } from '../../../core/linkage/corner.js';

const about = (centre: Vector3, by: Vector3): fc.Arbitrary<Vector3> =>
  fc.tuple(
    ...centre.map((x, axis) => fc.double({ min: x - by[axis]!, max: x + by[axis]!, noNaN: true })),
  ) as unknown as fc.Arbitrary<Vector3>;

/** Plausible unequal-arm double wishbones: upper arm shorter, both roughly level, every point several centimetres about. */
export const randomWishbone: fc.Arbitrary<WishboneCorner> = fc.record({
  kind: fc.constant('wishbone' as const),
  wheelCentre: about([0, 750, 310], [15, 40, 30]),
  loadedRadius: fc.double({ min: 270, max: 350, noNaN: true }),
  camber: fc.double({ min: -3, max: 1, noNaN: true }),
  toe: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
  lowerArm: fc.record({
    front: about([150, 360, 200], [40, 30, 20]),
    rear: about([-170, 365, 205], [40, 30, 20]),
    ball: about([0, 715, 190], [15, 20, 20]),
  }),
  upperArm: fc.record({
    front: about([110, 450, 470], [30, 25, 20]),
    rear: about([-130, 455, 470], [30, 25, 20]),
    ball: about([-15, 690, 500], [15, 20, 25]),
  }),
  tieRod: fc.record({
    inner: about([-145, 370, 258], [20, 20, 15]),
    outer: about([-140, 695, 255], [15, 15, 15]),
  }),
});
