import { languageTag } from '../../core/quantity/language.js';

const SAYS = String.raw`[*|lang], [xml\:lang]`;

/** In the language of XML where it is not said in that of HTML; an empty one is said too: the language is not known. */
const saidBy = (element: Element): string => element.getAttribute('lang') ?? element.getAttribute('xml:lang') ?? '';

/** The language a page says its text is in, looking out of shadow roots: what it typed into a table is read by it. */
export function languageOf(element: Element): string {
  let at: Element | null = element;
  while (at) {
    const found: Element | null = at.closest(SAYS);
    if (found) return languageTag(saidBy(found));
    at = (at.getRootNode() as Partial<ShadowRoot>).host ?? null;
  }
  return languageTag('');
}
