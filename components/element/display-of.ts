import type { UnitSystem } from '../../core/quantity/units.js';
import { sheetScale } from '../controls/text-scale.js';
import type { Display } from './sentence.js';

/** How the reader of an element wants numbers: its units, and the marks of our own words, which they stand between. */
export function displayOf(
  element: Element & { units: UnitSystem['length']; angles: UnitSystem['angle']; spokenLanguage: string },
): Display {
  const { units, angles, spokenLanguage } = element;
  return {
    units: { length: units === 'in' ? 'in' : 'mm', angle: angles === 'arcminutes' ? 'arcminutes' : 'degrees' },
    language: spokenLanguage,
    scale: sheetScale(element),
  };
}
