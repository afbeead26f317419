import { type IndependentCorner, type IndependentStrut, independentStrut, type Point } from './independent-strut.js';
import { type IndependentShape, independentProfile } from './independent-tyre-section.js';

/*
 * How near a tyre comes to one place in its arch over the whole steering, at travels up to where the stop is solid: a second
 * computation, to check the calculator's and the numbers of its article. Nothing is imported from core/. The wheel is moved by
 * independent-strut.ts at every point of a fine grid; the distance is to a polygon of some thousand sides of the profile of
 * independent-tyre-section.ts; what would just clear is found by halving.
 */

const DEGREES = 180 / Math.PI;
const RACKS_EACH_WAY = 80;
/** Travels below the end, mm: the nearest is there or not far from it, and the rest is looked at coarsely. */
const BELOW = [0, 0.5, 1, 2, 4, 7, 11, 16, 24, 34, 48, 64, 85];

/** Where a place is in a wheel's own half-plane: along its axis from the plane of the hub's wheel, away from it; and how it stands. */
export interface Seen {
  travel: number;
  /** Toe at reference height, degrees. */
  steer: number;
  along: number;
  away: number;
}

/** Travel at which the damper is so much shorter than at reference height, mm. */
export function travelWhenShorter(corner: IndependentCorner, shorter: number): number {
  const strut = independentStrut(corner);
  const length = (travel: number) => {
    strut.reset();
    for (let i = 1; i <= 20; i++) strut.solve((travel * i) / 20);
    return strut.pose().damperLength;
  };
  const atRest = length(0);
  let [low, high] = [0, 2 * shorter];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (atRest - length(middle) < shorter) low = middle;
    else high = middle;
  }
  return low;
}

/** The rack, mm, that turns the wheel so far from straight ahead, one way or the other. */
function rackAt(strut: IndependentStrut, corner: IndependentCorner, lock: number, way: 1 | -1): number {
  let [low, high] = [0, way * 120];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    strut.reset();
    let isThere = true;
    for (let k = 1; k <= 30 && isThere; k++) isThere = strut.solve(0, (middle * k) / 30);
    if (isThere && Math.abs(strut.pose().toe - corner.toe) < lock) low = middle;
    else high = middle;
  }
  return low;
}

/**
 * A place as the wheel sees it over steering and travel.
 *
 * @param point from the wheel's centre as built, mm
 * @param lean the carrier leaned about its lower ball joint by so many degrees of camber besides
 */
export function seenFrom(
  corner: IndependentCorner,
  point: Point,
  { lock, end, lean = 0 }: { lock: number; end: number; lean?: number },
): Seen[] {
  const strut = independentStrut(corner);
  const seen: Seen[] = [];
  const [sine, cosine] = [Math.sin(-lean / DEGREES), Math.cos(lean / DEGREES)];
  const leaned = ([x, y, z]: Point): Point => [x, y * cosine - z * sine, y * sine + z * cosine];
  for (const way of lock > 0 ? ([1, -1] as const) : [1 as const]) {
    const last = lock > 0 ? rackAt(strut, corner, lock, way) : 0;
    strut.reset();
    for (let k = 0; k <= (lock > 0 ? RACKS_EACH_WAY : 0); k++) {
      const rack = (last * k) / RACKS_EACH_WAY;
      strut.solve(0, rack);
      const steer = strut.pose().toe;
      for (let step = 1; step <= 12; step++) strut.solve((end * step) / 12, rack);
      for (const below of BELOW) {
        strut.solve(end - below, rack);
        const { wheelCentre, spin, ball } = strut.pose();
        const from = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
        const out = leaned(from(wheelCentre, ball));
        const centre: Point = [ball[0] + out[0], ball[1] + out[1], ball[2] + out[2]];
        const d = from([0, 1, 2].map((i) => point[i]! + corner.wheelCentre[i]!) as unknown as Point, centre);
        const s = leaned(spin);
        const along = d[0] * s[0] + d[1] * s[1] + d[2] * s[2];
        const away = Math.sqrt(d[0] ** 2 + d[1] ** 2 + d[2] ** 2 - along ** 2);
        seen.push({ travel: end - below, steer, along, away });
      }
      for (let step = 11; step >= 0; step--) strut.solve((end * step) / 12, rack);
    }
  }
  return seen;
}

/** Signed distance to a profile mirrored at its middle plane: by the sides of a polygon. */
function profileDistance(shape: IndependentShape): (along: number, away: number) => number {
  const sides = independentProfile(shape).flatMap(({ at, length }) => {
    const parts = Math.max(1, Math.ceil(length / 0.4));
    return Array.from({ length: parts }, (_, i) => [...at(i / parts), ...at((i + 1) / parts)] as const);
  });
  return (along, away) => {
    const u = Math.abs(along);
    let least = Number.POSITIVE_INFINITY;
    let isInside = false;
    for (const [u0, r0, u1, r1] of sides) {
      const [du, dr] = [u1 - u0, r1 - r0];
      const share = Math.min(1, Math.max(0, ((u - u0) * du + (away - r0) * dr) / (du * du + dr * dr || 1)));
      least = Math.min(least, Math.hypot(u - u0 - share * du, away - r0 - share * dr));
      if (r0 > away !== r1 > away && u < u0 + ((away - r0) / (r1 - r0)) * du) isInside = !isInside;
    }
    return isInside ? -least : least;
  };
}

/** The nearest of all, with where it is. @param shift of the wheel's middle plane outboard of the one the car was built with, mm */
export function nearest(seen: readonly Seen[], shape: IndependentShape, shift: number): Seen & { gap: number } {
  const distance = profileDistance(shape);
  // No nearer than this at any rate: the most promising first.
  const half = Math.max(shape.sectionWidth / 2, shape.rimWidth / 2 + 11);
  const order = seen
    .map((one) => ({ one, least: Math.max(one.away - shape.freeRadius, Math.abs(one.along - shift) - half) }))
    .sort((a, b) => a.least - b.least);
  let best: (Seen & { gap: number }) | undefined;
  for (const { one, least } of order) {
    if (best && least > best.gap) break;
    const gap = distance(one.along - shift, one.away);
    if (!best || gap < best.gap) best = { ...one, gap };
  }
  return best!;
}
