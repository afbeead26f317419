import { decimalMark } from '../../core/quantity/format.js';
import { dataText } from '../page-data/data-text.js';
import { attributesText, escaped } from './markup-text.js';

/** A figure as it is shown, and exactly, where what is shown is less. */
export interface FigureCell {
  text: string;
  value?: number;
  /** Over how many columns it stands; one without. */
  span?: number;
}
export type MarkupCell = string | FigureCell;

/** A table of a page. The first cell of a row heads it. */
export interface MarkupTable {
  caption: string;
  attributes: Readonly<Record<string, string>>;
  head: readonly string[];
  rows: readonly (readonly MarkupCell[])[];
}

const MINUS = '\u2212';
/** As many places of a figure are read back. */
const MOST_PLACES = 6;

/** How many places write all of the figures exactly; no more than `most`. */
export function placesOf(figures: readonly number[], fewest: number, most: number): number {
  let places = fewest;
  while (places < most && figures.some((figure) => !isExact(figure, places))) places++;
  return places;
}

const isExact = (figure: number, places: number): boolean =>
  Math.abs(Number(figure.toFixed(places)) - figure) < 10 ** -MOST_PLACES / 2;

/** A figure to so many places, with the decimal mark of a language. */
export function figureCell(figure: number, places: number, language: string): FigureCell {
  const [whole, fraction] = Math.abs(figure).toFixed(places).split('.');
  const size = fraction === undefined ? whole! : `${whole}${decimalMark(language)}${fraction}`;
  const text = figure < 0 && Number(figure.toFixed(places)) !== 0 ? MINUS + size : size;
  return isExact(figure, places) ? { text } : { text, value: Number(figure.toFixed(MOST_PLACES)) };
}

/** The same to the fewest places that write it exactly. */
export const freeFigure = (figure: number, most: number, language: string, fewest = 0): FigureCell =>
  figureCell(figure, placesOf([figure], fewest, most), language);

/** The texts of a table's cells, as whoever reads the table on a page takes them. */
export const textsIn = ({ head, rows }: Pick<MarkupTable, 'head' | 'rows'>): string[][] => [
  [...head],
  ...rows.map((row) => row.flatMap((cell) => [textOf(cell), ...Array<string>(spanOf(cell) - 1).fill('')])),
];

const spanOf = (cell: MarkupCell): number => (typeof cell === 'string' ? 1 : (cell.span ?? 1));

function textOf(cell: MarkupCell): string {
  const { text, value } = typeof cell === 'string' ? { text: cell, value: undefined } : cell;
  const bare = text.replace(/\s+/g, ' ').trim();
  return value === undefined ? bare : dataText(String(value), bare);
}

const inner = (cell: MarkupCell): string => {
  if (typeof cell === 'string') return escaped(cell);
  const { text, value } = cell;
  return value === undefined ? escaped(text) : `<data value="${value}">${escaped(text)}</data>`;
};

/** @param language of its figures: a page in another reads them all the same */
export function tableHtml({ caption, attributes, head, rows }: MarkupTable, language: string): string {
  const heads = head.map((text) => `<th scope="col">${escaped(text)}</th>`);
  const lines = rows.map(([first = '', ...cells]) => {
    const others = cells.map((cell) => {
      const span = spanOf(cell);
      return `<td${span > 1 ? ` colspan="${span}"` : ''}>${inner(cell)}</td>`;
    });
    return `  <tr><th scope="row">${inner(first)}</th>${others.join('')}</tr>`;
  });
  return [
    `<table${attributesText({ lang: language, ...attributes })}>`,
    ...(caption ? [` <caption>${escaped(caption)}</caption>`] : []),
    ` <thead><tr>${heads.join('')}</tr></thead>`,
    ' <tbody>',
    ...lines,
    ' </tbody>',
    '</table>',
  ].join('\n');
}
