import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing, Item } from '../../../components/drawing/items.js';
import { heightLimit, type Layout, layout } from '../../../components/drawing/layout.js';
import { strutFrontView, tiltScale } from '../../../components/drawing/strut-front-view.js';
import { allBalloons, allMeasures, exampleDrawing } from './example-drawing.js';
import { exampleStrut, type PlanarStrut, poseAt } from './planar-strut.js';
import { faultsOf } from './sheet.js';

const travels = Array.from({ length: 81 }, (_, i) => 2 * i - 60);
const widths = [290, 305, 320, 330, 344, 360, 390, 412, 440, 480, 520, 560, 600, 620];
/** The example at a travel and a width: several tests look at the same sheets. */
const sheets = new Map<string, Layout>();
function sheetOf(travel: number, width: number): Layout {
  const key = `${travel} ${width}`;
  const sheet = sheets.get(key) ?? layout(exampleDrawing(travel), width);
  sheets.set(key, sheet);
  return sheet;
}
const breaks = (sheet: Layout) => sheet.shapes.filter((shape) => shape.look.includes('break')).length;

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const point = (y: [number, number], z: [number, number]) => fc.tuple(between(...y), between(...z));

/** Plausible strut corners, from a small car with narrow tyres to a wide one with an arm far from level. Ranges: no source. */
const struts: fc.Arbitrary<PlanarStrut> = fc.record({
  armPivot: point([240, 460], [110, 270]),
  ball: point([590, 740], [130, 240]),
  top: point([470, 640], [690, 950]),
  low: point([600, 660], [330, 560]),
  tieInner: point([240, 420], [180, 380]),
  tieOuter: point([580, 720], [180, 400]),
  wheelCentre: point([680, 810], [260, 380]),
  radius: between(260, 370),
  camber: between(-5, 2),
  tyreWidth: between(145, 325),
});

describe('layout of the front view', () => {
  it('puts no text or balloon on another and nothing off the sheet, through the travel and at all widths', () => {
    for (const width of widths) {
      for (const travel of travels) {
        expect(faultsOf(sheetOf(travel, width)), `${travel} mm at ${width} px`).toEqual([]);
      }
    }
  });

  it('writes over no leader', () => {
    for (const width of widths) {
      for (const travel of travels) {
        const { texts, balloons } = sheetOf(travel, width);
        for (const { leader, number } of balloons) {
          const [[x, y], [endX, endY]] = leader;
          for (const text of texts) {
            for (let share = 0; share <= 1; share += 0.005) {
              const [px, py] = [x + share * (endX - x), y + share * (endY - y)];
              const on = px > text.x && px < text.x + text.width && py > text.y && py < text.y + text.height;
              if (on) throw new Error(`${text.text} on leader ${number}, ${travel} mm at ${width} px`);
            }
          }
        }
      }
    }
  });

  it('overlaps and clips nothing for any plausible corner, set of balloons and instant centre', () => {
    const centres = fc.option(
      fc.tuple(
        fc.double({ min: -1e6, max: 1e6, noDefaultInfinity: false }),
        fc.double({ min: -1e6, max: 1e6, noDefaultInfinity: false }),
      ),
      { nil: undefined },
    );
    fc.assert(
      fc.property(
        struts,
        between(-70, 100),
        fc.integer({ min: 290, max: 620 }),
        fc.subarray(allBalloons),
        fc.boolean(),
        centres,
        (strut, travel, width, balloons, withBefore, instantCentre) => {
          const pose = { ...poseAt(strut, travel), ...(instantCentre ? { instantCentre } : {}) };
          fc.pre([pose.ball, pose.low, pose.wheelCentre].flat().every(Number.isFinite));
          const reference = poseAt(strut, 0);
          const drawing = strutFrontView(pose, {
            reference,
            camberText: '−12.34° ± 0.56°',
            dropText: '100 mm',
            beforeText: 'as built',
            balloons,
            ...(withBefore ? { before: reference } : {}),
          });
          expect(faultsOf(layout(drawing, width))).toEqual([]);
        },
      ),
      { seed: 20250301, numRuns: 700 },
    );
  });

  it('puts every dimension’s value on the sheet as a button of its own, on no other text, for any plausible corner', () => {
    fc.assert(
      fc.property(
        struts,
        between(-70, 100),
        fc.integer({ min: 290, max: 620 }),
        fc.subarray(allMeasures),
        (strut, travel, width, measures) => {
          const pose = poseAt(strut, travel);
          fc.pre([pose.ball, pose.low, pose.wheelCentre].flat().every(Number.isFinite));
          const drawing = exampleDrawing(travel, { balloons: [], measures, tieRod: false }, strut);
          const sheet = layout(drawing, width);
          expect(faultsOf(sheet)).toEqual([]);
          expect(sheet.chips.map(({ key }) => key).sort()).toEqual(measures.map(({ key }) => key).sort());
        },
      ),
      { seed: 20250302, numRuns: 500 },
    );
  });

  it('keeps every value where it is while the wheel moves through its travel', () => {
    for (const width of widths) {
      const places = (travel: number) =>
        layout(exampleDrawing(travel, { balloons: [], measures: allMeasures, tieRod: false }), width).chips.map(
          ({ centre }) => centre,
        );
      const home = places(0);
      for (const travel of travels.filter((t) => t >= -40)) expect(places(travel)).toEqual(home);
    }
  });

  it('is pure: the same drawing gives the same sheet and is left as it was', () => {
    const drawing = exampleDrawing(30);
    const copy = structuredClone(drawing);
    expect(layout(drawing, 330)).toEqual(layout(structuredClone(drawing), 330));
    expect(drawing).toEqual(copy);
  });

  it('keeps scale, sheet and every balloon in place while the wheel moves through its travel', () => {
    for (const width of widths) {
      const still = (travel: number) => {
        const { scale, height, balloons } = sheetOf(travel, width);
        return { scale, height, centres: balloons.map((balloon) => balloon.centre) };
      };
      const home = still(0);
      for (const travel of travels.filter((t) => t >= -40)) expect(still(travel)).toEqual(home);
    }
  });

  it('crosses no two leaders of a column at reference height', () => {
    fc.assert(
      fc.property(struts, fc.integer({ min: 290, max: 620 }), (strut, width) => {
        const { balloons } = layout(exampleDrawing(0, { beforeText: '' }, strut), width);
        const turn = (a: readonly number[], b: readonly number[], c: readonly number[]) =>
          Math.sign((b[0]! - a[0]!) * (c[1]! - a[1]!) - (b[1]! - a[1]!) * (c[0]! - a[0]!));
        balloons.forEach(({ leader: [a, b], centre, number }, i) => {
          // The top mount's balloon is placed for a point above the mount; see hardPoints.
          if (number === 4) return;
          for (const other of balloons.slice(0, i)) {
            const [c, d] = other.leader;
            if (other.centre[0] !== centre[0] || other.number === 4) continue;
            const crossing = turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
            expect(crossing, `${number} and ${other.number}`).toBe(false);
          }
        });
      }),
      { seed: 20250302, numRuns: 300 },
    );
  });

  it('is no taller than a phone leaves room for: 360 px at 330, 560 px at 560', () => {
    for (const travel of travels) {
      expect(sheetOf(travel, 330).height).toBeLessThanOrEqual(360);
      expect(sheetOf(travel, 560).height).toBeLessThanOrEqual(560);
    }
    for (const width of widths) {
      expect(sheetOf(0, width).height).toBeLessThanOrEqual(Math.ceil(heightLimit(width)));
    }
  });

  it('draws two break lines when the instant centre is off the sheet and none when it is on it', () => {
    const pose = poseAt(exampleStrut, 20);
    const seen = new Set<boolean>();
    const sheetWith = (instantCentre: [number, number], width: number) =>
      layout(strutFrontView({ ...pose, instantCentre }), width);
    fc.assert(
      fc.property(
        fc.integer({ min: -500, max: 2000 }),
        fc.integer({ min: -400, max: 1500 }),
        fc.integer({ min: 290, max: 620 }),
        (y, z, width) => {
          const sheet = sheetWith([y, z], width);
          // Where the page is, read from what is drawn: the ground's line for the height, the wheel's axis for the side.
          const wheel = strutFrontView(pose).extent;
          const ground = sheet.shapes
            .find((shape) => shape.look === 'ink wide')!
            .d.match(/[\d.]+/g)!
            .map(Number)[1]!;
          const middle = width / 2 + sheet.scale * (y - (wheel[0][0] + wheel[1][0]) / 2);
          const height = ground - sheet.scale * (z - pose.groundZ);
          const margin = Math.min(middle - 10, width - 10 - middle, height - 10, ground - height);
          fc.pre(Math.abs(margin) > 2);
          seen.add(margin > 0);
          expect(breaks(sheet)).toBe(margin > 0 ? 0 : 2);
        },
      ),
      { seed: 20250303, numRuns: 500 },
    );
    expect(seen.size).toBe(2);
    for (const centre of [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NaN]) {
      expect(breaks(sheetWith([centre, centre], 330))).toBe(2);
    }
  });
});

describe('layout of any drawing', () => {
  const drawing = (items: Item[]): Drawing => ({
    title: 'a test',
    items,
    extent: [
      [0, 0],
      [500, 400],
    ],
  });
  const texts = (items: Item[], width = 330) => layout(drawing(items), width).texts.map((text) => text.text);

  it('finds every label a place in the picture when twenty stand on one point', () => {
    const items = Array.from(
      { length: 20 },
      (_, i): Item => ({ kind: 'label', at: [250, 200], text: `label ${i}`, places: ['e', 'w'] }),
    );
    const sheet = layout(drawing(items), 330);
    expect(sheet.texts).toHaveLength(20);
    expect(sheet.height).toBe(layout(drawing([]), 330).height);
    expect(faultsOf(sheet)).toEqual([]);
  });

  it('gives up an optional label rather than its place, and puts any other that finds none under the drawing', () => {
    const long = 'x'.repeat(39);
    const full = Array.from(
      { length: 40 },
      (_, i): Item => ({ kind: 'label', at: [250, 200], text: `${long}${i}`, places: ['n'], optional: i > 30 }),
    );
    const sheet = layout(drawing(full), 360);
    expect(sheet.texts).toHaveLength(31);
    expect(faultsOf(sheet)).toEqual([]);
  });

  it('places a label where it crosses no line, if one of its places allows', () => {
    const line: Item = {
      kind: 'path',
      points: [
        [250, 210],
        [490, 210],
      ],
    };
    const label: Item = { kind: 'label', at: [250, 200], text: 'clear', places: ['e', 'w'] };
    expect(layout(drawing([label]), 330).texts[0]!.anchor).toBe('start');
    expect(layout(drawing([line, label]), 330).texts[0]!.anchor).toBe('end');
  });

  it('dimensions both ways, with arrows outside where there is no room between', () => {
    const dimension = (length: number, along: 'up' | 'right'): Item => ({
      kind: 'dimension',
      from: [100, 100],
      to: along === 'up' ? [100, 100 + length] : [100 + length, 100],
      along,
      at: 60,
      text: `${length} mm`,
    });
    for (const along of ['up', 'right'] as const) {
      expect(faultsOf(layout(drawing([dimension(200, along), dimension(20, along)]), 330))).toEqual([]);
      const lines = (length: number) =>
        layout(drawing([dimension(length, along)]), 330).shapes.filter((shape) => shape.look === 'ink narrow').length;
      expect(lines(200)).toBe(3);
      expect(lines(20)).toBe(5);
      expect(texts([dimension(2, along)])).toEqual([]);
    }
  });

  it('grows the sheet rather than push balloons together', () => {
    const items = Array.from(
      { length: 12 },
      (_, i): Item => ({
        kind: 'balloon',
        key: `${i}`,
        number: i,
        at: [250, 10 * i],
        home: [250, 10 * i],
        side: 'left',
        state: 'yours',
        label: '',
      }),
    );
    const sheet = layout(drawing(items), 330);
    expect(faultsOf(sheet)).toEqual([]);
    expect(sheet.height).toBeGreaterThan(12 * 44);
  });

  it('hatches inside the polygon only', () => {
    const triangle: [number, number][] = [
      [100, 100],
      [400, 100],
      [250, 300],
    ];
    const hatch = layout(drawing([{ kind: 'path', points: triangle, closed: true, hatch: true }]), 330).shapes[1]!;
    const [outline] = layout(drawing([{ kind: 'path', points: triangle, closed: true }]), 330).shapes;
    const numbers = (d: string) => d.match(/-?[\d.]+/g)!.map(Number);
    const [ax, ay, bx, by, cx, cy] = numbers(outline!.d) as [number, number, number, number, number, number];
    const side = (px: number, py: number, qx: number, qy: number, x: number, y: number) =>
      ((qx - px) * (y - py) - (qy - py) * (x - px)) / Math.hypot(qx - px, qy - py);
    const all = numbers(hatch.d);
    expect(all.length).toBeGreaterThan(40);
    for (let i = 0; i < all.length; i += 2) {
      const [x, y] = [all[i]!, all[i + 1]!];
      const distances = [side(ax, ay, bx, by, x, y), side(bx, by, cx, cy, x, y), side(cx, cy, ax, ay, x, y)];
      expect(Math.max(...distances)).toBeLessThan(0.2);
      expect(Math.min(...distances.map(Math.abs))).toBeLessThan(0.2);
    }
    for (let i = 0; i < all.length; i += 4) expect(all[i]! + all[i + 1]!).toBeCloseTo(all[i + 2]! + all[i + 3]!, 0);
  });
});

describe('the factor of the tilt', () => {
  it('is the largest whole number up to 5 that leans no camber by more than 8°', () => {
    expect(tiltScale([-1.2, 0.3])).toBe(5);
    expect(tiltScale([-1.7])).toBe(4);
    expect(tiltScale([-3.9])).toBe(2);
    expect(tiltScale([-9])).toBe(1);
    expect(tiltScale([])).toBe(5);
    expect(tiltScale([Number.NaN, -2])).toBe(4);
  });
});
