import { verdictOf } from '../../core/answers/verdict.js';
import type { Vector3 } from '../../core/linkage/corner.js';
import { add, dot, length, scale, subtract, unit } from '../../core/math/vector.js';
import { gapTo } from '../../core/wheel/gaps.js';
import type { TyreSection } from '../../core/wheel/tyre-section.js';
import { centreLine, type Drawing, ghost, type Item, type Point } from '../drawing/items.js';
import { type Display, show } from '../element/sentence.js';
import { NAMES } from './bumpline-clearance.labels.js';
import { placeName } from './bumpline-clearance.words.js';
import { type DrawnWheels, tightPoses } from './drawn-wheels.js';

/** Side of the hatched block that stands for a place, mm. */
const BLOCK_MM = 13;
const ROOM_MM = 24;

/**
 * The half-plane of the wheel's axis that holds a place: outboard to the right, away from the hub upward. The wheel moves with
 * travel, what is fixed to the body stays. The section is drawn true to scale; where the wheel has moved on past a place that is
 * not above it, the place is shown at its distance from the axis.
 */
export function sectionView(drawn: DrawnWheels, index: number, travel: number, display: Display): Drawing {
  const { answer, asked, places, before, after } = drawn;
  const poses = tightPoses(drawn, index);
  const one = places[index]!;
  const home = drawn.poses.at(asked.measuredAt ?? 0);
  // The way out from the hub to the place, seen from the side.
  const out = subtract(one.measured, home.centre);
  const up = unit([out[0], 0, out[2]] as Vector3);
  // Across the page the wheel's own axis, as it is where it is tightest: what is drawn is true to scale, steered or not.
  const { spin } = poses.at(answer.places[index]!.decisive.travel);
  const across = unit(subtract(spin, scale(up, dot(spin, up))));
  const page = (point: Vector3): Point => [dot(point, across), dot(point, up)];

  const at = (t: number) => {
    const pose = poses.at(t);
    const place = one.at(poses, t);
    const away = subtract(place, pose.centre);
    const inPlane = unit(subtract(away, scale(pose.spin, dot(away, pose.spin))));
    const on = (u: number, r: number): Vector3 => add(pose.centre, add(scale(pose.spin, u), scale(inPlane, r)));
    return { pose, place, on };
  };
  const now = at(travel);
  const outline = ({ section, shift }: { section: TyreSection; shift: number }, of = now): Point[] => {
    const half = section.outline();
    return [
      ...half.map(([u, r]) => page(of.on(u + shift, r))),
      ...half.toReversed().map(([u, r]) => page(of.on(shift - u, r))),
    ];
  };
  const rim = ({ section: { lip, innerRadius }, shift }: { section: TyreSection; shift: number }): Point[] =>
    [
      [-lip.u, lip.r],
      [lip.u, lip.r],
      [lip.u, innerRadius],
      [-lip.u, innerRadius],
    ].map(([u, r]) => page(now.on(shift + u!, r!)));

  const away = subtract(now.place, now.pose.centre);
  const u = dot(away, now.pose.spin);
  const r = length(subtract(away, scale(now.pose.spin, u)));
  const point = page(now.on(u, r));
  const near = nearestOf(after.section, u - after.shift, r);
  const foot = page(now.on(near[0] + after.shift, near[1]));
  const gap = gapTo(after, now.pose, now.place);
  const { verdict, decisive, margin } = answer.places[index]!;
  // By the same rule as the verdict, at this travel.
  const here = verdict && verdictOf({ gap, plusMinus: decisive.plusMinus }, margin + answer.allowance);
  const ink = here === 'touches' ? 'contact' : here === 'close' ? 'limit' : 'ink';
  // Away from the tyre, or on from it where it is inside.
  const reach = Math.hypot(point[0] - foot[0], point[1] - foot[1]) || 1;
  const sign = gap < 0 ? -1 : 1;
  const way: Point = [(sign * (point[0] - foot[0])) / reach, (sign * (point[1] - foot[1])) / reach];
  const aside: Point = [way[1], -way[0]];
  const corner = (along: number, across: number): Point => [
    point[0] + BLOCK_MM * (along * way[0] + across * aside[0]),
    point[1] + BLOCK_MM * (along * way[1] + across * aside[1]),
  ];
  const text = show(gap, 'travel', display);
  const middle = [after.section.innerRadius - 12, after.section.freeRadius + 14].map((radius) =>
    page(now.on(after.shift, radius)),
  ) as [Point, Point];

  const items: Item[] = [
    { kind: 'path', points: outline(after), closed: true, fill: 'tyre' },
    { kind: 'path', points: rim(after), closed: true, fill: 'sheet' },
    { kind: 'path', points: middle, ...centreLine },
    { kind: 'path', points: outline(before), closed: true, ...ghost },
    {
      kind: 'path',
      points: [corner(0, -0.5), corner(1, -0.5), corner(1, 0.5), corner(0, 0.5)],
      closed: true,
      hatch: true,
      ink,
    },
    { kind: 'dimension', from: foot, to: point, along: 'line', at: 0, text, ink },
    { kind: 'note', row: 0, align: 'start', text: NAMES.inboard },
    { kind: 'note', row: 0, align: 'end', text: NAMES.outboard },
  ];

  // The scale stays while the cursor moves: room for the wheel from ride height to full bump.
  const ends = [answer.drop, answer.range[1]].map((t) => at(t));
  const corners = ends.flatMap((of) => [...outline(after, of), ...outline(before, of), page(of.place)]);
  const rights = corners.map(([right]) => right);
  const ups = corners.map(([, height]) => height);
  return {
    title: `${NAMES.section} ${placeName(asked.places[index]!, asked.isLeft)}, ${show(travel - answer.drop, 'travel', display)} ${NAMES.above}: ${NAMES.gap} ${text}`,
    items,
    extent: [
      [Math.min(...rights) - ROOM_MM / 2, Math.min(...ups)],
      [Math.max(...rights) + ROOM_MM, Math.max(...ups) + ROOM_MM],
    ],
  };
}

/** The nearest point of a section's outline: for the drawing, along its chords. */
function nearestOf(section: TyreSection, u: number, r: number): [number, number] {
  const points = section.outline(24);
  const side = Math.sign(u) || 1;
  let best: [number, number] = [0, 0];
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < points.length; i++) {
    const [[u0, r0], [u1, r1]] = [points[i - 1]!, points[i]!];
    const [du, dr] = [u1 - u0, r1 - r0];
    const along = Math.min(1, Math.max(0, ((Math.abs(u) - u0) * du + (r - r0) * dr) / (du * du + dr * dr || 1)));
    const [x, y] = [u0 + along * du, r0 + along * dr];
    const away = Math.hypot(Math.abs(u) - x, r - y);
    if (away < least) [least, best] = [away, [side * x, y]];
  }
  return best;
}
