/**
 * Types of the elements in Svelte's markup.
 *
 * @import { Described } from './described-elements.mjs'
 */
import { attributeMembers, entriesText, eventMembers, headText, interfaceText, propertyMembers } from './type-text.mjs';

const IN_MARKUP = `/** What stands in markup: an element's own, and what every element of HTML takes. */
type InMarkup<Element extends EventTarget, Props> = Props & Omit<HTMLAttributes<Element>, keyof Props>;
`;

/** @param {Described[]} elements @returns {string} */
export const svelteTypes = (elements) =>
  [
    headText(elements, ['AttributeOf', 'EventOf'], "import type { HTMLAttributes } from 'svelte/elements';"),
    ...elements.map((element) =>
      interfaceText(element, [
        ...propertyMembers(element),
        ...attributeMembers(element, (type) => `AttributeOf<${type}>`),
        ...eventMembers(element, (event) => `on${event}`),
        // As it is written where a file uses no runes.
        ...eventMembers(element, (event) => `on:${event}`),
      ]),
    ),
    IN_MARKUP,
    `declare module 'svelte/elements' {\n  interface SvelteHTMLElements {\n${entriesText(elements, '    ', 'InMarkup')}  }\n}\n`,
  ].join('\n');
