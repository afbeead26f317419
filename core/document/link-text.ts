import type { CornerName } from './car.js';
import { LONGEST_NAME } from './setup-in-use.js';

/** Takes the value of a key out of a link's pairs: what is left over was unknown. */
export type Take = (key: string) => string | undefined;

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

/** Letters, digits and hyphens as they are, a space as a dot, the rest by its code point; a longer name is cut. */
export const writeName = (name: string): string =>
  name === ''
    ? '__'
    : [...name]
        .slice(0, LONGEST_NAME)
        .map((character) =>
          /[A-Za-z0-9-]/.test(character)
            ? character
            : character === ' '
              ? '.'
              : `_${character.codePointAt(0)!.toString(16)}_`,
        )
        .join('');

/** A name, or undefined where the text is none. */
export function readName(text: string | undefined): string | undefined {
  if (text === undefined || !/^(__|([A-Za-z0-9.-]|_[0-9a-f]{1,6}_)+)$/.test(text)) return undefined;
  if (text === '__') return '';
  let isGood = true;
  const name = text.replace(/\.|_([0-9a-f]+)_/g, (_, code?: string) => {
    const point = code === undefined ? 32 : Number.parseInt(code, 16);
    isGood &&= point <= 0x10ffff;
    return isGood ? String.fromCodePoint(point) : '';
  });
  return isGood && [...name].length <= LONGEST_NAME ? name : undefined;
}
