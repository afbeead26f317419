import type { CarDocument } from './car-schema.js';
import { type Asked, isFilled, isPagesAsked, PART_FIELDS } from './provenance.js';

/** What a car always has, what says who gave it, and the curve, which is always a page's. */
const ALWAYS = ['version', 'provenance', 'cornerName', 'by', 'drop', 'dropPlusMinus', 'curve'];
/** All that one person gives part by part. */
export const IN_PARTS: readonly string[] = Object.values(PART_FIELDS).flat();

/** By what is left over, so that no new field can be forgotten. */
export const askedOf = (car: Partial<CarDocument>): Asked =>
  Object.fromEntries(Object.entries(car).filter(([field]) => !ALWAYS.includes(field) && !IN_PARTS.includes(field)));

/** What a user gave of it. */
export const usersAsked = (car: CarDocument): Asked =>
  Object.fromEntries(Object.entries(askedOf(car)).filter(([field]) => !isPagesAsked(car, field)));

/** A car with what a page says of it; what a user gave stays. */
export function withPagesAsked(car: CarDocument, asked: Asked): CarDocument {
  const { asked: was, ...others } = car.provenance;
  if (!was && !isFilled(asked)) return car;
  const bare = Object.fromEntries(Object.entries(car).filter(([field]) => !isPagesAsked(car, field))) as CarDocument;
  return {
    ...bare,
    ...asked,
    ...usersAsked(car),
    provenance: { ...others, ...(isFilled(asked) && { asked: { by: 'page', standIn: asked } }) },
  };
}
