import { type Display, type Stretch, show } from '../../components/element/sentence.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { METRIC } from '../../core/quantity/units.js';
import type { Element } from './markup.js';

/** A figure of a sentence: its name among those of its element, the text that shows it, and it itself. */
export interface Figure {
  key: string;
  shown: string;
  /** In mm or degrees, to as many places as it is shown. */
  value: string;
}

/** A sentence and the figures in it, in their order. */
export interface Said {
  stretches: readonly Stretch<'change'>[];
  figures: readonly Figure[];
}

/** As an element shows numbers that is told nothing else. */
export const DISPLAY: Display = { units: METRIC, language: 'en' };

/** A value, and its ± where one is stated, as `amount` shows them, and to as many places. */
export function figures(key: string, size: number, plusMinus: number | undefined, quantity: Quantity): Figure[] {
  const [main, doubt] = show(Math.abs(size), quantity, DISPLAY, plusMinus).split('\u202f±\u202f');
  const figure = (name: string, shown: string, value: number): Figure => ({
    key: name,
    shown,
    value: value.toFixed(/\.(\d+)/.exec(shown)?.[1]?.length ?? 0),
  });
  return [
    figure(key, main!, size),
    ...(doubt === undefined || plusMinus === undefined ? [] : [figure(`${key}-plus-minus`, doubt, plusMinus)]),
  ];
}

/** @throws {Error} with what is wrong with a page's data */
export function checkNone(element: Element, problems: readonly Problem[]): void {
  if (problems.length > 0)
    throw new Error(`<${element.tagName}> cannot read its page’s data: ${JSON.stringify(problems)}`);
}
