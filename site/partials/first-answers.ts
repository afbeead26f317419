import { clearanceSaid } from './clearance-said.js';
import { compareSaid } from './compare-said.js';
import { corneringSaid } from './cornering-said.js';
import { geometrySaid } from './geometry-said.js';
import { loweringSaid } from './lowering-said.js';
import { attribute, type Element, findAll, parsed } from './markup.js';
import { predictSaid } from './predict-said.js';
import { readingsSaid } from './readings-said.js';
import type { Said } from './said.js';
import { staticCamberSaid } from './static-camber-said.js';
import { toeSaid } from './toe-said.js';

/*
 * What an element will say first of its page's own data stands in its place from the first paint on, and for who has no scripts: an
 * empty `<p class="answer">` inside it is filled when the page is put together, by the core and the words that the element has itself.
 * A page that names the figures, `data-figures="change=tape-change-30 …"`, gets each as `<data data-name value>`.
 */

/** By element: what it says of what is inside it. */
const SAYS: Record<string, (element: Element) => Said> = {
  'bumpline-lowering': loweringSaid,
  'bumpline-readings': readingsSaid,
  'bumpline-compare': compareSaid,
  'bumpline-clearance': clearanceSaid,
  'bumpline-cornering': corneringSaid,
  'bumpline-geometry': geometrySaid,
  'bumpline-predict': predictSaid,
  'bumpline-static-camber': staticCamberSaid,
  'bumpline-toe': toeSaid,
};

const escaped = (text: string): string => text.replace(/[&<>]/g, (found) => `&#${found.charCodeAt(0)};`);

/** The markup of a sentence. @param names of the page, by those of the element */
function markupOf({ stretches, figures }: Said, names: ReadonlyMap<string, string>): string {
  let left = [...figures];
  const marked = (text: string): string => {
    for (const figure of left) {
      const at = text.indexOf(figure.shown);
      // Part of another figure it is not.
      if (at < 0 || /\d/.test(text[at - 1] ?? '') || /[\d.]/.test(text[at + figure.shown.length] ?? '')) continue;
      left = left.filter((one) => one !== figure);
      const name = names.get(figure.key);
      const shown = escaped(figure.shown);
      const data = name ? `<data data-name="${name}" value="${figure.value}">${shown}</data>` : shown;
      return `${escaped(text.slice(0, at))}${data}${marked(text.slice(at + figure.shown.length))}`;
    }
    return escaped(text);
  };
  return stretches
    .map(({ text, role }) => (role === undefined || role === 'doubt' ? marked(text) : `<b>${marked(text)}</b>`))
    .join('')
    .replace(/\s+$/, '');
}

/**
 * A page with the sentence of each element that has an empty place for it.
 *
 * @throws {Error} where an element has no answer about what stands in it, or the page names a figure that it does not have
 */
export function withFirstAnswers(article: string): string {
  const edits = findAll(parsed(article), ({ tagName }) => tagName in SAYS).flatMap((element) => {
    const places = findAll(element, (one) => one.tagName === 'p' && attribute(one, 'class') === 'answer');
    return places.flatMap((place) => {
      if (place.childNodes.length > 0) return [];
      const said = SAYS[element.tagName]!(element);
      const names = new Map(
        (attribute(place, 'data-figures') ?? '')
          .split(/\s+/)
          .filter(Boolean)
          .map((pair) => pair.split('=') as [string, string]),
      );
      const unknown = [...names.keys()].filter((key) => said.figures.every((figure) => figure.key !== key));
      if (unknown.length > 0)
        throw new Error(
          `<${element.tagName}> says no figure ${unknown.join(', ')}: name ${said.figures.map(({ key }) => key).join(', ')} in data-figures.`,
        );
      const { startOffset, endOffset } = place.sourceCodeLocation!;
      return { startOffset, endOffset, html: `<p class="answer">${markupOf(said, names)}</p>` };
    });
  });
  return edits.reduceRight(
    (html, edit) => html.slice(0, edit.startOffset) + edit.html + html.slice(edit.endOffset),
    article,
  );
}
