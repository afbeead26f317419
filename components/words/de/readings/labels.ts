import type { NAMES } from '../../../bumpline-readings/bumpline-readings.labels.js';
import { cornerName } from '../corner-name.js';

/** What was read with is named to these words by its key: "Drift des Maßbands". */
const OF_INSTRUMENT: Readonly<Record<string, string>> = {
  gauge: 'des Winkelmessgeräts',
  dials: 'der Messuhren',
  tape: 'des Maßbands',
};
const driftOf = (instrument: string): string => `Drift ${OF_INSTRUMENT[instrument] ?? ''}`;
const QUANTITIES = { camber: 'Sturz', toe: 'Spur' } as const;

const readings = (count: number): string => `${count} ${count === 1 ? 'Messwert' : 'Messwerte'}`;

/** German words of the readings, besides those of the first answer, of the grid and of the warnings. */
export const NAMES_DE: typeof NAMES = {
  travel: 'Federweg',
  camber: 'Sturz',
  toe: 'Spur',
  zero: 'null',
  turns: 'Umkehr',
  hatched:
    'Schraffiert: nicht gemessen, also keine Kurve. Gepunktet: In diesen Bereich fielen 95 von 100 weiteren Messwerten.',
  left: 'Streuung um die Kurve',
  onePass: 'Ein Durchgang',
  curve: 'Kurve',
  ofCurve: 'Kurve',
  changeFromZero: 'Änderung ab null',
  rawMean: 'Einfacher Mittelwert',
  count: 'Messwerte',
  type: 'Messwerte eintippen',
  typeOn: 'Weiter eintippen',
  paste: 'Tabelle einfügen',
  closeGrid: 'Eintippen beenden',
  asRead: 'Wie abgelesen zeigen',
  oneZero: 'Mit einem Nullpunkt zeigen',
  corner: 'Ecke',
  setup: 'Teilesatz',
  setupName: 'Name des Teilesatzes',
  newSetup: 'Neuer Teilesatz',
  removeSetup: 'Diesen Teilesatz entfernen',
  quantity: 'Was gemessen wurde',
  degree: 'Grad der Kurve',
  byEvidence: 'automatisch',
  how: 'Wie die Ausgleichskurve entstand',
  residuals: 'Streuung um die Kurve, Messwert für Messwert',
  setAside: 'Ausklammern',
  takeBack: 'Wieder aufnehmen',
  wrong: 'Sieh noch einmal hin',
  inclination:
    'Ein Winkelmessgerät an der Nabe zeigt die Neigung des Rads gegen den Boden, auf dem es genullt wurde. Bei gerader Lenkung ist das der Sturz.',
  missing:
    'Dieser Teil konnte nicht geladen werden. Prüfe die Verbindung und drück den Knopf noch einmal; deine Messwerte bleiben erhalten.',
  more: (count) => `${count} weitere zeigen`,
  shown: 'Gezeigter Teilesatz',
  zeroAt: 'Tieferlegung am Nullpunkt',
  zeroNote: 'Gib 0 ein, wenn dein Nullpunkt die Serienhöhe ist. Der Rechner zur Tieferlegung zählt ab Serienhöhe.',
  newName: 'Neue Teile',
  notOwn: 'Das sind nicht deine Messwerte. Mit deiner ersten Änderung beginnt ein eigener Teilesatz.',
  candidates: 'Probierte Grade',
  candidateHeads: ['Grad', 'Streuung', 'Überzählige Messwerte', 'Bewertung (kleiner ist besser)'],
  taken: '(verwendet)',
  coefficients: 'Koeffizienten für Federweg in mm, in Grad, jeweils mit Standardunsicherheit:',
  standardUncertainty: (size) => `(Standardunsicherheit ${size})`,
  doubt: 'Jedes ± und jedes Band ist ein 95-%-Bereich.',
  rounds:
    'Alle Messwerte zählen gleich, und jeder Durchgang hat seinen eigenen Nullpunkt. Jenseits der Messwerte ist nichts gezeichnet.',
  why: 'Warum ±, und was es nicht abdeckt',
  chart: (quantity, count, from, to) =>
    `${quantity} über dem Federweg: ${readings(count)} und die Ausgleichskurve dazu, von ${from} bis ${to}.`,
  residualChart: 'Streuung um die Kurve, Messwert für Messwert.',
  table: (quantity, corner, set) => `${quantity} über dem Federweg, ${cornerName(corner)}, ${set}`,
  plusMinus: '±',
  rSquared: (share, typical) =>
    `R² ${share}: der Anteil an den Unterschieden zwischen den Messwerten, den die Kurve erklärt. Schon ein längerer Federweg macht ihn größer. Wie gut du abliest, zeigen die ${typical}, um die ein Messwert die Kurve üblicherweise verfehlt.`,
  ways: { up: '↑ aufwärts', down: '↓ abwärts', both: '↕ beide Richtungen' },
  readings,
  ofZero: (count, zero) => `${count}, Nullpunkt ${zero}`,
  upDown: (size) => `Aufwärts gegen abwärts gemessen: ${size}. Das sind Spiel und Reibung.`,
  chosenDegree: (degree) => `Grad ${degree}, von dir gewählt.`,
  bestDegree: (degree, tried, more) =>
    `Grad ${degree}. Von ${tried === 1 ? '1 probierten Grad' : `${tried} probierten Graden`} sagt ${degree - more} am besten voraus${more === 0 ? '.' : `; genommen ist ein um ${more} höherer, denn ein Lenkerverbund ist kein Polynom, und an simulierten Autos wurden die Bänder der einfacheren Kurve zu schmal.`}`,
  facts: {
    residual: 'Streuung um die Kurve (Standardabweichung der Reste)',
    repeated: 'Streuung wiederholter Messwerte auf einer Höhe',
    nothingRepeated: 'nichts wiederholt',
    freedom: 'Überzählige Messwerte (Freiheitsgrade)',
    rSquared: 'R²',
    adjusted: 'Korrigiertes R²',
  },
  setAsideCount: (count) => `${readings(count)} von dir ausgeklammert.`,
  zeros: (size) =>
    `Die Nullpunkte der Durchgänge weichen voneinander ab. Das verschiebt die ganze Kurve, ändert aber nicht ihre Form: ${size === undefined ? 'Um wie viel, lässt sich aus zwei Durchgängen nicht sagen.' : `Ihre Höhe ist auf ±${size} bekannt.`}`,
  noDrift: (instrument, size) =>
    `Eine ${driftOf(instrument)} zeigt sich in diesen Durchgängen nicht: ${size} vom ersten bis zum letzten Messwert eines Durchgangs.`,
  drift: (instrument, size) =>
    `${driftOf(instrument)}: ${size} vom ersten bis zum letzten Messwert eines Durchgangs. Sie ist herausgerechnet.`,
  driftAllowed: (instrument, size) =>
    `Eine ${driftOf(instrument)} lässt sich aus diesen Durchgängen nicht erkennen; jedes ± rechnet deshalb mit ${size} je Durchgang. Lies am Ende jedes Durchgangs die erste Höhe noch einmal ab, dann wird das ± kleiner.`,
  driftReturned: (instrument, size) =>
    `Auch aus den noch einmal abgelesenen ersten Höhen lässt sich eine ${driftOf(instrument)} nicht erkennen; jedes ± rechnet deshalb mit ${size} je Durchgang. Ein weiterer Durchgang macht es kleiner.`,
  cursorUnmeasured: (travel) => `${travel}: nicht gemessen`,
  cursor: (travel, quantity, value, change) =>
    `${travel}: ${QUANTITIES[quantity]} ${value}${change === undefined ? '' : `, ${change} ab null`}`,
  cell: (row, column) => `Tabelle dieser Seite, Zeile ${row}, Spalte ${column}`,
  fields: {
    over: 'Federweg',
    zeroAt: 'Tieferlegung am Nullpunkt',
    degree: 'Grad der Kurve',
    readings: 'Messwerte',
    table: 'Tabelle dieser Seite',
    quantity: 'Messgröße',
    doubts: 'data-doubts der Tabelle',
    zero: 'data-zero der Tabelle',
    base: 'data-base der Tabelle',
    front: 'data-front der Tabelle (inboard oder outboard)',
    pair: 'Spalte vorn oder hinten',
  },
};
