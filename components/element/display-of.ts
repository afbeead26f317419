import type { UnitSystem } from '../../core/quantity/units.js';
import { languageOf } from './language.js';
import type { Display } from './sentence.js';

/** How the reader of an element wants numbers: its units, in the language of the page around it. */
export function displayOf(element: Element & { units: UnitSystem['length']; angles: UnitSystem['angle'] }): Display {
  const { units, angles } = element;
  return {
    units: { length: units === 'in' ? 'in' : 'mm', angle: angles === 'arcminutes' ? 'arcminutes' : 'degrees' },
    language: languageOf(element),
  };
}
