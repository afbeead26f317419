import type { SheetColumn, SheetQuestion } from '../../core/readings/table/understanding.js';
import { columnsText } from '../element/left-out.js';
import { columnTitle } from './paste.labels.js';

const NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six'];
export const numberWord = (count: number): string => NUMBERS[count] ?? String(count);

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
