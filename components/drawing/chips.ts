import { TARGET } from './balloons.js';
import { type Box, contains, overlap, type Px } from './geometry.js';
import type { BalloonState, ChipItem } from './items.js';
import { textWidth } from './text.js';

/** A value on the sheet: its box is the area that takes a finger, `frame` what is drawn. */
export interface ChipBox extends Box {
  key: string;
  text: string;
  state: BalloonState;
  label: string;
  centre: Px;
  frame: Box;
  /** From the frame to what the value belongs to, where the chip had to stand aside. */
  leader?: readonly [Px, Px];
}

const CHIP_SIZE = 14;
const FRAME_HEIGHT = 28;
const STEP = 5;
/** Nearer than this to the frame one sees what it belongs to, px. */
const ON_THE_LINE = 12;

export const chipWidth = (text: string): number => textWidth(text, CHIP_SIZE, true) + 12;

/**
 * Places values as buttons inside `sheet`, none on another: each at its home, else along its dimension line, else at the nearest spot
 * that is free. Earlier items go first. One that finds no room at all is left out.
 */
export function placeChips(
  chips: readonly ChipItem[],
  toPx: (point: readonly [number, number]) => Px,
  sheet: Box,
): ChipBox[] {
  const placed: ChipBox[] = [];
  for (const { key, text, state, label, along, ...chip } of chips) {
    const home = toPx(chip.home);
    const at = toPx(chip.at);
    const wide = chipWidth(text);
    const width = Math.max(TARGET, wide);
    const boxAt = ([x, y]: Px): Box => ({ x: x - width / 2, y: y - TARGET / 2, width, height: TARGET });
    const free = (centre: Px) => {
      const box = boxAt(centre);
      return contains(sheet, box) && !placed.some((other) => overlap(box, other));
    };
    const centre = nearestFree(home, along, sheet, free);
    if (!centre) continue;
    const frame = { x: centre[0] - wide / 2, y: centre[1] - FRAME_HEIGHT / 2, width: wide, height: FRAME_HEIGHT };
    const leader = [edgeTowards(frame, centre, at), at] as const;
    const isAside = Math.hypot(leader[1][0] - leader[0][0], leader[1][1] - leader[0][1]) > ON_THE_LINE;
    placed.push({
      ...boxAt(centre),
      key,
      text,
      state,
      label,
      centre,
      frame,
      ...(isAside && { leader }),
    });
  }
  return placed;
}

function nearestFree(home: Px, along: ChipItem['along'], sheet: Box, free: (centre: Px) => boolean): Px | undefined {
  const most = Math.max(sheet.width, sheet.height);
  // A step off the line costs four along it.
  for (let reach = 0; reach <= most; reach += STEP) {
    for (let off = 0; off <= reach / 4; off += STEP) {
      for (const [side, way] of [
        [1, 1],
        [1, -1],
        [-1, 1],
        [-1, -1],
      ] as const) {
        const on = way * (reach - 4 * off);
        const aside = side * off;
        const centre: Px = along === 'up' ? [home[0] + aside, home[1] - on] : [home[0] + on, home[1] + aside];
        if (free(centre)) return centre;
      }
    }
  }
  return undefined;
}

/** Where the way from the middle of a frame to a point leaves it. */
function edgeTowards(frame: Box, centre: Px, point: Px): Px {
  const [dx, dy] = [point[0] - centre[0], point[1] - centre[1]];
  const share = Math.min(1, frame.width / 2 / (Math.abs(dx) || 1e-9), frame.height / 2 / (Math.abs(dy) || 1e-9));
  return [centre[0] + share * dx, centre[1] + share * dy];
}
