import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AbaRequest, abaSlope, spreadAcross } from '../../../core/alignment/tyre-spread.js';
import { normal, randomNumbers } from '../driveway/random-car.js';
import { problemsOf } from '../problems-of.js';
import { missed } from '../study-limits.js';

const across = (inner: number, middle: number, outer: number) => ({ inner, middle, outer });

/* That an edge which works harder asks for camber the other way, and a middle for pressure: common practice, no source. */
describe('spreadAcross (common practice, no source)', () => {
  const told = (kind: 'temperature' | 'tread', places: ReturnType<typeof across>, repeat: number) =>
    spreadAcross({ kind, across: places, repeat });

  it('asks for less negative camber where the inner edge is hotter or more worn, for more where the outer is', () => {
    expect(told('temperature', across(92, 84, 76), 3).camber).toBe('less-negative');
    expect(told('temperature', across(76, 84, 92), 3).camber).toBe('more-negative');
    expect(told('tread', across(3.1, 4.2, 5.4), 0.3).camber).toBe('less-negative');
    expect(told('tread', across(5.4, 4.2, 3.1), 0.3).camber).toBe('more-negative');
  });

  it('asks for less pressure where the middle works harder than the edges, for more where it works less', () => {
    expect(told('temperature', across(80, 92, 82), 3).pressure).toBe('lower');
    expect(told('temperature', across(88, 74, 86), 3).pressure).toBe('higher');
    expect(told('tread', across(5.2, 3.6, 5.0), 0.3).pressure).toBe('lower');
  });

  it('says nothing that repeat noise could have made (by hand: 3 × √2 = 4.24, 3 × √1.5 = 3.67)', () => {
    const found = told('temperature', across(84, 82, 80), 3);
    expect(found.innerOverOuter).toEqual({ value: 4, plusMinus: expect.closeTo(4.2426, 4) });
    expect(found.middleOverEdges.plusMinus).toBeCloseTo(3.6742, 4);
    expect([found.camber, found.pressure]).toEqual(['untold', 'untold']);
    expect(told('temperature', across(84.5, 82, 80), 3).camber).toBe('less-negative');
  });

  it('does not change with what is added everywhere, and turns with the tyre', () => {
    const degree = fc.double({ min: 20, max: 120, noNaN: true });
    fc.assert(
      fc.property(degree, degree, degree, fc.double({ min: -20, max: 20, noNaN: true }), (a, b, c, by) => {
        const one = told('temperature', across(a, b, c), 2);
        const warmer = told('temperature', across(a + by, b + by, c + by), 2);
        expect(warmer.innerOverOuter.value).toBeCloseTo(one.innerOverOuter.value, 9);
        expect(warmer.middleOverEdges.value).toBeCloseTo(one.middleOverEdges.value, 9);
        const turned = told('temperature', across(c, b, a), 2);
        expect(turned.innerOverOuter.value).toBeCloseTo(-one.innerOverOuter.value, 9);
        expect(turned.pressure).toBe(one.pressure);
      }),
      { seed: 8 },
    );
  });

  it('names every place that is missing, and a repeat of nothing', () => {
    const problems = problemsOf(() => spreadAcross({ kind: 'temperature', across: { inner: 80 } as never, repeat: 0 }));
    expect(problems.map(({ path, code }) => `${path} ${code}`)).toEqual([
      'temperature.middle missing',
      'temperature.outer missing',
      'repeat out-of-range',
    ]);
  });
});

describe('abaSlope', () => {
  const asked = (more: Partial<AbaRequest> = {}): AbaRequest => ({
    kind: 'temperature',
    first: across(80, 84, 90),
    changed: across(88, 86, 86),
    again: across(84, 87, 92),
    camber: { first: -1, changed: -2 },
    repeat: 2,
    ...more,
  });

  it('is the worked example: a 10 and 8 colder inside, b 2 hotter: a degree more negative moved it by 11', () => {
    // By hand: a₁ = 80 − 90 = −10, a₂ = 84 − 92 = −8, b = 88 − 86 = 2; b − (−9) = 11 over 1° more negative. Drift 2.
    // A run's ± = 2√2 = 2.828; of the change √1.5 × 2.828 = 3.464; uneven drift 1.96 × (2/2)/√3 = 1.1316; together 3.644.
    const found = abaSlope(asked());
    expect(found.change).toEqual({ value: 11, plusMinus: expect.closeTo(3.6442, 3) });
    expect(found.perNegativeDegree).toEqual({ value: 11, plusMinus: expect.closeTo(3.6442, 3) });
    expect(found.drift).toEqual({ value: 2, plusMinus: expect.closeTo(4, 9) });
    expect(found.isTold).toBe(true);
  });

  it('halves per degree where camber was changed by two, and turns its sign with the direction', () => {
    expect(abaSlope(asked({ camber: { first: -1, changed: -3 } })).perNegativeDegree.value).toBeCloseTo(5.5, 9);
    expect(abaSlope(asked({ camber: { first: -2, changed: -1 } })).perNegativeDegree.value).toBeCloseTo(-11, 9);
  });

  it('covers the true slope in about 95 of 100 series with noise and drift that goes on evenly', () => {
    const random = randomNumbers(31);
    const [slope, repeat, runs] = [9, 2, 1500];
    let covered = 0;
    for (let i = 0; i < runs; i++) {
      const drift = 6 * (random() - 0.5);
      const run = (camber: number, k: number) => {
        const lean = -slope * camber - 15 + drift * k;
        const noise = () => (repeat / 1.959964) * normal(random);
        return across(80 + lean / 2 + noise(), 80 + noise(), 80 - lean / 2 + noise());
      };
      const { perNegativeDegree: found } = abaSlope(
        asked({ first: run(-1, 0), changed: run(-2, 1), again: run(-1, 2), repeat }),
      );
      if (Math.abs(found.value - slope) <= found.plusMinus) covered++;
    }
    expect(missed([{ what: 'covered', share: covered / runs, draws: runs, least: 0.95, most: 0.995 }], true)).toEqual(
      [],
    );
  });

  it('does not take what drift or noise could have made for a change', () => {
    expect(abaSlope(asked({ changed: across(82, 86, 90) })).isTold).toBe(false);
  });

  it('names the run and the place that is missing, and two settings that are one', () => {
    const problems = problemsOf(() => abaSlope(asked({ again: { inner: 80, middle: 81 } as never })));
    expect(problems.map(({ path, code }) => `${path} ${code}`)).toEqual(['again.outer missing']);
    expect(problemsOf(() => abaSlope(asked({ camber: { first: -1, changed: -1.02 } })))[0]).toMatchObject({
      code: 'coincide',
      path: 'camber.changed',
    });
  });
});
