import { readFileSync } from 'node:fs';

/** A page about one element. */
export interface Reference {
  tag: string;
  /** Below the site's address. */
  path: string;
  /** Of the article that it answers in; the shared car has none. */
  article?: string;
}

const listed: { tag: string; article?: string }[] = JSON.parse(
  readFileSync(new URL('../../../components/elements.json', import.meta.url), 'utf8'),
);

/** Below the site's address, of an element's tag. */
export const referencePath = (tag: string): string => `reference/${tag.replace('bumpline-', '')}/`;

export const references: readonly Reference[] = listed.map(({ tag, article }) => ({
  tag,
  path: referencePath(tag),
  ...(article !== undefined && { article: `${article}/` }),
}));
