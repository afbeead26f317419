/**
 * Types of the elements in Vue's templates.
 *
 * @import { Described } from './described-elements.mjs'
 */
import { attributeMembers, entriesText, eventMembers, headText, interfaceText, propertyMembers } from './type-text.mjs';

/** Templates are checked by names in camel case: `bump-travel` as `bumpTravel`. */
const camelCase = (name) => name.replace(/-(\w)/g, (_, letter) => letter.toUpperCase());

/** `@bumpline-answer` is checked as this. */
const listenerOf = (event) => camelCase(`on-${event}`);

const IN_TEMPLATE = `/** Attributes \`data-…\`, in either case. */
interface InData {
  [name: \`data-\${string}\` | \`data\${Capitalize<string>}\`]: unknown;
}

/** What stands in a template: an element's own, and what every element of HTML takes. */
type InTemplate<Element, Props> = new () => Element & {
  $props: Props & Omit<HTMLAttributes & PublicProps, keyof Props> & InData;
  $slots: { default?: (nothing: Record<never, never>) => unknown };
};
`;

/** @param {Described[]} elements @returns {string} */
export const vueTypes = (elements) =>
  [
    headText(elements, ['AttributeOf', 'EventOf'], "import type { HTMLAttributes, PublicProps } from 'vue';"),
    ...elements.map((element) => {
      const attributes = element.attributes.map((one) => ({ ...one, name: camelCase(one.name) }));
      return interfaceText(element, [
        ...propertyMembers(element),
        ...attributeMembers({ ...element, attributes }, (type) => `AttributeOf<${type}>`),
        ...eventMembers(element, listenerOf),
      ]);
    }),
    IN_TEMPLATE,
    `declare module 'vue' {\n  interface GlobalComponents {\n${entriesText(elements, '    ', 'InTemplate')}  }\n}\n`,
  ].join('\n');
