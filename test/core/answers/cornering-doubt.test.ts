import { describe, expect, it } from 'vitest';
import type { CorneringRequest } from '../../../core/answers/cornering-request.js';
import { cornering, corneringDoubt, tried } from '../../../core/answers/from-source.js';
import { curveOf } from '../../../core/curve/curve.js';
import type { CurveData } from '../../../core/curve/curve-data.js';
import type { AnySource } from '../../../core/curve-sources/source.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { type HardPointKey, hardPoint, type StrutCorner, withHardPoint } from '../../../core/linkage/corner.js';
import { EXAMPLE_READINGS } from '../../../core/readings/example-readings.js';
import { standardUncertainty } from '../../../core/uncertainty/combine.js';
import { missed } from '../study-limits.js';
import { corneringCoverage } from './cornering-coverage.js';

const example = { kind: 'corner', corner: EXAMPLE_CORNER } as const;
const driveway = { kind: 'driveway', driveway: EXAMPLE_DRIVEWAY } as const;
const readings = { kind: 'readings', readings: EXAMPLE_READINGS } as const;
type Asked = CorneringRequest<AnySource>;

/** Half-width of 95 % of a normal distribution (NIST/SEMATECH e-Handbook 1.3.6.7.1). */
const NORMAL = 1.959964;

describe('the doubt of both inclinations', () => {
  it.each([
    ['rolled', { drop: 25, roll: 3 }],
    ['rolled, steered, alignment set again', { drop: 25, roll: 2, steer: { angle: 7 }, camber: -1.5, toe: 0 }],
  ] as const)('of hard points: what the turn of a car does whose point is off by its ±, %s', (_, turn) => {
    const doubt = corneringDoubt({ source: example, ...turn });
    const moved = (key: HardPointKey, axis: number, mm: number): StrutCorner => {
      const point = [...hardPoint(EXAMPLE_CORNER, key)!] as [number, number, number];
      point[axis]! += mm;
      return withHardPoint(EXAMPLE_CORNER, key, point) as StrutCorner;
    };
    // One with a known ± each: 3 mm, the damper's low point 4 mm.
    for (const [key, name, axis, mm] of [
      ['strut.top', 'sideways', 1, 3],
      ['strut.low', 'sideways', 1, 4],
      ['lowerArm.ball', 'height', 2, 3],
      ['tieRod.outer', 'height', 2, 3],
    ] as const) {
      const s = doubt.sources.findIndex(({ id }) => id === `${key}.${name}`);
      const by = (0.2 * mm) / NORMAL;
      const [up, down] = [by, -by].map((one) => {
        const corner = moved(key, axis, one);
        return cornering({ source: { kind: 'corner', corner }, ...turn });
      });
      for (const side of ['outer', 'inner'] as const) {
        const expected = (up![side].inclination - down![side].inclination) / 0.4;
        expect(doubt[side][s]).toBeCloseTo(expected, 4);
      }
    }
  });

  it.each([
    ['as the links leave it', {}],
    ['set again', { camber: -1.5 }],
  ])('of a driveway, straight ahead: close to that of its curve where the wheels stand, camber %s', (_, more) => {
    const request: Asked = { source: driveway, drop: 25, roll: 3, ...more };
    const { outer } = cornering(request);
    const curve = curveOf((tried(request).source as { camber: CurveData }).camber);
    const known = 'camber' in more ? curve.changeEstimate(outer.travel, 25) : curve.estimate(outer.travel);
    const doubt = corneringDoubt(request);
    const [u, ofCurve] = [standardUncertainty({ value: 0, parts: doubt.outer }), standardUncertainty(known)];
    // Roll adds where the wheel stands, by tenths of a millimetre.
    expect(Math.abs(u - ofCurve)).toBeLessThan(0.1 * ofCurve);
    // Static camber that is set again is not in doubt.
    const s = doubt.sources.findIndex(({ id }) => id === 'camber');
    expect(doubt.outer[s]).toBeCloseTo('camber' in more ? 0 : 0.1 / NORMAL, 3);
  });

  it('of a driveway, steered: caster that is assumed shows', () => {
    const of = (steer?: Asked['steer']) => {
      const { sources, outer } = corneringDoubt({ source: driveway, drop: 0, roll: 2, ...(steer && { steer }) });
      return Math.abs(outer[sources.findIndex(({ id }) => id === 'caster')]!);
    };
    // Small angles: caster × sin(steer): ± 3.4° of it at 12° is 0.36° as a standard uncertainty.
    expect(of({ angle: 12 })).toBeCloseTo((3.4 / NORMAL) * Math.sin((12 * Math.PI) / 180), 1);
    expect(of()).toBeLessThan(0.05);
  });

  it('of readings: comes with the answer, and is that of the curve', () => {
    const request: Asked = { source: readings, halfTrack: 738, drop: 10, roll: 2 };
    const { doubt, outer, inner } = cornering(request);
    const curve = curveOf((tried(request).source as { camber: CurveData }).camber);
    expect([...doubt!.outer]).toEqual([...curve.estimate(outer.travel).parts]);
    expect([...doubt!.inner]).toEqual([...curve.estimate(inner.travel).parts]);
    expect(corneringDoubt(request)).toEqual(doubt);
    const set = cornering({ ...request, camber: -1 }).doubt!;
    expect([...set.outer]).toEqual([...curve.changeEstimate(outer.travel, 10).parts]);
  });

  it.each([
    ['hard points', example],
    ['readings', readings],
  ] as const)('roll’s own uncertainty is one more cause: %s', (_, source) => {
    const request: Asked = { source, halfTrack: 738, drop: 10, roll: 2, rollUncertainty: 0.3 };
    const { sources, outer, inner } = corneringDoubt(request);
    const { perDegreeOfRoll } = cornering(request);
    expect(sources.at(-1)).toMatchObject({ id: 'roll' });
    expect(sources).toHaveLength(outer.length);
    expect(outer.at(-1)).toBeCloseTo(0.3 * perDegreeOfRoll.outer, 12);
    expect(inner.at(-1)).toBeCloseTo(0.3 * perDegreeOfRoll.inner, 12);
  });

  // What six measurements say of random three-dimensional cars; all of it runs in the bench `cornering`.
  it.each([
    ['straight ahead', undefined, 0.97],
    ['steered by 12°, where assumed caster is most of it', 12, 1],
  ] as const)('of a driveway holds the true inclination of either wheel: %s', { timeout: 60_000 }, (_, steer, most) => {
    const cars = 45;
    const { outer, inner } = corneringCoverage({ seed: 4, cars, steer });
    const claim = (what: string, share: number) => ({ what, share, draws: cars, least: 0.93, most });
    expect(missed([claim('outer', outer), claim('inner', inner)], true)).toEqual([]);
  });

  it('of a driveway counts the track, by which wheels move in roll', () => {
    const { camber, ...rest } = EXAMPLE_DRIVEWAY;
    const of = (value: number) => {
      const track = { value, plusMinus: 30 };
      return { source: { kind: 'driveway', driveway: { ...rest, camber, track } }, drop: 0, roll: 3 } as const;
    };
    const { sources, outer, inner } = corneringDoubt(of(1476));
    const s = sources.findIndex(({ id }) => id === 'track');
    const [more, less] = [1476 + 30 / NORMAL, 1476 - 30 / NORMAL].map((value) => cornering(of(value)));
    expect(outer[s]).toBeCloseTo((more!.outer.inclination - less!.outer.inclination) / 2, 4);
    expect(inner[s]).toBeCloseTo((more!.inner.inclination - less!.inner.inclination) / 2, 4);
  });
});
