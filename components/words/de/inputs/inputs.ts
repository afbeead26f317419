import { upper } from '../../../element/sentence.js';
import type { NAMES } from '../../../inputs/inputs.labels.js';
import { cornerName } from '../corner-name.js';

/** What is missing, as a sentence begins. */
const missing = (names: readonly string[]): string =>
  names.length === 1 ? `${names[0]} fehlt` : `Es fehlen ${names.slice(0, -1).join(', ')} und ${names.at(-1)}`;

/** German words of every sheet, besides those of its own number, and of the rows that open one. */
export const NAMES_DE: typeof NAMES = {
  back: 'Zurück',
  next: 'Weiter',
  done: 'Fertig',
  removeOptional: 'Weglassen',
  clear: 'Leeren',
  howSure: 'Wie sicher bist du?',
  whileMeasuring: 'Beim Messen',
  orFigure: 'oder ±',
  turnSign: 'Vorzeichen wechseln',
  numbers: 'Verwendete Maße',
  fields: {
    drop: 'Tieferlegung',
    change: 'Sturzänderung durch Tieferlegung',
    readings: 'Messwerte',
    degree: 'Grad der Kurve',
    zeroAt: 'Höhe am Nullpunkt der Messwerte',
  },
  moreCaster: (angle) => `mehr als ${angle}° Nachlauf`,
  moreBumpSteer: (angle) => `mehr als ${angle}° Spuränderung je mm Einfedern`,
  notCovered: (lacking) =>
    `Ein Auto mit ${lacking.join(' oder ')} deckt das ± erst ab, wenn du ${lacking.length > 1 ? 'diese Werte' : 'diesen Wert'} eingibst.`,
  ofRun: (corner, step, all) => `${upper(cornerName(corner))} · ${step} von ${all}`,
  takeAgain: (whose) => `Wert ${whose} wieder verwenden`,
  halfCounts: (names, whose) =>
    `${missing(names)}: Bis du ${names.length === 1 ? 'den Wert' : 'die Werte'} eingibst, gilt, was dort kursiv steht (${whose.join(', ')}). Drück noch einmal, um ohne weiterzumachen.`,
  halfAlone: (names) =>
    `${missing(names)}: Ohne ${names.length === 1 ? 'diesen Wert' : 'diese Werte'} wird der Rest nicht verwendet. Drück noch einmal, um ohne weiterzumachen.`,
  halfGiven: (names, isPoint, whose) =>
    `${missing(names)}: Bis dahin ${isPoint ? `gilt der Punkt ${whose}` : `wird der Rest nicht verwendet, und alle Werte bleiben die ${whose}`}. Drück noch einmal, um ohne weiterzumachen.`,
  assumed: (text) => `Bis du den Wert eingibst, ist angenommen: ${text}.`,
  enter: 'eingeben',
  notYours: 'Beispielwert',
  someYours: (own, all) => `${own} von ${all} deine`,
  askedAtStock: 'Hier gefragt: der Wert auf Serienhöhe, auf der das Auto gemessen wurde.',
  askedLower: (drop) => `Hier gefragt: der Wert ${drop} unter Serienhöhe, wo das Auto gemessen wurde.`,
  askedHigher: (rise) => `Hier gefragt: der Wert ${rise} über Serienhöhe, wo das Auto gemessen wurde.`,
  sureOf: (title) => `± für „${title}“`,
  sure: { careful: 'sorgfältig', tape: 'Maßband', gauge: 'Messgerät', guess: 'geschätzt' },
  instruments: 'Winkelmessgerät, Maßband und Nullhöhe',
  instrumentsNote:
    'Wie weit jedes in 95 von 100 Fällen danebenliegen kann. Dieser Fehler ist in jedem Messwert derselbe; weitere Durchgänge machen ihn deshalb nicht kleiner.',
};
