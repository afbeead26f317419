import { formatQuantity } from '../../core/quantity/format.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import type { UnitSystem } from '../../core/quantity/units.js';
import { SHARED } from './first.words.js';

/** How a reader wants numbers. */
export interface Display {
  units: UnitSystem;
  language: string;
  /** How many times larger than usual text is. */
  scale?: number;
}

/** A stretch of a sentence. Values are set in bold, doubt quieter; an element may have roles of its own. */
export interface Stretch<Role extends string = never> {
  text: string;
  role?: 'value' | 'doubt' | Role;
}

export const plain = (text: string): Stretch => ({ text });
export const value = (text: string): Stretch => ({ text, role: 'value' });

export const show = (size: number, quantity: Quantity, { units, language }: Display, plusMinus?: number): string =>
  formatQuantity(size, quantity, units, { language, plusMinus }).text;

/** A value and, quieter, its ±. */
export function amount(size: number, plusMinus: number | undefined, quantity: Quantity, display: Display): Stretch[] {
  const [main, doubt] = show(size, quantity, display, plusMinus).split('\u202f±\u202f');
  return doubt === undefined ? [value(main!)] : [value(main!), plain(' '), { text: `±\u202f${doubt}`, role: 'doubt' }];
}

/** A name inside a sentence, as the language that is spoken has it. */
export const lower = (text: string): string => SHARED.inside(text);

export const upper = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/**
 * A sentence by its pattern, which a record of words holds: `{size}` is one of the parts, `{Place}` the part `place` with a capital,
 * between asterisks stands a value.
 */
export function fill<Role extends string = never>(
  pattern: string,
  parts: Readonly<Record<string, string | readonly Stretch<Role>[]>> = {},
): Stretch<Role>[] {
  const put = (text: string): readonly Stretch<Role>[] => {
    const name = /^\{(\w+)\}$/.exec(text)?.[1];
    if (name === undefined) return text === '' ? [] : [{ text }];
    const part = parts[name.slice(0, 1).toLowerCase() + name.slice(1)]!;
    if (typeof part !== 'string') return part;
    return [{ text: /^[A-Z]/.test(name) ? upper(part) : part }];
  };
  const all = (text: string) => text.split(/(\{\w+\})/).flatMap(put);
  return pattern
    .split(/(\*[^*]+\*)/)
    .flatMap((piece) => (piece.startsWith('*') ? [value(textOf(all(piece.slice(1, -1))))] : all(piece)));
}

export const textOf = (stretches: readonly { text: string }[]): string => stretches.map(({ text }) => text).join('');

/** A pattern told in plain text. */
export const say = <Role extends string = never>(
  pattern: string,
  parts: Readonly<Record<string, string | readonly Stretch<Role>[]>> = {},
): string => textOf(fill(pattern, parts));

/** A count in its own form of a word: "1 reading", "3 readings". */
export const counting = (count: number, forms: Readonly<Record<'one' | 'many', string>>): string =>
  say(count === 1 ? forms.one : forms.many, { count: String(count) });

export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;
