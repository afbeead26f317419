/** Samples that the curve of one prediction is kept as, and predictions that one car can have. */
export const MOST_SAMPLES = 41;
export const MOST_PREDICTIONS = 6;
/** What the links were from. */
export const PREDICTED_FROM = ['points', 'driveway'] as const;
export const PREDICTED_OF = ['camber', 'toe'] as const;
