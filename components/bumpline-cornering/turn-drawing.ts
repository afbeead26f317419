import type { CorneringAnswer, WheelInTurn } from '../../core/answers/cornering-answer.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { DrawingOptions } from '../drawing/drawing-slot.js';
import { centreLine, type Drawing, type Item, type Look, type Point } from '../drawing/items.js';
import { box, roundedBox } from '../drawing/outline.js';
import { path } from '../drawing/strut-parts.js';
import { type Display, show } from '../element/sentence.js';
import { NAMES } from './bumpline-cornering.labels.js';
import type { CorneringView } from './cornering-view.js';

const { drawing: WORDS } = NAMES;

/** Of the car that is drawn, mm: invented, and the same whatever car is asked about. */
const HALF_TRACK = 740;
const TYRE_HALF = 102;
const TYRE_RADIUS = 315;
/** The right half of a body from behind, from the middle of its floor round to the middle of its roof; the arch with it. */
const BODY: readonly Point[] = [
  [0, 210],
  [600, 210],
  [600, 560],
  [650, 690],
  [740, 725],
  [850, 690],
  [882, 640],
  [890, 800],
  [850, 930],
  [720, 985],
  [610, 1330],
  [520, 1395],
  [0, 1410],
];
const WINDOW: readonly Point[] = [
  [0, 1000],
  [610, 1000],
  [530, 1300],
  [0, 1315],
];
/** How far from upright a line may lean on the sheet, degrees, before tilts are drawn less large. */
const MOST_LEAN = 12;
const MOST_TIMES = 4;
/** A roll centre further off is not on the sheet. */
const ROLL_CENTRE_WITHIN: readonly [aside: number, low: number, high: number] = [1000, -60, 900];

const DEG = Math.PI / 180;

/** A point turned about another, degrees, to the right as positive. */
const turned = ([right, up]: Point, degrees: number, [aside, above]: Point = [0, 0]): Point => {
  const [sin, cos] = [Math.sin(degrees * DEG), Math.cos(degrees * DEG)];
  return [aside + (right - aside) * cos + (up - above) * sin, above - (right - aside) * sin + (up - above) * cos];
};

const mirrored = (points: readonly Point[]): Point[] => [
  ...points,
  ...points.map(([right, up]): Point => [-right, up]).reverse(),
];

/** How many times larger than they are the tilts of a turn are drawn. */
export const timesOf = ({ roll, outer, inner }: Pick<CorneringAnswer, 'roll' | 'outer' | 'inner'>): number =>
  Math.max(
    1,
    Math.min(
      MOST_TIMES,
      Math.floor(MOST_LEAN / Math.max(0.1, roll, Math.abs(outer.inclination), Math.abs(inner.inclination))),
    ),
  );

/** The rolled car from behind: both wheels to the road, and where the body rolls about. */
export function turnDrawing(
  view: Pick<CorneringView, 'answer' | 'display'>,
  level: () => CorneringAnswer | undefined,
): Pick<DrawingOptions, 'draw' | 'key'> {
  return {
    key: () => [view.answer, level(), JSON.stringify(view.display)],
    draw: () => view.answer && drawn(view.answer, level(), view.display),
  };
}

function drawn(answer: CorneringAnswer, level: CorneringAnswer | undefined, display: Display): Drawing {
  const { outer, inner, roll } = answer;
  const times = timesOf(answer);
  const said = times === 1 ? WORDS.asIs : WORDS.times(times);
  const body = (points: readonly Point[]) => points.map((point) => turned(point, times * roll));
  const angle = (degrees: number) => signed(degrees, display);
  return {
    title: WORDS.title(said, angle(outer.inclination), angle(inner.inclination)),
    extent: [
      [-1010, -20],
      [1180, 1500],
    ],
    items: [
      { kind: 'ground', height: 0 },
      path(body(mirrored(BODY)), { closed: true, fill: 'sheet' }),
      path(body(mirrored(WINDOW)), { closed: true, fill: 'paper', weight: 'narrow', ink: 'soft' }),
      path(
        body([
          [0, 210],
          [0, 1480],
        ]),
        centreLine,
      ),
      path(
        [
          [0, 0],
          [0, 1480],
        ],
        { weight: 'narrow', dash: 'dashed', ink: 'soft' },
      ),
      ...wheel(inner, -1, times),
      ...wheel(outer, 1, times),
      ...rollCentreItems(answer, level, display),
      { kind: 'note', row: 0, align: 'start', text: WORDS.wheel(NAMES.inner, angle(inner.inclination)) },
      { kind: 'note', row: 0, align: 'end', text: WORDS.wheel(NAMES.outer, angle(outer.inclination)) },
      { kind: 'note', row: 1, align: 'start', text: `${WORDS.turn}; ${said}` },
    ],
  };
}

/** A wheel on the road, leaning as it does to the road. */
function wheel({ inclination }: WheelInTurn, side: 1 | -1, times: number): Item[] {
  const at: Point = [side * HALF_TRACK, 0];
  const lean = side * times * inclination;
  const place = ([right, up]: Point): Point => turned([at[0] + right, up + TYRE_RADIUS], lean, at);
  const shape = (points: readonly Point[], look: Look) => path(points.map(place), { closed: true, ...look });
  const ink = side === 1 ? 'now' : 'ink';
  return [
    shape(roundedBox(TYRE_HALF, TYRE_RADIUS, 48), { fill: 'tyre' }),
    shape(box(-0.8 * TYRE_HALF, -200, 0.8 * TYRE_HALF, 200), { weight: 'narrow', fill: 'paper' }),
    path([at, [at[0], 2 * TYRE_RADIUS + 120]], { weight: 'narrow', dash: 'dashed', ink: 'soft' }),
    path([place([0, -TYRE_RADIUS]), place([0, TYRE_RADIUS + 120])], { ...centreLine, weight: 'wide', ink }),
  ];
}

/** Where the body rolls about, in its true place; and where it was with the body level. */
function rollCentreItems(answer: CorneringAnswer, level: CorneringAnswer | undefined, display: Display): Item[] {
  const place = (of: CorneringAnswer | undefined): Point | undefined => {
    const { height, offset } = of?.rollCentre ?? { height: Number.NaN, offset: Number.NaN };
    const [aside, low, high] = ROLL_CENTRE_WITHIN;
    return Math.abs(offset) <= aside && height >= low && height <= high ? [offset, height] : undefined;
  };
  const [here, before] = [place(answer), place(level)];
  if (!answer.rollCentre) return [];
  if (!here) return [{ kind: 'note', row: 2, align: 'start', text: WORDS.rollCentreFar }];
  const height = show(Math.round(answer.rollCentre.height), 'travel', display);
  return [
    ...(before && Math.hypot(before[0] - here[0], before[1] - here[1]) > 4
      ? [
          path([before, here], { weight: 'narrow', ink: 'before' }),
          { kind: 'circle', at: before, radiusPx: 4, ink: 'before', fill: 'paper', weight: 'narrow' } as const,
        ]
      : []),
    { kind: 'circle', at: here, radiusPx: 4.5, ink: 'now', fill: 'solid' },
    {
      kind: 'label',
      at: here,
      text: WORDS.rollCentreAt(height),
      places: ['ne', 'se', 'n', 's', 'nw', 'sw'],
      optional: true,
    },
  ];
}

const signed = (degrees: number, { units, language }: Display): string =>
  formatQuantity(degrees, 'camber', units, { language, sign: 'always' }).text;
