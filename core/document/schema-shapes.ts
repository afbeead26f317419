import * as v from 'valibot';
import { number } from './corner-schema.js';
import type { Range } from './field-ranges.js';

/* What the schemas of a car document are made of. */
type NumberSchema = ReturnType<typeof number>;
/** May be left out. */
export const maybe = v.exactOptional;
/** Holds these and nothing else. */
export const record = <E extends v.ObjectEntries>(entries: E) => v.pipe(v.strictObject(entries), v.readonly());
export const list = <S extends v.GenericSchema>(item: S, most: number) =>
  v.pipe(v.array(item), v.maxLength(most), v.readonly());
/** Each of them may be left out. */
export const numbers = <R extends Readonly<Record<string, Range>>>(ranges: R) =>
  Object.fromEntries(Object.entries(ranges).map(([key, range]) => [key, maybe(number(range))])) as {
    [K in keyof R]: v.ExactOptionalSchema<NumberSchema, undefined>;
  };
