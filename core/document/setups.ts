import { EXAMPLE_READINGS } from '../readings/example-readings.js';
import { type CarDocument, hasMeasured } from './car.js';
import { give, isUsers } from './provenance.js';
import type { Setup } from './setup.js';
import { givenSetup, isPartsOnly, ownerOf, setupsBy } from './setup-in-use.js';

/** What is shown while nobody gave readings. */
export const EXAMPLE_SETUP: Setup = {
  name: 'Example, invented',
  cornerName: 'Front left',
  quantity: 'camber',
  readings: EXAMPLE_READINGS,
};

export interface SetupInUse {
  setup: Setup;
  by: 'user' | 'page' | 'example';
  /** Whether it is the user's own; else the first own reading begins an empty one. */
  isOwn: boolean;
}

/** The set of parts in use: the user's, else the page's, else the example. */
export function setupOf(car: CarDocument): SetupInUse {
  const setup = givenSetup(car) ?? EXAMPLE_SETUP;
  const by = ownerOf(car, setup);
  return { setup, by, isOwn: by === 'user' };
}

/**
 * What a page says of readings; undefined takes it back. The user's own stay. Readings are what the answer is made from where
 * nobody gave anything else.
 */
export function withPageSetups(car: CarDocument, setups: readonly Setup[] | undefined): CarDocument {
  if (setupsBy(car) === 'user') return car;
  const given = give(car, 'setups', 'page', () => (setups && setups.length > 0 ? { setups } : {}));
  if (given.setups) return byReadings(given);
  return given.by === 'readings' ? { ...given, by: 'driveway' } : given;
}

/** The first readings are meant to be used; who has measured otherwise is not overruled. */
export function byReadings(car: CarDocument): CarDocument {
  const { given, curve, whole } = car;
  const isFree = whole === undefined && !hasMeasured(given) && Object.keys(given.points).length === 0;
  const isRead = !car.setups?.every(isPartsOnly);
  return isFree && isRead && (isUsers(car, 'corner') || !curve) ? { ...car, by: 'readings' } : car;
}
