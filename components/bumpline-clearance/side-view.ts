import type { Vector3 } from '../../core/linkage/corner.js';
import { add, cross, scale, subtract, unit } from '../../core/math/vector.js';
import { besideWheel, type Envelope, type Pose } from '../../core/wheel/gaps.js';
import { type Drawing, ghost, type Item, type Look, type Point } from '../drawing/items.js';
import { above, arc, disc, hull } from '../drawing/outline.js';
import { path } from '../drawing/strut-parts.js';
import { type Display, show } from '../element/sentence.js';
import { NAMES } from './bumpline-clearance.labels.js';
import { placeName, verdictText } from './bumpline-clearance.words.js';
import { type DrawnWheels, poseAt, type Steered } from './drawn-wheels.js';
import { nearestOf } from './nearest-on-tyre.js';
import { shapeOf } from './place-marks.js';

/** Half of the piece of arch that is drawn at a place, radians. */
const PIECE = 0.09;
/** How far outside of its place a value stands, mm. */
const ASIDE_MM = 84;
/** Of what is no part of the body the value stands so far towards the hub, mm. */
const INWARD_MM = 78;
const ROOM_MM = 40;
/** The wheel is drawn down to here under the hub, mm: what lies below meets no arch. */
const BELOW_HUB_MM = 110;
/** Sketched: bolt circle and bore, mm. */
const [BOLTS_MM, BORE_MM] = [54, 32];
const AROUND = 96;

const STATES = { clears: 'yours', close: 'next', touches: 'problem' } as const;

/** The wheel in its arch, seen square from outside, at a travel and a steer; each place with its smallest gap as a button. */
export function sideView(
  { answer, asked, poses, before, after, places }: DrawnWheels,
  steered: Steered,
  travel: number,
  selected: number | undefined,
  display: Display,
): Drawing {
  const { isLeft } = asked;
  // Seen from outside, a left wheel's front is on the left.
  const page = ([x, , z]: Vector3): Point => [isLeft ? -x : x, z];
  const pose = poseAt(steered, travel);
  const home = page(poses.at(asked.measuredAt ?? 0).centre);
  const cut = home[1] + Math.min(0, answer.drop) - BELOW_HUB_MM;
  const circle = circleOf(pose, page);
  const edges = ({ section, shift }: Envelope): Point[] =>
    hull(
      [
        [section.bulge.u, section.bulge.r],
        [0.8 * section.bulge.u, section.freeRadius],
      ].flatMap(([u, r]) => [...circle(shift + u!, r!), ...circle(shift - u!, r!)]),
    );
  const tyre = edges(after);
  const { lip } = after.section;
  const outside = after.shift + lip.u;
  const bolts = [0, 1, 2, 3, 4].map((i) =>
    disc(circle(outside, BOLTS_MM)[Math.round(((i + 0.5) * AROUND) / 5) % AROUND]!, 8),
  );
  const items: Item[] = [
    path(above(tyre, cut), { closed: true, weight: 'none', fill: 'tyre' }),
    ...outlined(tyre, cut),
    path(above(circle(outside, lip.r), cut), { closed: true, weight: 'none', fill: 'sheet' }),
    ...outlined(circle(outside, lip.r), cut, { weight: 'narrow' }),
    ...outlined(circle(outside, lip.r - 14), cut, { weight: 'narrow', ink: 'soft' }),
    ...spokes(circle(outside, lip.r - 14), circle(outside, 84), cut),
    ...outlined(circle(outside, 84), cut, { weight: 'narrow', ink: 'soft' }),
    { kind: 'body', fill: 'sheet', weight: 'narrow', outlines: bolts },
    path(circle(outside, BORE_MM), { closed: true, weight: 'narrow', fill: 'paper' }),
    ...outlined(edges(before), cut, ghost),
    { kind: 'note', row: 0, align: isLeft ? 'start' : 'end', text: isLeft ? `← ${NAMES.front}` : `${NAMES.front} →` },
  ];
  const spots: { angle: number; radius: number }[] = [];
  const marks: Item[] = [];
  const chips: Item[] = [];
  places.forEach((one, index) => {
    const found = answer.places[index]!;
    const point = one.at(steered.poses, travel, steered.steer);
    const at = page(point);
    const away: Point = [at[0] - home[0], at[1] - home[1]];
    const radius = Math.hypot(...away) || 1;
    const angle = Math.atan2(away[1], away[0]);
    const isTight = found.verdict === 'close' || found.verdict === 'touches';
    const ink = found.verdict === 'touches' ? 'contact' : isTight ? 'limit' : 'ink';
    const look: Look = { ink, weight: index === selected ? 'wide' : 'narrow' };
    const isBody = one.place.fixedTo === 'body';
    if (isBody) {
      if (shapeOf(one.place) === 'lip') spots.push({ angle, radius });
      marks.push(
        path(
          [
            ...arc(home, radius, angle - PIECE, angle + PIECE, 5),
            ...arc(home, radius + 14, angle + PIECE, angle - PIECE, 5),
          ],
          { closed: true, fill: 'sheet', hatch: isTight, ...look },
        ),
      );
    } else marks.push({ kind: 'circle', at, radiusPx: 5, fill: 'sheet', ...look });
    if (index === selected) {
      const [u, r] = besideWheel(pose, point);
      const way = unit(subtract(point, add(pose.centre, scale(pose.spin, u))));
      const [side, out] = nearestOf(after.section, u - after.shift, r);
      const foot = add(pose.centre, add(scale(pose.spin, side + after.shift), scale(way, out)));
      marks.push({ kind: 'dimension', from: page(foot), to: at, along: 'line', at: 0, ink });
    }
    const text = show(Math.round(found.decisive.gap), 'travel', display).replace(/\s?mm$/, '');
    const outward = isBody ? radius + ASIDE_MM : Math.max(radius - INWARD_MM, INWARD_MM);
    chips.push({
      kind: 'chip',
      key: String(index),
      text,
      at,
      home: [home[0] + (away[0] / radius) * outward, home[1] + (away[1] / radius) * outward],
      along: 'right',
      state: found.verdict ? STATES[found.verdict] : 'yours',
      label: `${placeName(one.place, isLeft)}, ${verdictText(found)}, ${NAMES.smallest}`,
    });
  });
  const rights = chips.flatMap((item) => (item.kind === 'chip' ? [item.home[0]] : []));
  const ups = chips.flatMap((item) => (item.kind === 'chip' ? [item.home[1]] : []));
  const reach = after.section.freeRadius + ROOM_MM;
  return {
    title: `${NAMES.side} ${asked.places.length} ${NAMES.placesSeen}`,
    items: [...items, ...archItems(home, spots, cut), ...marks, ...chips],
    extent: [
      [Math.min(...rights, home[0] - reach), cut],
      [Math.max(...rights, home[0] + reach), Math.max(...ups, home[1] + reach + answer.range[1])],
    ],
  };
}

/** A circle about the wheel's axis as it is seen from the side, from its top backward. */
function circleOf({ centre, spin }: Pose, page: (point: Vector3) => Point): (u: number, r: number) => Point[] {
  const forward = unit(cross(spin, [0, 0, 1]));
  const up = cross(forward, spin);
  return (u, r) => {
    const middle = add(centre, scale(spin, u));
    return Array.from({ length: AROUND }, (_, i) => {
      const angle = (2 * Math.PI * i) / AROUND;
      return page(add(middle, add(scale(forward, r * Math.sin(angle)), scale(up, r * Math.cos(angle)))));
    });
  };
}

/** An outline down to where the picture is cut, open there. */
function outlined(points: readonly Point[], cut: number, look: Look = {}): Item[] {
  const isIn = points.map(([, up]) => up >= cut);
  if (isIn.every(Boolean)) return [path(points, { ...look, closed: true })];
  const first = isIn.findIndex((found, i) => found && !isIn.at(i - 1));
  if (first < 0) return [];
  const around = points.map((_, i) => points[(first + i) % points.length]!);
  const inside = around.slice(
    0,
    around.findIndex(([, up]) => up < cut),
  );
  return [
    path(
      [
        between(points.at(first - 1)!, inside[0]!, cut),
        ...inside,
        between(around[inside.length]!, inside.at(-1)!, cut),
      ],
      look,
    ),
  ];
}

/** Where a line meets a height. */
const between = (a: Point, b: Point, height: number): Point => [
  a[0] + ((height - a[1]) / (b[1] - a[1] || 1)) * (b[0] - a[0]),
  height,
];

/** Five pairs of spokes: sketched, one shape. */
function spokes(rim: readonly Point[], middle: readonly Point[], cut: number): Item[] {
  const outlines = [0, 1, 2, 3, 4].flatMap((i) =>
    [-3, 3].flatMap((aside) => {
      const at = (by: number) => (Math.round((i * AROUND) / 5) + by + AROUND) % AROUND;
      const line: Point[] = [middle[at(2 * aside)]!, rim[at(aside)]!];
      return line.every(([, up]) => up >= cut) ? [line] : [];
    }),
  );
  return [{ kind: 'body', weight: 'narrow', ink: 'soft', outlines }];
}

/** The edge of the arch through the lips that were measured, and on from the last of them as far out: sketched between them. */
function archItems(home: Point, spots: { angle: number; radius: number }[], cut: number): Item[] {
  if (spots.length === 0) return [];
  const sorted = spots.toSorted((a, b) => a.angle - b.angle);
  const radiusAt = (angle: number): number => {
    const next = sorted.findIndex((spot) => spot.angle >= angle);
    if (next <= 0) return (next < 0 ? sorted.at(-1)! : sorted[0]!).radius;
    const [a, b] = [sorted[next - 1]!, sorted[next]!];
    return a.radius + ((angle - a.angle) / (b.angle - a.angle || 1)) * (b.radius - a.radius);
  };
  const points = Array.from({ length: 61 }, (_, i): Point => {
    const angle = ((-20 + (220 * i) / 60) * Math.PI) / 180;
    const radius = radiusAt(angle);
    return [home[0] + radius * Math.cos(angle), home[1] + radius * Math.sin(angle)];
  }).filter(([, up]) => up >= cut);
  return [path(points)];
}
