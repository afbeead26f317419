import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { Corner, StrutCorner, Vector3 } from '../../../core/linkage/corner.js';
import type { Linkage } from '../../../core/linkage/linkage.js';
import {
  armLonger,
  ballJointExtended,
  rackRaised,
  tieRodEndRaised,
  tieRodLonger,
  withParts,
} from '../../../core/linkage/parts/index.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { toeCorrection } from '../../../core/linkage/toe-correction.js';
import type { ToeCorrectionOptions } from '../../../core/linkage/toe-correction-options.js';
import { opened } from '../../../core/linkage/travel.js';
import { InputError } from '../../../core/quantity/problem.js';
import { withLoweredJoint } from '../../reference/independent-joint.js';
import type { IndependentCorner } from '../../reference/independent-strut.js';
import { independentBestAmount, independentFlatAmount, independentSpread } from '../../reference/independent-toe.js';
import { problemsOf } from '../problems-of.js';
import { randomCorner, seeded } from './random-corner.js';
import { randomWishbone } from './random-wishbone.js';
import { referenceCorner } from './reference-corner.js';
import { bruteForce, spreadBySweep, withToeSet } from './toe-brute-force.js';
import { wishboneCorner } from './wishbone-corner.js';

/*
 * Struts are checked by test/reference/independent-toe.ts, which shares nothing with core/; random struts and wishbones by a search along
 * dense amounts and travels that uses parts and sweep alone (toe-brute-force.ts). Cars are invented or random.
 */

const strut = buildLinkage(referenceCorner);
const wishbone = buildLinkage(wishboneCorner);
const ADJUSTS = ['outerEnd', 'rack', 'innerEnd'] as const;
const RANGE = [-30, 30] as const;

/** The same car with its rack ahead of the axle: the rod mirrored, the steering arm inboard of the ball joint as it is there. */
const ahead = <C extends Corner>(corner: C): C => {
  const { inner, outer } = corner.tieRod;
  const tieRod = { inner: [-inner[0], inner[1], inner[2]], outer: [-outer[0], outer[1] - 25, outer[2]] };
  return { ...corner, tieRod };
};

const outer = (point: Vector3, up: number): Vector3 => [point[0], point[1], point[2] + up];

describe('toeCorrection of a strut, against a second solver', () => {
  const lowered = withLoweredJoint(referenceCorner, { mm: 22, isTieRodCorrected: false });
  const cars: [string, Linkage, IndependentCorner][] = [
    ['bare', strut, referenceCorner],
    ['rack ahead', buildLinkage(ahead(referenceCorner)), ahead(referenceCorner)],
    [
      'with a 22 mm lower joint',
      withToeSet(ballJointExtended({ mm: 22 })(strut), askedOf({ toe: 0.1 }), 0)!.linkage,
      lowered,
    ],
  ];
  function askedOf(options: { toe: number }) {
    return { at: 0, window: [-40, 40], adjust: 'outerEnd', range: RANGE, ...options } as const;
  }
  const cases = cars.flatMap(([name, linkage, corner]) =>
    [
      { at: 0, window: [-40, 40], adjust: 'outerEnd', rack: 0 },
      { at: 0, window: [-40, 40], adjust: 'rack', rack: 0 },
      { at: 35, window: [-30, 50], adjust: 'outerEnd', rack: 0 },
      { at: -45, window: [-20, 40], adjust: 'innerEnd', rack: 0 },
      { at: 30, window: [-25, 40], adjust: 'outerEnd', rack: 25 },
    ].map((options) => [name, options as unknown as ToeCorrectionOptions, linkage, corner] as const),
  );

  it.each(cases)(
    '%s: curve, correction and what remains are the second solver’s, %j',
    (_, options, linkage, corner) => {
      const { at, window, adjust, rack } = options as Required<ToeCorrectionOptions>;
      const end = adjust === 'outerEnd' ? 'outer' : 'inner';
      const asBuilt = corner === lowered ? referenceCorner : corner;
      const { slope, leastSquares, minimax } = toeCorrection(linkage, options);
      // The same to a ten-thousandth of a degree: samples may miss a turning point by some 1e-6.
      expect(minimax.before).toBeCloseTo(independentSpread(corner, { at, end, amount: 0, asBuilt }, window, rack), 4);
      for (const one of [leastSquares, minimax, ...(slope ? [slope] : [])]) {
        expect(one.after).toBeCloseTo(
          independentSpread(corner, { at, end, amount: one.amount, asBuilt }, window, rack),
          4,
        );
      }
      const flat = independentFlatAmount(corner, { at, end, asBuilt }, RANGE, rack);
      if (slope) expect(slope.amount).toBeCloseTo(flat, 3);
      else expect(flat).toBeNaN();
      const best = independentBestAmount(corner, { at, end, asBuilt }, window, RANGE, rack);
      expect(minimax.after / best.spread).toBeLessThan(1.002);
      expect(minimax.amount).toBeCloseTo(best.amount, 1);
    },
  );

  it('sets another toe at ride height as the second solver turns the wheel there', () => {
    for (const toe of [-1.5, 0.8]) {
      const options = { at: 20, toe };
      const { minimax } = toeCorrection(strut, options);
      const spread = (amount: number) =>
        independentSpread(referenceCorner, { ...options, end: 'outer', amount }, [-40, 40]);
      expect(minimax.before).toBeCloseTo(spread(0), 4);
      expect(minimax.after).toBeCloseTo(spread(minimax.amount), 4);
      const best = independentBestAmount(referenceCorner, { ...options, end: 'outer' }, [-40, 40], [-10, 10]);
      expect(minimax.amount).toBeCloseTo(best.amount, 1);
    }
  });
});

describe('toeCorrection of any car', () => {
  const cars = [
    ...fc.sample(randomCorner, { seed: 1801, numRuns: 4 }),
    ...fc.sample(randomWishbone, { seed: 1802, numRuns: 4 }),
  ].flatMap((corner) => [corner, ahead(corner)]);
  const windows = [
    [-40, 40],
    [-25, 50],
    [0, 60],
  ] as const;

  it.each(ADJUSTS)(
    'leaves no more than 5 %% over the best that a brute-force search finds, %s, at any height',
    (adjust) => {
      let compared = 0;
      cars.forEach((corner, i) => {
        const linkage = buildLinkage(corner);
        [-60, -30, 0, 30, 60].forEach((at, j) => {
          const [window, rack] = [windows[(i + j) % 3]!, (i + j) % 4 === 0 ? 20 : 0];
          const toe = sweepTravel(linkage, [at]).toe[0]!;
          let found: ReturnType<typeof toeCorrection>;
          try {
            found = toeCorrection(linkage, { at, window, adjust, rack });
          } catch (error) {
            // Some of them do not reach so far.
            expect(error).toBeInstanceOf(InputError);
            expect((error as InputError).code).toBe('outside-domain');
            return;
          }
          const best = bruteForce(linkage, { at, window, toe, adjust, range: RANGE, rack }, 2);
          expect(found.minimax.after, `${corner.kind} ${i} at ${at}`).toBeLessThan(1.05 * best.spread);
          compared++;
        });
      });
      expect(compared).toBeGreaterThan(0.9 * cars.length * 5);
    },
  );

  it('finds an optimum that leaves a thousandth of a degree', () => {
    // The rod is made so that it hardly steers, then its outer end lowered.
    const { inner } = referenceCorner.tieRod;
    const ideal: StrutCorner = {
      ...referenceCorner,
      tieRod: { ...referenceCorner.tieRod, inner: [inner[0], 281.7037, 266.7302] },
    };
    const linkage = withToeSet(
      buildLinkage(ideal),
      { at: 0, window: [-20, 20], toe: 0.1, adjust: 'outerEnd', range: RANGE },
      -7,
    )!;
    for (const adjust of ADJUSTS) {
      const window = [-20, 20] as const;
      const { minimax } = toeCorrection(linkage.linkage, { window, adjust });
      expect(minimax.before).toBeGreaterThan(0.2);
      expect(minimax.after).toBeLessThan(0.0025);
      const best = bruteForce(linkage.linkage, { at: 0, window, toe: 0.1, adjust, range: RANGE }, 1, 201);
      expect(minimax.after).toBeLessThan(1.05 * best.spread);
    }
  });

  it('takes no amount at which a link runs out within the window, and still the best of the others', () => {
    let ends = 0;
    for (const corner of cars.slice(0, 16)) {
      const linkage = buildLinkage(corner);
      const range = [-150, 150] as const;
      const toe = sweepTravel(linkage, [30]).toe[0]!;
      const asked = { at: 30, window: [-80, 60], toe, adjust: 'outerEnd', range } as const;
      if (!(linkage.reach.bump > 95 && linkage.reach.droop < -55)) continue;
      const { minimax, leastSquares } = toeCorrection(linkage, asked);
      for (const one of [minimax, leastSquares]) {
        const there = withToeSet(linkage, asked, one.amount);
        // Far off, the secant rule may not follow; where it does, all of the window is driven.
        if (there) expect(spreadBySweep(there.linkage, asked, 141)).toBeLessThan(one.after + 1e-6);
      }
      const best = bruteForce(linkage, asked, 5);
      expect(minimax.after).toBeLessThan(1.05 * best.spread);
      if (best.spread < Number.POSITIVE_INFINITY) ends++;
    }
    expect(ends).toBeGreaterThan(8);
  });

  it('never makes it worse, and its least peak-to-peak change is no more than what the other two amounts leave', () => {
    fc.assert(
      fc.property(
        fc.oneof(randomCorner, randomWishbone),
        fc.constantFrom(...ADJUSTS),
        fc.double({ min: -20, max: 20, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        (corner, adjust, at, toe) => {
          const { slope, leastSquares, minimax } = toeCorrection(buildLinkage(corner), {
            adjust,
            at,
            toe,
            window: [-30, 30],
          });
          expect(minimax.after).toBeLessThanOrEqual(minimax.before);
          expect(minimax.after).toBeLessThanOrEqual(leastSquares.after);
          if (slope) expect(minimax.after).toBeLessThanOrEqual(slope.after);
          for (const one of [leastSquares, minimax, ...(slope ? [slope] : [])]) expect(one.before).toBe(minimax.before);
        },
      ),
      seeded(1803, 60),
    );
  });

  it('tells what the amount leaves once it is fitted as a part and toe is set again', () => {
    const cars = [
      strut,
      wishbone,
      withParts(strut, ballJointExtended({ mm: 20 }), tieRodLonger({ mm: 1 })),
      armLonger({ mm: 8 })(wishbone),
    ];
    for (const linkage of cars) {
      for (const adjust of ADJUSTS) {
        for (const at of [-40, 0, 50]) {
          const toe = sweepTravel(linkage, [at]).toe[0]!;
          const asked = { at, window: [-30, 35], toe, adjust, range: RANGE } as const;
          const { slope, leastSquares, minimax } = toeCorrection(linkage, { at, window: [-30, 35], adjust });
          for (const one of [leastSquares, minimax, ...(slope ? [slope] : [])]) {
            const fitted = withToeSet(linkage, asked, one.amount)!.linkage;
            expect(spreadBySweep(fitted, asked, 601)).toBeCloseTo(one.after, 5);
          }
          if (slope) {
            const fitted = withToeSet(linkage, asked, slope.amount)!.linkage;
            expect(sweepTravel(fitted, [at]).toeRate[0]!).toBeCloseTo(0, 8);
          }
        }
      }
    }
  });

  it('takes the outer end, 40 mm either way, straight ahead and toe as it stands where nothing is said', () => {
    const { toe } = referenceCorner;
    const all = { at: 0, window: [-40, 40], toe, adjust: 'outerEnd', range: [-30, 30], rack: 0 } as const;
    const [said, left] = [toeCorrection(strut, all), toeCorrection(strut)];
    for (const name of ['slope', 'leastSquares', 'minimax'] as const) {
      for (const what of ['amount', 'before', 'after'] as const) {
        expect(left[name]![what]).toBeCloseTo(said[name]![what], 9);
      }
    }
  });

  it('moves the inner end by the same amount whether the rack takes it along or not', () => {
    expect(toeCorrection(strut, { adjust: 'rack' })).toEqual(toeCorrection(strut, { adjust: 'innerEnd' }));
  });

  it('undoes what was fitted: an outer end 6 mm too low asks for 6 mm more', () => {
    const { amount } = toeCorrection(strut).slope!;
    const lower = withToeSet(
      strut,
      { at: 0, window: [-40, 40], toe: referenceCorner.toe, adjust: 'outerEnd', range: RANGE },
      -6,
    )!;
    expect(toeCorrection(lower.linkage).slope!.amount).toBeCloseTo(amount + 6, 6);
    // Ahead of the axle the wheel turns the other way, and the same end cures it.
    expect(tieRodEndRaised({ mm: 2 })(strut).carrier.tieOuter[2]).toBeCloseTo(outer(strut.carrier.tieOuter, 2)[2], 12);
  });

  it('has no flat amount where the zero slope lies beyond the range, and then the best in it', () => {
    const { slope, leastSquares, minimax } = toeCorrection(strut, { range: [-5, 1] });
    expect(slope).toBeNull();
    expect([leastSquares.amount, minimax.amount]).toEqual([1, 1]);
    expect(toeCorrection(strut, { range: [0, 0] }).minimax.after).toBe(minimax.before);
    expect(toeCorrection(strut, { range: [4, 9] }).minimax.amount).toBe(4);
  });

  it('takes a window that ends next to nothing beside the ride height as one that ends there', () => {
    const [nearly, there] = [1e-12, 0].map((end) => toeCorrection(strut, { window: [-end, 40] }).minimax);
    expect(nearly!.after).toBeCloseTo(there!.after, 6);
    expect(toeCorrection(strut, { window: [-40, 1e-7] }).minimax.after).toBeGreaterThan(0);
  });

  it('asks no reach of a linkage whose ends were never looked for', () => {
    expect(toeCorrection(opened(strut), { at: 30 })).toEqual(toeCorrection(strut, { at: 30 }));
  });
});

describe('toeCorrection refuses', () => {
  const found = (options: unknown, linkage = strut) =>
    problemsOf(() => toeCorrection(linkage, options as ToeCorrectionOptions)).map(
      ({ code, path }) => `${path} ${code}`,
    );

  it.each([
    ['no options', null, ['options missing']],
    ['a number for options', 5, ['options wrong-shape']],
    ['a ride height that is none', { at: Number.NaN }, ['at not-finite']],
    ['a ride height as text', { at: '12' }, ['at not-a-number']],
    ['a window that is no pair', { window: [-40] }, ['window wrong-shape']],
    ['a window as a number', { window: 40 }, ['window wrong-shape']],
    ['a window that descends', { window: [40, -40] }, ['window.0 out-of-range', 'window.1 out-of-range']],
    ['a window beside the ride height', { window: [10, 40] }, ['window.0 out-of-range']],
    ['a window of nothing', { window: [0, 0] }, ['window.1 out-of-range']],
    ['a window that ends nowhere', { window: [-40, Number.POSITIVE_INFINITY] }, ['window.1 not-finite']],
    ['an end of the window left out', { window: [undefined, 40] }, ['window.0 missing']],
    ['a toe beyond any', { toe: 45 }, ['toe out-of-range']],
    ['a toe as null', { toe: null }, ['toe missing']],
    ['an adjustment there is none of', { adjust: 'outer' }, ['adjust unknown-name']],
    ['a range that descends', { range: [5, -5] }, ['range.1 out-of-range']],
    ['a range beyond any part', { range: [-200, 30] }, ['range.0 out-of-range']],
    ['a range as null', { range: null }, ['range wrong-shape']],
    ['a rack beyond any', { rack: 900 }, ['rack out-of-range']],
    [
      'several at once',
      { at: 'x', adjust: 7, range: [0] },
      ['at not-a-number', 'adjust unknown-name', 'range wrong-shape'],
    ],
  ])('%s', (_, options, expected) => {
    expect(found(options)).toEqual(expected);
  });

  it('names the adjustments there are', () => {
    const [problem] = problemsOf(() => toeCorrection(strut, { adjust: 'shim' as 'rack' }));
    expect(problem!.names).toEqual(ADJUSTS);
  });

  it('a ride height or window beyond the links’ reach, with the last value they do reach', () => {
    const last = strut.reach.bump;
    const limits = (options: ToeCorrectionOptions) =>
      problemsOf(() => toeCorrection(strut, options)).map(({ code, path, limit }) => [code, path, limit]);
    expect(limits({ at: 295 })).toEqual([['outside-domain', 'at', last]]);
    const [[code, path, limit]] = limits({ at: 100, window: [-40, 250] }) as [[string, string, number]];
    expect([code, path]).toEqual(['outside-domain', 'window.1']);
    expect(limit).toBeCloseTo(last - 100, 6);
    const [short] = fc.sample(randomWishbone, { seed: 4, numRuns: 1 }).map((corner) => buildLinkage(corner)) as [
      Linkage,
    ];
    const low = short.reach.droop;
    expect(problemsOf(() => toeCorrection(short, { at: low - 1 }))).toEqual([
      { code: 'outside-domain', path: 'at', value: low - 1, limit: low },
    ]);
    const [droop, bump] = problemsOf(() => toeCorrection(short, { at: 60, window: [low - 70, 290] }));
    expect([droop!.path, bump!.path]).toEqual(['window.0', 'window.1']);
    expect([droop!.limit! + 60, bump!.limit! + 60]).toEqual([
      expect.closeTo(low, 6),
      expect.closeTo(short.reach.bump, 6),
    ]);
  });

  it('a rack so far out that the rod does not reach, with the last place it does', () => {
    const [problem] = problemsOf(() => toeCorrection(strut, { rack: 300 }));
    expect([problem!.code, problem!.path]).toEqual(['out-of-range', 'rack']);
    expect(problem!.limit).toBeGreaterThan(30);
    expect(toeCorrection(strut, { rack: problem!.limit! - 5, window: [-1, 1] }).minimax.after).toBeLessThan(1);
    expect(() => toeCorrection(strut, { rack: problem!.limit! + 1, window: [-1, 1] })).toThrow();
  });

  it('takes the rack’s own part as little as the rod’s: rackRaised is what its amount is', () => {
    const { amount } = toeCorrection(strut, { adjust: 'rack' }).slope!;
    const raised = rackRaised({ mm: amount })(strut);
    expect(Math.abs(sweepTravel(raised, [0]).toeRate[0]!)).toBeLessThan(1e-4);
  });
});
