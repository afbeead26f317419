import { choiceText } from '../../core/quantity/explain.js';
import type { Problem } from '../../core/quantity/problem.js';
import { QUANTITIES, type Quantity } from '../../core/quantity/quantities.js';
import type { Display } from '../element/sentence.js';

/** The readings of an ambiguous text that are possible, as their buttons say them. */
export function choicesOf(
  { choices = [] }: Problem,
  quantity: Quantity,
  { units, language }: Display,
): { value: number; text: string }[] {
  const { min, max } = QUANTITIES[quantity];
  return choices
    .map((value, index) => ({ value, text: choiceText(value, index, { quantity, unitSystem: units, language }) }))
    .filter(({ value }) => value >= min && value <= max);
}
