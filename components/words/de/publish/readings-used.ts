import type { READINGS_USED } from '../../../publish/readings-used.labels.js';
import { cornerName } from '../corner-name.js';

const QUANTITIES = { camber: 'Sturz', toe: 'Spur' } as const;

/** German words about the readings that an answer rests on. */
export const READINGS_USED_DE: typeof READINGS_USED = {
  title: 'Verwendete Messwerte',
  caption: (name, corner, quantity) => `${name}: ${QUANTITIES[quantity]}, ${cornerName(corner)}`,
  travel: 'Federweg',
  onePass: 'Messwerte',
  ways: { up: ' ↑', down: ' ↓' },
  again: (value) => `erneut ${value}`,
  aside: (value) => `(${value})`,
  note: '↑ aufwärts, ↓ abwärts gemessen. In Klammern: ausgeklammert und nicht in der Kurve.',
  instruments: {
    gaugeScale: (size) => `Winkelmessgerät ${size}`,
    tapeScale: (size) => `Maßband für die Höhen ${size}`,
    zeroHeight: (size) => `Höhe des Nullpunkts ${size}`,
    drift: (size) => `Drift des Winkelmessgeräts in einem Durchgang ${size}`,
  },
  taken: (instruments) => `Angenommen: ${instruments}.`,
};
