import type { SHELL } from '../../../element/shell.words.js';

/** German words that stand in an element before anything of it has come. */
export const SHELL_DE: typeof SHELL = {
  slow: 'Der Rechner wird noch geladen …',
  lost: 'Der Rechner konnte nicht geladen werden. Sobald du wieder online bist, versuchen wir es noch einmal; hilft das nicht, lade die Seite neu.',
};
