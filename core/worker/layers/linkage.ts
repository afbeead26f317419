import { solveDriveway } from '../../curve-sources/solve-corner.js';

/** Links solved, from what was measured in a driveway. */
export const solvers = { driveway: ({ driveway }: { driveway: unknown }) => solveDriveway(driveway) };
