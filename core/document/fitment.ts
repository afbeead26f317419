export type { Fitment, GivenWheel } from './car-schema.js';
export { MOST_PLACES, MOST_STOP_POINTS } from './counts.js';
