import { words } from '../../core/quantity/words.js';

/** English words about the readings that an answer rests on. */
export const READINGS_USED = words('publish/readings-used', {
  title: 'Readings used',
  caption: (name: string, corner: string, quantity: 'camber' | 'toe'): string =>
    `${name}: ${quantity}, ${corner.toLowerCase()}`,
  travel: 'Travel',
  onePass: 'Readings',
  ways: { up: ' ↑', down: ' ↓' },
  again: (value: string): string => `again ${value}`,
  aside: (value: string): string => `(${value})`,
  note: '↑ going up, ↓ going down. In brackets: set aside, and not in the curve.',
  instruments: {
    gaugeScale: (size: string): string => `gauge ${size}`,
    tapeScale: (size: string): string => `tape for heights ${size}`,
    zeroHeight: (size: string): string => `zero height ${size}`,
    drift: (size: string): string => `drift of the gauge in a pass ${size}`,
  },
  taken: (instruments: string): string => `Taken as: ${instruments}.`,
});
