/**
 * What the type files of all frameworks have in common as text.
 *
 * @import { Attribute, Described, Named } from './described-elements.mjs'
 */

const isName = (text) => /^[A-Za-z_$][\w$]*$/.test(text);

/** A description as a comment above what it is about, as a sentence; nothing in it may end the comment. */
const commentOf = (doc, indent) =>
  doc && `${indent}/** ${doc[0].toUpperCase()}${doc.slice(1).replaceAll('*/', '*\\/')} */\n`;

/**
 * @param {Named} named
 * @param {string} type
 * @returns {string} an optional member of an interface
 */
export const memberText = ({ name, doc }, type) =>
  `${commentOf(doc, '  ')}  ${isName(name) ? name : `'${name}'`}?: ${type} | undefined;\n`;

/**
 * @param {Described} element
 * @param {string[]} members
 * @returns {string} an interface of what an author can give the element
 */
export const interfaceText = ({ tag, className, doc }, members) =>
  `${commentOf(`\`<${tag}>\`: ${doc}`, '')}export interface ${className}Props {\n${members.join('')}}\n`;

/** @param {Described} element */
export const propertyMembers = ({ className, properties }) =>
  properties.map((one) => memberText(one, `${className}['${one.name}']`));

/**
 * @param {Described} element
 * @param {(type: string) => string} typeOf what the attribute takes, by the type of its property
 * @param {Attribute[]} [attributes] those that are not properties by the same name
 */
export const attributeMembers = (
  { className, properties, attributes: all },
  typeOf,
  attributes = all.filter(({ name }) => properties.every((property) => property.name !== name)),
) => attributes.map((one) => memberText(one, one.field ? typeOf(`${className}['${one.field}']`) : 'string'));

/**
 * @param {Described} element
 * @param {(event: string) => string} nameOf what a listener is called
 */
export const eventMembers = ({ className, events }, nameOf) =>
  events.map(({ name, doc }) =>
    memberText({ name: nameOf(name), doc }, `((event: EventOf<${className}, '${name}'>) => void)`),
  );

/**
 * The first lines: the classes of the elements, and their names in the DOM, which give references their types.
 *
 * @param {Described[]} elements
 * @param {string[]} helpers from components/element/for-frameworks.ts
 * @param {string} framework what is imported of it
 */
export const headText = (elements, helpers, framework) =>
  [
    '// Made from custom-elements.json. These are types alone: at run time there is nothing in here.',
    framework,
    ...elements.map(({ className, module }) => `import type { ${className} } from '../${module}';`),
    `import type { ${helpers.join(', ')} } from '../components/element/for-frameworks.js';`,
    "import type {} from '../components/define.js';",
    '',
    '',
  ].join('\n');

/**
 * @param {Described[]} elements
 * @param {string} indent
 * @param {string} generic the type that makes an element's entry of its class and its interface
 */
export const entriesText = (elements, indent, generic) =>
  elements.map(({ tag, className }) => `${indent}'${tag}': ${generic}<${className}, ${className}Props>;\n`).join('');
