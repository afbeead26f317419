import type { CarDocument } from './car-schema.js';
import { withSettings } from './with-settings.js';

export type TurnSettings = NonNullable<CarDocument['turn']>;

/** Changes what is asked about a turn. What is undefined is taken back. */
export const withTurn = (
  car: CarDocument,
  settings: { [K in keyof TurnSettings]?: TurnSettings[K] | undefined },
): CarDocument => withSettings(car, 'turn', settings);
