import type { EXPLAIN } from '../../../../../core/quantity/explain.js';
import { CAUSES_DE } from '../../element/causes.js';

const UNITS: Readonly<Record<string, string>> = {
  m: 'Nimm m, mm, cm, ft oder in',
  'N/mm': 'Nimm N/mm, kN/m, kg/mm oder lb/in',
};

const oneOf = (names: readonly string[]): string =>
  `${names.slice(0, -1).join(', ')}${names.length > 1 ? ' oder ' : ''}${names.at(-1)}`;

const orMore = (limit: string, below: boolean): string => `${limit} oder ${below ? 'mehr' : 'weniger'}`;

/** Places in a page's table: the core has them in English. */
const PLACES: readonly (readonly [RegExp, string])[] = [
  [/^row (\d+)$/, 'Zeile $1'],
  [/^Heading “(.*)”$/s, 'Überschrift „$1“'],
  [/^Unit of “(.*)”$/s, 'Einheit von „$1“'],
  [/^Caption$/, 'Titel der Tabelle'],
  [/^JSON script$/, 'JSON-Skript'],
  [/^table$/, 'Tabelle'],
];

/** German words of what is wrong, and how it is put right. A field's name may be plural, so it stands before a colon. */
export const EXPLAIN_DE: typeof EXPLAIN = {
  texts: {
    missing: ({ field }) => `${field}: Hier fehlt ein Wert. Gib ihn ein.`,
    'not-a-number': ({ field, given, like }) =>
      `${field}: ${given} lässt sich nicht als Zahl lesen. Schreib sie so: ${like}.`,
    'not-finite': ({ field, given, like }) =>
      `${field}: ${given} ist keine Zahl, die sich messen lässt. Schreib sie so: ${like}.`,
    ambiguous: ({ field, given, choices }) =>
      `${field}: ${given} kann ${choices.join(' oder ') || 'zweierlei'} bedeuten. Wähle eines davon.`,
    'wrong-unit': ({ field, given, dimension, unit }) =>
      `${field}: Die Einheit in ${given} passt nicht. ${
        dimension === undefined || dimension === 'plain'
          ? (UNITS[unit] ?? 'Nimm eine andere, oder gar keine')
          : dimension === 'length'
            ? 'Nimm mm, cm oder in'
            : 'Nimm ° oder ′'
      }.`,
    'out-of-range': ({ field, given, limit, below }) =>
      `${field}: ${given} ist nicht möglich. ${
        below !== undefined
          ? `Gib ${orMore(limit, below)} ein`
          : limit === EXPLAIN_DE.possible
            ? 'Gib einen möglichen Wert ein'
            : `Bleib innerhalb der Grenze von ${limit}`
      }.`,
    'wrong-shape': ({ field, given, isTwice, other }) =>
      isTwice
        ? `${field}: ${given} sagt noch einmal, was schon bei ${other} steht. Lass eines davon weg.`
        : `${field}: ${given} gehört nicht hierher. Prüfe Name, Art und Länge.`,
    'unknown-name': ({ field, given, names }) =>
      `${field}: ${given} wird nicht verstanden. ${names.length > 0 ? `Nimm ${oneOf(names)}` : 'Lass es weg'}.`,
    coincide: ({ field, other }) =>
      `${field} und ${other} sind derselbe Punkt. Miss noch einmal und korrigiere einen davon.`,
    'no-direction': ({ field, other }) =>
      `${field} und ${other} liegen zu nah beieinander, um eine Richtung zu ergeben. Miss noch einmal, oder wähle Punkte, die weiter auseinanderliegen.`,
    'cannot-close': ({ field, given, isGiven, isTwice, other }) =>
      isTwice
        ? `${field}: Damit reicht es nicht mehr (${other}). Nimm einen kleineren Betrag, oder prüfe das Vorzeichen.`
        : `Die Lenker passen nicht zusammen: ${field}${isGiven ? ` (${given})` : ''} ist nicht erreichbar. Prüfe alle Punkte auf falsche Vorzeichen und vertauschte Ziffern.`,
    'looks-like-inches': ({ field, given }) =>
      `${field}: ${given} sieht nach Zoll aus. Gib Millimeter ein, oder stell die Einheit auf Zoll.`,
    inconsistent: ({ field, given, names, isTwice }) =>
      `${field}: Das passt nicht zum Auto, wie es gemessen wurde. Beides liegt ${given}-mal so weit auseinander, wie beide ± erlauben. ${
        isTwice
          ? 'Mit anderem Vorzeichen oder anderer Einheit würde es passen. Prüfe, welche Richtung positiv ist.'
          : `Prüfe, ob alles an diesem Auto gemessen wurde, welche Teile verbaut waren und welche Höhe null war.${names.length > 0 ? ` Miss dann noch einmal: ${names.map(CAUSES_DE.named).join(', ')}.` : ''}`
      }`,
    'looks-like-unit': ({ field, given, names, choices }) =>
      `${field}: ${given} sieht nach ${names[0]} aus; das wären ${choices[0]}. Schreib die Einheit hinter die Zahl.`,
    'looks-like-right-corner': ({ field, given }) =>
      `${field}: ${given} sieht nach der rechten Ecke aus. Gib die linke an: Dort ist y positiv.`,
    'ends-swapped': ({ field, other, given }) =>
      `${field} (${given}) und ${other} sehen vertauscht aus. Tausche die beiden, oder prüfe ihre Vorzeichen.`,
    'too-few': ({ field, given, limit }) =>
      `${field}: Es sind ${given}, gebraucht werden ${limit}. Nimm weitere auf, oder frag nach weniger.`,
    'outside-domain': ({ field, given, limit, below }) =>
      `${field}: ${given} liegt außerhalb dessen, was bekannt ist; das endet bei ${limit}. Gib ${
        below === undefined ? 'einen Wert innerhalb' : orMore(limit, below)
      } ein.`,
  },
  input: 'Die Eingabe',
  another: 'ein anderer Punkt',
  possible: 'was möglich ist',
  nothing: 'nichts',
  quoted: (text) => `„${text}“`,
  or: ' oder ',
  path: (path) => {
    const [pattern, text] = PLACES.find(([one]) => one.test(path)) ?? [];
    return pattern ? path.replace(pattern, text!) : path;
  },
};
