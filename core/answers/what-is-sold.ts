import type { WheelComparison } from '../wheel/compare-wheels.js';
import { dimensionsOf } from '../wheel/tyre-dimensions.js';
import { tyreSizeOf } from '../wheel/tyre-size.js';
import type { WheelSpec } from '../wheel/wheel.js';

/*
 * How far each thing can be changed by what one buys. Common practice, no source: every figure of this file.
 */

/**
 * Offsets of wheels for passenger cars and spacers, mm. Of one width, made for one hub, there are few that stand much further in:
 * brake and strut are in the way.
 */
const OFFSETS = [0, 60] as const;
const FURTHEST_IN_MM = 15;
const THICKEST_SPACER_MM = 30;
/** Slotted top mounts and knuckle bolts, degrees either way. */
export const FURTHEST_CAMBER = 2.5;
/** Packers on a damper's rod, mm together. */
export const THICKEST_PACKERS_MM = 30;
/** Bump that has to be left at the wheel where nothing is known of the stop's first touch, mm. */
export const LEAST_BUMP_MM = 20;
/** A shorter stop, or one that is cut: so much later at most, mm at the wheel. */
export const LATEST_BUMP_MM = 30;
/** Dampers with an adjustable lower body: so much lower still, mm; back up to stock height and no further. */
export const LOWEST_MORE_MM = 40;
/** Free diameter against the wheel that was on: the speedometer, the gearing and the ground clearance go with it. */
const DIAMETER_SHARE = 0.04;
/** Tyres come in widths of 5 mm and then every 10, and in aspects of every 5. */
const WIDTHS = Array.from({ length: 22 }, (_, i) => 145 + 10 * i);
const ASPECTS = Array.from({ length: 12 }, (_, i) => 25 + 5 * i);

/** How far inboard (negative) and outboard the middle plane of a wheel can be moved, mm. */
export function planeBounds({ offset, spacer = 0 }: WheelSpec): [inboard: number, outboard: number] {
  const [least, most] = OFFSETS;
  return [
    -Math.min(FURTHEST_IN_MM + spacer, Math.max(0, most - offset) + spacer),
    Math.min(THICKEST_SPACER_MM, Math.max(0, offset - least, THICKEST_SPACER_MM - spacer)),
  ];
}

/** A tyre in place of the one asked about, on its rim. */
export interface OtherTyre {
  spec: WheelSpec;
  /** By the formula, mm. */
  sectionWidth: number;
  freeDiameter: number;
}

/** Sizes that this rim permits by their widths, the nearest width first: each of the aspect that comes nearest in diameter. */
export function otherWidths({ after }: WheelComparison, isWider: boolean): OtherTyre[] {
  const { sectionMm } = after.dimensions.size;
  return WIDTHS.filter((width) => (isWider ? width > sectionMm : width < sectionMm))
    .sort((a, b) => (isWider ? a - b : b - a))
    .flatMap((width) => {
      const made = ASPECTS.flatMap((aspect) => tyreOn(after.spec, width, aspect, after.dimensions.size.rimCode));
      const away = ({ freeDiameter }: OtherTyre) => Math.abs(freeDiameter - 2 * after.freeRadius);
      return made.sort((a, b) => away(a) - away(b)).slice(0, 1);
    });
}

/**
 * Sizes of the same width whose diameter is smaller, or larger, the nearest first: of another aspect, and where it is to be smaller
 * also on a rim an inch less across. None further from the wheel that was on than gearing bears.
 */
export function otherDiameters({ before, after }: WheelComparison, isLarger: boolean): OtherTyre[] {
  const { sectionMm, rimCode } = after.dimensions.size;
  const [now, was] = [2 * after.freeRadius, 2 * before.freeRadius];
  return (isLarger ? [rimCode] : [rimCode, rimCode - 1])
    .flatMap((code) => ASPECTS.flatMap((aspect) => tyreOn(after.spec, sectionMm, aspect, code)))
    .filter(({ freeDiameter: size }) =>
      isLarger ? size > now && size <= was * (1 + DIAMETER_SHARE) : size < now && size >= was * (1 - DIAMETER_SHARE),
    )
    .sort((a, b) => Math.abs(a.freeDiameter - now) - Math.abs(b.freeDiameter - now));
}

/** What was measured of the tyre in question says nothing of another. */
function tyreOn(spec: WheelSpec, width: number, aspect: number, rimCode: number): OtherTyre[] {
  const { sectionWidth: _s, treadWidth: _t, shoulderRadius: _r, ...rest } = spec;
  const size = tyreSizeOf([], `${width}/${aspect}R${rimCode}`, 'size');
  if (!size) return [];
  const { fit, sectionWidth, freeDiameter } = dimensionsOf(size, spec.rimWidthInch);
  return fit === 'permitted' ? [{ spec: { ...rest, size: size.text }, sectionWidth, freeDiameter }] : [];
}
