import type { Place } from '../../core/wheel/place.js';
import type { Ink, Item, Point } from '../drawing/items.js';
import { path } from '../drawing/strut-parts.js';

/** Side of the hatched block that stands for a place that is no lip, mm. */
const BLOCK_MM = 13;
/** Over its lip an arch goes on so far up and out, mm: sketched. */
export const ARCH_RISE_MM = 52;
export const ARCH_OUT_MM = 18;
const WALL_MM = 9;

/** What a place is on the page. */
export type PlaceShape = 'lip' | 'wall' | 'rod' | 'block';

const RODS: readonly Place['fixedTo'][] = ['tieRod', 'lowerArm', 'between'];

export function shapeOf({ name, fixedTo, at }: Place): PlaceShape {
  if (RODS.includes(fixedTo)) return 'rod';
  const isInner = 'clock' in at && at.from === 'inner';
  if (fixedTo === 'body' && isInner) return 'wall';
  return fixedTo === 'body' && /\blip\b/i.test(name) ? 'lip' : 'block';
}

/** The arch over a lip, cut through: from its turned-in edge up and over the wheel to the strut. */
export function archItems(lip: Point, inboard: number, weight: 'wide' | 'narrow'): Item[] {
  const [right, up] = lip;
  return [
    path(
      [
        lip,
        [right + ARCH_OUT_MM - 4, up - 1],
        [right + ARCH_OUT_MM, up + ARCH_RISE_MM - 18],
        [right - 24, up + ARCH_RISE_MM],
        [inboard, up + ARCH_RISE_MM],
      ],
      { weight, round: 34 },
    ),
  ];
}

/** What was measured, drawn where it was: its surface at the point, itself away from the tyre. @param way unit vector away from the tyre */
export function placeItems(shape: PlaceShape, point: Point, way: Point, ink: Ink): Item[] {
  const aside: Point = [way[1], -way[0]];
  const on = (along: number, across: number): Point => [
    point[0] + along * way[0] + across * aside[0],
    point[1] + along * way[1] + across * aside[1],
  ];
  switch (shape) {
    case 'lip':
      return [{ kind: 'circle', at: point, radiusPx: 3, ink, fill: 'solid' }];
    case 'rod':
      return [
        { kind: 'circle', at: on(11, 0), radius: 11, ink, fill: 'sheet' },
        { kind: 'circle', at: on(11, 0), radiusPx: 1.5, ink, fill: 'solid' },
      ];
    case 'wall':
      // Upright, whatever the way to the tyre is.
      return [
        path(
          [
            [point[0], point[1] - 50],
            [point[0], point[1] + 50],
            [point[0] - WALL_MM, point[1] + 50],
            [point[0] - WALL_MM, point[1] - 50],
          ],
          { closed: true, hatch: true, ink, fill: 'paper' },
        ),
      ];
    case 'block': {
      const half = BLOCK_MM / 2;
      return [
        path([on(0, -half), on(BLOCK_MM, -half), on(BLOCK_MM, half), on(0, half)], {
          closed: true,
          hatch: true,
          ink,
          fill: 'sheet',
        }),
      ];
    }
  }
}
