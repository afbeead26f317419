import type { TyreSection } from '../../core/wheel/tyre-section.js';

/** The nearest point of a section's outline: for the drawing, along its chords. */
export function nearestOf(section: TyreSection, u: number, r: number): [number, number] {
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
