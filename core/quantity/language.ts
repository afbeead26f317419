/** The language of our own words. Numbers that are shown follow it: they stand between those words. */
export const WORDS_LANGUAGE = 'en';

const LANGUAGE = /^([a-z]{2,3})(?=$|-)/i;

/**
 * The language that somebody named, as a BCP 47 tag that every `Intl` takes: `de_DE`, `de_DE.UTF-8` and `de, en` are German. What no
 * engine takes whole is cut down to its language alone; what names none (nothing, `C`, `english`) is English. Never throws.
 */
export function languageTag(said: string | null | undefined): string {
  const [first = ''] = String(said ?? '')
    .trim()
    .split(/[\s,;.@]/);
  const tag = first.replaceAll('_', '-');
  const language = LANGUAGE.exec(tag)?.[1]?.toLowerCase();
  if (language === undefined) return WORDS_LANGUAGE;
  if (tag.toLowerCase() === language) return language;
  for (const one of [tag, language]) {
    try {
      return new Intl.Locale(one).toString();
    } catch {
      // No tag by its grammar.
    }
  }
  return WORDS_LANGUAGE;
}
