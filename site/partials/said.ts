import { type Display, show } from '../../components/element/sentence.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { METRIC } from '../../core/quantity/units.js';
import type { Figure } from './first-answers.js';
import type { Element } from './markup.js';

/** As an element shows numbers that is told nothing else. */
export const DISPLAY: Display = { units: METRIC, language: 'en' };

const PLACES: Partial<Record<Quantity, number>> = { camber: 4, camberChange: 4 };

/** A value, and its ± where one is stated, as `amount` shows them. */
export function figures(key: string, size: number, plusMinus: number | undefined, quantity: Quantity): Figure[] {
  const [main, doubt] = show(Math.abs(size), quantity, DISPLAY, plusMinus).split('\u202f±\u202f');
  const places = PLACES[quantity] ?? 2;
  return [
    { key, shown: main!, value: size.toFixed(places) },
    ...(doubt === undefined || plusMinus === undefined
      ? []
      : [{ key: `${key}-plus-minus`, shown: doubt, value: plusMinus.toFixed(places) }]),
  ];
}

/** @throws {Error} with what is wrong with a page's data */
export function checkNone(element: Element, problems: readonly Problem[]): void {
  if (problems.length > 0)
    throw new Error(`<${element.tagName}> cannot read its page’s data: ${JSON.stringify(problems)}`);
}
