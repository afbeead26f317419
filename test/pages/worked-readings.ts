import { Matrix, solve } from 'ml-matrix';
import { changeOf, combined, type Doubted, independentDoubt } from '../reference/independent-doubt.js';
import { independentRegression, type RegressionReading } from '../reference/independent-regression.js';
import { type IndependentCorner, independentStrutSweep } from '../reference/independent-strut.js';
import { inside, page, textOf } from './site-source.js';

/*
 * The worked numbers of the page on readings, from its own tables, by a general-purpose matrix library (ml-matrix, QR) and
 * textbook formulas. Nothing is imported from core/. test/pages/worked-numbers.test.ts compares them with the pages.
 */

export const MEASURE = 'measure-your-own-camber-curve/index.html';
export const measurePage = page(MEASURE);

/** Readings of a table with one column a pass: heights in mm down the side; empty cells are gaps. */
export function readingsFromTable(table: string): (RegressionReading & { pass: string })[] {
  const cells = (row: string) =>
    [...row.matchAll(/<t[hd]\b[^>]*>([\s\S]*?)<\/t[hd]>/g)].map(([, cell]) => textOf(cell!));
  const [, ...headings] = cells(inside(table, 'thead'));
  const rows = [...inside(table, 'tbody').matchAll(/<tr\b[^>]*>([\s\S]*?)<\/tr>/g)].map(([, row]) => cells(row!));
  const number = (text: string) => Number(text.replace('−', '-').replace('+', ''));
  return headings.flatMap((heading, i) => {
    const going = /\bup\b/.test(heading) ? 'up' : /\bdown\b/.test(heading) ? 'down' : undefined;
    const taken = rows
      .filter((row) => row[i + 1] !== '')
      .map((row) => ({
        travel: number(row[0]!),
        value: number(row[i + 1]!),
        pass: heading.split(/, | \(/)[0]!,
        ...(going && ({ going } as const)),
      }));
    return going === 'down' ? taken.reverse() : taken;
  });
}

/** From here on Student's t is the normal law's (NIST/SEMATECH e-Handbook 1.3.6.7.1). */
const MANY = 1e5;
const NORMAL_95 = 1.959964;

export const readings = readingsFromTable(inside(measurePage, 'table', 'data-example'));
/** Two invented passes without any scatter: 0.15° every 10 mm, the second 0.10° lower and begun half way. The page draws them. */
export const HALF_PASS = [
  ...[-20, -10, 0, 10, 20].map((travel) => ({ travel, value: -0.6 - 0.015 * travel, pass: 'Pass 1' })),
  ...[0, 10, 20].map((travel) => ({ travel, value: -0.7 - 0.015 * travel, pass: 'Pass 2' })),
];

/** The page says which degree its numbers are for; a test holds it against the built-in choice. */
export const DEGREE = 3;
/** Passes up and down in turn tell a drift: it stands in every fit of all of them. */
export const fit = independentRegression(readings, DEGREE, true);
const ofDegree = (degree: number) => independentRegression(readings, degree, true);
const within = (from: number, to: number) => readings.filter(({ travel }) => travel >= from && travel <= to);
const cut = (from: number, to: number) => independentRegression(within(from, to), DEGREE, true);

/**
 * Two-sided 95 % point of Student's t. With t = √ν·tan θ the density is cos^(ν − 1) θ but for a factor, which is integrated by
 * Simpson's rule as well, so that no gamma function is needed.
 */
export function studentT95(dof: number): number {
  const area = (to: number) => {
    const steps = 2000;
    const at = (i: number) => Math.cos((to * i) / steps) ** (dof - 1);
    let sum = at(0) + at(steps);
    for (let i = 1; i < steps; i++) sum += (i % 2 ? 4 : 2) * at(i);
    return (sum * to) / steps / 3;
  };
  const all = area(Math.PI / 2);
  let [low, high] = [0, Math.PI / 2];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (area(middle) < 0.95 * all) low = middle;
    else high = middle;
  }
  return Math.sqrt(dof) * Math.tan(low);
}

/** Half-width of 95 % of what is known of it. */
export function plusMinusOf(doubted: Doubted): number {
  const { u, dof } = combined(doubted);
  return u * (dof > MANY ? NORMAL_95 : studentT95(dof));
}
const doubt = independentDoubt(readings, DEGREE, { hasDrift: true });
export const plusMinus = (to: number, from = 0) => plusMinusOf(changeOf(doubt, to, from));

/**
 * Scatter of readings repeated at one height: least squares with a free value for every height and an offset for every pass, so
 * no shape of the curve comes into it. Degrees.
 */
export function repeatability(): { sd: number; dof: number } {
  const heights = [...new Set(readings.map(({ travel }) => travel))];
  const passes = [...new Set(readings.map(({ pass }) => pass))].slice(1);
  const design = new Matrix(
    readings.map(({ travel, pass }) => [
      ...heights.map((height) => Number(height === travel)),
      ...passes.map((name) => Number(name === pass)),
    ]),
  );
  const y = Matrix.columnVector(readings.map(({ value }) => value));
  const left = Matrix.sub(y, design.mmul(solve(design, y))).to1DArray();
  const dof = readings.length - heights.length - passes.length;
  return { sd: Math.sqrt(left.reduce((sum, one) => sum + one * one, 0) / dof), dof };
}

/** The plain mean at every height, whatever passes it is of. */
export function heightMeans(of: readonly RegressionReading[]): RegressionReading[] {
  const heights = [...new Set(of.map(({ travel }) => travel))];
  return heights.map((travel) => {
    const values = of.filter((reading) => reading.travel === travel).map(({ value }) => value);
    return { travel, value: values.reduce((sum, one) => sum + one, 0) / values.length };
  });
}

/** How camber changes when the wheel is steered by one degree towards toe-in, at zero travel. */
function changeBySteer(corner: IndependentCorner): number {
  const at = (rack: number) => independentStrutSweep(corner, [0], { rack })[0]!;
  const straight = at(0);
  let [low, high] = [-5, 5];
  const isIncreasing = at(high).toe > at(low).toe;
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (at(middle).toe - straight.toe < 1 === isIncreasing) low = middle;
    else high = middle;
  }
  return at(low).camber - straight.camber;
}

const degrees = (value: () => number) => ({ unit: '°', value });
const pure = (value: () => number) => ({ unit: '', value });
const slopeAtZero = () => fit.change(0.001, -0.001).value / 0.002;

/** By data-name. @param corner the example's hard points */
export function workedReadings(corner: IndependentCorner): Record<string, { unit: string; value: () => number }> {
  const spread = () => {
    const offsets = fit.passOffsets.map(({ offset }) => offset);
    return Math.max(...offsets) - Math.min(...offsets);
  };
  const worked: Record<string, { unit: string; value: () => number }> = {
    'readings-count': pure(() => readings.length),
    'readings-passes': pure(() => new Set(readings.map(({ pass }) => pass)).size),
    'readings-repeated': degrees(() => studentT95(repeatability().dof) * repeatability().sd),
    'readings-residual-sd': degrees(() => fit.residualSd),
    'readings-per-mm': degrees(slopeAtZero),
    'readings-zeros-spread': degrees(spread),
    'readings-steer': degrees(() => changeBySteer(corner)),
    'readings-lean-1': degrees(() => (Math.atan(1 / 1200) * 180) / Math.PI),
    'readings-half-mean': degrees(() => independentRegression(heightMeans(HALF_PASS), 1).change(20, -20).value),
    'readings-half-fitted': degrees(() => independentRegression(HALF_PASS, 1).change(20, -20).value),
  };
  for (const [i, { offset }] of fit.passOffsets.entries()) worked[`readings-zero-${i + 1}`] = degrees(() => offset);
  for (const travel of [25, 30, 50]) {
    worked[`readings-change-${travel}`] = degrees(() => fit.change(travel, 0).value);
    worked[`readings-plus-minus-${travel}`] = degrees(() => plusMinus(travel));
  }
  for (const [from, to] of [
    [-35, 50],
    [15, 45],
  ] as const)
    worked[`readings-r-squared-${from}-${to}`] = pure(() => cut(from, to).rSquared);
  for (const degree of [2, 3, 4])
    worked[`readings-90-degree-${degree}`] = degrees(() => ofDegree(degree).change(90, 0).value);
  return worked;
}
