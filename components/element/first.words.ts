import { words } from '../../core/quantity/words.js';

/** English words that first answers share. */
export const SHARED = words('element/first', {
  /** A name as it stands inside a sentence: small, if it is no abbreviation. */
  inside: (name: string): string => (/^[A-Z][a-z]/.test(name) ? name.slice(0, 1).toLowerCase() + name.slice(1) : name),
  thePages: 'the page’s',
  theExamples: 'the example’s',
  withParts: 'With {name} on: ',
  example: 'Example',
  exampleNot: 'Example, not {car}',
  yourCar: 'your car',
  pagesCar: 'the car of this page',
  cautions: 'Cautions',
  beforeWork: 'Before you work on the car',
  unread: 'this page’s data cannot be read',
  slow: 'The drawing, chart and fields are still loading …',
  lost: 'The drawing, chart and fields could not be fetched. We try again once you are back online; if that does not help, reload the page.',
  undrawn: 'A part of this could not be drawn. That is our fault; your numbers are kept.',
});
