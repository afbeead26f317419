import type { CarDocument } from './car-schema.js';
import { withSettings } from './with-settings.js';

export type AlignmentSettings = NonNullable<CarDocument['alignment']>;

/** Changes what stands on the alignment sheet. What is undefined is taken back. */
export const withAlignment = (
  car: CarDocument,
  settings: { [K in keyof AlignmentSettings]?: AlignmentSettings[K] | undefined },
): CarDocument => withSettings(car, 'alignment', settings);
