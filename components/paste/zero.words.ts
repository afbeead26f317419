import type { CarDocument } from '../../core/document/car.js';
import { words } from '../../core/quantity/words.js';
import { dropText } from '../element/drop-words.js';
import type { Display } from '../element/sentence.js';

/** English words of where a sheet's heights are counted from. */
export const ZERO = words('paste/zero', {
  ask: 'From which height of the car are these counted?',
  hint: 'A sheet that calls the height it was read at zero is counted from there.',
  stock: 'From stock height',
  now: (size: string, way: string): string => `From where it stands now, ${size} ${way}`,
  measured: (size: string, way: string): string => `From where it stood when it was measured, ${size} ${way}`,
  lower: 'lower',
  higher: 'higher',
});

/** A height as an answer. */
export function zeroName(at: number, { drop }: Pick<CarDocument, 'drop'>, display: Display): string {
  if (at === 0) return ZERO.stock;
  return (at === drop ? ZERO.now : ZERO.measured)(dropText(at, display), at < 0 ? ZERO.higher : ZERO.lower);
}
