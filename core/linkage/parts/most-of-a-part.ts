import { QUANTITIES } from '../../quantity/quantities.js';

/** More than any part does. */
export const MOST_OF_A_PART = { mm: QUANTITIES.partLength.max, degrees: QUANTITIES.partAngle.max } as const;
