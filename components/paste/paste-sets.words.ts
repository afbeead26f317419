import type { SheetColumn, SheetQuestion } from '../../core/readings/table/understanding.js';
import { columnsText } from '../element/left-out.js';
import { columnTitle, NAMES } from './paste.labels.js';

const { asks: WORDS } = NAMES;
export const numberWord = (count: number): string => WORDS.numbers[count] ?? String(count);

type Group = NonNullable<SheetQuestion['groups']>[number];
const groupText = ({ columns, rows }: Group): string =>
  rows ? NAMES.rows(rows[0] + 1, rows[1] + 1) : columnsText(columns);

/** "column B and column C" */
export function groupsText({ groups = [] }: SheetQuestion): string {
  const each = groups.map(groupText);
  // Two single columns are columns B and C.
  if (groups.every(({ columns, rows }) => !rows && columns.length === 1)) {
    return columnsText(groups.flatMap(({ columns }) => columns));
  }
  return each.length > 1 ? WORDS.allOf(each) : (each[0] ?? '');
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const setNameLabel = (columns: readonly number[]): string => WORDS.partsIn(columnsText(columns));

export function setsQuestion(question: SheetQuestion): string {
  const { groups = [], isApart } = question;
  const ask = WORDS.sets(numberWord(groups.length));
  const are = capital(groupsText(question));
  return isApart ? WORDS.apart(are, capital(ask)) : WORDS.notApart(are, ask);
}

export function averageQuestion({ cells, groups }: SheetQuestion, columns: readonly SheetColumn[]): string {
  const column = cells[0]?.[1] ?? 0;
  const where = columnTitle(column, columns[column]!);
  return groups?.[0] ? WORDS.average(where, columnsText(groups[0].columns)) : WORDS.calledAverage(where);
}
