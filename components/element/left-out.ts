import type { SheetDerived, Understanding } from '../../core/readings/table/understanding.js';

/** A, B, … Z, AA, as spreadsheets name columns. */
export function columnName(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26));
  return index < 26 ? letter : columnName(Math.floor(index / 26) - 1) + letter;
}

/** "columns B to D", "columns B, C and F", "column B" */
export function columnsText(columns: readonly number[]): string {
  const names = columns.map(columnName);
  if (names.length === 1) return `column ${names[0]}`;
  const isRun = columns.length > 2 && columns.every((column, i) => i === 0 || column === columns[i - 1]! + 1);
  return `columns ${isRun ? `${names[0]} to ${names.at(-1)}` : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`}`;
}

const KINDS: Record<SheetDerived['kind'], [made: string, named: string]> = {
  average: ['is the average of', 'is called an average'],
  median: ['is the median of', 'is called an average'],
  spread: ['says how far apart the readings lie in', 'says how far apart readings lie, or how many there are'],
  difference: ['is the difference of', 'is called a difference'],
  copy: ['is the change of', 'is called a change'],
};
/** More at once would be a wall. */
const MOST_TOLD = 4;

/** What of the sheet is left out because other figures of it give it: a sentence each. */
export function derivedText({ derived, columns }: Pick<Understanding, 'derived' | 'columns'>): string {
  const sentences = derived.slice(0, MOST_TOLD).map(({ kind, label, column, of }) => {
    const isWhole = columns[column]?.role === 'derived';
    const { heading = '' } = columns[column] ?? {};
    const called = `Column ${columnName(column)}${heading ? `, “${heading}”,` : ''}`;
    const what = isWhole ? called : `What is called “${label}”`;
    const [made, named] = KINDS[kind];
    // Rows of one name are made of rows, not of columns.
    return `${what} ${of.length > 0 && isWhole ? `${made} ${columnsText(of)}` : named}: left out.`;
  });
  if (derived.length > MOST_TOLD) sentences.push(`So are ${derived.length - MOST_TOLD} more.`);
  return sentences.join(' ');
}
