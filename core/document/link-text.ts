import type { CornerName } from './car.js';

/** Numbers as a link writes them: six decimals at most, never an exponent. */
const NUMBER = /^-?\d{1,6}(\.\d{1,6})?$/;

export const writeNumber = (value: number): string => String(Number(value.toFixed(6)));

/** A number in the limits of what it is, or NaN. */
export function numberIn(text: string | undefined, least: number, most: number): number {
  // + 0: there is no −0 mm.
  const value = text !== undefined && NUMBER.test(text) ? Number(text) + 0 : Number.NaN;
  return value >= least && value <= most ? value : Number.NaN;
}

export const cornerSlug = (name: CornerName): string => name.toLowerCase().replace(' ', '-');
