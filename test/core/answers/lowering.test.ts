import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lowering } from '../../../core/answers/from-source.js';
import type { LoweringRequest } from '../../../core/answers/lowering.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import {
  hardPoint,
  STRUT_POINT_KEYS,
  type StrutCorner,
  type StrutPointKey,
  withHardPoint,
} from '../../../core/linkage/corner.js';
import { InputError, type Problem } from '../../../core/quantity/problem.js';
import {
  independentCamberChange,
  independentCamberRate,
  independentReversal,
} from '../../reference/independent-strut.js';
import { randomCorner, seeded } from '../linkage/random-corner.js';
import { referenceCorner } from '../linkage/reference-corner.js';

const ask = (corner: unknown, drop: number, more: Partial<LoweringRequest> = {}) =>
  lowering({ source: { kind: 'corner', corner }, drop, ...more });

function problemsOf(request: unknown): Problem[] {
  try {
    lowering(request as LoweringRequest);
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    return (error as InputError).problems;
  }
  throw new Error('Was answered.');
}

/** 97.5 % quantile of the normal distribution (tables; NIST/SEMATECH e-Handbook 1.3.6.7.1: 1.960). */
const NORMAL = 1.959964;

/* Against the independent solver, test/reference/independent-strut.ts (generic Newton, nothing shared). */
describe('lowering a car with known hard points', () => {
  it('changes camber as the independent solver says, to 1e-6 degrees', () => {
    // 30 mm short of the end of reach and more. Nearer to it the angles run away and the samples follow less closely.
    fc.assert(
      fc.property(randomCorner, fc.double({ min: 0, max: 1, noNaN: true }), (corner, part) => {
        const { reach } = buildLinkage(corner);
        const low = Math.max(-80, reach.droop + 30);
        const high = Math.min(120, reach.bump - 30);
        const drop = low + part * (high - low);
        const { change } = ask(corner, drop);
        expect(Math.abs(change.value - independentCamberChange(corner, drop))).toBeLessThan(1e-6);
        expect(change).not.toHaveProperty('plusMinus');
      }),
      seeded(71, 100),
    );
  });

  it('and to a hundredth of a degree up to the last millimetre of reach', () => {
    fc.assert(
      fc.property(randomCorner, (corner) => {
        const { curve } = ask(corner, 0);
        for (const end of curve.domain) {
          for (const part of [0.97, 0.99, 1]) {
            const { change } = ask(corner, end * part);
            expect(Math.abs(change.value - independentCamberChange(corner, end * part))).toBeLessThan(0.01);
          }
        }
      }),
      seeded(72, 60),
    );
  });

  it('raises it as well: a negative drop', () => {
    const { change } = ask(referenceCorner, -25);
    expect(change.value).toBeCloseTo(independentCamberChange(referenceCorner, -25), 8);
    expect(change.value).toBeGreaterThan(0);
  });

  it('gives the camber rates at both heights', () => {
    fc.assert(
      fc.property(randomCorner, fc.integer({ min: -40, max: 50 }), (corner, drop) => {
        const { rateBefore, rateAfter } = ask(corner, drop);
        expect(Math.abs(rateBefore.value - independentCamberRate(corner, 0))).toBeLessThan(1e-6);
        // Between samples the slope of a cubic follows less closely than its value.
        expect(Math.abs(rateAfter.value - independentCamberRate(corner, drop))).toBeLessThan(1e-5);
      }),
      seeded(73, 60),
    );
  });

  it('finds where camber turns back, and what it has changed by then', () => {
    let found = 0;
    fc.assert(
      fc.property(randomCorner, (corner) => {
        const { reach } = buildLinkage(corner);
        const expected = independentReversal(corner, 0, Math.min(115, reach.bump - 30));
        if (!expected) return;
        found += 1;
        const { reversal } = ask(corner, 20);
        expect(Math.abs(reversal!.travel.value - expected.travel)).toBeLessThan(1e-3);
        expect(Math.abs(reversal!.change - expected.change)).toBeLessThan(1e-6);
      }),
      seeded(74, 40),
    );
    expect(found).toBeGreaterThan(10);
  });

  it('says nothing of a reversal that does not happen within the travels it covers', () => {
    // The top mount far inboard: the damper leans so much that the arm never comes square to it.
    const leaning: StrutCorner = { ...referenceCorner, strut: { top: [-35, 480, 835], low: [-18, 610, 470] } };
    expect(independentReversal(leaning)).toBeUndefined();
    expect(ask(leaning, 20)).not.toHaveProperty('reversal');
  });

  it('leaves so much bump travel, below zero when the car would sit under its stops', () => {
    expect(ask(referenceCorner, 30, { bumpTravel: 75 }).bumpLeft).toBe(45);
    expect(ask(referenceCorner, -30, { bumpTravel: 75 }).bumpLeft).toBe(105);
    expect(ask(referenceCorner, 80, { bumpTravel: 75 }).bumpLeft).toBe(-5);
    expect(ask(referenceCorner, 30)).not.toHaveProperty('bumpLeft');
  });

  it('answers for the corner as it is now, though it remembers the ones before', () => {
    const corner = JSON.parse(JSON.stringify(referenceCorner)) as { lowerArm: { ball: number[] } };
    const before = ask(corner, 30).change.value;
    corner.lowerArm.ball[2]! += 10;
    const after = ask(corner, 30).change.value;
    expect(after).toBeCloseTo(independentCamberChange(corner as unknown as StrutCorner, 30), 8);
    expect(after).not.toBeCloseTo(before, 3);
    corner.lowerArm.ball[2]! -= 10;
    expect(ask(corner, 30).change.value).toBe(before);
  });

  it('is plain data: it crosses to another thread unchanged', () => {
    const answer = ask(EXAMPLE_CORNER, 30, { dropPlusMinus: 3, bumpTravel: 80 });
    expect(structuredClone(answer)).toEqual(answer);
  });
});

/** Every coordinate's standard uncertainty, mm, as the corner states it. */
function* coordinates(corner: StrutCorner): Generator<{ key: StrutPointKey; axis: number; u: number }> {
  for (const key of STRUT_POINT_KEYS) {
    const plusMinus = corner.plusMinus?.[key] ?? corner.plusMinus?.other ?? 0;
    for (const axis of [0, 1, 2]) yield { key, axis, u: plusMinus / NORMAL };
  }
}
const moved = (corner: StrutCorner, key: StrutPointKey, axis: number, by: number): StrutCorner => {
  const point = [...hardPoint(corner, key)] as [number, number, number];
  point[axis]! += by;
  return withHardPoint(corner, key, point) as StrutCorner;
};
/** Root of the sum of squared first-order effects, by the independent solver. */
function firstOrder(corner: StrutCorner, of: (corner: StrutCorner) => number): number {
  let variance = 0;
  for (const { key, axis, u } of coordinates(corner)) {
    const effect = (of(moved(corner, key, axis, 0.1)) - of(moved(corner, key, axis, -0.1))) / 0.2;
    variance += (effect * u) ** 2;
  }
  return Math.sqrt(variance);
}

/** Normal deviates by Box and Muller over a 32-bit generator (mulberry32). */
function normals(seed: number): () => number {
  let state = seed;
  const uniform = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
}

describe('the doubt of hard points reaches the answer', () => {
  const drop = 30;
  const answer = ask(EXAMPLE_CORNER, drop);

  it('the change: root-sum-of-squares of every coordinate’s effect, by the independent solver', () => {
    const expected = NORMAL * firstOrder(EXAMPLE_CORNER, (corner) => independentCamberChange(corner, drop));
    expect(answer.change.plusMinus! / expected).toBeCloseTo(1, 4);
  });

  // Between samples the parts of a sampled curve are joined by straight lines: their slope, and so the doubt of a rate, is good to
  // about one per cent of itself.
  it('both rates, to 2 %', () => {
    const before = NORMAL * firstOrder(EXAMPLE_CORNER, (corner) => independentCamberRate(corner, 0));
    const after = NORMAL * firstOrder(EXAMPLE_CORNER, (corner) => independentCamberRate(corner, drop));
    expect(Math.abs(answer.rateBefore.plusMinus! / before - 1)).toBeLessThan(0.02);
    expect(Math.abs(answer.rateAfter.plusMinus! / after - 1)).toBeLessThan(0.02);
  });

  it('the place of the reversal: the doubt of the rate there over how fast the rate changes, to 2 %', () => {
    const at = independentReversal(EXAMPLE_CORNER)!.travel;
    const bend = (independentCamberRate(EXAMPLE_CORNER, at + 1) - independentCamberRate(EXAMPLE_CORNER, at - 1)) / 2;
    const expected = (NORMAL * firstOrder(EXAMPLE_CORNER, (corner) => independentCamberRate(corner, at))) / bend;
    expect(Math.abs(answer.reversal!.travel.plusMinus! / expected - 1)).toBeLessThan(0.02);
  });

  it.each([101, 202, 303])('a Monte Carlo study through the independent solver agrees (seed %i)', (seed) => {
    // 400 samples give a standard deviation to 3.5 % (1/√(2n)); tolerance 12 %, mean within 4 of its standard errors.
    const samples = 400;
    const normal = normals(seed);
    const changes = Array.from({ length: samples }, () => {
      let corner: StrutCorner = EXAMPLE_CORNER;
      for (const { key, axis, u } of coordinates(EXAMPLE_CORNER)) corner = moved(corner, key, axis, u * normal());
      return independentCamberChange(corner, drop);
    });
    const mean = changes.reduce((sum, x) => sum + x, 0) / samples;
    const deviation = Math.sqrt(changes.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (samples - 1));
    expect(Math.abs((NORMAL * deviation) / answer.change.plusMinus! - 1)).toBeLessThan(0.12);
    expect(Math.abs(mean - answer.change.value)).toBeLessThan((4 * deviation) / Math.sqrt(samples));
  });

  it('says which points it comes from: shares of variance, largest first, adding up to 1', () => {
    const { contributions } = answer;
    expect(contributions.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(contributions.map(({ share }) => share)).toEqual(
      contributions.map(({ share }) => share).sort((a, b) => b - a),
    );
    expect(contributions.map(({ id }) => id).sort()).toEqual([...STRUT_POINT_KEYS].sort());
    const [largest] = contributions;
    const alone: StrutCorner = { ...EXAMPLE_CORNER, plusMinus: { [largest!.id]: 2 } };
    const all: StrutCorner = { ...EXAMPLE_CORNER, plusMinus: { other: 2 } };
    const share = ask(alone, drop).change.plusMinus! ** 2 / ask(all, drop).change.plusMinus! ** 2;
    const stated = ask(all, drop).contributions.find(({ id }) => id === largest!.id)!.share;
    expect(share).toBeCloseTo(stated, 9);
  });

  it('at drop 0 the change is 0 ± 0, whatever the points', () => {
    const { change, contributions } = ask(EXAMPLE_CORNER, 0);
    expect(change).toEqual({ value: 0, plusMinus: 0 });
    expect(contributions).toEqual([]);
  });
});

describe('the doubt of the drop reaches the change through the camber rate', () => {
  it('alone: rate × ±, and it is the only cause', () => {
    const { change, rateAfter, contributions } = ask(referenceCorner, 30, { dropPlusMinus: 4 });
    expect(change.plusMinus).toBeCloseTo(Math.abs(rateAfter.value) * 4, 9);
    expect(contributions).toEqual([{ id: 'drop', label: 'the drop', share: 1 }]);
  });
  it('with that of the points: in quadrature', () => {
    const without = ask(EXAMPLE_CORNER, 30);
    const { change, contributions } = ask(EXAMPLE_CORNER, 30, { dropPlusMinus: 5 });
    expect(change.plusMinus).toBeCloseTo(Math.hypot(without.change.plusMinus!, 5 * without.rateAfter.value), 9);
    const share = (5 * without.rateAfter.value) ** 2 / change.plusMinus! ** 2;
    expect(contributions.find(({ id }) => id === 'drop')!.share).toBeCloseTo(share, 9);
  });
  it('and at drop 0 it is all there is', () => {
    const { change, rateBefore } = ask(EXAMPLE_CORNER, 0, { dropPlusMinus: 5 });
    expect(change.value).toBe(0);
    expect(change.plusMinus).toBeCloseTo(5 * Math.abs(rateBefore.value), 9);
  });
});

describe('a curve given by its coefficients', () => {
  const coefficients = [-0.5, -0.012, 1e-4];
  const source = { kind: 'coefficients', coefficients, domain: [-60, 90] } as LoweringRequest['source'];

  it('is plain polynomial arithmetic', () => {
    for (const drop of [-60, -15, 0, 30, 90]) {
      const { change, rateBefore, rateAfter, reversal } = lowering({ source, drop });
      expect(change.value).toBeCloseTo(-0.012 * drop + 1e-4 * drop ** 2, 12);
      expect(rateBefore.value).toBeCloseTo(-0.012, 12);
      expect(rateAfter.value).toBeCloseTo(-0.012 + 2e-4 * drop, 12);
      // 0.012 = 2e-4 t at t = 60; the change there is −0.72 + 0.36.
      expect(reversal?.travel.value).toBeCloseTo(60, 9);
      expect(reversal?.change).toBeCloseTo(-0.36, 12);
    }
  });

  it('carries the doubt of its coefficients; the constant term cancels', () => {
    const [u1, u2] = [0.001, 2e-5];
    const doubtful = { ...source, standardUncertainties: [0.2, u1, u2] } as LoweringRequest['source'];
    const drop = 40;
    const { change, rateBefore, rateAfter, contributions } = lowering({ source: doubtful, drop });
    expect(change.plusMinus! / (NORMAL * Math.hypot(u1 * drop, u2 * drop ** 2))).toBeCloseTo(1, 6);
    expect(rateBefore.plusMinus! / (NORMAL * u1)).toBeCloseTo(1, 6);
    expect(rateAfter.plusMinus! / (NORMAL * Math.hypot(u1, 2 * u2 * drop))).toBeCloseTo(1, 6);
    const shares = Object.fromEntries(contributions.map(({ id, share }) => [id, share]));
    expect(shares['coefficients.0']).toBe(0);
    expect(shares['coefficients.1']! / shares['coefficients.2']!).toBeCloseTo((u1 / (u2 * drop)) ** 2, 9);
  });

  it('tells nothing that only hard points can', () => {
    const answer = lowering({ source, drop: 10 });
    expect(answer).not.toHaveProperty('motion');
    expect(answer).not.toHaveProperty('reach');
    expect(answer).not.toHaveProperty('corner');
  });

  it('one that was answered before can be asked again as a curve', () => {
    const first = ask(EXAMPLE_CORNER, 25);
    const again = lowering({ source: { kind: 'curve', curve: structuredClone(first.curve) }, drop: 25 });
    expect(again.change).toEqual(first.change);
    expect(again.rateAfter).toEqual(first.rateAfter);
  });
});

describe('what is wrong with a request', () => {
  const source = { kind: 'coefficients', coefficients: [0, -0.01], domain: [-50, 50] };

  it('is told all at once, of the request and of its source', () => {
    const corner = { ...referenceCorner, camber: 'much', toe: NaN };
    const request = { source: { kind: 'corner', corner }, drop: NaN, dropPlusMinus: -1, bumpTravel: '80' };
    expect(problemsOf(request)).toEqual([
      { code: 'not-finite', path: 'drop', value: NaN },
      { code: 'out-of-range', path: 'dropPlusMinus', value: -1, limit: 0 },
      { code: 'not-a-number', path: 'bumpTravel', value: '80' },
      { code: 'not-a-number', path: 'camber', value: 'much' },
      { code: 'not-finite', path: 'toe', value: NaN },
    ]);
  });
  it.each([
    [{}, { code: 'missing', path: 'drop', value: undefined }],
    [{ drop: 2000 }, { code: 'out-of-range', path: 'drop', value: 2000, limit: 150 }],
    [
      { drop: 0, dropPlusMinus: 101 },
      { code: 'out-of-range', path: 'dropPlusMinus', value: 101, limit: 100 },
    ],
    [
      { drop: 0, bumpTravel: 401 },
      { code: 'out-of-range', path: 'bumpTravel', value: 401, limit: 400 },
    ],
    [
      { drop: 0, bumpTravel: -1 },
      { code: 'out-of-range', path: 'bumpTravel', value: -1, limit: 0 },
    ],
  ])('%j', (request, expected) => {
    expect(problemsOf({ source, ...request })).toEqual([expected]);
  });
  it('an unknown kind of source', () => {
    expect(problemsOf({ source: { kind: 'guess' }, drop: 0 })).toEqual([
      { code: 'wrong-shape', path: 'source.kind', value: 'guess' },
    ]);
  });
  it('a drop outside what the source covers, with the end that was crossed', () => {
    expect(problemsOf({ source, drop: 50.5 })).toEqual([
      { code: 'outside-domain', path: 'drop', value: 50.5, limit: 50 },
    ]);
    expect(problemsOf({ source, drop: -51 })).toEqual([
      { code: 'outside-domain', path: 'drop', value: -51, limit: -50 },
    ]);
    const low: StrutCorner = { ...referenceCorner, tieRod: { inner: [-140, 570, 268], outer: [-135, 660, 262] } };
    const { bump } = buildLinkage(low).reach;
    expect(bump).toBeLessThan(120);
    expect(problemsOf({ source: { kind: 'corner', corner: low }, drop: bump + 1 })).toEqual([
      { code: 'outside-domain', path: 'drop', value: bump + 1, limit: bump - 1 },
    ]);
  });
});
