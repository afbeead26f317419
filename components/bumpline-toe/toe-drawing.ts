import { idealRodOf, type ToeCure } from '../../core/answers/toe-cure.js';
import type { Vector3 } from '../../core/linkage/corner.js';
import type { IdealRod } from '../../core/linkage/ideal-rod.js';
import { formatNumber, formatQuantity } from '../../core/quantity/format.js';
import { cornerView } from '../drawing/corner-view.js';
import type { DrawingOptions } from '../drawing/drawing-slot.js';
import { centreLine, type Drawing, type Item, type Point } from '../drawing/items.js';
import { limb } from '../drawing/outline.js';
import { poseAtTravel } from '../drawing/pose-at.js';
import {
  type FrontViewPose,
  instantCentreText,
  metresText,
  strutFrontView,
  tiltScale,
} from '../drawing/strut-front-view.js';
import { joint, onPage, path } from '../drawing/strut-parts.js';
import { type Display, show, upper } from '../element/sentence.js';
import { NAMES } from './bumpline-toe.labels.js';
import type { ToeOnSheet, ToeView } from './toe-view.js';
import { heightName } from './views.js';

const { drawing: WORDS } = NAMES;

/** How far below reference height the drawing keeps room for, mm. */
const SHOWN_DROOP_MM = 10;
/** Beyond this two lines are parallel for any eye. */
const PARALLEL_MM = 100_000;
/** A rod's end further off than this is not drawn. */
const FARTHEST_MM = 700;

/** What the drawing shows besides the links. */
interface Shown {
  answer: ToeOnSheet;
  cure: ToeCure;
  amount: number;
  display: Display;
}

/** The links from the front with the tie rod, the two centres, and the rod that would not steer the wheel. */
export function toeDrawing(
  view: Pick<ToeView, 'answer' | 'display' | 'answeredCar'>,
  cure: () => ToeCure | undefined,
): Pick<DrawingOptions, 'draw' | 'key'> {
  const shown = (): Shown | undefined => {
    const { answer, display, answeredCar } = view;
    const found = cure();
    return answer && found && { answer, cure: found, amount: answeredCar.toe?.amount ?? 0, display };
  };
  return {
    key(travel) {
      const { answer, cure: found, amount, display } = shown() ?? {};
      return [travel, answer, found, amount, JSON.stringify(display)];
    },
    draw(travel) {
      const what = shown();
      return what && draw(what, travel);
    },
  };
}

/** The rod that would not steer the wheel there, and the one that is there with an end moved. */
export const rodAt = ({ cure, answer, amount }: Omit<Shown, 'display'>, travel: number): IdealRod =>
  idealRodOf({ ...cure, inner: cure.motion.fixed.tieInner }, travel - answer.measuredAt, amount);

function innerOf({ motion }: ToeCure, raised: number): Vector3 {
  const [x, y, z] = motion.fixed.tieInner;
  return [x, y, z + raised];
}

function draw({ answer, cure, amount, display }: Shown, travel: number): Drawing {
  const { motion } = cure;
  const at = travel - answer.measuredAt;
  const pose = poseAtTravel(motion, at);
  const rod = rodAt({ cure, answer, amount }, travel);
  const inner = innerOf(cure, cure.adjust === 'outerEnd' ? 0 : amount);
  const [tieInner, tieOuter]: [Point, Point] = [
    [inner[1], inner[2]],
    [rod.outer[1], rod.outer[2]],
  ];
  const page = onPage(pose.groundZ);
  const where =
    travel === answer.drop
      ? heightName(travel, display)
      : WORDS.ofTravel(
          formatQuantity(travel, 'travel', display.units, { language: display.language, sign: 'always' }).text,
        );
  const title = [WORDS.title(where), ...notesOf(rod, pose, display)].join('. ');
  const drawn = { ...pose, tieInner, tieOuter };
  const base =
    motion.kind === 'strut'
      ? strutFrontView(drawn, {
          reference: poseAtTravel(motion, 0),
          tiltScale: tiltScale(
            [motion.travel[0]!, 0, motion.travel.at(-1)!].map((one) => poseAtTravel(motion, one).camberDeg),
          ),
          droop: SHOWN_DROOP_MM,
          title,
        })
      : cornerView(motion, { side: 'front', travel: at, title });
  return {
    ...base,
    items: [
      ...base.items.filter(({ kind }) => kind !== 'note'),
      ...(motion.kind === 'wishbone' ? armLines(cure, at, pose.instantCentre, page) : []),
      ...rodItems(rod, page(tieInner), page(tieOuter), page),
      ...notesOf(rod, pose, display).map((text, row): Item => ({ kind: 'note', row, align: 'start', text })),
    ],
  };
}

type Page = (point: Point) => Point;

/** Of two arms, the lines that meet at the instant centre. */
function armLines({ motion }: ToeCure, travel: number, centre: Point, page: Page): Item[] {
  const pose = poseAtTravel(motion, travel);
  const upper = motion.fixed.upperFront && motion.fixed.upperRear;
  const target = Math.abs(centre[0]) < PARALLEL_MM ? page(centre) : undefined;
  const side = centre[0] > pose.wheelCentre[0] ? 1 : -1;
  const line = (from: Point): Item => ({
    kind: 'construction',
    from,
    direction: target ? [target[0] - from[0], target[1] - from[1]] : [side, 0],
    target,
    dash: 'chain',
    ink: 'soft',
  });
  return upper ? [line(page(pose.ball)), line(page(pose.top))] : [];
}

function rodItems({ aim, inner, length }: IdealRod, tieInner: Point, tieOuter: Point, page: Page): Item[] {
  const target: Point | undefined = Math.abs(aim.y) < PARALLEL_MM ? page([aim.y, aim.z]) : undefined;
  const ideal = page([inner[1], inner[2]]);
  const isNear = length > 0 && Math.hypot(ideal[0] - tieOuter[0], ideal[1] - tieOuter[1]) < FARTHEST_MM;
  return [
    {
      kind: 'construction',
      from: tieOuter,
      direction: target
        ? [target[0] - tieOuter[0], target[1] - tieOuter[1]]
        : [ideal[0] - tieOuter[0] || -1, ideal[1] - tieOuter[1] || 0],
      target,
      dash: 'dashed',
      ink: 'next',
    },
    { kind: 'body', ink: 'now', fill: 'wash', outlines: [limb(tieInner, 8, tieOuter, 8)] },
    path([tieInner, tieOuter], { ...centreLine, ink: 'now' }),
    joint(tieInner),
    joint(tieOuter, { ink: 'now', fill: 'solid' }),
    ...(isNear ? [joint(ideal, { ink: 'next', fill: 'paper' })] : []),
  ];
}

/** Where the two centres are, and how long the rod should be. */
function notesOf({ aim, outer, actual, length }: IdealRod, pose: FrontViewPose, display: Display): string[] {
  const across = aim.y - outer[1];
  const height = Math.round(aim.z - outer[2]);
  const size = (mm: number) => show(Math.round(Math.abs(mm)), 'travel', display);
  const far = `${formatNumber(Math.abs(across) / 1000, 1, display.language)}\u202fm`;
  const way = across < 0 ? WORDS.inboard(far) : WORDS.outboard(far);
  return [
    upper(instantCentreText(pose, metresText(display.language))),
    Math.abs(across) < PARALLEL_MM ? WORDS.aim(way, (height < 0 ? WORDS.down : WORDS.up)(size(height))) : WORDS.level,
    length > 0 && Number.isFinite(length) ? WORDS.should(size(actual), size(length)) : WORDS.isOnly(size(actual)),
  ];
}
