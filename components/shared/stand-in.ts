import { type CarDocument, cornerGivenBy } from '../../core/document/car.js';

/** Whose the values are that stand in for what a user did not give. */
export const standInName = (car: CarDocument): string =>
  car.provenance.corner?.standIn ? 'the page’s' : 'the example’s';

/** What stands over an example's answer: where something of the car was given, that this is another one. */
export function exampleText(car: CarDocument): string {
  const by = cornerGivenBy(car);
  return by ? `Example, not ${by === 'user' ? 'your car' : 'the car of this page'}` : 'Example';
}
