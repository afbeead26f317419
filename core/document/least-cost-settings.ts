import type { CarDocument } from './car-schema.js';
import { withSettings } from './with-settings.js';

export type LeastCostSettings = NonNullable<CarDocument['leastCost']>;

/** Changes what is asked about reaching an inclination at the least cost. What is undefined is taken back. */
export const withLeastCost = (
  car: CarDocument,
  settings: { [K in keyof LeastCostSettings]?: LeastCostSettings[K] | undefined },
): CarDocument => withSettings(car, 'leastCost', settings);
