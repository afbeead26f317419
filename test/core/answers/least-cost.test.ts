import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastCost, tried } from '../../../core/answers/from-source.js';
import { leastCostSteps } from '../../../core/answers/least-cost.js';
import type { LeastCostRow } from '../../../core/answers/least-cost-answer.js';
import type { LeastCostRequest } from '../../../core/answers/least-cost-request.js';
import type { AnySource } from '../../../core/curve-sources/source.js';
import type { LeastCost } from '../../../core/document/cost-weights.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import type { StrutCorner } from '../../../core/linkage/corner.js';
import { InputError } from '../../../core/quantity/problem.js';
import { independentAxle } from '../../reference/independent-axle.js';
import { independentRoll } from '../../reference/independent-roll.js';
import {
  bumpUntilAsShort,
  cornerAtTravel,
  figuresAt,
  standingWith,
  strutToPlane,
} from '../../reference/independent-static-camber.js';
import type { IndependentCorner } from '../../reference/independent-strut.js';
import { randomCorner, seeded } from '../linkage/random-corner.js';
import { referenceCorner } from '../linkage/reference-corner.js';
import { wishboneCorner } from '../linkage/wishbone-corner.js';
import { problemsOf } from '../problems-of.js';
import { type GridSetup, wholeGrid } from './least-cost-grid-study.js';

type Request = LeastCostRequest<AnySource>;
const ofCorner = (corner: StrutCorner): AnySource => ({ kind: 'corner', corner });

const LOAD = {
  lateral: 0.8,
  centreOfGravityHeight: 520,
  axle: { sprungMass: 700, track: 1500, springRate: 28, bar: { rate: 20 } },
};
const asked = (more: Partial<Request> = {}): Request => ({
  source: ofCorner(EXAMPLE_CORNER),
  drop: 0,
  inclination: 0.5,
  tolerance: 0.15,
  load: LOAD,
  camber: { from: -2.5, to: 0, step: 0.25, ways: [{ way: 'topMount', price: 300 }] },
  height: { from: 0, to: 30, step: 10, price: 800 },
  joints: [{ mm: 15, correctTieRod: true, price: 250 }, { mm: 22 }],
  springs: [{ rate: 45, price: 200 }],
  bars: [{ rate: 35 }],
  ...more,
});

const COSTS = ['bumpTravel', 'bumpSteer', 'scrubChange', 'price'] as const;
/** Costs nearer than this count as the same, mm and degrees: `SAME` of least-cost-front.ts, and rounding beside it. */
const SAME: Record<LeastCost, number> = { bumpTravel: 2e-3, bumpSteer: 2e-4, scrubChange: 2e-3, price: 1e-3 };

const keyOf = (row: Pick<LeastCostRow, 'drop' | 'way' | 'joint' | 'spring' | 'bar' | 'camber'>) =>
  [
    row.drop,
    row.joint ?? '-',
    row.way ?? '-',
    row.spring ?? '-',
    row.bar ?? '-',
    row.way ? row.camber.toFixed(6) : '',
  ].join(' ');

/** Whether a setup of the grid clearly beats another: worse in nothing, and better in something by more than rounding. */
function beats(one: GridSetup, other: GridSetup): boolean {
  return (
    one.unpriced.every((thing) => other.unpriced.includes(thing)) &&
    COSTS.every((cost) => one.costs[cost] <= other.costs[cost] + 1e-7) &&
    (COSTS.some((cost) => one.costs[cost] < other.costs[cost] - SAME[cost]) ||
      one.unpriced.length < other.unpriced.length)
  );
}

/* Against a grid that is tried whole, built another way: see least-cost-grid-study.ts. */
describe('leastCost against every setup of the same steps', () => {
  function expectBest(request: Request, corner: StrutCorner, at: string): number {
    const grid = wholeGrid(request, corner);
    const near = grid.filter(({ inclination }) => Math.abs(inclination - request.inclination) <= request.tolerance!);
    if (near.length === 0) {
      const nearest = Math.min(...grid.map(({ inclination }) => Math.abs(inclination - request.inclination)));
      const [problem] = problemsOf(() => leastCost(request));
      expect(problem, at).toMatchObject({ code: 'out-of-range', path: 'inclination', value: request.inclination });
      expect(Math.abs(problem!.limit! - request.inclination), at).toBeCloseTo(nearest, 6);
      return 0;
    }
    const found = leastCost(request);
    expect(found.reach, at).toBe(near.length);
    expect(found.rows.length, at).toBeLessThanOrEqual(5);
    for (const row of found.rows) {
      const own = near.find((one) => keyOf(one) === keyOf(row));
      expect(own, `${at}: ${keyOf(row)} is in the grid`).toBeDefined();
      expect(row.inclination, at).toBeCloseTo(own!.inclination, 6);
      expect(row.roll, at).toBeCloseTo(own!.roll, 8);
      for (const cost of COSTS)
        expect(row.costs[cost]!, `${cost} of ${keyOf(row)}, ${at}`).toBeCloseTo(own!.costs[cost], 5);
      expect(row.isPriceOpen, at).toBe(own!.unpriced.length > 0);
      const better = near.find((one) => beats(one, own!));
      expect(better && keyOf(better), `${at}: what beats ${keyOf(row)}`).toBeUndefined();
    }
    for (const cost of COSTS) {
      const known = near.filter(({ unpriced }) => cost !== 'price' || unpriced.length === 0);
      if (known.length === 0) continue;
      const least = Math.min(...known.map(({ costs }) => costs[cost]));
      const best = found.rows.filter(({ bestIn }) => bestIn.includes(cost));
      expect(best.length, `best ${cost}, ${at}`).toBeGreaterThan(0);
      for (const { costs } of best) expect(costs[cost], `best ${cost}, ${at}`).toBeLessThanOrEqual(least + SAME[cost]);
    }
    return near.length;
  }

  it('on the example corner, by acceleration', () => {
    expectBest(asked(), EXAMPLE_CORNER, 'by acceleration');
    const { track: _, ...axle } = LOAD.axle;
    expectBest(asked({ load: { ...LOAD, axle } }), EXAMPLE_CORNER, 'track of the links');
  });

  it('counts the gap to the stop from where it was measured, and takes an unlikely rate where somebody is sure', () => {
    const axle = (gap: number) => ({ ...LOAD.axle, motionRatio: 0.95, stop: { gap, rate: 60 } });
    const only = { joints: [], springs: [], bars: [], height: { from: 0, to: 0 }, inclination: 0.8 };
    const rolls = (load: Partial<NonNullable<Request['load']>>) =>
      leastCost(asked({ ...only, load: { ...LOAD, ...load } })).asItIs.roll;
    const [measuredLower, shorter] = [
      rolls({ axle: axle(30), lowerThanGap: 20 }),
      rolls({ axle: axle(30 - 0.95 * 20) }),
    ];
    expect(measuredLower).toBeCloseTo(shorter, 12);
    expect(measuredLower).toBeLessThan(rolls({ axle: axle(30) }));
    expect(() => leastCost(asked({ springs: [{ rate: 400 }], load: { ...LOAD, isRateSure: true } }))).not.toThrow();
  });

  it('on the example corner at a roll that is held', () => {
    const { load: _, springs: _s, bars: _b, ...held } = asked();
    expectBest({ ...held, roll: 2.5 }, EXAMPLE_CORNER, 'roll held');
  });

  it('on the example corner, steered', () => {
    expectBest(asked({ steer: { angle: 6 }, inclination: -0.3, bars: [] }), EXAMPLE_CORNER, 'steered');
  });

  it('on the reference corner lowered already, with other limits and knuckle bolts besides plates', () => {
    const camber = { from: -3, to: 0, step: 0.25, ways: [{ way: 'topMount' }, { way: 'knuckle', price: 90 }] } as const;
    const request = asked({ source: ofCorner(referenceCorner), drop: 10, camber, inclination: 0.2 });
    expect(expectBest(request, referenceCorner, 'reference')).toBeGreaterThan(0);
    const limits = { bumpLeft: 55, scrubChange: 4, bumpSteer: 1.2 };
    expectBest({ ...request, bumpLeft: 60, limits }, referenceCorner, 'reference, limits');
  });

  it('on random struts', () => {
    let reaching = 0;
    fc.assert(
      fc.property(randomCorner, fc.integer({ min: -10, max: 10 }), (corner, tenths) => {
        const from = Number((corner.camber - 1.5).toFixed(1));
        const camber = { from, to: from + 2, step: 0.2, ways: [{ way: 'topMount', price: 300 }] } as const;
        const height = { from: 0, to: 20, step: 10, price: 500 };
        const request = asked({
          source: ofCorner(corner),
          joints: [{ mm: 22, price: 250 }],
          bars: [],
          camber,
          height,
          inclination: corner.camber + 1 + tenths / 10,
        });
        reaching += expectBest(request, corner, JSON.stringify(corner)) > 0 ? 1 : 0;
      }),
      seeded(31, 9),
    );
    expect(reaching).toBeGreaterThan(6);
  });
});

/* Against the generic Newton solver of test/reference and roll by virtual work there: nothing shared with core. */
describe('each row by the independent solver', () => {
  it('comes to the inclination at the roll, with the costs it tells', () => {
    const request = asked({ bumpLeft: 60, gapStrut: 12 });
    const found = leastCost(request);
    expect(found.rows.length).toBeGreaterThan(2);
    const asItIs = standingWith(EXAMPLE_CORNER, {}, 0);
    for (const row of found.rows) {
      const stands = standsAs(request, row);
      const at = keyOf(row);
      expect(stands.camber, at).toBeCloseTo(row.camber, 6);
      const figures = figuresAt(stands, 40, [-40, 40]);
      expect(row.costs.bumpSteer, at).toBeCloseTo(figures.bumpSteer, 4);
      expect(row.costs.scrubChange, at).toBeCloseTo(
        Math.abs(figures.scrubRadius - figuresAt(asItIs, 40, [-40, 40]).scrubRadius),
        4,
      );
      expect(row.costs.bumpTravel, at).toBeCloseTo(-bumpUntilAsShort(stands, asItIs), 4);
      expect(row.bumpLeft, at).toBeCloseTo(60 - row.costs.bumpTravel, 9);
      expect(row.gapStrut! - 12, at).toBeCloseTo(strutToPlane(stands) - strutToPlane(asItIs), 4);
      const axle = independentAxle(stands, 0, row.roll, 0);
      expect(axle.inclinationRight, at).toBeCloseTo(row.inclination, 6);
      expect(axle.travelRight, at).toBeCloseTo(row.bumpInTurn, 5);
    }
  });

  it('rolls by the spring, the bar and the height it has', () => {
    const request = asked({ camber: { from: -2.5, to: 0, ways: [{ way: 'topMount' }] } });
    const found = leastCost(request);
    for (const row of found.rows) {
      const stands = standsAs(request, row);
      const springRate = row.spring === undefined ? 28 : request.springs![row.spring]!.rate;
      const barRate = row.bar === undefined ? 20 : request.bars![row.bar]!.rate;
      const rate = springRate * strutRatio(stands) ** 2;
      const axle = {
        sprungMass: 700,
        track: 1500,
        rollCentreHeight: figuresAt(stands, 40, [-40, 40]).rollCentreHeight,
        energy: (bump: number) => (rate * bump ** 2) / 2,
        // Each end of a bar goes half as far as both are apart, and takes the same force: rate · MR² t² φ.
        barEnergy: (apart: number) => (barRate * apart ** 2) / 2,
      };
      const radians = independentRoll([axle], 520 - row.drop, 0.8 * 9.80665, 9.80665);
      expect(row.roll, keyOf(row)).toBeCloseTo((radians * 180) / Math.PI, 3);
    }
  });
});

/** A row's corner by the independent solver. */
function standsAs(request: Request, row: LeastCostRow) {
  const joint = row.joint === undefined ? undefined : request.joints![row.joint]!;
  return standingWith(
    EXAMPLE_CORNER,
    {
      ...(joint && { ballBy: [0, 0, -joint.mm] as const }),
      ...(joint?.correctTieRod && { outerBy: [0, 0, -joint.mm] as const }),
      ...(row.way && { topBy: [0, row.amount!, 0] as const }),
    },
    row.drop,
  );
}

/** −d(damper length)/d(travel), central differences. */
function strutRatio(corner: IndependentCorner): number {
  const length = ({ strut }: IndependentCorner) => Math.hypot(...strut.top.map((one, axis) => one - strut.low[axis]!));
  return (length(cornerAtTravel(corner, -0.05)) - length(cornerAtTravel(corner, 0.05))) / 0.1;
}

describe('leastCost', () => {
  it('returns the car as it is, and nothing else, where that is wanted and nothing costs less', () => {
    const { load: _, camber: _c, height: _h, springs: _s, bars: _b, ...held } = asked({ roll: 2 });
    const { asItIs } = leastCost({ ...held, inclination: 1, tolerance: 2 });
    const found = leastCost({ ...held, inclination: asItIs.inclination, joints: [] });
    expect(found.rows).toHaveLength(1);
    expect(found.rows[0]).toMatchObject({
      drop: 0,
      parts: [],
      costs: { scrubChange: 0, price: 0 },
      isPriceOpen: false,
    });
    expect(found.rows[0]!.costs.bumpTravel).toBeCloseTo(0, 9);
    expect(found.rows[0]!.inclination).toBe(asItIs.inclination);
  });

  it('never makes the best of a cost worse when a limit is loosened, and never misses what is wanted', () => {
    const bestOf = (request: Request) => {
      try {
        const { rows } = leastCost(request);
        for (const row of rows) {
          expect(Math.abs(row.inclination - request.inclination)).toBeLessThanOrEqual(request.tolerance! + 1e-9);
          if (request.limits?.bumpLeft !== undefined)
            expect(row.bumpLeft).toBeGreaterThanOrEqual(request.limits.bumpLeft);
          if (request.limits?.scrubChange !== undefined)
            expect(row.costs.scrubChange).toBeLessThanOrEqual(request.limits.scrubChange);
        }
        return COSTS.map((cost) => {
          const best = rows.filter(({ bestIn }) => bestIn.includes(cost)).map(({ costs }) => costs[cost]!);
          return best.length > 0 ? Math.min(...best) : Infinity;
        });
      } catch (error) {
        if (error instanceof InputError) return COSTS.map(() => Infinity);
        throw error;
      }
    };
    let narrower = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: -4, max: 10 }),
        fc.integer({ min: 30, max: 62 }),
        fc.integer({ min: 0, max: 60 }),
        fc.constantFrom('bumpLeft', 'scrubChange', 'tolerance', 'height', 'camber', 'joints', 'springs'),
        (tenths, bumpLeft, scrub, loosened) => {
          const tight = asked({
            inclination: tenths / 10,
            bumpLeft: 60,
            joints: [{ mm: 22, price: 250 }],
            bars: [],
            limits: { bumpLeft, scrubChange: scrub / 10 },
            camber: { from: -2, to: -0.5, step: 0.25, ways: [{ way: 'topMount', price: 300 }] },
            height: { from: 10, to: 20, step: 10, price: 100 },
          });
          const { limits } = tight;
          const loose: Partial<Request> = {
            bumpLeft: { limits: { ...limits, bumpLeft: bumpLeft - 10 } },
            scrubChange: { limits: { bumpLeft } },
            tolerance: { tolerance: 0.3 },
            height: { height: { ...tight.height!, from: 0, to: 30 } },
            camber: { camber: { ...tight.camber!, from: -3, to: 0.5 } },
            joints: { joints: [...tight.joints!, { mm: 30, price: 40 }] },
            springs: { springs: [...tight.springs!, { rate: 60, price: 10 }] },
          }[loosened];
          const [had, has] = [bestOf(tight), bestOf({ ...tight, ...loose })];
          COSTS.forEach((cost, i) => {
            expect(has[i], `${cost}, ${loosened}`).toBeLessThanOrEqual(had[i]! + SAME[cost]);
            if (has[i]! < had[i]! - SAME[cost]) narrower += 1;
          });
        },
      ),
      seeded(32, 24),
    );
    expect(narrower).toBeGreaterThan(3);
  });

  it('says the nearest that can be had where nothing reaches it', () => {
    const [problem] = problemsOf(() => leastCost(asked({ inclination: -4 })));
    expect(problem).toMatchObject({ code: 'out-of-range', path: 'inclination', value: -4 });
    const again = leastCost(asked({ inclination: problem!.limit!, tolerance: 0.01 }));
    expect(again.rows.length).toBeGreaterThan(0);
    expect(problemsOf(() => leastCost(asked({ inclination: problem!.limit! - 0.02, tolerance: 0.01 })))).toHaveLength(
      1,
    );
  });

  it('says which limit no setup at all keeps, and the nearest that one does', () => {
    const [problem] = problemsOf(() => leastCost(asked({ limits: { bumpSteer: 0.001 } })));
    expect(problem).toMatchObject({ code: 'out-of-range', path: 'limits.bumpSteer', value: 0.001 });
    expect(problem!.limit).toBeGreaterThan(0.001);
    expect(
      leastCost(asked({ inclination: 0.9, tolerance: 2, limits: { bumpSteer: problem!.limit! } })).rows,
    ).toHaveLength(1);
  });

  it('counts a part without a price as unknown and not as nothing', () => {
    const open = leastCost(asked({ camber: { from: -2.5, to: 0, step: 0.25, ways: [{ way: 'topMount' }] } }));
    const plates = open.rows.filter(({ way }) => way === 'topMount');
    expect(plates.length).toBeGreaterThan(0);
    for (const row of plates) {
      expect(row.isPriceOpen).toBe(true);
      expect(row.bestIn).not.toContain('price');
    }
  });

  it('shows other setups, in another order, for other weights, and the best of what matters first to be there', () => {
    const all = { bumpTravel: 'none', bumpSteer: 'none', scrubChange: 'none', price: 'none' } as const;
    for (const cost of COSTS) {
      const { rows } = leastCost(asked({ weights: { ...all, [cost]: 'most' } }));
      expect(rows[0]!.bestIn, cost).toContain(cost);
    }
  });

  it('gives back the bump travel of height where the dampers are made shorter for it', () => {
    const lower = asked({
      height: { from: 20, to: 20 },
      camber: undefined as never,
      joints: [],
      inclination: 0.9,
      tolerance: 1,
    });
    const [springs] = leastCost(lower).rows;
    const [dampers] = leastCost({ ...lower, lowered: 'dampers' }).rows;
    // Toe set again at the height moves the damper's length by a thousandth.
    expect(springs!.costs.bumpTravel).toBeCloseTo(20, 2);
    expect(dampers!.costs.bumpTravel).toBeCloseTo(0, 6);
  });

  it('tells no bump steer of a driveway, and takes no limit of it', () => {
    const source: AnySource = { kind: 'driveway', driveway: EXAMPLE_DRIVEWAY };
    const request = asked({ source, inclination: 1, tolerance: 1 });
    for (const { costs } of leastCost(request).rows) expect(costs).not.toHaveProperty('bumpSteer');
    expect(problemsOf(() => leastCost({ ...request, limits: { bumpSteer: 0.2 } }))).toMatchObject([
      { code: 'wrong-shape', path: 'limits.bumpSteer' },
    ]);
  });

  it('works for a wishbone by a longer arm, and refuses it plates', () => {
    const source: AnySource = { kind: 'corner', corner: wishboneCorner };
    const { height: _, joints: _j, ...request } = asked({ source, inclination: 0.5, tolerance: 0.2 });
    const found = leastCost({ ...request, camber: { from: -3, to: 0, step: 0.25 } });
    expect(found.rows.some(({ way }) => way === 'longerArm')).toBe(true);
    expect(
      problemsOf(() => leastCost({ ...request, camber: { from: -3, to: 0, ways: [{ way: 'topMount' }] } })),
    ).toMatchObject([{ code: 'wrong-shape', path: 'camber.ways.0.way', value: 'topMount' }]);
  });

  it.each([
    ['inclination', { inclination: undefined }, 'missing'],
    ['inclination', { inclination: Number.NaN }, 'not-finite'],
    ['tolerance', { tolerance: 0 }, 'out-of-range'],
    ['roll', { load: undefined, springs: [], bars: [] }, 'missing'],
    ['load', { roll: 3 }, 'wrong-shape'],
    ['load', { roll: 3, load: undefined }, 'missing'],
    ['load.axle.springRate', { load: { ...LOAD, axle: { ...LOAD.axle, springRate: 3000 } } }, 'out-of-range'],
    // 400 N/mm under 700 kg is none, 400 lb/in is.
    ['load.axle.springRate', { load: { ...LOAD, axle: { ...LOAD.axle, springRate: 400 } } }, 'looks-like-unit'],
    ['springs.0.rate', { springs: [{ rate: 400 }] }, 'looks-like-unit'],
    ['load.centreOfGravityHeight', { load: { ...LOAD, centreOfGravityHeight: '520' } }, 'not-a-number'],
    ['camber.from', { camber: { from: -30, to: 0 } }, 'out-of-range'],
    ['camber.to', { camber: { from: 0, to: -1 } }, 'out-of-range'],
    ['camber.step', { camber: { from: -8, to: 0, step: 0.01 } }, 'out-of-range'],
    ['camber.ways', { camber: { from: -2, to: 0, ways: [] } }, 'missing'],
    ['camber.ways.0.way', { camber: { from: -2, to: 0, ways: [{ way: 'lowering' }] } }, 'unknown-name'],
    ['camber.ways.1.way', { camber: { from: -2, to: 0, ways: [{ way: 'knuckle' }, { way: 'knuckle' }] } }, 'coincide'],
    ['height.price', { height: { from: 0, to: 10, price: -1 } }, 'out-of-range'],
    ['joints.1.mm', { joints: [{ mm: 15 }, { mm: 'long' }] }, 'not-a-number'],
    ['joints', { joints: Array.from({ length: 7 }, () => ({ mm: 5 })) }, 'out-of-range'],
    ['springs.0.rate', { springs: [{ rate: 0 }] }, 'out-of-range'],
    ['bumpLeft', { limits: { bumpLeft: 40 } }, 'missing'],
    ['gapStrut', { limits: { gapStrut: 4 } }, 'missing'],
    ['limits.scrubChange', { limits: { scrubChange: -1 } }, 'out-of-range'],
    ['weights.price', { weights: { price: 'very' } }, 'unknown-name'],
    ['lowered', { lowered: 'air' }, 'unknown-name'],
    ['drop', { drop: 'low' }, 'not-a-number'],
    ['window.0', { window: [5, 40] }, 'out-of-range'],
  ] as const)('tells at %s what is wrong with %j', (path, more, code) => {
    expect(problemsOf(() => leastCost(asked(more as never)))).toMatchObject([{ path, code }]);
  });

  it('pauses between any two setups', () => {
    const steps = leastCostSteps({ ...asked(), source: tried(asked()).source });
    let count = 0;
    while (!steps.next().done) count++;
    expect(count).toBeGreaterThan(100);
  });
});
