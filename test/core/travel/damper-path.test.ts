import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { motionOf } from '../../../core/linkage/motion.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import {
  constantPath,
  damperPathOf,
  motionRatioAt,
  motionRatioSlopeAt,
  pathOfLengths,
  shortenedBetween,
  travelAfter,
} from '../../../core/travel/damper-path.js';
import { independentStrutSweep } from '../../reference/independent-strut.js';

const travels = Float64Array.from({ length: 81 }, (_, i) => -80 + 2.5 * i);
const linkage = buildLinkage(EXAMPLE_CORNER);
const path = damperPathOf(motionOf(linkage, travels))!;
const travel = fc.double({ min: -80, max: 120, noNaN: true });

/** A damper between a point on the body and one on an arm that turns about a point: an invented closed form with a strong bend. */
const armDamper = (angle: number) => {
  const [foot, top] = [
    [200 * Math.cos(angle), 200 * Math.sin(angle)],
    [120, 320],
  ] as const;
  return { travel: 330 * Math.sin(angle), length: Math.hypot(foot[0] - top[0], foot[1] - top[1]) };
};
const lengthOfArmDamper = (z: number) => armDamper(Math.asin(z / 330)).length;
const armPath = pathOfLengths(travels, travels.map(lengthOfArmDamper))!;

describe('a damper path of samples 2.5 mm apart', () => {
  // The general Newton solver of test/reference/independent-strut.ts, which shares nothing with core/.
  it('follows the damper of an independently solved strut to 0.001 mm, between samples too', () => {
    const at = Array.from({ length: 67 }, (_, i) => -79 + 3 * i);
    const poses = independentStrutSweep(EXAMPLE_CORNER, [0, ...at]);
    const stands = poses.shift()!.damperLength;
    for (const { travel, damperLength } of poses)
      expect(Math.abs(shortenedBetween(path, 0, travel) - (stands - damperLength)), `${travel} mm`).toBeLessThan(1e-3);
  });

  it('has the motion ratio of the independent strut by central difference to 1e-5, and its slope to 2 %', () => {
    for (const travel of [-70, -31, 0, 18, 61.3, 110]) {
      const [a, b, c] = independentStrutSweep(EXAMPLE_CORNER, [travel - 0.5, travel, travel + 0.5]).map(
        (pose) => pose.damperLength,
      ) as [number, number, number];
      expect(Math.abs(motionRatioAt(path, travel) - (a - c))).toBeLessThan(1e-5);
      const bend = -(a - 2 * b + c) / 0.25;
      expect(Math.abs(motionRatioSlopeAt(path, travel) - bend)).toBeLessThan(0.02 * Math.abs(bend) + 2e-6);
    }
  });

  it('has the motion ratio that the linkage states exactly', () => {
    const at = Float64Array.of(-80, -12.3, 0, 44.4, 118.9, 120);
    sweepTravel(linkage, at).motionRatio.forEach((ratio, i) => {
      expect(Math.abs(motionRatioAt(path, at[i]!) - ratio)).toBeLessThan(1e-5);
    });
  });

  it('follows a damper on an arm, in closed form, to 1e-5 mm, and finds the way back', () => {
    fc.assert(
      fc.property(travel, travel, (from, to) => {
        const shortened = lengthOfArmDamper(from) - lengthOfArmDamper(to);
        expect(Math.abs(shortenedBetween(armPath, from, to) - shortened)).toBeLessThan(1e-5);
        const ends = shortenedBetween(armPath, from, to);
        expect(travelAfter(armPath, from, ends) ?? to).toBeCloseTo(to, 8);
      }),
      { endOnFailure: true },
    );
  });

  it('is the integral of its motion ratio (Simpson’s rule)', () => {
    for (const [from, to] of [
      [-80, -70],
      [-3, 40],
      [0, 120],
    ] as const) {
      const n = 2000;
      const step = (to - from) / n;
      let sum = 0;
      for (let i = 0; i <= n; i++)
        sum += (i === 0 || i === n ? 1 : i % 2 ? 4 : 2) * motionRatioAt(armPath, Math.min(from + i * step, to));
      expect(shortenedBetween(armPath, from, to)).toBeCloseTo((sum * step) / 3, 5);
    }
  });

  it('loses more than half a millimetre of 60 where one motion ratio is divided by instead', () => {
    const gap = lengthOfArmDamper(0) - lengthOfArmDamper(60);
    expect(travelAfter(armPath, 0, gap)).toBeCloseTo(60, 5);
    expect(Math.abs(gap / motionRatioAt(armPath, 0) - 60)).toBeGreaterThan(0.5);
  });
});

describe('what is not known of a damper', () => {
  it('beyond the samples there is no travel and no number', () => {
    expect(travelAfter(path, 0, 300)).toBeUndefined();
    expect(travelAfter(path, 0, -300)).toBeUndefined();
    expect(travelAfter(path, 121, 1)).toBeUndefined();
    expect(motionRatioAt(path, 121)).toBeNaN();
    expect(shortenedBetween(path, 0, -81)).toBeNaN();
  });

  it('no path without a damper, of a wishbone’s motion, or of one that lengthens in bump', () => {
    const motion = motionOf(linkage, travels);
    expect(damperPathOf({ ...motion, low: motion.low.map(() => Number.NaN) })).toBeUndefined();
    expect(damperPathOf({ ...motion, kind: 'wishbone' })).toBeUndefined();
    expect(pathOfLengths(travels, travels)).toBeUndefined();
  });

  it('a path ends where the damper would lengthen again', () => {
    const short = pathOfLengths(
      travels,
      travels.map((t) => 400 - t + (t > 50 ? 2 * (t - 50) : 0)),
    )!;
    expect(short.travel.at(-1)).toBe(50);
    expect(short.travel[0]).toBe(-80);
  });

  it('two samples that all but coincide do not spoil the slope', () => {
    const near = Float64Array.from([...travels, 120 + 1e-10]);
    const spoilt = pathOfLengths(near, near.map(lengthOfArmDamper))!;
    expect(motionRatioSlopeAt(spoilt, 119)).toBeCloseTo(motionRatioSlopeAt(armPath, 119), 8);
  });
});

it('a constant motion ratio divides', () => {
  const constant = constantPath(0.8);
  expect(travelAfter(constant, -20, 40)).toBeCloseTo(30, 9);
  expect(motionRatioAt(constant, 77)).toBeCloseTo(0.8, 12);
  expect(motionRatioSlopeAt(constant, 77)).toBeCloseTo(0, 12);
});
