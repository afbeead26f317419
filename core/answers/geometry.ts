import type { MovedLinks, TriedSource } from '../curve-sources/solved-source.js';
import type { Driveway } from '../driveway/driveway.js';
import type { Corner } from '../linkage/corner.js';
import type { Linkage } from '../linkage/linkage.js';
import { type Motion, motionOf } from '../linkage/motion.js';
import { sweepTravel, type TravelSweep } from '../linkage/sweep.js';
import { numberChecks } from '../quantity/number-problem.js';
import type { Problem } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import { linksOf } from './links-of.js';

/** What a corner does over travel, as `TravelSweep` says it: degrees and mm. */
export const GEOMETRY_OUTPUTS = [
  'camber',
  'toe',
  'caster',
  'kingpin',
  'scrubRadius',
  'casterTrail',
  'halfTrack',
  'rollCentreHeight',
  'motionRatio',
  'instantCentreY',
  'instantCentreZ',
] as const satisfies readonly (keyof TravelSweep)[];
export type GeometryOutput = (typeof GEOMETRY_OUTPUTS)[number];

/** What do the links of a corner do to everything that is set on it, over wheel travel? */
export interface GeometryRequest<S = TriedSource> {
  /** Hard points or a driveway, bare or with parts on. */
  source: S;
  /** Wheel travel from where the source was measured, mm, bump positive, in any order. Default: every 2.5 mm within reach. */
  travels?: ArrayLike<number>;
}

export interface GeometryAnswer {
  /** mm. A travel beyond reach has NaN in every output. */
  travel: Float64Array;
  /** Left out: toe from a driveway, which tells nothing of the tie rod; the motion ratio of a corner without a damper. */
  outputs: Partial<Record<GeometryOutput, Float64Array>>;
  /** Where the joints are, at the travels that are within reach; for drawings. */
  motion: Motion;
  corner: Corner;
  reach: MovedLinks['reach'];
  /** The measurements that the links were made from. Only from the driveway. */
  driveway?: Driveway;
}

/** Travels, mm, over which a corner is looked at: as far as dampers of road cars go. */
const SHOWN_DROOP_MM = -60;
const SHOWN_BUMP_MM = 100;
const STEP_MM = 2.5;
/** The rates grow without bound at the very end of reach. */
const CLEAR_OF_END_MM = 1;

/**
 * Everything that `sweepTravel` tells of a source's links.
 *
 * @throws InputError of what is wrong with the source; `wrong-shape`, path `source`, of one without links; `travels.3` for what is no
 *   travel
 */
export function geometryOf({ source, travels }: GeometryRequest): GeometryAnswer {
  const { corner, linkage, reach } = linksOf(source, travelProblems(travels));
  const driveway = 'driveway' in source ? source.driveway : undefined;
  const travel = travels ? Float64Array.from(travels) : shownTravels(linkage);
  const swept = sweepTravel(linkage, travel);
  const within = travel.filter((_, i) => swept.reached[i] === 1).sort();
  return {
    travel,
    outputs: Object.fromEntries(outputsOf(source, linkage).map((output) => [output, swept[output]])),
    motion: motionOf(linkage, within),
    corner,
    reach,
    ...(driveway && { driveway }),
  };
}

/** A driveway tells nothing of the tie rod; a corner without a damper has no motion ratio. */
export const outputsOf = (source: TriedSource, { kind, damperEnd }: Linkage): GeometryOutput[] => {
  const isTold: Partial<Record<GeometryOutput, boolean>> = {
    toe: !('driveway' in source && source.driveway),
    motionRatio: kind === 'strut' || damperEnd !== undefined,
  };
  return GEOMETRY_OUTPUTS.filter((output) => isTold[output] !== false);
};

function travelProblems(travels: ArrayLike<number> | undefined): Problem[] {
  const problems: Problem[] = [];
  const check = numberChecks(problems);
  const { min, max } = QUANTITIES.travel;
  Array.from(travels ?? []).forEach((one, i) => {
    check(`travels.${i}`, one, min, max);
  });
  return problems;
}

/** Whole steps from stock height, so that it is one of them. */
export function shownTravels({ reach }: Linkage): Float64Array {
  const low = Math.max(SHOWN_DROOP_MM, reach.droop + CLEAR_OF_END_MM);
  const high = Math.min(SHOWN_BUMP_MM, reach.bump - CLEAR_OF_END_MM);
  const travels = new Set([Math.min(low, 0)]);
  for (let i = Math.ceil(low / STEP_MM); i * STEP_MM <= high; i++) travels.add(i * STEP_MM || 0);
  return Float64Array.from(travels.add(Math.max(high, 0))).sort();
}
