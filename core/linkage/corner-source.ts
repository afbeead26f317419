import type { Source } from '../uncertainty/estimate.js';
import { type Corner, type HardPointKey, hardPoint, type Vector3, withHardPoint } from './corner.js';

/** What a cause of doubt does to a corner when it is one standard uncertainty off. */
export interface CornerMoves {
  /** How far it moves hard points, mm. */
  readonly moves: Partial<Record<HardPointKey, Vector3>>;
  /** What it does to static camber, degrees. */
  readonly camber?: number;
  /** It shows in what parts change, and in nothing of the bare corner. */
  readonly isOfPartsAlone?: true;
  /** Of what the parts change of an angle since travel 0, so much of it. */
  readonly shareOfParts?: number;
  /** What it does to the parts on the linkage instead: to the amount at `path` of the part at a place in their list, mm or degrees. */
  readonly part?: { readonly at: number; readonly path: string; readonly by: number };
}

/** One independent cause of doubt about a corner. */
export interface CornerSource extends Source, CornerMoves {}

/** The corner as it would be with a cause off by so many standard uncertainties. */
export function movedBy(corner: Corner, { moves, camber = 0 }: CornerMoves, times = 1): Corner {
  let moved: Corner = { ...corner, camber: corner.camber + times * camber };
  for (const [key, [x, y, z]] of Object.entries(moves) as [HardPointKey, Vector3][]) {
    const point = hardPoint(moved, key)!;
    moved = withHardPoint(moved, key, [point[0] + times * x, point[1] + times * y, point[2] + times * z]);
  }
  return moved;
}
