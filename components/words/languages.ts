import type { Language } from './language.js';

/** Languages besides English, by BCP 47 primary subtag: a further one is its file beside this, and a line here. */
export const LANGUAGES: Readonly<Record<string, () => Promise<{ readonly LANGUAGE: Language }>>> = {
  de: () => import('./de.js'),
};
