/** What a setup may cost, each for itself: none is worked into a score. */
export const LEAST_COSTS = ['bumpTravel', 'bumpSteer', 'scrubChange', 'price'] as const;
export type LeastCost = (typeof LEAST_COSTS)[number];

/** How much a cost matters to who asks. It says in which order setups stand and which few are shown, never which ones are worth showing. */
export const COST_WEIGHTS = ['none', 'matters', 'most'] as const;
export type CostWeight = (typeof COST_WEIGHTS)[number];

/** The ways of setting static camber that somebody may have, or buy. */
export const SETTING_WAYS = ['topMount', 'knuckleBolts', 'knuckle', 'longerArm', 'ballJoint'] as const;

/** With a joint that is put on, the tie-rod end is lowered as well. */
export const JOINT_RODS = ['corrected'] as const;
