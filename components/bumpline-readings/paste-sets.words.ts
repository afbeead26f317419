import type { SheetColumn, SheetDerived, SheetQuestion, Understanding } from '../../core/readings/understanding.js';
import { columnName, columnTitle } from './paste.labels.js';

const NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six'];
export const numberWord = (count: number): string => NUMBERS[count] ?? String(count);

/** "columns B to D", "columns B, C and F", "column B" */
export function columnsText(columns: readonly number[]): string {
  const names = columns.map(columnName);
  if (names.length === 1) return `column ${names[0]}`;
  const isRun = columns.length > 2 && columns.every((column, i) => i === 0 || column === columns[i - 1]! + 1);
  return `columns ${isRun ? `${names[0]} to ${names.at(-1)}` : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`}`;
}

type Group = NonNullable<SheetQuestion['groups']>[number];
const groupText = ({ columns, rows }: Group): string =>
  rows ? `rows ${rows[0] + 1} to ${rows[1] + 1}` : columnsText(columns);

/** "column B and column C" */
export function groupsText({ groups = [] }: SheetQuestion): string {
  const each = groups.map(groupText);
  // Two single columns are columns B and C.
  if (groups.every(({ columns, rows }) => !rows && columns.length === 1)) {
    return columnsText(groups.flatMap(({ columns }) => columns));
  }
  const joint = each.some((text) => / and /.test(text)) ? ', and ' : ' and ';
  return each.length > 1 ? `${each.slice(0, -1).join(', ')}${joint}${each.at(-1)}` : (each[0] ?? '');
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const setNameLabel = (columns: readonly number[]): string => `Name of the parts in ${columnsText(columns)}`;

export function setsQuestion(question: SheetQuestion): string {
  const { groups = [], isApart } = question;
  const ask = `${capital(numberWord(groups.length))} sets of parts, or passes of one?`;
  const are = capital(groupsText(question));
  return isApart
    ? `${are} differ by more than their scatter allows. ${ask}`
    : `${are}: ${ask.charAt(0).toLowerCase()}${ask.slice(1)}`;
}

export function averageQuestion({ cells, groups }: SheetQuestion, columns: readonly SheetColumn[]): string {
  const column = cells[0]?.[1] ?? 0;
  const where = columnTitle(column, columns[column]!);
  if (groups?.[0])
    return `${where} is the average of ${columnsText(groups[0].columns)} in every row. Leave it out, or take it as readings?`;
  return `${where} is called an average, but is not that of what stands beside it. Leave it out, or take it as readings?`;
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
