/**
 * Hard points of the derived three-dimensional case in test/reference/derived_strut_3d.json, copied here because a browser test reads no
 * files; reference-corner.test.ts holds them against it.
 */
export const referenceCorner = {
  kind: 'strut',
  wheelCentre: [0, 745, 310],
  loadedRadius: 310,
  camber: -0.5,
  toe: 0.1,
  lowerArm: { front: [20, 340, 195], rear: [-290, 350, 205], ball: [-5, 700, 185] },
  strut: { top: [-35, 585, 835], low: [-18, 632, 470] },
  tieRod: { inner: [-140, 345, 268], outer: [-135, 660, 262] },
};

/** Its camber change over 40 mm of bump, degrees: −0.87151 − (−0.50000), from its table of results. */
export const REFERENCE_CHANGE_40 = -0.37151;
