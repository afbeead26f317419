import type { Drawing } from '../../../components/drawing/items.js';
import type { Measure } from '../../../components/drawing/measures.js';
import {
  type FrontViewOptions,
  type StrutBalloon,
  strutFrontView,
  tiltScale,
} from '../../../components/drawing/strut-front-view.js';
import { exampleStrut, type PlanarStrut, poseAt } from './planar-strut.js';

/** One balloon a hard point, every state among them. */
export const allBalloons: StrutBalloon[] = [
  { key: 'lowerArm.front', state: 'yours', label: 'Lower arm, front pivot' },
  { key: 'lowerArm.rear', state: 'yours', label: 'Lower arm, rear pivot' },
  { key: 'lowerArm.ball', state: 'problem', label: 'Lower ball joint' },
  { key: 'strut.top', state: 'example', label: 'Top mount' },
  { key: 'strut.low', state: 'next', label: 'Damper axis, low point' },
  { key: 'tieRod.inner', state: 'example', label: 'Tie rod, inner joint' },
  { key: 'tieRod.outer', state: 'example', label: 'Tie rod, outer joint' },
  { key: 'wheelCentre', state: 'yours', label: 'Wheel centre' },
];

/** Every dimension of the driveway, every state among them. */
export const allMeasures: Measure[] = [
  { key: 'armLength', text: '357', state: 'yours', label: 'Lower arm length' },
  { key: 'pivotHeight', text: '199', state: 'example', label: 'Height of the pivot axis' },
  { key: 'ballHeight', text: '185', state: 'problem', label: 'Height of the ball joint' },
  { key: 'wheelCentreHeight', text: '310', state: 'yours', label: 'Height of the wheel centre' },
  { key: 'damperLean', text: '7.5°', state: 'next', label: 'Lean of the damper' },
  { key: 'topHeight', text: '835', state: 'example', label: 'Height of the top mount' },
];

const signed = (value: number) => `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(2)}°`;

/** The front view with everything on it, as an element would ask for it. */
export function exampleDrawing(
  travel: number,
  options: FrontViewOptions = {},
  strut: PlanarStrut = exampleStrut,
): Drawing {
  const pose = poseAt(strut, travel);
  const reference = poseAt(strut, 0);
  return strutFrontView(pose, {
    reference,
    before: reference,
    beforeText: 'as built',
    camberText: signed(pose.camberDeg),
    dropText: `${Math.abs(travel)} mm`,
    balloons: allBalloons,
    tiltScale: tiltScale([-60, 0, 100].map((t) => poseAt(strut, t).camberDeg)),
    ...options,
  });
}
