import { words } from '../../core/quantity/words.js';

/** English words on the front view of a strut. */
export const STRUT = words('drawing/strut', {
  parallel: 'instant centre: none, lines parallel',
  inboard: (distance: string): string => `← instant centre ${distance} inboard`,
  outboard: (distance: string): string => `instant centre ${distance} outboard →`,
  approximate: 'front view, approximate',
  tilt: (factor: number): string => `tilt drawn ×${factor}`,
  title: (camber: string | undefined): string => `Front view of the strut${camber ? `, camber ${camber}` : ''}`,
});
