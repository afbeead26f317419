import type { FORMAT } from '../../../../../core/quantity/format.js';

/** Of a clock face, and of a rim. */
const UNITS: Readonly<Record<string, string>> = { 'o’clock': 'Uhr', in: 'Zoll' };

/** German words beside numbers. */
export const FORMAT_DE: typeof FORMAT = {
  notKnown: 'nicht bekannt',
  per: 'pro',
  unit: (unit) => UNITS[unit] ?? unit,
};
