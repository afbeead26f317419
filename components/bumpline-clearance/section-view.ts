import { verdictOf } from '../../core/answers/verdict.js';
import type { Vector3 } from '../../core/linkage/corner.js';
import { add, dot, scale, subtract, unit } from '../../core/math/vector.js';
import { besideWheel, gapTo } from '../../core/wheel/gaps.js';
import { forwardOf, type Place } from '../../core/wheel/place.js';
import { planeOf } from '../../core/wheel/wheel.js';
import type { Drawing, Ink, Item, Point } from '../drawing/items.js';
import { type Display, show } from '../element/sentence.js';
import { NAMES } from './bumpline-clearance.labels.js';
import { placeName } from './bumpline-clearance.words.js';
import { type DrawnWheels, poseAt, type Steered } from './drawn-wheels.js';
import { nearestOf } from './nearest-on-tyre.js';
import { ARCH_OUT_MM, ARCH_RISE_MM, archItems, placeItems, shapeOf } from './place-marks.js';
import { type MeasuredStrut, type StrutBeside, strutItems } from './strut-beside.js';
import {
  axisItem,
  FLANGE_MM,
  hubItems,
  newWheelItems,
  type OnPage,
  oldWheelItems,
  tyreOutline,
} from './wheel-section.js';

const { picture: WORDS } = NAMES;

const ROOM_MM = 12;
/** Of its width: on a phone sentence, sliders and picture are near each other. */
const TALLEST = 1.06;
/** Further round the wheel than this from straight up the strut is not beside the section, degrees. */
const BESIDE_STRUT = 50;
/** Places this near to each other on the clock lie in one section, hours. */
const SAME_HOUR = 0.3;

/**
 * The corner cut through the wheel's axis and a place, seen from the front: outboard to the right, away from the hub upward. The wheel
 * moves with travel and steer, what is fixed to the body stays. Tyres, rims, hub's face and places are true to scale; what nobody
 * measured (strut, hub, the arch over its lip) is sketched in narrow lines and never shown to touch. Where the wheel has moved on past a
 * place that is not above it, the place is shown at its distance from the axis.
 */
export function sectionView(
  drawn: DrawnWheels,
  index: number,
  steered: Steered,
  travel: number,
  display: Display,
): Drawing {
  const { answer, asked, places, before, after } = drawn;
  const one = places[index]!;
  const home = drawn.poses.at(asked.measuredAt ?? 0);
  // The way out from the hub to the place, seen from the side.
  const out = subtract(one.measured, home.centre);
  const up = unit([out[0], 0, out[2]] as Vector3);
  // Across the page the wheel's own axis, where it is tightest: what is drawn is true to scale, steered or not.
  const rest = poseAt(steered, answer.places[index]!.decisive.travel);
  const across = unit(subtract(rest.spin, scale(up, dot(rest.spin, up))));
  const page = (point: Vector3): Point => [
    dot(subtract(point, rest.centre), across),
    dot(subtract(point, home.centre), up),
  ];

  const at = (t: number) => {
    const pose = poseAt(steered, t);
    const place = one.at(steered.poses, t, steered.steer);
    const away = subtract(place, pose.centre);
    const inPlane = unit(subtract(away, scale(pose.spin, dot(away, pose.spin))));
    const on: OnPage = (u, r) => page(add(pose.centre, add(scale(pose.spin, u), scale(inPlane, r))));
    return { pose, place, on };
  };
  const now = at(travel);
  const [u, r] = besideWheel(now.pose, now.place);
  const point = now.on(u, r);
  const near = nearestOf(after.section, u - after.shift, r);
  const foot = now.on(near[0] + after.shift, near[1]);
  const gap = gapTo(after, now.pose, now.place);
  const { verdict, decisive, margin } = answer.places[index]!;
  // By the same rule as the verdict, at this travel.
  const here = verdict && verdictOf({ gap, plusMinus: decisive.plusMinus }, margin + answer.allowance);
  const ink: Ink = here === 'touches' ? 'contact' : here === 'close' ? 'limit' : 'ink';
  // Away from the tyre, or on from it where it is inside.
  const reach = Math.hypot(point[0] - foot[0], point[1] - foot[1]) || 1;
  const sign = gap < 0 ? -1 : 1;
  const way: Point = [(sign * (point[0] - foot[0])) / reach, (sign * (point[1] - foot[1])) / reach];
  const text = show(gap, 'travel', display);

  const hub = -planeOf(asked.before);
  const face = hub + (asked.after.spacer ?? 0);
  const inSection = asked.places.flatMap((place, i) =>
    isBeside(place, one.place) ? [{ place, placed: places[i]! }] : [],
  );
  const lip = inSection.find(({ place }) => shapeOf(place) === 'lip');
  const lipAt = lip && (lip.placed === one ? point : page(lip.placed.at(steered.poses, travel, steered.steer)));
  const isUpright = Math.abs(turnOf(one.place) ?? 0) <= BESIDE_STRUT;
  const shape = shapeOf(one.place);

  // The scale stays while travel and steer move: room for the wheel from ride height to full bump.
  const ends = [answer.drop, answer.range[1]].map((t) => at(t));
  const corners = ends.flatMap((of) => [...tyreOutline(after, of.on), ...tyreOutline(before, of.on), page(of.place)]);
  const highest = Math.max(...corners.map(([, height]) => height));
  const top = lipAt ? lipAt[1] + ARCH_RISE_MM : highest + ARCH_RISE_MM / 2;
  const beside: StrutBeside = {
    tyreInner: -Math.max(before.section.halfWidth, after.section.halfWidth - after.shift),
    freeRadius: Math.max(before.section.freeRadius, after.section.freeRadius),
    hub,
    measured: measuredStrut(drawn, steered),
    top,
  };
  const strut = isUpright ? strutItems(beside, now.on) : undefined;
  const inboard = beside.tyreInner - 40;

  const items: Item[] = [
    ...(strut?.items ?? []),
    ...hubItems(now.on, hub),
    ...(lipAt ? archItems(lipAt, strut?.outboard ?? inboard, lip.placed === one ? 'wide' : 'narrow') : []),
    ...newWheelItems(after, now.on, hub, face),
    axisItem(now.on, hub - 84, face + 52),
    ...oldWheelItems(before, now.on),
    ...placeItems(shape, point, way, ink),
    {
      kind: 'label',
      at: now.on(after.shift, (after.section.lip.r + after.section.freeRadius) / 2),
      text: WORDS.newWheel,
      places: ['n', 's'],
      keepsClear: true,
    },
    {
      kind: 'label',
      at: now.on(-0.3 * before.section.lip.u, before.section.innerRadius),
      text: WORDS.oldWheel,
      places: ['s'],
      ink: 'before',
      keepsClear: true,
    },
    // Its value last: it may stand aside, the wheels' names belong where they are.
    { kind: 'dimension', from: foot, to: point, along: 'line', at: 0, text, ink, keepsClear: true },
    { kind: 'note', row: 0, align: 'start', text: NAMES.inboard },
    { kind: 'note', row: 0, align: 'end', text: NAMES.outboard },
    { kind: 'note', row: 1, align: 'start', text: WORDS.sketched },
  ];

  const rights = corners.map(([right]) => right);
  const outboard = Math.max(...rights, ...(lipAt ? [lipAt[0] + ARCH_OUT_MM] : [])) + ROOM_MM;
  const inner = isUpright ? ends.map(({ on }) => strutItems(beside, on).inboard) : [inboard];
  const low = Math.min(...ends.flatMap(({ on }) => [hub, hub - FLANGE_MM].map((u) => on(u, -FLANGE_MM)[1])));
  return {
    title: `${NAMES.section} ${placeName(asked.places[index]!, asked.isLeft)}, ${show(travel - answer.drop, 'travel', display)} ${NAMES.above}: ${NAMES.gap} ${text}`,
    items,
    tallest: TALLEST,
    extent: [
      [Math.min(...rights, ...inner) - ROOM_MM / 2, low],
      [outboard, Math.max(highest, top) + 2 * ROOM_MM],
    ],
  };
}

/** Degrees from straight up; undefined of a place that is told as a point. */
const turnOf = ({ at }: Place): number | undefined => {
  if (!('clock' in at)) return undefined;
  const turn = forwardOf(at.clock, true);
  return turn < -180 ? turn + 360 : turn;
};

function isBeside(a: Place, b: Place): boolean {
  if (a === b) return true;
  const [one, other] = [turnOf(a), turnOf(b)];
  return one !== undefined && other !== undefined && Math.abs(one - other) < SAME_HOUR * 30;
}

/** What of the strut was measured, wherever on the clock: it is as far inboard all along its height. */
function measuredStrut({ places, asked }: DrawnWheels, { poses, steer }: Steered): MeasuredStrut | undefined {
  const at = asked.measuredAt ?? 0;
  for (const { place, ...one } of places.map((found) => ({ place: found.place, at: found.at.bind(found) }))) {
    const part = place.name === 'damper tube' ? 'tube' : place.name === 'spring perch' ? 'perch' : undefined;
    if (!part || place.fixedTo !== 'carrier') continue;
    const [u, r] = besideWheel(poses.at(at, steer), one.at(poses, at, steer));
    return { part, u, r };
  }
  return undefined;
}
