/** The language that the program is written in, and the one of records that nobody has translated. */
const translated = new Map<string, Record<string, object>>();
let spoken: Record<string, object> | undefined;
/** How often somebody has taught something. */
let lessons = 0;

/** A record of words in another language has the same keys, and functions that take the same. */
export type WordsOf<T> = T extends string
  ? string
  : T extends (...all: never[]) => unknown
    ? T
    : T extends object
      ? { readonly [K in keyof T]: WordsOf<T[K]> }
      : T;

/** An object or list of texts; no pattern that texts are looked at by. */
const isRecord = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && !(value instanceof RegExp);

/** Objects inside it are as live as it is itself. */
function live<W extends object>(said: () => object, english: W): W {
  const inner = new Map<PropertyKey, object>();
  return new Proxy(english, {
    get(_, key) {
      const value: unknown = Reflect.get(said(), key);
      if (!isRecord(value)) return value;
      const one = inner.get(key) ?? live(() => Reflect.get(said(), key) as object, value);
      inner.set(key, one);
      return one;
    },
  });
}

/**
 * A record of English words that reads in the language that is spoken, as far as that has been learnt. A text is looked up when it is
 * read, so none is to be kept from one rendering to the next; objects and lists of texts may be.
 *
 * @param name its file below `components/` or `core/`, without what it ends in: `element/first`
 * @param english its words: texts, lists, and functions that make texts
 */
export const words = <const W extends object>(name: string, english: W): WordsOf<W> =>
  live(() => spoken?.[name] ?? english, english) as WordsOf<W>;

/**
 * A table that holds texts of records: made anew for each language that is spoken, and as live as they are.
 *
 * @param make makes it of records; its shape is the same in each language
 */
export function worded<T extends object>(make: () => T): T {
  let made: { table: T; spoken: object | undefined; lessons: number } | undefined;
  const table = () => {
    if (!made || made.spoken !== spoken || made.lessons !== lessons) made = { table: make(), spoken, lessons };
    return made.table;
  };
  return live(table, table());
}

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
  lessons++;
}
