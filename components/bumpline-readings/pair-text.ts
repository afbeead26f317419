import { formatNumber } from '../../core/quantity/format.js';
import { parseQuantity } from '../../core/quantity/parse.js';
import type { Problem } from '../../core/quantity/problem.js';
import { toShown, type UnitSystem } from '../../core/quantity/units.js';
import type { Pair } from '../../core/readings/over-base.js';
import type { Display } from '../element/sentence.js';

export type ReadPair = { ok: true; pair: Pair } | { ok: false; problem: Problem };

/** What parts the two figures, the surest first: a slash may stand in a fraction of an inch. */
const PARTS = [/\s*;\s*/, /\s+[/|]\s+/, /\s*[/|]\s*/, /\s+/];

/** Whether a text in a cell of pairs says an angle all the same. */
export const isAngleText = (text: string): boolean => /[°º'’′]\s*$/.test(text);

/** Both figures of a reading, `12.35 / 11.2`, mm. A problem's `other` says which of the two it is, or `pair` where there are not two. */
export function readPair(text: string, units: UnitSystem, path: string): ReadPair {
  const parts = PARTS.map((by) => text.trim().split(by)).find(({ length }) => length === 2);
  if (!parts) return { ok: false, problem: { code: 'missing', path, value: text, other: 'pair' } };
  const figures: number[] = [];
  for (const [i, part] of parts.entries()) {
    const other = i === 0 ? 'front' : 'rear';
    if (part === '') return { ok: false, problem: { code: 'missing', path, value: text, other } };
    const parsed = parseQuantity(part, 'coordinate', units, path);
    if (!parsed.ok) {
      const { choices: _, ...problem } = parsed.problem;
      // 1,500 is two things, and two of it four: it is written otherwise.
      const code = problem.code === 'ambiguous' ? 'not-a-number' : problem.code;
      return { ok: false, problem: { ...problem, code, value: part, other } };
    }
    figures.push(parsed.value);
  }
  return { ok: true, pair: [figures[0]!, figures[1]!] };
}

/** Finer than lengths are told: a dial shows hundredths of a millimetre, or tenths of a thousandth of an inch. */
const PLACES = { mm: 3, in: 4 } as const;

/** "12.35 / 11.2" */
export const pairText = (pair: Pair, { units, language }: Display): string =>
  pair.map((mm) => formatNumber(toShown(mm, 'length', units), PLACES[units.length], language)).join(' / ');
