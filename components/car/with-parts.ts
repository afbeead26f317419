import type { CarDocument } from '../../core/document/car.js';
import { setupOn } from '../../core/document/setup-in-use.js';
import { SHARED } from '../element/first.words.js';
import { lower, say } from '../element/sentence.js';
import { shownName } from './shown-names.words.js';

/** "With lower joint on: ", where an answer has the parts of a set on the car's links; else empty. */
export function withPartsText(car: CarDocument, words: Pick<typeof SHARED, 'withParts'> = SHARED): string {
  const setup = setupOn(car);
  return setup ? say(words.withParts, { name: lower(shownName(setup.name)) }) : '';
}
