import type { CarDocument } from './car-schema.js';
import { type CarPart, givenBy, isBare, isFilled, isUsers, PART_FIELDS, valuesOf, without } from './provenance.js';

const PARTS = Object.keys(PART_FIELDS) as CarPart[];

/** The car without what a page gave of it. */
export const usersOnly = (car: CarDocument): CarDocument =>
  PARTS.reduce((own, part) => (isUsers(car, part) ? own : without(own, part)), car);

/** A car of which a user gave all that is there. */
export const byUser = (car: CarDocument): CarDocument => ({
  ...car,
  provenance: Object.fromEntries(PARTS.filter((part) => holds(car, part)).map((part) => [part, { by: 'user' }])),
});

/** Parts that hold something which nobody is said to have given. */
export const nobodys = (car: CarDocument): CarPart[] =>
  PARTS.filter((part) => givenBy(car, part) === 'example' && holds(car, part));

/** Of the corner there is always a record. */
const holds = (car: CarDocument, part: CarPart): boolean =>
  part === 'corner' ? car.whole !== undefined || !isBare(car.given) : isFilled(valuesOf(car, part));
