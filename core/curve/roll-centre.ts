import type { Estimate, Source } from '../uncertainty/estimate.js';

/** The roll centre over wheel travel with its doubt, as plain data. */
export interface RollCentre {
  /** mm, ascending, bump positive. */
  travel: Float64Array;
  /** Above the ground at each travel, mm: both wheels of the axle moved alike. */
  height: Float64Array;
  /** Those of camber and toe, by the same ids; of a car from the driveway more. */
  sources: Source[];
  /** Row by row, travels × sources, mm. */
  parts: Float64Array;
}

/** Its height at a travel, mm; NaN where that is out of reach. */
export function rollCentreAt({ travel, height, sources, parts }: RollCentre, at: number): Estimate {
  const above = travel.findIndex((one) => one >= at);
  const i = at === travel[0] ? 1 : above;
  if (i < 1) return { value: Number.NaN, parts: new Float64Array(sources.length).fill(Number.NaN) };
  const share = (at - travel[i - 1]!) / (travel[i]! - travel[i - 1]!);
  const between = (a: number, b: number) => a + share * (b - a);
  return {
    value: between(height[i - 1]!, height[i]!),
    parts: Float64Array.from(sources, (_, s) =>
      between(parts[(i - 1) * sources.length + s]!, parts[i * sources.length + s]!),
    ),
  };
}

/** The same, counted from another height: see `reZeroed`. */
export const rollCentreFrom = (of: RollCentre, measuredAt: number): RollCentre =>
  measuredAt === 0 ? of : { ...of, travel: of.travel.map((travel) => travel + measuredAt) };
