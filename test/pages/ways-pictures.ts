import { EXAMPLE_CORNER } from '../../core/document/example-corner.js';
import type { IndependentCorner } from '../reference/independent-strut.js';
import { TYRE } from './turn-pictures.js';
import { changeOf, cornerWith, STEERS, WAYS, type Way } from './worked-ways.js';

/* Where the pictures of the page on ways to add camber have their lines: units of the drawings, from the corners of worked-ways.ts. */

type Place = readonly [x: number, y: number];
/** From the car's centreline and above the road, mm. */
type Spot = readonly [out: number, up: number];
/** What moves is drawn so many times further, as the caption says. */
export const EXAGGERATED = 5;
const SCALE = 0.18;
/** Places of the small drawings: the car as it is, then each way. */
export const PANELS: readonly ('stock' | Way)[] = ['stock', ...WAYS];
export const PANEL_WIDTH = 113;
export const PANEL_HEIGHT = 214;
export const GROUND = 180;
/** mm from the centreline at a small drawing's left edge. */
const LEFT_EDGE = 332;

/** Spots of a corner by the names of its lines. */
function linesOf({ wheelCentre, camber, lowerArm, strut }: IndependentCorner): Record<string, Spot[]> {
  const lean = (camber * Math.PI) / 180;
  const [, out, up] = wheelCentre;
  const ofWheel = ([across, above]: Spot): Spot => [
    out + across * Math.cos(lean) + (above - EXAMPLE_CORNER.loadedRadius) * Math.sin(lean),
    up - across * Math.sin(lean) + (above - EXAMPLE_CORNER.loadedRadius) * Math.cos(lean),
  ];
  const spot = ([, y, z]: readonly [number, number, number]): Spot => [y, z];
  const [ball, top, low] = [lowerArm.ball, strut.top, strut.low].map(spot) as [Spot, Spot, Spot];
  // To the road and a little over the mount.
  const along = (share: number): Spot => [ball[0] + share * (top[0] - ball[0]), ball[1] + share * (top[1] - ball[1])];
  return {
    wheel: TYRE.map(ofWheel),
    arm: [spot(lowerArm.front), ball],
    strut: [low, top],
    knuckle: [low, [out, up], ball],
    axis: [along(-ball[1] / (top[1] - ball[1])), along(1.08)],
  };
}

const before = linesOf(EXAMPLE_CORNER);
/** What stays dashed beside what is new. */
const DASHED = ['wheel', 'axis'];

/** By what the paths are called, `way-line`; those of the car as it was `way-old-line`. */
export function wayPictures(): Record<string, Place[]> {
  return Object.fromEntries(
    PANELS.flatMap((panel, i) => {
      const left = (i % 3) * PANEL_WIDTH;
      const top = Math.floor(i / 3) * PANEL_HEIGHT;
      const onPage = ([out, up]: Spot): Place => [left + SCALE * (out - LEFT_EDGE), top + GROUND - SCALE * up];
      const after = panel === 'stock' ? before : linesOf(cornerWith(panel));
      const lines = Object.entries(after).map(([line, spots]): [string, Place[]] => [
        `${panel}-${line}`,
        spots
          .map((spot, j): Spot => {
            const from = before[line]![j]!;
            return [from[0] + EXAGGERATED * (spot[0] - from[0]), from[1] + EXAGGERATED * (spot[1] - from[1])];
          })
          .map(onPage),
      ]);
      if (panel === 'stock') return lines;
      return [
        ...lines,
        ...DASHED.map((line): [string, Place[]] => [`${panel}-old-${line}`, before[line]!.map(onPage)]),
      ];
    }),
  );
}

export const BARS: readonly [way: Way, top: number][] = [
  ['topMount', 34],
  ['knuckle', 134],
];
export const LANE = 22;
const THICK = 14;
const BAR_LEFT = 44;
/** Of a degree. */
const BAR_LENGTH = 236;

/** What is left of the degree at 0, 15 and 30° of steer, degrees. */
export const leftOf = (way: Way): number[] => {
  const { camber, inclinationAt15, inclinationAt30 } = changeOf(way);
  return [camber, inclinationAt15, inclinationAt30].map((change) => -change);
};

/** Corners of each bar, by way and steer. */
export function steerBars(): Record<string, Place[]> {
  return Object.fromEntries(
    BARS.flatMap(([way, top]) =>
      leftOf(way).map((left, i): [string, Place[]] => {
        const [y, right] = [top + LANE * i, BAR_LEFT + BAR_LENGTH * left];
        return [
          `${way}-${[0, ...STEERS][i]}`,
          [
            [BAR_LEFT, y],
            [right, y],
            [right, y + THICK],
            [BAR_LEFT, y + THICK],
          ],
        ];
      }),
    ),
  );
}
