import { type Display, show } from './sentence.js';

/** "30 mm": always a positive amount, the words after it have the sign. */
export const dropText = (drop: number, display: Display): string => show(Math.abs(drop), 'drop', display);

/** The same of a wheel travel. */
export const lengthText = (mm: number, display: Display): string => show(Math.abs(mm), 'travel', display);

/** Which of the words stands after it. */
export const wayOf = (drop: number, words: Readonly<Record<'stock' | 'lower' | 'higher', string>>): string =>
  drop === 0 ? words.stock : drop < 0 ? words.higher : words.lower;
