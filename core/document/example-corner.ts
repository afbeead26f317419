import type { StrutCorner } from '../linkage/corner.js';

/**
 * The example that every element opens with: the front left corner of a small car that does not exist. Invented; no maker's
 * figures. Taken as measured with a tape to ±3 mm (95 %), the damper's low point to ±4 mm.
 */
export const EXAMPLE_CORNER: StrutCorner = {
  kind: 'strut',
  wheelCentre: [0, 738, 302],
  loadedRadius: 302,
  camber: -0.6,
  toe: 0.08,
  lowerArm: { front: [24, 356, 192], rear: [-268, 362, 200], ball: [-4, 694, 176] },
  strut: { top: [-38, 574, 822], low: [-20, 625, 462] },
  tieRod: { inner: [-132, 350, 262], outer: [-128, 656, 252] },
  plusMinus: { 'strut.low': 4, other: 3 },
};
