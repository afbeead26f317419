import type { WORDS } from '../../../element/doubts.words.js';

/** What was read with is named to these words by its key. */
const OF_INSTRUMENT: Readonly<Record<string, string>> = {
  gauge: 'des Winkelmessgeräts',
  dials: 'der Messuhren',
  tape: 'des Maßbands',
};
const QUANTITIES: Readonly<Record<string, string>> = { camber: 'vom Sturz', toe: 'von der Spur' };

/** German words about the doubt of readings. */
export const WORDS_DE: typeof WORDS = {
  fields: {
    gaugeScale: {
      label: 'Winkelmessgerät, über einen bekannten Winkel',
      hint: 'Leg es an einen Winkelblock oder ein gezeichnetes Dreieck: 0,1° auf 10° sind 1\u202f%.',
    },
    tapeScale: {
      label: 'Maßband, neben einem Stahllineal',
      hint: 'Eine Karosserie, die sich mit dem Rad hebt, zählt hier mit: 3 mm auf 100 mm sind 3\u202f%.',
    },
    zeroHeight: {
      label: 'Höhe des Nullpunkts',
      hint: 'Wie genau du die Höhe kennst, die du null nennst.',
    },
    drift: {
      label: 'Drift des Winkelmessgeräts in einem Durchgang',
      hint: 'Gilt nur, wo die Messwerte selbst sie nicht zeigen.',
    },
  },
  advice: {
    readings: 'ein weiterer Durchgang macht es kleiner',
    drift: 'lies am Ende jedes Durchgangs die erste Höhe noch einmal ab, oder miss abwärts ebenso wie aufwärts',
    gaugeScale: 'prüf das Winkelmessgerät an einem bekannten Winkel und gib ein, wie viel es danebenlag',
    tapeScale: 'prüf das Maßband an einem Stahllineal und gib ein, wie viel es danebenlag',
    zeroHeight: 'miss die Höhe, die du null nennst, noch einmal',
  },
  instruments: {
    gauge: 'Eine Drift des Winkelmessgeräts',
    dials: 'Eine Drift der Messuhren',
    tape: 'Eine Drift des Maßbands',
  },
  gaugeSize: ' (so viel, wie bei einem Winkelmessgerät gilt)',
  driftAllowed: (drifts, drift, quantity) =>
    `${drifts} von mehr als ${drift} in jedem Durchgang. Durchgänge in nur einer Richtung können Drift nicht ${QUANTITIES[quantity] ?? quantity} unterscheiden; deshalb ist so viel eingerechnet. Lies am Ende jedes Durchgangs die erste Höhe noch einmal ab, dann wird sie stattdessen berechnet.`,
  driftReturned: (drifts, drift) =>
    `${drifts} von mehr als ${drift} in jedem Durchgang. Die noch einmal abgelesenen ersten Höhen sagen zu wenig über sie; deshalb ist so viel eingerechnet. Ein weiterer Durchgang macht es kleiner.`,
  driftTaken: (instrument) =>
    `Eine Drift ${OF_INSTRUMENT[instrument] ?? ''}, die von Durchgang zu Durchgang anders ist. Ist sie in allen gleich, wird sie berechnet und abgezogen.`,
  scaled: {
    gauge: 'Eine Skala des Winkelmessgeräts, die um mehr abweicht als',
    dials: 'Eine Skala der Messuhren, die um mehr abweicht als',
    tape: 'Eine Skala des Maßbands über die Messlänge, die um mehr abweicht als',
  },
  scales: (instrument, gauge, tape) =>
    `${instrument} ${gauge}, oder ein Maßband für die Höhen, das um mehr als ${tape} abweicht. Eine Karosserie, die sich mit dem Rad hebt, zählt zum Maßband.`,
  zeroHeight: (zero) =>
    `Eine Höhe des Nullpunkts, die um mehr als ${zero} danebenliegt. Bei zwei Durchgängen: Höhen, die dazwischen neu eingestellt wurden.`,
  friction:
    'Reibung, die sich nach jeder Umkehr auf den ersten Millimetern löst: Sie verbiegt die Enden der Kurve. Fahr ein Stück über die erste Höhe hinaus und komm zurück, bevor du abliest.',
  bushes: 'Gummilager, die beim Messen festgezogen waren, und eine Lenkung, die sich dabei gedreht hat.',
};
