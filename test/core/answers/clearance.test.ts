import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clearance, clearanceSteered, type PlaceAnswer, type Verdict } from '../../../core/answers/clearance.js';
import { doubtOf, gapOf } from '../../../core/answers/clearance-gaps.js';
import { type ClearanceQuestion, clearanceQuestions } from '../../../core/answers/clearance-questions.js';
import type { ClearanceRequest } from '../../../core/answers/clearance-request.js';
import { envelopeOf } from '../../../core/answers/envelope-of.js';
import { tried, wheelMotion } from '../../../core/answers/from-source.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { EXAMPLE_FITMENT, EXAMPLE_LIMITS } from '../../../core/document/example-fitment.js';
import { Poses } from '../../../core/wheel/gaps.js';
import type { Place } from '../../../core/wheel/place.js';
import { placed } from '../../../core/wheel/placed.js';
import { aPlace, evenly, STRAIGHT_UP } from '../wheel/gap-cases.js';
import { finished } from './finished.js';

const seeded = (seed: number, numRuns = 40) => ({ seed, numRuns, endOnFailure: true });
const SOURCE = { kind: 'corner', corner: EXAMPLE_CORNER } as const;
const { lock, ...WHEELS } = EXAMPLE_FITMENT;
const motionOf = (degrees: number = lock) => wheelMotion({ source: SOURCE, lock: degrees });
const STEERED = motionOf();

/** The invented example, lowered by 25 mm. */
const EXAMPLE: ClearanceRequest = {
  motion: STEERED,
  isLeft: true,
  ...WHEELS,
  limits: EXAMPLE_LIMITS,
  drop: 25,
};
/** A motion in a counterexample would be pages of numbers. */
const { motion: _, ...WITHOUT_MOTION } = EXAMPLE;
const steered = (request: ClearanceRequest) => finished(clearanceSteered({ ...request, places: [...request.places] }));
const RANK: Record<Verdict, number> = { touches: 0, close: 1, clears: 2 };

/** Requests of many kinds of place, wheel and height. */
const requests: fc.Arbitrary<Omit<ClearanceRequest, 'motion'>> = fc
  .record({
    clock: evenly(0, 12),
    distance: evenly(280, 400),
    out: evenly(-120, 40),
    fixedTo: fc.constantFrom('body' as const, 'body' as const, 'between' as const, 'lowerArm' as const),
    is: fc.constantFrom('bodywork' as const, 'chassis' as const),
    offset: evenly(20, 60),
    spacer: evenly(0, 20),
    drop: evenly(0, 50),
    camberBy: evenly(-2, 1),
    measuredAt: evenly(0, 20),
  })
  .map(({ clock, distance, out, fixedTo, is, offset, spacer, ...more }) => ({
    ...WITHOUT_MOTION,
    ...more,
    after: { ...EXAMPLE.after, offset, spacer, sectionWidth: 218 },
    places: [aPlace({ clock, distance, out }, fixedTo, { is })],
  }));

describe('margins and allowance', () => {
  it('never make a verdict better nor the way to the first contact longer when they grow', () => {
    fc.assert(
      fc.property(requests, evenly(0, 15), evenly(0, 15), evenly(0, 20), (rest, margin, allowance, more) => {
        const request = { ...rest, motion: STEERED };
        const of = (m: number, a: number) =>
          clearance({ ...request, marginBodywork: m, marginChassis: m, allowance: a });
        const before = of(margin, allowance);
        for (const after of [of(margin + more, allowance), of(margin, allowance + more)]) {
          expect(RANK[after.verdict!]).toBeLessThanOrEqual(RANK[before.verdict!]);
          const way = ({ contact }: typeof after) => contact?.travel ?? Number.POSITIVE_INFINITY;
          expect(way(after)).toBeLessThanOrEqual(way(before) + 1e-9);
          expect(after.places[0]!.worst.gap).toBe(before.places[0]!.worst.gap);
        }
      }),
      seeded(41, 60),
    );
  });

  it('are 10 mm to bodywork and 5 to the chassis unless told', () => {
    const places = [
      { ...EXAMPLE.places[0]!, is: 'bodywork' as const },
      { ...EXAMPLE.places[0]!, is: 'chassis' as const },
    ];
    expect(clearance({ ...EXAMPLE, places }).places.map(({ margin }) => margin)).toEqual([10, 5]);
    const told = clearance({ ...EXAMPLE, places, marginBodywork: 7, marginChassis: 1 });
    expect(told.places.map(({ margin }) => margin)).toEqual([7, 1]);
  });

  it('draw the lines of the verdict where they say', () => {
    const at = (gap: number) =>
      clearance({
        ...EXAMPLE,
        motion: STRAIGHT_UP,
        before: EXAMPLE.after,
        limits: { stopGap: 30, stopLength: 40, stopUsable: 0.5, motionRatio: 1 },
        places: [
          aPlace({ clock: 12, distance: (432 + 2 * 0.45 * 215) / 2 + 50 + gap, out: -60 }, 'body', { plusMinus: 4 }),
        ],
        marginBodywork: 6,
        allowance: 2,
      }).verdict;
    // Clears where 6 + 2 are left at the bad end of ± 4, touches where nothing is at the good end: a gap of 0 mm is contact.
    expect([12.01, 11.99].map(at)).toEqual(['clears', 'close']);
    expect([-3.99, -4.01].map(at)).toEqual(['close', 'touches']);
  });
});

describe('a small change of any input changes the gap a little', () => {
  const changed: Record<string, [step: number, most: number, (r: ClearanceRequest, x: number) => ClearanceRequest]> = {
    offset: [0.01, 1, (r, x) => ({ ...r, after: { ...r.after, offset: r.after.offset + x } })],
    spacer: [0.01, 1, (r, x) => ({ ...r, after: { ...r.after, spacer: (r.after.spacer ?? 0) + x } })],
    width: [0.01, 1.5, (r, x) => ({ ...r, after: { ...r.after, sectionWidth: (r.after.sectionWidth ?? 218) + x } })],
    'width before': [0.01, 1.5, (r, x) => ({ ...r, before: { ...r.before, sectionWidth: 205 + x } })],
    tread: [0.01, 2, (r, x) => ({ ...r, after: { ...r.after, treadWidth: 185 + x } })],
    rim: [0.001, 25.4, (r, x) => ({ ...r, after: { ...r.after, rimWidthInch: r.after.rimWidthInch + x } })],
    drop: [0.01, 1.5, (r, x) => ({ ...r, drop: r.drop + x })],
    measuredAt: [0.01, 3, (r, x) => ({ ...r, measuredAt: (r.measuredAt ?? 0) + x })],
    // About a joint, at most 700 mm away.
    camberBy: [0.001, 700 * (Math.PI / 180), (r, x) => ({ ...r, camberBy: (r.camberBy ?? 0) + x })],
    // An hour is half a radian.
    clock: [0.001, 400 * (Math.PI / 6) + 50, (r, x) => withPlace(r, 'clock', x)],
    distance: [0.01, 1.5, (r, x) => withPlace(r, 'distance', x)],
    out: [0.01, 1, (r, x) => withPlace(r, 'out', x)],
    stopGap: [0.01, 2, (r, x) => ({ ...r, limits: { ...r.limits, stopGap: r.limits.stopGap! + x } })],
    stopLength: [0.01, 2, (r, x) => ({ ...r, limits: { ...r.limits, stopLength: r.limits.stopLength! + x } })],
  };
  /** A stretch between two samples is straight: so far off is which travel is the worst. */
  const SAMPLED = 0.02;

  it.each(Object.keys(changed))('%s', (key) => {
    const [step, most, change] = changed[key]!;
    fc.assert(
      fc.property(requests, (raw) => {
        const request = change({ ...raw, motion: STEERED }, 0);
        const [a, b] = [clearance(request), clearance(change({ ...raw, motion: STEERED }, step))].map(
          ({ places: [one] }) => one!,
        );
        const near = (x: number, y: number) => expect(Math.abs(x - y)).toBeLessThan(most * step * 1.05 + SAMPLED);
        near(a!.worst.gap, b!.worst.gap);
        near(a!.ride.gap, b!.ride.gap);
        near(a!.solid!.gap, b!.solid!.gap);
      }),
      seeded(42),
    );
  });

  it('lock, over the steering', () => {
    const places = [EXAMPLE.places[3]!, aPlace({ clock: 9.5, distance: 330, out: -190 })];
    let last: PlaceAnswer[] | undefined;
    for (const degrees of [0.02, 0.04, 25, 25.02, 25.04, 36, 36.02]) {
      const here = steered({ ...EXAMPLE, motion: motionOf(degrees), places, limits: { shaftBump: 60 } }).places;
      if (last && Math.round(degrees * 100) % 100 !== 0) {
        here.forEach(({ worst }, i) => {
          // An arm of 400 mm.
          expect(Math.abs(worst.gap - last![i]!.worst.gap)).toBeLessThan(0.02 * 400 * (Math.PI / 180) + SAMPLED);
        });
      }
      last = here;
    }
  });
});

function withPlace(request: ClearanceRequest, key: 'clock' | 'distance' | 'out', by: number): ClearanceRequest {
  const [place] = request.places;
  const at = place!.at as Record<typeof key, number>;
  return { ...request, places: [{ ...place!, at: { ...at, [key]: at[key] + by } } as Place] };
}

describe('the answer', () => {
  it('on the right side with the clock mirrored is the same', () => {
    fc.assert(
      fc.property(requests, (rest) => {
        const request = { ...rest, motion: STEERED };
        const [place] = request.places;
        const at = place!.at as { clock: number };
        const left = clearance(request);
        const right = clearance({
          ...request,
          isLeft: false,
          places: [{ ...place!, at: { ...at, clock: 12 - at.clock } } as Place],
        });
        left.places[0]!.ahead.forEach((gap, i) => {
          expect(right.places[0]!.ahead[i]).toBeCloseTo(gap, 9);
        });
        expect(right.verdict).toBe(left.verdict);
      }),
      seeded(43),
    );
    // 11 is 1, 10 is 2, 9 is 3.
    for (const [clock, mirrored] of [
      [11, 1],
      [10, 2],
      [9, 3],
    ] as const) {
      const of = (c: number, isLeft: boolean) =>
        clearance({ ...EXAMPLE, isLeft, places: [aPlace({ clock: c, distance: 370, out: 10 })] }).places[0]!.worst.gap;
      expect(of(clock, true)).toBeCloseTo(of(mirrored, false), 9);
      expect(Math.abs(of(clock, true) - of(clock, false))).toBeGreaterThan(0.001);
    }
  });

  it('over the steering is never better than straight ahead, and says at which toe it is worst', () => {
    const places = [
      ...EXAMPLE.places,
      aPlace({ clock: 9, distance: 350, out: -210 }),
      aPlace({ clock: 3, distance: 345, out: -20 }),
    ];
    const straight = clearance({ ...EXAMPLE, places });
    const over = steered({ ...EXAMPLE, places });
    over.places.forEach((place, i) => {
      expect(place.worst.gap).toBeLessThanOrEqual(straight.places[i]!.worst.gap + 1e-9);
      place.least.forEach((gap, k) => {
        expect(gap).toBeLessThanOrEqual(place.ahead[k]! + 1e-12);
      });
      const ahead = STEERED.toe[STEERED.rack.indexOf(0)]!;
      expect(Math.abs(place.worst.toe)).toBeLessThan(lock + 0.5);
      expect(place.worst.isAhead).toBe(Math.abs(place.worst.toe - ahead) < 0.1);
    });
    expect(straight.isSteered).toBe(false);
    expect(over.isSteered).toBe(true);
    expect(over.places.some(({ worst }) => !worst.isAhead)).toBe(true);
  });

  it('has the gap that was measured as the old gap, at the travel at which the car stood', () => {
    // Beside the bulge of an upright wheel.
    const after = EXAMPLE.before;
    const bulge = (16 * 25.4 - 0.4 + (406 + 2 * 0.55 * 205)) / 4;
    for (const measuredAt of [0, 20, 30]) {
      const answer = clearance({
        ...EXAMPLE,
        motion: STRAIGHT_UP,
        after,
        limits: { bumpTravel: 60 } as object,
        bumpTravel: 60,
        measuredAt,
        drop: measuredAt,
        places: [aPlace({ clock: 12, distance: bulge, out: 17 })],
      });
      expect(answer.places[0]!.ride.gap).toBeCloseTo(17, 6);
      expect(answer.places[0]!.before[answer.travel.indexOf(measuredAt)]).toBeCloseTo(17, 6);
    }
  });

  it('takes the gap of what goes with the wheel to be the same all the way', () => {
    const [perch] = EXAMPLE.places.filter(({ fixedTo }) => fixedTo === 'carrier');
    const { places } = steered({ ...EXAMPLE, places: [perch!] });
    const gaps = [...places[0]!.least, ...places[0]!.ahead];
    expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThan(1e-9);
    expect(places[0]!.worst.travel).toBe(places[0]!.solid!.travel);
  });

  it('without limits has no verdict, and without places none either', () => {
    expect(clearance({ ...EXAMPLE, motion: STRAIGHT_UP, limits: {} }).verdict).toBeUndefined();
    // Links that would go on for a quarter of a metre say nothing of where the suspension is solid.
    expect(EXAMPLE.motion.reach!.bump).toBeGreaterThan(200);
    expect(clearance({ ...EXAMPLE, limits: {} }).budget.bump.solid).toBeUndefined();
    const short = { ...EXAMPLE.motion, reach: { droop: -300, bump: EXAMPLE.motion.travel.at(-1)! + 1 } };
    expect(clearance({ ...EXAMPLE, motion: short, limits: {} }).budget.bump.solid?.governedBy).toBe('linkage');
    const { verdict, worst, places } = clearance({ ...EXAMPLE, places: [] });
    expect([verdict, worst, places]).toEqual([undefined, undefined, []]);
    expect(steered({ ...EXAMPLE, places: [] }).justClear).toBeUndefined();
  });

  it('decides by the place with the least left after its own margin and doubt', () => {
    const near = aPlace({ clock: 12, distance: 380, out: -60 }, 'body', { plusMinus: 0, is: 'chassis' });
    const doubted = aPlace({ clock: 12, distance: 390, out: -60 }, 'body', { plusMinus: 20 });
    const { worst, verdict, places } = clearance({ ...EXAMPLE, places: [near, doubted] });
    expect(places[0]!.worst.gap).toBeLessThan(places[1]!.worst.gap);
    expect(worst).toBe(1);
    expect(verdict).toBe(places[1]!.verdict);
  });

  it('decides by what touches for certain before what may, whatever is left of either', () => {
    const over = (gap: number, plusMinus: number) =>
      aPlace({ clock: 12, distance: 312.75 + 50 + gap, out: -60 }, 'body', { plusMinus });
    const request = {
      ...EXAMPLE,
      motion: STRAIGHT_UP,
      before: EXAMPLE.after,
      limits: { stopGap: 30, stopLength: 40, stopUsable: 0.5, motionRatio: 1 },
      places: [over(2, 40), over(-3, 1)],
    };
    const answer = clearance(request);
    expect(answer.places.map(({ verdict }) => verdict)).toEqual(['close', 'touches']);
    expect([answer.worst, answer.verdict]).toEqual([1, 'touches']);
  });

  it('is not sure to clear where the stop may be so much later, though the gap is smaller elsewhere', () => {
    // Beside the bulge at 30 mm of travel 20 mm are left; at solid bump more, but of a slope, and full bump is uncertain by 45 mm.
    const bulge = (432 / 2 + 312.75) / 2;
    const at = (stopGapPlusMinus: number) =>
      clearance({
        ...EXAMPLE,
        motion: STRAIGHT_UP,
        before: EXAMPLE.after,
        limits: { stopGap: 30, stopLength: 40, stopUsable: 0.5, motionRatio: 1, stopGapPlusMinus },
        places: [aPlace({ clock: 12, distance: bulge + 30, out: 20 }, 'body', { plusMinus: 4 })],
      });
    expect(at(0).verdict).toBe('clears');
    const unsure = at(45);
    expect(unsure.places[0]!.worst.travel).toBe(30);
    expect(unsure.places[0]!.solid!.gap).toBeGreaterThan(20);
    expect(unsure.places[0]!.solid!.plusMinus).toBeGreaterThan(9);
    expect(unsure.verdict).toBe('close');
  });

  it('carries the doubt of the gap to the stop where the gap changes with travel', () => {
    const place = aPlace({ clock: 12, distance: 400, out: -60 }, 'body', { plusMinus: 3 });
    const limits = { stopGap: 30, stopLength: 40, stopUsable: 0.5, motionRatio: 0.8, stopGapPlusMinus: 3.2 };
    const { places } = clearance({ ...EXAMPLE, motion: STRAIGHT_UP, places: [place], limits });
    // Straight overhead each millimetre counts in full: 3.2 mm on the rod are 4 at the wheel, at right angles to 3.
    expect(places[0]!.solid!.plusMinus).toBeCloseTo(5, 6);
    expect(places[0]!.ride.plusMinus).toBe(3);
  });

  it('carries that of a share of the stop that nobody gave', () => {
    const place = aPlace({ clock: 12, distance: 400, out: -60 }, 'body', { plusMinus: 3 });
    const limits = { stopGap: 30, stopLength: 40, motionRatio: 0.8 };
    const { places } = clearance({ ...EXAMPLE, motion: STRAIGHT_UP, places: [place], limits });
    // Uniform from a third to two thirds of 40 mm, common practice: 1.96 · 40/3/√12 on the rod.
    expect(places[0]!.solid!.plusMinus).toBeCloseTo(Math.hypot(3, (1.959964 * 40) / 3 / Math.sqrt(12) / 0.8), 5);
  });

  it('calls nothing clear whose steering that leaves least for certain is not, where full bump is in doubt', () => {
    fc.assert(
      fc.property(
        fc.record({ clock: evenly(10.5, 13.5), distance: evenly(340, 420), out: evenly(-20, 60) }),
        ({ clock, ...at }) => {
          const request = {
            ...EXAMPLE,
            motion: STEERED,
            limits: { stopGap: 34, stopGapPlusMinus: 12, stopLength: 55 },
            places: [aPlace({ ...at, clock: clock % 12 })],
          };
          const answer = finished(clearanceSteered(request));
          const [{ margin, verdict }] = answer.places as [(typeof answer.places)[number]];
          const poses = new Poses(STEERED);
          const { wheels, budget } = answer;
          const moved = { poses, envelope: envelopeOf(wheels.after, wheels.plane), solid: budget.bump.solid };
          const one = placed(request.places[0]!, envelopeOf(wheels.before, 0), poses, 0, true);
          const { travel } = moved.solid!;
          const all = [...STEERED.toe].map(
            (steer) => gapOf(moved, one, travel, steer) - doubtOf(moved, one, travel, steer),
          );
          const left = Math.min(...all);
          if (verdict === 'clears') expect(left).toBeGreaterThanOrEqual(margin + answer.allowance - 1e-9);
        },
      ),
      { seed: 61, numRuns: 20, endOnFailure: true },
    );
  });
});

describe('the doubt of a place that goes a share of the way', () => {
  it('is nothing where it was measured, and grows with the way the wheel has gone', () => {
    const shaft = aPlace({ clock: 12, distance: 330, out: -60 }, 'between', { plusMinus: 3, share: 0.4 });
    const at = (drop: number) =>
      clearance({
        ...EXAMPLE,
        motion: STRAIGHT_UP,
        before: EXAMPLE.after,
        limits: { stopGap: 30, stopLength: 40, motionRatio: 1 },
        places: [shaft],
        drop,
      }).places[0]!;
    expect(at(0).ride.plusMinus).toBe(3);
    // Straight overhead: 0.15 of 40 mm, at right angles to 3.
    expect(at(40).ride.plusMinus).toBeCloseTo(Math.hypot(3, 0.15 * 40), 6);
    expect(at(40).ride.gap).toBeCloseTo(at(0).ride.gap - 0.6 * 40, 6);
  });
});

describe('what is wrong', () => {
  const bad = {
    ...EXAMPLE,
    before: { ...EXAMPLE.before, offset: 500 },
    after: { ...EXAMPLE.after, size: 'wide' },
    places: [{ ...EXAMPLE.places[0]!, plusMinus: -1 }, aPlace({ clock: 15, distance: 300, out: 0 })],
    limits: { stopGap: -1, stopUsable: 2 },
    marginBodywork: -1,
    marginChassis: Number.NaN,
    allowance: 200,
    camberBy: 20,
    measuredAt: 5000,
  };
  const paths = [
    'marginBodywork',
    'marginChassis',
    'allowance',
    'camberBy',
    'places.0.plusMinus',
    'places.1.at.clock',
    'before.offset',
    'after.size',
  ];

  it('with wheels, places, limits and margins is told at once, each by its path', () => {
    const problems = problemsOf(() => clearance(bad));
    for (const path of [...paths, 'limits.stopGap', 'limits.stopUsable', 'measuredAt'])
      expect(problems).toContain(path);
    expect(problems.filter((path) => path === 'measuredAt')).toHaveLength(1);
  });

  it('with the source as well is told together with that of wheels and places', () => {
    const { motion: _, ...rest } = bad;
    const question = {
      ...rest,
      source: { problems: [{ code: 'missing', path: 'strut.top', value: 0 }] },
      lock: 70,
    };
    for (const ask of ['wheelMotion', 'clearanceSteered'] as const) {
      const asked = () => finished<unknown>(clearanceQuestions[ask](question as unknown as ClearanceQuestion));
      const problems = problemsOf(asked);
      for (const path of ['strut.top', 'lock', ...paths]) expect(problems).toContain(path);
    }
  });

  it('with a height that the motion does not reach is told with the end it passes', () => {
    expect(() => clearance({ ...EXAMPLE, motion: STRAIGHT_UP, limits: { shaftBump: 60 }, drop: 121 })).toThrow(
      expect.objectContaining({ problems: [{ code: 'outside-domain', path: 'drop', value: 121, limit: 120 }] }),
    );
  });
});

function problemsOf(ask: () => unknown): string[] {
  try {
    ask();
  } catch (error) {
    return (error as { problems: { path: string }[] }).problems.map(({ path }) => path);
  }
  return [];
}

it('of a dragged car is the whole answer but for what would just clear, whatever is dragged', () => {
  const { source } = tried({ source: { kind: 'driveway', driveway: EXAMPLE_DRIVEWAY } });
  const dragged = fc.record({
    drop: fc.integer({ min: -10, max: 60 }),
    offset: fc.integer({ min: 20, max: 45 }),
    lock: fc.constantFrom(undefined, 30),
  });
  fc.assert(
    fc.property(dragged, ({ drop, offset, lock }) => {
      const { motion: _, ...rest } = EXAMPLE;
      const after = { ...rest.after, offset };
      const asked: ClearanceQuestion = { ...rest, after, source, drop, ...(lock !== undefined && { lock }) };
      const { justClear: __, ...whole } = finished(clearanceQuestions.clearanceSteered(asked));
      const motion = finished(clearanceQuestions.wheelMotion(asked));
      const { source: ___, ...request } = asked;
      expect(clearanceQuestions.clearanceSwept({ ...request, motion })).toStrictEqual(whole);
    }),
    { numRuns: 25 },
  );
});
