import type { ZERO } from '../../../paste/zero.words.js';

/** German words of where a sheet's heights are counted from. */
export const ZERO_DE: typeof ZERO = {
  ask: 'Ab welchem Höhenstand des Autos sind diese Höhen gezählt?',
  hint: 'Heißt in der Tabelle die Höhe null, auf der gemessen wurde, dann zählt sie ab dort.',
  stock: 'Ab Serienhöhe',
  now: (size, way) => `Ab dem jetzigen Höhenstand, ${size} ${way}`,
  measured: (size, way) => `Ab dem Höhenstand bei der Messung, ${size} ${way}`,
  lower: 'tiefer',
  higher: 'höher',
};
