import { roughNumber, wheelDirectionMark } from './cell-kind.js';
import { type HeadingSays, headingSays } from './heading.js';
import { type Label, readLabels } from './labels.js';
import type { Sheet } from './table-rows.js';
import type { CellUnit, ColumnRole, SheetColumn, UnderstandOptions } from './understanding.js';

/** A column with what its heading said beside its role. */
export interface Column extends SheetColumn {
  says: HeadingSays;
  /** What the words over it name, beside those over the others. */
  label: Label;
  /** The words over it, those that it shares with others among them. */
  words: string;
  /** Of its cells that are figures, roughly, the unit left aside. */
  figures: number[];
  /** Value columns without a unit of their own use that of all. */
  hasUnit: boolean;
  /** It waits for the user to say what it is, and gives nothing until then. */
  isOpen?: true;
}

const sorted = (figures: number[]) => [...new Set(figures)].sort((a, b) => a - b);

/** Of a column whose cells are no figures that count. */
export const hasNoFigures = (role: ColumnRole): boolean => ['other', 'pass', 'going', 'derived'].includes(role);

export const isLength = (unit: CellUnit): boolean => ['mm', 'cm', 'in', 'thou'].includes(unit);
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

/**
 * Whether figures cannot be what their heading seems to say: parts are named after heights, references and tracks as well. Of a
 * height from hub to arch, or of a rule on the body, hundreds of mm or more than a dozen inches: common practice, no source.
 */
function isNamedAfter({ role, says, figures, unit }: Column, others: readonly Column[]): boolean {
  if (figures.length === 0 || (unit && isLength(unit)) || !says.role) return false;
  const size = mostOf(figures.map(Math.abs));
  const hasHeights = others.some((other) => other.role === 'travel' || other.role === 'height');
  if (role === 'body') return size < 8 && (leastOf(figures) < 0 || spanOf(figures) > 0.3 * size);
  return role === 'height' && hasHeights && size < 8;
}

/** What each column holds: by the user's word, else by its heading, else by its figures. */
export function columnsOf(sheet: Sheet, options: UnderstandOptions): Column[] {
  const data = sheet.rows.flatMap((kind, r) => (kind === 'data' ? [r] : []));
  const labels = readLabels(
    sheet.headings.map(({ own, group }) => `${group} ${own}`.trim()),
    options.quantity,
  );
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
      words: `${group} ${own}`.trim(),
      role: role ?? 'other',
      by: Object.keys(user).length > 0 ? 'user' : role ? 'heading' : 'figures',
      ...(unit && { unit }),
      hasUnit: unit !== undefined,
      says,
      label: labels[i]!,
      figures,
    };
  });
  const isOpen = (column: Column, i: number) => !options.columns?.[i]?.role && !column.says.role;
  const give = (column: Column | undefined, role: ColumnRole) => {
    if (column) column.role = role;
  };
  for (const [i, column] of columns.entries()) {
    if (options.columns?.[i]?.role) continue;
    if (isNamedAfter(column, columns.slice(0, i))) Object.assign(column, { role: 'other', by: 'figures', says: {} });
    const role = roleOfWords(sheet, column, i, isOpen(column, i), data);
    if (role) give(column, role);
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
  const named = columns.filter(({ says }) => says.role === 'value' || says.isWeak);
  for (const column of open()) {
    const { says, heading, figures, label } = column;
    // Beside a column that is called camber one without a name of its own kind is something else.
    const isAkin =
      label.pass !== undefined ||
      label.summary !== undefined ||
      named.some((other) => other.label.stem !== '' && other.label.stem === label.stem);
    give(column, (named.length > 0 && heading && !says.isWeak && !isAkin) || isNoAngle(figures) ? 'other' : 'value');
  }
  settleHeights(columns, options);
  // How far readings lie apart, and how many there are, is no reading.
  const values = columns.filter(({ role }) => role === 'value');
  for (const [i, column] of columns.entries()) {
    if (column.role !== 'value' || column.label.summary !== 'spread' || options.columns?.[i]?.role) continue;
    if (values.some(({ label }) => !label.summary)) column.role = 'derived';
  }
  return columns;
}

/** What a column of words holds, or one whose figures are not what its heading seems to say. */
function roleOfWords(
  sheet: Sheet,
  column: Column,
  i: number,
  isOpen: boolean,
  data: readonly number[],
): ColumnRole | undefined {
  const texts = data.map((r) => sheet.texts[r]![i]!.trim()).filter((text) => text !== '');
  // A column of words under "up/down" or "bump/droop" gives directions, one of figures heights.
  const areMarks = texts.length > 0 && texts.every(wheelDirectionMark) && texts.some((text) => /[a-z↑↓+]/i.test(text));
  if (column.role === 'going' && column.figures.length > texts.length / 2) return 'travel';
  if (column.role === 'pass' && column.figures.length > 0 && !column.figures.every(Number.isInteger)) return 'value';
  if (column.says.role === 'travel' && areMarks) return 'going';
  if (!isOpen || column.figures.length > 0 || texts.length === 0) return undefined;
  // The same word in every row tells none of them apart.
  const distinct = new Set(texts).size;
  const isInEvery = texts.length === data.length && distinct > 1 && distinct <= texts.length / 2;
  const isPass = isInEvery || texts.every((text) => /pass|run|sweep|series/i.test(text)) || headsBlocks(sheet, i);
  return areMarks ? 'going' : isPass && !column.says.isWeak ? 'pass' : 'other';
}

/** Whether the words of a column stand where a block of rows begins, as merged cells do, and the heights begin again there. */
function headsBlocks({ kinds, texts, blocks }: Sheet, column: number): boolean {
  const rows = blocks.flatMap(({ rows: own }) => own);
  const at = rows.filter((r) => kinds[r]![column] === 'word');
  if (at.length < 2 || at[0] !== rows[0] || at.length > rows.length / 2) return false;
  const heightAt = kinds[rows[0]!]!.indexOf('number');
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  return rows.every((r) => {
    const height = roughNumber(texts[r]![heightAt]!);
    const isAgain = height >= low && height <= high;
    [low, high] = [Math.min(low, height), Math.max(high, height)];
    return r === rows[0] || !at.includes(r) || isAgain;
  });
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
