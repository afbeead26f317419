import { ROLL, type Setup, sharesOf } from './worked-turn.js';

/* Where the pictures of the page on camber in the turn have their lines: units of the drawings, from the shares of worked-turn.ts. */

type Place = readonly [x: number, y: number];
/** Tilts are drawn so many times larger, as the caption says. */
export const EXAGGERATED = 3;
const RADIANS = Math.PI / 180;

/** From behind: mm to the right of the middle and above the road. */
const onPage = ([right, up]: Place): Place => [170 + 0.17 * right, 268 - 0.17 * up];
const ROLL_CENTRE_MM = 75;

/** A place of the body, mm, after its roll to the right. */
function rolled([right, up]: Place): Place {
  const angle = EXAGGERATED * ROLL * RADIANS;
  const above = up - ROLL_CENTRE_MM;
  return onPage([
    right * Math.cos(angle) + above * Math.sin(angle),
    ROLL_CENTRE_MM + above * Math.cos(angle) - right * Math.sin(angle),
  ]);
}

const HALF_WIDTH = 95;
const FLAT = 60;
const SHOULDER = 38;
const TALL = 604;

/** A place of a wheel, mm outboard of its middle and above its foot, tilted by its angle to the road. */
function leaned(side: 1 | -1, degrees: number) {
  const angle = EXAGGERATED * degrees * RADIANS;
  const { track } = sharesOf('stock');
  // On the edge of its tread.
  const lift = FLAT * Math.abs(Math.sin(angle));
  return ([out, up]: Place): Place =>
    onPage([
      side * (track / 2 + out * Math.cos(angle) + up * Math.sin(angle)),
      lift + up * Math.cos(angle) - out * Math.sin(angle),
    ]);
}
/** Of a wheel: mm outboard of its middle and above its foot. */
export const TYRE: readonly Place[] = [
  [-FLAT, 0],
  [FLAT, 0],
  [HALF_WIDTH, SHOULDER],
  [HALF_WIDTH, TALL - SHOULDER],
  [FLAT, TALL],
  [-FLAT, TALL],
  [-HALF_WIDTH, TALL - SHOULDER],
  [-HALF_WIDTH, SHOULDER],
];
const BODY: readonly Place[] = [
  [600, 230],
  [600, 690],
  [840, 690],
  [830, 800],
  [760, 900],
  [640, 930],
  [520, 1330],
  [440, 1390],
];

/** By what the paths are called in the picture of the rolled car. */
export function rolledCar(): Record<string, Place[]> {
  const { road, inner } = sharesOf('stock');
  const [outerWheel, innerWheel] = [leaned(1, road), leaned(-1, inner)];
  const left = BODY.map(([right, up]) => [-right, up] as const).reverse();
  const half = sharesOf('stock').track / 2;
  return {
    body: [...BODY, ...left].map(rolled),
    window: (
      [
        [570, 960],
        [478, 1300],
        [-478, 1300],
        [-570, 960],
      ] as const
    ).map(rolled),
    outer: TYRE.map(outerWheel),
    inner: TYRE.map(innerWheel),
    middle: (
      [
        [0, ROLL_CENTRE_MM],
        [0, 1500],
      ] as const
    ).map(rolled),
    'middle-upright': (
      [
        [0, 0],
        [0, 1500],
      ] as const
    ).map(onPage),
    'outer-plane': (
      [
        [0, 0],
        [0, 860],
      ] as const
    ).map(outerWheel),
    'outer-upright': (
      [
        [half, 0],
        [half, 860],
      ] as const
    ).map(onPage),
    'inner-plane': (
      [
        [0, 0],
        [0, 860],
      ] as const
    ).map(innerWheel),
    'inner-upright': (
      [
        [-half, 0],
        [-half, 860],
      ] as const
    ).map(onPage),
  };
}

export const BARS: readonly [setup: Setup, top: number][] = [
  ['stock', 46],
  ['low', 128],
  ['joint', 210],
  ['degree', 292],
];
const LANE = 16;
const THICK = 12;
const onScale = (degrees: number) => 134 + 56 * degrees;

/** Corners of each bar, by setup and share; each begins where the one before it ended. */
export function bars(): Record<string, Place[]> {
  return Object.fromEntries(
    BARS.flatMap(([setup, top]) => {
      const { standing, bump, roll, road } = sharesOf(setup);
      const ends = [0, standing, standing + bump, standing + bump + roll];
      const bar = (name: string, i: number): [string, Place[]] => {
        const [from, to] = [onScale(ends[i]!), onScale(ends[i + 1]!)];
        const y = top + LANE * i;
        return [
          `${setup}-${name}`,
          [
            [from, y],
            [to, y],
            [to, y + THICK],
            [from, y + THICK],
          ],
        ];
      };
      return [
        bar('static', 0),
        bar('bump', 1),
        bar('roll', 2),
        [
          `${setup}-road`,
          [
            // Below the foot of the words beside the bar above.
            [onScale(road), top + LANE * 2 + 2],
            [onScale(road), top + LANE * 2 + THICK + 5],
          ],
        ] as [string, Place[]],
      ];
    }),
  );
}
