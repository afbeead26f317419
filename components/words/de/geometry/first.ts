import type { FIRST } from '../../../bumpline-geometry/first.words.js';

/** The German words of the sentence: „Tiefergelegt um 25 mm liegt das Wankzentrum …“. */
export const FIRST_DE: typeof FIRST = {
  title: 'Was die Lenker tun und was Teile daran ändern',
  drop: 'Tieferlegung',
  lowered: 'Tiefergelegt um',
  raised: 'Höhergelegt um',
  waiting: 'Wird berechnet …',
  noAnswer: ': noch keine Antwort.',
  before: 'Letzte Antwort: {verb} {drop}',
  step: 'Tieferlegung {drop}',
  chosen: 'eingebauter Teilesatz',
  spoken: '{verb} {drop}{rest}',
  bare: ' liegt das Wankzentrum {height} dem Boden{stock}. Auf den nächsten {over} Einfedern ändert sich der Sturz um {camber}{toe}.',
  fitted:
    ' liegt das Wankzentrum {bareHeight} dem Boden{stock}. Mit „{set}“ liegt es {height} dem Boden, und auf den nächsten {over} Einfedern ändert sich der Sturz um {camber} ({bareCamber} ohne den Teilesatz){toe}.',
  stock: ' ({height} in Serienhöhe)',
  above: '{height} über',
  below: '{height} unter',
  toe: ' und die Spur um {toe}',
  toeBoth: ' und die Spur um {toe} ({bareToe} ohne)',
  measureToe: '. Spur: Miss sie',
  toeIn: '{size} zur Vorspur',
  toeOut: '{size} zur Nachspur',
  toeFlat: 'nicht nachweisbare {size}',
  noBump: 'kein Einfederweg',
  missing: ' Aber {count} Gelenkpunkte sind noch {whose}.',
  missingOne: ' Aber 1 Gelenkpunkt ist noch {whose}.',
};
