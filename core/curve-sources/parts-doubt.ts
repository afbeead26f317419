import { buildLinkage } from '../linkage/build-linkage.js';
import type { Corner } from '../linkage/corner.js';
import { type CornerMoves, type CornerSource, movedBy } from '../linkage/corner-source.js';
import type { Linkage } from '../linkage/linkage.js';
import { sweepTravel, type TravelSweep } from '../linkage/sweep.js';

/** By how many standard uncertainties a source is put off either way to see what it does: angles are smooth on this scale. */
const NUDGE = 0.1;

type Angle = 'camber' | 'toe';

/**
 * As `cornerDoubt`, by central differences through the parts and what is set again.
 *
 * @param moved the linkage with the parts on and a source off by so many standard uncertainties
 * @param linkage with the parts on
 */
export function partsDoubt(
  corner: Corner,
  moved: (by: CornerMoves, times: number) => Linkage,
  linkage: Linkage,
  travel: Float64Array,
  sources: readonly CornerSource[],
): (angle: Angle) => Float64Array {
  const here = sweepTravel(linkage, travel);
  const bare = sweepTravel(buildLinkage(corner), travel);
  const bareMoved = (by: CornerMoves, times: number) => buildLinkage(movedBy(corner, by, times), { isOpen: true });
  const columns = sources.map((source): ((angle: Angle) => ArrayLike<number>) => {
    const { isOfPartsAlone, shareOfParts } = source;
    if (shareOfParts !== undefined) {
      const start = travel.indexOf(0);
      return (angle) => {
        const added = (i: number) => here[angle][i]! - bare[angle][i]!;
        return here[angle].map((_, i) => shareOfParts * (added(i) - added(start)));
      };
    }
    const slope = slopeOver(travel, here, moved, source);
    if (!isOfPartsAlone) return slope;
    const without = slopeOver(travel, bare, bareMoved, source);
    return (angle) => {
      const less = without(angle);
      return slope(angle).map((part, i) => part - less[i]!);
    };
  });
  return (angle) => {
    const parts = new Float64Array(travel.length * sources.length);
    for (const [s, column] of columns.entries()) {
      const found = column(angle);
      let last = 0;
      for (let i = 0; i < travel.length; i++) {
        // Close to the end of its own reach a neighbour stands in.
        if (!Number.isNaN(found[i]!)) last = found[i]!;
        parts[i * sources.length + s] = last;
      }
    }
    return parts;
  };
}

/** What a source does to an angle over travel, per standard uncertainty: degrees; NaN beyond reach. */
function slopeOver(
  travel: Float64Array,
  here: TravelSweep,
  moved: (by: CornerMoves, times: number) => Linkage,
  source: CornerSource,
): (angle: Angle) => Float64Array {
  const [up, down] = [NUDGE, -NUDGE].map((times) => sweepTravel(moved(source, times), travel));
  return (angle) =>
    travel.map((_, i) => {
      const [more, less, now] = [up![angle][i]!, down![angle][i]!, here[angle][i]!];
      // Close to an end of reach one of them may be beyond its own.
      if (Number.isNaN(more)) return (now - less) / NUDGE;
      return Number.isNaN(less) ? (more - now) / NUDGE : (more - less) / (2 * NUDGE);
    });
}
