/** What an author may ask an element to show. The sentence, with its caution, always stands. */
export const SHOWN = ['sentence', 'drawing', 'chart', 'table'] as const;

export type Shown = (typeof SHOWN)[number];

/** An element's class says which of these it has. */
export interface HasShown {
  readonly shows: readonly Shown[];
}

/** @returns the words of a `show` attribute, in any order and case, each once */
export const shownWords = (show: string | null | undefined): string[] => [
  ...new Set(
    (show ?? '')
      .toLowerCase()
      .split(/[\s,]+/)
      .filter(Boolean),
  ),
];

/**
 * What of an element is shown; undefined for the whole of it, which is also what stands where no word is understood: a reader gets
 * rather more than nothing.
 */
export function shownOf(show: string | null | undefined): ReadonlySet<Shown> | undefined {
  const words = shownWords(show).filter((word): word is Shown => (SHOWN as readonly string[]).includes(word));
  return words.length > 0 ? new Set(words) : undefined;
}
