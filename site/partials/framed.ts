import { readFileSync } from 'node:fs';
import { attribute, findAll, parsed } from './markup.js';
import { escaped } from './partial.js';

/** An element that a frame can hold. */
export interface Framed {
  tag: string;
  /** Of the page that holds it, below the site's address. */
  path: string;
  /** Of the article that it is about. */
  article: string;
}

/** All that answer anything. */
export const framed = (): Framed[] =>
  (
    JSON.parse(readFileSync(new URL('../../components/elements.json', import.meta.url), 'utf8')) as {
      tag: string;
      article?: string;
    }[]
  ).flatMap(({ tag, article }) =>
    article === undefined ? [] : [{ tag, path: `embed/${tag.replace('bumpline-', '')}/`, article: `${article}/` }],
  );

/** What an author gives an element for its own page alone: a frame has another address, and one element. */
const FOR_THE_PAGE = /^(?:id|class|style|keep-in-address|car-id|toe-page|data-.*)$/;

/** An article's first element as a frame holds it: its page, with the element's attributes as options. Undefined where there is none. */
export function framedIn(article: string): { tag: string; path: string } | undefined {
  const all = new Map(framed().map((one) => [one.tag, one]));
  const [element] = findAll(parsed(article), ({ tagName }) => all.has(tagName));
  if (!element) return undefined;
  const given = element.attrs.filter(({ name }) => !FOR_THE_PAGE.test(name)).map(({ name }) => name);
  const options = new URLSearchParams(given.map((name) => [name, attribute(element, name)!]));
  const { tag, path } = all.get(element.tagName)!;
  return { tag, path: options.size > 0 ? `${path}?${options}` : path };
}

/**
 * The frame, as an author pastes it.
 *
 * @param address of the frame's page, options and all
 * @param size px; the height is what stays where no script sets another
 */
export const frameSnippet = (
  title: string,
  address: string,
  { width, height }: { width: number; height: number },
): string =>
  `<iframe src="${escaped(address)}" title="${escaped(title)}" width="${width}" height="${height}" style="display: block; border: 0; max-width: 100%" loading="lazy" allow="clipboard-write"></iframe>`;
