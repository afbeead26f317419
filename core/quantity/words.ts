/** The language that the program is written in, and the one of records that nobody has translated. */
const translated = new Map<string, Record<string, object>>();
let spoken: Record<string, object> | undefined;

/** A record of words in another language has the same keys, and functions that take the same. */
export type WordsOf<T> = T extends string
  ? string
  : T extends (...all: never[]) => unknown
    ? T
    : T extends object
      ? { readonly [K in keyof T]: WordsOf<T[K]> }
      : T;

/**
 * A record of English words that reads in the language that is spoken, as far as that has been learnt; each key is looked up when it is
 * read, so what it says is not to be kept from one rendering to the next.
 *
 * @param name its file below `components/` or `core/`, without what it ends in: `element/first`
 * @param english its words: texts, lists, and functions that make texts
 */
export const words = <const W extends object>(name: string, english: W): WordsOf<W> =>
  new Proxy(english, { get: (_, key) => Reflect.get(spoken?.[name] ?? english, key) }) as WordsOf<W>;

/**
 * From here on words are taken in this language, until somebody else's turn comes: an element says it before it renders, hears or
 * answers, so several languages can stand on one page.
 *
 * @param language its BCP 47 primary subtag: `de`; one that nobody has taught is English
 */
export function speak(language: string): void {
  spoken = translated.get(language);
}

/** Teaches a language some records, by their names. What is spoken already has them at once. */
export function teach(language: string, records: Readonly<Record<string, object>>): void {
  const known = translated.get(language);
  if (known) Object.assign(known, records);
  else translated.set(language, { ...records });
}
