import type { Point } from './items.js';

/** Outlines in mm from which bodies are drawn. All turn anticlockwise, so that they unite. */

/** Angles in radians, from the right, anticlockwise. */
export const arc = (centre: Point, radius: number, from: number, to: number, steps: number): Point[] =>
  Array.from({ length: steps + 1 }, (_, i) => {
    const angle = from + ((to - from) * i) / steps;
    return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
  });

export const disc = (centre: Point, radius: number): Point[] => arc(centre, radius, 0, 2 * Math.PI, 32).slice(1);

/** The convex hull, by Andrew's monotone chain. */
export function hull(points: readonly Point[]): Point[] {
  const chain = (sorted: readonly Point[]): Point[] => {
    const kept: Point[] = [];
    for (const point of sorted) {
      for (let [a, b] = kept.slice(-2); b && turnsRight(a!, b, point); [a, b] = kept.slice(-2)) kept.pop();
      kept.push(point);
    }
    return kept.slice(0, -1);
  };
  const sorted = points.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
  return [...chain(sorted), ...chain(sorted.reverse())];
}

const turnsRight = (a: Point, b: Point, c: Point): boolean =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]) <= 0;

/** The hull of two discs: a rod, an arm, a limb of a casting. */
export const limb = (a: Point, radiusA: number, b: Point, radiusB: number): Point[] =>
  hull([...disc(a, radiusA), ...disc(b, radiusB)]);

/** A rectangle about the origin with round corners. */
export function roundedBox(halfWidth: number, halfHeight: number, radius: number): Point[] {
  const corner = Math.min(radius, halfWidth, halfHeight);
  const quarter = Math.PI / 2;
  return [0, 1, 2, 3].flatMap((i) =>
    arc(
      [(halfWidth - corner) * (i % 3 ? -1 : 1), (halfHeight - corner) * (i > 1 ? -1 : 1)],
      corner,
      quarter * i,
      quarter * (i + 1),
      9,
    ),
  );
}

export const box = (left: number, low: number, right: number, high: number): Point[] => [
  [left, low],
  [right, low],
  [right, high],
  [left, high],
];

/** What of a convex or star-shaped outline lies above a height: a tyre stands flat on the ground. */
export function above(outline: readonly Point[], height: number): Point[] {
  return outline.flatMap((point, i): Point[] => {
    const next = outline[(i + 1) % outline.length]!;
    const kept: Point[] = point[1] >= height ? [point] : [];
    if (point[1] >= height !== next[1] >= height) {
      const share = (height - point[1]) / (next[1] - point[1]);
      kept.push([point[0] + share * (next[0] - point[0]), height]);
    }
    return kept;
  });
}
