import { type Doubted, type DoubtedFit, differenceOf, independentDoubt } from '../reference/independent-doubt.js';
import type { RegressionReading } from '../reference/independent-regression.js';
import { inside, page, textOf } from './site-source.js';
import { plusMinusOf } from './worked-readings.js';

/*
 * The worked numbers of the page on height and parts, from its own table: one least-squares cubic a set of joints, with a zero for each pass
 * and one drift, by a general-purpose matrix library (ml-matrix). Nothing is imported from core/. Degrees, mm; a change is from a height to that height and a bump.
 *
 * Each ± is 95 %: Student's t times the root of the summed variances of the two fits, which know nothing of each other, with gauge,
 * tape, zero height and drift of each (test/reference/independent-doubt.ts). The ± of a break-even is by the delta method: that of the difference there, over how steeply the difference changes with the drop. Its two ends are by inversion of the
 * test (Fieller 1954): the drops at which the difference is as large as its ±, by bisection as the break-even itself.
 */

export const COMPARE = 'height-or-part/index.html';
const DEGREE = 3;
const BUMP = 40;
const DROP = 25;
/** Of the difference quotient that stands for a rate, mm; on a cubic it errs by the third coefficient times its square. */
const NEAR = 1e-3;
/** Where the table's readings end, mm. */
const END = 80;

/** Rows of the table, its last one the first height once more; headings name the joints and the pass. */
function readings(name: string): RegressionReading[] {
  const table = inside(inside(page(COMPARE), 'bumpline-compare', 'id="compare"'), 'table');
  const cells = (row: string) =>
    [...row.matchAll(/<t[hd]\b[^>]*>([\s\S]*?)<\/t[hd]>/g)].map(([, cell]) => textOf(cell!));
  const rows = [...inside(table, 'tbody').matchAll(/<tr\b[^>]*>([\s\S]*?)<\/tr>/g)].map(([, row]) => cells(row!));
  const number = (text: string) => Number(text.replace('−', '-').replace('+', ''));
  return cells(inside(table, 'thead')).flatMap((heading, column) => {
    const [, joints, pass] = /^(.*), (pass \d) /.exec(heading) ?? [];
    if (joints !== name) return [];
    return rows.map((row, i) => ({
      travel: number(row[0]!),
      value: number(row[column]!),
      pass: pass!,
      going: 'up' as const,
      ...(i === rows.length - 1 && { again: true as const }),
    }));
  });
}

export function fitOf(name: string): DoubtedFit {
  const own = readings(name);
  if (own.length === 0) throw new Error(`The table has no columns of "${name}".`);
  return independentDoubt(own, DEGREE, { hasDrift: true });
}
const [standard, lowered] = ['Standard joints', 'Lowered joints'].map(fitOf) as [DoubtedFit, DoubtedFit];
const contrast = (fit: DoubtedFit, weights: readonly (readonly [travel: number, weight: number])[]) =>
  fit.contrast(weights);
const less = differenceOf;

const over = (fit: DoubtedFit, drop: number) =>
  contrast(fit, [
    [drop + BUMP, 1],
    [drop, -1],
  ]);
/** Degrees per mm. */
const rate = (fit: DoubtedFit, drop: number) =>
  contrast(fit, [
    [drop + NEAR, 0.5 / NEAR],
    [drop - NEAR, -0.5 / NEAR],
  ]);
const height = (fit: DoubtedFit) =>
  contrast(fit, [
    [DROP + BUMP, 1],
    [DROP, -1],
    [BUMP, -1],
    [0, 1],
  ]);
/** Of the lowered joints at a drop against the standard ones at stock height; negative: ahead. */
const difference = (drop: number) => less(over(lowered, drop), over(standard, 0));

function bisect(of: (x: number) => number, from: number, to: number): number {
  const atFrom = of(from);
  if (atFrom < 0 === of(to) < 0) throw new Error(`No change of sign between ${from} and ${to}.`);
  let [low, high] = [from, to];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (of(middle) < 0 === atFrom < 0) low = middle;
    else high = middle;
  }
  return low;
}
const lowEnd = (of: (drop: number) => Doubted, to: number) =>
  bisect((drop) => of(drop).value + plusMinusOf(of(drop)), 0, to);
const highEnd = (of: (drop: number) => Doubted, to: number) =>
  bisect((drop) => of(drop).value - plusMinusOf(of(drop)), 0, to);
const even = bisect((drop) => difference(drop).value, 0, END - BUMP);
const delta = (of: (drop: number) => Doubted, at: number) =>
  plusMinusOf(of(at)) / Math.abs((of(at + 0.01).value - of(at - 0.01).value) / 0.02);

/** Travel of the standard joints from which on more bump takes camber away again. */
const reversalOfStandard = () => bisect((travel) => rate(standard, travel).value, 0, END);

const degrees = (value: () => number) => ({ unit: '°', value });
const mm = (value: () => number) => ({ unit: 'mm', value });
const pair = (name: string, amount: () => Doubted) => ({
  [`compare.${name}`]: degrees(() => amount().value),
  [`compare.${name}-plus-minus`]: degrees(() => plusMinusOf(amount())),
});

/** By data-name. */
export function workedCompare(): Record<string, { unit: string; value: () => number }> {
  return {
    ...pair('standard-0', () => over(standard, 0)),
    ...pair('standard-25', () => over(standard, DROP)),
    ...pair('lowered-0', () => over(lowered, 0)),
    ...pair('lowered-25', () => over(lowered, DROP)),
    ...pair('height-first', () => height(standard)),
    ...pair('part-second', () => less(over(lowered, DROP), over(standard, DROP))),
    ...pair('part-first', () => difference(0)),
    ...pair('height-second', () => height(lowered)),
    ...pair('both', () => difference(DROP)),
    'compare.reversal-standard': mm(reversalOfStandard),
    'compare.break-even': mm(() => even),
    'compare.break-even-plus-minus': mm(() => delta(difference, even)),
    'compare.break-even-low': mm(() => lowEnd(difference, END - BUMP)),
    'compare.break-even-high': mm(() => highEnd(difference, END - BUMP)),
  };
}
