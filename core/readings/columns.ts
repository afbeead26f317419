import { goingMark, roughNumber } from './cell-kind.js';
import { type HeadingSays, headingSays } from './heading.js';
import type { Sheet } from './lay-out.js';
import type { CellUnit, ColumnRole, SheetColumn, UnderstandOptions } from './understanding.js';

/** A column with what its heading said beside its role. */
export interface Column extends SheetColumn {
  says: HeadingSays;
  /** Of its cells that are figures, roughly, the unit left aside. */
  figures: number[];
  /** Value columns without a unit of their own use that of all. */
  hasUnit: boolean;
}

const sorted = (figures: number[]) => [...new Set(figures)].sort((a, b) => a - b);

export const isLength = (unit: CellUnit): boolean => unit === 'mm' || unit === 'cm' || unit === 'in';
/** Not by spreading: a sheet may be longer than a call may have arguments. */
export const leastOf = (figures: readonly number[]): number => figures.reduce((a, b) => Math.min(a, b), Infinity);
export const mostOf = (figures: readonly number[]): number => figures.reduce((a, b) => Math.max(a, b), -Infinity);
export const spanOf = (figures: readonly number[]): number => mostOf(figures) - leastOf(figures);

/** 1, 1, 1, 2, 2: passes that are numbered. */
function isPassNumber(figures: number[]): boolean {
  const distinct = sorted(figures);
  return (
    figures.length >= 4 && distinct.length <= figures.length / 2 && distinct.every((figure, i) => figure === i + 1)
  );
}

/** 1, 2, 3, …: rows that are numbered. */
const isRowNumber = (figures: number[]) => figures.length >= 4 && figures.every((figure, i) => figure === i + 1);

/** More of an angle than a wheel can have, in degrees as in whole minutes. */
function isNoAngle(figures: number[]): boolean {
  const size = sorted(figures.map(Math.abs))[figures.length >> 1] ?? 0;
  return size > 900 || (size > 15 && !figures.every(Number.isInteger));
}

/** Heights are taken at round figures over many times the span of angles in degrees. */
const looksLikeAngles = (figures: number[], heights: number[]) =>
  spanOf(heights) > 8 * spanOf(figures) &&
  heights.every((figure) => Number.isInteger(figure * 2)) &&
  !figures.every((figure) => Number.isInteger(figure * 4));

/** What each column holds: by the user's word, else by its heading, else by its figures. */
export function columnsOf(sheet: Sheet, options: UnderstandOptions): Column[] {
  const data = sheet.rows.flatMap((kind, r) => (kind === 'data' ? [r] : []));
  const columns = sheet.headings.map(({ own, group }, i): Column => {
    const says = headingSays(own, group, options.quantity);
    const user = options.columns?.[i] ?? {};
    const role = user.role ?? says.role;
    const unit = user.unit ?? says.unit;
    const figures = data
      .map((r) => (sheet.kinds[r]![i] === 'number' ? roughNumber(sheet.texts[r]![i]!) : Number.NaN))
      .filter((figure) => !Number.isNaN(figure));
    return {
      heading: own || group,
      role: role ?? 'other',
      by: Object.keys(user).length > 0 ? 'user' : role ? 'heading' : 'figures',
      ...(unit && { unit }),
      hasUnit: unit !== undefined,
      says,
      figures,
    };
  });
  const isOpen = (column: Column, i: number) => !options.columns?.[i]?.role && !column.says.role;
  const words = (i: number) => data.map((r) => sheet.texts[r]![i]!.trim()).filter((text) => text !== '');
  const give = (column: Column | undefined, role: ColumnRole) => {
    if (column) column.role = role;
  };
  // A column of words under "up/down" or "bump/droop" gives directions, one of figures heights.
  for (const [i, column] of columns.entries()) {
    if (options.columns?.[i]?.role) continue;
    const texts = words(i);
    const areMarks = texts.length > 0 && texts.every(goingMark) && texts.some((text) => /[a-z↑↓+]/i.test(text));
    if (column.role === 'going' && column.figures.length > texts.length / 2) give(column, 'travel');
    else if (column.role === 'pass' && !column.figures.every(Number.isInteger)) give(column, 'value');
    else if (column.says.role === 'travel' && areMarks) give(column, 'going');
    else if (isOpen(column, i) && column.figures.length === 0 && texts.length > 0) {
      // The same word in every row tells none of them apart.
      const distinct = new Set(texts).size;
      const isPass =
        (texts.length === data.length && distinct > 1 && distinct <= texts.length / 2) ||
        texts.every((text) => /pass|run|sweep|series/i.test(text));
      give(column, areMarks ? 'going' : isPass && !column.says.isWeak ? 'pass' : 'other');
    }
  }
  const open = () =>
    columns.filter((column, i) => isOpen(column, i) && column.role === 'other' && column.figures.length > 0);
  const isHeight = ({ role }: SheetColumn) => role === 'travel' || role === 'height';
  if (!columns.some(isHeight)) {
    const candidates = open();
    const [first, second] = candidates;
    const isSpare = candidates.length > 2 || (candidates.length === 2 && columns.some(({ role }) => role === 'value'));
    if (first && isSpare && !first.heading) {
      if (isPassNumber(first.figures) && spanOf(second!.figures) > 2) give(candidates.shift(), 'pass');
      else if (isRowNumber(first.figures) && spanOf(second!.figures) > 10) {
        first.says.role = 'other';
        candidates.shift();
      }
    }
    const [one, two] = candidates;
    const isSwapped = one && two && !one.heading && looksLikeAngles(one.figures, two.figures);
    give(candidates.find(({ unit }) => unit && isLength(unit)) ?? (isSwapped ? two : one), 'travel');
  }
  const named = columns.some(({ says }) => says.role === 'value' || says.isWeak);
  for (const column of open()) {
    const { says, heading, figures } = column;
    give(
      column,
      (named && heading && !says.isWeak && !says.pass?.startsWith('Pass')) || isNoAngle(figures) ? 'other' : 'value',
    );
  }
  settleHeights(columns, options);
  namePasses(columns, options);
  return columns;
}

/** Of a travel and a height side by side the travel counts: it knows its zero. */
function settleHeights(columns: Column[], options: UnderstandOptions): void {
  let last: Column | undefined;
  for (const [i, column] of columns.entries()) {
    if (column.role === 'value' || column.role === 'dialFront') last = undefined;
    if (column.role !== 'travel' && column.role !== 'height') continue;
    const spare = last && (last.role === 'travel' ? column : last);
    const at = spare === column ? i : columns.indexOf(spare!);
    if (spare && !options.columns?.[at]?.role) spare.role = 'other';
    if (spare !== column) last = column;
  }
}

/** One column a pass: by its heading; columns without a name in turn, a column up and one down together being one pass. */
function namePasses(columns: Column[], options: UnderstandOptions): void {
  const values = columns.filter(({ role }) => role === 'value' || role === 'dialFront');
  const isLong = columns.some(({ role }) => role === 'pass');
  let unnamed = 0;
  let taken = new Set<string>();
  for (const column of values) {
    const user = options.columns?.[columns.indexOf(column)];
    const going = user?.going ?? column.says.going;
    if (going) column.going = going;
    // "Camber, front left" over the only column names no pass.
    const isName = values.length > 1 || /pass|run|sweep|series/i.test(column.says.pass ?? '');
    let pass = user?.pass ?? (column.role === 'value' && isName ? column.says.pass : undefined);
    if (!pass && !isLong && values.length > 1) {
      const key = going ?? '';
      if (unnamed === 0 || !going || taken.has(key) || taken.has('')) {
        unnamed++;
        taken = new Set();
      }
      taken.add(key);
      pass = `Pass ${unnamed}`;
    }
    if (pass) column.pass = pass;
  }
  if (unnamed === 1 && values.every((column) => column.pass === 'Pass 1' && !column.says.pass)) {
    for (const [i, column] of columns.entries()) if (!options.columns?.[i]?.pass) delete column.pass;
  }
}
