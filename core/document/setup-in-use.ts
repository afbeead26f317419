import type { Reading, ReadingQuantity } from '../readings/reading.js';
import { asLinks } from './as-links.js';
import { type CarDocument, type CornerName, givenPointCount } from './car.js';
import type { Setup } from './setup.js';

export { LONGEST_NAME, MOST_SETUPS } from './counts.js';

/** Whose readings a car's sets of parts hold; undefined where it has none. */
export const setupsBy = ({ setups = [], provenance }: CarDocument): 'user' | 'page' | undefined =>
  setups.length > 0 ? provenance.setups?.by : undefined;

/** The set of parts in use, of those that somebody gave. */
export const givenSetup = ({ setups = [], setup = 0 }: CarDocument): Setup | undefined => setups[setup] ?? setups[0];

/** Its index. */
export const indexInUse = ({ setups = [], setup = 0 }: CarDocument): number => (setups[setup] ? setup : 0);

/** Uses another of the sets that are there. */
export const useSetup = (car: CarDocument, index: number): CarDocument =>
  car.setups?.[index] && index !== indexInUse(car) ? { ...car, setup: index } : car;

/** The user's own sets; none while a page's or the example is shown. */
export const ownSetups = (car: CarDocument): readonly Setup[] => (setupsBy(car) === 'user' ? car.setups! : []);

/** Whose a set of the car's is. */
export const ownerOf = (car: CarDocument, { givenBy }: Setup): 'user' | 'page' | 'example' =>
  givenBy ?? setupsBy(car) ?? 'example';

/** Whether a set is nothing but parts: readings with them on were not taken. */
export const isPartsOnly = ({ parts, readings }: Setup): boolean => parts !== undefined && readings.length === 0;

/** The set that an answer about camber is made from: the one in use, or where that holds toe or parts alone the first of camber. */
export const camberSetupOf = (car: CarDocument): Setup | undefined => inUseOf(car, 'camber') ?? firstOf(car, 'camber');

/** The same about toe; hard points tell it as well, so that where there are any only the set in use is heard, and none where somebody asked for the links. */
export const toeSetupOf = (car: CarDocument): Setup | undefined =>
  car.toe?.from ? undefined : (inUseOf(car, 'toe') ?? (isByPoints(car) ? undefined : firstOf(car, 'toe')));

const isByPoints = (car: CarDocument): boolean =>
  car.whole !== undefined || (givenPointCount(car) > 0 && asLinks(car).by === 'points');

const isReadOf = (setup: Setup | undefined, quantity: ReadingQuantity): boolean =>
  setup !== undefined && setup.quantity === quantity && !isPartsOnly(setup);

function inUseOf(car: CarDocument, quantity: ReadingQuantity): Setup | undefined {
  const setup = givenSetup(car);
  return isReadOf(setup, quantity) ? setup : undefined;
}

const firstOf = ({ setups }: CarDocument, quantity: ReadingQuantity): Setup | undefined =>
  setups?.find((setup) => isReadOf(setup, quantity));

/** The set whose parts are on the links that are asked. */
export const fittedSetup = ({ setups = [], fitted }: CarDocument): Setup | undefined =>
  fitted === undefined || !setups[fitted]?.parts ? undefined : setups[fitted];

/** The set whose parts the answer has on: of readings, or of a curve alone, none. */
export const setupOn = (car: CarDocument): Setup | undefined =>
  sourceKindOf(car) === 'readings' || car.curve ? undefined : fittedSetup(car);

/** Asks with the parts of a set on; undefined: with none. */
export function fitSetup(car: CarDocument, index: number | undefined): CarDocument {
  const { fitted, ...bare } = car;
  if (index === fitted || (index !== undefined && !car.setups?.[index]?.parts)) return car;
  return index === undefined ? bare : { ...bare, fitted: index };
}

/** What the answer about camber is made from: readings only where there are any of camber. */
export function sourceKindOf(car: CarDocument): CarDocument['by'] {
  if (car.by !== 'readings' || camberSetupOf(car)) return car.by;
  return givenPointCount(car) > 0 ? 'points' : 'driveway';
}

/** The corner that an answer about camber is of: readings name their own. */
export const answeredCorner = (car: CarDocument): CornerName =>
  (sourceKindOf(car) === 'readings' ? camberSetupOf(car)! : car).cornerName;

/** The readings of a set that count: those that nobody set aside, in their order. */
export function readingsInUse({ readings, setAside = [] }: Setup): readonly Reading[] {
  if (setAside.length === 0) return readings;
  const aside = new Set(setAside);
  return readings.filter((_, index) => !aside.has(index));
}
