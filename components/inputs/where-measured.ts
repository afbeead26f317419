import { html, type TemplateResult } from 'lit';
import { centreLine, type Drawing, type Item, type Point } from '../drawing/items.js';
import { layout } from '../drawing/layout.js';
import { type MeasureKey, measureItems } from '../drawing/measures.js';
import { renderPicture } from '../drawing/render.js';
import { type FrontViewPose, strutFrontView } from '../drawing/strut-front-view.js';
import { alongDamper, path } from '../drawing/strut-parts.js';
import { WHERE } from './where.labels.js';

/** A corner in front view, the same for every car: it shows from where to where one measures. mm. */
const POSE: FrontViewPose = {
  armPivot: [356, 195],
  armFront: [356, 193],
  armRear: [362, 198],
  ball: [694, 176],
  top: [574, 822],
  low: [625, 462],
  tieInner: [340, 256],
  tieOuter: [664, 245],
  wheelCentre: [738, 302],
  camberDeg: 0,
  groundZ: 0,
  referenceGroundZ: 0,
  instantCentre: [-5000, 260],
  loadedRadius: 302,
};

const WIDTH = 328;
/** Of a picture of the whole strut, and of the scale at which its lower part alone is shown, px. */
const WHOLE_PX = 258;
const LARGE_PX = 350;
/** What is above this is left out where nothing up there is measured, mm. */
const CUT_MM = 640;

/** What can be shown: six measurements of the driveway, and two more. */
export type ShownMeasure = MeasureKey | 'kingpin' | 'hubOffset';

/** Where the ball joint's name stands, over the arm. */
const BALL_NAME: Point = [600, 320];

/** Those whose dimension lines stand outboard of the wheel. */
const isOutboard = (key: ShownMeasure): boolean => key === 'ballHeight' || key === 'wheelCentreHeight';

const isHigh = (key: ShownMeasure): boolean => key === 'topHeight' || key === 'damperLean' || key === 'kingpin';

const mark = (at: Point): Item => ({ kind: 'circle', at, radiusPx: 4.5, ink: 'now', fill: 'solid' });

const ENDS: Readonly<Record<ShownMeasure, readonly Point[]>> = {
  armLength: [POSE.armPivot, POSE.ball],
  pivotHeight: [POSE.armPivot],
  ballHeight: [POSE.ball],
  wheelCentreHeight: [POSE.wheelCentre],
  topHeight: [POSE.top],
  damperLean: [],
  kingpin: [POSE.ball, POSE.top],
  hubOffset: [POSE.ball],
};

function measured(key: ShownMeasure): Item[] {
  if (key === 'kingpin') return leanOf(POSE.ball);
  if (key === 'hubOffset') return offset();
  const items = measureItems(POSE, POSE, [{ key, text: '', state: 'yours', label: '' }]);
  const lines = items.filter(({ kind }) => kind !== 'chip').map((item) => ({ ...item, ink: 'now' }) as Item);
  return key === 'damperLean' ? [...lines, gauge()] : lines;
}

/** From a plumb line through the top mount to the line down to a point. */
function leanOf(to: Point): Item[] {
  const { top } = POSE;
  const turn = (Math.atan2(to[0] - top[0], top[1] - to[1]) * 180) / Math.PI;
  return [
    path([top, [top[0], 330]], { ...centreLine, ink: 'now' }),
    path([top, to], { weight: 'wide', ink: 'now' }),
    { kind: 'angle', centre: top, radius: 420, from: 180 - turn, to: 180, ink: 'now', weight: 'narrow' },
  ];
}

/** Along the floor, from below the ball joint to the middle of the tyre. */
function offset(): Item[] {
  const [{ ball }, middle] = [POSE, POSE.wheelCentre[0]];
  return [
    path([ball, [ball[0], 0]], { ...centreLine, ink: 'now' }),
    path(
      [
        [middle, 620],
        [middle, 0],
      ],
      { ...centreLine, ink: 'now' },
    ),
    { kind: 'dimension', from: [ball[0], 60], to: [middle, 60], along: 'right', at: 60, ink: 'now' },
  ];
}

/** Laid along the damper's tube. */
function gauge(): Item {
  const { top, low } = POSE;
  const up = alongDamper(top, low);
  const at = (along: number, aside: number): Point => [
    low[0] + along * up[0] - aside * up[1],
    low[1] + along * up[1] + aside * up[0],
  ];
  return path([at(-30, 28), at(84, 28), at(84, 58), at(-30, 58)], {
    closed: true,
    ink: 'now',
    fill: 'wash',
    round: 14,
  });
}

const label = (text: string, at: Point, ...places: ('n' | 'e' | 's' | 'w' | 'ne' | 'nw' | 'se' | 'sw')[]): Item => ({
  kind: 'label',
  at,
  text,
  places,
  ink: 'soft',
});

function drawingOf(key: ShownMeasure): Drawing {
  const view = strutFrontView(POSE, { tieRod: false, droop: 0, tiltScale: 1, title: WHERE.measured });
  const parts = view.items.filter(({ kind }) => kind !== 'construction' && kind !== 'note');
  const names = [
    label(WHERE.arm, [450, 206], 'n', 'nw', 'ne'),
    ...(isHigh(key)
      ? [label(WHERE.topMount, [670, 822], 'e', 'se'), label(WHERE.damper, [640, 650], 'e')]
      : [path([POSE.ball, BALL_NAME], { weight: 'narrow', ink: 'soft' }), label(WHERE.ball, BALL_NAME, 'w')]),
    label(WHERE.floor, isOutboard(key) ? [300, 0] : [900, 0], 'ne'),
  ];
  return { ...view, items: [...parts, ...measured(key), ...ENDS[key].map(mark), ...names] };
}

/** Where a tape is held, or a gauge is laid, on the drawing of a strut. `kingpin`: the line through ball joint and top mount. */
export function renderWhereMeasured(key: ShownMeasure): TemplateResult {
  const laid = layout(drawingOf(key), WIDTH, isHigh(key) ? WHOLE_PX : LARGE_PX);
  const top = isHigh(key) ? 0 : Math.max(0, laid.height - laid.scale * CUT_MM - 24);
  return html`<div class="where drawing">${renderPicture(laid, top)}</div>`;
}
