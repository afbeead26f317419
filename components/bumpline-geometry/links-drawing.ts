import { outputAt } from '../../core/answers/geometry-at.js';
import type { HardPointKey } from '../../core/linkage/corner.js';
import type { Motion } from '../../core/linkage/motion.js';
import { formatQuantity } from '../../core/quantity/format.js';
import { type CornerBalloon, type CornerSide, cornerView } from '../drawing/corner-view.js';
import type { DrawingOptions } from '../drawing/drawing-slot.js';
import type { BalloonState, Drawing } from '../drawing/items.js';
import { poseAtTravel } from '../drawing/pose-at.js';
import { metresText, type StrutBalloon, strutFrontView, tiltScale } from '../drawing/strut-front-view.js';
import { POINT_SHEETS } from '../inputs/car-sheets.js';
import { NAMES } from './bumpline-geometry.labels.js';
import type { GeometryView } from './geometry-view.js';
import { heightName } from './views.js';

/** How far below reference height the drawing keeps room for, mm. */
const SHOWN_DROOP_MM = 50;

type View = Pick<GeometryView, 'answer' | 'display'>;

/**
 * The links at some travel, with the chosen set of parts on, beside the bare ones.
 *
 * @param side from where one looks
 * @param stateOf how each hard point is known; undefined where there is no sheet to enter it
 */
export function linksDrawing(
  view: View,
  side: () => CornerSide,
  stateOf: (key: string) => BalloonState | undefined,
): Pick<DrawingOptions, 'draw' | 'key'> {
  return {
    key(travel) {
      const balloons = balloonsOf(stateOf);
      return [travel, view.answer, side(), JSON.stringify(view.display), ...balloons.map(({ state }) => state)];
    },
    draw: (travel) => draw(view, side(), balloonsOf(stateOf), travel),
  };
}

const balloonsOf = (stateOf: (key: string) => BalloonState | undefined): CornerBalloon[] =>
  POINT_SHEETS.flatMap(({ key, number, title }) => {
    const state = stateOf(key);
    return state && number
      ? [{ key: key as HardPointKey, number, state, label: `${title}${NAMES.balloons[state]}` }]
      : [];
  });

function draw(
  { answer, display }: View,
  side: CornerSide,
  balloons: CornerBalloon[],
  travel: number,
): Drawing | undefined {
  if (!answer) return undefined;
  const { bare, sets, shown, drop } = answer;
  const links = sets[shown] ?? bare;
  const { motion } = links.curves;
  const before = sets[shown] && bare.curves.motion;
  const { units, language } = display;
  const text = formatQuantity(travel, 'travel', units, { language, sign: 'always' }).text;
  const where = travel === drop ? heightName(drop, display) : NAMES.ofTravel(text);
  const title = [NAMES.drawing(NAMES.views[side], where), ...(before ? [NAMES.dashed] : [])].join('. ');
  if (side !== 'front' || motion.kind !== 'strut') {
    return cornerView(motion, { side, travel, before, balloons, title });
  }
  const camber = outputAt(links, 'camber', travel).value;
  const reference = poseAtTravel(motion, 0);
  return strutFrontView(poseAtTravel(motion, travel), {
    reference,
    ...(before && { before: poseAtTravel(before, travel), beforeText: NAMES.bare }),
    camberText: formatQuantity(camber, 'camber', units, { language }).text,
    tiltScale: tiltScale(endsOf(motion).map((at) => poseAtTravel(motion, at).camberDeg)),
    distanceText: metresText(language),
    droop: SHOWN_DROOP_MM,
    title,
    balloons: balloons as StrutBalloon[],
  });
}

const endsOf = ({ travel }: Motion): number[] => [travel[0]!, 0, travel[travel.length - 1]!];
