import { independentRegression, type Regression } from '../reference/independent-regression.js';
import { inside, page } from './site-source.js';
import { readingsFromTable, studentT95 } from './worked-readings.js';

/*
 * The worked numbers of the page on height and parts, from its own table: one least-squares cubic a column by a general-purpose matrix
 * library (ml-matrix, QR). Nothing is imported from core/. Degrees, mm; a change is from a height to that height and a bump.
 *
 * Each ± is 95 %: Student's t times the root of the summed variances of the two fits, which know nothing of each other. Its degrees of
 * freedom are those of one column (the smaller number of two: the safe side of Welch's). The ± of a break-even is by the delta
 * method: that of the difference there, over how steeply the difference changes with the drop. Its two ends are by inversion of the
 * test (Fieller 1954): the drops at which the difference is as large as its ±, by bisection as the break-even itself.
 */

export const COMPARE = 'height-or-part/index.html';
const DEGREE = 3;
const BUMP = 40;
const LONG_BUMP = 60;
const DROP = 25;
/** Of the difference quotient that stands for a rate, mm; on a cubic it errs by the third coefficient times its square. */
const NEAR = 1e-3;
/** Where the table's readings end, mm. */
const END = 80;

interface Amount {
  value: number;
  variance: number;
}

const readings = () => readingsFromTable(inside(inside(page(COMPARE), 'bumpline-compare', 'id="compare"'), 'table'));

/** By the heading of the column. */
export function fitOf(name: string): Regression {
  const own = readings().filter(({ pass }) => pass === name);
  if (own.length === 0) throw new Error(`The table has no column "${name}".`);
  return independentRegression(
    own.map(({ travel, value }) => ({ travel, value })),
    DEGREE,
  );
}
const [standard, lowered] = ['Standard joints', 'Lowered joints'].map(fitOf) as [Regression, Regression];
const t = studentT95(Math.min(standard.dof, lowered.dof));
const plusMinus = ({ variance }: Amount) => t * Math.sqrt(variance);

/**
 * Σ w y(travel) of weights that sum to nothing. Its variance from those of differences alone: −Σ w w′ var(y − y′) over all pairs,
 * which holds for any random quantities (expand the squares; Matheron's variogram).
 */
function contrast(fit: Regression, weights: readonly (readonly [travel: number, weight: number])[]): Amount {
  const base = weights[0]![0];
  let [value, variance] = [0, 0];
  weights.forEach(([travel, weight], i) => {
    value += weight * fit.change(travel, base).value;
    for (const [other, otherWeight] of weights.slice(0, i)) {
      variance -= weight * otherWeight * fit.change(travel, other).standardError ** 2;
    }
  });
  return { value, variance };
}
/** Of what two fits give. */
const less = (a: Amount, b: Amount): Amount => ({ value: a.value - b.value, variance: a.variance + b.variance });

const over = (fit: Regression, drop: number, bump = BUMP) =>
  contrast(fit, [
    [drop + bump, 1],
    [drop, -1],
  ]);
/** Degrees per mm. */
const rate = (fit: Regression, drop: number) =>
  contrast(fit, [
    [drop + NEAR, 0.5 / NEAR],
    [drop - NEAR, -0.5 / NEAR],
  ]);
const height = (fit: Regression) =>
  contrast(fit, [
    [DROP + BUMP, 1],
    [DROP, -1],
    [BUMP, -1],
    [0, 1],
  ]);
/** Of the lowered joints at a drop against the standard ones at stock height; negative: ahead. */
const difference = (drop: number, bump = BUMP) => less(over(lowered, drop, bump), over(standard, 0, bump));
const rateDifference = (drop: number) => less(rate(lowered, drop), rate(standard, 0));

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
const lowEnd = (of: (drop: number) => Amount, to: number) =>
  bisect((drop) => of(drop).value + plusMinus(of(drop)), 0, to);
const highEnd = (of: (drop: number) => Amount, to: number) =>
  bisect((drop) => of(drop).value - plusMinus(of(drop)), 0, to);
const even = bisect((drop) => difference(drop).value, 0, END - BUMP);
const rateEven = bisect((drop) => rateDifference(drop).value, 0, END - BUMP);
const delta = (of: (drop: number) => Amount, at: number) =>
  plusMinus(of(at)) / Math.abs((of(at + 0.01).value - of(at - 0.01).value) / 0.02);

/** Travel of the standard joints from which on more bump takes camber away again. */
export const reversalOfStandard = () => bisect((travel) => rate(standard, travel).value, 0, END);

const degrees = (value: () => number) => ({ unit: '°', value });
const mm = (value: () => number) => ({ unit: 'mm', value });
const pair = (name: string, amount: () => Amount, factor = 1) => ({
  [`compare.${name}`]: degrees(() => factor * amount().value),
  [`compare.${name}-plus-minus`]: degrees(() => factor * plusMinus(amount())),
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
    ...pair('interaction', () => less(height(lowered), height(standard))),
    ...Object.assign({}, ...[10, 20, 30, 40].map((drop) => pair(`lowered-${drop}`, () => over(lowered, drop)))),
    ...Object.assign({}, ...[0, 10, 20, 30, 40].map((drop) => pair(`difference-${drop}`, () => difference(drop)))),
    // Per 10 mm.
    ...pair('rate-standard', () => rate(standard, 0), 10),
    ...pair('rate-lowered', () => rate(lowered, 0), 10),
    'compare.reversal-standard': mm(reversalOfStandard),
    'compare.break-even': mm(() => even),
    'compare.break-even-plus-minus': mm(() => delta(difference, even)),
    'compare.break-even-low': mm(() => lowEnd(difference, END - BUMP)),
    'compare.break-even-high': mm(() => highEnd(difference, END - BUMP)),
    'compare.rate-even': mm(() => rateEven),
    'compare.rate-even-plus-minus': mm(() => delta(rateDifference, rateEven)),
    'compare.rate-even-low': mm(() => lowEnd(rateDifference, END - BUMP)),
    'compare.rate-even-high': mm(() => highEnd(rateDifference, END - BUMP)),
    ...pair('long-standard', () => over(standard, 0, LONG_BUMP)),
    ...pair('long-lowered', () => over(lowered, END - LONG_BUMP, LONG_BUMP)),
    ...pair('long-difference', () => difference(END - LONG_BUMP, LONG_BUMP)),
    'compare.long-low': mm(() => lowEnd((drop) => difference(drop, LONG_BUMP), END - LONG_BUMP)),
  };
}
