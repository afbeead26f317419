import type { StrutCorner, StrutPointKey, Vector3 } from '../linkage/corner.js';
import type { CornerSource } from '../linkage/corner-source.js';
import { NORMAL_95 } from '../uncertainty/normal.js';
import {
  type AssumableKey,
  BUMP_STEER_OVER_MM,
  DRIVEWAY_FIELDS,
  DRIVEWAY_KEYS,
  type Driveway,
  type DrivewayKey,
} from './driveway.js';
import { drivewayDerivatives, HALF_BASE_MM, type PointDerivatives } from './driveway-corner.js';

/** Standard uncertainty of a quantity that lies anywhere within ± a half-width: GUM (JCGM 100:2008), 4.3.7. */
const anywhere = (half: number): number => half / Math.sqrt(3);

/**
 * What six measurements in front view do not know of a three-dimensional corner, as moves of its points by one standard
 * uncertainty, mm. Ranges: common practice, no source, but for the rod.
 */
const TILT = anywhere(HALF_BASE_MM * 0.07);
const OFFSET = anywhere(15);
const ROD = 100;
const METHOD: Record<string, PointDerivatives> = {
  forward: { wheelCentre: [-OFFSET, 0, 0] },
  axis: { 'lowerArm.front': [0, 0, TILT], 'lowerArm.rear': [0, 0, -TILT] },
};

/** What a driveway's corner is not known to. Every source moves points of `drivewayCorner`, by one standard uncertainty. */
export function drivewaySources(driveway: Driveway, corner: StrutCorner): CornerSource[] {
  const { taken } = driveway;
  // Static camber shifts the whole curve.
  const derivatives: Partial<Record<DrivewayKey, PointDerivatives>> = { ...drivewayDerivatives(driveway), camber: {} };
  // Backwards: a height that was put above another one goes where that goes.
  for (const key of [...DRIVEWAY_KEYS].reverse()) {
    const above = taken[key as AssumableKey]?.above;
    if (above) derivatives[above] = sum(derivatives[above]!, derivatives[key]!);
  }
  const measured = DRIVEWAY_KEYS.flatMap((id): CornerSource[] => {
    const { plusMinus } = { ...taken, ...driveway }[id] ?? { plusMinus: 0 };
    // Track moves everything sideways together: no camber in it.
    if (!(plusMinus > 0) || id === 'track' || !derivatives[id]) return [];
    const standard = plusMinus / NORMAL_95;
    return [
      {
        id,
        label: DRIVEWAY_FIELDS[id].label,
        dof: Number.POSITIVE_INFINITY,
        moves: scaled(derivatives[id], standard),
        ...(id === 'camber' && { camber: standard }),
      },
    ];
  });
  const { inner, outer } = corner.tieRod;
  const length = Math.hypot(outer[1] - inner[1], outer[2] - inner[2]);
  const along = [(ROD * (outer[1] - inner[1])) / length, (ROD * (outer[2] - inner[2])) / length] as const;
  // Bump steer that was measured stays what it is over its travel.
  const kept = taken.bumpSteer.measured ? (ROD * BUMP_STEER_OVER_MM) / (2 * length) : 0;
  const rod: PointDerivatives = { 'tieRod.inner': [0, along[0], along[1] + kept] };
  const method = Object.entries({ ...METHOD, rod }).map(([name, moves]) => ({
    id: `method.${name}`,
    label: 'the method',
    dof: Number.POSITIVE_INFINITY,
    moves,
  }));
  return [...measured, ...method];
}

const entries = (of: PointDerivatives) => Object.entries(of) as [StrutPointKey, Vector3][];

const scaled = (of: PointDerivatives, by: number): PointDerivatives =>
  Object.fromEntries(entries(of).map(([key, [x, y, z]]) => [key, [x * by, y * by, z * by]]));

function sum(a: PointDerivatives, b: PointDerivatives): PointDerivatives {
  const all = { ...a };
  for (const [key, [x, y, z]] of entries(b)) {
    const [u, v, w] = all[key] ?? [0, 0, 0];
    all[key] = [u + x, v + y, w + z];
  }
  return all;
}
