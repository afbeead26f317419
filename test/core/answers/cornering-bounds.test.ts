import { describe, expect, it } from 'vitest';
import type { CorneringRequest } from '../../../core/answers/cornering-request.js';
import { camberForInclination, cornering, rollForInclination } from '../../../core/answers/from-source.js';
import type { AnySource } from '../../../core/curve-sources/source.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { EXAMPLE_READINGS } from '../../../core/readings/example-readings.js';
import { wishboneCorner } from '../linkage/wishbone-corner.js';
import { problemsOf } from '../problems-of.js';

/* What a turn is not asked of, and where it ends; and the two questions turned round. */

const example = { kind: 'corner', corner: EXAMPLE_CORNER } as const;
const driveway = { kind: 'driveway', driveway: EXAMPLE_DRIVEWAY } as const;
const readings = { kind: 'readings', readings: EXAMPLE_READINGS } as const;
const parts: AnySource = { kind: 'parts', of: driveway, parts: [{ part: 'ballJointExtended', mm: 22 }] };
const wishbone = { kind: 'corner', corner: wishboneCorner } as const;
/** Short links: with the rod this short, no wheel gets far. */
const short = {
  kind: 'corner',
  corner: { ...EXAMPLE_CORNER, tieRod: { inner: [-124, 560, 256], outer: [-128, 664, 245] } },
} as const;
type Asked = Partial<CorneringRequest<AnySource>>;
const ask = (more: Asked = {}) => cornering({ source: example, drop: 0, roll: 3, ...more });

describe('a turn beyond what a wheel can do is refused by its field, and its limit can be driven', () => {
  it.each([
    ['steering straight', {}],
    ['steered by an angle', { steer: { angle: 4 } }],
    ['steered by the rack', { steer: { rack: 15 } }],
    ['with camber set again, high up', { camber: -2, drop: -30 }],
  ] as [string, Asked][])('roll: with the roll at which the first wheel ends, and which one: %s', (_, more) => {
    const request = { source: short, drop: 20, ...more };
    const [problem, ...others] = problemsOf(() => ask({ ...request, roll: 15 }));
    expect(others).toEqual([]);
    expect(problem).toMatchObject({ code: 'outside-domain', path: 'roll', value: 15 });
    const at = ask({ ...request, roll: problem!.limit! - 1e-6 });
    // With the rack in the middle, from where bump is counted, or where it is in the turn.
    const middle = ask({ ...request, roll: problem!.limit! - 1e-6, steer: undefined as never });
    const left = [at, middle].map(({ outer, inner, limits }) => ({
      outer: limits.outer.bump - outer.travel,
      inner: inner.travel - limits.inner.droop,
    }));
    const which = problem!.other as 'outer' | 'inner';
    expect(Math.min(...left.map((one) => one[which]))).toBeCloseTo(0, 2);
    expect(problemsOf(() => ask({ ...request, roll: problem!.limit! + 0.01 }))).toHaveLength(1);
  });

  it('roll of a curve: the other wheel of a car that stands high in its domain ends first', () => {
    const source: AnySource = { kind: 'coefficients', coefficients: [-1, -0.01], domain: [-40, 60] };
    const of = (drop: number) =>
      problemsOf(() => cornering({ source, halfTrack: 740, drop, roll: 10 })).map(({ other, limit }) => [other, limit]);
    expect(of(0)).toEqual([['inner', expect.closeTo((Math.atan(40 / 740) * 180) / Math.PI, 9)]]);
    expect(of(25)).toEqual([['outer', expect.closeTo((Math.atan(35 / 740) * 180) / Math.PI, 9)]]);
  });

  it('a radius inside the lock: with the smallest one', () => {
    const steer = { radius: 2.2, wheelbase: 4 };
    const [problem] = problemsOf(() => ask({ steer }));
    expect(problem).toMatchObject({ code: 'out-of-range', path: 'steer.radius', value: 2.2 });
    const { outer, ackermann } = ask({ steer: { ...steer, radius: problem!.limit! + 0.001 } });
    expect(ackermann!.inner).toBeGreaterThan(outer.steer);
    expect(problemsOf(() => ask({ steer: { ...steer, radius: problem!.limit! - 0.01 } }))).toHaveLength(1);
  });

  it('a radius inside any road car’s lock, whatever the links reach: 45° of mean steer is the most', () => {
    // By hand: inside and outside wheel at 45° ± the same, from atan(wheelbase / (radius ± half the track between the pivots)).
    const wheelbase = 2.5;
    const [problem] = problemsOf(() => ask({ roll: 1, steer: { radius: 2, wheelbase } }));
    expect(problem).toMatchObject({ code: 'out-of-range', path: 'steer.radius', value: 2 });
    const { ackermann } = ask({ roll: 1, steer: { radius: problem!.limit! + 1e-6, wheelbase } });
    expect((ackermann!.inner + ackermann!.outer) / 2).toBeCloseTo(45, 3);
    const half =
      (2.5 / Math.tan((ackermann!.outer * Math.PI) / 180) - 2.5 / Math.tan((ackermann!.inner * Math.PI) / 180)) / 2;
    const radius = Math.sqrt(wheelbase ** 2 + half ** 2);
    expect(problem!.limit!).toBeCloseTo(radius, 5);
  });

  it.each([
    ['steer.angle', { angle: 55 }, (limit: number) => ({ angle: limit - 1e-3 })],
    ['steer.rack', { rack: 190 }, (limit: number) => ({ rack: limit - 1e-3 })],
  ] as const)('%s beyond the links: with the last one', (path, steer, within) => {
    const [problem] = problemsOf(() => ask({ steer }));
    expect(problem).toMatchObject({ code: 'out-of-range', path });
    expect(ask({ steer: within(problem!.limit!) }).rack).toBeGreaterThan(50);
  });

  it('a drop beyond reach, and beyond a curve', () => {
    const [problem] = problemsOf(() => ask({ source: short, drop: 140, roll: 0 }));
    expect(problem).toMatchObject({ code: 'outside-domain', path: 'drop', value: 140 });
    expect(ask({ source: short, drop: problem!.limit!, roll: 0 }).outer.travel).toBeCloseTo(problem!.limit!, 6);
    expect(problemsOf(() => ask({ source: readings, halfTrack: 740, drop: 140 }))[0]).toMatchObject({ path: 'drop' });
  });
});

describe('what is wrong with a request is told at once, by its fields', () => {
  it.each([
    [{ drop: Number.NaN, roll: -1 }, ['drop', 'roll']],
    [{ roll: 16, tyreRoll: -0.1, halfTrack: 1.4 }, ['roll', 'tyreRoll', 'halfTrack']],
    [{ camber: 'x' as never, toe: 20, rollUncertainty: -1 }, ['rollUncertainty', 'camber', 'toe']],
    [{ steer: 5 as never }, ['steer']],
    [{ steer: null as never }, ['steer']],
    [{ steer: {} as never }, ['steer.radius', 'steer.wheelbase']],
    [{ steer: { radius: 20, wheelbase: 2500 } }, ['steer.wheelbase']],
    [{ steer: { radius: 20, angle: 5 } as never }, ['steer.angle']],
    [{ steer: { angle: -5 } }, ['steer.angle']],
    [{ source: { kind: 'corner', corner: {} }, roll: -1 }, ['roll', 'wheelCentre']],
  ] as [Asked, string[]][])('%j', (more, paths) => {
    const told = problemsOf(() => ask(more)).map(({ path }) => path);
    for (const path of paths) expect(told).toContain(path);
    if (!('source' in more)) expect(told).toEqual(paths);
  });

  it('a source without hard points says what is missing, and is asked about no steer', () => {
    const problems = problemsOf(() => ask({ source: readings, steer: { angle: 5 } }));
    expect(problems.map(({ code, path }) => [code, path])).toEqual([
      ['missing', 'halfTrack'],
      ['wrong-shape', 'steer'],
    ]);
  });

  it('a driveway has a rack that nobody measured', () => {
    expect(problemsOf(() => ask({ source: driveway, steer: { rack: 20 } }))).toEqual([
      { code: 'unknown-name', path: 'steer', value: 'rack', names: ['radius', 'angle'] },
    ]);
  });
});

describe('sources without hard points', () => {
  it('readings: the curve where both wheels stand, and roll', () => {
    const { outer, inner, rack, rollCentre } = ask({ source: readings, halfTrack: 738, drop: 10, roll: 2 });
    const rise = 738 * Math.tan((2 * Math.PI) / 180);
    expect([outer.travel, inner.travel]).toEqual([expect.closeTo(10 + rise, 9), expect.closeTo(10 - rise, 9)]);
    expect(outer.inclination).toBeCloseTo(outer.camber + 2, 12);
    expect(inner.inclination).toBeCloseTo(inner.camber - 2, 12);
    expect([outer.toe, rack, rollCentre]).toEqual([Number.NaN, 0, undefined]);
  });

  // The example's driveway is the example car measured with a tape.
  it('a driveway comes near the car that was measured, straight ahead and steered; its toe nobody knows', () => {
    for (const steer of [undefined, { angle: 10 }]) {
      const more = { drop: 25, ...(steer && { steer }) };
      const [guessed, known] = [ask({ ...more, source: driveway }), ask(more)];
      expect(Math.abs(guessed.outer.inclination - known.outer.inclination)).toBeLessThan(0.25);
      expect(guessed.outer.toe).toBeNaN();
    }
  });

  it('a driveway without its static camber counts it from stock height, wherever it was measured', () => {
    const { camber: _, ...rest } = EXAMPLE_DRIVEWAY;
    for (const measuredAt of [0, 20]) {
      const answer = ask({ source: { kind: 'driveway', driveway: rest }, drop: 0, measuredAt, roll: 0 });
      expect(answer.outer.inclination).toBeCloseTo(0, 5);
    }
  });

  it('camber that was read with people aboard is set right', () => {
    const read = ask({ roll: 0, camberReadLower: 20 });
    const there = ask({ roll: 0, drop: 20, camberReadLower: 20 });
    expect(there.outer.camber).toBeCloseTo(EXAMPLE_CORNER.camber, 3);
    expect(read.outer.camber).toBeGreaterThan(EXAMPLE_CORNER.camber);
  });
});

describe('turned round', () => {
  const cases: [string, Asked][] = [
    ['hard points', { drop: 25 }],
    ['a wishbone, steered', { source: wishbone, drop: 10, steer: { angle: 6 } }],
    ['a driveway with a part', { source: parts, drop: 25 }],
    ['readings', { source: readings, halfTrack: 738, drop: 10, roll: 2 }],
  ];
  it.each(cases)('camberForInclination gives the camber that has it: %s', (_, more) => {
    for (const inclination of [-0.5, 1, 3]) {
      const { camber } = camberForInclination({ source: example, drop: 0, roll: 3, ...more, inclination });
      expect(ask({ ...more, camber }).outer.inclination).toBeCloseTo(inclination, 7);
    }
  });

  it.each(cases)('rollForInclination gives the first roll that has it: %s', (_, more) => {
    const still = ask({ ...more, roll: 0 }).outer.inclination;
    for (const by of [0.2, 1.2]) {
      const { roll } = rollForInclination({ source: example, drop: 0, roll: 3, ...more, inclination: still + by });
      expect(ask({ ...more, roll }).outer.inclination).toBeCloseTo(still + by, 7);
      expect(ask({ ...more, roll: 0.9 * roll }).outer.inclination).toBeLessThan(still + by);
    }
  });

  it('what is out of reach is refused with the nearest that is not', () => {
    const near = { source: short, drop: 20, roll: 1 };
    const refused = problemsOf(() => rollForInclination({ ...near, inclination: 29 }))[0]!;
    expect(refused).toMatchObject({ code: 'out-of-range', path: 'inclination', value: 29 });
    expect(rollForInclination({ ...near, inclination: refused.limit! - 1e-3 }).roll).toBeGreaterThan(1);
    // More roll only leans the outer wheel further out.
    expect(problemsOf(() => rollForInclination({ ...near, inclination: -20 }))[0]).toMatchObject({
      path: 'inclination',
      limit: expect.closeTo(ask({ ...near, roll: 0 }).outer.inclination, 9),
    });
    const far = { source: wishbone, drop: 0, roll: 2 };
    const camber = problemsOf(() => camberForInclination({ ...far, inclination: 29 }))[0]!;
    expect(camber).toMatchObject({ code: 'out-of-range', path: 'inclination', value: 29 });
    expect(camberForInclination({ ...far, inclination: camber.limit! - 0.01 }).camber).toBeGreaterThan(5);
  });

  it('the wanted inclination is checked with the rest', () => {
    const paths = problemsOf(() =>
      camberForInclination({ source: example, drop: 0, roll: -1, inclination: Number.NaN }),
    );
    expect(paths.map(({ path }) => path)).toEqual(['inclination', 'roll']);
  });
});
