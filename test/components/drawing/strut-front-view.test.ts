import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Item, Point } from '../../../components/drawing/items.js';
import { above, hull, limb } from '../../../components/drawing/outline.js';
import { instantCentreText, strutFrontView } from '../../../components/drawing/strut-front-view.js';
import { allBalloons, exampleDrawing } from './example-drawing.js';
import { exampleStrut, poseAt } from './planar-strut.js';

const only = <K extends Item['kind']>(items: readonly Item[], kind: K) =>
  items.filter((item): item is Extract<Item, { kind: K }> => item.kind === kind);

describe('the front view of a strut', () => {
  it('states how far the instant centre is from the wheel centre, and on which side', () => {
    const pose = poseAt(exampleStrut, 0);
    const text = (across: number) => instantCentreText({ ...pose, instantCentre: [pose.wheelCentre[0] + across, 300] });
    expect(text(-3500)).toBe('← instant centre 3.5 m inboard');
    expect(text(2140)).toBe('instant centre 2.1 m outboard →');
    expect(text(-9940)).toBe('← instant centre 9.9 m inboard');
    expect(text(-9960)).toBe('← instant centre 10 m inboard');
    expect(text(71_700)).toBe('instant centre 72 m outboard →');
    for (const far of [1e9, -1e9, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NaN]) {
      expect(text(far)).toBe('instant centre: none, lines parallel');
    }
    expect(instantCentreText({ ...pose, instantCentre: [-2255, 0] }, (mm) => `${mm / 25.4 / 12} ft`)).toContain(
      '9.8425',
    );
    expect(only(exampleDrawing(0).items, 'note').map((note) => note.text)).toContain('front view, approximate');
  });

  it('runs the construction along the arm and square to the damper, towards the instant centre', () => {
    for (const travel of [-40, 0, 30]) {
      const pose = poseAt(exampleStrut, travel);
      for (const sign of [-1, 1]) {
        const drawing = strutFrontView({ ...pose, instantCentre: [sign * 5000, 0] });
        const [arm, damper] = only(drawing.items, 'construction').map((item) => item.direction);
        const along = [pose.ball[0] - pose.armPivot[0], pose.ball[1] - pose.armPivot[1]];
        const axis = [pose.top[0] - pose.low[0], pose.top[1] - pose.low[1]];
        expect(arm![0] * along[1]! - arm![1] * along[0]!).toBeCloseTo(0, 6);
        expect(damper![0] * axis[0]! + damper![1] * axis[1]!).toBeCloseTo(0, 6);
        expect(Math.sign(arm![0])).toBe(sign);
        expect(Math.sign(damper![0])).toBe(sign);
      }
    }
  });

  it('leaves ground and wheel where they are and brings the body down by the travel', () => {
    const [still, down] = [0, 30].map((travel) => exampleDrawing(travel, { balloons: allBalloons }).items);
    const at = (items: readonly Item[], key: string) => only(items, 'balloon').find((b) => b.key === key)!.at;
    for (const key of ['strut.top', 'lowerArm.front', 'lowerArm.rear', 'tieRod.inner']) {
      expect(at(down!, key)[1]).toBeCloseTo(at(still!, key)[1] - 30, 6);
    }
    expect(at(down!, 'wheelCentre')[1]).toBeCloseTo(at(still!, 'wheelCentre')[1], 6);
    const [drop] = only(down!, 'dimension');
    expect(drop!.from[1] - drop!.to[1]).toBeCloseTo(30, 6);
    expect(drop!.text).toBe('30 mm');
  });

  it('leans the wheel by the stated multiple of its camber, top outward when positive', () => {
    for (const camberDeg of [-1.2, -0.3, 0.9]) {
      const pose = { ...poseAt(exampleStrut, 0), camberDeg };
      const { items } = strutFrontView(pose, { camberText: 'x' });
      const axis = only(items, 'path').find((item) => item.dash === 'chain' && item.ink === 'now')!.points;
      const [low, high] = [axis[0]!, axis.at(-1)!];
      const lean = (Math.atan2(high[0] - low[0], high[1] - low[1]) * 180) / Math.PI;
      const factor = Number(
        only(items, 'note')
          .find((note) => note.text.startsWith('tilt'))!
          .text.split('×')[1],
      );
      expect(lean).toBeCloseTo(factor * camberDeg, 6);
    }
  });

  it('stands the tyre flat on the ground, before and now', () => {
    const { items } = exampleDrawing(60);
    for (const tyre of only(items, 'path').filter(
      (item) => item.fill === 'tyre' || (item.closed && item.dash === 'dashed'),
    )) {
      expect(Math.min(...tyre.points.map((point) => point[1]))).toBeGreaterThanOrEqual(-1e-9);
    }
  });

  it('numbers the hard points 1 to 8 and says what the picture shows', () => {
    const drawing = exampleDrawing(30);
    expect(only(drawing.items, 'balloon').map((balloon) => balloon.number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    expect(drawing.title).toMatch(/front view.*camber −0\.\d\d°/i);
    expect(exampleDrawing(30, { title: 'another' }).title).toBe('another');
  });

  it('does without everything optional', () => {
    const { items } = strutFrontView(poseAt(exampleStrut, 10));
    expect(items.some((item) => ['balloon', 'dimension', 'label', 'angle'].includes(item.kind))).toBe(false);
  });
});

describe('outlines', () => {
  const points = fc.array(
    fc.tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: -50, max: 50 })) as fc.Arbitrary<Point>,
    { minLength: 3, maxLength: 30 },
  );
  const turn = (a: Point, b: Point, c: Point) => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

  it('hull: has every point on or to the left of every edge, and only given points as corners', () => {
    fc.assert(
      fc.property(points, (given) => {
        const corners = hull(given);
        corners.forEach((corner, i) => {
          expect(given).toContain(corner);
          for (const other of given) {
            expect(turn(corner, corners[(i + 1) % corners.length]!, other)).toBeGreaterThanOrEqual(0);
          }
        });
      }),
      { seed: 20250304, numRuns: 300 },
    );
  });

  it('limb: holds both discs, one inside the other too', () => {
    expect(limb([0, 0], 10, [30, 0], 5).some(([x]) => Math.abs(x - 35) < 1e-9)).toBe(true);
    const inside = limb([0, 0], 20, [3, 0], 5);
    for (const [x, y] of inside) expect(Math.hypot(x, y)).toBeCloseTo(20, 9);
  });

  it('above: cuts at the height and keeps what is over it', () => {
    const square: Point[] = [
      [0, -10],
      [10, -10],
      [10, 10],
      [0, 10],
    ];
    expect(above(square, 0)).toEqual([
      [10, 0],
      [10, 10],
      [0, 10],
      [0, 0],
    ]);
    expect(above(square, -20)).toEqual(square);
  });
});
