import { type DefaultTreeAdapterTypes, parseFragment } from 'parse5';
import { dataText } from '../../components/page-data/data-text.js';

/* A page's markup as the build reads it: what a browser makes of it, and where in the text it stands. */

export type Element = DefaultTreeAdapterTypes.Element;
type Node = DefaultTreeAdapterTypes.ChildNode | DefaultTreeAdapterTypes.DocumentFragment;

export const parsed = (html: string) => parseFragment(html, { sourceCodeLocationInfo: true });

const childrenOf = (node: Node): Node[] => ('childNodes' in node ? node.childNodes : []);

/** All below a node that fit, in their order. */
export function findAll(node: Node, fits: (element: Element) => boolean): Element[] {
  return childrenOf(node).flatMap((child) => [
    ...('tagName' in child && fits(child) ? [child] : []),
    ...findAll(child, fits),
  ]);
}

export const attribute = (element: Element, name: string): string | undefined =>
  element.attrs.find((one) => one.name === name)?.value;

/** A `<data value>` stands for its text, as an element reads it. */
export function textOf(node: Node): string {
  if ('value' in node) return node.value;
  const text = childrenOf(node).map(textOf).join('');
  const value = 'tagName' in node && node.tagName === 'data' ? attribute(node, 'value') : undefined;
  return value === undefined ? text : dataText(value, text.trim());
}

export interface Table {
  rows: string[][];
  caption: string;
}

/** @throws {Error} where a cell goes over several: an element can read that, this cannot */
export function tableOf(table: Element): Table {
  const said = (element: Element) => textOf(element).replace(/\s+/g, ' ').trim();
  const caption = findAll(table, ({ tagName }) => tagName === 'caption').map(said);
  const rows = findAll(table, ({ tagName }) => tagName === 'tr').map((row) =>
    findAll(row, ({ tagName }) => tagName === 'td' || tagName === 'th').map((cell) => {
      if (attribute(cell, 'colspan') ?? attribute(cell, 'rowspan'))
        throw new Error(`The build cannot read a table whose cell “${said(cell)}” goes over several: divide it.`);
      return said(cell);
    }),
  );
  return { rows, caption: caption[0] ?? '' };
}
