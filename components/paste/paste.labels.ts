import type { Quantity } from '../../core/quantity/quantities.js';
import type {
  CellUnit,
  ColumnRole,
  SheetCell,
  SheetColumn,
  Understanding,
} from '../../core/readings/table/understanding.js';
import { columnName } from '../element/left-out.js';

export const NAMES = {
  title: 'Paste or type readings',
  howTo:
    'Copy the cells from your spreadsheet, headings and all, and paste them here; or type a height and its angle on each line. A file will do too: .csv, .tsv or .txt.',
  sample: 'A sheet may look like this (invented):',
  sampleHeads: ['Travel mm', 'Stock 1', 'Stock 2', 'Lower joint'],
  sampleLine: 'Or pairs in a line:',
  text: 'Readings',
  file: 'Choose a file',
  empty: 'Clear',
  before: 'Back to the text before',
  waiting: 'Reading the sheet.',
  unfetched: 'What reads the sheet could not be fetched. Your text is kept. Check the connection and try again.',
  retry: 'Try again',
  fault: 'Reading the sheet failed. This is our fault, not yours; your text is kept.',
  noFile: 'The file could not be opened. Copy its cells and paste them instead.',
  questions: 'Please say',
  assumed: 'assumed',
  sayZero: 'First say which height is zero',
  set: 'Set',
  other: 'other',
  untilSaid: 'Not answered, so assumed:',
  length: 'The length',
  leaveOut: 'Leave it out',
  asWas: 'As it was pasted',
  notRead: 'Cannot be read',
  correct: 'Correct',
  asPasted: 'Your sheet, and what each cell becomes',
  row: 'Row',
  change: 'change',
  turned: 'In your text the heights stand along a line; here the sheet is turned, so that they stand in a column.',
  close: 'Close',
  replace: 'Replace them',
  add: 'Add as further passes',
  beside: 'Keep them, and add these as another set of parts',
  besideMany: 'Keep them, and add these sets beside them',
  back: 'Back',
  holds: 'It holds',
  unit: 'Figures without a unit are in',
  parts: 'Set of parts',
  pass: 'Pass',
  going: 'Wheel going',
  notSaid: 'not said',
  columnDone: 'Done',
  columnReset: 'As the sheet says',
  readAs: 'Read it as',
  mended: 'corrected',
  heading: 'heading',
  gap: 'gap',
  unread: 'cannot be read',
  asked: 'see the question',
  replaceLabel: 'Replace readings by a pasted sheet',
  addLabel: 'Add passes from a pasted sheet',
  takeLabel: 'Take readings from a pasted sheet',
} as const;
export const SPACE = '\u202f';

export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;
const SIDE = { up: 'up ↑', down: 'down ↓' } as const;
export const goingText = (going: 'up' | 'down'): string => SIDE[going];
const UNITS: Record<CellUnit, string> = { mm: 'mm', cm: 'cm', in: 'in', degrees: '°', arcminutes: '′' };
export const unitText = (unit: CellUnit): string => UNITS[unit];

export const unitName = (unit: CellUnit): string =>
  unit === 'degrees' ? 'degrees' : unit === 'arcminutes' ? 'arc minutes' : unit;

export function roleName(role: ColumnRole, { quantity }: Pick<Understanding, 'quantity'>): string {
  const names: Record<ColumnRole, string> = {
    travel: 'Travel',
    height: 'Hub to arch',
    value: quantity === 'toe' ? 'Toe' : 'Camber',
    pass: 'Set or pass',
    going: 'Up or down',
    body: 'Body reference',
    dialFront: 'Front dial',
    dialRear: 'Rear dial',
    derived: 'Worked out',
    other: 'Not used',
  };
  return names[role];
}

/** B7 */
export const cellName = (row: number, column: number): string => columnName(column) + (row + 1);

/** What a column's figures measure; undefined for words. */
export function quantityOf(
  { role }: Pick<SheetColumn, 'role'>,
  { quantity }: Pick<Understanding, 'quantity'>,
): Quantity | undefined {
  if (role === 'value') return quantity;
  if (role === 'travel') return 'travel';
  const isWords = role === 'pass' || role === 'going' || role === 'other' || role === 'derived';
  return isWords ? undefined : 'coordinate';
}

/** A column's unit, set of parts, pass and direction, under its role: "°, Stock, Pass 1, up ↑". */
export const columnNote = ({ role, unit, set, pass, going }: SheetColumn): string =>
  role === 'other' || role === 'derived'
    ? ''
    : [unit && unitText(unit), set, pass, going && goingText(going)].filter((part) => part).join(', ');

/** Whether a cell's figure became part of a reading; a line that only names a pass has none. */
export const isTaken = ({ state, reading, value }: SheetCell): boolean =>
  reading !== undefined && value !== undefined && (state === 'read' || state === 'asked');

/** Why a cell that was seen counts for nothing. */
export const WHY: Record<NonNullable<SheetCell['why']>, string> = {
  'other-column': 'column not used',
  'no-height': 'no height',
  'no-value': 'no figure beside it',
  'not-a-reading': 'not a reading',
  derived: 'worked out, left out',
};

/** Cells by name, the first few of many: "B4, B5, B6 and 9 more". */
export function cellsText(cells: readonly (readonly [number, number])[]): string {
  const names = cells.slice(0, 3).map(([row, column]) => cellName(row, column));
  const more = cells.length - names.length;
  return more > 0 ? `${names.join(', ')} and ${more} more` : names.join(', ');
}

export const columnTitle = (index: number, { heading }: SheetColumn): string =>
  `Column ${columnName(index)}${heading ? `: ${heading}` : ''}`;

export const notText = (name: string): string =>
  `“${name}” is no text file. Save the sheet as CSV in your spreadsheet, or copy its cells and paste them.`;

export const moreRows = (rest: number, step: number, all: number): string =>
  rest <= step ? `Show all ${all} rows` : `Show ${step} more of ${all} rows`;
export const rowsShown = (count: number, all: number): string => `Rows 1 to ${count} of ${all} are shown.`;
export const pastedAs = (name: string, text: string): string => `${name} was pasted as “${text}”`;
