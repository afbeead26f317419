import { decimalMark } from '../../core/quantity/format.js';
import { type BalloonState, centreLine, type Drawing, type Item, type Point } from './items.js';
import { type Measure, measureItems } from './measures.js';
import { box, limb } from './outline.js';
import { STRUT } from './strut.labels.js';
import {
  alongDamper,
  beforeItems,
  camberItems,
  type FrontViewPose,
  halfWidthOf,
  joint,
  knuckleItems,
  moved,
  onPage,
  path,
  spring,
  tower,
  wheelItems,
} from './strut-parts.js';

export type { FrontViewPose };

export interface StrutBalloon {
  key: HardPointKey;
  state: BalloonState;
  /** What a screen reader says after the number. */
  label: string;
}

export interface FrontViewOptions {
  /** The corner at reference height: keeps scale, sheet and balloons still while `pose` moves. Default: `before`, else the pose itself. */
  reference?: FrontViewPose;
  /** Drawn dashed: the corner as it was built. */
  before?: FrontViewPose;
  beforeText?: string;
  camberText?: string;
  /** Dimension of the drop, from the body at reference to the body now. */
  dropText?: string;
  balloons?: readonly StrutBalloon[];
  /** Dimensions whose values are buttons. */
  measures?: readonly Measure[];
  /** false where nothing is known of it. Default true. */
  tieRod?: boolean;
  /** How many times the wheel's tilt is drawn; give `tiltScale` of a whole sweep to keep it still. */
  tiltScale?: number;
  /** Text of a distance in mm. Default: `metresText` in English. */
  distanceText?: (mm: number) => string;
  /** Room kept above for droop, mm. Default 40. */
  droop?: number;
  title?: string;
}

/**
 * Number on the sheet, the column in which its balloon stands, and how far above its point (mm) it would like to be: the top mount's
 * leader keeps off the construction line that leaves the mount sideways.
 */
const hardPoints = {
  'lowerArm.front': [1, 'left', 'armFront', 0],
  'lowerArm.rear': [2, 'left', 'armRear', 0],
  'lowerArm.ball': [3, 'right', 'ball', 0],
  'strut.top': [4, 'left', 'top', 60],
  'strut.low': [5, 'left', 'low', 0],
  'tieRod.inner': [6, 'left', 'tieInner', 0],
  'tieRod.outer': [7, 'right', 'tieOuter', 0],
  wheelCentre: [8, 'right', 'wheelCentre', 0],
} as const;
export type HardPointKey = keyof typeof hardPoints;

/** Beyond this the two lines are parallel for any eye: less than 0.5° apart. */
const PARALLEL_MM = 100_000;

/** The largest whole factor up to 5 at which no camber of a sweep (degrees) leans by more than 8° on the sheet. */
export const tiltScale = (cambersDeg: readonly number[]): number =>
  Math.max(1, Math.min(5, Math.floor(8 / Math.max(0.1, ...cambersDeg.map(Math.abs).filter(Number.isFinite)))));

/** A distance in mm as metres, to 0.1 m below 10 m, with the decimal mark of a language. */
export const metresText =
  (language: string) =>
  (mm: number): string =>
    `${(mm / 1000).toFixed(mm < 9950 ? 1 : 0).replace('.', decimalMark(language))} m`;

/** "instant centre 3.5 m inboard": how far, across the car, the pose's instant centre is from its wheel centre. */
export function instantCentreText(pose: FrontViewPose, distanceText = metresText('en')): string {
  const across = pose.instantCentre[0] - pose.wheelCentre[0];
  if (!(Math.abs(across) < PARALLEL_MM)) return STRUT.parallel;
  return across < 0 ? STRUT.inboard(distanceText(-across)) : STRUT.outboard(distanceText(across));
}

/** The front view of a strut corner. Pure; lengths mm, angles degrees. */
export function strutFrontView(pose: FrontViewPose, options: FrontViewOptions = {}): Drawing {
  const { before, camberText, dropText, beforeText, measures = [], tieRod: hasTieRod = true } = options;
  const reference = options.reference ?? before ?? pose;
  const page = onPage(pose.groundZ);
  const factor = options.tiltScale ?? tiltScale([reference.camberDeg, pose.camberDeg, before?.camberDeg ?? 0]);
  const lean = factor * pose.camberDeg;

  const [armPivot, ball, top, low, tieInner, tieOuter, centre] = [
    pose.armPivot,
    pose.ball,
    pose.top,
    pose.low,
    pose.tieInner,
    pose.tieOuter,
    pose.wheelCentre,
  ].map(page) as [Point, Point, Point, Point, Point, Point, Point];

  // The damper's parts hang on the point of its axis nearest the wheel centre, which the carrier takes with it.
  const up = alongDamper(top, low);
  const across: Point = [up[1], -up[0]];
  const stroke = (top[0] - centre[0]) * up[0] + (top[1] - centre[1]) * up[1];
  const onAxis = (above: number): Point => moved(top, up, above - stroke);
  const tubeTop = Math.min(pose.loadedRadius + 50, stroke - 60);
  const seat = tubeTop - 24;

  const inboard = !(pose.instantCentre[0] > centre[0]);
  const side = inboard ? -1 : 1;
  const target = Math.abs(pose.instantCentre[0]) < PARALLEL_MM ? page(pose.instantCentre) : undefined;
  const construction = (from: Point, direction: Point): Item => ({
    kind: 'construction',
    from,
    direction,
    target,
    dash: 'chain',
    ink: 'soft',
  });

  const items: Item[] = [
    { kind: 'ground', height: 0 },
    ...(before ? beforeItems(before, factor * before.camberDeg) : []),
    ...wheelItems(pose, centre, lean),
    construction(inboard ? armPivot : ball, [side * (ball[0] - armPivot[0]), side * (ball[1] - armPivot[1])]),
    construction(top, [side * across[0], side * across[1]]),
    ...(hasTieRod
      ? [{ kind: 'body', fill: 'sheet', weight: 'narrow', outlines: [limb(tieInner, 7, tieOuter, 7)] } satisfies Item]
      : []),
    ...knuckleItems(centre, lean, onAxis(76), ball, hasTieRod ? tieOuter : undefined),
    { kind: 'body', fill: 'sheet', outlines: [limb(onAxis(seat), 10, top, 10)] },
    path(
      [onAxis(40), onAxis(tubeTop)].flatMap((end, i) => [-25, 25].map((x) => moved(end, across, i ? -x : x))),
      {
        closed: true,
        fill: 'sheet',
      },
    ),
    path(
      [
        [40, -32],
        [40, 32],
        [118, 32],
        [118, -32],
      ].map(([along, aside]) => moved(onAxis(along!), across, aside!)),
      { closed: true, fill: 'sheet', round: 8 },
    ),
    ...[59, 99].map((along): Item => ({ kind: 'circle', at: onAxis(along), radius: 8, weight: 'narrow' })),
    ...spring(onAxis(seat), moved(top, up, -22), across),
    path(tower(top), { closed: true, fill: 'paper', hatch: true }),
    path([onAxis(-60), moved(top, up, 46)], centreLine),
    path(box(armPivot[0] - 52, armPivot[1] - 34, armPivot[0] - 24, armPivot[1] + 34), {
      closed: true,
      fill: 'paper',
      hatch: true,
    }),
    { kind: 'body', fill: 'sheet', outlines: [limb(moved(armPivot, [1, 0], -24), 22, armPivot, 20)] },
    { kind: 'body', ink: 'now', fill: 'wash', outlines: [limb(armPivot, 15, ball, 11)] },
    ...(hasTieRod ? [joint(tieInner), joint(tieOuter)] : []),
    joint(armPivot),
    joint(ball, { ink: 'now', fill: 'solid' }),
    joint(top),
  ];
  items.push(...measureItems(pose, reference, measures));
  if (camberText) items.push(...camberItems(pose, centre, lean, camberText));
  if (dropText) {
    const edge = top[0] + 96;
    const topBefore = pose.top[1] - pose.referenceGroundZ - 16;
    items.push({
      kind: 'dimension',
      from: [edge, topBefore],
      to: [edge, top[1] - 16],
      along: 'up',
      at: edge + 40,
      text: dropText,
    });
  }
  if (before && beforeText && Math.abs(before.groundZ - pose.groundZ) > 8) {
    const mount = onPage(before.groundZ)(before.top);
    const [at, places] =
      before.groundZ < pose.groundZ
        ? [moved(mount, [0, 1], 30), ['n', 'ne', 'nw'] as const]
        : [moved(mount, [-1, 0], 96), ['w', 'sw'] as const];
    items.push({ kind: 'label', at, text: beforeText, places, ink: 'before', optional: true });
  }
  items.push(
    { kind: 'note', row: 0, align: 'start', text: instantCentreText(pose, options.distanceText) },
    { kind: 'note', row: 1, align: 'start', text: STRUT.approximate },
    { kind: 'note', row: 1, align: 'end', text: STRUT.tilt(factor) },
  );
  for (const { key, state, label } of options.balloons ?? []) {
    const [number, column, name, lift] = hardPoints[key];
    const home = moved(onPage(reference.groundZ)(reference[name]), [0, 1], lift);
    items.push({ kind: 'balloon', key, number, at: page(pose[name]), home, side: column, state, label });
  }

  const droop = options.droop ?? 40;
  const half = halfWidthOf(reference);
  const swing = reference.loadedRadius * Math.sin((8 * Math.PI) / 180);
  return {
    title: options.title ?? STRUT.title(camberText),
    items,
    extent: [
      [Math.min(reference.armPivot[0] - 70, hasTieRod ? reference.tieInner[0] - 20 : Number.POSITIVE_INFINITY), 0],
      [reference.wheelCentre[0] + half + swing, reference.top[1] - reference.referenceGroundZ + 50 + droop],
    ],
  };
}
