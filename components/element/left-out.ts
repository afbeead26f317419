import type { Understanding } from '../../core/readings/table/understanding.js';
import { PARTS } from './parts.labels.js';

const { leftOut: WORDS } = PARTS;

/** A, B, … Z, AA, as spreadsheets name columns. */
export function columnName(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26));
  return index < 26 ? letter : columnName(Math.floor(index / 26) - 1) + letter;
}

/** "columns B to D", "columns B, C and F", "column B" */
export function columnsText(columns: readonly number[]): string {
  const names = columns.map(columnName);
  if (names.length === 1) return WORDS.column(names[0]!);
  const isRun = columns.length > 2 && columns.every((column, i) => i === 0 || column === columns[i - 1]! + 1);
  return isRun ? WORDS.run(names[0]!, names.at(-1)!) : WORDS.columns(names.slice(0, -1).join(', '), names.at(-1)!);
}

/** More at once would be a wall. */
const MOST_TOLD = 4;

/** What of the sheet is left out because other figures of it give it: a sentence each. */
export function derivedText({ derived, columns }: Pick<Understanding, 'derived' | 'columns'>): string {
  const sentences = derived.slice(0, MOST_TOLD).map(({ kind, label, column, of }) => {
    const isWhole = columns[column]?.role === 'derived';
    const { heading = '' } = columns[column] ?? {};
    const called = WORDS.ofColumn(columnName(column), heading);
    const what = isWhole ? called : WORDS.called(label);
    // Rows of one name are made of rows, not of columns.
    const isMade = of.length > 0 && isWhole;
    return WORDS.says(what, WORDS[isMade ? 'made' : 'named'][kind], isMade ? columnsText(of) : '');
  });
  if (derived.length > MOST_TOLD) sentences.push(WORDS.more(derived.length - MOST_TOLD));
  return sentences.join(' ');
}
