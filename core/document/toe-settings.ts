import type { CarDocument } from './car-schema.js';

export type ToeSettings = NonNullable<CarDocument['toe']>;

/** Changes what is asked about toe. What is undefined is taken back. */
export function withToe(
  car: CarDocument,
  settings: { [K in keyof ToeSettings]: ToeSettings[K] | undefined },
): CarDocument {
  const { toe, ...bare } = car;
  const merged = Object.fromEntries(Object.entries({ ...toe, ...settings }).filter(([, value]) => value !== undefined));
  return Object.keys(merged).length > 0 ? { ...bare, toe: merged } : bare;
}
