/** Besides a typed angle, where the roll of the body can come from. */
export const ROLL_WAYS = ['marks', 'photo', 'load'] as const;
export type RollWay = (typeof ROLL_WAYS)[number];

/** Spring rates that look like another unit’s, and are in N/mm all the same. */
export const RATES_ARE = ['asTyped'] as const;
