import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { StrutCorner } from '../../../core/linkage/corner.js';
import type { Linkage } from '../../../core/linkage/linkage.js';
import { type Motion, motionOf } from '../../../core/linkage/motion.js';
import { createTravelSweep, sweepTravel, sweepTravelInto, type TravelSweep } from '../../../core/linkage/sweep.js';
import { apart, type CarrierPoints, carry, cross, less, size, type Triple, tripleAt, unit } from './carrier-frame.js';
import { randomCorner, seeded } from './random-corner.js';

/** Travels over the whole reach, ends included, closer together towards the ends. */
function wholeReach({ reach }: Linkage, each = 40): Float64Array {
  const travels: number[] = [];
  for (let i = 0; i <= each; i++) travels.push(reach.droop * (1 - (i / each) ** 2));
  for (let i = each - 1; i >= 0; i--) travels.push(reach.bump * (1 - (i / each) ** 2));
  return Float64Array.from(travels);
}

const pointsOf = (motion: Motion, i: number): CarrierPoints => ({
  ball: tripleAt(motion.ball, i),
  tieOuter: tripleAt(motion.tieOuter, i),
  wheelCentre: tripleAt(motion.wheelCentre, i),
});

const outputsOf = (sweep: TravelSweep) =>
  Object.entries(sweep).filter(([name]) => name !== 'reached' && name !== 'travel') as [string, Float64Array][];

function expectSame(a: TravelSweep, b: TravelSweep, tolerance: number) {
  for (const [name, values] of outputsOf(a)) {
    const others = b[name as keyof TravelSweep];
    values.forEach((value, i) => {
      // Far centres are compared by their direction: an instant centre may be kilometres away.
      const scale = name.startsWith('instantCentre') || name === 'rollCentreHeight' ? Math.max(1, value ** 2 / 1e3) : 1;
      const same = Object.is(value, others[i]) || Math.abs(value - others[i]!) < tolerance * scale;
      expect(same, `${name} at ${a.travel[i]} mm: ${value} and ${others[i]}`).toBe(true);
    });
  }
}

describe('over random struts and their whole reach', () => {
  it('every link keeps its length to 1e-9 mm', () => {
    fc.assert(
      fc.property(randomCorner, (corner) => {
        const linkage = buildLinkage(corner);
        const motion = motionOf(linkage, wholeReach(linkage));
        const { lowerArm, tieRod } = corner;
        for (let i = 0; i < motion.travel.length; i++) {
          const { ball, tieOuter } = pointsOf(motion, i);
          expect(Math.abs(apart(ball, lowerArm.front) - apart(lowerArm.ball, lowerArm.front))).toBeLessThan(1e-9);
          expect(Math.abs(apart(ball, lowerArm.rear) - apart(lowerArm.ball, lowerArm.rear))).toBeLessThan(1e-9);
          expect(Math.abs(apart(tieOuter, tieRod.inner) - apart(tieRod.outer, tieRod.inner))).toBeLessThan(1e-9);
        }
      }),
      seeded(11, 100),
    );
  });

  it('the carrier is rigid and its damper axis passes through the top mount, to 1e-9 mm', () => {
    fc.assert(
      fc.property(randomCorner, (corner: StrutCorner) => {
        const linkage = buildLinkage(corner);
        const motion = motionOf(linkage, wholeReach(linkage));
        const { strut, lowerArm, tieRod, wheelCentre } = corner;
        const reference = { ball: lowerArm.ball, tieOuter: tieRod.outer, wheelCentre };
        const axis = unit(less(strut.top, strut.low));
        const radians = Math.PI / 180;
        const spin = unit([Math.tan(corner.toe * radians), 1, -Math.tan(corner.camber * radians)]);
        for (let i = 0; i < motion.travel.length; i++) {
          const now = pointsOf(motion, i);
          const low = tripleAt(motion.low, i);
          const moved = carry(reference, now);
          expect(apart(moved.point(wheelCentre), now.wheelCentre)).toBeLessThan(1e-9);
          expect(apart(moved.point(strut.low), low)).toBeLessThan(1e-9);
          expect(apart(moved.direction(spin), tripleAt(motion.spin, i))).toBeLessThan(1e-11);
          expect(size(cross(less(strut.top, low), moved.direction(axis)))).toBeLessThan(1e-9);
        }
      }),
      seeded(12, 100),
    );
  });

  it('the wheel centre rises by the travel that was asked for', () => {
    fc.assert(
      fc.property(randomCorner, (corner) => {
        const linkage = buildLinkage(corner);
        const travels = wholeReach(linkage);
        const motion = motionOf(linkage, travels);
        travels.forEach((travel, i) => {
          // At an end of reach one step of a double in the arm's angle moves the wheel by up to 1e-5 mm.
          const atEnd = i === 0 || i === travels.length - 1;
          const error = motion.wheelCentre[3 * i + 2]! - corner.wheelCentre[2] - travel;
          expect(Math.abs(error)).toBeLessThan(atEnd ? 1e-5 : 1e-9);
        });
      }),
      seeded(13, 100),
    );
  });

  it('zero travel is the static position: camber and toe to 1e-9 degrees', () => {
    fc.assert(
      fc.property(randomCorner, (corner) => {
        const sweep = sweepTravel(buildLinkage(corner), [0]);
        expect(Math.abs(sweep.camber[0]! - corner.camber)).toBeLessThan(1e-9);
        expect(Math.abs(sweep.toe[0]! - corner.toe)).toBeLessThan(1e-9);
        expect(Math.abs(sweep.damperLength[0]! - apart(corner.strut.top, corner.strut.low))).toBeLessThan(1e-9);
      }),
      seeded(14, 200),
    );
  });

  it('neighbouring travels have neighbouring positions, up to the ends of reach', () => {
    // Halve the travel between two positions until the wheel has turned by less than 2° between them: a jump from one assembly
    // to the other would never get smaller.
    fc.assert(
      fc.property(randomCorner, (corner) => {
        const linkage = buildLinkage(corner);
        const spinAt = (travel: number) => tripleAt(motionOf(linkage, Float64Array.of(travel)).spin, 0);
        const travels = wholeReach(linkage);
        const spins = Array.from(travels, spinAt);
        const refine = (a: number, b: number, sa: Triple, sb: Triple): void => {
          if (apart(sa, sb) < 0.035) return;
          expect(b - a, `a jump near ${a} mm`).toBeGreaterThan(1e-5);
          const middle = (a + b) / 2;
          const sm = spinAt(middle);
          refine(a, middle, sa, sm);
          refine(middle, b, sm, sb);
        };
        for (let i = 1; i < travels.length; i++) refine(travels[i - 1]!, travels[i]!, spins[i - 1]!, spins[i]!);
      }),
      seeded(15, 60),
    );
  });

  it('the order of travels does not matter, nor what was unreachable in between', () => {
    fc.assert(
      fc.property(randomCorner, fc.infiniteStream(fc.nat(1e6)), (corner, numbers) => {
        const linkage = buildLinkage(corner);
        const travels = [...wholeReach(linkage)].slice(1, -1);
        const order = travels.map((_, i) => i);
        for (let i = order.length - 1; i > 0; i--) {
          const j = (numbers.next().value as number) % (i + 1);
          [order[i], order[j]] = [order[j]!, order[i]!];
        }
        const straight = sweepTravel(linkage, travels);
        const mixed = sweepTravel(
          linkage,
          order.flatMap((i) => [linkage.reach.bump + 1 + i, travels[i]!]),
        );
        const back = createTravelSweep(travels.length);
        for (const [name, values] of Object.entries(back) as [keyof TravelSweep, Float64Array][]) {
          order.forEach((i, at) => {
            values[i] = mixed[name][2 * at + 1]!;
          });
        }
        // Next to an end of reach the angles change without bound: compare where they do not.
        const inside = (i: number) => i > 3 && i < travels.length - 4;
        const part = (sweep: TravelSweep) =>
          Object.fromEntries(Object.entries(sweep).map(([k, v]) => [k, v.filter((_: number, i: number) => inside(i))]));
        expectSame(part(straight) as unknown as TravelSweep, part(back) as unknown as TravelSweep, 1e-7);
        expect(mixed.reached.filter((_, i) => i % 2 === 0).every((reached) => reached === 0)).toBe(true);
        expect(mixed.reached.filter((_, i) => i % 2 === 1).every((reached) => reached === 1)).toBe(true);
      }),
      seeded(16, 50),
    );
  });

  it('which arm pivot is called front and which rear changes nothing', () => {
    fc.assert(
      fc.property(randomCorner, (corner) => {
        const { front, rear, ball } = corner.lowerArm;
        const linkage = buildLinkage(corner);
        const swapped = buildLinkage({ ...corner, lowerArm: { front: rear, rear: front, ball } });
        const travels = Array.from({ length: 13 }, (_, i) => -60 + 10 * i);
        expectSame(sweepTravel(linkage, travels), sweepTravel(swapped, travels), 1e-8);
        expect(swapped.reach.droop).toBeCloseTo(linkage.reach.droop, 4);
        expect(swapped.reach.bump).toBeCloseTo(linkage.reach.bump, 4);
      }),
      seeded(17, 100),
    );
  });
});

describe('a sweep', () => {
  it('out of reach says so: reached 0 and NaN in every output, and the travel as it was asked', () => {
    fc.assert(
      fc.property(randomCorner, (corner) => {
        const linkage = buildLinkage(corner);
        const { droop, bump } = linkage.reach;
        const asked = [droop - 1e-3, bump + 1e-3, droop - 500, bump + 500, Number.NaN, Infinity, -Infinity];
        const sweep = sweepTravel(linkage, asked);
        expect([...sweep.reached]).toEqual(asked.map(() => 0));
        expect([...sweep.travel]).toEqual(asked);
        for (const [name, values] of outputsOf(sweep)) {
          expect(values.every(Number.isNaN), `${name} is NaN`).toBe(true);
        }
        expect(outputsOf(sweep)).toHaveLength(15);
      }),
      seeded(18, 30),
    );
  });

  it('written over an older one leaves nothing of it', () => {
    const [corner, other] = fc.sample(randomCorner, { seed: 19, numRuns: 2 }) as [StrutCorner, StrutCorner];
    const travels = [-400, -50, 0, 50, 400];
    const out = createTravelSweep(travels.length);
    sweepTravelInto(out, buildLinkage(other), [1, 2, 3, 4, 5]);
    sweepTravelInto(out, buildLinkage(corner), travels);
    expect(out).toEqual(sweepTravel(buildLinkage(corner), travels));
  });

  it('says so when a motion is asked for beyond reach', () => {
    const [corner] = fc.sample(randomCorner, { seed: 20, numRuns: 1 }) as [StrutCorner];
    const linkage = buildLinkage(corner);
    expect(() => motionOf(linkage, Float64Array.of(0, linkage.reach.bump + 1))).toThrow(RangeError);
  });
});
