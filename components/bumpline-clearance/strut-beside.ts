import { centreLine, type Item, type Point } from '../drawing/items.js';
import { disc, hull, limb } from '../drawing/outline.js';
import { joint, moved, path, spring } from '../drawing/strut-parts.js';
import type { OnPage } from './wheel-section.js';

/** Sizes of a strut that nobody measured, mm: sketched. */
const TUBE = 25;
const PERCH = 62;
const ROD = 9;
const PLATE = 62;
/** How far a strut leans in over its height: about 8°. */
const LEAN = 0.14;
/** Between tyre and what is sketched: of what nobody measured nothing is shown to touch. */
const ASIDE = 24;

/** Of the knuckle about the hub's bearing, from the hub's face. */
const HOUSING = [
  [-50, -36],
  [-14, -36],
  [-14, 36],
  [-50, 36],
] as const;

/** What of the strut was measured: a point of its tube or of its spring's perch, seen from the wheel. */
export interface MeasuredStrut {
  part: 'tube' | 'perch';
  u: number;
  r: number;
}

export interface StrutBeside {
  /** The furthest inboard that either tyre reaches, u. */
  tyreInner: number;
  freeRadius: number;
  hub: number;
  measured: MeasuredStrut | undefined;
  /** Height of the panel that the strut is bolted to, on the page. */
  top: number;
}

/** u of the strut's axis at a radius. */
function axisOf({ tyreInner, freeRadius, measured }: StrutBeside): { at(r: number): number; perch: number } {
  const isTube = measured?.part === 'tube';
  // A perch beside the tyre stands aside of it; over a tube that is nearer, above the tyre.
  const perch = isTube ? freeRadius + 34 : (measured?.r ?? 0.9 * freeRadius);
  const reach = isTube ? TUBE : PERCH;
  const edge = measured?.u ?? tyreInner - ASIDE;
  const from = isTube ? measured.r : perch;
  return { at: (r) => edge - reach - LEAN * (r - from), perch };
}

/** Knuckle, damper tube, perch and spring: fixed to the wheel, up to the panel above; and how far either way that reaches, on the page. */
export function strutItems(beside: StrutBeside, on: OnPage): { items: Item[]; outboard: number; inboard: number } {
  const { hub, top } = beside;
  const { at, perch } = axisOf(beside);
  const axis = (r: number) => on(at(r), r);
  const foot = axis(62);
  const seat = axis(perch);
  const length = Math.hypot(seat[0] - foot[0], seat[1] - foot[1]);
  const up: Point = [(seat[0] - foot[0]) / length, (seat[1] - foot[1]) / length];
  const across: Point = [up[1], -up[0]];
  const mount = moved(seat, up, Math.max(30, (top - seat[1]) / up[1]));
  const tube = (from: Point, to: Point, half: number): Point[] => [
    moved(from, across, -half),
    moved(from, across, half),
    moved(to, across, half),
    moved(to, across, -half),
  ];
  const items: Item[] = [
    { kind: 'body', fill: 'sheet', weight: 'narrow', outlines: [limb(seat, ROD, mount, ROD)] },
    ...spring(moved(seat, up, 6), moved(mount, up, -14), across),
    path(tube(foot, moved(seat, up, 10), TUBE), { closed: true, fill: 'sheet', weight: 'narrow' }),
    path(tube(moved(seat, up, -3), moved(seat, up, 6), PERCH), { closed: true, fill: 'sheet', weight: 'narrow' }),
    {
      kind: 'body',
      fill: 'sheet',
      weight: 'narrow',
      outlines: [hull([...disc(axis(150), 30), ...disc(foot, 32), ...HOUSING.map(([u, r]) => on(hub + u!, r!))])],
    },
    { kind: 'body', fill: 'sheet', weight: 'narrow', outlines: [84, 128].map((r) => disc(axis(r), 8)) },
    path([moved(foot, up, -24), moved(mount, up, 20)], centreLine),
    path(
      [
        [mount[0] - PLATE, mount[1] + 2],
        [mount[0] + PLATE, mount[1] + 2],
        [mount[0] + PLATE, mount[1] + 14],
        [mount[0] - PLATE, mount[1] + 14],
      ],
      { closed: true, fill: 'paper', weight: 'narrow', hatch: true },
    ),
    joint(mount, { weight: 'narrow' }),
  ];
  return { items, outboard: mount[0] + PLATE, inboard: Math.min(mount[0] - PLATE, seat[0] - PERCH - 4) };
}
