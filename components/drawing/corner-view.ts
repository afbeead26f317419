import type { Motion } from '../../core/linkage/motion.js';
import { CORNER } from './corner.labels.js';
import { type CornerPoints, cornerPointsAt } from './corner-points.js';
import { type BalloonState, centreLine, type Drawing, ghost, type Item, type Look, type Point } from './items.js';
import { box, limb, roundedBox } from './outline.js';
import { joint, path } from './strut-parts.js';

/** From the front, from outside the car, from above; of the left corner, outboard to the right, forward to the left or up. */
export type CornerSide = 'front' | 'side' | 'top';

export interface CornerBalloon {
  /** Of the hard point. */
  key: keyof CornerPoints;
  number: number;
  state: BalloonState;
  /** What a screen reader says after the number. */
  label: string;
}

export interface CornerViewOptions {
  side: CornerSide;
  /** mm; the wheel is drawn where it stands then. */
  travel: number;
  /** Drawn dashed: the links without parts. */
  before?: Motion | undefined;
  balloons?: readonly CornerBalloon[];
  title: string;
}

/** Of a tyre, where nobody says how wide it is, mm. */
const TYRE_WIDTH = 205;
const MARGIN = 60;

type Space = readonly [x: number, y: number, z: number];

/** The links of a corner in one of three views, ISO 128: outlines wide, axes dash-dot, what was there before dashed. mm. */
export function cornerView(motion: Motion, { side, travel, before, balloons = [], title }: CornerViewOptions): Drawing {
  const points = cornerPointsAt(motion, travel);
  const home = cornerPointsAt(motion, 0);
  const ground = points.wheelCentre![2] - motion.loadedRadius;
  const page = onPage(side, ground);
  const homePage = onPage(side, home.wheelCentre![2] - motion.loadedRadius);
  const all = Object.values(home).map(homePage);
  const rights = all.map(([right]) => right);
  const ups = all.map(([, up]) => up);
  const wheel = wheelOutline(side, homePage(home.wheelCentre!), motion.loadedRadius);
  const outline = [...all, ...wheel];
  const middle = (Math.min(...rights) + Math.max(...rights)) / 2;
  const items: Item[] = [
    ...(side === 'top' ? [] : [{ kind: 'ground', height: 0 } satisfies Item]),
    ...wheelItems(side, page(points.wheelCentre!), motion.loadedRadius),
    ...(before ? linkItems(cornerPointsAt(before, travel), page, ghost) : []),
    ...linkItems(points, page),
    ...balloons.map(({ key, ...balloon }): Item => {
      const at = homePage(home[key]!);
      return {
        kind: 'balloon',
        key,
        ...balloon,
        at: page(points[key]!),
        home: at,
        side: at[0] < middle ? 'left' : 'right',
      };
    }),
    { kind: 'note', row: 0, align: 'start', text: CORNER.ways[side] },
  ];
  return {
    title,
    items,
    extent: [
      [
        Math.min(...outline.map(([right]) => right)) - MARGIN,
        side === 'top' ? Math.min(...outline.map(([, up]) => up)) - MARGIN : 0,
      ],
      [Math.max(...outline.map(([right]) => right)) + MARGIN, Math.max(...ups, ...wheel.map(([, up]) => up)) + MARGIN],
    ],
  };
}

const onPage =
  (side: CornerSide, ground: number) =>
  ([x, y, z]: Space): Point =>
    side === 'front' ? [y, z - ground] : side === 'side' ? [-x, z - ground] : [y, x];

function wheelOutline(side: CornerSide, [right, up]: Point, radius: number): Point[] {
  const half: readonly [number, number] =
    side === 'side' ? [radius, radius] : side === 'front' ? [TYRE_WIDTH / 2, radius] : [TYRE_WIDTH / 2, radius];
  return box(right - half[0], up - half[1], right + half[0], up + half[1]) as Point[];
}

function wheelItems(side: CornerSide, centre: Point, radius: number): Item[] {
  if (side === 'side') {
    return [
      { kind: 'circle', at: centre, radius, weight: 'narrow', ink: 'soft' },
      { kind: 'circle', at: centre, radius: 0.62 * radius, weight: 'narrow', ink: 'soft' },
    ];
  }
  const tyre = roundedBox(TYRE_WIDTH / 2, radius, 50).map(([right, up]): Point => [centre[0] + right, centre[1] + up]);
  return [path(tyre, { closed: true, weight: 'narrow', ink: 'soft', fill: 'tyre' })];
}

/** @param look of what was there before; without it each link has its own */
function linkItems(points: CornerPoints, page: (point: Space) => Point, look?: Look): Item[] {
  const [front, rear, ball] = (['lowerArm.front', 'lowerArm.rear', 'lowerArm.ball'] as const).map((key) =>
    page(points[key]!),
  ) as [Point, Point, Point];
  const at = (key: keyof CornerPoints) => points[key] && page(points[key]);
  const [upperFront, upperRear] = [at('upperArm.front'), at('upperArm.rear')];
  const upper = at('upperArm.ball') ?? at('strut.top')!;
  const low = at('strut.low') ?? at('damper.low');
  const top = at('strut.top') ?? at('damper.top');
  const [inner, outer, hub] = [at('tieRod.inner')!, at('tieRod.outer')!, at('wheelCentre')!];
  const arm = (a: Point, b: Point, tip: Point): Item[] =>
    look
      ? [path([a, tip, b], look)]
      : [{ kind: 'body', ink: 'now', fill: 'wash', outlines: [limb(a, 12, tip, 9), limb(b, 12, tip, 9)] }];
  const knuckleTop = at('upperArm.ball') ?? low!;
  if (look)
    return [
      ...arm(front, rear, ball),
      ...(upperFront && upperRear ? arm(upperFront, upperRear, upper) : []),
      path([inner, outer], look),
    ];
  return [
    { kind: 'body', fill: 'sheet', weight: 'narrow', outlines: [limb(inner, 6, outer, 6)] },
    {
      kind: 'body',
      fill: 'sheet',
      outlines: [
        limb(ball, 12, knuckleTop, 14),
        limb(hub, 26, ball, 12),
        limb(hub, 26, knuckleTop, 14),
        limb(hub, 14, outer, 8),
      ],
    },
    ...(low && top ? [{ kind: 'body', fill: 'sheet', outlines: [limb(low, 20, top, 9)] } satisfies Item] : []),
    ...(upperFront && upperRear ? arm(upperFront, upperRear, upper) : []),
    ...arm(front, rear, ball),
    path([front, rear], centreLine),
    path([ball, upper], centreLine),
    ...[
      front,
      rear,
      inner,
      outer,
      ...(upperFront && upperRear ? [upperFront, upperRear, upper] : []),
      ...(top ? [top] : []),
      ...(low ? [low] : []),
    ].map((one) => joint(one)),
    joint(ball, { ink: 'now', fill: 'solid' }),
    joint(hub),
  ];
}
