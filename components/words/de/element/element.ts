import type { SHEET } from '../../../element/element.labels.js';

/** German texts that every sheet has under its sentence. */
export const SHEET_DE: typeof SHEET = {
  fault: 'Die Berechnung ist fehlgeschlagen. Das ist unser Fehler, nicht deiner; deine Zahlen bleiben erhalten.',
  retry: 'Noch einmal versuchen',
  correct: 'Korrigieren',
  undo: 'Rückgängig',
  redo: 'Wiederholen',
  whole: 'Den ganzen Rechner öffnen',
  putInArticle: 'In einen Artikel einbauen',
  unused: (what) =>
    `Der Link enthält ${what}. Dieser Rechner verwendet davon nichts: Es bleibt alles für die Seiten erhalten, die es brauchen, aber keine Zahl hier beruht darauf.`,
  carried: {
    given: 'Maße',
    drop: 'eine Tieferlegung',
    bumpTravel: 'einen Einfederweg',
    stopGap: 'einen Einfederweg',
    limits: 'einen Einfederweg',
    loads: 'Feder und Lasten',
    setups: 'Messwerte',
    fit: 'Räder und Stellen im Radlauf',
    compare: 'Höhen zum Vergleich',
    readingsOver: 'einen Federweg für Messwerte',
    toe: 'Fragen zur Spur',
    turn: 'eine Kurvenfahrt',
    camberAdded: 'zusätzlichen Sturz',
    alignment: 'ein Vermessungsprotokoll',
    leastCost: 'Teile und Grenzen für eine gewünschte Neigung',
  },
  settings: 'andere Einstellungen',
};
