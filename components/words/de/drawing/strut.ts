import type { STRUT } from '../../../drawing/strut.labels.js';

/** German words on the front view of a strut. */
export const STRUT_DE: typeof STRUT = {
  parallel: 'Momentanpol: keiner, Linien parallel',
  inboard: (distance) => `← Momentanpol ${distance} innen`,
  outboard: (distance) => `Momentanpol ${distance} außen →`,
  approximate: 'Vorderansicht, ungefähr',
  tilt: (factor) => `Neigung ×${factor}`,
  title: (camber) => `Vorderansicht des Federbeins${camber ? `, Sturz ${camber}` : ''}`,
};
