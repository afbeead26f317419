import type { CarDocument } from './car.js';
import type { Setup } from './setup.js';

const isRead = ({ readings }: Setup): boolean => readings.length > 0;

/** Of a car, the sets that were read as it stands, and those that were read with other parts on. */
export const readSetsOf = ({ setups = [] }: CarDocument): { stock: Setup[]; fitted: Setup[] } => ({
  stock: setups.filter((setup) => isRead(setup) && !setup.parts),
  fitted: setups.filter((setup) => isRead(setup) && setup.parts !== undefined),
});
