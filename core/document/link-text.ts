import { CORNER_NAMES, type CornerName, LONGEST_NAME } from './counts.js';
import type { Range } from './field-ranges.js';

/** How a value stands in a link: one way to write it and to read it back. `read` throws `Damaged` at what was never written. */
export interface Text<T> {
  write(value: T): string;
  read(text: string): T;
}

/** A link that nobody wrote like this. */
export class Damaged extends Error {}

/** The value, or the end of it all. */
export function sound<T>(value: T | undefined): T {
  if (value === undefined) throw new Damaged();
  return value;
}

/** Numbers as a link writes them: six decimals at most, never an exponent. */
const NUMBER = /^-?\d{1,6}(\.\d{1,6})?$/;

export const writeNumber = (value: number): string => String(Number(value.toFixed(6)));

export const number = ([least, most]: Range): Text<number> => ({
  write: writeNumber,
  read(text) {
    // + 0: there is no −0 mm.
    const value = NUMBER.test(text) ? Number(text) + 0 : Number.NaN;
    return sound(value >= least && value <= most ? value : undefined);
  },
});

export function whole(range: Range): Text<number> {
  const { read } = number(range);
  return {
    write: (value) => value.toFixed(0),
    read: (text) => sound([read(text)].find(Number.isInteger)),
  };
}

/** One of some words; `write` may say it otherwise. */
export const word = <T>(words: readonly T[], write: (value: T) => string = String): Text<T> => ({
  write,
  read: (text) => sound(words.find((one) => write(one) === text)),
});

export const cornerName = word<CornerName>(CORNER_NAMES, (name) => name.toLowerCase().replace(' ', '-'));

/** Letters, digits and hyphens as they are, a space as a dot, the rest by its code point; a longer name is cut. */
export const name: Text<string> = {
  write: (value) =>
    value === ''
      ? '__'
      : [...value]
          .slice(0, LONGEST_NAME)
          .map((character) => {
            if (/[A-Za-z0-9-]/.test(character)) return character;
            return character === ' ' ? '.' : `_${character.codePointAt(0)!.toString(16)}_`;
          })
          .join(''),
  read(text) {
    sound(/^(__|([A-Za-z0-9.-]|_[0-9a-f]{1,6}_)+)$/.exec(text) ?? undefined);
    if (text === '__') return '';
    const value = text.replace(/\.|_([0-9a-f]+)_/g, (_, code = '20') => {
      const point = Number.parseInt(code, 16);
      return String.fromCodePoint(sound(point <= 0x10ffff ? point : undefined));
    });
    return sound([...value].length <= LONGEST_NAME ? value : undefined);
  },
};

/** A tyre's size: a name in which the slash stays readable. */
export const size: Text<string> = {
  write: (value) => name.write(value).replaceAll('_2f_', '/'),
  read: (text) => name.read(text.replaceAll('/', '_2f_')),
};

/** A value that nobody gave, among others that somebody did, as a tilde. */
export const orTilde = <T>({ write, read }: Text<T>): Text<T | undefined> => ({
  write: (value) => (value === undefined ? '~' : write(value)),
  read: (text) => (text === '~' ? undefined : read(text)),
});

/** So many values of one kind, joined by commas. */
export const list = <T>(item: Text<T>, most = Number.POSITIVE_INFINITY, least = 1): Text<readonly T[]> => ({
  write: (values) => values.map(item.write).join(','),
  read(text) {
    const texts = text.split(',');
    return sound(texts.length >= least && texts.length <= most ? texts : undefined).map(item.read);
  },
});

/** Values each of its own kind, joined by commas. */
export const tuple = <T extends readonly unknown[]>(...items: { [K in keyof T]: Text<T[K]> }): Text<T> => ({
  write: (values) => items.map((item, i) => item.write(values[i])).join(','),
  read(text) {
    const texts = text.split(',');
    return sound(texts.length === items.length ? texts : undefined).map((one, i) => items[i]!.read(one)) as never;
  },
});

/** A value and what stands behind its ~, the half-width of its 95 % interval, where somebody gave that. */
export function doubted<T>(value: Text<T>, range: Range, isRequired = false): Text<readonly [T, number | undefined]> {
  const doubt = number(range);
  return {
    write: ([one, plusMinus]) => value.write(one) + (plusMinus === undefined ? '' : `~${doubt.write(plusMinus)}`),
    read(text) {
      const [one = '', plusMinus, more] = text.split('~');
      if (more !== undefined || (isRequired && plusMinus === undefined)) throw new Damaged();
      return [value.read(one), plusMinus === undefined ? undefined : doubt.read(plusMinus)];
    },
  };
}
