/** CSS px, y downward. */
export interface Point {
  x: number;
  y: number;
}

export interface Box {
  left: number;
  top: number;
  width: number;
  height: number;
}

/** A place where a label could stand. Turned: it reads upward, and width and height are those of the turned text. */
export interface LabelBox extends Box {
  turned?: boolean;
  /** The name of a hatched ground stands in it; any other label keeps off it. */
  inGround?: boolean;
}

/** What labels have to keep off. */
export interface Surroundings {
  within: Box;
  /** Never covered. */
  obstacles: readonly Box[];
  /** The curves; crossed only where there is no other place. */
  lines: readonly (readonly Point[])[];
  /** Thin lines that bear being interrupted; crossed before a curve is. */
  hairlines: readonly (readonly Point[])[];
  /** The grid. */
  faint?: readonly (readonly Point[])[];
  /** Hatched. */
  grounds?: readonly Box[];
  /** Small marks, such as readings; covered before a curve is. */
  marks?: readonly Box[];
}

export function overlaps(a: Box, b: Box, gap = 0): boolean {
  return (
    a.left < b.left + b.width + gap &&
    b.left < a.left + a.width + gap &&
    a.top < b.top + b.height + gap &&
    b.top < a.top + a.height + gap
  );
}

const contains = (outer: Box, inner: Box): boolean =>
  inner.left >= outer.left &&
  inner.top >= outer.top &&
  inner.left + inner.width <= outer.left + outer.width &&
  inner.top + inner.height <= outer.top + outer.height;

const grown = ({ left, top, width, height }: Box, by: number): Box => ({
  left: left - by,
  top: top - by,
  width: width + 2 * by,
  height: height + 2 * by,
});

/** Whether the segment from a to b meets the box (Liang and Barsky's clipping). */
function meets(a: Point, b: Point, box: Box): boolean {
  let enter = 0;
  let leave = 1;
  const clip = (direction: number, distance: number): boolean => {
    if (direction === 0) return distance >= 0;
    const at = distance / direction;
    if (direction < 0) enter = Math.max(enter, at);
    else leave = Math.min(leave, at);
    return enter <= leave;
  };
  return (
    clip(a.x - b.x, a.x - box.left) &&
    clip(b.x - a.x, box.left + box.width - a.x) &&
    clip(a.y - b.y, a.y - box.top) &&
    clip(b.y - a.y, box.top + box.height - a.y)
  );
}

/** Whether a line of points passes through the box. */
export function crosses(line: readonly Point[], box: Box): boolean {
  const { left } = box;
  const right = left + box.width;
  for (let i = 1; i < line.length; i++) {
    const a = line[i - 1]!;
    const b = line[i]!;
    // Most segments of a curve are nowhere near: this runs a hundred thousand times while a slider is dragged.
    if ((a.x < left && b.x < left) || (a.x > right && b.x > right)) continue;
    if (meets(a, b, box)) return true;
  }
  return false;
}

/** Least distance between two labels and from a label to a curve, CSS px. */
const GAP = 3;
const FAINT_COST = 3;
/** Crossing a hairline, or standing on hatching, is as bad as standing this many places further down the list. */
const HAIRLINE_COST = 60;
const MARK_COST = 400;
const CURVE_COST = 1000;

function costOf(
  place: LabelBox,
  { lines, hairlines, faint = [], grounds = [], marks = [] }: Surroundings,
  gap: number,
) {
  const close = grown(place, 1);
  const isOn = (some: readonly (readonly Point[])[], box: Box) => some.some((line) => crosses(line, box));
  return (
    (isOn(lines, grown(place, gap)) ? CURVE_COST : 0) +
    (isOn(hairlines, close) || (!place.inGround && grounds.some((ground) => overlaps(place, ground)))
      ? HAIRLINE_COST
      : 0) +
    (marks.some((mark) => overlaps(place, mark)) ? MARK_COST : 0) +
    (isOn(faint, place) ? FAINT_COST : 0)
  );
}

/** Whether a label that stands there would hide a piece of a curve. */
export const hidesCurve = (place: LabelBox, around: Surroundings): boolean => costOf(place, around, GAP) >= CURVE_COST;

/** Whether a label that stands there has a line, a mark or hatching behind it. */
export const isOnSomething = (place: LabelBox, around: Surroundings): boolean =>
  costOf({ ...place, inGround: false }, around, GAP) > 0;

/**
 * Chooses a place for each label. Labels with the fewest good places choose first. Each prefers its earlier places, takes a
 * later one rather than cross a hairline or stand on hatching, and crosses a curve only where all else is taken; never does it
 * stand on another label or an obstacle: then it has no place at all.
 * @param gap least distance between two labels and from a label to a curve, CSS px.
 * @returns a place for each label, in the order given.
 */
export function placeLabels(
  wishes: readonly (readonly LabelBox[])[],
  around: Surroundings,
  gap = GAP,
): (LabelBox | undefined)[] {
  const ranked = wishes.map((places) =>
    places
      .filter((place) => contains(around.within, place) && !around.obstacles.some((one) => overlaps(place, one)))
      .map((place, index) => ({ place, cost: index + costOf(place, around, gap) }))
      .sort((a, b) => a.cost - b.cost),
  );
  const choices = ranked.map((places) => places.filter(({ cost }) => cost < CURVE_COST).length);
  const turns = ranked.map((_, index) => index).sort((a, b) => choices[a]! - choices[b]!);
  const taken: LabelBox[] = [];
  const chosen: (LabelBox | undefined)[] = wishes.map(() => undefined);
  for (const index of turns) {
    const place = ranked[index]!.find(({ place }) => !taken.some((other) => overlaps(place, other, gap)))?.place;
    if (!place) continue;
    taken.push(place);
    chosen[index] = place;
  }
  return chosen;
}

/** Places beside a point, nearest and most readable first; at least `gap` from its centre. */
export function aroundPoint({ x, y }: Point, width: number, height: number, gap: number): LabelBox[] {
  const right = x + gap;
  const left = x - gap - width;
  const centre = x - width / 2;
  const middle = y - height / 2;
  const places: [left: number, top: number][] = [];
  for (let further = gap; further <= gap + 1.4 * height; further += height / 3) {
    const above = y - further - height;
    const below = y + further;
    places.push([right, above], [right, below], [left, below], [left, above], [centre, above], [centre, below]);
    if (further === gap) places.push([right, middle], [left, middle]);
    // With the point over or under its first or last letters.
    for (const aside of [centre + 0.3 * width, centre - 0.3 * width]) places.push([aside, above], [aside, below]);
  }
  return places.map(([left, top]) => ({ left, top, width, height }));
}

/** Places above and below a line, from its right end backwards, so that the label reads as the line's name. */
export function alongLine(line: readonly Point[], width: number, height: number, gap: number): LabelBox[] {
  const end = line.at(-1);
  const start = line[0];
  if (!end || !start) return [];
  const places: LabelBox[] = [];
  const beside = { left: end.x + gap, top: end.y - height / 2, width, height };
  places.push(beside);
  for (let right = end.x; right - width >= start.x; right -= 6) {
    // The text's own stretch of the line decides how far off it must stand, so that a steep line is not run into.
    let top = Number.POSITIVE_INFINITY;
    let bottom = Number.NEGATIVE_INFINITY;
    for (const { x, y } of line) {
      if (x < right - width - 2 || x > right + 2) continue;
      top = Math.min(top, y);
      bottom = Math.max(bottom, y);
    }
    if (top > bottom) continue;
    const left = right - width;
    // A little further off as well, to clear a marker on the line.
    for (const distance of [gap, gap + 5])
      places.push(
        { left, top: top - distance - height, width, height },
        { left, top: bottom + distance, width, height },
      );
  }
  return places;
}

/**
 * Places for a region's name, from its top downward: upright in it; turned where it is too narrow; last, upright and over its
 * edge into the open.
 */
export function inRegion(region: Box, width: number, height: number, gap: number, field: Box): LabelBox[] {
  const places: LabelBox[] = [];
  const bottom = region.top + region.height - gap;
  const centre = region.left + region.width / 2;
  const column = (left: number, w: number, h: number, turned: boolean) => {
    for (let top = region.top + gap; top + h <= bottom; top += 4)
      places.push({ left, top, width: w, height: h, turned, inGround: true });
  };
  if (region.width >= width + 2 * gap) column(centre - width / 2, width, height, false);
  else {
    if (region.width >= height) column(centre - height / 2, height, width, true);
    const right = field.left + field.width - gap - width;
    column(Math.min(Math.max(centre - width / 2, field.left + gap), right), width, height, false);
  }
  return places;
}

/**
 * Moves centres as little as needed so that labels of one height, in a column, do not overlap. Order is kept.
 * @returns the new centres, in the order given.
 */
export function spread(centres: readonly number[], height: number, from: number, to: number): number[] {
  const order = centres.map((_, index) => index).sort((a, b) => centres[a]! - centres[b]!);
  const out = [...centres];
  let least = from + height / 2;
  for (const index of order) {
    out[index] = Math.max(centres[index]!, least);
    least = out[index]! + height;
  }
  let most = to - height / 2;
  for (const index of order.reverse()) {
    out[index] = Math.min(out[index]!, most);
    most = out[index]! - height;
  }
  return out;
}
