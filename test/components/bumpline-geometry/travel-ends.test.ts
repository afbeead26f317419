import { describe, expect, it } from 'vitest';
import type { WorkbenchAnswer } from '../../../components/bumpline-geometry/geometry-view.js';
import { travelEnds } from '../../../components/bumpline-geometry/travel-ends.js';
import { charts } from '../../../components/bumpline-geometry/views.js';
import { geometry } from '../../../core/answers/from-source.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { give } from '../../../core/document/provenance.js';
import type { StrutCorner } from '../../../core/linkage/corner.js';
import { independentStrutSweep } from '../../reference/independent-strut.js';

const display = { units: { length: 'mm', angle: 'degrees' }, language: 'en' } as const;

const answerOf = (corner: StrutCorner, drop = 25): WorkbenchAnswer => ({
  drop,
  over: 40,
  bare: { curves: geometry({ source: { kind: 'corner', corner } }) },
  sets: [],
  shown: 0,
});
const example = answerOf(EXAMPLE_CORNER);
const withTravel = (bumpTravel: number): CarDocument => give(EMPTY_CAR, 'bumpTravel', 'user', () => ({ bumpTravel }));
const withFit = (fit: Pick<CarDocument, 'stopGap' | 'limits'>): CarDocument =>
  give(EMPTY_CAR, 'fit', 'user', () => fit);

const drawn = (answer: WorkbenchAnswer, car: CarDocument) =>
  charts(answer, display, travelEnds(answer, car)).map(({ model }) => model);

describe('where travel ends, in the charts', () => {
  it('is hatched in all of them from bump travel as measured on, and said', () => {
    for (const { regions, description } of drawn(example, withTravel(62))) {
      expect(regions).toEqual([{ from: 62, to: Number.POSITIVE_INFINITY, label: 'full bump', kind: 'limit' }]);
      expect(description).toMatch(/Hatched: beyond 62\smm of bump, where bump travel as measured ends it\.$/);
    }
  });

  it('is no hatching where nobody said anything, nor where it lies beyond what is drawn', () => {
    for (const car of [EMPTY_CAR, withTravel(140)]) {
      const [{ regions, description, x }] = drawn(example, car) as [ReturnType<typeof drawn>[0]];
      expect(regions).toEqual([]);
      expect(description).not.toContain('Hatched');
      expect(x.domain).toEqual([-60, 100]);
    }
  });

  it('moves on with the drop of a car lowered on its dampers, and stays for one on shorter springs', () => {
    const ends = (lowered: 'dampers' | 'springs') => travelEnds(example, { ...withTravel(50), lowered }).bump?.travel;
    expect(ends('springs')).toBe(50);
    expect(ends('dampers')).toBe(75);
  });

  it('of a bump stop is where the second solver has the damper as much shorter as the gap and the stop’s share say', () => {
    const { bump, droop } = travelEnds(
      example,
      withFit({ stopGap: 20, limits: { stopLength: 40, stopUsable: 0.5, strokeDroop: 45 } }),
    );
    expect(bump!.governedBy).toBe('stop');
    const [here, up, down] = independentStrutSweep(EXAMPLE_CORNER, [0, bump!.travel, droop!.travel]).map(
      ({ damperLength }) => damperLength,
    );
    expect(here! - up!).toBeCloseTo(20 + 0.5 * 40, 3);
    expect(down! - here!).toBeCloseTo(45, 3);
  });

  it('is where the second solver finds no position any more, for links that end before', () => {
    const { lowerArm, tieRod } = EXAMPLE_CORNER;
    const corner: StrutCorner = {
      ...EXAMPLE_CORNER,
      lowerArm: { ...lowerArm, front: [24, 610, 193], rear: [-268, 612, 198] },
      tieRod: { ...tieRod, inner: [-124, 580, 256] },
    };
    const answer = answerOf(corner);
    const { bump } = travelEnds(answer, EMPTY_CAR);
    expect(bump!.governedBy).toBe('linkage');
    expect(bump!.travel).toBeLessThan(100);
    const reaches = (travel: number) => Number.isFinite(independentStrutSweep(corner, [travel])[0]!.camber);
    expect(reaches(bump!.travel - 0.5)).toBe(true);
    expect(reaches(bump!.travel + 0.5)).toBe(false);
    const [{ regions, x }] = drawn(answer, EMPTY_CAR) as [ReturnType<typeof drawn>[0]];
    expect(regions[0]).toMatchObject({ from: bump!.travel, label: 'the links end' });
    expect(x.domain[1], 'a little beyond it is drawn').toBeGreaterThan(bump!.travel + 2);
  });

  it('is that of the links alone where a limit along the damper has no damper to lie along', () => {
    const { motion, ...curves } = example.bare.curves;
    const bare = { curves: { ...curves, motion: { ...motion, kind: 'wishbone' as const } } };
    const { bump } = travelEnds({ ...example, bare }, withFit({ stopGap: 20 }));
    expect(bump!.governedBy).toBe('linkage');
  });
});
