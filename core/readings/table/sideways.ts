import { kindOf, roughNumber } from './cell-kind.js';
import { headingSays } from './heading.js';

/** Whether heights stand along a line, `Travel, −20, 0, 20`, and not in a column. */
export function isSideways(rows: readonly (readonly string[])[]): boolean {
  const at = rows.findIndex((cells) => cells.some((cell) => kindOf(cell) === 'number'));
  const [first = '', ...rest] = rows[at] ?? [];
  // Heights in the first column: what stands over the others is a heading, whatever figures are in it ("1 up").
  const below = rows.slice(at + 1).filter(([cell = '']) => cell.trim() !== '');
  if (below.filter(([cell = '']) => kindOf(cell) === 'number').length > below.length / 2) return false;
  const { role } = headingSays(first, '', 'camber');
  // Passes that are numbered, `Travel, 1, 2, 3`, are headings.
  const figures = rest.filter((cell) => kindOf(cell) === 'number');
  const isNumbered = figures.every((figure, i) => figure.trim() === `${i + 1}`);
  if (isNumbered || figures.length < 2) return false;
  if (kindOf(first) === 'word' && (role === 'travel' || role === 'height')) return true;
  // Nothing heads the heights, but they go one way, and names head each line of angles below.
  const steps = figures.map(roughNumber).map((figure, i, all) => (i === 0 ? 0 : figure - all[i - 1]!));
  const isOneWay = steps.slice(1).every((step) => step > 0) || steps.slice(1).every((step) => step < 0);
  const areNamed = below.length > 0 && below.every(([cell = '']) => kindOf(cell) === 'word');
  return kindOf(first) === 'empty' && figures.length > 2 && isOneWay && areNamed;
}

/** The same cells with heights in a column. A sheet that has them there already comes back as it is. */
export function upright(rows: string[][]): string[][] {
  if (!isSideways(rows)) return rows;
  const width = rows.reduce((most, row) => Math.max(most, row.length), 0);
  return Array.from({ length: width }, (_, column) => rows.map((row) => row[column] ?? ''));
}
