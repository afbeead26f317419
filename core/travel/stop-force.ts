import type { CornerLoads } from './travel-limits.js';

/** Force of a bump stop over its compression on the rod, N and mm; undefined where nobody said. Between points, and on beyond the last, along straight lines. */
export function stopForce({ stopRate, stopPoints }: CornerLoads): ((compression: number) => number) | undefined {
  if (!stopPoints || stopPoints.length === 0) {
    return stopRate === undefined ? undefined : (compression) => stopRate * compression;
  }
  const points = [[0, 0], ...stopPoints] as const;
  return (compression) => {
    const next = points.findIndex(([at]) => at > compression);
    const i = Math.max(1, next < 0 ? points.length - 1 : next);
    const [[x0, y0], [x1, y1]] = [points[i - 1]!, points[i]!];
    return y0 + ((compression - x0) / (x1 - x0)) * (y1 - y0);
  };
}
