import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ClearanceAnswer, clearanceSteered } from '../../../core/answers/clearance.js';
import type { ClearanceRequest } from '../../../core/answers/clearance-request.js';
import { wheelMotion } from '../../../core/answers/from-source.js';
import type { ChangeId, JustClear } from '../../../core/answers/just-clear.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { EXAMPLE_FITMENT, EXAMPLE_LIMITS } from '../../../core/document/example-fitment.js';
import { compareWheels } from '../../../core/wheel/compare-wheels.js';
import { tyreDimensions } from '../../../core/wheel/tyre-dimensions.js';
import { aPlace, evenly, STRAIGHT_UP } from '../wheel/gap-cases.js';
import { finished } from './finished.js';

const { lock, ...WHEELS } = EXAMPLE_FITMENT;
const STEERED = wheelMotion({ source: { kind: 'corner', corner: EXAMPLE_CORNER }, lock });
const EXAMPLE: ClearanceRequest = { motion: STEERED, isLeft: true, ...WHEELS, limits: EXAMPLE_LIMITS, drop: 25 };
/** A motion in a counterexample would be pages of numbers. */
const { motion: _, ...WITHOUT_MOTION } = EXAMPLE;
const ask = (request: ClearanceRequest) => finished(clearanceSteered(request));

/** The same question with one thing changed as a person would change it. */
const changes: Record<
  Exclude<ChangeId, 'diameter'>,
  (request: ClearanceRequest, by: number, answer: ClearanceAnswer) => ClearanceRequest
> = {
  // Outboard is less offset.
  plane: (r, by) => ({ ...r, after: { ...r.after, offset: r.after.offset - by } }),
  width: (r, by, { wheels }) => ({ ...r, after: { ...r.after, sectionWidth: wheels.after.sectionWidth + by } }),
  drop: (r, by) => ({ ...r, drop: r.drop + by }),
  camber: (r, by) => ({ ...r, camberBy: (r.camberBy ?? 0) + by }),
  // Where the links' own motion ends the travel, whatever the stop.
  bump: (r, by, { budget }) => ({ ...r, limits: { shaftBump: budget.bump.solid!.travel + by } }),
};

/** What is left of the tightest place, mm. */
const free = ({ places, allowance }: ClearanceAnswer) =>
  Math.min(...places.map(({ worst, margin }) => worst.gap - margin - allowance - worst.plusMinus));
const found = (answer: ClearanceAnswer, id: ChangeId): JustClear => answer.justClear!.find((one) => one.id === id)!;
const nearestEnd = (answer: ClearanceAnswer, id: ChangeId) => found(answer, id).ends[0];

/** A tyre and an arch, and something on the inner side, of which one or the other is a little too near. */
const requests: fc.Arbitrary<Omit<ClearanceRequest, 'motion'>> = fc
  .record({
    offset: evenly(30, 58),
    spacer: evenly(0, 5),
    out: fc.oneof(evenly(15, 60), evenly(0, 25)),
    distance: evenly(330, 400),
    clock: evenly(10.5, 1.5 + 12),
    leg: fc.oneof(evenly(-45, -8), evenly(-70, -50)),
  })
  .map(({ offset, spacer, out, distance, clock, leg }) => ({
    ...WITHOUT_MOTION,
    limits: { shaftBump: 58 },
    after: { ...EXAMPLE.after, offset, spacer },
    places: [
      aPlace({ clock: clock % 12, distance, out }),
      aPlace({ clock: 12, distance: 270, out: leg, from: 'inner' }, 'body', { is: 'chassis' }),
    ],
  }));

describe('what would just clear', { timeout: 120_000 }, () => {
  it.each(['plane', 'width', 'camber', 'bump'] as const)(
    'by %s leaves nothing when asked again with it, and turns the verdict there, whichever way it goes',
    (id) => {
      const ways: Record<string, number> = {};
      fc.assert(
        fc.property(requests, (rest) => {
          const request = { ...rest, motion: STEERED };
          const answer = ask(request);
          const clears = answer.verdict === 'clears';
          for (const { by } of found(answer, id).ends) {
            if (by === undefined) continue;
            const again = (more: number) => ask(changes[id](request, by + more, answer));
            const key = `${clears ? 'from what clears' : 'to what clears'} ${Math.sign(by)}`;
            ways[key] = (ways[key] ?? 0) + 1;
            expect(Math.abs(free(again(0)))).toBeLessThan(0.05);
            // A bit further in the way that costs room, and a bit back.
            const step = id === 'camber' ? 0.05 : id === 'bump' ? 1 : 0.2;
            const back = (clears ? -1 : 1) * Math.sign(by) * step;
            expect(again(back).verdict).toBe('clears');
            expect(again(-back).verdict).not.toBe('clears');
          }
        }),
        { seed: 53, numRuns: 32, endOnFailure: true },
      );
      const wanted =
        id === 'plane' || id === 'camber'
          ? ['from what clears 1', 'from what clears -1', 'to what clears -1']
          : ['from what clears 1', 'to what clears -1'];
      for (const way of wanted) expect(ways[way] ?? 0, `${id} ${way} in ${JSON.stringify(ways)}`).toBeGreaterThan(0);
    },
  );

  it.each([
    ['hard points', { kind: 'corner', corner: EXAMPLE_CORNER }],
    ['six measurements', { kind: 'driveway', driveway: EXAMPLE_DRIVEWAY }],
  ] as const)(
    'of a wheel that moves by %s, clears when asked again, with motion and stop in doubt',
    (_name, source) => {
      const motion = wheelMotion({ source, lock });
      const limits = { stopGap: 34, stopGapPlusMinus: 12, stopLength: 55 };
      let count = 0;
      fc.assert(
        fc.property(requests, (rest) => {
          const request: ClearanceRequest = { ...rest, limits, motion };
          const answer = ask(request);
          if (answer.verdict === 'clears') return;
          for (const { id, ends } of answer.justClear!) {
            for (const { by, size } of ends) {
              if (id !== 'plane' && id !== 'camber' && size === undefined) continue;
              const again = ask(
                size !== undefined
                  ? { ...request, after: { ...request.after, size } }
                  : changes[id as 'plane' | 'camber'](request, by!, answer),
              );
              const left = again.places.map(
                ({ decisive, margin }) => decisive.gap - decisive.plusMinus - margin - again.allowance,
              );
              expect(Math.min(...left), id).toBeGreaterThan(-0.05);
              count++;
            }
          }
        }),
        { seed: 5, numRuns: 32, endOnFailure: true },
      );
      expect(count).toBeGreaterThan(10);
    },
  );

  it('is never more than what one can buy or set', () => {
    fc.assert(
      fc.property(requests, evenly(-25, 25), (rest, nearer) => {
        const places = rest.places.map((place) =>
          'clock' in place.at ? { ...place, at: { ...place.at, distance: place.at.distance - nearer } } : place,
        );
        const answer = ask({ ...rest, places, motion: STEERED });
        const { before, after } = answer.wheels;
        for (const { id, ends } of answer.justClear!) {
          for (const { by, size } of ends) {
            if (id === 'plane') {
              const offset = after.spec.offset - (after.spec.spacer ?? 0) - by!;
              expect(by!).toBeGreaterThanOrEqual(-15 - (after.spec.spacer ?? 0));
              expect(by!).toBeLessThanOrEqual(30);
              expect(offset).toBeLessThanOrEqual(60);
              expect(offset).toBeGreaterThanOrEqual(-30);
            }
            if (id === 'camber') expect(Math.abs(by!)).toBeLessThanOrEqual(2.5);
            if (size) {
              const { fit, freeDiameter } = tyreDimensions(size, after.spec.rimWidthInch);
              expect(fit).toBe('permitted');
              expect(size).toMatch(/^\d\d5\/\d[05]R\d\d$/);
              if (id === 'diameter')
                expect(Math.abs(freeDiameter / (2 * before.freeRadius) - 1)).toBeLessThanOrEqual(0.04);
            }
            if (id === 'width' && by !== undefined) expect(after.sectionWidth + by).toBeGreaterThan(150);
          }
        }
      }),
      { seed: 52, numRuns: 25, endOnFailure: true },
    );
  });

  it('from a wheel that clears inside with 20.9 mm is looked for inboard too: more offset and more negative camber end it', () => {
    // Wheels as they are, at stock height, so that what is told is the inner place’s alone.
    const wheel = { size: '225/45R17', rimWidthInch: 7.5, offset: 33 };
    const leg = (out: number) => aPlace({ clock: 12, distance: 268, out, from: 'inner' }, 'body', { is: 'chassis' });
    const at = (out: number) =>
      ask({ ...EXAMPLE, before: wheel, after: wheel, places: [leg(out)], limits: { shaftBump: 40 }, drop: 0 });
    // Its smallest gap is 20.9 mm: set by the measure itself.
    let out = -30;
    for (let i = 0; i < 8; i++) out -= 20.9 - at(out).places[0]!.worst.gap;
    const answer = at(out);
    expect(answer.places[0]!.worst.gap).toBeCloseTo(20.9, 2);
    expect(answer.verdict).toBe('clears');
    const plane = found(answer, 'plane').ends;
    const camber = found(answer, 'camber').ends;
    // 20.9 − 5 of margin − 3 − 5: nearly eight further in, and as little as that of camber over the kingpin's height.
    expect(plane.map(({ by }) => Math.sign(by!))).toEqual([-1]);
    expect(plane[0]!.by).toBeLessThan(-7);
    expect(plane[0]!.by).toBeGreaterThan(-10);
    expect(camber.map(({ by }) => Math.sign(by!))).toEqual([-1]);
    expect(camber[0]!.by).toBeLessThan(-0.8);
  });

  it('by drop with dampers, where full bump comes with the height', () => {
    const request: ClearanceRequest = {
      ...EXAMPLE,
      motion: STRAIGHT_UP,
      lowered: 'dampers',
      limits: { stopGap: 30, stopLength: 40, stopUsable: 0.5, motionRatio: 1 },
      before: EXAMPLE.after,
      // Radius 312.75; solid at drop + 50.
      places: [aPlace({ clock: 12, distance: 400, out: -60 }, 'body', { plusMinus: 5 })],
    };
    const answer = ask(request);
    const by = nearestEnd(answer, 'drop')!.by!;
    expect(answer.verdict).toBe('close');
    // 400 − 312.75 − 50 − (10 + 3 + 5) of margin, allowance and ± leave a drop of 19.25.
    expect(request.drop + by).toBeCloseTo(400 - 312.75 - 50 - 18, 1);
    expect(Math.abs(free(ask(changes.drop(request, by, answer))))).toBeLessThan(0.05);
    expect(ask(changes.drop(request, by - 0.1, answer)).verdict).toBe('clears');
    expect(ask(changes.drop(request, by + 0.1, answer)).verdict).not.toBe('clears');
    // Not above stock height.
    const lower = { ...request, places: [aPlace({ clock: 12, distance: 375, out: -60 }, 'body', { plusMinus: 5 })] };
    expect(found(ask(lower), 'drop').ends).toEqual([]);
  });

  it('by drop says nothing with shorter springs', () => {
    expect(found(ask(EXAMPLE), 'drop')).toEqual({ id: 'drop', ends: [], isIdle: true });
    expect(found(ask({ ...EXAMPLE, lowered: 'springs' }), 'drop')).toEqual({ id: 'drop', ends: [], isIdle: true });
  });

  it('beside the bulge of an upright wheel is what is missing, reckoned by hand', () => {
    // 215/45R17 both times: the bulge goes by the point at 10 mm of travel, and 12 mm are left of it.
    const bulge = (432 / 2 + 312.75) / 2;
    const answer = ask({
      ...EXAMPLE,
      motion: STRAIGHT_UP,
      before: EXAMPLE.after,
      limits: { bumpTravel: 50 } as object,
      bumpTravel: 50,
      places: [aPlace({ clock: 12, distance: bulge + 30, out: 12 }, 'body', { plusMinus: 4 })],
      marginBodywork: 10,
      allowance: 3,
    });
    // 12 − 10 − 3 − 4: five short. A width is half on each side.
    expect(nearestEnd(answer, 'plane')!.by).toBeCloseTo(-5, 1);
    expect(nearestEnd(answer, 'width')!.by).toBeCloseTo(-10, 1);
  });

  it('over the tread by a smaller tyre and by less bump is what is missing, reckoned by hand; width and offset say nothing', () => {
    // Radius 312.75, solid at 50 mm of travel; needed are 10 + 3 + 2.
    const missing = 6;
    const request: ClearanceRequest = {
      ...EXAMPLE,
      motion: STRAIGHT_UP,
      before: EXAMPLE.after,
      limits: { stopGap: 30, stopLength: 40, stopUsable: 0.5, motionRatio: 0.9 },
      drop: 10,
      places: [aPlace({ clock: 12, distance: 312.75 + 55.5556 + 15 - missing, out: -70 }, 'body', { plusMinus: 2 })],
    };
    const answer = ask(request);
    expect(answer.budget.bump.solid!.travel).toBeCloseTo(50 / 0.9, 3);
    expect(nearestEnd(answer, 'bump')!.by).toBeCloseTo(-missing, 1);
    // On a rod that goes 0.9 of the way; the stop touches as much earlier, from 10 mm lower.
    const { left, touchLeft, packers } = nearestEnd(answer, 'bump')!.bump!;
    expect(packers).toBeCloseTo(0.9 * missing, 1);
    expect(left).toBeCloseTo(50 / 0.9 - missing - 10, 1);
    expect(touchLeft).toBeCloseTo(30 / 0.9 - missing - 10, 1);
    // 215/45R17 is 625.5 mm across, 215/40R17 604: within 4 %, and the first that gives twice 6 mm.
    expect(nearestEnd(answer, 'diameter')!.by).toBeCloseTo(-2 * missing, 1);
    expect(nearestEnd(answer, 'diameter')!.size).toBe('215/40R17');
    expect(compareWheels(EXAMPLE.after, { ...EXAMPLE.after, size: '215/40R17' }).freeDiameter).toBeCloseTo(-21.5, 9);
    for (const id of ['plane', 'camber'] as const) expect(found(answer, id).ends).toEqual([]);
    expect(nearestEnd(answer, 'width')?.by).toBeUndefined();
    // Packers of that thickness, and the verdict turns.
    const packed = (mm: number) => ask({ ...request, limits: { ...request.limits, stopGap: 30 - mm } });
    expect(packed(packers!).budget.bump.touch!.left).toBeCloseTo(touchLeft!, 6);
    expect(packed(packers! + 0.05).verdict).toBe('clears');
    expect(packed(packers! - 0.05).verdict).not.toBe('clears');
  });

  it('by less bump says nothing where the car would stand on its stop', () => {
    const at = (drop: number) =>
      ask({
        ...EXAMPLE,
        motion: STRAIGHT_UP,
        before: EXAMPLE.after,
        limits: { stopGap: 30, stopLength: 40, stopUsable: 0.5, motionRatio: 1 },
        drop,
        places: [aPlace({ clock: 12, distance: 312.75 + 50 + 15 - 8, out: -70 }, 'body', { plusMinus: 2 })],
      });
    expect(nearestEnd(at(20), 'bump')!.by).toBeCloseTo(-8, 1);
    expect(nearestEnd(at(20), 'bump')!.bump!.touchLeft).toBeCloseTo(2, 1);
    expect(found(at(25), 'bump').ends).toEqual([]);
  });

  it('a size it names clears when it is asked about, and the one before it does not', () => {
    let named = 0;
    fc.assert(
      fc.property(requests, (rest) => {
        const request = { ...rest, motion: STEERED };
        const answer = ask(request);
        const clears = answer.verdict === 'clears';
        for (const id of ['width', 'diameter'] as const) {
          const size = nearestEnd(answer, id)?.size;
          if (!size) continue;
          named++;
          expect(ask({ ...request, after: { ...request.after, size } }).verdict).toBe('clears');
          if (id !== 'width') continue;
          // 10 mm back towards what does not clear, of the same nearness in diameter.
          const [width, rest] = [Number(size.slice(0, 3)), size.slice(3)];
          const back = `${width + 10}${rest}`;
          const { fit } = tyreDimensions(back, request.after.rimWidthInch);
          if (clears && fit === 'permitted') {
            const diameter = tyreDimensions(back).freeDiameter;
            const other = [-5, 5].map((by) => back.replace(/\/(\d\d)/, (_, aspect) => `/${Number(aspect) + by}`));
            const nearer = other.filter((one) => {
              const of = tyreDimensions(one, request.after.rimWidthInch);
              const away = (mm: number) => Math.abs(mm - 2 * answer.wheels.after.freeRadius);
              return of.fit === 'permitted' && away(of.freeDiameter) < away(diameter);
            });
            const next = nearer[0] ?? back;
            expect(ask({ ...request, after: { ...request.after, size: next } }).verdict).not.toBe('clears');
          }
        }
      }),
      { seed: 53, numRuns: 30, endOnFailure: true },
    );
    expect(named).toBeGreaterThan(5);
  });

  it('is empty where nothing of the kind clears', () => {
    const inside = aPlace({ clock: 12, distance: 250, out: -100 }, 'carrier');
    for (const { ends } of ask({ ...EXAMPLE, places: [inside] }).justClear!) expect(ends).toEqual([]);
  });
});
