/** Plane geometry on the sheet: px, x to the right, y down. */
export type Px = readonly [x: number, y: number];

export interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

export const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

export const contains = (outer: Box, inner: Box): boolean =>
  inner.x >= outer.x &&
  inner.y >= outer.y &&
  inner.x + inner.width <= outer.x + outer.width &&
  inner.y + inner.height <= outer.y + outer.height;

/** The stretch of the line from + t · step inside a box, as [t in, t out], or undefined (Liang and Barsky's clipping). */
export function stretchInside(from: Px, step: Px, box: Box): [enter: number, leave: number] | undefined {
  let enter = Number.NEGATIVE_INFINITY;
  let leave = Number.POSITIVE_INFINITY;
  const low = [box.x, box.y];
  const size = [box.width, box.height];
  for (let i = 0; i < 2; i++) {
    const start = low[i]! - from[i]!;
    if (step[i] === 0) {
      if (start > 0 || start + size[i]! < 0) return undefined;
      continue;
    }
    const a = start / step[i]!;
    const b = (start + size[i]!) / step[i]!;
    enter = Math.max(enter, Math.min(a, b));
    leave = Math.min(leave, Math.max(a, b));
  }
  return enter < leave ? [enter, leave] : undefined;
}

export function crosses(a: Px, b: Px, box: Box): boolean {
  const inside = stretchInside(a, [b[0] - a[0], b[1] - a[1]], box);
  return !!inside && inside[0] < 1 && inside[1] > 0;
}

const short = (value: number): number => Math.round(value * 10) / 10;
export const at = (point: Px): string => `${short(point[0])} ${short(point[1])}`;

const towards = (from: Px, to: Px, distance: number): Px => {
  const share = Math.min(0.5, distance / (Math.hypot(to[0] - from[0], to[1] - from[1]) || 1));
  return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
};

/** SVG path data of a polyline or polygon, corners rounded by up to `round` px. */
export function pathData(points: readonly Px[], closed = false, round = 0): string {
  const last = points.length - 1;
  const steps = points.map((point, i) => {
    const before = points[i ? i - 1 : last]!;
    const after = points[i < last ? i + 1 : 0]!;
    if (!round || (!closed && (i === 0 || i === last))) return at(point);
    return `${at(towards(point, before, round))}Q${at(point)} ${at(towards(point, after, round))}`;
  });
  return `M${steps.join('L')}${closed ? 'Z' : ''}`;
}

/** The way that `pathData` takes with rounded corners, in straight pieces. */
export function roundedWay(points: readonly Px[], closed: boolean, round: number): Px[] {
  const last = points.length - 1;
  return points.flatMap((point, i) => {
    if (!round || (!closed && (i === 0 || i === last))) return [point];
    const [from, to] = [points[i ? i - 1 : last]!, points[i < last ? i + 1 : 0]!].map((p) => towards(point, p, round));
    const middle: Px = [(from![0] + 2 * point[0] + to![0]) / 4, (from![1] + 2 * point[1] + to![1]) / 4];
    return [from!, middle, to!];
  });
}

export function circleData(centre: Px, radius: number): string {
  const r = short(radius);
  return `M${at([centre[0] - r, centre[1]])}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
}

/** 45° hatching of any polygon, as lines of its own rather than a pattern: no ids to clash, and it moves with its body. */
export const hatchData = (polygon: readonly Px[], gap: number): string =>
  hatchLines(polygon, gap)
    .map(([a, b]) => `M${at(a)}L${at(b)}`)
    .join('');

export function hatchLines(polygon: readonly Px[], gap: number): (readonly [Px, Px])[] {
  const rank = (point: Px) => point[0] + point[1] - polygon[0]![0] - polygon[0]![1];
  const ranks = polygon.map(rank);
  const top = Math.max(...ranks);
  const lines: (readonly [Px, Px])[] = [];
  for (let level = (Math.floor(Math.min(...ranks) / gap) + 0.5) * gap; level < top; level += gap) {
    const hits: Px[] = [];
    polygon.forEach((point, i) => {
      const next = polygon[(i + 1) % polygon.length]!;
      const a = ranks[i]! - level;
      const b = rank(next) - level;
      if (a < 0 === b < 0) return;
      const share = a / (a - b);
      hits.push([point[0] + share * (next[0] - point[0]), point[1] + share * (next[1] - point[1])]);
    });
    hits.sort((a, b) => a[0] - b[0]);
    for (let i = 0; i + 1 < hits.length; i += 2) lines.push([hits[i]!, hits[i + 1]!]);
  }
  return lines;
}

/** A closed ISO 129-1 arrowhead, its tip at `tip`, pointing along the unit vector `way`. */
export function arrowData(tip: Px, way: Px): string {
  const foot = (side: number): Px => [tip[0] - 7 * way[0] - side * way[1], tip[1] - 7 * way[1] + side * way[0]];
  return pathData([tip, foot(1.8), foot(-1.8)], true);
}

/** An ISO 128 break line with its zigzag, across a line that runs along the unit vector `way` and stops at `end`. */
export function breakData(end: Px, way: Px): string {
  const zigzag: Px[] = [
    [0, -8],
    [0, -3],
    [3, -1.5],
    [-3, 1.5],
    [0, 3],
    [0, 8],
  ];
  return pathData(
    zigzag.map(([along, across]) => [
      end[0] + along * way[0] - across * way[1],
      end[1] + along * way[1] + across * way[0],
    ]),
  );
}
