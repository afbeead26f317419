import type { CarDocument, Prediction } from './car-schema.js';
import { MOST_PREDICTIONS } from './predicted-words.js';
import type { Setup } from './setup.js';

export type { Prediction };

const sameParts = (one: Pick<Setup, 'parts' | 'alignment'>, other: Pick<Setup, 'parts' | 'alignment'>): boolean =>
  JSON.stringify([one.parts, one.alignment ?? 'toe']) === JSON.stringify([other.parts, other.alignment ?? 'toe']);

/** The newest prediction of the parts of a set, of one angle. */
export const predictionFor = (
  { predictions = [] }: CarDocument,
  setup: Setup,
  quantity: Prediction['quantity'],
): Prediction | undefined => predictions.findLast((one) => one.quantity === quantity && sameParts(one, setup));

/** Keeps a prediction; of the oldest more than `MOST_PREDICTIONS` are let go. */
export const withPrediction = (car: CarDocument, prediction: Prediction): CarDocument => ({
  ...car,
  predictions: [...(car.predictions ?? []), prediction].slice(-MOST_PREDICTIONS),
});

export function withoutPrediction(car: CarDocument, prediction: Prediction): CarDocument {
  const { predictions = [], ...bare } = car;
  const left = predictions.filter((one) => one !== prediction);
  return left.length > 0 ? { ...bare, predictions: left } : bare;
}
