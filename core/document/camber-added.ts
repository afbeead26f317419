import type { CarDocument } from './car-schema.js';
import { withSettings } from './with-settings.js';

export type CamberAdded = NonNullable<CarDocument['camberAdded']>;

/** Changes what is asked about adding static camber. What is undefined is taken back. */
export const withCamberAdded = (
  car: CarDocument,
  settings: { [K in keyof CamberAdded]?: CamberAdded[K] | undefined },
): CarDocument => withSettings(car, 'camberAdded', settings);
