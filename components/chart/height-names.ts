import { formatQuantity } from '../../core/quantity/format.js';
import { type Display, show } from '../element/sentence.js';

interface HeightWords {
  stock: string;
  lower(size: string): string;
  higher(size: string): string;
}

const STEP_MM = 10;
const STEP_IN_MM = 12.7;

/** "30 mm lower", at the marker of where the car stands. */
export const heightName = (drop: number, display: Display, { stock, lower, higher }: HeightWords): string =>
  drop === 0 ? stock : (drop < 0 ? higher : lower)(show(Math.abs(drop), 'drop', display));

/** "+40 mm", at the marker of what is asked. */
export const overName = (over: number, { units, language }: Display): string =>
  formatQuantity(over, 'travel', units, { language, sign: 'always' }).text;

/** Every 10 mm, or half inch, counted from where the car stands. */
export function travelsAround(drop: number, [low, high]: readonly [number, number], { units }: Display): number[] {
  const step = units.length === 'in' ? STEP_IN_MM : STEP_MM;
  const travels: number[] = [];
  for (let k = Math.ceil((low - drop) / step); drop + k * step <= high; k++) travels.push(drop + k * step);
  return travels;
}
