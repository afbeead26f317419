import { languageTag, WORDS_LANGUAGE } from '../../core/quantity/language.js';
import type { Problem } from '../../core/quantity/problem.js';
import { primaryOf } from '../words/fetch-words.js';
import { LANGUAGES } from '../words/languages.js';
import { type HasShown, shownWords } from './shown.js';

/** What an attribute takes, by its name. */
export type Enumerated = Readonly<Record<string, readonly string[]>>;

/** Of every element with a sheet. */
const SHEET: Enumerated = { units: ['mm', 'in'], angles: ['degrees', 'arcminutes'], theme: ['light', 'dark'] };

const LANGUAGE_NAMES: readonly string[] = [WORDS_LANGUAGE, ...Object.keys(LANGUAGES)];

const FLAG = 'keep-in-address';

const told = new WeakMap<Element, Set<string>>();

/** Once an element and a value: for the author, in the console. */
function warn(element: Element, path: string, value: string, remedy: string): void {
  const own = told.get(element) ?? new Set();
  told.set(element, own);
  const key = `${path}=${value}`;
  if (own.has(key)) return;
  own.add(key);
  console.warn(`Bumpline: <${element.localName} ${path}="${value}"> is not understood. ${remedy}`, element);
}

/**
 * Attributes and properties of an element with a value that is none of those that are understood. Each is told in the console too,
 * once. Left out or empty is no mistake.
 *
 * @param more what this element takes besides
 */
export function enumeratedProblems(element: Element, more: Enumerated = {}): Problem[] {
  const problems: Problem[] = [];
  for (const [path, names] of Object.entries({ ...SHEET, ...more })) {
    const value = (element as unknown as Record<string, unknown>)[path];
    if (value === undefined || value === null || value === '' || names.includes(value as string)) continue;
    problems.push({ code: 'unknown-name', path, value: String(value), names });
    warn(element, path, String(value), `It takes ${names.join(' or ')}.`);
  }
  const { language } = element as Partial<Record<'language', string>>;
  // What names no language at all is English as a tag.
  const isTag = /^[a-z]{2,3}(?![a-z])/i.test(String(language));
  if (language && !(isTag && LANGUAGE_NAMES.includes(primaryOf(languageTag(language))))) {
    problems.push({ code: 'unknown-name', path: 'language', value: String(language), names: LANGUAGE_NAMES });
    warn(element, 'language', String(language), `It takes ${LANGUAGE_NAMES.join(' or ')}.`);
  }
  const { shows } = element.constructor as unknown as Partial<HasShown>;
  const { show } = element as Partial<Record<'show', string>>;
  for (const value of shows ? shownWords(show) : []) {
    if ((shows as readonly string[]).includes(value)) continue;
    problems.push({ code: 'unknown-name', path: 'show', value, names: shows! });
    warn(element, 'show', value, `It takes ${shows!.join(', ')}, with spaces between them.`);
  }
  for (const one of [element, element.closest('bumpline-car')]) {
    const flag = one?.getAttribute(FLAG);
    // On whatever its value is: who wrote "false" meant otherwise.
    if (!one || !flag || [FLAG, 'true'].includes(flag.toLowerCase())) continue;
    problems.push({ code: 'unknown-name', path: FLAG, value: flag, names: [] });
    warn(one, FLAG, flag, 'It takes no value: leave it out to turn it off.');
  }
  return problems;
}
