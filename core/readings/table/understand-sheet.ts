import type { Problem } from '../../quantity/problem.js';
import { MOST_READINGS, type ReadingQuantity } from '../reading.js';
import { Asker, numberIn } from './ask.js';
import { askBarePairs } from './bare-pairs.js';
import { classifyCells } from './classify-cells.js';
import { settleUnits } from './column-units.js';
import { type Column, columnsOf, hasNoFigures, isLength } from './columns.js';
import { askBumpSign, askZero, isFarTravel, settleHeightOrTravel } from './heights.js';
import { leaveDerived } from './leave-derived.js';
import { type Figure, notationOf } from './notation.js';
import { asSheetSets, type GroupsAmong, setsOf } from './sets.js';
import { isSideways } from './sideways.js';
import { type Sheet, tableRows } from './table-rows.js';
import { takeReadings } from './take-readings.js';
import type { SheetColumn, Understanding, UnderstandOptions } from './understanding.js';
import { valueColumnsOf } from './value-columns.js';
import { askBase, askFrontSign, askTotal, askValueSign } from './value-questions.js';

/** Without the noise of binary fractions, so that one height written twice is one height. */
const sound = (value: number) => Math.round(value * 1e9) / 1e9 + 0;

const asSheetColumn = ({
  says: _says,
  figures: _figures,
  hasUnit: _hasUnit,
  label: _label,
  words: _words,
  isOpen: _isOpen,
  ...column
}: Column): SheetColumn => column;

const isOfPair = (role: Column['role']): boolean => role === 'dialFront' || role === 'dialRear';

/** The figures of all columns that count. */
function figuresOf(sheet: Sheet, columns: readonly Column[], isFar: boolean[], angle: ReadingQuantity): Figure[] {
  return sheet.rows.flatMap((kind, r) =>
    columns.flatMap((column, c): Figure[] => {
      const { role, unit = 'mm', hasUnit } = column;
      if (kind !== 'data' || hasNoFigures(role) || sheet.kinds[r]![c] !== 'number') return [];
      const length = isFar[c] || role === 'body' || isOfPair(role) || column.isOpen ? 'coordinate' : 'travel';
      const quantity = isLength(unit) ? length : angle;
      const inMinutes = column.says.inMinutes ?? false;
      return [{ at: [r, c], text: sheet.texts[r]![c]!, quantity, unit, hasUnit, inMinutes }];
    }),
  );
}

/**
 * Reads a sheet of readings, with or without headings, in the ways people write it, and says of every cell how it was understood.
 * What the sheet leaves open is asked, once for the whole sheet; the likeliest answer counts until the user gives one.
 *
 * @param rows cells as text, row by row, of any length
 * @param groupsAmong tells passes of different parts apart by their figures; without it names alone do, as in a published table, where
 * nobody can be asked
 * @returns readings in the sheet's order; see `Understanding`. Never throws
 */
export function understandSheet(
  rows: readonly (readonly string[])[],
  options: UnderstandOptions,
  groupsAmong?: GroupsAmong,
): Understanding {
  const { quantity } = options;
  const sheet = tableRows(rows);
  const columns = columnsOf(sheet, options);
  const asker = new Asker(options);
  // Read down its columns such a sheet would give numbers, and wrong ones.
  const isTurned = isSideways(rows) && !options.columns;
  if (isTurned) for (const column of columns) column.role = 'other';
  const bare = isTurned ? undefined : askBarePairs(sheet, columns, quantity, options, asker);
  settleHeightOrTravel(sheet, columns, options, asker);
  settleUnits(sheet, columns, options.units, quantity, asker);
  // Figures that become travel only when one of them is called zero.
  const isFar = columns.map((column) => column.role === 'height' || isFarTravel(column));
  const figures = figuresOf(sheet, columns, isFar, quantity);
  const notation = notationOf(figures, options, asker);

  const values = sheet.texts.map((row) => row.map(() => Number.NaN));
  const failed = new Map<string, Problem>();
  for (const figure of figures) {
    const [r, c] = figure.at;
    const parsed = notation.read(figure);
    if (!parsed.ok) failed.set(`${r},${c}`, parsed.problem);
    else if (columns[c]!.role === 'height' && parsed.value <= 0) {
      failed.set(`${r},${c}`, { code: 'out-of-range', path: `rows.${r}.${c}`, value: figure.text, limit: 0 });
    } else values[r]![c] = parsed.value;
  }

  const problems: Problem[] = [];
  const need = (path: string) => problems.push({ code: 'missing', path, value: undefined });
  const isHeight = ({ role }: Column) => role === 'travel' || role === 'height';
  const valueColumns = valueColumnsOf(columns);
  if (isTurned) problems.push({ code: 'wrong-shape', path: 'travel', value: sheet.texts.flat().find(Boolean) });
  else if (!sheet.rows.includes('data')) need('readings');
  else {
    if (!columns.some(isHeight)) need('travel');
    if (valueColumns.length === 0 && bare !== 'open')
      need(columns.some(({ role }) => isOfPair(role)) ? 'pair' : quantity);
  }

  const far = figures.flatMap(({ at }) => {
    const mm = values[at[0]]![at[1]]!;
    return isFar[at[1]] && !Number.isNaN(mm) ? [{ at, mm }] : [];
  });
  if (far.length > 0) {
    const zero = askZero(sheet, far, asker);
    if (asker.isPublished && numberIn(options.answers?.zero) !== zero) need('zero');
    for (const { at, mm } of far) values[at[0]]![at[1]] = columns[at[1]]!.role === 'height' ? zero - mm : mm - zero;
  }
  const { isReversed, areSides } = askBumpSign(sheet, columns, asker);
  for (const [c, column] of columns.entries()) {
    const sign = isReversed && column.role === 'travel' ? -1 : 1;
    if (isHeight(column)) for (const row of values) row[c] = sound(row[c]! * sign);
  }
  const base = askBase(sheet, valueColumns, figures, asker);
  if (base === undefined && asker.isPublished && valueColumns.some(({ isOverBase }) => isOverBase)) need('base');
  const saidBy = bare === 'dials' || bare === 'tape' ? bare : undefined;
  const { front, by } = askFrontSign(columns, valueColumns, figures, sheet, asker, saidBy);
  const hasPairs = valueColumns.some(({ rear }) => rear !== undefined);
  if (hasPairs && front === undefined && asker.isPublished) need('front');

  const { taken, strands } = takeReadings(
    sheet,
    columns,
    valueColumns,
    values,
    { base, front, by },
    areSides,
    quantity,
  );
  const share = askTotal(quantity, columns, valueColumns, figures, sheet, asker);
  for (const { reading } of taken) {
    reading.value *= share;
    // What is half of a pair is not made from it again.
    if (share !== 1) delete reading.pair;
  }
  const { kept, derived } = leaveDerived(taken, strands, columns, options, asker);
  const sets = setsOf(columns, taken, kept, options, asker, groupsAmong, bare);
  const left = taken.filter(({ strand }) => kept.includes(strand));
  const sign = askValueSign(quantity, left, columns, valueColumns, sheet, asker);
  for (const { reading } of left) reading.value = reading.value * sign + 0;
  if (left.length > MOST_READINGS) {
    problems.push({ code: 'out-of-range', path: 'readings', value: left.length, limit: MOST_READINGS });
  }
  const isLong = columns.some(({ role }) => role === 'pass' || role === 'going') || sheet.rows.includes('section');
  return {
    quantity,
    form: isLong ? 'long' : 'column-a-pass',
    columns: columns.map(asSheetColumn),
    cells: classifyCells(sheet, columns, valueColumns, values, failed, taken, left, sign, asker),
    questions: asker.questions,
    ...(hasPairs &&
      share === 1 &&
      base !== undefined &&
      front !== undefined && { overBase: { by: by ?? 'dials', base, front } }),
    readings: left.map(({ reading }) => reading),
    sets: asSheetSets(sets, taken, left),
    derived,
    problems,
  };
}
