import type { CarDocument } from './car-schema.js';

/** A car with some of the settings of one question changed. What is undefined is taken back; of nothing left there is no record. */
export function withSettings(
  car: CarDocument,
  question: 'toe' | 'turn' | 'camberAdded',
  settings: object,
): CarDocument {
  const { [question]: before, ...bare } = car;
  const merged = Object.entries({ ...before, ...settings }).filter(([, value]) => value !== undefined);
  return merged.length > 0 ? { ...bare, [question]: Object.fromEntries(merged) } : bare;
}
