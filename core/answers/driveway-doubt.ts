import {
  type AssumableKey,
  DRIVEWAY_FIELDS,
  DRIVEWAY_KEYS,
  type Driveway,
  type DrivewayKey,
} from '../driveway/driveway.js';
import { drivewayDerivatives } from '../driveway/driveway-corner.js';
import type { StrutCorner, StrutPointKey } from '../linkage/corner.js';
import { sweepDerivatives } from '../linkage/derivatives.js';
import type { Linkage } from '../linkage/linkage.js';
import type { Source } from '../uncertainty/estimate.js';
import { NORMAL_95 } from '../uncertainty/normal.js';

/**
 * Standard uncertainty of reading a three-dimensional linkage as a plane one, degrees: a part that grows with travel (per mm) and
 * one with its square (per mm²), independent: 0.019° at 30 mm of bump, about 5 % of a common change. It is that of the toe change
 * over travel, which turns the wheel about a leaning axis, and hardly depends on the camber change itself.
 *
 * Fitted to the residuals of random three-dimensional cars, seed 9001 (test/core/driveway/random-car.ts). Cars that toe out in
 * bump add 0.012° less negative camber over 30 mm than the plane strut, on average; that is counted here and not corrected,
 * because how much cars toe out in bump is common practice without a source. In droop the figure is on the safe side.
 */
const METHOD = { perMm: 4.5e-4, perSquareMm: 1.5e-5 };

/**
 * How the doubt of each measurement shows in camber over travel: ∂camber/∂point × ∂point/∂measurement × standard uncertainty.
 *
 * @param corner `drivewayCorner(driveway)`
 * @param linkage built from it
 * @param travel mm, all within reach
 * @returns `parts` row by row, travels × sources, degrees
 */
export function drivewayDoubt(
  driveway: Driveway,
  corner: StrutCorner,
  linkage: Linkage,
  travel: Float64Array,
): { sources: Source[]; parts: Float64Array } {
  const { taken } = driveway;
  // Static camber shifts the whole curve.
  const derivatives: ReturnType<typeof drivewayDerivatives> = { ...drivewayDerivatives(driveway), camber: {} };
  const doubted = DRIVEWAY_KEYS.flatMap((id) => {
    const { plusMinus } = { ...taken, ...driveway }[id] ?? { plusMinus: 0 };
    // Track moves everything sideways together: no camber in it.
    return plusMinus > 0 && id !== 'track' && derivatives[id] ? { id, standard: plusMinus / NORMAL_95 } : [];
  });
  const sources = [
    ...doubted.map(({ id }) => ({ id, label: DRIVEWAY_FIELDS[id].label })),
    { id: 'method.rate', label: 'the method, rate' },
    { id: 'method.bend', label: 'the method, bend' },
  ].map((source) => ({ ...source, dof: Number.POSITIVE_INFINITY }));

  const swept = sweepDerivatives(corner, linkage, travel);
  const parts: number[] = [];
  travel.forEach((t, i) => {
    const slopes = { camber: 1 } as Record<DrivewayKey, number>;
    // Backwards: a height that was put above another one goes where that goes, and so does its share in camber.
    for (const key of [...DRIVEWAY_KEYS].reverse()) {
      slopes[key] ??= 0;
      swept.keys.forEach((point, at) => {
        derivatives[key]?.[point as StrutPointKey]?.forEach((by, axis) => {
          slopes[key] += by * swept.camber[3 * (i * swept.keys.length + at) + axis]!;
        });
      });
      const above = taken[key as AssumableKey]?.above;
      if (above) slopes[above] = (slopes[above] ?? 0) + slopes[key];
    }
    parts.push(
      ...doubted.map(({ id, standard }) => slopes[id] * standard),
      METHOD.perMm * t,
      METHOD.perSquareMm * t * t,
    );
  });
  return { sources, parts: Float64Array.from(parts) };
}
