import { attribute, findAll, parsed } from './markup.js';

/** Where a page wants its list of contents. */
const PLACE = '<nav class="contents"></nav>';

/** A heading's name in the list, where that is shorter than the heading: an attribute of the page's source, gone from the page. */
const SHORT = / data-contents="([^"]*)"/;

/**
 * Puts the list of a page's sections where the page has an empty `<nav class="contents">`: one line that opens on a phone and stays in
 * view, beside the text on a desktop (site/site.css, site/contents-list.ts).
 * @throws {Error} where a heading of the second rank has no id to be led to
 */
export function withContents(article: string): string {
  const bare = article.replaceAll(new RegExp(SHORT, 'g'), '');
  if (!article.includes(PLACE)) return bare;
  const links = findAll(parsed(article), ({ tagName }) => tagName === 'h2').map((heading) => {
    const id = attribute(heading, 'id');
    const { startTag, endTag } = heading.sourceCodeLocation!;
    const text = article.slice(startTag!.endOffset, endTag!.startOffset);
    if (id === undefined) throw new Error(`The heading “${text}” has no id, and the list of contents needs one.`);
    return `<li><a href="#${id}">${attribute(heading, 'data-contents') ?? text}</a></li>`;
  });
  return bare.replace(
    PLACE,
    () =>
      `<nav class="contents" aria-label="On this page"><details><summary>On this page</summary><ul>\n${links.join('\n')}\n</ul></details></nav>`,
  );
}
