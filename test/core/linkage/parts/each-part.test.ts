import { describe, expect, it } from 'vitest';
import { buildLinkage } from '../../../../core/linkage/build-linkage.js';
import {
  armLonger,
  ballJointExtended,
  ballJointMoved,
  boltAxis,
  innerPivotsRaised,
  knuckleBoltsTurned,
  type Part,
  rackRaised,
  spinAxisTurned,
  staticAngles,
  tieRodEndRaised,
  tieRodLonger,
  topMountMoved,
  wheelOffset,
  withParts,
} from '../../../../core/linkage/parts/index.js';
import { rebuilt } from '../../../../core/linkage/parts/part.js';
import { sweepTravel } from '../../../../core/linkage/sweep.js';
import { cross, dot, less, size, type Triple, times, unit } from '../carrier-frame.js';
import { referenceCorner } from '../reference-corner.js';
import { wishboneCorner } from '../wishbone-corner.js';
import { BOLT } from './kinds-of-part.js';

const strut = buildLinkage(referenceCorner);
const wishbone = buildLinkage(wishboneCorner);
const sum = (a: Triple, b: Triple): Triple => less(a, times(b, -1));

describe('signs, at ride height', () => {
  const camber = (part: Part) => staticAngles(part(strut)).camber - referenceCorner.camber;
  it('a top mount moved inboard, bolts turned inward, a longer arm and a spin axis turned all add negative camber', () => {
    expect(camber(topMountMoved({ vector: [0, -10, 0] }))).toBeLessThan(-0.5);
    expect(camber(knuckleBoltsTurned({ degrees: 1, otherBolt: BOLT }))).toBeLessThan(-0.5);
    expect(camber(armLonger({ mm: 10 }))).toBeLessThan(-0.5);
    expect(camber(spinAxisTurned({ camber: -1 }))).toBeCloseTo(-1, 9);
  });
  it('a longer upper arm of a wishbone takes negative camber away', () => {
    const longer = staticAngles(armLonger({ mm: 5, arm: 'upper' })(wishbone)).camber;
    expect(longer).toBeGreaterThan(wishboneCorner.camber + 0.5);
  });
  it('a wheel offset moves the contact outboard by as much, and camber by next to nothing', () => {
    const out = sweepTravel(wheelOffset({ mm: 15 })(strut), [0]);
    const before = sweepTravel(strut, [0]);
    expect(out.halfTrack[0]! - before.halfTrack[0]!).toBeCloseTo(15, 1);
    expect(out.scrubRadius[0]! - before.scrubRadius[0]!).toBeCloseTo(15, 1);
    expect(Math.abs(out.camber[0]! - before.camber[0]!)).toBeLessThan(0.02);
  });
});

describe('what moves, moves by what was asked', () => {
  it('pivots in front and at the rear each by their own', () => {
    const { body } = innerPivotsRaised({ front: 6, rear: -9 })(strut);
    expect(body.lowerFront).toEqual(sum(strut.body.lowerFront, [0, 0, 6]));
    expect(body.lowerRear).toEqual(sum(strut.body.lowerRear, [0, 0, -9]));
    const upper = innerPivotsRaised({ front: 6, rear: -9, arm: 'upper' })(wishbone).body;
    expect(upper.upperFront).toEqual(sum(wishbone.body.upperFront!, [0, 0, 6]));
    expect(upper.upperRear).toEqual(sum(wishbone.body.upperRear!, [0, 0, -9]));
  });
  it('rack and tie rod end upward, the top mount by its vector', () => {
    expect(rackRaised({ mm: 7 })(strut).body.tieInner).toEqual(sum(strut.body.tieInner, [0, 0, 7]));
    expect(tieRodEndRaised({ mm: 7 })(strut).carrier.tieOuter).toEqual(sum(strut.carrier.tieOuter, [0, 0, 7]));
    expect(topMountMoved({ vector: [3, -5, 7] })(strut).body.top).toEqual(sum(strut.body.top!, [3, -5, 7]));
  });
  it('arm and tie rod get longer by as much', () => {
    expect(armLonger({ mm: 7 })(strut).lengths.lowerArm.radius).toBeCloseTo(strut.lengths.lowerArm.radius + 7, 12);
    expect(tieRodLonger({ mm: 7 })(strut).lengths.tieRod).toBeCloseTo(strut.lengths.tieRod + 7, 12);
  });
  it('the wheel centre goes along the spin axis, whatever camber that has', () => {
    const leaning = buildLinkage({ ...referenceCorner, camber: -4, toe: 1 });
    const moved = less(wheelOffset({ mm: 20 })(leaning).carrier.wheelCentre, leaning.carrier.wheelCentre);
    expect(size(moved)).toBeCloseTo(20, 12);
    // Top inboard: outboard is upward too. Toe-in: and forward.
    expect(moved[2] / moved[1]).toBeCloseTo(Math.tan((4 * Math.PI) / 180), 12);
    expect(moved[0] / moved[1]).toBeCloseTo(Math.tan(Math.PI / 180), 12);
  });
});

describe('a ball joint extended', () => {
  it('stands lower by default, the upper one higher, or along the stud that is given', () => {
    expect(ballJointExtended({ mm: 20 })(strut).carrier.lowerBall).toEqual(sum(strut.carrier.lowerBall, [0, 0, -20]));
    const upper = ballJointExtended({ mm: 20, joint: 'upper' })(wishbone).carrier.upperBall;
    expect(upper).toEqual(sum(wishbone.carrier.upperBall!, [0, 0, 20]));
    const along = ballJointExtended({ mm: 20, stud: [0, -3, -4] })(strut).carrier.lowerBall;
    less(along, sum(strut.carrier.lowerBall, [0, -12, -16])).forEach((x) => {
      expect(Math.abs(x)).toBeLessThan(1e-12);
    });
  });
  it('takes the outer tie rod end along by the same vector only when asked', () => {
    const vector: Triple = [1, 2, -20];
    const { tieOuter } = strut.carrier;
    expect(ballJointMoved({ vector, correctTieRod: true })(strut).carrier.tieOuter).toEqual(sum(tieOuter, vector));
    expect(ballJointMoved({ vector })(strut).carrier.tieOuter).toBe(tieOuter);
  });
  it('keeps the vector it was made with', () => {
    const vector: [number, number, number] = [0, 0, -20];
    const part = ballJointMoved({ vector });
    vector[2] = 40;
    expect(part(strut).carrier.lowerBall).toEqual(sum(strut.carrier.lowerBall, [0, 0, -20]));
  });
});

describe('knuckle bolts turned', () => {
  const damper = strut.carrier.damperAxis!;
  /** Turned about a unit axis through the bolt: along it nothing, across it by cosine and sine. */
  const turn = (v: Triple, axis: Triple, radians: number): Triple => {
    const along = times(axis, dot(v, axis));
    const across = less(v, along);
    return sum(along, sum(times(across, Math.cos(radians)), times(cross(axis, across), Math.sin(radians))));
  };

  it.each([-2, 1, 3])(
    'by %d° are hub, ball joint and steering arm turned about the other bolt, damper kept',
    (degrees) => {
      const { carrier } = strut;
      const axis = unit(less([1, 0, 0], times(damper, damper[0])));
      const radians = (degrees * Math.PI) / 180;
      const point = (p: Triple) => sum(BOLT, turn(less(p, BOLT), axis, radians));
      const knuckleTurned = rebuilt(strut, {
        carrier: {
          ...carrier,
          lowerBall: point(carrier.lowerBall),
          tieOuter: point(carrier.tieOuter),
          wheelCentre: point(carrier.wheelCentre),
          spin: turn(carrier.spin, axis, radians),
        },
      });
      const part = knuckleBoltsTurned({ degrees, otherBolt: BOLT })(strut);
      const travels = [-50, 0, 60];
      const [one, other] = [sweepTravel(part, travels), sweepTravel(knuckleTurned, travels)];
      for (const name of ['camber', 'toe', 'caster', 'kingpin', 'scrubRadius', 'damperLength'] as const) {
        travels.forEach((_, i) => {
          expect(Math.abs(one[name][i]! - other[name][i]!), name).toBeLessThan(1e-9);
        });
      }
    },
  );

  it('a bolt’s axis is made square to the damper, and has no sense', () => {
    const axis = boltAxis(strut);
    expect(Math.abs(dot(axis, damper))).toBeLessThan(1e-15);
    expect(size(axis)).toBeCloseTo(1, 15);
    expect(size(less(axis, [1, 0, 0]))).toBeLessThan(0.06);
    expect(boltAxis(strut, [-3, 0, 0])).toEqual(axis);
    const turned = (bolt: Triple) => knuckleBoltsTurned({ degrees: 2, otherBolt: BOLT, axis: bolt })(strut).carrier;
    expect(turned([-1, 0, 0])).toEqual(turned([1, 0, 0]));
  });

  it('any point of the bolt will do', () => {
    const further = sum(BOLT, times(boltAxis(strut), 35));
    const [one, other] = [BOLT, further].map((otherBolt) => knuckleBoltsTurned({ degrees: 2, otherBolt })(strut));
    expect(size(less(one!.carrier.damperLow!, other!.carrier.damperLow!))).toBeLessThan(1e-10);
  });

  it('and back about a bolt whose axis was not given misses by no more than 0.01°', () => {
    const back = withParts(
      strut,
      knuckleBoltsTurned({ degrees: 3, otherBolt: BOLT }),
      knuckleBoltsTurned({ degrees: -3, otherBolt: BOLT }),
    );
    const missed = Math.acos(Math.min(1, dot(back.carrier.damperAxis!, damper))) * (180 / Math.PI);
    expect(missed).toBeLessThan(0.01);
  });
});
