import { RIM_LIP_MM } from '../../core/wheel/fitted-wheel.js';
import type { Envelope } from '../../core/wheel/gaps.js';
import type { TyreSection } from '../../core/wheel/tyre-section.js';
import { centreLine, ghost, type Item, type Point } from '../drawing/items.js';
import { box } from '../drawing/outline.js';
import { path } from '../drawing/strut-parts.js';

/** Of a half-plane through the wheel's axis: u along the axis from the middle plane of the old wheel, r away from it, mm; on the page. */
export type OnPage = (u: number, r: number) => Point;

/** Of a hub's flange and the metal of a rim, mm: sketched. */
export const FLANGE_MM = 54;
const FLANGE_THICK = 12;
const METAL_MM = 6;
const DISC_MM = 13;

const onWheel = (on: OnPage, points: readonly (readonly number[])[]): Point[] => points.map(([u, r]) => on(u!, r!));

/** Tyre and rim's outside, from bead to bead. */
export function tyreOutline({ section, shift }: Envelope, on: OnPage): Point[] {
  const half = section.outline();
  return onWheel(on, [...half.map(([u, r]) => [u + shift, r]), ...half.toReversed().map(([u, r]) => [shift - u, r])]);
}

/** The old wheel, dashed: it is not there any more. */
export const oldWheelItems = (before: Envelope, on: OnPage): Item[] => [
  path(tyreOutline(before, on), { ...ghost, closed: true }),
];

/**
 * The new wheel cut through: tyre, rim and its disc down to the axis, and a spacer where there is one.
 *
 * @param hub where the hub's face is, u; @param face where the rim lies against it or against the spacer, u
 */
export function newWheelItems({ section, shift }: Envelope, on: OnPage, hub: number, face: number): Item[] {
  return [
    path(tyreOutline({ section, shift }, on), { closed: true, fill: 'tyre' }),
    path(discOutline(section, shift, face, on), { closed: true, fill: 'sheet', weight: 'narrow', hatch: true }),
    path(rimOutline(section, shift, on), { closed: true, fill: 'sheet', weight: 'narrow' }),
    ...(face - hub > 0.5
      ? [path(onWheel(on, box(hub, 0, face, FLANGE_MM)), { closed: true, fill: 'wash', ink: 'now', weight: 'narrow' })]
      : []),
  ];
}

/** Lips, seats and barrel of the rim, in sheet metal. */
function rimOutline({ lip, innerRadius }: TyreSection, shift: number, on: OnPage): Point[] {
  const [out, seat] = [lip.u, innerRadius + 1.5 * METAL_MM];
  const inner = out - Math.max(METAL_MM, RIM_LIP_MM / 2);
  return onWheel(
    on,
    [
      [-out, lip.r],
      [-inner, lip.r],
      [-inner, seat],
      [inner, seat],
      [inner, lip.r],
      [out, lip.r],
      [out, innerRadius],
      [-out, innerRadius],
    ].map(([u, r]) => [u! + shift, r!]),
  );
}

/** The disc, from its face on the hub outward to the barrel. */
function discOutline({ lip, innerRadius }: TyreSection, shift: number, face: number, on: OnPage): Point[] {
  const furthest = shift + lip.u - 2 * METAL_MM;
  const foot = Math.min(face + 22, furthest - DISC_MM);
  return onWheel(on, [
    [face, 0],
    [face + DISC_MM, 0],
    [face + DISC_MM, FLANGE_MM + 6],
    [foot + DISC_MM, innerRadius],
    [foot, innerRadius],
    [face, FLANGE_MM + 12],
  ]);
}

/** The hub's flange with its bearing, and the axis of the wheel. */
export const hubItems = (on: OnPage, hub: number): Item[] => [
  path(onWheel(on, box(hub - 50, -30, hub - FLANGE_THICK, 30)), {
    closed: true,
    fill: 'sheet',
    weight: 'narrow',
    round: 6,
  }),
  path(onWheel(on, box(hub - FLANGE_THICK, -FLANGE_MM, hub, FLANGE_MM)), {
    closed: true,
    fill: 'sheet',
    weight: 'narrow',
  }),
];

export const axisItem = (on: OnPage, from: number, to: number): Item =>
  path(
    onWheel(on, [
      [from, 0],
      [to, 0],
    ]),
    centreLine,
  );
