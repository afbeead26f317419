/**
 * What an author can say to each element and hear of it, from the custom elements manifest.
 */

/**
 * @typedef {{ name: string, doc: string }} Named
 * @typedef {Named & { field?: string }} Attribute  `field`: the property that it sets, where it sets one
 * @typedef {{ tag: string, className: string, module: string, doc: string, attributes: Attribute[], properties: Named[],
 *   events: Named[] }} Described  `module`: the file of its class, from the folder of the package that holds the manifest
 */

/** A description as one line; of an element, its first paragraph. */
const lineOf = (description = '') =>
  description
    .split(/\n\s*\n/)[0]
    .replace(/\s+/g, ' ')
    .trim();

const isSettable = ({ kind, static: isStatic, readonly }) => kind === 'field' && !isStatic && !readonly;

/**
 * @param {{ modules: { path: string, declarations: object[] }[] }} manifest
 * @returns {Described[]} in the manifest's order
 */
export function describedElements(manifest) {
  return manifest.modules.flatMap(({ path, declarations }) =>
    declarations
      .filter(({ tagName }) => tagName !== undefined)
      .map(({ tagName, name, description, attributes = [], members = [], events = [] }) => ({
        tag: tagName,
        className: name,
        module: path.replace(/^dist\/npm\//, ''),
        doc: lineOf(description),
        attributes: attributes.map((one) => ({
          name: one.name,
          field: members.find(({ name: member }) => member === (one.fieldName ?? one.name))?.name,
          doc: lineOf(one.description),
        })),
        properties: members.filter(isSettable).map((one) => ({ name: one.name, doc: lineOf(one.description) })),
        events: events.map((one) => ({ name: one.name, doc: lineOf(one.description) })),
      })),
  );
}
