import type { PAIR_GAUGES } from '../over-base.js';
import type { ReadingQuantity } from '../reading.js';
import type { Asker } from './ask.js';
import { unitOfCell } from './cell-units.js';
import { type Column, isLength } from './columns.js';
import { besidesPlace, PLACED, TOE } from './heading.js';
import type { Sheet } from './table-rows.js';
import type { UnderstandOptions } from './understanding.js';

/** What columns of toe are whose headings do not say it; `open` until the user does, and then they give nothing. */
export type BareColumns = (typeof PAIR_GAUGES)[number] | 'passes' | 'sets' | 'open' | undefined;

/** What is left of a heading without its units, marks and numbers. */
const nameIn = (words: string): string =>
  besidesPlace(words)
    .replace(/\b(?:mm|cm|in|inch(?:es)?|thou|mils?)\b|[^\p{L}]/giu, '')
    .trim();

/** No word over it says whether it is a place, a pass or a set; `Dial 1` says no more. */
function isBare({ role, unit, words, label }: Column, c: number, sheet: Sheet, options: UnderstandOptions): boolean {
  const said = options.columns?.[c];
  // What is said of a column once the question is answered does not take the answer back.
  const isNamedByUser = options.answers?.pairs === undefined && (said?.set || said?.pass || said?.going);
  if (role !== 'value' || said?.role || isNamedByUser) return false;
  if ((unit && !isLength(unit)) || label.summary || label.going || TOE.test(words.toLowerCase())) return false;
  const isNamed = PLACED.test(words.toLowerCase())
    ? nameIn(words).length > 1
    : /[\p{L}\d]/u.test(words.replace(UNITS, ''));
  if (isNamed) return false;
  return !sheet.rows.some((kind, r) => {
    const own = kind === 'data' ? unitOfCell(sheet.texts[r]![c]!) : undefined;
    return own !== undefined && !isLength(own);
  });
}

const UNITS = /\b(?:0?[.,]001 ?)?(?:mm|cm|in|inch(?:es)?|thou|mils?)\b/gi;

/**
 * Two columns of toe without a name may be the front and the rear of one wheel, two passes, or two sets of parts, and the figures tell
 * none of it: asked before all else. Four are taken two by two. In a published table, where nobody can be asked, they are front and
 * rear where it says how the front counts.
 */
export function askBarePairs(
  sheet: Sheet,
  columns: readonly Column[],
  quantity: ReadingQuantity,
  options: UnderstandOptions,
  asker: Asker,
): BareColumns {
  const values = columns.flatMap(({ role }, c) => (role === 'value' ? [c] : []));
  const isOther = columns.some(({ role }) => role === 'dialFront' || role === 'dialRear');
  const areBare = values.every((c) => isBare(columns[c]!, c, sheet, options));
  if (quantity !== 'toe' || isOther || values.length < 2 || values.length % 2 > 0 || !areBare) return undefined;
  const cells = sheet.rows.flatMap((kind, r) =>
    kind === 'data' ? values.flatMap((c): [number, number][] => (sheet.kinds[r]![c] === 'number' ? [[r, c]] : [])) : [],
  );
  if (cells.length === 0) return undefined;
  const chosen = asker.ask({
    id: 'pairs',
    code: 'pairs',
    cells,
    example: sheet.texts[cells[0]![0]]![cells[0]![1]]!,
    choices: [{ id: 'dials' }, { id: 'tape' }, { id: 'passes' }, { id: 'sets' }],
    ...(options.answers?.['front-sign'] !== undefined && asker.isPublished && { published: 'dials' }),
    groups: values.map((c) => ({ columns: [c] })),
  }) as BareColumns;
  if (chosen === undefined && asker.isPublished) return undefined;
  for (const [i, c] of values.entries()) {
    const column = columns[c]!;
    if (chosen === undefined) column.isOpen = true;
    else if (chosen === 'dials' || chosen === 'tape') column.role = i % 2 === 0 ? 'dialFront' : 'dialRear';
  }
  return chosen ?? 'open';
}
