import { centreLine, ghost, type Item, type Look, type Point } from './items.js';
import { above, box, disc, hull, limb, roundedBox } from './outline.js';

/**
 * A strut corner in front view, mm in the car's own axes [y, z]: body-fixed, z up, y outboard (the left corner; outboard is drawn to the
 * right). The ground is what moves: `groundZ` rises by the travel when the car comes down.
 */
export interface FrontViewPose {
  /** The lower arm's axis where it passes the transverse plane of the ball joint. */
  armPivot: Point;
  armFront: Point;
  armRear: Point;
  ball: Point;
  top: Point;
  /** Any second point on the damper's sliding axis. */
  low: Point;
  tieInner: Point;
  tieOuter: Point;
  wheelCentre: Point;
  /** Degrees, positive top outward. */
  camberDeg: number;
  groundZ: number;
  referenceGroundZ: number;
  /** May be far away or infinite (no instant centre: the wheel moves parallel to itself). */
  instantCentre: Point;
  loadedRadius: number;
  tyreWidth?: number;
}

/*
 * The parts of a strut corner as items on the page (ground at 0), mm. `lean` is the tilt drawn, degrees, top outboard positive: the wheel
 * and what turns with it on the hub lean by it about the wheel centre.
 */

export const path = (
  points: readonly Point[],
  look: Look & { closed?: boolean; round?: number; hatch?: boolean } = {},
): Item => ({
  kind: 'path',
  points,
  ...look,
});
export const joint = (at: Point, look: Look = {}): Item => ({
  kind: 'circle',
  at,
  radiusPx: 4.5,
  fill: 'sheet',
  ...look,
});
export const moved = (origin: Point, way: Point, distance: number): Point => [
  origin[0] + distance * way[0],
  origin[1] + distance * way[1],
];

/** The damper's axis, of length 1, upward. */
export function alongDamper(top: Point, low: Point): Point {
  const span = Math.hypot(top[0] - low[0], top[1] - low[1]);
  return [(top[0] - low[0]) / span, (top[1] - low[1]) / span];
}

/** Turns a shape about the origin by `degrees`, top to the right, and puts it at `centre`. */
const leaning = (centre: Point, degrees: number) => {
  const cos = Math.cos((degrees * Math.PI) / 180);
  const sin = Math.sin((degrees * Math.PI) / 180);
  return ([right, up]: Point): Point => [centre[0] + right * cos + up * sin, centre[1] - right * sin + up * cos];
};

/** Puts a pose on the page: the ground at 0, the body where the travel has taken it. */
export const onPage =
  (groundZ: number) =>
  (point: Point): Point => [point[0], point[1] - groundZ];

export const halfWidthOf = (pose: FrontViewPose) => (pose.tyreWidth ?? 205) / 2;

const tyreOutline = (pose: FrontViewPose, lean: number): Point[] => {
  const place = leaning(onPage(pose.groundZ)(pose.wheelCentre), lean);
  const half = halfWidthOf(pose);
  return above(roundedBox(half, pose.loadedRadius, 0.5 * half).map(place), 0);
};

/** The sheet-metal tower that holds the top mount. */
export const tower = (top: Point): Point[] =>
  [
    [-96, -16],
    [-84, -20],
    [-60, 12],
    [60, 12],
    [84, -20],
    [96, -16],
    [68, 30],
    [-68, 30],
  ].map(([right, up]): Point => [top[0] + right!, top[1] + up!]);

/** Spring on its two seats, in the zigzag of simplified representation (ISO 2162-1, from memory). */
export function spring(low: Point, high: Point, across: Point): Item[] {
  const turns = 9;
  const coil = Array.from({ length: turns + 1 }, (_, i): Point => {
    const share = i / turns;
    const middle: Point = [low[0] + share * (high[0] - low[0]), low[1] + share * (high[1] - low[1])];
    return moved(middle, across, i % 2 ? 52 : -52);
  });
  const seat = (at: Point) => path([moved(at, across, -62), moved(at, across, 62)]);
  return [path(coil, { weight: 'narrow' }), seat(low), seat(high)];
}

export function wheelItems(pose: FrontViewPose, centre: Point, lean: number): Item[] {
  const place = leaning(centre, lean);
  const half = halfWidthOf(pose);
  const radius = pose.loadedRadius;
  const rim = Math.max(0.5 * radius, radius - 1.1 * half);
  const well = 0.86 * half;
  const shape = (points: readonly (readonly number[])[], look: Look) =>
    path(
      points.map(([right, up]) => place([right!, up!])),
      { closed: true, weight: 'narrow', ...look },
    );
  const barrel = (up: number) => shape(box(-well, up - 7, well, up + 7), { fill: 'sheet' });
  const web = [
    [34, 62],
    [0.5 * half, rim - 7],
    [0.5 * half + 13, rim - 7],
    [46, 62],
  ];
  const lower = web.map(([right, up]) => [right!, -up!]).reverse();
  return [
    path(tyreOutline(pose, lean), { closed: true, fill: 'tyre' }),
    shape(box(-well, -rim, well, rim), { weight: 'none', fill: 'paper' }),
    barrel(rim),
    barrel(-rim),
    shape([...web, ...lower], { fill: 'sheet' }),
  ];
}

/** The casting from damper to ball joint with the steering arm (where its end is known), the hub flange before it. */
export function knuckleItems(centre: Point, lean: number, clamp: Point, ball: Point, tie: Point | undefined): Item[] {
  const place = leaning(centre, lean);
  const housing = box(-44, -44, 12, 44).map(place);
  return [
    {
      kind: 'body',
      fill: 'sheet',
      outlines: [
        hull([...disc(clamp, 26), ...housing, ...disc(ball, 17)]),
        ...(tie ? [limb(place([-20, 0]), 34, tie, 11)] : []),
      ],
    },
    path(box(12, -62, 34, 62).map(place), { closed: true, fill: 'sheet' }),
    path([place([-62, 0]), place([76, 0])], centreLine),
  ];
}

export function beforeItems(before: FrontViewPose, lean: number): Item[] {
  const page = onPage(before.groundZ);
  return [
    path(tyreOutline(before, lean), { ...ghost, closed: true }),
    path(tower(page(before.top)), { ...ghost, closed: true }),
    path([page(before.armPivot), page(before.ball)], ghost),
    joint(page(before.armPivot), { ...ghost, fill: 'paper' }),
  ];
}

/** Camber as an angle between the wheel's centre line and the vertical, above the tyre. */
export function camberItems(pose: FrontViewPose, centre: Point, lean: number, text: string): Item[] {
  const place = leaning(centre, lean);
  const end = pose.loadedRadius + 62;
  const level: Point = [0, pose.loadedRadius + 48];
  return [
    path([moved(centre, [0, 1], pose.loadedRadius + 8), moved(centre, [0, 1], end)], { weight: 'narrow' }),
    path([place([0, 8 - pose.loadedRadius]), place([0, end])], { ...centreLine, ink: 'now' }),
    { kind: 'angle', centre, radius: pose.loadedRadius + 40, from: 0, to: lean, ink: 'now', weight: 'wide' },
    {
      kind: 'label',
      at: lean > 0 ? place(level) : moved(centre, level, 1),
      text,
      places: ['e', 'ne', 'n', 'w', 'nw'],
      ink: 'now',
      size: 'value',
    },
  ];
}
