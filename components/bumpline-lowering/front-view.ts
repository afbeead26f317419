import { curveOf } from '../../core/curve/curve.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { DrawingOptions } from '../drawing/drawing-slot.js';
import type { BalloonState, Drawing } from '../drawing/items.js';
import type { Measure } from '../drawing/measures.js';
import { poseAtTravel } from '../drawing/pose-at.js';
import { metresText, type StrutBalloon, strutFrontView, tiltScale } from '../drawing/strut-front-view.js';
import { POINT_SHEETS } from '../inputs/car-sheets.js';
import { DRIVEWAY_SHEETS } from '../inputs/driveway-sheets.js';
import { balloonLabel, camberLabel, heightName, NAMES } from './bumpline-lowering.labels.js';
import type { LoweringView } from './lowering-view.js';

/** How far below reference height the drawing keeps room for, mm. */
const SHOWN_DROOP_MM = 50;

type View = Pick<LoweringView, 'answer' | 'car' | 'display'>;

/**
 * The strut from the front at some travel.
 *
 * @param balloonState how each hard point or measurement is known
 */
export function frontView(
  view: View,
  balloonState: (key: string) => BalloonState,
): Pick<DrawingOptions, 'draw' | 'key'> {
  return {
    key(travel) {
      const { answer, display } = view;
      const states = buttons(view, balloonState).map(({ state, text }) => `${state}${text}`);
      return [travel, answer, JSON.stringify(display), ...states];
    },
    draw: (travel) => draw(view, balloonState, travel),
  };
}

/** Hard points by number, or dimensions by value. */
function buttons({ answer, car, display }: View, balloonState: (key: string) => BalloonState) {
  const taken = answer?.driveway?.taken;
  const { units, language } = display;
  const sheets = taken ? DRIVEWAY_SHEETS.filter(({ optional }) => !optional) : POINT_SHEETS;
  return sheets.map((sheet): Pick<Measure, 'state' | 'label' | 'text'> & { key: string } => {
    const state = balloonState(sheet.key);
    const value = taken && (sheet.read(car) ?? sheet.standIn?.(car, taken))?.[0];
    const { quantity } = sheet.fields[0]!;
    const isLean = quantity === 'lean';
    return {
      key: sheet.key,
      state,
      label: balloonLabel(sheet.title, state),
      text: value === undefined ? '' : formatQuantity(value, quantity, units, { language, unit: isLean }).text,
    };
  });
}

function draw(view: View, balloonState: (key: string) => BalloonState, travel: number): Drawing | undefined {
  const { answer: solved, display } = view;
  if (solved?.motion?.kind !== 'strut') return undefined;
  const { motion, drop } = solved;
  const { units, language } = display;
  const reference = poseAtTravel(motion, 0);
  const pose = poseAtTravel(motion, travel);
  const [droopEnd, bumpEnd] = solved.curve.domain;
  const isDrop = Math.abs(travel - drop) < 1e-6;
  const text = (amount: number) => formatQuantity(amount, 'travel', units, { language }).text;
  const camber = camberLabel(solved, curveOf(solved.curve).value(travel), display);
  const keys = buttons(view, balloonState);
  return strutFrontView(pose, {
    reference,
    ...(Math.abs(travel) > 1e-6 && { before: reference, beforeText: NAMES.stock }),
    camberText: camber,
    ...(isDrop && drop !== 0 && { dropText: text(Math.abs(drop)) }),
    tiltScale: tiltScale([
      poseAtTravel(motion, Math.max(droopEnd, -40)).camberDeg,
      reference.camberDeg,
      poseAtTravel(motion, Math.min(bumpEnd, 100)).camberDeg,
    ]),
    distanceText: metresText(language),
    title: NAMES.frontView(isDrop ? heightName(drop, display) : NAMES.ofTravel(text(travel)), camber),
    // The chart's cursor goes as far down as this.
    droop: SHOWN_DROOP_MM,
    ...(solved.driveway ? { measures: keys as Measure[], tieRod: false } : { balloons: keys as StrutBalloon[] }),
  });
}
