import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lowering } from '../../../core/answers/from-source.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { motionOf } from '../../../core/linkage/motion.js';
import { InputError } from '../../../core/quantity/problem.js';
import { type BudgetRequest, type LimitId, travelBudget } from '../../../core/travel/budget.js';
import { damperPathOf, motionRatioAt, pathOfLengths, travelAfter } from '../../../core/travel/damper-path.js';
import type { TravelLimits } from '../../../core/travel/travel-limits.js';

const travels = Float64Array.from({ length: 81 }, (_, i) => -80 + 2.5 * i);
const path = damperPathOf(motionOf(buildLinkage(EXAMPLE_CORNER), travels))!;
/** Invented: a motion ratio that goes from 0.6 to 1.0. */
const bentPath = pathOfLengths(
  travels,
  travels.map((z) => 500 - 0.76 * z - 0.001 * z * z),
)!;
const ask = (limits: TravelLimits, drop: number, rest: Partial<BudgetRequest> = {}) =>
  travelBudget({ path, limits, drop, ...rest });
const refusal = (request: unknown) => {
  try {
    travelBudget(request as BudgetRequest);
  } catch (error) {
    if (error instanceof InputError) return error.problems.map(({ code, path: at }) => `${at}: ${code}`);
    throw error;
  }
  return [];
};

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** On a grid no finer than a rule, so that no two limits are one by rounding. */
const ruled = (min: number, max: number) => fc.integer({ min: 100 * min, max: 100 * max }).map((n) => n / 100);
const limitsOf = (gaps = 70, least = 0, of = mm): fc.Arbitrary<TravelLimits> =>
  fc.record(
    {
      stopGap: of(least, gaps),
      stopLength: of(20, 80),
      stopTrimmed: of(0, 20),
      stopUsable: mm(0.05, 0.95),
      strokeBump: of(least, gaps),
      strokeDroop: of(least, gaps),
      springBind: of(least, gaps),
      shaftBump: of(0, 120),
      shaftDroop: of(0, 120),
    },
    { requiredKeys: [] },
  );
const reach = { droop: -105, bump: 112 };
const ways = fc.constantFrom('springs' as const, 'dampers' as const);

describe('by hand, motion ratio 0.8 (invented numbers)', () => {
  // gap 24 mm → 30 mm of wheel travel; solid at 24 + 0.5·(50 − 10) = 44 mm → 55 mm; stroke 60 mm → 75 mm; bind 52 mm → 65 mm.
  const limits = {
    motionRatio: 0.8,
    stopGap: 24,
    stopGapPlusMinus: 2,
    stopLength: 50,
    stopTrimmed: 10,
    strokeBump: 60,
    springBind: 52,
    strokeDroop: 56,
    shaftDroop: 90,
    shaftBump: 80,
  };
  it('shorter springs: each limit keeps its place and comes nearer by the drop', () => {
    const { bump, droop, changes } = ask(limits, 20, { reach });
    expect(bump.touch).toEqual({
      left: expect.closeTo(10, 9),
      travel: expect.closeTo(30, 9),
      governedBy: 'stop',
      plusMinus: expect.closeTo(2.5, 9),
      contributions: [{ id: 'stopGap', label: 'the gap to the bump stop', share: 1 }],
    });
    expect(bump.solid).toMatchObject({ left: expect.closeTo(35, 9), governedBy: 'stop' });
    expect(bump.limits.map(({ id, travel }) => [id, Math.round(travel * 1e6) / 1e6])).toEqual([
      ['stop', 55],
      ['spring', 65],
      ['damper', 75],
      ['shaft', 80],
      ['linkage', 112],
    ]);
    expect(droop.solid).toMatchObject({ left: expect.closeTo(-90, 9), travel: expect.closeTo(-70, 9) });
    expect(droop.limits.map(({ id }) => id)).toEqual(['damper', 'shaft', 'linkage']);
    expect(changes).toEqual([]);
  });

  it('shorter lower bodies: the rod keeps its gap and from a drop of 25 mm the shaft governs', () => {
    const { bump, droop, changes } = ask(limits, 40, { reach, lowered: 'dampers' });
    expect(bump.touch).toMatchObject({ left: expect.closeTo(30, 9), governedBy: 'stop' });
    expect(bump.solid).toMatchObject({ left: expect.closeTo(40, 9), travel: 80, governedBy: 'shaft' });
    expect(droop.solid).toMatchObject({ travel: expect.closeTo(-30, 9), governedBy: 'damper' });
    expect(changes).toEqual([{ drop: expect.closeTo(25, 8), from: 'stop', to: 'shaft', direction: 'bump' }]);
  });

  it('measured on a car that stands 30 mm lower: counted from there', () => {
    const { bump } = ask(limits, 30, { measuredAt: 30 });
    expect(bump.touch?.left).toBeCloseTo(30, 9);
    expect(ask(limits, 0, { measuredAt: 30 }).bump.touch?.left).toBeCloseTo(60, 9);
    expect(ask(limits, 0, { measuredAt: 30 }).bump.limits.find(({ id }) => id === 'shaft')?.left).toBeCloseTo(110, 9);
  });

  it('lowered beyond its stop, a car has less than nothing left', () => {
    expect(ask(limits, 60).bump).toMatchObject({
      touch: { left: expect.closeTo(-30, 9) },
      solid: { left: expect.closeTo(-5, 9) },
    });
  });
});

describe('bump travel as `lowering` takes it', () => {
  const source = { kind: 'corner' as const, corner: EXAMPLE_CORNER };
  it.each([
    { drop: 30, measuredAt: 0, lowered: 'springs' as const },
    { drop: 30, measuredAt: 30, lowered: 'springs' as const },
    { drop: -10, measuredAt: 25, lowered: 'dampers' as const },
    { drop: 30, measuredAt: 0, lowered: 'dampers' as const },
  ])('leaves the same: $lowered, drop $drop mm, measured at $measuredAt mm', (request) => {
    const { bumpLeft } = lowering({ source, bumpTravel: 62, ...request });
    const { solid } = ask({}, request.drop, { bumpTravel: 62, ...request }).bump;
    expect(solid).toMatchObject({ left: expect.closeTo(bumpLeft!, 9), governedBy: 'bumpTravel' });
  });

  it('a gap gives what `lowering` gives, to its 0.01 mm', () => {
    const request = { drop: 30, measuredAt: 12 };
    // Its motion is counted from reference height, wherever the points were measured.
    const { bumpLeft, motion } = lowering({ source, stopGap: 38, ...request });
    expect(
      Math.abs(ask({ stopGap: 38 }, 30, { ...request, path: damperPathOf(motion!) }).bump.touch!.left - bumpLeft!),
    ).toBeLessThan(0.01);
  });
});

describe('at any height', () => {
  const everything = fc.record(
    {
      limits: limitsOf(),
      drop: mm(-40, 80),
      measuredAt: mm(-40, 80),
      bumpTravel: mm(0, 120),
      lowered: ways,
    },
    { requiredKeys: ['limits', 'drop', 'measuredAt', 'lowered'] },
  );

  it('a stop is touched before anything is solid', () => {
    fc.assert(
      fc.property(everything, ({ limits, drop, ...rest }) => {
        const { touch, solid, limits: all } = ask(limits, drop, { reach, ...rest }).bump;
        expect(touch === undefined).toBe(limits.stopGap === undefined);
        expect(touch?.travel ?? -1e9).toBeLessThanOrEqual(solid!.travel);
        expect(solid!.travel).toBe(Math.min(...all.map(({ travel }) => travel)));
      }),
      { endOnFailure: true },
    );
  });

  it('shorter springs: between two drops every limit loses their difference, up and down', () => {
    fc.assert(
      fc.property(everything, mm(-40, 80), ({ limits, drop, ...rest }, other) => {
        const [one, two] = [drop, other].map((d) => ask(limits, d, { ...rest, reach, lowered: 'springs' }));
        for (const side of ['bump', 'droop'] as const)
          one![side].limits.forEach(({ id, left }, i) => {
            expect(two![side].limits[i]!.id).toBe(id);
            expect(left - two![side].limits[i]!.left).toBeCloseTo(other - drop, 9);
          });
        expect(one!.changes).toEqual([]);
      }),
      { endOnFailure: true },
    );
  });

  it('shorter lower bodies, constant motion ratio: what is left before the stop does not depend on the drop', () => {
    fc.assert(
      fc.property(mm(0.2, 1.5), mm(0, 70), mm(-150, 150), mm(-150, 150), (motionRatio, stopGap, a, b) => {
        const left = (drop: number) =>
          ask({ stopGap, stopLength: 50, motionRatio }, drop, { lowered: 'dampers' }).bump.touch!.left;
        expect(left(a)).toBeCloseTo(stopGap / motionRatio, 7);
        expect(left(b)).toBeCloseTo(left(a), 7);
      }),
      { endOnFailure: true },
    );
  });

  it('a longer gap never lessens travel', () => {
    fc.assert(
      fc.property(everything, mm(0, 70), mm(0, 30), ({ limits, drop, ...rest }, stopGap, more) => {
        const [short, long] = [stopGap, stopGap + more].map(
          (gap) => ask({ ...limits, stopGap: gap }, drop, { reach, ...rest }).bump,
        );
        expect(long!.touch!.travel).toBeGreaterThanOrEqual(short!.touch!.travel - 1e-9);
        expect(long!.solid!.travel).toBeGreaterThanOrEqual(short!.solid!.travel - 1e-9);
      }),
      { endOnFailure: true },
    );
  });

  // The gap is what was found, so a stop of which more was cut off is a shorter one behind the same gap.
  it('of two stops with the same gap in front, that with more cut off it is solid sooner and touched no later', () => {
    fc.assert(
      fc.property(everything, mm(0, 60), mm(0, 20), mm(0, 20), ({ limits, drop, ...rest }, stopGap, cut, more) => {
        const [long, short] = [cut, cut + more].map(
          (stopTrimmed) => ask({ ...limits, stopGap, stopLength: 60, stopTrimmed }, drop, { reach, ...rest }).bump,
        );
        expect(short!.solid!.travel).toBeLessThanOrEqual(long!.solid!.travel + 1e-9);
        expect(short!.touch).toEqual(long!.touch);
      }),
      { endOnFailure: true },
    );
  });

  it('where the governing limit changes, both agree to 1e-6 mm, and each governs on its own side', () => {
    let seen = 0;
    fc.assert(
      fc.property(
        limitsOf(60, 1, ruled),
        fc.record({ bumpTravel: ruled(1, 120) }, { requiredKeys: [] }),
        ruled(40, 110),
        (limits, given, bump) => {
          const rest = { path: bentPath, ...given, reach: { droop: -75, bump }, lowered: 'dampers' as const };
          const { changes } = ask(limits, 0, rest);
          for (const side of ['bump', 'droop'] as const) {
            const own = changes.filter(({ direction }) => direction === side);
            const at = (drop: number) => ask(limits, drop, rest)[side];
            own.forEach(({ drop, from, to }, i) => {
              seen++;
              const travel = (limit: LimitId) => at(drop).limits.find(({ id }) => id === limit)!.travel;
              expect(Math.abs(travel(from) - travel(to))).toBeLessThan(1e-6);
              const [before, after] = [own[i - 1]?.drop ?? 0, own[i + 1]?.drop ?? 120];
              expect(at((before + drop) / 2).solid!.governedBy).toBe(from);
              expect(at((drop + after) / 2).solid!.governedBy).toBe(to);
              expect(at(drop - 1e-7).solid!.governedBy).toBe(from);
              expect(at(drop + 1e-7).solid!.governedBy).toBe(to);
            });
            if (own.length === 0) expect(at(0).solid!.governedBy).toBe(at(120).solid!.governedBy);
          }
        },
      ),
      { endOnFailure: true, numRuns: 150 },
    );
    expect(seen).toBeGreaterThan(50);
  });

  it('a doubt of the gap becomes one of travel as the gap itself does', () => {
    const gap = { stopGap: 30, stopGapPlusMinus: 0.02 };
    const { touch } = ask(gap, 10, { path: bentPath }).bump;
    const by = (change: number) => ask({ stopGap: 30 + change }, 10, { path: bentPath }).bump.touch!.travel;
    expect(touch!.plusMinus).toBeCloseTo((by(0.02) - by(-0.02)) / 2, 6);
    expect(touch!.plusMinus).toBeCloseTo(0.02 / motionRatioAt(bentPath, touch!.travel), 9);
  });

  it('a damper set lower is followed from its new height, where its motion ratio is another', () => {
    const { touch } = ask({ stopGap: 20 }, 40, { path: bentPath, lowered: 'dampers' }).bump;
    // 0.76·z + 0.001·z² grows by 20 mm from z = 40: the root of the quadratic.
    const start = 0.76 * 40 + 0.001 * 40 ** 2 + 20;
    expect(touch!.travel).toBeCloseTo((-0.76 + Math.sqrt(0.76 ** 2 + 0.004 * start)) / 0.002, 6);
    expect(touch!.left).not.toBeCloseTo(travelAfter(bentPath, 0, 20)!, 0);
  });
});

describe('what is not known', () => {
  it('a limit beyond the damper’s known motion lies at its end or further', () => {
    expect(ask({ stopGap: 200, stopGapPlusMinus: 2, strokeDroop: 200 }, 0)).toMatchObject({
      bump: { touch: { travel: 120, atLeast: true } },
      droop: { solid: { travel: -80, atLeast: true } },
    });
    expect(ask({ stopGap: 200, stopGapPlusMinus: 2 }, 0).bump.touch).not.toHaveProperty('plusMinus');
  });

  it('nothing known, nothing said', () => {
    expect(ask({}, 20)).toEqual({ bump: { limits: [] }, droop: { limits: [] }, changes: [] });
    expect(ask({ stopGap: 20 }, 20).bump).not.toHaveProperty('solid');
  });

  it('an entered motion ratio wins over the path', () => {
    expect(ask({ stopGap: 20, motionRatio: 0.5 }, 0).bump.touch?.travel).toBeCloseTo(40, 9);
  });

  it('links and shaft need neither path nor motion ratio; the rod needs one', () => {
    expect(ask({ shaftBump: 50 }, 20, { path: undefined }).bump.solid?.left).toBe(30);
    for (const key of ['stopGap', 'strokeBump', 'strokeDroop', 'springBind'])
      expect(refusal({ path: undefined, drop: 0, limits: { [key]: 20 } })).toEqual(['limits.motionRatio: missing']);
  });
});

describe('refused', () => {
  it('all problems at once', () => {
    expect(
      refusal({
        path,
        drop: 200,
        measuredAt: Number.NaN,
        bumpTravel: -1,
        limits: {
          stopGap: 401,
          stopGapPlusMinus: -1,
          stopLength: 30,
          stopTrimmed: 31,
          stopUsable: 1,
          strokeBump: 'long',
          strokeDroop: -3,
          springBind: null,
          shaftBump: Number.POSITIVE_INFINITY,
          shaftDroop: -1,
          motionRatio: 0.1,
        },
      }),
    ).toEqual([
      'drop: out-of-range',
      'measuredAt: not-finite',
      'bumpTravel: out-of-range',
      'limits.stopGap: out-of-range',
      'limits.stopGapPlusMinus: out-of-range',
      'limits.stopUsable: out-of-range',
      'limits.strokeBump: not-a-number',
      'limits.strokeDroop: out-of-range',
      'limits.springBind: missing',
      'limits.shaftBump: not-finite',
      'limits.shaftDroop: out-of-range',
      'limits.motionRatio: out-of-range',
      'limits.stopTrimmed: out-of-range',
    ]);
  });

  it('a height from which the damper would have to be followed, outside what is known of it', () => {
    expect(refusal({ path, drop: 130, lowered: 'dampers', limits: { stopGap: 5 } })).toEqual(['drop: outside-domain']);
    expect(refusal({ path, drop: 0, measuredAt: 130, limits: { stopGap: 5 } })).toEqual(['measuredAt: outside-domain']);
    expect(refusal({ path, drop: 130, limits: { stopGap: 5 } })).toEqual([]);
  });
});
