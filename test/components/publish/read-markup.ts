import { type DefaultTreeAdapterTypes, parseFragment } from 'parse5';
import { dataText } from '../../../components/page-data/data-text.js';

type Node = DefaultTreeAdapterTypes.ChildNode;
type Element = DefaultTreeAdapterTypes.Element;

export interface ReadTable {
  rows: string[][];
  caption: string;
  attributes: Record<string, string>;
}

const isElement = (node: Node): node is Element => 'tagName' in node;
const childrenOf = (node: Element): Node[] => ('content' in node ? [] : node.childNodes);
export const attributesOf = ({ attrs }: Element): Record<string, string> =>
  Object.fromEntries(attrs.map(({ name, value }) => [name, value]));

/** Every element of a piece of HTML, in its order, as a parser by the standard finds it. */
export function elementsIn(html: string): Element[] {
  const within = (nodes: readonly Node[]): Element[] =>
    nodes.filter(isElement).flatMap((element) => [element, ...within(childrenOf(element))]);
  return within(parseFragment(html).childNodes);
}

export const textIn = (node: Node): string =>
  'value' in node ? node.value : isElement(node) ? childrenOf(node).map(textIn).join('') : '';

const cellText = (cell: Element): string =>
  childrenOf(cell)
    .map((node) => {
      if (!isElement(node)) return textIn(node);
      return node.tagName === 'data' ? dataText(attributesOf(node).value ?? '', textIn(node)) : cellText(node);
    })
    .join('')
    .replace(/\s+/g, ' ')
    .trim();

/** The tables in it, by the texts of their cells. */
export function tablesIn(html: string): ReadTable[] {
  return elementsIn(html)
    .filter(({ tagName }) => tagName === 'table')
    .map((table) => {
      const inside = elementsWithin(table);
      const rows = inside.filter(({ tagName }) => tagName === 'tr');
      const caption = inside.find(({ tagName }) => tagName === 'caption');
      return {
        rows: rows.map((row) => childrenOf(row).filter(isElement).map(cellText)),
        caption: caption ? cellText(caption) : '',
        attributes: attributesOf(table),
      };
    });
}

const elementsWithin = (element: Element): Element[] =>
  childrenOf(element)
    .filter(isElement)
    .flatMap((one) => [one, ...elementsWithin(one)]);
