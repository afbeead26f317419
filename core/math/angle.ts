/** Radians in a degree. */
export const DEG = Math.PI / 180;

/** How far rounding may carry the cosine between two unit vectors past ±1. */
const ROUNDING = 1e-12;

/** Arc sine, radians. A little past ±1 counts as ±1 (rounding); further out there is no such angle: NaN. */
export const asin = (x: number): number => Math.asin(withinOne(x));

/** Arc cosine, radians. A little past ±1 counts as ±1 (rounding); further out there is no such angle: NaN. */
export const acos = (x: number): number => Math.acos(withinOne(x));

function withinOne(x: number): number {
  if (x > 1) return x < 1 + ROUNDING ? 1 : NaN;
  if (x < -1) return x > -1 - ROUNDING ? -1 : NaN;
  return x;
}
