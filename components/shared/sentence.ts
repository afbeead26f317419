import { formatQuantity } from '../../core/quantity/format.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import type { UnitSystem } from '../../core/quantity/units.js';

/** How a reader wants numbers. */
export interface Reader {
  units: UnitSystem;
  language: string;
}

/** A stretch of a sentence. Values are set in bold, doubt quieter. */
export interface Stretch {
  text: string;
  role?: 'value' | 'doubt';
}

export const plain = (text: string): Stretch => ({ text });
export const value = (text: string): Stretch => ({ text, role: 'value' });

export const show = (size: number, quantity: Quantity, { units, language }: Reader, plusMinus?: number): string =>
  formatQuantity(size, quantity, units, { language, plusMinus }).text;

/** A value and, quieter, its ±. */
export function amount(size: number, plusMinus: number | undefined, quantity: Quantity, reader: Reader): Stretch[] {
  const [main, doubt] = show(size, quantity, reader, plusMinus).split('\u202f±\u202f');
  return doubt === undefined ? [value(main!)] : [value(main!), plain(' '), { text: `±\u202f${doubt}`, role: 'doubt' }];
}

export const textOf = (stretches: readonly Stretch[]): string => stretches.map(({ text }) => text).join('');

export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;
