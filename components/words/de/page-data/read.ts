import { counted } from '../../../element/sentence.js';
import type { READ } from '../../../page-data/read.words.js';

/** What was read of a page's data, told to its author in German. */
export const READ_DE: typeof READ = {
  points: (count) => counted(count, 'Gelenkpunkt', 'Gelenkpunkte'),
  measures: (count) => counted(count, 'Maß', 'Maße'),
  singles: { loadedRadius: 'Halbmesser unter Last', camber: 'Sturz im Stand', toe: 'Spur im Stand' },
  whole: 'die Lenker einer Ecke',
  curve: (count) => counted(count, 'Koeffizient', 'Koeffizienten'),
  readings: (count, passes) =>
    `${counted(count, 'Messwert', 'Messwerte')} in ${counted(passes, 'Durchgang', 'Durchgängen')}`,
  sets: (count, readings) =>
    `${counted(count, 'Teilesatz', 'Teilesätze')} mit ${counted(readings, 'Messwert', 'Messwerten')}`,
  parts: (count) => counted(count, 'Teilesatz', 'Teilesätze'),
  before: 'altes Rad',
  after: 'neues Rad',
  places: (count) => counted(count, 'Stelle', 'Stellen'),
  margins: 'Reserven und voller Lenkeinschlag',
  ends: 'Grenzen des Federwegs',
  loads: 'Lasten',
  drop: 'Tieferlegung',
  bumpTravel: 'Einfederweg',
  settings: 'Einstellungen',
  plusMinus: (least, most) => (least === most ? ` (±${least} mm)` : ` (±${least} bis ${most} mm)`),
  from: {
    table: 'einer Tabelle',
    json: 'JSON',
    both: 'JSON und einer Tabelle',
    attributes: 'Attributen und Eigenschaften',
  },
  cell: (row, column) => `Zeile ${row}, Spalte ${column}`,
  quoted: (text) => `„${text}“`,
  given: (of, value) => `${of} (${value})`,
  more: (count) => `${count} weitere`,
  and: ' und ',
  nothing: 'nichts',
  notUnderstood: (what) => `nicht verstanden: ${what}`,
  line: (tag, what, from, unread) =>
    `Bumpline: <${tag}> hat aus ${from} gelesen: ${what}${unread ? `; ${unread}` : ''}.`,
};
