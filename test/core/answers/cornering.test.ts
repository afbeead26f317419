import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ackermannAngles } from '../../../core/answers/ackermann.js';
import type { CorneringRequest } from '../../../core/answers/cornering-request.js';
import { cornering } from '../../../core/answers/from-source.js';
import type { AnySource } from '../../../core/curve-sources/source.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { Corner, StrutCorner, Vector3, WishboneCorner } from '../../../core/linkage/corner.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import planar from '../../reference/derived_strut_planar.json' with { type: 'json' };
import {
  type IndependentAxle,
  independentAxle,
  independentCamberSet,
  independentCornerAt,
  independentTurn,
} from '../../reference/independent-axle.js';
import { withLoweredJoint } from '../../reference/independent-joint.js';
import { rowsOf } from '../../reference/rows.js';
import { steeredInclination } from '../../reference/steered-camber.js';
import { randomCorner, seeded } from '../linkage/random-corner.js';
import { wishboneCorner } from '../linkage/wishbone-corner.js';

const cornerSource = (corner: Corner) => ({ kind: 'corner', corner }) as const;
const example = cornerSource(EXAMPLE_CORNER);
const JOINT = { part: 'ballJointExtended', mm: 22, correctTieRod: true } as const;
const withJoint: AnySource = { kind: 'parts', of: example, parts: [JOINT] };
const ask = (more: Partial<CorneringRequest<AnySource>> = {}) =>
  cornering({ source: example, drop: 0, roll: 3, ...more });

/** The answer of a left turn against both wheels solved independently in one rolled frame. */
function expectAlike(answer: ReturnType<typeof ask>, expected: IndependentAxle): void {
  const { outer, inner } = answer;
  expect(outer.travel).toBeCloseTo(expected.travelRight, 5);
  expect(inner.travel).toBeCloseTo(expected.travelLeft, 5);
  expect(outer.inclination).toBeCloseTo(expected.inclinationRight, 6);
  expect(inner.inclination).toBeCloseTo(expected.inclinationLeft, 6);
  expect(outer.camber).toBeCloseTo(expected.camberRight, 6);
  expect(inner.camber).toBeCloseTo(expected.camberLeft, 6);
  expect(outer.steer).toBeCloseTo(expected.steerRight, 6);
  expect(inner.steer).toBeCloseTo(expected.steerLeft, 6);
}

describe('the invented car at 3° of suspension roll, steering straight, without net heave', () => {
  const joint = withLoweredJoint(EXAMPLE_CORNER, { mm: 22, isTieRodCorrected: true });

  // The independent solver's own figures; to 0.01° those of a calculation made for the task, which are given first.
  it.each([
    ['stock height', 1.93, example, 0, EXAMPLE_CORNER],
    ['25 mm lower', 1.83, example, 25, EXAMPLE_CORNER],
    ['25 mm lower with a 22 mm lower joint, rod corrected', 1.62, withJoint, 25, joint],
  ] as const)('%s: the outer wheel leans %d° against the road', (_, figure, source, drop, corner) => {
    const answer = ask({ source, drop });
    expect(Math.abs(answer.outer.inclination - figure)).toBeLessThan(0.01);
    expectAlike(answer, independentAxle(corner, drop, 3, 0));
  });

  // There camber was set again on the knuckle, which shifts the curve: the inclination less what height made of static camber.
  it.each([
    ['stock height', 1.93, example, 0],
    ['25 mm lower', 2.18, example, 25],
    ['with the joint', 1.94, withJoint, 25],
  ] as const)('%s, static camber set again on the knuckle: %d°', (_, figure, source, drop) => {
    const { inclination, bars } = ask({ source, drop }).outer;
    expect(Math.abs(inclination + (-0.6 - bars.static) - figure)).toBeLessThan(0.006);
  });

  it.each([
    ['25 mm lower', example, EXAMPLE_CORNER],
    ['with the joint', withJoint, joint],
  ] as const)('%s, static camber set again at the top mount, which moves its curve too', (_, source, corner) => {
    const answer = ask({ source, drop: 25, camber: -0.6 });
    expect(answer.outer.bars.static).toBeCloseTo(-0.6, 9);
    expectTravelFrom(25, answer, independentAxle(independentCamberSet(independentCornerAt(corner, 25), -0.6), 0, 3, 0));
  });
});

/** As `expectAlike`, of a corner that calls the drop its own travel 0. */
const expectTravelFrom = (drop: number, answer: ReturnType<typeof ask>, expected: IndependentAxle): void =>
  expectAlike(answer, {
    ...expected,
    travelLeft: expected.travelLeft + drop,
    travelRight: expected.travelRight + drop,
  });

describe('in a turn', () => {
  it('a steered and rolled axle agrees with both wheels solved independently, over random struts', () => {
    const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(randomCorner, between(-15, 20), between(0, 2.5), between(0, 15), (corner, drop, roll, angle) => {
        const answer = cornering({ source: cornerSource(corner), drop, roll, steer: { angle } });
        expectAlike(answer, independentTurn(corner, drop, roll, angle));
      }),
      seeded(19, 20),
    );
  });

  it('a radius asks for the mean of what Ackermann asks of the wheels, by the steering axes’ own track', () => {
    const { outer, inner, ackermann, rack } = ask({ drop: 25, steer: { radius: 9, wheelbase: 2.5 } });
    expect((outer.steer + inner.steer) / 2).toBeCloseTo((ackermann!.outer + ackermann!.inner) / 2, 7);
    expect(rack).toBeGreaterThan(0);
    // Identity of the geometry: cot(outer) − cot(inner) = t/L (ackermann.csv), t here from the solved steering axis.
    const cot = (degrees: number) => 1 / Math.tan((degrees * Math.PI) / 180);
    const pivots = (cot(ackermann!.outer) - cot(ackermann!.inner)) * 2500;
    const { ball, wheelCentre } = { ball: EXAMPLE_CORNER.lowerArm.ball, wheelCentre: EXAMPLE_CORNER.wheelCentre };
    expect(pivots).toBeGreaterThan(2 * ball[1]);
    expect(pivots).toBeLessThan(2 * wheelCentre[1]);
    // The same rack, asked for by itself, is the same turn.
    expect(ask({ drop: 25, steer: { rack } }).outer.inclination).toBeCloseTo(outer.inclination, 7);
  });

  it.each(rowsOf('ackermann.csv'))('Ackermann angles of ackermann.csv: $wheelbase m, R $R_rear_centre m', (row) => {
    const { outer, inner } = ackermannAngles(
      { radius: row.R_rear_centre!, wheelbase: row.wheelbase! },
      1000 * row.track!,
    );
    expect(outer).toBeCloseTo(row.outer_deg!, 8);
    expect(inner).toBeCloseTo(row.inner_deg!, 8);
  });

  it('steering leans the wheels by caster and kingpin inclination, by the angle on the ground', () => {
    for (const row of rowsOf('caster_kpi_camber.csv')) {
      const angles = { caster: row.caster!, kingpin: row.kpi!, camber: row.static_camber! };
      for (const side of ['left', 'right'] as const) {
        const change = steeredInclination(angles, row.steer!, side) - row.static_camber!;
        expect(change).toBeCloseTo(row[`${side}_change_groundsteer`]!, 8);
      }
      // Of a wheel whose centre lies on its steering axis the links only turn it about that. Where that stands at its travel, they say; toe has
      // changed there by some hundredths of a degree, which the closed form leaves out.
      const corner = onAxis(angles);
      const answer = cornering({ source: cornerSource(corner), drop: 0, roll: 0, steer: { angle: 12 } });
      for (const [which, side] of [
        ['outer', 'right'],
        ['inner', 'left'],
      ] as const) {
        const { bars, travel, steer } = answer[which];
        const axis = sweepTravel(buildLinkage(corner), [travel]);
        const there = { caster: axis.caster[0]!, kingpin: axis.kingpin[0]!, camber: bars.static + bars.travel };
        const expected = steeredInclination(there, steer, side);
        expect(Math.abs(bars.static + bars.travel + bars.steer - expected)).toBeLessThan(5e-4);
      }
    }
  });

  it('the bars add up to the inclination, tyres with it, and leave little over', () => {
    const request = { drop: 25, tyreRoll: 0.6, camber: -1.2, toe: 0.1, steer: { angle: 8 } };
    const { outer, inner, roll } = ask(request);
    expect(roll).toBe(3.6);
    for (const { bars, inclination } of [outer, inner]) {
      const { static: standing, travel, steer, roll, tyre, rest } = bars;
      expect(standing + travel + steer + roll + tyre + rest).toBeCloseTo(inclination, 12);
      // A wheel that points 8° aside takes cos 8° of the roll.
      expect(Math.abs(rest)).toBeLessThan(0.06);
    }
    expect([outer.bars.roll, inner.bars.roll, outer.bars.tyre, inner.bars.tyre]).toEqual([3, -3, 0.6, -0.6]);
    // Tyres tilt both wheels, and move nothing to the body.
    const stiff = ask({ ...request, tyreRoll: 0 });
    expect(stiff.outer.camber).toBe(outer.camber);
    expect(outer.inclination - stiff.outer.inclination).toBeCloseTo(0.6 * Math.cos((8 * Math.PI) / 180), 2);
  });

  it('a degree of roll is what two turns a little apart differ by', () => {
    const request = { drop: 20, steer: { rack: 12 } };
    const [less, here, more] = [2.9, 3, 3.1].map((roll) => ask({ ...request, roll }));
    expect(here!.perDegreeOfRoll.outer).toBeCloseTo(5 * (more!.outer.inclination - less!.outer.inclination), 4);
    expect(here!.perDegreeOfRoll.inner).toBeCloseTo(5 * (more!.inner.inclination - less!.inner.inclination), 4);
  });

  it('a car measured where it stands now is the same car', () => {
    const low = independentCornerAt(EXAMPLE_CORNER, 25) as typeof EXAMPLE_CORNER;
    const there = ask({
      source: cornerSource({ ...low, kind: 'strut' }),
      drop: 40,
      measuredAt: 25,
      steer: { angle: 5 },
    });
    const stock = ask({ drop: 40, steer: { angle: 5 } });
    expect(there.outer.inclination).toBeCloseTo(stock.outer.inclination, 5);
    expect(there.inner.travel).toBeCloseTo(stock.inner.travel, 4);
    expect(there.limits.outer.bump).toBeCloseTo(stock.limits.outer.bump, 2);
  });
});

/** A strut whose wheel centre and damper lie on its steering axis. */
function onAxis({ caster, kingpin, camber }: { caster: number; kingpin: number; camber: number }): StrutCorner {
  const [back, inboard] = [caster, kingpin].map((angle) => Math.tan((angle * Math.PI) / 180));
  const along = (up: number): Vector3 => [-up * back!, 740 - up * inboard!, 300 + up];
  const ball = along(-110);
  return {
    kind: 'strut',
    wheelCentre: along(0),
    loadedRadius: 300,
    camber,
    toe: 0,
    lowerArm: { front: [ball[0] + 130, 360, 190], rear: [ball[0] - 130, 360, 190], ball },
    strut: { top: along(520), low: along(100) },
    tieRod: { inner: [ball[0] - 130, 350, 235], outer: [ball[0] - 130, ball[1] - 15, 240] },
  };
}

describe('closed forms', () => {
  it('equal parallel arms: both wheels take over the whole roll', () => {
    const parallel: WishboneCorner = {
      ...wishboneCorner,
      camber: -1,
      toe: 0,
      lowerArm: { front: [150, 400, 200], rear: [-150, 400, 200], ball: [0, 700, 200] },
      upperArm: { front: [120, 390, 420], rear: [-120, 390, 420], ball: [0, 690, 420] },
      tieRod: { inner: [-140, 395, 260], outer: [-140, 695, 260] },
    };
    for (const roll of [0, 1, 4.5]) {
      const { outer, inner, perDegreeOfRoll } = ask({ source: cornerSource(parallel), roll });
      expect(outer.inclination).toBeCloseTo(-1 + roll, 9);
      expect(inner.inclination).toBeCloseTo(-1 - roll, 9);
      expect(perDegreeOfRoll.outer).toBeCloseTo(1, 6);
      expect(perDegreeOfRoll.inner).toBeCloseTo(-1, 6);
    }
  });

  // Derived, both sides of the plane strut of derived_strut_planar.json in one rolled frame; see the file's own first line.
  it.each(rowsOf('roll_camber_planar_strut_exact.csv'))('plane strut, ± $travel_mm mm', (row) => {
    const at = ([y, z]: number[], x: number): Vector3 => [x, y!, z!];
    const { arm_inner, ball_joint, strut_top, wheel_centre } = planar.points_yz_mm;
    const [arm, ball, top, wheel] = [arm_inner, ball_joint, strut_top, wheel_centre];
    const corner: StrutCorner = {
      kind: 'strut',
      wheelCentre: at(wheel, 0),
      loadedRadius: 310,
      camber: 0,
      toe: 0,
      lowerArm: { front: at(arm, 150), rear: at(arm, -150), ball: at(ball, 0) },
      strut: { top: at(top, 0), low: at([(ball[0]! * 2 + top[0]!) / 3, (ball[1]! * 2 + top[1]!) / 3], 0) },
      tieRod: { inner: at(arm, -130), outer: at(ball, -130) },
    };
    const { outer, inner } = ask({ source: cornerSource(corner), roll: row.roll_deg! });
    expect(outer.inclination).toBeCloseTo(row.outer_inclination!, 6);
    expect(inner.inclination).toBeCloseTo(row.inner_inclination!, 6);
    expect(outer.camber).toBeCloseTo(row.outer_camber_to_body!, 6);
    expect(inner.camber).toBeCloseTo(row.inner_camber_to_body!, 6);
    expect(outer.travel).toBeCloseTo(row.travel_mm!, 4);
  });

  // First order, derived: static + roll (1 − (track/2)/FVSA). A straight curve of camber, −1/FVSA a mm, is that arm in front view.
  it.each(rowsOf('roll_camber_cases.csv'))('a curve alone: track $track_mm mm, swing arm $FVSA_mm mm', (row) => {
    const slope = -180 / Math.PI / row.FVSA_mm!;
    const { outer, inner, perDegreeOfRoll } = ask({
      source: { kind: 'coefficients', coefficients: [row.static_camber_deg!, slope], domain: [-100, 100] },
      halfTrack: row.track_mm! / 2,
      roll: row.roll_deg!,
    });
    // tan(roll) for roll: 1.6e-3 of it at 4°.
    const curved = 2e-3 * row.roll_deg! * Math.abs(1 - row.roll_camber_coefficient!) + 1e-9;
    expect(Math.abs(outer.inclination - row.outer_inclination_deg!)).toBeLessThan(curved);
    expect(Math.abs(inner.inclination - row.inner_inclination_deg!)).toBeLessThan(curved);
    const none = ask({
      source: { kind: 'coefficients', coefficients: [row.static_camber_deg!, slope], domain: [-100, 100] },
      halfTrack: row.track_mm! / 2,
      roll: 0,
    });
    expect(none.perDegreeOfRoll.outer).toBeCloseTo(row.roll_camber_coefficient!, 8);
    expect(perDegreeOfRoll.inner).toBeCloseTo(-perDegreeOfRoll.outer, 12);
  });
});
