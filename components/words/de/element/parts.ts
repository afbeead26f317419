import type { PARTS } from '../../../element/parts.labels.js';

const WAYS = { bump: 'Beim Einfedern', droop: 'Beim Ausfedern' } as const;

/** German words of the parts under a sentence that elements share. What ends travel is named as a subject, so it stands after a colon. */
export const PARTS_DE: typeof PARTS = {
  author: 'Für den Autor dieser Seite',
  doubts: {
    shares: 'Woher dieses ± kommt:',
    notIn: 'In keinem ± enthalten',
  },
  travel: {
    title: 'Restlicher Federweg, und was ihn beendet',
    noSolid: 'Der Einfederweg ist nicht angegeben: Gib den Abstand zum Anschlagpuffer und dessen Länge ein.',
    noStop:
      'Die Länge des Anschlagpuffers ist nicht angegeben. Bekannt ist deshalb nur, wo er zum ersten Mal berührt wird.',
    statics:
      'Nur statische Lasten: ohne Dämpfung, ohne Reibung und ohne das andere Rad. Das Doppelte der statischen Last entspricht auf der Straße kräftigem Einfedern (gängige Praxis, ohne Beleg).',
    found: 'Am Auto gemessen, so wie es steht. Kursiv: Beispielwerte; ersetze sie durch deine.',
    atLeast: (size) => `mindestens ${size}`,
    touch: 'Einfederweg bis Anschlagpuffer',
    pressed: (size) => `keiner: Der Anschlagpuffer ist schon um ${size} zusammengedrückt`,
    solid: 'Einfederweg bis auf Block',
    past: (size, by) => `um ${size} überschritten (Grenze: ${by})`,
    endedBy: (left, by) => `${left} (Grenze: ${by})`,
    shares: 'Woher sein ± kommt',
    bumpTo: (limit) => `Einfederweg bis zu dieser Grenze: ${limit}`,
    droop: 'Ausfederweg',
    lowered: (size) => `Ab ${size} tiefer`,
    changes: (direction, to, from) =>
      `${WAYS[direction as keyof typeof WAYS]} liegt die Grenze dann woanders: ${to}, nicht mehr ${from}`,
  },
  loads: {
    sprung: 'Gefederte Masse dieser Ecke',
    wheelRate: 'Federrate am Rad, im Höhenstand',
    frequency: 'Eigenfrequenz des Aufbaus',
    under: (factor) => `Beim ${factor}-Fachen der statischen Last`,
    taken: (travel, atLeast) => `${atLeast ? 'mindestens ' : ''}${travel} eingefedert`,
    short: (size) => `, noch ${size} bis auf Block`,
    clear: (taken, short) => `${taken}, ohne den Anschlagpuffer zu berühren${short}`,
    onStop: (taken, short) => `${taken}, Anschlagpuffer gerade berührt${short}`,
    inStop: (taken, size, short) => `${taken}, Kolbenstange ${size} in den Anschlagpuffer gedrückt${short}`,
    solid: (taken) => `${taken}: auf Block, und mehr als das können die Federn nicht tragen`,
  },
  leftOut: {
    column: (name) => `Spalte ${name}`,
    run: (from, to) => `Spalten ${from} bis ${to}`,
    columns: (names, last) => `Spalten ${names} und ${last}`,
    ofColumn: (name, heading) => `Spalte ${name}${heading ? `, „${heading}“,` : ''}`,
    called: (label) => `„${label}“`,
    made: {
      average: 'ist der Mittelwert aus',
      median: 'ist der Median aus',
      spread: 'zeigt die Streuung der Messwerte in',
      difference: 'ist die Differenz aus',
      copy: 'ist die Änderung in',
    },
    named: {
      average: 'heißt Mittelwert',
      median: 'heißt Mittelwert',
      spread: 'sagt, wie weit Messwerte auseinanderliegen oder wie viele es sind',
      difference: 'heißt Differenz',
      copy: 'heißt Änderung',
    },
    says: (what, made, of) => `${what} ${made}${of && ` ${of}`}: nicht verwendet.`,
    more: (count) => `Dasselbe gilt für ${count} weitere.`,
  },
};
