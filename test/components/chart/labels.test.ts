import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Field, regionBox } from '../../../components/chart/field.js';
import { alongLine, aroundPoint, crosses, overlaps, placeLabels, spread } from '../../../components/chart/labels.js';
import { nameOf, readOut } from '../../../components/chart/model.js';
import { placeWords } from '../../../components/chart/words.js';
import { exampleModel } from './example-model.js';

const within = { left: 0, top: 0, width: 300, height: 180 };
const none = { within, obstacles: [], lines: [], hairlines: [] };

describe('placeLabels', () => {
  it('never puts two labels on each other, nor one on an obstacle or outside', () => {
    const point = fc.record({ x: fc.integer({ min: 0, max: 300 }), y: fc.integer({ min: 0, max: 180 }) });
    fc.assert(
      fc.property(fc.array(fc.tuple(point, fc.integer({ min: 10, max: 120 })), { maxLength: 12 }), (labels) => {
        const obstacles = labels.map(([{ x, y }]) => ({ left: x - 7, top: y - 7, width: 14, height: 14 }));
        const places = placeLabels(
          labels.map(([at, width]) => aroundPoint(at, width, 18, 8)),
          { ...none, obstacles },
        ).filter((place) => place !== undefined);
        for (const [index, place] of places.entries()) {
          expect(places.slice(index + 1).some((other) => overlaps(place, other))).toBe(false);
          expect(obstacles.some((obstacle) => overlaps(place, obstacle))).toBe(false);
          expect(place.left).toBeGreaterThanOrEqual(0);
          expect(place.left + place.width).toBeLessThanOrEqual(300);
        }
      }),
      { seed: 1 },
    );
  });

  it('keeps off a curve while there is another place, and off a hairline before that', () => {
    const [first, second, third] = [0, 40, 80].map((top) => ({ left: 10, top, width: 50, height: 18 }));
    const through = (top: number) => [
      { x: 0, y: top + 9 },
      { x: 300, y: top + 9 },
    ];
    const choose = (lines: number[], hairlines: number[]) =>
      placeLabels([[first!, second!, third!]], {
        ...none,
        lines: lines.map(through),
        hairlines: hairlines.map(through),
      })[0];
    expect(choose([], [])).toBe(first);
    expect(choose([0], [])).toBe(second);
    expect(choose([0], [40])).toBe(third);
    expect(choose([0, 80], [40])).toBe(second);
    expect(choose([0, 40, 80], [])).toBe(first);
  });

  it('lets the label with the fewest places choose first', () => {
    const place = { left: 10, top: 10, width: 50, height: 18 };
    const elsewhere = { ...place, top: 90 };
    expect(placeLabels([[place, elsewhere], [place]], none)).toEqual([elsewhere, place]);
  });
});

it('crosses finds a line through a box that has no point in it', () => {
  const box = { left: 10, top: 10, width: 10, height: 10 };
  const from = (x: number, y: number) => [
    { x, y },
    { x: 30, y: 30 },
  ];
  expect(crosses(from(0, 0), box)).toBe(true);
  expect(crosses(from(0, 35), box)).toBe(false);
  expect(crosses([], box)).toBe(false);
});

it('alongLine offers the end of the line first', () => {
  const places = alongLine(
    Array.from({ length: 100 }, (_, i) => ({ x: i * 3, y: 90 })),
    40,
    18,
    4,
  );
  expect(places[0]!.left).toBeGreaterThan(297);
  expect(places[1]).toEqual({ left: 257, top: 68, width: 40, height: 18 });
  expect(alongLine([], 40, 18, 4)).toEqual([]);
});

it('spread keeps order and distance and stays inside where there is room', () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0, max: 200, noNaN: true }), { maxLength: 10 }), (centres) => {
      const out = spread(centres, 18, 0, 200);
      const order = centres.map((_, i) => i).sort((a, b) => centres[a]! - centres[b]!);
      for (let i = 1; i < order.length; i++)
        expect(out[order[i]!]! - out[order[i - 1]!]!).toBeGreaterThanOrEqual(18 - 1e-9);
      for (const centre of out) {
        expect(centre).toBeGreaterThanOrEqual(9 - 1e-9);
        expect(centre).toBeLessThanOrEqual(191 + 1e-9);
      }
    }),
    { seed: 1 },
  );
  expect(spread([50, 120], 18, 0, 200)).toEqual([50, 120]);
});

describe('placeWords', () => {
  const fieldOf = (width: number, height: number): Field => ({
    left: 36,
    top: 28,
    width,
    height,
    x: (value) => 36 + ((value + 60) / 150) * width,
    y: (value) => 28 + ((1.25 - value) / 2.75) * height,
  });
  const measure = (text: string, weight: number) => text.length * (weight === 600 ? 7.6 : 7);

  for (const [width, height, margin] of [
    [246, 184, 0],
    [420, 268, 66],
  ] as const)
    it(`names everything the example shows, without overlap, on a plot ${width} px wide`, () => {
      for (let drop = 0; drop <= 60; drop += 5) {
        const model = exampleModel(drop);
        const words = placeWords(model, { field: fieldOf(width, height), margin, yTicks: [] }, measure);
        expect(words.map(({ text }) => text)).toContain(`${drop} mm lower`);
        // What finds no place along its line is named over the chart.
        const named = readOut(model).map(nameOf);
        expect([...named, ...words.map(({ text }) => text)]).toEqual(expect.arrayContaining(['now', 'old arms']));
        for (const [index, { place }] of words.entries())
          for (const other of words.slice(index + 1)) expect(overlaps(place, other.place)).toBe(false);
      }
    });

  it('puts no word on a curve, and gives one that stands on hatching a plate of its own', () => {
    for (const width of [200, 246, 290])
      for (let drop = -20; drop <= 60; drop += 4) {
        const model = exampleModel(drop);
        const field = fieldOf(width, 144);
        const grounds = model.regions.flatMap((region) => regionBox(field, region) ?? []);
        const curves = model.series.map(({ x, y }) =>
          [...x.keys()].map((i) => ({ x: field.x(x[i]!), y: field.y(y[i]!) })).filter((at) => Number.isFinite(at.y)),
        );
        for (const { text, place, plate } of placeWords(model, { field, margin: 0, yTicks: [] }, measure)) {
          expect(
            curves.some((curve) => crosses(curve, place)),
            text,
          ).toBe(false);
          if (grounds.some((ground) => overlaps(place, ground))) expect(plate, text).toBe(true);
        }
      }
  });
});
