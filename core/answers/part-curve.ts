import type { CurveData } from '../curve/curve-data.js';
import { cornerSources } from '../curve-sources/corner-doubt.js';
import { partsDoubt } from '../curve-sources/parts-doubt.js';
import { solveLinks } from '../curve-sources/solve-corner.js';
import { buildLinkage } from '../linkage/build-linkage.js';
import type { Corner } from '../linkage/corner.js';
import { type CornerMoves, movedBy } from '../linkage/corner-source.js';
import { type Part, withParts } from '../linkage/parts/part.js';

/**
 * Camber and toe over travel of a corner with parts on it. What its hard points are not known to shows in the curves through the parts,
 * so their sources have the same ids as those of the bare corner: compared with `shares`, what both have in common cancels. Of parts as
 * data, with a ± of their own, `PartsSource` makes the curves.
 *
 * @param corner checked hard points, mm and degrees
 * @param parts put on one after another; none: the corner as it is
 * @throws InputError where the links do not close with the parts on
 */
export function partCurves(corner: Corner, ...parts: Part[]): { camber: CurveData; toe: CurveData } {
  const linkage = withParts(buildLinkage(corner), ...parts);
  const sources = cornerSources(corner);
  const moved = (by: CornerMoves, times: number) =>
    withParts(buildLinkage(movedBy(corner, by, times), { isOpen: true }), ...parts);
  const { camber, toe } = solveLinks(
    { corner, sources },
    { linkage, moved, doubt: (_, travel) => partsDoubt(corner, moved, linkage, travel, sources) },
  );
  return { camber, toe: toe! };
}

/** The camber curve alone. @throws InputError as `partCurves` */
export const partCurve = (corner: Corner, ...parts: Part[]): CurveData => partCurves(corner, ...parts).camber;
