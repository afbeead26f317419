import { BASES, FRONT_SIGNS, type FrontSign, type OverBase } from '../over-base.js';
import type { Reading, ReadingQuantity } from '../reading.js';
import { type Asker, numberIn } from './ask.js';
import type { Column } from './columns.js';
import { baseIn } from './heading.js';
import type { Figure } from './notation.js';
import type { Sheet } from './table-rows.js';
import type { ValueColumn } from './value-columns.js';

/** How far dials, or the ends of a gauge, stand apart, mm: by the headings, else asked. Nothing speaks for a likeliest one. */
export function askBase(
  sheet: Sheet,
  valueColumns: readonly ValueColumn[],
  figures: readonly Figure[],
  asker: Asker,
): number | undefined {
  const columns = new Set(
    valueColumns.flatMap((valueColumn) => (valueColumn.isOverBase ? [valueColumn.value, valueColumn.rear] : [])),
  );
  const cells = figures.filter(({ at }) => columns.has(at[1]));
  if (cells.length === 0) return undefined;
  const stated = baseIn(sheet.title);
  if (stated !== undefined && stated >= BASES[0] && stated <= BASES[1]) return stated;
  return numberIn(
    asker.ask({ id: 'base', code: 'base', cells: cells.map(({ at }) => at), example: cells[0]!.text, range: BASES }),
  );
}

/**
 * Whether the figure at the front grows as the front of the wheel moves inboard. A string lies outside the wheel, parallel to the car:
 * more at the front is toe-in there, toe-out where one measures from the car's centreline or from the other wheel. Asked where no
 * heading says it; nothing speaks for a likeliest.
 *
 * @param said what they were read with, where the user said it
 */
export function askFrontSign(
  columns: readonly Column[],
  valueColumns: readonly ValueColumn[],
  figures: readonly Figure[],
  sheet: Sheet,
  asker: Asker,
  said?: OverBase['by'],
): Partial<Pick<OverBase, 'by' | 'front'>> {
  const pairs = valueColumns.filter(({ rear }) => rear !== undefined);
  const both = new Set(pairs.flatMap(({ value, rear }) => [value, rear]));
  const cells = figures.filter(({ at }) => both.has(at[1]));
  if (cells.length === 0) return {};
  const words = `${pairs.flatMap(({ value, rear }) => [columns[value]!.words, columns[rear!]!.words]).join(' ')} ${sheet.title}`;
  const [isString, isMiddle] = [STRING.test(words), MIDDLE.test(words)];
  const isTape = isString || isMiddle || TAPE.test(words);
  const by = said ?? (DIALS.test(words) ? 'dials' : isTape ? 'tape' : undefined);
  const told: Pick<Partial<OverBase>, 'by'> = by ? { by } : {};
  if (isString !== isMiddle) return { ...told, front: isString ? 'inboard' : 'outboard' };
  if (/\+ ?(?:is |= ?)?toe[ -]in/i.test(words)) return { ...told, front: 'inboard' };
  const chosen = asker.ask({
    id: 'front-sign',
    code: 'front-sign',
    cells: cells.map(({ at }) => at),
    example: cells[0]!.text,
    choices: FRONT_SIGNS.map((id) => ({ id })),
    ...told,
  });
  return { ...told, ...(chosen !== undefined && { front: chosen as FrontSign }) };
}

const DIALS = /\b(?:dial|indicator|clock|plunger)s?\b/i;
const STRING = /\bstrings?\b|\bfrom outside\b/i;
const MIDDLE = /\bcent(?:re|er)[ -]?line\b|\binside\b|\bother (?:wheel|plate|side)\b|\bbetween\b/i;
const TAPE = /\btape\b|\bdistances?\b|\bruler?\b/i;

/** Whether values go up with travel over the sheet as a whole. */
function rises(readings: readonly Reading[]): boolean {
  const mean = (of: (reading: Reading) => number) =>
    readings.reduce((sum, reading) => sum + of(reading), 0) / readings.length;
  const [travel, value] = [mean((reading) => reading.travel), mean((reading) => reading.value)];
  return mean((reading) => (reading.travel - travel) * (reading.value - value)) > 0;
}

/**
 * Whether a positive figure means top out (toe in), as in our answers, or the other way. Asked where the figures or their heading
 * speak against it: camber that is nowhere negative and grows in bump, "negative camber", "toe-out".
 *
 * @param readings with the sheet's own sign
 * @returns the factor to read them with
 */
export function askValueSign(
  quantity: ReadingQuantity,
  taken: readonly { reading: Reading; at: [number, number]; valueColumn: ValueColumn }[],
  columns: readonly Column[],
  valueColumns: readonly ValueColumn[],
  sheet: Sheet,
  asker: Asker,
): 1 | -1 {
  const readings = taken.map(({ reading }) => reading);
  // Of two figures at front and rear the sign was asked already.
  const positive = taken.find(({ reading, valueColumn }) => reading.value > 0 && valueColumn.rear === undefined);
  if (!positive) return 1;
  const headings = `${valueColumns.map(({ value }) => columns[value]!.heading).join(' ')} ${sheet.title}`.toLowerCase();
  const nowhereNegative = readings.every(({ value }) => value >= 0);
  const isCamber = quantity === 'camber';
  const [out, inward] = isCamber ? ['top-out', 'top-in'] : ['toe-in', 'toe-out'];
  // Headings that give the sign away need no question.
  if (isCamber ? /\+ ?(?:is |= ?)?top out/.test(headings) : /\+ ?(?:is |= ?)?toe[ -]in/.test(headings)) return 1;
  const saysReversed = isCamber
    ? /\bneg(?:ative)?\b.{0,3}\bcamber\b|\btop[ -]in\b/.test(headings) && nowhereNegative
    : /\btoe[ -]?out\b/.test(headings) && !/\btoe[ -]?in\b/.test(headings);
  const isSuspect = isCamber && readings.length > 2 && nowhereNegative && rises(readings);
  if (!saysReversed && !isSuspect) return 1;
  const [r, c] = positive.at;
  const chosen = asker.ask({
    id: 'value-sign',
    code: 'value-sign',
    cells: taken.map(({ at }) => at),
    example: sheet.texts[r]![c]!,
    choices: [
      { id: out!, value: positive.reading.value },
      { id: inward!, value: -positive.reading.value },
    ],
    likeliest: saysReversed || isSuspect ? inward! : out!,
    published: saysReversed ? inward! : out!,
  });
  return chosen === inward ? -1 : 1;
}

/**
 * Whether "total" toe, which both wheels have together, was read while both moved: asked, as one wheel alone changes all of it.
 *
 * @returns the share of it that is this wheel's
 */
export function askTotal(
  quantity: ReadingQuantity,
  columns: readonly Column[],
  valueColumns: readonly ValueColumn[],
  figures: readonly Figure[],
  sheet: Sheet,
  asker: Asker,
): 1 | 0.5 {
  const headings = `${valueColumns.map(({ value }) => columns[value]!.words).join(' ')} ${sheet.title}`;
  const at = new Set(valueColumns.map(({ value }) => value));
  const cells = figures.filter((figure) => at.has(figure.at[1]));
  if (quantity !== 'toe' || cells.length === 0 || !/\b(?:total|gesamt\w*|totale?)\b/i.test(headings)) return 1;
  const chosen = asker.ask({
    id: 'total',
    code: 'total',
    cells: cells.map((figure) => figure.at),
    example: cells[0]!.text,
    choices: [{ id: 'both' }, { id: 'one' }],
    likeliest: 'both',
  });
  return chosen === 'both' ? 0.5 : 1;
}
