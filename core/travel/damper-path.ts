import type { Motion } from '../linkage/motion.js';

/** How a damper shortens as its wheel goes into bump. Between samples cubic, in value and slope continuous. */
export interface DamperPath {
  /** Ascending, mm. */
  travel: Float64Array;
  /** mm by which the damper is shorter than at travel[0], strictly growing. */
  shortening: Float64Array;
}

/** Samples closer than this, mm, give a slope made of rounding. */
const TOO_CLOSE_MM = 1e-3;
/** Of samples that a slope is taken from: five, equally spaced, err with the fourth power of their distance. */
const STENCIL = 5;
const NEWTON_STEPS = 12;

/** Of a strut, or of a wishbone with a damper; undefined where none is known. */
export const damperPathOf = ({ kind, travel, upper, low, fixed: { damperTop } }: Motion): DamperPath | undefined =>
  kind === 'strut' || damperTop
    ? pathOfLengths(
        travel,
        travel.map((_, i) =>
          Math.hypot(...[0, 1, 2].map((axis) => (damperTop?.[axis] ?? upper[3 * i + axis]!) - low[3 * i + axis]!)),
        ),
      )
    : undefined;

/**
 * The part round travel 0 over which the damper shortens in bump.
 *
 * @param travel ascending, mm
 * @param length of the damper there, mm
 * @returns undefined where it is NaN or does not shorten at travel 0
 */
export function pathOfLengths(travel: Float64Array, length: Float64Array): DamperPath | undefined {
  const kept = travel.map((_, i) => i).filter((i) => i === 0 || travel[i]! - travel[i - 1]! > TOO_CLOSE_MM);
  const [travels, lengths] = [kept.map((i) => travel[i]!), kept.map((i) => length[i]!)];
  let start = Math.max(
    0,
    travels.findLastIndex((t) => t <= 0),
  );
  let end = start;
  while (lengths[start - 1]! > lengths[start]!) start--;
  while (lengths[end + 1]! < lengths[end]!) end++;
  if (start === end) return undefined;
  return {
    travel: travels.slice(start, end + 1),
    shortening: lengths.slice(start, end + 1).map((here) => lengths[start]! - here),
  };
}

/** @param motionRatio mm of damper a mm of wheel, positive */
export const constantPath = (motionRatio: number, low = -200, high = 200): DamperPath => ({
  travel: Float64Array.of(low, high),
  shortening: Float64Array.of(0, motionRatio * (high - low)),
});

/** mm by which the damper is shorter at travel `to` than at `from`; NaN beyond what is known. */
export const shortenedBetween = (path: DamperPath, from: number, to: number): number =>
  evaluate(path, to)[0] - evaluate(path, from)[0];

/** −d(damper length)/d(travel); NaN beyond what is known. */
export const motionRatioAt = (path: DamperPath, travel: number): number => evaluate(path, travel)[1];

/** d(motion ratio)/d(travel), a mm; NaN beyond what is known. */
export const motionRatioSlopeAt = (path: DamperPath, travel: number): number => evaluate(path, travel)[2];

/**
 * Wheel travel at which the damper is shorter by `shortening` (mm, negative when it is longer) than at `from`; undefined beyond
 * what is known.
 */
export function travelAfter(path: DamperPath, from: number, shortening: number): number | undefined {
  const { travel, shortening: known } = path;
  const target = evaluate(path, from)[0] + shortening;
  if (shortening === 0) return from;
  if (!(target >= 0 && target <= known.at(-1)!)) return undefined;
  const i = cellOf(known, target);
  const cubic = cubicOf(path, i);
  const width = travel[i + 1]! - travel[i]!;
  let u = (width * (target - known[i]!)) / (known[i + 1]! - known[i]!);
  for (let step = 0; step < NEWTON_STEPS; step++) {
    const [value, slope] = taylor(cubic, u);
    u = Math.min(Math.max(u + (target - value) / slope, 0), width);
  }
  return travel[i]! + u;
}

/** Shortening since travel[0], its slope and its bend. */
function evaluate(path: DamperPath, at: number): [number, number, number] {
  const { travel } = path;
  if (!(at >= travel[0]! && at <= travel.at(-1)!)) return [Number.NaN, Number.NaN, Number.NaN];
  const i = cellOf(travel, at);
  return taylor(cubicOf(path, i), at - travel[i]!);
}

type Cubic = readonly [value: number, slope: number, bend: number, twist: number];

const taylor = ([value, slope, bend, twist]: Cubic, u: number): [number, number, number] => [
  value + u * (slope + u * (bend / 2 + (u * twist) / 6)),
  slope + u * (bend + (u * twist) / 2),
  bend + u * twist,
];

/** At the samples: a path is asked many times. */
const slopesOf = new WeakMap<DamperPath, Float64Array>();

/** Derivatives at the start of cell i of the cubic with the samples' values and slopes at both ends. */
function cubicOf(path: DamperPath, i: number): Cubic {
  const { travel, shortening } = path;
  const width = travel[i + 1]! - travel[i]!;
  const mean = (shortening[i + 1]! - shortening[i]!) / width;
  let slopes = slopesOf.get(path);
  if (!slopes) {
    slopes = travel.map((_, at) => slopeAt(path, at));
    slopesOf.set(path, slopes);
  }
  const [start, end] = [slopes[i]!, slopes[i + 1]!];
  return [
    shortening[i]!,
    start,
    (2 * (3 * mean - 2 * start - end)) / width,
    (6 * (start + end - 2 * mean)) / (width * width),
  ];
}

/**
 * Of the polynomial through the samples about the i-th, there. Differentiation by barycentric weights: Berrut & Trefethen,
 * Barycentric Lagrange interpolation, SIAM Review 46 (2004), section 9.
 */
function slopeAt({ travel, shortening }: DamperPath, i: number): number {
  const first = Math.max(0, Math.min(i - (STENCIL >> 1), travel.length - STENCIL));
  const near = travel.subarray(first, first + STENCIL);
  const weights = Array.from(near, (x) =>
    near.reduce((product, other) => (other === x ? product : product / (x - other)), 1),
  );
  return near.reduce((slope, x, j) => {
    const apart = x - travel[i]!;
    return apart === 0
      ? slope
      : slope + (weights[j]! / weights[i - first]!) * ((shortening[i]! - shortening[first + j]!) / apart);
  }, 0);
}

/** The last sample at or before x, but for the very last. */
function cellOf(samples: Float64Array, x: number): number {
  const next = samples.findIndex((sample) => sample > x);
  return (next < 0 ? samples.length - 1 : Math.max(next, 1)) - 1;
}
