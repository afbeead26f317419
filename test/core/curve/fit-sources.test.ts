import { describe, expect, it } from 'vitest';
import { curveFrom } from '../../../core/curve/check-curve-data.js';
import type { Curve } from '../../../core/curve/curve.js';
import { type FitOptions, fitCurve } from '../../../core/curve/fit.js';
import type { InputError } from '../../../core/quantity/problem.js';
import { DEFAULT_DOUBTS } from '../../../core/readings/doubts.js';
import type { Reading } from '../../../core/readings/reading.js';
import { passOrderOf } from '../../../core/readings/wheel-direction.js';
import { normal, randomNumbers } from '../driveway/random-car.js';

/** Half-width of a 95 % interval ÷ standard uncertainty, normal law (NIST/SEMATECH e-Handbook 1.3.6.7.1). */
const NORMAL_95 = 1.959964;
const strut = (t: number) => -0.6 - 0.016 * t + 1.2e-4 * t * t;
const HEIGHTS = Array.from({ length: 21 }, (_, i) => -40 + 5 * i);
const NONE = { gaugeScale: 0, tapeScale: 0, zeroHeight: 0, drift: 0 };

type Way = 'up' | 'down';
/** One pass of exact readings in the order in which they were taken, the gauge drifting evenly from the first to the last. */
function pass(
  name: string,
  heights: readonly number[],
  { drift = 0, zero = 0, going }: { drift?: number; zero?: number; going?: Way } = {},
): Reading[] {
  return heights.map((travel, i) => ({
    travel,
    value: strut(travel) + zero + (drift * i) / (heights.length - 1),
    pass: name,
    ...(going && { going }),
  }));
}
const down = [...HEIGHTS].reverse();
const upAndDown = (drift: number) => [
  ...pass('1', HEIGHTS, { drift, going: 'up' }),
  ...pass('2', down, { drift, zero: 0.1, going: 'down' }),
  ...pass('3', HEIGHTS, { drift, zero: -0.2, going: 'up' }),
];
const change = (readings: readonly Reading[], options: FitOptions = {}) =>
  curveFrom(fitCurve(readings, { degree: 2, ...options }).curve).change(50, 0);
const TRUE_CHANGE = strut(50) - strut(0);

/** Standard uncertainty that one source adds to a change, by its id; undefined where there is no such source. */
function part(curve: Curve, id: string, t: number, t0: number): number | undefined {
  const at = curve.data.sources.findIndex((source) => source.id === id);
  return at < 0 ? undefined : curve.changeEstimate(t, t0).parts[at];
}

describe('what all readings of a set have in common', () => {
  const readings = upAndDown(0);
  const curve = curveFrom(fitCurve(readings, { degree: 2 }).curve);

  it('a gauge’s scale multiplies a change', () => {
    expect(part(curve, 'gaugeScale', 50, 0)).toBeCloseTo((0.01 * TRUE_CHANGE) / NORMAL_95, 6);
    const three = curveFrom(fitCurve(readings, { degree: 2, gaugeScale: 3 }).curve);
    expect(part(three, 'gaugeScale', 50, 0)).toBeCloseTo((0.03 * TRUE_CHANGE) / NORMAL_95, 6);
  });

  it('a tape’s scale stretches travel from zero, as readings at stretched heights show', () => {
    const stretched = readings.map((reading) => ({ ...reading, travel: reading.travel * 1.0001 }));
    const other = curveFrom(fitCurve(stretched, { degree: 2 }).curve);
    for (const [t, t0] of [
      [50, 0],
      [25, 0],
      [40, 15],
      [0, -30],
    ] as const) {
      const byReadings = (curve.change(t, t0) - other.change(t, t0)) / 0.0001;
      expect(part(curve, 'tapeScale', t, t0)).toBeCloseTo((0.01 * byReadings) / NORMAL_95, 5);
    }
  });

  it('a zero that is off moves the curve, as readings at moved heights show', () => {
    const moved = readings.map((reading) => ({ ...reading, travel: reading.travel + 0.01 }));
    const other = curveFrom(fitCurve(moved, { degree: 2 }).curve);
    for (const [t, t0] of [
      [50, 0],
      [25, 0],
      [40, 15],
    ] as const) {
      const byReadings = (curve.change(t, t0) - other.change(t, t0)) / 0.01;
      expect(part(curve, 'zeroHeight', t, t0)).toBeCloseTo((2 * byReadings) / NORMAL_95, 5);
    }
    // It also moves a value and, where the curve bends, a rate.
    const at = curve.data.sources.findIndex(({ id }) => id === 'zeroHeight');
    expect(curve.estimate(20).parts[at]).toBeCloseTo((2 * curve.slope(20)) / NORMAL_95, 9);
    expect(curve.slopeEstimate(20).parts[at]).toBeCloseTo((2 * 2.4e-4) / NORMAL_95, 7);
  });

  it('is left out where it is declared to be nothing, and where the fit is plain', () => {
    const ids = (options: FitOptions) => fitCurve(readings, options).curve.sources.map(({ id }) => id);
    expect(ids({})).toEqual(expect.arrayContaining(['gaugeScale', 'tapeScale', 'zeroHeight']));
    expect(ids(NONE).filter((id) => id in DEFAULT_DOUBTS)).toEqual([]);
    expect(ids({ plain: true }).every((id) => id.startsWith('fit.') || id === 'zero')).toBe(true);
  });

  it('is refused where it is no share or length', () => {
    const problems = (options: object) => {
      try {
        fitCurve(readings, options);
      } catch (error) {
        return (error as InputError).problems.map(({ path, code }) => `${path} ${code}`);
      }
      return [];
    };
    expect(problems({ gaugeScale: -1, tapeScale: '3', zeroHeight: Number.NaN, drift: 90 })).toEqual([
      'gaugeScale out-of-range',
      'tapeScale not-a-number',
      'zeroHeight not-finite',
      'drift out-of-range',
    ]);
    expect(problems({ inOrder: 1, plain: 'yes' })).toEqual(['inOrder wrong-shape', 'plain wrong-shape']);
    expect(() => fitCurve([{ travel: 0, value: 1, again: 'yes' as never }])).toThrow('readings.0.again');
  });
});

describe('drift of the gauge inside a pass', () => {
  it('is told, and taken out, where passes run both ways', () => {
    const fit = fitCurve(upAndDown(0.2), { degree: 2 });
    expect(fit.drift!.value).toBeCloseTo(0.2, 9);
    expect(change(upAndDown(0.2))).toBeCloseTo(TRUE_CHANGE, 9);
    // Up against down is not asked about here, so the passes alone would bend it.
    expect(Math.abs(change(upAndDown(0.2), { plain: true }) - TRUE_CHANGE)).toBeGreaterThan(0.02);
  });

  it('is told where each pass goes there and back, whichever way came first', () => {
    for (const first of [1, -1]) {
      const there = first > 0 ? HEIGHTS : down;
      const readings = ['1', '2'].flatMap((name) =>
        pass(name, [...there, ...[...there].reverse()], { drift: 0.2 }).map((reading, i) => ({
          ...reading,
          going: i < there.length === first > 0 ? ('up' as const) : ('down' as const),
        })),
      );
      expect(change(readings)).toBeCloseTo(TRUE_CHANGE, 6);
    }
  });

  it('is told by the first height read again at the end, of a pass that goes up and of one that goes down', () => {
    for (const heights of [HEIGHTS, down]) {
      const readings = ['1', '2', '3'].flatMap((name) =>
        pass(name, [...heights, heights[0]!], { drift: 0.2 }).map((reading, i) => ({
          ...reading,
          ...(i === heights.length && { again: true as const }),
        })),
      );
      expect(fitCurve(readings, { degree: 2 }).drift!.value).toBeCloseTo(0.2, 9);
      expect(change(readings)).toBeCloseTo(TRUE_CHANGE, 9);
      // It is told by the mark, not by where it stands.
      expect(change([...readings].sort((a, b) => a.travel - b.travel))).toBe(change(readings));
    }
  });

  it('is told by the order of the readings where they say that it is that in which they were taken, and only there', () => {
    const readings = ['1', '2', '3'].flatMap((name) => pass(name, [...HEIGHTS, HEIGHTS[0]!], { drift: 0.2 }));
    expect(change(readings, { inOrder: true })).toBeCloseTo(TRUE_CHANGE, 9);
    const unordered = fitCurve(readings, { degree: 2 });
    expect(unordered).not.toHaveProperty('drift');
    expect(unordered.curve.sources.map(({ id }) => id)).toContain('drift');
    const turned = ['1', '2'].flatMap((name) => pass(name, [...HEIGHTS, ...down.slice(1)], { drift: 0.2 }));
    expect(change(turned, { inOrder: true })).toBeCloseTo(TRUE_CHANGE, 9);
  });

  it('is allowed for where nothing tells it: by so much over the range of a pass', () => {
    const readings = ['1', '2', '3'].flatMap((name) => pass(name, HEIGHTS));
    const fit = fitCurve(readings, { degree: 2 });
    expect(fit).not.toHaveProperty('drift');
    const curve = curveFrom(fit.curve);
    // 0.13° over 100 mm, half of it over 50.
    expect(part(curve, 'drift', 50, 0)).toBeCloseTo(0.065 / NORMAL_95, 8);
    expect(part(curveFrom(fitCurve(readings, { degree: 2, drift: 0.3 }).curve), 'drift', 50, 0)).toBeCloseTo(
      0.15 / NORMAL_95,
      8,
    );
    expect(part(curveFrom(fitCurve(upAndDown(0), { degree: 2 }).curve), 'drift', 50, 0)).toBeUndefined();
  });

  it('is allowed for in the passes of which nobody told the way, beside others', () => {
    const told = upAndDown(0);
    const some = [...told, ...pass('4', HEIGHTS), ...pass('5', HEIGHTS)];
    const curve = curveFrom(fitCurve(some, { degree: 2 }).curve);
    const allowed = part(curve, 'drift', 50, 0)!;
    expect(allowed).toBeGreaterThan(0.2 * (0.065 / NORMAL_95));
    expect(allowed).toBeLessThan(0.065 / NORMAL_95);
  });
});

describe('friction', () => {
  // A loop that closes at both ends, of Legendre's shape over the range.
  it('that is least at the turns is taken out where the ways are told', () => {
    const loop = (t: number, going: Way) => (going === 'up' ? 0.1 : -0.1) * (1 - ((t - 10) / 50) ** 2);
    const readings = upAndDown(0).map((reading) => ({
      ...reading,
      value: reading.value + loop(reading.travel, reading.going!),
    }));
    expect(change(readings)).toBeCloseTo(TRUE_CHANGE, 9);
    expect(Math.abs(change(readings, { plain: true }) - TRUE_CHANGE)).toBeGreaterThan(0.01);
  });

  it('that is constant is told where a pass goes both ways', () => {
    const readings = ['1', '2'].flatMap((name) => [
      ...pass(name, HEIGHTS, { zero: 0.05, going: 'up' }),
      ...pass(name, down, { zero: -0.05, going: 'down' }),
    ]);
    expect(fitCurve(readings, { degree: 2 }).upLessDown!.value).toBeCloseTo(0.1, 9);
    expect(change(readings)).toBeCloseTo(TRUE_CHANGE, 9);
  });
});

describe('scatter that goes together', () => {
  /** Each reading's scatter keeps `rho` of the one before. */
  function wandering(rho: number, seed: number, count = 240): Reading[] {
    const random = randomNumbers(seed);
    let wander = normal(random);
    return Array.from({ length: count }, (_, i) => {
      if (i > 0) wander = rho * wander + Math.sqrt(1 - rho * rho) * normal(random);
      const travel = -60 + (120 * i) / (count - 1);
      return { travel, value: strut(travel) + 0.05 * wander };
    });
  }

  it('widens the band by as much as so many fewer readings would', () => {
    const together = fitCurve(wandering(0.6, 1), { ...NONE, degree: 2 });
    const plain = fitCurve(wandering(0.6, 1), { plain: true, degree: 2 });
    expect(together.scatter.correlation).toBeGreaterThan(0.5);
    expect(together.scatter.durbinWatson).toBeLessThan(1.2);
    expect(together.scatter.chance).toBeLessThan(1e-6);
    expect(together.scatter.effectiveReadings).toBeLessThan(240 / 3);
    const [wide, narrow] = [together, plain].map(({ curve }) => curveFrom(curve).changeStandardError(50, 0));
    // Four times as few readings would double it.
    expect(wide! / narrow!).toBeGreaterThan(1.7);
    // The curve itself is the same.
    expect(curveFrom(together.curve).change(50, 0)).toBeCloseTo(curveFrom(plain.curve).change(50, 0), 12);
    // What a regression library says of the coefficients is still said.
    expect(together.coefficientSd).toEqual(plain.coefficientSd);
  });

  it('counts an estimate that cannot be told from nothing, and none that is negative', () => {
    const weak = fitCurve(wandering(0.15, 4, 40), { ...NONE, degree: 2 }).scatter;
    expect(weak.chance).toBeGreaterThan(0.05);
    expect(weak.correlation).toBeGreaterThan(0);
    const against = fitCurve(wandering(-0.6, 3), { ...NONE, degree: 2 }).scatter;
    expect(against).toMatchObject({ correlation: 0, effectiveReadings: expect.closeTo(240, 9) });
    expect(against.chance).toBeGreaterThan(0.999);
  });

  it('is found in the middle of what was put in, over many sets', () => {
    const found = Array.from({ length: 40 }, (_, seed) => fitCurve(wandering(0.4, seed + 1, 60), { degree: 2 }));
    const mean = found.reduce((sum, { scatter }) => sum + scatter.correlation, 0) / found.length;
    // Raised by half, as the readings of a garage are thinned out by their heights; these are not.
    expect(mean / 1.5).toBeGreaterThan(0.33);
    expect(mean / 1.5).toBeLessThan(0.47);
  });

  it('is not looked for between the end of one pass and the beginning of the next', () => {
    const random = randomNumbers(7);
    const short = Array.from({ length: 30 }, (_, p) =>
      [-20, -10, 0, 10, 20].map((travel) => ({ travel, pass: `${p}` })),
    ).flat();
    const readings = short.map((reading) => ({ ...reading, value: strut(reading.travel) + 0.05 * normal(random) }));
    const { durbinWatson, chance } = fitCurve(readings, { degree: 1 }).scatter;
    // With a zero in each pass of five, neighbours go against each other of themselves: the chance knows it.
    expect(durbinWatson).toBeGreaterThan(1.4);
    expect(chance).toBeGreaterThan(0.01);
    expect(chance).toBeLessThan(0.99);
  });
});

describe('passes that run apart', () => {
  const passes = (heights: readonly number[]) => {
    const random = randomNumbers(2);
    return heights.flatMap((by, p) =>
      HEIGHTS.map((travel) => ({ travel, value: strut(travel + by) + 0.02 * normal(random), pass: `Pass ${p}` })),
    );
  };
  const own = (readings: readonly Reading[]) => {
    const curve = curveFrom(fitCurve(readings, { ...NONE, degree: 2 }).curve);
    const { parts } = curve.changeEstimate(50, 0);
    return Math.hypot(...curve.data.sources.flatMap(({ id }, i) => (id.startsWith('apart.') ? [parts[i]!] : [])));
  };

  it('widen the band where their heights are not those of one zero', () => {
    expect(own(passes([0, 0, 0, 0]))).toBeLessThan(0.01);
    // 6 mm, standard deviation 5: the curve's bend makes 0.06° of it over 50 mm, half as much for the mean of four.
    const apart = own(passes([-6, 6, -4, 4]));
    expect(apart).toBeGreaterThan(0.015);
    expect(apart).toBeLessThan(0.06);
  });

  it('are no more causes than the curve has coefficients', () => {
    const many = fitCurve(passes(Array.from({ length: 12 }, (_, i) => 12 * (i % 2))), { ...NONE, degree: 2 });
    expect(many.curve.sources.filter(({ id }) => id.startsWith('apart.'))).toHaveLength(3);
  });
});

describe('readings of which there are too few to tell any of it', () => {
  it.each([
    ['a line through three', [-10, 0, 10], 1, 1],
    ['four', [-10, 0, 10, 20], 1, 2],
    ['thirty passes of three', [-10, 0, 10], 1, 30],
  ])('%s: have a finite band, and no correlation that nothing shows', (_, heights, degree, count) => {
    const random = randomNumbers(7);
    const readings = Array.from({ length: count }, (_unused, p) =>
      heights.map((travel) => ({ travel, value: strut(travel) + 0.05 * normal(random), pass: `${p}` })),
    ).flat();
    const { scatter, curve } = fitCurve(readings, { degree });
    expect(Number.isFinite(curveFrom(curve).changeStandardError(10, 0))).toBe(true);
    expect(scatter.dof).toBeGreaterThan(0.99);
    if (count === 30) expect(scatter).toMatchObject({ correlation: 0 });
  });
});

describe('a pass that begins inside its range and ends at its first height', () => {
  // Invented: toe that bends over travel, read in the order given while the zero wanders by 0.1° from first to last.
  const toe = (travel: number) => 2e-5 * travel * travel - 0.003 * travel;
  const SCATTER = [3, -2, 1, -4, 2, 0, -1, 3, -2, 1, 2];
  const read = (travels: readonly number[], wander = 0.1) =>
    travels.map((travel, i) => ({
      travel,
      value: toe(travel) + 1e-4 * SCATTER[i % SCATTER.length]! + (wander * i) / (travels.length - 1),
      ...(i === travels.length - 1 && { again: true as const }),
    }));
  const withWays = (travels: readonly number[]) => {
    const { directions } = passOrderOf(travels);
    return read(travels).map((reading, i) => ({ ...reading, ...(directions && { going: directions[i]! }) }));
  };
  const ORDERS = [
    ['up, then down', [0, 10, 20, 30, 40, 50, -10, -20, -30, -40, 0]],
    ['down, then up', [0, -10, -20, -30, -40, 10, 20, 30, 40, 50, 0]],
    ['up, then from the bottom up', [0, 10, 20, 30, 40, 50, -40, -30, -20, -10, 0]],
    ['round, by the middle', [0, 20, 40, 30, 10, 0, -20, -40, -30, -10, 0]],
    ['round, without stopping', [0, 20, 40, 30, 10, -10, -30, -40, -20, 0]],
  ] as const;

  it.each(ORDERS)('shows how far the gauge wandered, and the curve is without it: %s', (_, travels) => {
    expect(passOrderOf(travels).isBack).toBe(true);
    const fit = fitCurve(withWays(travels), { degree: 2, quantity: 'toe' });
    expect(fit.drift!.value).toBeCloseTo(0.1, 2);
    expect(fit.curve.sources.map(({ id }) => id)).not.toContain('drift');
    for (const travel of [-40, -20, 20, 40])
      expect(Math.abs(curveFrom(fit.curve).change(travel, 0) - toe(travel))).toBeLessThan(0.003);
  });

  it('shows it too where nobody says which half came first, and takes either half for as likely', () => {
    const [[, upFirst], [, downFirst]] = ORDERS;
    for (const travels of [upFirst, downFirst]) {
      const fit = fitCurve(read(travels), { degree: 2, quantity: 'toe' });
      expect(fit.drift!.value).toBeCloseTo(0.1, 1);
      expect(fit.curve.sources.map(({ id }) => id)).not.toContain('drift');
    }
    const shuffled = [5, 1, 9, 0, 3, 10, 7, 2, 8, 4, 6].map((i) => read(upFirst)[i]!);
    expect(fitCurve(shuffled, { degree: 2 }).curve).toEqual(fitCurve(read(upFirst), { degree: 2 }).curve);
  });

  it('is called drift of dials or tape where both figures of each reading are kept', () => {
    const pairs = read([-20, -10, 0, 10, 20]).map(({ again: _, ...one }) => ({ ...one, pair: [6, 6] as const }));
    const labels = fitCurve(pairs, { degree: 1 }).curve.sources.map(({ label }) => label);
    expect(labels).toContain('the drift of dials or tape inside a pass');
    expect(labels.join()).not.toContain('gauge');
  });
});
