import type { CarDocument } from './car-schema.js';
import { withSettings } from './with-settings.js';

export type ToeSettings = NonNullable<CarDocument['toe']>;

/** Changes what is asked about toe. What is undefined is taken back. */
export const withToe = (
  car: CarDocument,
  settings: { [K in keyof ToeSettings]?: ToeSettings[K] | undefined },
): CarDocument => withSettings(car, 'toe', settings);
