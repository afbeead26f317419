import type { CellUnit } from './understanding.js';

const NAMES: [CellUnit, RegExp][] = [
  ['mm', /mm\.?$/i],
  ['cm', /cm\.?$/i],
  ['in', /(?:\bin|\din|inch|inches|["”″])\.?$/i],
  ['arcminutes', /['’′]$|min$/i],
  ['degrees', /[°º]$|deg(?:rees?)?$/i],
];

/** In degrees and minutes. */
export const SEXAGESIMAL = /[°º].*['’′]/;

/** The unit that a cell names behind its figure; degrees of one in degrees and minutes. */
export const unitOfCell = (text: string): CellUnit | undefined =>
  SEXAGESIMAL.test(text) ? 'degrees' : NAMES.find(([, pattern]) => pattern.test(text))?.[0];
