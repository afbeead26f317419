/**
 * Types of the elements in JSX, for React 19, which sets properties and hears events, and for React 18, which writes attributes alone.
 *
 * @import { Described } from './described-elements.mjs'
 */
import {
  attributeMembers,
  entriesText,
  eventMembers,
  headText,
  interfaceText,
  memberText,
  propertyMembers,
} from './type-text.mjs';

const listenerOf = (event) => `on${event}`;

const IMPORT = "import type { DetailedHTMLProps, HTMLAttributes } from 'react';";

const IN_JSX = `/** What stands in JSX: an element's own, and what every element of HTML takes. */
type InJsx<Element, Props> = Props & Omit<DetailedHTMLProps<HTMLAttributes<Element>, Element>, keyof Props> & { class?: string | undefined };
`;

/** @param {Described[]} elements @returns {string} */
export const react19Types = (elements) =>
  [
    headText(elements, ['EventOf'], IMPORT),
    ...elements.map((element) =>
      interfaceText(element, [
        ...propertyMembers(element),
        // React 19 takes an attribute away that is false.
        ...attributeMembers(element, (type) => `Extract<${type}, string | number | boolean>`),
        ...eventMembers(element, listenerOf),
      ]),
    ),
    IN_JSX,
    `declare module 'react' {\n  namespace JSX {\n    interface IntrinsicElements {\n${entriesText(elements, '      ', 'InJsx')}    }\n  }\n}\n`,
  ].join('\n');

const NO_EVENT = 'React 18 does not hear it in JSX: use a ref and addEventListener.';

/** @param {Described[]} elements @returns {string} */
export const react18Types = (elements) =>
  [
    headText(elements, ['AttributeOf'], IMPORT),
    ...elements.map((element) =>
      interfaceText(element, [
        ...attributeMembers(element, (type) => `AttributeOf<${type}>`, element.attributes),
        // JSX lets any name with a hyphen pass that is not forbidden.
        ...element.events.map(({ name, doc }) =>
          memberText({ name: listenerOf(name), doc: `${doc}. ${NO_EVENT}` }, 'never'),
        ),
        memberText({ name: 'className', doc: 'React 18 gives it to no custom element: write `class`.' }, 'never'),
      ]),
    ),
    IN_JSX,
    `declare global {\n  namespace JSX {\n    interface IntrinsicElements {\n${entriesText(elements, '      ', 'InJsx')}    }\n  }\n}\n`,
  ].join('\n');
