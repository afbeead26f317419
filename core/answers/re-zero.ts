import { curveOf } from '../curve/curve.js';
import type { CurveData } from '../curve/curve-data.js';
import { reZeroedCurve } from '../curve/re-zeroed-curve.js';
import type { MovedLinks, SolvedSource } from '../curve-sources/solved-source.js';

type Known = SolvedSource<MovedLinks>;

/** Where a car stood when it was measured, mm; see LoweringRequest. */
export interface MeasuredHeights {
  measuredAt?: number | undefined;
  camberReadLower?: number | undefined;
}

const counted = new WeakMap<Known, { measuredAt: number; camberReadLower: number; known: Known }>();

/** A source counted from stock height, with its camber as it was read: the same object for the same heights, however often a drag asks. */
export function fromStockHeight(source: Known, { measuredAt = 0, camberReadLower = 0 }: MeasuredHeights): Known {
  const last = counted.get(source);
  if (last?.measuredAt === measuredAt && last.camberReadLower === camberReadLower) return last.known;
  const read = withCamberReadAt(source, camberReadLower);
  // Readings say themselves where they were counted from.
  const known = withChangesOnly(read.readings ? read : reZeroed(read, measuredAt));
  counted.set(source, { measuredAt, camberReadLower, known });
  return known;
}

/**
 * The same source counted from another height: a car measured as it stands, already lowered, is on its curve where the drop has
 * put it. The curve itself does not change.
 *
 * @param measuredAt travel from stock height to where it was measured, mm, positive in bump (lowered)
 */
export function reZeroed(solved: Known, measuredAt: number): Known {
  if (measuredAt === 0) return solved;
  const { camber, toe, links } = solved;
  return {
    ...solved,
    ...(camber && { camber: reZeroedCurve(camber, measuredAt) }),
    ...(toe && { toe: reZeroedCurve(toe, measuredAt) }),
    ...(links && { links: reZeroedLinks(links, measuredAt) }),
  };
}

const reZeroedLinks = ({ motion, reach, ...links }: MovedLinks, by: number): MovedLinks => ({
  ...links,
  motion: { ...motion, travel: motion.travel.map((travel) => travel + by) },
  reach: { ...reach, droop: reach.droop + by, bump: reach.bump + by },
});

/**
 * A static camber that was read on a car that stood lower than where its links were measured: the whole curve moves up or down
 * until it is right there. Of sampled curves only: a curve that was fitted to readings has its own camber.
 *
 * @param lower mm
 */
export function withCamberReadAt(solved: Known, lower: number): Known {
  const { camber: curve } = solved;
  if (lower === 0 || curve?.kind !== 'sampled') return solved;
  return { ...solved, camber: shifted(curve, -curveOf(curve).change(Math.min(lower, curve.domain[1]), 0)) };
}

/** Where nobody said what the camber is, the curve says what it changes from reference height: there it is 0. */
export function withChangesOnly(solved: Known): Known {
  const { camber: curve, driveway } = solved;
  if (!driveway || driveway.camber || curve?.kind !== 'sampled') return solved;
  return { ...solved, camber: shifted(curve, -curveOf(curve).value(0)) };
}

const shifted = (curve: CurveData & { kind: 'sampled' }, by: number): CurveData => ({
  ...curve,
  value: curve.value.map((camber) => camber + by),
});
