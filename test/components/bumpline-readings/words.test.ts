import { describe, expect, it } from 'vitest';
import {
  atCursor,
  passText,
  problemText,
  rSquaredLine,
  zeroText,
} from '../../../components/bumpline-readings/bumpline-readings.labels.js';
import { ending, opening, soFar, spoken } from '../../../components/bumpline-readings/bumpline-readings.words.js';
import { curveChart, numbers, passesOf, residualChart } from '../../../components/bumpline-readings/views.js';
import { textOf } from '../../../components/element/sentence.js';
import { readings as ask } from '../../../core/answers/readings.js';
import { curveFrom } from '../../../core/curve/check-curve-data.js';
import { EXAMPLE_SETUP } from '../../../core/document/setups.js';
import type { Reading } from '../../../core/readings/reading.js';
import { independentRegression } from '../../reference/independent-regression.js';

const display = { units: { length: 'mm', angle: 'degrees' }, language: 'en' } as const;
const german = { units: { length: 'mm', angle: 'arcminutes' }, language: 'de' } as const;
const setupOf = (readings: Reading[], quantity: 'camber' | 'toe' = 'camber') => ({
  ...EXAMPLE_SETUP,
  name: 'Test',
  quantity,
  readings,
});
const plainSpaces = (text: string) => text.replace(/[\u202f\u00a0]/g, ' ');
const say = (readings: Reading[], quantity: 'camber' | 'toe' = 'camber', over?: number) =>
  plainSpaces(spoken(ask({ quantity, readings, over }), display));
/** Straight lines with a little scatter, so that every figure can be worked out by hand. */
const line = (slope: number, scatter = 0.01): Reading[] =>
  [-20, -10, 0, 10, 20, 30].flatMap((travel, i) =>
    ['A', 'B'].map((pass, j) => ({ travel, pass, value: -1 + slope * travel + scatter * ((i + j) % 2 ? 1 : -1) })),
  );

describe('the sentence of readings', () => {
  it('says how many readings, in how many passes, what bump adds, how well the gauge repeated', () => {
    expect(say(line(-0.02))).toMatch(
      /^From 12 readings in 2 passes: 25 mm of bump adds 0\.50° ± 0\.0\d+° of negative camber; the gauge repeated within 0\.0\d°\.$/,
    );
  });

  it('says what is taken away, in droop, and of toe which way', () => {
    expect(say(line(0.02))).toContain('of bump takes 0.50° ±');
    expect(say(line(0.02))).toContain('of negative camber away');
    expect(say(line(-0.02), 'camber', -20)).toContain('20 mm of droop takes 0.40° ±');
    expect(say(line(-0.02), 'toe')).toContain('of bump adds 0.50° ±');
    expect(say(line(-0.02), 'toe')).toMatch(/of toe-out;/);
    expect(say(line(0.02), 'toe')).toMatch(/of toe-in;/);
  });

  it('claims no change that cannot be told from nothing', () => {
    expect(say(line(-0.00001, 0.1))).toContain('too small to tell from zero');
  });

  it('does not extend the curve: over what was not measured it says how far the readings reach', () => {
    expect(say(line(-0.02), 'camber', 40)).toContain(
      '40 mm of bump is not known: the readings span −20 mm to 30 mm, and the curve ends with them',
    );
    const low = line(-0.02).filter(({ travel }) => travel < 0);
    expect(say([...low, ...low.map((one) => ({ ...one, travel: one.travel - 30 }))])).toContain('is not known');
  });

  it('goes as far as the readings where they end before 25 mm', () => {
    expect(say(line(-0.02).filter(({ travel }) => travel <= 10))).toContain('10 mm of bump');
  });

  it('says so where no height was read twice, and of one pass', () => {
    const one = line(-0.02).filter(({ pass }) => pass === 'A');
    expect(say(one)).toMatch(/^From 6 readings in one pass: .*; no height was read twice\.$/);
  });

  it('counts what there is while there is no curve yet', () => {
    expect(soFar(setupOf([]))).toBe('No camber readings yet. Type them in, or paste them from a sheet.');
    expect(soFar(setupOf([{ travel: 0, value: 1 }]))).toMatch(/^1 reading at 1 height so far\. 3 heights make a curve/);
  });

  it('leaves out what was set aside', () => {
    const readings = line(-0.02);
    const answer = ask({ quantity: 'camber', readings, setAside: [0, 5] });
    expect(textOf(opening(answer))).toContain('From 10 readings');
    expect(answer.used).not.toContain(5);
    expect(textOf(ending(answer, display))).toMatch(/\.$/);
  });
});

describe('what stands below the sentence', () => {
  const { readings } = EXAMPLE_SETUP;
  const answer = ask({ quantity: 'camber', readings, degree: 3 });

  it('names each pass with its way and its zero', () => {
    const texts = passesOf(EXAMPLE_SETUP, answer).map((pass) => plainSpaces(passText(pass, display)));
    expect(texts[0]).toMatch(/^Pass 1 ↑ going up: 17 readings, zero \+0\.0\d+° ± 0\.0\d+°$/);
    expect(texts[1]).toMatch(/^Pass 2 ↓ going down: 15 readings, zero −0\.0\d+° ±/);
  });

  it('brings the readings to one zero, or shows them as they were read', () => {
    const [one, raw] = [false, true].map((asRead) => curveChart(EXAMPLE_SETUP, answer, display, asRead));
    const pass = passesOf(EXAMPLE_SETUP, answer)[1]!;
    expect([...raw!.points![1]!.y]).toEqual(pass.readings.map((index) => readings[index]!.value));
    const { ofReading } = answer.fit.drift!;
    for (const [i, y] of one!.points![1]!.y.entries()) {
      const drift = ofReading[answer.used.indexOf(pass.readings[i]!)]!;
      expect(y).toBeCloseTo(raw!.points![1]!.y[i]! - pass.offset - drift, 12);
    }
  });

  it('draws the curve and its bands over the readings’ travel and no further', () => {
    const model = curveChart(EXAMPLE_SETUP, answer, display, false);
    const [series] = model.series;
    expect([series!.x[0], series!.x.at(-1)]).toEqual([-35, 50]);
    expect(model.x.domain[0]).toBeLessThan(-35);
    expect(model.regions.every(({ kind }) => kind === 'outside')).toBe(true);
    const [wide, narrow] = model.bands;
    for (const [i, low] of narrow!.low.entries()) {
      expect(low).toBeGreaterThan(wide!.low[i]!);
      expect(low).toBeLessThan(series!.y[i]!);
    }
  });

  it('leaves residuals of the same size as a general-purpose regression does', () => {
    const { points } = residualChart(EXAMPLE_SETUP, answer, display);
    const left = points!.filter(({ mark }) => mark !== 'ring').flatMap(({ y }) => [...y]);
    const other = independentRegression(readings, 3, true);
    expect(Math.sqrt(left.reduce((sum, one) => sum + one * one, 0) / other.dof)).toBeCloseTo(other.residualSd, 10);
  });

  it('gives at each height the curve, its change from zero with ±, and the plain mean', () => {
    const { rows, columns } = numbers(EXAMPLE_SETUP, answer, display);
    expect(rows).toHaveLength(18);
    const row = rows.find(([travel]) => travel === 20)!;
    const other = independentRegression(readings, 3, true).change(20, 0);
    expect(row[3]).toBeCloseTo(other.value, 5);
    // At least what the scatter alone leaves: two-sided 95 % of Student's t at 42 degrees of freedom, 2.009 or more (NIST/SEMATECH
    // e-Handbook 1.3.6.7.2). Gauge, tape, zero height and neighbours that go together make less than as much again of it.
    expect(row[4]! / other.standardError).toBeGreaterThan(2.009);
    expect(row[4]! / other.standardError).toBeLessThan(4);
    expect(row[5]).toBeCloseTo((-0.85 - 0.83) / 2, 10);
    expect(row[6]).toBe(2);
    expect(columns).toHaveLength(row.length);
  });

  it('says what R² says and does not say, and what the zeros leave open', () => {
    expect(rSquaredLine(answer, display)).toMatch(
      /^R² 0\.99\d+: the share .* A longer travel alone raises it; .* 0\.019° by which a reading/,
    );
    expect(plainSpaces(zeroText(answer, display))).toMatch(
      /moves the whole curve, but not its shape: .* to ±0\.1\d°\.$/,
    );
    const two = ask({ quantity: 'camber', readings: readings.filter(({ pass }) => pass !== 'Pass 3') });
    expect(zeroText(two, display)).toContain('two passes cannot tell');
  });

  it('reads a travel aloud, in the reader’s own notation', () => {
    const curve = curveFrom(answer.fit.curve);
    expect(plainSpaces(atCursor(20, curve, answer, display))).toMatch(
      /^\+20 mm: camber −0\.8\d°, −0\.\d\d° from zero$/,
    );
    expect(plainSpaces(atCursor(20, curve, answer, german))).toMatch(/camber −0°5\d′/);
    expect(atCursor(70, curve, answer, display)).toContain('not measured');
  });

  it('names the reading of a problem by its pass and height', () => {
    const problem = { code: 'not-finite', path: 'readings.3.value', value: Number.NaN } as const;
    expect(plainSpaces(problemText(problem, EXAMPLE_SETUP, display))).toContain('Pass 1, −15 mm');
    expect(problemText({ ...problem, path: 'table.2.1' }, EXAMPLE_SETUP, display)).toContain('row 3, column 2');
  });
});
