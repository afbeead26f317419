import type { Box, Px } from './geometry.js';
import type { BalloonItem, BalloonState } from './items.js';

/** A balloon on the sheet: its box is the area that takes a finger. */
export interface BalloonBox extends Box {
  key: string;
  number: number;
  state: BalloonState;
  label: string;
  centre: Px;
  /** The leader, from the circle's edge to the point. */
  leader: readonly [Px, Px];
}

/** Side of the area that takes a finger, px: WCAG 2.2, 2.5.5. */
export const TARGET = 44;
export const BALLOON_RADIUS = 14;
/** The width a column of balloons takes from the sheet, px. */
export const COLUMN = TARGET + 4;
const PITCH = TARGET + 1;

export const columnHeight = (balloons: readonly BalloonItem[]): number =>
  PITCH * Math.max(...['left', 'right'].map((side) => balloons.filter((balloon) => balloon.side === side).length));

const distance = (a: Px, b: Px): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Heights as near as can be to those wished for (ascending), one pitch apart, between top and bottom. */
function spread(wished: readonly number[], top: number, bottom: number): number[] {
  const heights: number[] = [];
  for (const wish of wished) heights.push(Math.max(wish, (heights.at(-1) ?? top - PITCH) + PITCH));
  for (let i = heights.length - 1, limit = bottom; i >= 0; i--, limit -= PITCH) {
    limit = Math.min(limit, heights[i]!);
    heights[i] = limit;
  }
  return heights;
}

/**
 * Places balloons in two columns at the edges of the sheet. Slots and order follow the homes alone. Leaders of the least total length do
 * not cross (two that cross can always be swapped for two that are shorter), so pairs are swapped while that shortens them.
 */
export function placeBalloons(
  balloons: readonly BalloonItem[],
  toPx: (point: readonly [number, number]) => Px,
  width: number,
  top: number,
  bottom: number,
): BalloonBox[] {
  const centres = new Map<BalloonItem, Px>();
  for (const side of ['left', 'right']) {
    const x = side === 'left' ? COLUMN / 2 : width - COLUMN / 2;
    const column = balloons
      .filter((balloon) => balloon.side === side)
      .map((balloon) => ({ balloon, home: toPx(balloon.home) }))
      .sort((a, b) => a.home[1] - b.home[1] || a.balloon.number - b.balloon.number);
    const slots = spread(
      column.map((entry) => entry.home[1]),
      top + TARGET / 2,
      bottom - TARGET / 2,
    ).map((y): Px => [x, y]);
    const length = (i: number, slot: number) => distance(column[i]!.home, slots[slot]!);
    for (let swapped = true; swapped; ) {
      swapped = false;
      for (let j = 1; j < column.length; j++) {
        for (let i = 0; i < j; i++) {
          if (length(i, j) + length(j, i) < length(i, i) + length(j, j) - 0.01) {
            [column[i], column[j]] = [column[j]!, column[i]!];
            swapped = true;
          }
        }
      }
    }
    column.forEach((entry, i) => {
      centres.set(entry.balloon, slots[i]!);
    });
  }
  return balloons.map((balloon) => {
    const centre = centres.get(balloon)!;
    const end = toPx(balloon.at);
    const share = BALLOON_RADIUS / distance(centre, end);
    const start: Px = [centre[0] + share * (end[0] - centre[0]), centre[1] + share * (end[1] - centre[1])];
    const { key, number, state, label } = balloon;
    const box = { x: centre[0] - TARGET / 2, y: centre[1] - TARGET / 2, width: TARGET, height: TARGET };
    return { ...box, key, number, state, label, centre, leader: [start, end] };
  });
}
