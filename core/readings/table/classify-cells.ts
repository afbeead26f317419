import type { Problem } from '../../quantity/problem.js';
import type { Asker } from './ask.js';
import { wheelDirectionMark } from './cell-kind.js';
import type { Column } from './columns.js';
import type { Sheet } from './table-rows.js';
import type { Taken } from './take-readings.js';
import type { SheetCell } from './understanding.js';
import type { ValueColumn } from './value-columns.js';

/**
 * Says of every cell what became of it.
 *
 * @param values mm and degrees by cell, NaN where nothing could be read
 * @param failed problems by cell
 * @param all what the cells give, what is left out as derived among it
 * @param taken the readings
 * @param sign with which values count
 */
export function classifyCells(
  sheet: Sheet,
  columns: readonly Column[],
  valueColumns: readonly ValueColumn[],
  values: readonly (readonly number[])[],
  failed: ReadonlyMap<string, Problem>,
  all: readonly Taken[],
  taken: readonly Taken[],
  sign: 1 | -1,
  asker: Asker,
): SheetCell[][] {
  const byRow: { one: Taken; index: number }[][] = sheet.rows.map(() => []);
  for (const [index, one] of taken.entries()) byRow[one.at[0]]!.push({ one, index });
  const bySection = new Map(
    taken.flatMap(({ sections }, index) => sections.map((row) => [row, index] as const)).reverse(),
  );
  const kept = new Set(taken);
  const leftOut = new Set(all.flatMap((one) => (kept.has(one) ? [] : one.at.join())));
  /** Rows that hold nothing but what is left out. */
  const derivedRows = new Set(all.map(({ at }) => at[0]).filter((r) => byRow[r]!.length === 0));
  const fill = (r: number, c: number): Omit<SheetCell, 'text'> => {
    const text = sheet.texts[r]![c]!;
    const kind = sheet.rows[r]!;
    const { role } = columns[c]!;
    const inRow = byRow[r]!;
    const path = `rows.${r}.${c}`;
    if (kind === 'data' && role === 'going' && text.trim()) {
      if (!wheelDirectionMark(text)) return { state: 'problem', problem: { code: 'wrong-shape', path, value: text } };
    } else if (sheet.kinds[r]![c] === 'empty') return { state: 'empty' };
    if (kind === 'heading') return { state: 'heading' };
    if (kind === 'section') {
      const reading = bySection.get(r);
      return reading === undefined ? { state: 'left-out', why: 'not-a-reading' } : { state: 'read', reading };
    }
    if (role === 'other') return { state: 'left-out', why: 'other-column' };
    if (role === 'derived' || leftOut.has(`${r},${c}`) || derivedRows.has(r))
      return { state: 'left-out', why: 'derived' };
    if (kind === 'words')
      return { state: 'left-out', why: role === 'pass' || role === 'going' ? 'no-value' : 'not-a-reading' };
    const problem = failed.get(`${r},${c}`);
    if (problem) return { state: 'problem', problem };

    const valueColumn = valueColumns.find(({ value, rear }) => value === c || rear === c);
    const used = inRow.find(({ one }) =>
      valueColumn
        ? one.valueColumn === valueColumn
        : role === 'travel' || role === 'height'
          ? one.valueColumn.height === c
          : role !== 'body' || one.valueColumn.body === c,
    );
    const isName = role === 'pass' || role === 'going';
    const figure = values[r]![c]!;
    if (!isName && Number.isNaN(figure)) {
      // A word where a figure belongs: of a line that is no reading, as "Mean", or a slip.
      if (!valueColumn && !/\d/.test(text)) return { state: 'left-out', why: 'not-a-reading' };
      return { state: 'problem', problem: { code: 'not-a-number', path, value: text } };
    }
    const isAngle = valueColumn && !valueColumn.isOverBase;
    const value =
      valueColumn && !valueColumn.rear && used ? used.one.reading.value : isAngle ? figure * sign + 0 : figure;
    const said = isName || columns[c]!.isOpen ? {} : { value };
    const question = asker.waiting.get(`${r},${c}`);
    if (question) return { state: 'asked', question, ...said, ...(used && { reading: used.index }) };
    if (used) return { state: 'read', reading: used.index, ...said };
    const hasHeight = valueColumn?.height !== undefined && !Number.isNaN(values[r]![valueColumn.height]!);
    return { state: 'left-out', why: valueColumn && !hasHeight ? 'no-height' : 'no-value', ...said };
  };
  return sheet.texts.map((row, r) => row.map((text, c) => ({ text, ...fill(r, c) })));
}
