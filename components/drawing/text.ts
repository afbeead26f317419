import { type Box, contains, crosses, overlap, type Px } from './geometry.js';
import type { CompassDirection, Ink } from './items.js';

/** Text on the sheet. The width is an upper estimate from the number of characters: the widest common system font needs no more. */
export interface TextBox extends Box {
  text: string;
  size: number;
  bold: boolean;
  ink: Ink;
  anchor: 'start' | 'middle' | 'end';
  /** From the text to what it names, where it had to stand aside. */
  leader?: readonly [Px, Px];
}

export interface TextRequest {
  at: Px;
  text: string;
  size: number;
  bold: boolean;
  ink: Ink;
  places: readonly CompassDirection[];
  optional: boolean;
  /** On no line and no hatching, further away if need be. */
  keepsClear?: boolean | undefined;
}

const GAP = 7;
/** Text that keeps clear keeps this far off a line, px; and from this far away a leader tells what it names. */
const OFF_A_LINE = 2;
const LEADER_FROM = 15;
/** How far away it may stand: what is optional is left out sooner. */
const FURTHEST = { needed: 260, optional: 48 };

/** As wide as they are high in the widest fonts: two of them stand in every length. */
const WIDE = /[mwMW%]/g;

/** Upper estimate of a text's width, px. Checked against a browser's own measure in the tests. */
export const textWidth = (text: string, size: number, bold: boolean): number => {
  const wide = text.match(WIDE)?.length ?? 0;
  return Math.ceil(
    size * (bold ? 0.7 * (text.length - wide) + 1.05 * wide : 0.62 * (text.length - wide) + 0.98 * wide),
  );
};

export const lineHeight = (size: number): number => Math.ceil(size * 1.25);

/** On the page: to the right, down. */
const wayOf = (direction: CompassDirection): Px => [
  direction.includes('e') ? 1 : direction.includes('w') ? -1 : 0,
  direction.startsWith('s') ? 1 : direction.startsWith('n') ? -1 : 0,
];

function boxAt(request: TextRequest, direction: CompassDirection): TextBox {
  const { at, text, size, bold, ink } = request;
  const width = textWidth(text, size, bold);
  const height = lineHeight(size);
  const [across, down] = wayOf(direction);
  return {
    x: at[0] + across * GAP + ((across - 1) * width) / 2,
    y: at[1] + down * (across ? 0 : GAP - 4) + ((down - 1) * height) / 2,
    width,
    height,
    text,
    size,
    bold,
    ink,
    anchor: across > 0 ? 'start' : across ? 'end' : 'middle',
  };
}

/** Twenty-four directions a half turn each way, the wished one first. */
const DIRECTIONS = 48;
/** So near, px, any side will do; then so far and so wide, in directions, the wished side is looked through before the others. */
const NEAR = { reach: 8, directions: DIRECTIONS };
const FIRST = { reach: 72, directions: 19 };

/** The free spot nearest to a point that no line crosses: on the side that was asked for first. */
function clearOf(request: TextRequest, isFree: (box: Box) => boolean, taken: readonly Box[]): TextBox | undefined {
  const { at, places, optional } = request;
  const most = optional ? FURTHEST.optional : FURTHEST.needed;
  const middle = boxAt(request, 'n');
  const wished = angleOf(places[0] ?? 'e');
  const spot = (reach: number, k: number): TextBox | undefined => {
    const angle = wished + (k % 2 ? -1 : 1) * Math.ceil(k / 2) * ((2 * Math.PI) / DIRECTIONS);
    const box: TextBox = {
      ...middle,
      anchor: 'middle',
      x: at[0] + (reach + middle.width / 2) * Math.cos(angle) - middle.width / 2,
      y: at[1] + (reach + middle.height / 2) * Math.sin(angle) - middle.height / 2,
    };
    const wide = {
      x: box.x - OFF_A_LINE,
      y: box.y - OFF_A_LINE,
      width: box.width + 2 * OFF_A_LINE,
      height: box.height + 2 * OFF_A_LINE,
    };
    if (!isFree(wide)) return undefined;
    const near: Px = [
      Math.min(Math.max(at[0], box.x), box.x + box.width),
      Math.min(Math.max(at[1], box.y), box.y + box.height),
    ];
    if (Math.hypot(near[0] - at[0], near[1] - at[1]) <= LEADER_FROM) return box;
    return taken.some((other) => crosses(near, at, other)) ? undefined : { ...box, leader: [near, at] };
  };
  const first = { reach: Math.min(most, FIRST.reach), directions: FIRST.directions };
  for (const { reach: furthest, directions } of [NEAR, first, { reach: most, directions: DIRECTIONS }]) {
    for (let reach = 4; reach <= furthest; reach += 4) {
      for (let k = 0; k < directions; k++) {
        const found = spot(reach, k);
        if (found) return found;
      }
    }
  }
  return undefined;
}

const angleOf = (direction: CompassDirection): number => {
  const [across, down] = wayOf(direction);
  return Math.atan2(down, across);
};

/**
 * Finds each text a place inside `sheet` that touches nothing in `taken`, crossing as few `lines` as it can; texts placed are added to
 * `taken`. One that keeps clear stands off `lines` and `hatching` alike. A text none of whose places is free goes to the nearest free spot of the sheet; what finds none at all is returned in `left`.
 */
export function placeTexts(
  requests: readonly TextRequest[],
  sheet: Box,
  taken: Box[],
  lines: readonly (readonly [Px, Px])[],
  hatching: readonly (readonly [Px, Px])[] = [],
): { placed: TextBox[]; left: TextRequest[] } {
  const placed: TextBox[] = [];
  const left: TextRequest[] = [];
  const free = (box: Box) => contains(sheet, box) && !taken.some((other) => overlap(box, other));
  const crossed = (box: Box) => lines.reduce((count, [a, b]) => count + (crosses(a, b, box) ? 1 : 0), 0);

  const leaders: (readonly [Px, Px])[] = [];
  const strokes = [lines, hatching, leaders];
  const isFree = (box: Box) => free(box) && !strokes.some((some) => some.some(([a, b]) => crosses(a, b, box)));

  for (const request of requests) {
    let best = request.keepsClear ? clearOf(request, isFree, taken) : undefined;
    if (!best && request.keepsClear && request.optional) continue;
    let fewest = best ? 0 : Number.POSITIVE_INFINITY;
    for (const direction of request.places) {
      const box = boxAt(request, direction);
      const count = free(box) ? crossed(box) : fewest;
      if (count < fewest) {
        fewest = count;
        best = box;
      }
    }
    if (!best && !request.optional) {
      let nearest = Number.POSITIVE_INFINITY;
      for (let y = sheet.y; y < sheet.y + sheet.height; y += 6) {
        for (let x = sheet.x; x < sheet.x + sheet.width; x += 6) {
          const box = boxAt({ ...request, at: [x, y] }, 'n');
          const distance = Math.hypot(x - request.at[0], y - request.at[1]);
          if (distance < nearest && free(box)) {
            nearest = distance;
            best = box;
          }
        }
      }
    }
    if (best) {
      if (best.leader) leaders.push(best.leader);
      placed.push(best);
      taken.push(best);
    } else if (!request.optional) left.push(request);
  }
  return { placed, left };
}
