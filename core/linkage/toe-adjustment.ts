/** What is moved up or down to change how a wheel steers itself: the tie rod's outer end in the knuckle, the rack, or the rod's inner end alone. */
export const TOE_ADJUSTMENTS = ['outerEnd', 'rack', 'innerEnd'] as const;
export type ToeAdjustment = (typeof TOE_ADJUSTMENTS)[number];

/** Where the steering rack and its rods lie, seen from the axle. */
export const RACK_SIDES = ['behind', 'ahead'] as const;
export type RackSide = (typeof RACK_SIDES)[number];
