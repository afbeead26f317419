import { solveCorner } from '../../curve-sources/solve-corner.js';
import { checkCorner } from '../../document/check-corner.js';

/** Hard points that are handed over: the schema that checks them. */
export const solvers = { corner: ({ corner }: { corner: unknown }) => solveCorner(checkCorner(corner)) };
