import { parseQuantity } from '../../quantity/parse.js';
import { mmFromInches, type UnitSystem } from '../../quantity/units.js';
import type { ReadingQuantity } from '../reading.js';
import type { Asker } from './ask.js';
import { withoutMarks } from './cell-kind.js';
import { SEXAGESIMAL, unitOfCell } from './cell-units.js';
import { type Column, hasNoFigures, isLength, mostOf } from './columns.js';
import { AS_MINUTES } from './notation.js';
import type { Sheet } from './table-rows.js';
import type { CellUnit } from './understanding.js';

type At = [row: number, column: number];

interface Unnamed {
  columns: Column[];
  cells: At[];
}

/** Cells of a column, figures only, and the units they name. */
function cellsOf(sheet: Sheet, column: number): { at: At; text: string; unit: CellUnit | undefined }[] {
  return sheet.rows.flatMap((kind, r) => {
    if (kind !== 'data' || sheet.kinds[r]![column] !== 'number') return [];
    const text = withoutMarks(sheet.texts[r]![column]!);
    return [{ at: [r, column] as At, text, unit: unitOfCell(text) }];
  });
}

/** Makes sure that every column that counts has a unit: its own, that of its cells, else the likeliest, asked about where figures speak against the user's unit. */
export function settleUnits(
  sheet: Sheet,
  columns: Column[],
  units: UnitSystem,
  quantity: ReadingQuantity,
  asker: Asker,
): void {
  const unnamed = new Map<'height' | 'value' | 'pair' | 'body', Unnamed>();
  for (const [i, column] of columns.entries()) {
    const { role } = column;
    if (hasNoFigures(role) || column.hasUnit || column.isOpen) continue;
    const cells = cellsOf(sheet, i);
    const named = new Set(cells.flatMap(({ unit }) => unit ?? []));
    const [only] = named;
    if (named.size === 1 && (role === 'value' || isLength(only!))) {
      column.unit = only!;
      // Whoever marks minutes may well write 1.30 for them in the next cell.
      column.hasUnit = !cells.some(({ text }) => SEXAGESIMAL.test(text));
      continue;
    }
    const kind =
      role === 'value'
        ? 'value'
        : role === 'travel' || role === 'height'
          ? 'height'
          : role === 'body'
            ? 'body'
            : 'pair';
    const group = unnamed.get(kind) ?? { columns: [], cells: [] };
    unnamed.set(kind, group);
    group.columns.push(column);
    group.cells.push(...cells.filter(({ unit }) => !unit).map(({ at }) => at));
  }
  for (const [kind, { columns: open, cells }] of unnamed) {
    const figures = open.flatMap((column) => column.figures.map(Math.abs));
    const texts = cells.map(([r, c]) => withoutMarks(sheet.texts[r]![c]!));
    const usual: CellUnit = kind === 'value' ? 'degrees' : units.length;
    const angle = kind === 'value' ? likelyAngle(figures, texts, units, quantity) : undefined;
    const likeliest =
      angle?.unit ??
      (kind === 'height'
        ? likelyLength(figures, texts, open[0]!.role === 'height', units.length)
        : kind === 'pair'
          ? likelyOfPair(figures, texts, units.length)
          : usual);
    let unit: CellUnit = usual;
    if ((likeliest !== usual || angle?.isOpen) && cells.length > 0) {
      const first = columns.indexOf(open[0]!);
      const example = sheet.texts[cells[0]![0]]![cells[0]![1]]!;
      const angles: CellUnit[] = quantity === 'toe' ? ['degrees', 'arcminutes', 'mm'] : ['degrees', 'arcminutes'];
      const lengths: CellUnit[] = kind === 'pair' ? ['mm', 'cm', 'in', 'thou'] : ['mm', 'cm', 'in'];
      const choices = kind === 'value' ? angles : lengths;
      const chosen = asker.ask({
        id: `unit:${first}`,
        code: 'unit',
        cells,
        example,
        choices: choices.map((id) => {
          const value = inUnit(example, id);
          return value === undefined ? { id } : { id, value };
        }),
        likeliest,
        published: usual,
      }) as CellUnit;
      unit = chosen;
      // Whoever has chosen degrees has not said that 1.30 are decimals.
      if (unit !== 'degrees') for (const column of open) column.hasUnit = true;
    }
    for (const column of open) column.unit = unit;
  }
}

function inUnit(example: string, unit: CellUnit): number | undefined {
  const text = withoutMarks(example) + (unit === 'arcminutes' ? "'" : unit === 'cm' ? ' cm' : '');
  const system: UnitSystem = { length: unit === 'in' ? 'in' : 'mm', angle: 'degrees' };
  const parsed = parseQuantity(text, isLength(unit) ? 'coordinate' : 'linkAngle', system);
  const value = parsed.ok ? parsed.value : parsed.problem.choices?.[0];
  return unit === 'thou' && value !== undefined ? mmFromInches(value / 1000) : value;
}

/**
 * In which unit angles most likely are, and whether that is open: whole numbers that would be a lot of degrees, or that a reader of
 * minutes wrote; and toe, which is told in degrees, in minutes and in mm. Common practice, no source.
 */
function likelyAngle(
  figures: number[],
  texts: readonly string[],
  units: UnitSystem,
  quantity: ReadingQuantity,
): { unit: CellUnit; isOpen: boolean } {
  const most = mostOf(figures);
  const isWhole = figures.every(Number.isInteger) && most > 0;
  const readsMinutes = units.angle === 'arcminutes';
  const unit = isWhole && most > (readsMinutes || quantity === 'toe' ? 3 : 8) ? 'arcminutes' : 'degrees';
  if (figures.length < 3) return { unit: 'degrees', isOpen: quantity === 'toe' || (readsMinutes && isWhole) };
  if (quantity === 'toe') return { unit: !isWhole && most > 1.5 ? 'mm' : unit, isOpen: true };
  // Parts of a minute nobody reads; and whether 1.30 is 1°30′ is a question of its own.
  const isSurelyDegrees =
    figures.some((figure) => figure > 0 && figure < 1) || texts.every((text) => AS_MINUTES.test(text));
  return { unit, isOpen: isWhole ? readsMinutes || most > 4 : readsMinutes && !isSurelyDegrees };
}

/** By what a wheel can travel and how far an arch stands from its hub: common practice, no source. */
function likelyLength(figures: number[], texts: string[], isHeight: boolean, usual: 'mm' | 'in'): CellUnit {
  const most = mostOf(figures);
  if (texts.some((text) => /\d\s*[/⁄]\s*\d|[¼-¾⅐-⅞]/.test(text))) return 'in';
  if (figures.length < 3) return usual;
  if (usual === 'in') return most > (isHeight ? 40 : 14) ? 'mm' : 'in';
  if (isHeight) return most < 30 ? 'in' : most < 100 ? 'cm' : 'mm';
  return most > 0 && most <= 6 ? 'in' : 'mm';
}

/** Dials of an inch count thousandths; no string lies a man's length from a wheel in inches. Common practice, no source. */
function likelyOfPair(figures: number[], texts: readonly string[], usual: 'mm' | 'in'): CellUnit {
  const most = mostOf(figures);
  const areThousandths = texts.some((text) => /[.,]\d{3}$/.test(text)) && most > 0 && most < 1.5;
  if (usual === 'mm') return areThousandths ? 'in' : 'mm';
  return most > 100 ? 'mm' : 'in';
}
