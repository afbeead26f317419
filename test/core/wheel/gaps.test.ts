import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Envelope, gapTo, Poses } from '../../../core/wheel/gaps.js';
import { placed } from '../../../core/wheel/placed.js';
import { tyreSection } from '../../../core/wheel/tyre-section.js';
import { independentGap } from '../../reference/independent-tyre-section.js';
import { aPlace, clockPositions, evenly, SHAPE, STEERED, STRAIGHT_UP, shapes } from './gap-cases.js';

const ENVELOPE: Envelope = { section: tyreSection(SHAPE), shift: 0 };
const moved = (shift: number): Envelope => ({ ...ENVELOPE, shift });
const seeded = (seed: number, numRuns = 200) => ({ seed, numRuns, endOnFailure: true });
const travels = evenly(-60, 90);
const [RIGHT, LEFT] = [STEERED.toe[0]!, STEERED.toe.at(-1)!];
const steers = evenly(Math.min(RIGHT, LEFT), Math.max(RIGHT, LEFT));

describe('the gap in space', () => {
  it('is that of an independent search, at any travel and rack and with camber added', () => {
    fc.assert(
      fc.property(
        travels,
        steers,
        evenly(-4, 2),
        evenly(-40, 40),
        fc.tuple(evenly(-380, 380), evenly(-200, 200), evenly(-300, 450)),
        (t, j, camberBy, shift, point) => {
          const { centre, spin } = new Poses(STEERED, camberBy).at(t, j);
          if (Number.isNaN(centre[0])) return;
          const middle = centre.map((x, i) => x + shift * spin[i]!) as [number, number, number];
          const expected = independentGap({ centre: middle, spin, shape: SHAPE })(point);
          expect(Math.abs(gapTo(moved(shift), { centre, spin }, point) - expected)).toBeLessThan(0.05);
        },
      ),
      seeded(21, 150),
    );
  });

  it('on the outboard half never falls as the wheel is moved inboard', () => {
    fc.assert(
      fc.property(
        shapes,
        travels,
        evenly(0, 250),
        evenly(0, 450),
        evenly(0, 6.3),
        evenly(0, 50),
        (shape, t, u, r, angle, by) => {
          const section = tyreSection(shape);
          const poses = new Poses(STEERED);
          const { centre, spin } = poses.at(t);
          const point = outboardOf(centre, spin, u, r, angle);
          const gap = (shift: number) => gapTo({ section, shift }, { centre, spin }, point);
          expect(gap(-by)).toBeGreaterThanOrEqual(gap(0) - 1e-9);
          expect(gap(-2 * by)).toBeGreaterThanOrEqual(gap(-by) - 1e-9);
        },
      ),
      seeded(22, 500),
    );
  });

  it('beside the outer bulge of an upright wheel is less by what a spacer adds', () => {
    const poses = new Poses(STRAIGHT_UP);
    const { bulge } = ENVELOPE.section;
    fc.assert(
      fc.property(evenly(-60, 100), evenly(0, 6.3), evenly(30, 80), evenly(0, 29), (t, angle, out, spacer) => {
        const point = [bulge.r * Math.sin(angle), bulge.u + out, t + bulge.r * Math.cos(angle)] as const;
        expect(gapTo(ENVELOPE, poses.at(t), point)).toBeCloseTo(out, 9);
        expect(gapTo(moved(spacer), poses.at(t), point)).toBeCloseTo(out - spacer, 9);
      }),
      seeded(23),
    );
  });
});

/** A point so far along the axis, so far away from it, at some angle about it. */
function outboardOf(centre: readonly number[], spin: readonly number[], u: number, r: number, angle: number) {
  // Gram and Schmidt on the car's own axes.
  const up = [0, 0, 1].map((x, i) => x - spin[2]! * spin[i]!);
  const size = Math.hypot(...up);
  const e = up.map((x) => x / size);
  const f = [0, 1, 2].map((i) => spin[(i + 1) % 3]! * e[(i + 2) % 3]! - spin[(i + 2) % 3]! * e[(i + 1) % 3]!);
  const at = (i: number) => centre[i]! + u * spin[i]! + r * (Math.cos(angle) * e[i]! + Math.sin(angle) * f[i]!);
  return [at(0), at(1), at(2)] as const;
}

it('a camber change is just that at every travel straight ahead, leaned about the lower ball joint', () => {
  const as = new Poses(STEERED);
  const camberOf = ({ spin }: { spin: readonly number[] }) => (Math.atan2(-spin[2]!, spin[1]!) * 180) / Math.PI;
  for (const by of [-2, -0.3, 1]) {
    const leaned = new Poses(STEERED, by);
    for (const t of [-40, 0, 37.3]) {
      expect(camberOf(leaned.at(t)) - camberOf(as.at(t))).toBeCloseTo(by, 9);
      const [ball, ...centres] = [as.joint('ball', t)!, as.at(t).centre, leaned.at(t).centre];
      const [before, after] = centres.map((centre) => Math.hypot(...centre.map((x, i) => x - ball[i]!)));
      expect(after).toBeCloseTo(before!, 9);
      // The wheel's centre stands over the joint: negative camber takes it inboard.
      expect(Math.sign(centres[1]![1]! - centres[0]![1]!)).toBe(Math.sign(by));
    }
  }
});

describe('a place', () => {
  const poses = new Poses(STEERED);

  it('on the carrier keeps its gap over travel, rack and camber to 1e-9', () => {
    fc.assert(
      fc.property(clockPositions, evenly(-30, 50), travels, steers, evenly(-4, 2), (at, measuredAt, t, j, camberBy) => {
        const one = placed(aPlace(at, 'carrier'), ENVELOPE, poses, measuredAt, true);
        const home = gapTo(ENVELOPE, poses.at(measuredAt), one.measured);
        const now = new Poses(STEERED, camberBy);
        if (Number.isNaN(now.at(t, j).centre[0])) return;
        expect(Math.abs(gapTo(ENVELOPE, now.at(t, j), one.at(now, t, j)) - home)).toBeLessThan(1e-9);
      }),
      seeded(24),
    );
  });

  it('on the body has the gap that was measured, at the travel at which it was measured', () => {
    const { bulge } = ENVELOPE.section;
    fc.assert(
      fc.property(
        evenly(-40, 60),
        evenly(0, 12),
        evenly(2, 80),
        fc.boolean(),
        fc.boolean(),
        (d, clock, out, isLeft, isInner) => {
          const upright = new Poses(STRAIGHT_UP);
          const at = {
            clock,
            distance: bulge.r,
            out: isInner ? -out : out,
            from: isInner ? 'inner' : 'outer',
          } as const;
          const one = placed(aPlace(at), ENVELOPE, upright, d, isLeft);
          expect(gapTo(ENVELOPE, upright.at(d), one.at(upright, d))).toBeCloseTo(out, 9);
          // It stays: the wheel moves away from under it.
          expect(one.at(upright, d + 20)).toEqual(one.measured);
        },
      ),
      seeded(25),
    );
  });

  it('is measured from the sidewall of a leaned wheel by plumb line, where that is at that clock position', () => {
    // A wheel with 3 degrees of negative camber, at 12 o'clock: the bulge's top is so far in, and the place so far beside it.
    const leaned = new Poses(
      // One travel after the other with the same camber.
      {
        ...STRAIGHT_UP,
        spin: STRAIGHT_UP.spin.map((_, i) => [0, Math.cos(Math.PI / 60), Math.sin(Math.PI / 60)][i % 3]!),
      },
    );
    const one = placed(aPlace({ clock: 12, distance: 268, out: 30 }), ENVELOPE, leaned, 0, true);
    const sine = Math.sin(Math.PI / 60);
    const cosine = Math.cos(Math.PI / 60);
    expect(one.measured[0]).toBeCloseTo(0, 9);
    expect(one.measured[1]).toBeCloseTo(112.5 * cosine - 268 * sine + 30, 9);
    expect(one.measured[2]).toBeCloseTo(268, 9);
  });

  it('at the clock position mirrored on the other side of the car is the same place', () => {
    fc.assert(
      fc.property(clockPositions, travels, steers, (at, t, j) => {
        const left = placed(aPlace(at), ENVELOPE, poses, 0, true);
        const right = placed(aPlace({ ...at, clock: 12 - at.clock }), ENVELOPE, poses, 0, false);
        for (let i = 0; i < 3; i++) expect(right.measured[i]).toBeCloseTo(left.measured[i]!, 9);
        expect(right.at(poses, t, j)).toEqual(right.measured);
      }),
      seeded(26),
    );
    // Forward on a left wheel is at 9, as seen from outside.
    const nine = placed(aPlace({ clock: 9, distance: 300, out: 0 }), ENVELOPE, poses, 0, true);
    expect(nine.measured[0]).toBeCloseTo(300, 6);
    const three = placed(aPlace({ clock: 9, distance: 300, out: 0 }), ENVELOPE, poses, 0, false);
    expect(three.measured[0]).toBeCloseTo(-300, 6);
  });

  it('between body and carrier goes its share of the way, and all or nothing at the ends', () => {
    const at = { clock: 1, distance: 200, out: -150 };
    const where = (share: number) =>
      placed(aPlace(at, 'between', { share }), ENVELOPE, poses, 0, true).at(poses, 40, -20);
    const carried = placed(aPlace(at, 'carrier'), ENVELOPE, poses, 0, true).at(poses, 40, -20);
    const stays = placed(aPlace(at), ENVELOPE, poses, 0, true).measured;
    for (let i = 0; i < 3; i++) {
      expect(where(1)[i]).toBeCloseTo(carried[i]!, 9);
      expect(where(0)[i]).toBeCloseTo(stays[i]!, 9);
      expect(where(0.3)[i]).toBeCloseTo(0.7 * stays[i]! + 0.3 * carried[i]!, 9);
    }
    expect(Math.hypot(...carried.map((x, i) => x - stays[i]!))).toBeGreaterThan(20);
  });

  it("on a tie rod or arm goes with its ends: with the outer joint there, with the rack or not at all at the inner's", () => {
    const { joints, rack, toe } = STEERED;
    const home = 3 * (STEERED.travel.indexOf(0) * rack.length + rack.indexOf(0));
    const outer = (of: Float64Array) => [of[home]!, of[home + 1]!, of[home + 2]!] as [number, number, number];
    for (const j of [0, rack.indexOf(0), 20]) {
      const steer = toe[j]!;
      const rod = (point: readonly [number, number, number]) =>
        placed(aPlace({ point }, 'tieRod'), ENVELOPE, poses, 0, true).at(poses, 35, steer);
      const arm = (point: readonly [number, number, number]) =>
        placed(aPlace({ point }, 'lowerArm'), ENVELOPE, poses, 0, true).at(poses, 35, steer);
      const expectNear = (found: readonly number[], expected: readonly number[]) =>
        found.forEach((x, i) => {
          expect(x).toBeCloseTo(expected[i]!, 9);
        });
      expectNear(rod(outer(joints!.tieOuter)), poses.joint('tieOuter', 35, steer)!);
      expectNear(arm(outer(joints!.ball)), poses.joint('ball', 35, steer)!);
      const [x, y, z] = joints!.tieInner;
      expectNear(rod(joints!.tieInner), [x, y + rack[j]!, z]);
      expectNear(arm(joints!.armPivot), joints!.armPivot);
    }
  });
});
