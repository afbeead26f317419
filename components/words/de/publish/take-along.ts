import type { TAKE_ALONG } from '../../../publish/take-along.labels.js';

/** German words of what is saved, and of what is written into it. */
export const TAKE_ALONG_DE: typeof TAKE_ALONG = {
  kinds: { drawing: 'Zeichnung', chart: 'Diagramm', bars: 'Balken' },
  which: (what) => `${what}: welche Auswahl`,
  readings: 'Messwerte',
  as: (what, form) => `${what} als ${form}`,
  svg: 'SVG',
  png: 'PNG',
  csv: 'CSV',
  table: 'HTML-Tabelle kopieren',
  copyTable: 'HTML-Tabelle der Messwerte kopieren',
  tableText: 'Messwerte als HTML-Tabelle',
  saved: (name) => `Gespeichert als ${name}.`,
  tableCopied: 'Die HTML-Tabelle ist kopiert. Ein Bumpline-Element, in dem sie steht, liest diese Messwerte aus ihr.',
  tables: (count) =>
    `Es sind ${count} Tabellen, weil nicht alle Messreihen mit denselben Messgeräten aufgenommen wurden: Setz jede in ein eigenes Element.`,
  notExact:
    'Alle Messwerte sind enthalten, aber ein Element liest einige davon anders zurück. Ein Link zu diesem Auto behält sie, wie sie sind.',
  aside: (count) =>
    count === 1 ? 'Der ausgeklammerte Messwert fehlt darin.' : `Die ${count} ausgeklammerten Messwerte fehlen darin.`,
  noPng: 'Die Regeln dieser Seite oder die Einstellungen deines Browsers lassen kein PNG zu. Das SVG zeigt dasselbe.',
  svgInstead: 'Stattdessen das SVG speichern',
  notSaved: 'Die Datei konnte nicht gespeichert werden. Versuch es noch einmal, oder nimm einen anderen Browser.',
  noTable: 'Die Tabelle konnte nicht geladen werden. Prüfe die Verbindung und versuch es noch einmal.',
  note: 'Unter jedem Bild steht in Worten, was es zeigt, woher seine Zahlen kommen und wem sie gehören. Es ist hell, wie auch immer die Seite aussieht. Ein SVG bleibt in jeder Größe scharf; ein PNG lässt sich überall verschicken und zeigen.',
};
