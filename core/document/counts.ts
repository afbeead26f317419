export const CORNER_NAMES = ['Front left', 'Front right', 'Rear left', 'Rear right'] as const;
export type CornerName = (typeof CORNER_NAMES)[number];

/** Sets of parts that one car can have, and characters in the name of one or of a pass. */
export const MOST_SETUPS = 30;
export const LONGEST_NAME = 60;
/** Parts that one set can have. */
export const MOST_PARTS = 12;
/** Heights that one comparison can have. */
export const MOST_HEIGHTS = 8;
/** Places that one car can have, and points of a stop’s force over its compression. */
export const MOST_PLACES = 24;
export const MOST_STOP_POINTS = 12;
