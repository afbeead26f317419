import { type CarDocument, cornerGivenBy } from '../../core/document/car.js';
import { SHARED } from '../element/first.words.js';
import { say } from '../element/sentence.js';

/** Whose the values are that stand in for what a user did not give. */
export const standInName = (car: CarDocument): string =>
  car.provenance.corner?.standIn ? SHARED.thePages : SHARED.theExamples;

/** What stands over an example's answer: where something of the car was given, that this is another one. */
export function exampleText(car: CarDocument): string {
  const by = cornerGivenBy(car);
  return by ? say(SHARED.exampleNot, { car: by === 'user' ? SHARED.yourCar : SHARED.pagesCar }) : SHARED.example;
}
