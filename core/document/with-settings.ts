import type { CarDocument } from './car-schema.js';

/** What a record of settings is of. */
type Question = 'toe' | 'turn' | 'camberAdded' | 'alignment' | 'leastCost' | 'predict';

/** A car with some of the settings of one question changed. What is undefined is taken back; of nothing left there is no record. */
export function withSettings(car: CarDocument, question: Question, settings: object): CarDocument {
  const { [question]: before, ...bare } = car;
  const merged = Object.entries({ ...before, ...settings }).filter(([, value]) => value !== undefined);
  return merged.length > 0 ? { ...bare, [question]: Object.fromEntries(merged) } : bare;
}
