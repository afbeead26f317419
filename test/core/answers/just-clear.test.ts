import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ClearanceAnswer, clearanceSteered } from '../../../core/answers/clearance.js';
import type { ClearanceRequest } from '../../../core/answers/clearance-request.js';
import type { ChangeId } from '../../../core/answers/just-clear.js';
import { wheelMotion } from '../../../core/answers/wheel-motion.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_FIT, EXAMPLE_LIMITS } from '../../../core/document/example-fit.js';
import { aPlace, evenly, STRAIGHT_UP } from '../wheel/gap-cases.js';
import { finished } from './finished.js';

const { lock, ...WHEELS } = EXAMPLE_FIT;
const STEERED = wheelMotion({ source: { kind: 'corner', corner: EXAMPLE_CORNER }, lock });
const EXAMPLE: ClearanceRequest = { motion: STEERED, isLeft: true, ...WHEELS, limits: EXAMPLE_LIMITS, drop: 25 };
/** A motion in a counterexample would be pages of numbers. */
const { motion: _, ...WITHOUT_MOTION } = EXAMPLE;
const ask = (request: ClearanceRequest) => finished(clearanceSteered(request));

/** The same question with one thing changed as a person would change it. */
const changes: Record<ChangeId, (request: ClearanceRequest, by: number, answer: ClearanceAnswer) => ClearanceRequest> =
  {
    // Outboard is less offset.
    plane: (r, by) => ({ ...r, after: { ...r.after, offset: r.after.offset - by } }),
    width: (r, by, { wheels }) => ({ ...r, after: { ...r.after, sectionWidth: wheels.after.sectionWidth + by } }),
    drop: (r, by) => ({ ...r, drop: r.drop + by }),
    camber: (r, by) => ({ ...r, camberBy: (r.camberBy ?? 0) + by }),
  };

/** What is left of the tightest place, mm. */
const free = ({ places, allowance }: ClearanceAnswer) =>
  Math.min(...places.map(({ worst, margin }) => worst.gap - margin - allowance - worst.plusMinus));
/** The same where the solver looks: at ride height, at solid bump and where it was worst, each at its tightest steering. */
const by = (answer: ClearanceAnswer, id: ChangeId) => answer.justClear!.find((one) => one.id === id)!;

/** A tyre and an arch of which one is a little too wide. */
const requests: fc.Arbitrary<Omit<ClearanceRequest, 'motion'>> = fc
  .record({
    offset: evenly(30, 60),
    spacer: evenly(0, 5),
    out: evenly(15, 60),
    distance: evenly(330, 400),
    clock: evenly(10.5, 1.5 + 12),
  })
  .map(({ offset, spacer, out, distance, clock }) => ({
    ...WITHOUT_MOTION,
    after: { ...EXAMPLE.after, offset, spacer },
    places: [aPlace({ clock: clock % 12, distance, out }), EXAMPLE.places[4]!],
  }));

describe('what would just clear', () => {
  it.each(['plane', 'width', 'camber'] as const)(
    'by %s leaves nothing when asked again with it, and turns the verdict there',
    (id) => {
      const found = { clears: 0, not: 0 };
      fc.assert(
        fc.property(requests, (rest) => {
          const request = { ...rest, motion: STEERED };
          const answer = ask(request);
          const change = by(answer, id).by;
          if (change === undefined) return;
          if (id === 'width' && answer.wheels.after.sectionWidth + change < 101) return;
          const again = (more: number) => ask(changes[id](request, change + more, answer));
          found[answer.verdict === 'clears' ? 'clears' : 'not']++;
          expect(Math.abs(free(again(0)))).toBeLessThan(0.05);
          // A bit further in the way that costs room, and a bit back.
          const clears = answer.verdict === 'clears';
          const step = id === 'camber' ? 0.05 : 0.2;
          const back = (clears ? -1 : Math.sign(change)) * step;
          expect(again(back).verdict).toBe('clears');
          expect(again(-back).verdict).not.toBe('clears');
        }),
        { seed: 51, numRuns: 24, endOnFailure: true },
      );
      expect(found.clears).toBeGreaterThan(0);
      expect(found.not).toBeGreaterThan(2);
    },
  );

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
    expect(answer.verdict).toBe('close');
    // 400 − 312.75 − 50 − (10 + 3 + 5) of margin, allowance and ± leave a drop of 19.25.
    expect(request.drop + by(answer, 'drop').by!).toBeCloseTo(400 - 312.75 - 50 - 18, 1);
    expect(Math.abs(free(ask(changes.drop(request, by(answer, 'drop').by!, answer))))).toBeLessThan(0.05);
    expect(ask(changes.drop(request, by(answer, 'drop').by! - 0.1, answer)).verdict).toBe('clears');
    expect(ask(changes.drop(request, by(answer, 'drop').by! + 0.1, answer)).verdict).not.toBe('clears');
  });

  it('by drop says nothing with shorter springs', () => {
    expect(by(ask(EXAMPLE), 'drop')).toEqual({ id: 'drop', isIdle: true });
    expect(by(ask({ ...EXAMPLE, lowered: 'springs' }), 'drop')).toEqual({ id: 'drop', isIdle: true });
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
    expect(by(answer, 'plane').by).toBeCloseTo(-5, 1);
    expect(by(answer, 'width').by).toBeCloseTo(-10, 1);
  });

  it('is undefined where nothing of the kind clears', () => {
    const inside = aPlace({ clock: 12, distance: 250, out: -100 }, 'carrier');
    const answer = ask({ ...EXAMPLE, places: [inside] });
    for (const id of ['width', 'camber'] as const) expect(by(answer, id).by).toBeUndefined();
  });
});
