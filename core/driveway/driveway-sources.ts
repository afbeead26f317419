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
 * What no measurement in front view tells of a corner in space, by one standard uncertainty, mm. The ball joint is up to 15 mm ahead of
 * the hub or behind it, and the arm's axis is tilted by up to 4 degrees, both anywhere within that: common practice, no source. How
 * much shorter or longer than the arm the tie rod is, which bends the toe over travel, was fitted to random three-dimensional cars,
 * seed 9001 (test/core/driveway/random-car.ts), and tested on others: most of what those steer beyond a constant rate is to toe-out, and
 * is counted here, not corrected, because how cars do is common practice without a source.
 */
const AHEAD = anywhere(15);
const TILT = anywhere(HALF_BASE_MM * 0.07);
const ROD = 100;

/** The method's own sources, apart from the rod's, which depends on where the rod lies. */
const METHOD: Record<string, PointDerivatives> = {
  ahead: { wheelCentre: [-AHEAD, 0, 0] },
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
  const method = Object.entries({ ...METHOD, rod: shorterRod(corner, taken.bumpSteer.measured) }).map(
    ([name, moves]) => ({
      id: `method.${name}`,
      label: 'the method',
      dof: Number.POSITIVE_INFINITY,
      moves,
    }),
  );
  return [...measured, ...method];
}

/** The rod's inner end moved along it: bump steer where the car stands stays as it is; what was measured, over its whole travel. */
function shorterRod({ tieRod: { inner, outer } }: StrutCorner, isMeasured: boolean): PointDerivatives {
  const [across, up] = [outer[1] - inner[1], outer[2] - inner[2]];
  const length = Math.hypot(across, up);
  // At a travel t the outer end goes ROD t²/2L² inboard, and by t/L for each mm that the inner end is higher.
  const kept = isMeasured ? (ROD * BUMP_STEER_OVER_MM) / (2 * length) : 0;
  return { 'tieRod.inner': [0, (ROD * across) / length, (ROD * up) / length + kept] };
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
