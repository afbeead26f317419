import { escaped } from '../partial.js';
import { declared } from './declared.js';
import { references } from './list.js';
import { code } from './says.js';

/** Where a page wants a row for each element, with its question and the way to its reference. */
const PLACE = '%REFERENCES%';

/** What an element is about: the first line of what its class says. */
export const questionOf = (tag: string): string => declared(tag).description!.split(/\n\n/)[0]!.replaceAll('\n', ' ');

/** @param root of the site, from the page */
export function withReferences(article: string, root: string): string {
  if (!article.includes(PLACE)) return article;
  const rows = references.map(
    ({ tag, path }) =>
      `<tr><th scope="row"><a href="${root}${path}">${code(tag)}</a></th><td>${escaped(questionOf(tag))}</td></tr>`,
  );
  return article.replace(PLACE, () => rows.join('\n'));
}
