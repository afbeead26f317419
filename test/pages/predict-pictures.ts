import { EXAMPLE_CORNER } from '../../core/document/example-corner.js';
import type { IndependentCorner } from '../reference/independent-strut.js';
import { TYRE } from './turn-pictures.js';
import { differences, TRAVELS, WRONG, type Wrong, wrongCorner } from './worked-predict.js';

/* Where the picture of the page on predicting parts has its lines: units of the drawing, from the corners of worked-predict.ts. */

type Place = readonly [x: number, y: number];
/** From the car's centreline and above the road, mm. */
type Spot = readonly [out: number, up: number];
/** What the tape has wrong is drawn so many times further, as the caption says. */
export const EXAGGERATED = 5;
const SCALE = 0.2;
const GROUND = 188;
/** mm from the centreline at the left edge of a column. */
const LEFT_EDGE = 200;
const COLUMN = 172;

/** Of the charts: their zero, and how much a mm and a degree are. */
const ZERO: Place = [81.5, 272];
const PER_MM = 1.3;
const PER_DEGREE = 260;
/** What a gauge shows in steps of 0.05° cannot tell. */
export const GAUGE_DEG = 0.05;

const spot = ([, y, z]: readonly [number, number, number]): Spot => [y, z];
const linesOf = ({ lowerArm, tieRod }: IndependentCorner): Record<string, Spot[]> => ({
  arm: [spot(lowerArm.front), spot(lowerArm.ball)],
  rod: [spot(tieRod.inner), spot(tieRod.outer)],
});

/** By what the paths are called: `together-arm`, `apart-stock`. */
export function predictPictures(): Record<string, Place[]> {
  const { wheelCentre, camber, strut, lowerArm, loadedRadius } = EXAMPLE_CORNER;
  const lean = (camber * Math.PI) / 180;
  const [, out, up] = wheelCentre;
  const wheel = TYRE.map(
    ([across, above]): Spot => [
      out + across * Math.cos(lean) + (above - loadedRadius) * Math.sin(lean),
      up - across * Math.sin(lean) + (above - loadedRadius) * Math.cos(lean),
    ],
  );
  const still = {
    wheel,
    strut: [spot(strut.low), spot(strut.top)],
    knuckle: [spot(strut.low), [out, up] as const, spot(lowerArm.ball)],
  };
  const right = linesOf(EXAMPLE_CORNER);
  return Object.fromEntries(
    (Object.keys(WRONG) as Wrong[]).flatMap((name, column) => {
      const onPage = ([y, z]: Spot): Place => [COLUMN * column + SCALE * (y - LEFT_EDGE), GROUND - SCALE * z];
      const wrong = linesOf(wrongCorner(name));
      const far = Object.entries(wrong).map(([line, spots]): [string, Spot[]] => [
        line,
        spots.map(([y, z], i) => {
          const [y0, z0] = right[line]![i]!;
          return [y0 + EXAGGERATED * (y - y0), z0 + EXAGGERATED * (z - z0)];
        }),
      ]);
      const inChart = (mm: number, degrees: number): Place => [
        COLUMN * column + ZERO[0] + PER_MM * mm,
        ZERO[1] - PER_DEGREE * degrees,
      ];
      const [low, high] = [TRAVELS[0]!, TRAVELS.at(-1)!];
      return [
        ...Object.entries(still).map(([line, spots]) => [`${name}-${line}`, spots.map(onPage)]),
        ...Object.entries(right).map(([line, spots]) => [`${name}-true-${line}`, spots.map(onPage)]),
        ...far.map(([line, spots]) => [`${name}-${line}`, spots.map(onPage)]),
        [
          `${name}-gauge`,
          [inChart(low, GAUGE_DEG), inChart(high, GAUGE_DEG), inChart(high, -GAUGE_DEG), inChart(low, -GAUGE_DEG)],
        ],
        ...(['stock', 'corrected'] as const).map((parts) => [
          `${name}-${parts}`,
          differences(name, parts).map((degrees, i) => inChart(TRAVELS[i]!, degrees)),
        ]),
      ] as [string, Place[]][];
    }),
  );
}
