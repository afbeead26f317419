import type { BY_HAND } from '../../../element/by-hand.words.js';

/** How full bump is looked at by hand, in German. */
export const BY_HAND_DE: typeof BY_HAND = {
  page: 'das Auto dieser Seite',
  example: 'das Beispiel',
  notYours: (car) => ` (${car}; rechne es für dein Auto aus)`,
  unknown: 'bis zu der Höhe zwischen Radmitte und Radlaufkante, bei der der Anschlagpuffer auf Block wäre',
  stock: (size) => `bis der Abstand von Radmitte bis Radlaufkante ${size} kürzer ist als auf den Rädern in Serienhöhe`,
  lowered: (size, drop, isHigher) =>
    `bis der Abstand von Radmitte bis Radlaufkante ${size} kürzer ist als auf den Rädern, ${drop} ${isHigher ? 'höher' : 'tiefer'} als Serie`,
  hubToArch: (size) => `bis auf ${size} von Radmitte bis Radlaufkante`,
  says: (height, notYours) =>
    `Bevor du fährst, prüf von Hand, ob voll eingefedert alles frei bleibt: Feder und Anschlagpuffer ausgebaut, Unterstellböcke unter den Wagenheberaufnahmen, niemand im Auto, darunter oder neben dem Querlenker. Heb den Querlenker langsam an, ${height}, und nicht weiter${notYours}. Hör sofort auf, wenn etwas berührt oder sich eine Markierung am Schweller bewegt.`,
};
