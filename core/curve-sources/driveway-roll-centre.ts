import { buildLinkage } from '../linkage/build-linkage.js';
import type { CornerSource } from '../linkage/corner-source.js';
import { sweepTravel } from '../linkage/sweep.js';
import type { SolvedLinks, SolvedSource } from './solved-source.js';

/**
 * Standard uncertainties of what six measurements in front view leave open of the roll centre's height besides: mm, the same with any
 * parts on; and of what parts change of it, as a share. Fitted on seed 9001 of random three-dimensional cars, tested on others (bench
 * `parts`).
 */
const OF_DRIVEWAY_MM = 5.5;
const SHARE_OF_PARTS = 0.065;
/** Once readings have corrected the corner, mm: fitted on the same cars (bench `learn`). */
const OF_LEARNT_MM = 4;

/** What else the roll centre of a car that was measured in the driveway is not known to, and how that shows in it, mm. */
export function rollCentreOfDriveway(
  { driveway, parts }: Pick<SolvedSource, 'driveway' | 'parts'>,
  { corner, linkage }: Pick<SolvedLinks, 'corner' | 'linkage'>,
): { source: CornerSource; partsAt(travel: Float64Array): ArrayLike<number> }[] {
  if (!driveway) return [];
  const source = (id: string): CornerSource => ({ id, label: 'the method', dof: Number.POSITIVE_INFINITY, moves: {} });
  const method = {
    source: source('method.rollCentre'),
    partsAt: ({ length }: Float64Array) =>
      new Float64Array(length).fill(driveway.isLearnt ? OF_LEARNT_MM : OF_DRIVEWAY_MM),
  };
  if (!parts || parts.length === 0) return [method];
  const ofParts = (travel: Float64Array) => {
    const [here, bare] = [linkage, buildLinkage(corner)].map((of) => sweepTravel(of, travel).rollCentreHeight);
    return here!.map((height, i) => SHARE_OF_PARTS * (height - bare![i]! || 0));
  };
  return [method, { source: source('method.parts.rollCentre'), partsAt: ofParts }];
}
