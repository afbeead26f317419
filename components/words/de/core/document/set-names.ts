import type { SET_NAMES } from '../../../../../core/document/set-names.js';
import { NAMES_DE } from '../../car/shown-names.js';

/** German names of sets that nobody has named. */
export const SET_NAMES_DE: typeof SET_NAMES = {
  first: 'Serienteile',
  unnamed: 'Messwerte',
  changed: (name) => `${(NAMES_DE.sets as Readonly<Record<string, string>>)[name] ?? name}, geändert`,
};
