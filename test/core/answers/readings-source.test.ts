import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loweringRequestOf, sourceOfCar } from '../../../core/answers/car-request.js';
import { lowering } from '../../../core/answers/from-source.js';
import { type LoweringRequest, loweringOf } from '../../../core/answers/lowering.js';
import { withBudget } from '../../../core/answers/with-budget.js';
import { fitReadings } from '../../../core/curve-sources/fit-readings.js';
import { triedSource } from '../../../core/curve-sources/solved-source.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { addSetup, emptySetup, withSetup } from '../../../core/document/setup-edits.js';
import { InputError, type Problem } from '../../../core/quantity/problem.js';
import { EXAMPLE_READINGS } from '../../../core/readings/example-readings.js';
import type { Reading } from '../../../core/readings/reading.js';
import { independentRegression } from '../../reference/independent-regression.js';

/** Student's t for a two-sided 95 % interval: test/reference/student_t_quantiles.csv (NIST/SEMATECH e-Handbook 1.3.6.7.2, to 13 digits). */
const T95 = new Map(
  readFileSync(new URL('../../reference/student_t_quantiles.csv', import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .slice(2)
    .map((line) => line.split(',').map(Number))
    .map((cells) => [cells[0]!, cells[8]!]),
);
/** 97.5 % quantile of the normal distribution (NIST/SEMATECH e-Handbook 1.3.6.7.1: 1.960). */
const NORMAL = 1.959964;

/** Each pass went one way, so its zero holds the way as well. */
const regression = (readings: readonly Reading[], degree: number) =>
  independentRegression(
    readings.map(({ going: _, ...reading }) => reading),
    degree,
  );

const ask = (readings: readonly Reading[], more: Partial<LoweringRequest> = {}, source: object = {}) =>
  lowering({ source: { kind: 'readings', readings, ...source }, drop: 25, ...more });

function problemsOf(call: () => unknown): Problem[] {
  try {
    call();
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    return (error as InputError).problems;
  }
  throw new Error('Was answered.');
}

/* Against least squares by a matrix library: test/reference/independent-regression.ts. */
describe('lowering by readings', () => {
  it.each([2, 3])('changes camber as a regression library says, degree %i, with its doubt', (degree) => {
    // 45 readings less as many parameters as leave 40 degrees of freedom: a row of the t table.
    const readings = EXAMPLE_READINGS.slice(0, 43 + degree);
    const independent = regression(readings, degree);
    expect(independent.dof).toBe(40);
    for (const drop of [-30, -5, 12.5, 25, 45]) {
      const expected = independent.change(drop, 0);
      const { change } = ask(readings, { drop }, { degree, plain: true });
      expect(change.value).toBeCloseTo(expected.value, 10);
      expect(change.plusMinus! / (expected.standardError * T95.get(40)!)).toBeCloseTo(1, 8);
    }
  });

  it('widens by t where readings are few', () => {
    const readings = EXAMPLE_READINGS.slice(0, 8);
    const { dof, change } = regression(readings, 2);
    expect(dof).toBe(5);
    const answer = ask(readings, { drop: -10 }, { degree: 2, plain: true });
    expect(answer.change.plusMinus).toBeCloseTo(change(-10, 0).standardError * 2.5705818, 6);
  });

  it('lets the evidence choose the degree, and follows the regression of that degree', () => {
    const answer = ask(EXAMPLE_READINGS, {}, { plain: true });
    const { degree } = answer.readings!;
    const expected = regression(EXAMPLE_READINGS, degree).change(25, 0);
    expect(answer.change.value).toBeCloseTo(expected.value, 9);
    // The invented linkage itself, 25 mm: see core/readings/example-readings.ts. Off by less than the ±.
    expect(answer.change.plusMinus).toBeLessThan(0.05);
  });

  it('counts the drop’s own doubt with the readings’, the degrees of freedom as the GUM says', () => {
    const readings = EXAMPLE_READINGS.slice(0, 8);
    const known = ask(readings, { drop: -10 }, { degree: 2, plain: true });
    const answer = ask(readings, { drop: -10, dropPlusMinus: 1 }, { degree: 2, plain: true });
    const fit = known.change.plusMinus! / T95.get(5)!;
    const drop = (Math.abs(answer.rateAfter.value) * 1) / NORMAL;
    const u = Math.hypot(fit, drop);
    // Welch–Satterthwaite (JCGM 100:2008, G.2b): the stated doubt has infinitely many.
    const effective = 5 * (u / fit) ** 4;
    const below = T95.get(Math.floor(effective))! * u;
    const above = T95.get(Math.ceil(effective))! * u;
    expect(answer.change.plusMinus).toBeLessThanOrEqual(below);
    expect(answer.change.plusMinus).toBeGreaterThanOrEqual(above);
    const shares = answer.contributions;
    expect(new Set(shares.map(({ id }) => id))).toEqual(new Set(['readings', 'drop']));
    expect(shares.find(({ id }) => id === 'drop')!.share).toBeCloseTo((drop / u) ** 2, 6);
  });

  it('names gauge, tape and zero height beside the readings, and takes what is said of them', () => {
    const byDefault = ask(EXAMPLE_READINGS);
    const ids = byDefault.contributions.map(({ id }) => id);
    expect(new Set(ids)).toEqual(new Set(['readings', 'gaugeScale', 'tapeScale', 'zeroHeight']));
    const rough = ask(EXAMPLE_READINGS, {}, { doubts: { gaugeScale: 5 } });
    expect(rough.change.plusMinus).toBeGreaterThan(byDefault.change.plusMinus!);
    expect(rough.contributions.find(({ id }) => id === 'gaugeScale')!.share).toBeGreaterThan(
      10 * byDefault.contributions.find(({ id }) => id === 'gaugeScale')!.share,
    );
    // Passes that go one way only leave the drift to be allowed for.
    const up = EXAMPLE_READINGS.filter(({ going }) => going === 'up');
    expect(ask(up).contributions.map(({ id }) => id)).toContain('drift');
    expect(() => ask(EXAMPLE_READINGS, {}, { doubts: { tapeScale: -1 } })).toThrow('tapeScale');
  });

  it('gives static camber at the drop: the curve’s own value there', () => {
    const answer = ask(EXAMPLE_READINGS, {}, { degree: 3 });
    const atStock = ask(EXAMPLE_READINGS, { drop: 0 }, { degree: 3 });
    expect(answer.camberAfter).toBeCloseTo(atStock.camberAfter + answer.change.value, 12);
    expect(answer).not.toHaveProperty('motion');
  });

  it('puts each reading on the curve’s level: its pass’s own zero is taken off', () => {
    const shifted = EXAMPLE_READINGS.map((reading) =>
      reading.pass === 'Pass 2' ? { ...reading, value: reading.value + 0.9 } : reading,
    );
    const spread = ({ readings, curve }: ReturnType<typeof lowering>) => {
      if (curve.kind !== 'polynomial') throw new Error('Not a polynomial.');
      const x = (t: number) => (t - curve.centre) / curve.scale;
      const at = (t: number) => curve.coefficients.reduce((sum, c, k) => sum + c * x(t) ** k, 0);
      return Math.max(...readings!.travel.map((t, i) => Math.abs(readings!.value[i]! - at(t))));
    };
    expect(spread(ask(EXAMPLE_READINGS))).toBeLessThan(0.1);
    expect(spread(ask(shifted))).toBeCloseTo(spread(ask(EXAMPLE_READINGS)), 9);
  });

  it('gives another curve as soon as anything of the readings is other', () => {
    const first = ask(EXAMPLE_READINGS);
    const copy = structuredClone(EXAMPLE_READINGS) as Reading[];
    expect(ask(copy, { drop: 10 }).curve).toEqual(first.curve);
    const inOther = (index: number, change: Partial<Reading>) =>
      ask(copy.map((reading, i) => (i === index ? { ...reading, ...change } : reading))).curve;
    for (const change of [{ value: -0.5 }, { travel: 1 }, { pass: 'Pass 3' }, { again: true }] as const) {
      expect(inOther(3, change)).not.toEqual(first.curve);
    }
    expect(ask(copy.slice(1)).curve).not.toEqual(first.curve);
    for (const other of [{ degree: 1 }, { doubts: { zeroHeight: 5 } }, { plain: true }]) {
      expect(ask(copy, {}, other).curve).not.toEqual(first.curve);
    }
  });
});

describe('lowering in two steps, the curve first', () => {
  const source = { kind: 'readings', readings: EXAMPLE_READINGS, zeroAt: 10 } as const;
  const more = { drop: 25, dropPlusMinus: 2, bumpTravel: 60, other: { drop: 20, camber: -1 } };

  it('answers what both at once answer', () => {
    const fitted = structuredClone(fitReadings(source));
    const request = { source: fitted, ...more };
    expect(withBudget(request, loweringOf(request))).toEqual(lowering({ source, ...more }));
  });

  it('names what is wrong with the readings together with what is wrong with the rest', () => {
    const bad = { ...source, readings: EXAMPLE_READINGS.slice(0, 1) };
    const refused = triedSource(() => fitReadings(bad));
    const problems = problemsOf(() => loweringOf({ source: refused, ...more, drop: 900 }));
    expect(problems).toEqual(problemsOf(() => lowering({ source: bad, ...more, drop: 900 })));
    expect(problems.map(({ path }) => path)).toEqual(['drop', 'readings']);
  });
});

describe('a list of readings that its owner changes', () => {
  it('is fitted anew', () => {
    const readings = structuredClone(EXAMPLE_READINGS) as Reading[];
    const before = ask(readings).change.value;
    readings.forEach((reading) => {
      reading.value -= 0.01 * reading.travel;
    });
    expect(ask(readings).change.value).toBeCloseTo(before - 0.25, 9);
    readings.splice(0, 20);
    expect(ask(readings).readings!.travel).toHaveLength(29);
  });
});

describe('what the scatter of readings does', () => {
  const taken = (curve: (t: number) => number, scatter: number): Reading[] =>
    Array.from({ length: 19 }, (_, i) => {
      const travel = 5 * i - 40;
      // A fixed sequence without a trend, between −1 and 1.
      return { travel, value: curve(travel) + scatter * Math.sin(97 * i * i) };
    });

  it('is no place where camber turns back', () => {
    const level = taken((t) => -0.5 - 0.0005 * t, 0.05);
    const wavy = ask(level, { drop: 10 }, { degree: 5 });
    const slope = (answer: ReturnType<typeof lowering>) => answer.rateBefore.value;
    // The curve of degree 5 does have turns.
    expect(slope(wavy)).not.toBeCloseTo(-0.0005, 4);
    expect(wavy).not.toHaveProperty('reversal');
    expect(wavy.isStraight).toBe(true);
  });

  it('hides no true one, nor that the change slows', () => {
    const vertex = 28;
    const turning = ask(
      taken((t) => -1 + 0.0002 * (t - vertex) ** 2, 0.02),
      { drop: 10 },
      { degree: 2 },
    );
    expect(Math.abs(turning.reversal!.travel.value - vertex)).toBeLessThan(turning.reversal!.travel.plusMinus!);
    expect(turning).not.toHaveProperty('isStraight');
  });

  it('leaves a straight line without a course', () => {
    const straight = ask(
      taken((t) => -0.01 * t, 0.01),
      { drop: 10 },
      { degree: 1 },
    );
    expect(straight.rateAfter.value).toBeCloseTo(straight.rateBefore.value, 12);
    expect(straight.isStraight).toBe(true);
  });
});

describe('readings that were taken on a lowered car', () => {
  it('are counted from stock height', () => {
    const { change } = regression(EXAMPLE_READINGS, 3);
    const answer = ask(EXAMPLE_READINGS, { drop: 40 }, { degree: 3, zeroAt: 20, plain: true });
    expect(answer.change.value).toBeCloseTo(change(20, -20).value, 10);
    expect(answer.curve.domain).toEqual([-15, 70]);
    expect([...answer.readings!.travel].sort((a, b) => a - b)[0]).toBe(-15);
  });

  it('are moved once only, whatever else was measured on the lowered car', () => {
    const plain = ask(EXAMPLE_READINGS, { drop: 40, bumpTravel: 60 }, { zeroAt: 20 });
    const both = ask(EXAMPLE_READINGS, { drop: 40, bumpTravel: 60, measuredAt: 20 }, { zeroAt: 20 });
    expect(both.change).toEqual(plain.change);
    expect([plain.bumpLeft, both.bumpLeft]).toEqual([20, 40]);
  });
});

describe('where nothing was measured', () => {
  it.each([
    ['drop', { drop: 50.5 }, {}, 50.5, 50],
    ['drop', { drop: -36 }, {}, -36, -35],
    ['stockHeight', { drop: 80 }, { zeroAt: 60 }, 0, 25],
    ['stockHeight', { drop: -60 }, { zeroAt: -60 }, 0, -10],
    ['other.drop', { other: { drop: 60, camber: -1 } }, {}, 60, 50],
  ] as const)('%s: nothing is answered, and the end is named', (path, request, source, value, limit) => {
    expect(problemsOf(() => ask(EXAMPLE_READINGS, request, source))).toEqual([
      { code: 'outside-domain', path, value, limit },
    ]);
  });

  it('holds for a curve by coefficients as well', () => {
    const source = { kind: 'coefficients', coefficients: [-0.5, -0.01], domain: [10, 60] } as const;
    expect(
      problemsOf(() =>
        lowering({
          source: { ...source, domain: [...source.domain], coefficients: [...source.coefficients] },
          drop: 30,
        }),
      ),
    ).toEqual([{ code: 'outside-domain', path: 'stockHeight', value: 0, limit: 10 }]);
  });
});

describe('readings that make no curve', () => {
  const many = Array.from({ length: EXAMPLE_READINGS.length }, () => null);
  it.each([[[]], [[{ travel: 0, value: -0.5 }]], [undefined], ['x'], [[{ travel: Number.NaN, value: 1 }]], [many]])(
    '%j: are refused with the reason',
    (readings) => {
      ask(EXAMPLE_READINGS);
      expect(problemsOf(() => ask(readings as never)).length).toBeGreaterThan(0);
    },
  );

  it('do not stand on a height that is none', () => {
    for (const zeroAt of [Number.NaN, 151, '20']) {
      expect(problemsOf(() => ask(EXAMPLE_READINGS, {}, { zeroAt }))[0]!.path).toBe('zeroAt');
    }
  });
});

describe('the source of a car', () => {
  const own = withSetup({ ...EMPTY_CAR, drop: 25, stopGap: 40 }, (setup) => ({
    ...setup,
    readings: EXAMPLE_READINGS,
    setAside: [0, 3],
    degree: 3,
    zeroAt: 10,
    doubts: { tapeScale: 2 },
  }));

  it('is its readings, without those set aside', () => {
    expect(sourceOfCar(own)).toEqual({
      kind: 'readings',
      readings: EXAMPLE_READINGS.filter((_, i) => i !== 0 && i !== 3),
      degree: 3,
      zeroAt: 10,
      doubts: { tapeScale: 2 },
    });
    // The gap on the rod needs a damper that is known.
    expect(loweringRequestOf(own)).not.toHaveProperty('stopGap');
    expect(lowering(loweringRequestOf(own)).drop).toBe(25);
  });

  it('is what else is known where there are none of camber', () => {
    const toe: CarDocument = { ...addSetup(EMPTY_CAR, emptySetup('Toe', 'toe', 'Front left')), by: 'readings' };
    expect(sourceOfCar(toe).kind).toBe('driveway');
    expect(sourceOfCar({ ...EMPTY_CAR, by: 'readings' }).kind).toBe('driveway');
    const points = { ...EMPTY_CAR, by: 'readings', given: { points: { wheelCentre: [0, 745, 310] } } } as CarDocument;
    expect(sourceOfCar(points).kind).toBe('corner');
  });

  it('is readings before a curve that a page gave', () => {
    const curve = { kind: 'coefficients', coefficients: [0], domain: [-10, 10] } as const;
    expect(sourceOfCar({ ...own, curve } as unknown as CarDocument).kind).toBe('readings');
  });
});
