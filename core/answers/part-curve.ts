import type { CurveData } from '../curve/curve-data.js';
import { travelsWithinReach } from '../curve-sources/solve-corner.js';
import { buildLinkage } from '../linkage/build-linkage.js';
import { type Corner, type HardPointKey, hardPoint, hardPointKeys, withHardPoint } from '../linkage/corner.js';
import type { Part } from '../linkage/parts/part.js';
import { sweepTravel } from '../linkage/sweep.js';
import type { Source } from '../uncertainty/estimate.js';
import { NORMAL_95 } from '../uncertainty/normal.js';

/** How far a coordinate is moved either way to see what it does, mm: camber is smooth on this scale. */
const NUDGE_MM = 0.25;

/**
 * The camber curve of a corner with parts on it. What its hard points are not known to shows in the curve through the parts, so its
 * sources have the same ids as those of the bare corner: compared with `shares`, what both have in common cancels.
 *
 * @param corner checked hard points, mm and degrees
 * @param parts put on one after another; none: the corner as it is
 * @throws InputError where the links do not close with the parts on
 */
export function partCurve(corner: Corner, ...parts: Part[]): CurveData {
  const made = (from: Corner) => parts.reduce((linkage, part) => part(linkage), buildLinkage(from));
  const linkage = made(corner);
  const travel = travelsWithinReach(linkage);
  const { camber, camberRate } = sweepTravel(linkage, travel);
  const sources: Source[] = [];
  const columns: Float64Array[] = [];
  for (const key of hardPointKeys(corner)) {
    const plusMinus = corner.plusMinus?.[key] ?? corner.plusMinus?.other ?? 0;
    if (!(plusMinus > 0)) continue;
    for (const [axis, name] of ['forward', 'sideways', 'height'].entries()) {
      const changeBy = (by: number) => {
        const swept = sweepTravel(made(nudged(corner, key, axis, by)), [0, ...travel]).camber;
        // Static camber is what was measured: only its changes are in doubt.
        return travel.map((_, i) => swept[i + 1]! - swept[0]!);
      };
      const [up, down] = [changeBy(NUDGE_MM), changeBy(-NUDGE_MM)];
      sources.push({ id: `${key}.${name}`, label: `${key}, ${name}`, dof: Number.POSITIVE_INFINITY });
      columns.push(up.map((value, i) => (((value - down[i]!) / (2 * NUDGE_MM)) * plusMinus) / NORMAL_95));
    }
  }
  const rows = new Float64Array(travel.length * sources.length);
  for (const [at, column] of columns.entries()) {
    for (const [i, value] of column.entries()) rows[i * sources.length + at] = value;
  }
  return {
    kind: 'sampled',
    quantity: 'camber',
    domain: [travel[0]!, travel.at(-1)!],
    sources,
    travel,
    value: camber,
    slope: camberRate,
    parts: rows,
  };
}

function nudged(corner: Corner, key: HardPointKey, axis: number, by: number): Corner {
  const point = [...hardPoint(corner, key)!] as [number, number, number];
  point[axis] = point[axis]! + by;
  return withHardPoint(corner, key, point);
}
