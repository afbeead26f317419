import { WORDS_LANGUAGE } from '../../core/quantity/language.js';
import { teach } from '../../core/quantity/words.js';
import { inTime } from '../delivery/in-time.js';
import { LANGUAGES } from './languages.js';

/** What is on its way or here, by language and part. */
const coming = new Map<string, Promise<void>>();
/** Languages that elements of this page speak, besides English. */
const inUse = new Set<string>();

/** @param tag BCP 47 */
export const primaryOf = (tag: string): string => tag.split('-', 1)[0]!;

/** The language that an element speaks where this is asked for: itself, or English where we have no words of it. */
export const spokenFor = (tag: string): string => (Object.hasOwn(LANGUAGES, primaryOf(tag)) ? tag : WORDS_LANGUAGE);

async function fetchPart(language: string, part: string): Promise<void> {
  try {
    const { LANGUAGE } = await LANGUAGES[language]!();
    const file = (LANGUAGE as Readonly<Record<string, () => Promise<{ default: object }>>>)[part];
    if (file) teach(language, (await file()).default as Record<string, object>);
  } catch (error) {
    coming.delete(`${language} ${part}`);
    console.warn('Bumpline: words could not be fetched; English stands in their place.', error);
  }
}

function wordsOf(language: string, parts: readonly string[]): Promise<unknown> {
  const all = parts.map((part) => {
    const key = `${language} ${part}`;
    const one = coming.get(key) ?? fetchPart(language, part);
    coming.set(key, one);
    return one;
  });
  // What hangs is not waited for.
  return inTime(Promise.all(all)).catch(() => {});
}

/** Fetches words of one language; those come that it has. Resolves when they are here, or English stands. Never rejects. */
export function fetchWordsOf(tag: string, ...parts: string[]): Promise<unknown> {
  const language = primaryOf(tag);
  if (language === WORDS_LANGUAGE) return Promise.resolve();
  inUse.add(language);
  return wordsOf(language, parts);
}

/** Fetches words of all languages that elements of this page speak, as they come with a file: an array of it and them. */
export const withWords = async <File>(file: Promise<File>, ...parts: string[]): Promise<File> =>
  (await Promise.all([file, ...[...inUse].map((language) => wordsOf(language, parts))]))[0];
