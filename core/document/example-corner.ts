import type { StrutCorner } from '../linkage/corner.js';

/**
 * The example that every element opens with: the front left corner of a small car that does not exist. Invented; no maker's
 * figures. Taken as measured with a tape to ±3 mm (95 %), the damper's low point to ±4 mm.
 *
 * It is meant to be ordinary in all that one asks of it: caster 7.0° with 21.5 mm of caster trail, kingpin inclination 10.5°, scrub
 * radius 14.5 mm, toe within 0.2° from 35 mm of droop to 65 mm of bump. With little caster, a wheel hardly leans when it is steered,
 * and gaps at lock would look like those of no common car.
 */
export const EXAMPLE_CORNER: StrutCorner = {
  kind: 'strut',
  wheelCentre: [0, 738, 302],
  loadedRadius: 302,
  camber: -0.6,
  toe: 0.08,
  lowerArm: { front: [24, 356, 193], rear: [-268, 362, 198], ball: [0, 694, 176] },
  strut: { top: [-79, 574, 822], low: [-38, 625, 462] },
  tieRod: { inner: [-124, 340, 256], outer: [-128, 664, 245] },
  plusMinus: { 'strut.low': 4, other: 3 },
};
