import { parseQuantity } from '../../quantity/parse.js';
import { QUANTITIES } from '../../quantity/quantities.js';
import { METRIC } from '../../quantity/units.js';
import { type Asker, numberIn } from './ask.js';
import { roughNumber } from './cell-kind.js';
import { type Column, leastOf, spanOf } from './columns.js';
import type { Sheet } from './table-rows.js';
import type { UnderstandOptions } from './understanding.js';

type At = [row: number, column: number];

const isHeight = ({ role }: Column) => role === 'travel' || role === 'height';
/** Of figures all positive: how far from zero they stand, in their own span. */
const farness = (figures: number[]) => {
  const least = leastOf(figures);
  return least > 0 ? least / Math.max(spanOf(figures), 1e-9) : 0;
};

const cellsOf = (sheet: Sheet, columns: readonly Column[]): At[] =>
  sheet.rows.flatMap((kind, r) =>
    kind === 'data'
      ? columns.flatMap((column, c): At[] => (isHeight(column) && sheet.kinds[r]![c] === 'number' ? [[r, c]] : []))
      : [],
  );

/** Travel grows in bump and stands about zero; a height from hub centre to arch shrinks in bump and stands far from it. */
export function settleHeightOrTravel(sheet: Sheet, columns: Column[], options: UnderstandOptions, asker: Asker): void {
  const open = columns.filter((column, i) => isHeight(column) && !options.columns?.[i]?.role);
  const figures = open.flatMap((column) => column.figures);
  if (figures.length === 0) return;
  const far = farness(figures);
  const [first] = open;
  let role = first!.role as 'travel' | 'height';
  // Above the floor a hub rises in bump.
  if (role === 'travel' && /\b(?:floor|ground)\b/i.test(first!.heading)) return;
  if (first!.by === 'heading' && role === 'height') {
    // The height of the wheel, up and down about zero.
    if (far === 0) role = 'travel';
  } else if (far > 1) {
    const least = leastOf(figures);
    const isSure = far > 1.5 && least >= (first!.unit === 'in' ? 8 : first!.unit === 'cm' ? 15 : 150);
    if (isSure && first!.by !== 'heading') role = 'height';
    else {
      const cells = cellsOf(sheet, columns);
      role = asker.ask({
        id: 'height-or-travel',
        code: 'height-or-travel',
        cells,
        example: sheet.texts[cells[0]![0]]![cells[0]![1]]!,
        choices: [{ id: 'travel' }, { id: 'height' }],
        likeliest: isSure || first!.by !== 'heading' ? 'height' : 'travel',
      }) as 'travel' | 'height';
    }
  }
  for (const column of open) column.role = role;
}

/** Whether figures called travel stand so far from zero that one of them must be called zero. */
export const isFarTravel = (column: Column): boolean =>
  column.role === 'travel' &&
  farness(column.figures) > 1.5 &&
  leastOf(column.figures) >= (column.unit === 'in' ? 8 : 100);

const ZERO = /\b(?:ride|static|zero|standing|settled|reference|stock)\b/i;

/**
 * Which height is called zero: asked, the likeliest being the one that the sheet calls ride height, else that in the middle.
 *
 * @param heights mm, by cell
 */
export function askZero(sheet: Sheet, heights: { at: At; mm: number }[], asker: Asker): number {
  const distinct = [...new Set(heights.map(({ mm }) => mm))].sort((a, b) => a - b);
  const middle = (distinct[0]! + distinct.at(-1)!) / 2;
  const marked = heights.find(({ at: [r] }) =>
    sheet.texts[r]!.some((text, c) => sheet.kinds[r]![c] === 'word' && ZERO.test(text)),
  );
  const named =
    /\b(?:ride height|static height|zero|reference)\b[^\d,;]{0,12}(\d[\d.,]*(?: ?(?:mm|cm|in\b|["”″]))?)/i.exec(
      sheet.title,
    );
  const parsed = named && parseQuantity(named[1]!, 'coordinate', METRIC);
  const stated =
    parsed?.ok && parsed.value >= distinct[0]! && parsed.value <= distinct.at(-1)! ? parsed.value : undefined;
  const nearest = distinct.reduce((best, mm) => (Math.abs(mm - middle) < Math.abs(best - middle) ? mm : best));
  const likeliest = stated ?? marked?.mm ?? nearest;
  const example = heights.find(({ mm }) => mm === likeliest) ?? heights[0]!;
  const chosen = asker.ask({
    id: 'zero',
    code: 'zero',
    cells: heights.map(({ at }) => at),
    example: sheet.texts[example.at[0]]![example.at[1]]!,
    // No wheel moves further than that from any height it was read at.
    range: [distinct.at(-1)! + QUANTITIES.travel.min, distinct[0]! + QUANTITIES.travel.max],
    likeliest: String(likeliest),
    ...(stated === undefined && !marked && { isGuess: true }),
  });
  return numberIn(chosen) ?? likeliest;
}

const DROOP = /\b(?:droop|rebound|extension)\b/i;
const BUMP = /\b(?:bump|jounce|compression)\b/i;

/** Which side of zero words name; undefined where they name none or both. */
export function sideOf(text: string): 1 | -1 | undefined {
  const isDroop = DROOP.test(text);
  return isDroop === BUMP.test(text) ? undefined : isDroop ? -1 : 1;
}

/**
 * Whether a positive figure under "droop" is droop: over the heights, where the whole column counts the other way; or over values
 * or a block of rows beside others for bump, where heights that are nowhere negative stand for both sides.
 */
export function askBumpSign(sheet: Sheet, columns: Column[], asker: Asker): { isReversed: boolean; areSides: boolean } {
  const at = columns.findIndex(({ role }) => role === 'travel');
  const { heading = '', figures = [] } = columns[at] ?? {};
  const isSigned = /\bdroop\s*(?:is\s*)?(?:negative|[-−–]|\(-\))|\bbump\s*(?:is\s*)?(?:positive|\+)/i.test(heading);
  if (/\bbump\s*(?:is\s*)?(?:negative|[-−–](?=\W|$))|\bdroop\s*(?:is\s*)?(?:positive|\+)/i.test(heading)) {
    return { isReversed: true, areSides: false };
  }
  const isOver = sideOf(heading) === -1;
  const directionAt = columns.findIndex(({ role }) => role === 'going');
  const labels = [
    ...columns.flatMap((column) => (column.role === 'value' ? column.heading : [])),
    ...sheet.texts.flatMap((row, r) => (sheet.rows[r] === 'section' ? row[0]! : (row[directionAt] ?? []))),
  ];
  const areSides = !isOver && leastOf(figures) >= 0 && labels.some((label) => sideOf(label) === -1);
  const none = { isReversed: false, areSides: false };
  if (at < 0 || isSigned || !(isOver || areSides) || !figures.some((figure) => figure > 0)) return none;
  const cells = cellsOf(sheet, columns);
  const chosen = asker.ask({
    id: 'bump-sign',
    code: 'bump-sign',
    cells,
    example: cells.map(([r, c]) => sheet.texts[r]![c]!).find((text) => roughNumber(text) > 0)!,
    choices: [{ id: 'bump' }, { id: 'droop' }],
    likeliest: 'droop',
  });
  return chosen === 'droop' ? { isReversed: isOver, areSides } : none;
}
