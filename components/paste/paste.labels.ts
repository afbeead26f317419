import type { Quantity } from '../../core/quantity/quantities.js';
import { words } from '../../core/quantity/words.js';
import type {
  CellUnit,
  ColumnRole,
  SheetCell,
  SheetColumn,
  Understanding,
} from '../../core/readings/table/understanding.js';
import { shownName } from '../car/shown-names.words.js';
import { columnName } from '../element/left-out.js';
import { counted } from '../element/sentence.js';

/** All English words of the sheet. */
export const NAMES = words('paste/paste', {
  title: 'Paste or type readings',
  howTo:
    'Copy the cells from your spreadsheet, headings and all, and paste them here; or type a height and its angle on each line. A file will do too: .csv, .tsv or .txt.',
  sample: 'A sheet may look like this (invented):',
  sampleHeads: ['Travel mm', 'Stock 1', 'Stock 2', 'Lower joint'],
  sampleLine: 'Or pairs in a line:',
  howToOfToe:
    'Copy the cells from your spreadsheet, headings and all, and paste them here; or type a height and what you read there on each line: two dials, two distances by tape, or an angle. A file will do too: .csv, .tsv or .txt.',
  sampleHeadsOfToe: ['Travel mm', 'Front dial mm', 'Rear dial mm'],
  sampleAsksOfToe: 'Next you are asked how far apart the two stand (the base), and which way the front one counts.',
  sampleLineOfToe: 'Or angles, as pairs in a line:',
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
  ofWhich: 'Readings of',
  assumed: 'assumed',
  sayZero: 'First say which height is zero',
  correctFirst: 'First correct what cannot be used',
  set: 'Set',
  other: 'other',
  untilSaid: 'Not answered, so assumed:',
  lengths: { base: 'The base (front to rear)', zero: 'The height that is zero', other: 'The length' },
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
  sides: { up: 'up ↑', down: 'down ↓' },
  units: { mm: 'mm', cm: 'cm', in: 'in', thou: 'thou', degrees: '°', arcminutes: '′' },
  unitNames: { mm: 'mm', cm: 'cm', in: 'in', thou: '0.001 in', degrees: 'degrees', arcminutes: 'arc minutes' },
  camber: 'Camber',
  toe: 'Toe',
  angles: { camber: 'camber', toe: 'toe' },
  roles: {
    travel: 'Travel',
    height: 'Hub to arch',
    pass: 'Set or pass',
    going: 'Up or down',
    body: 'Body reference',
    dialFront: 'At the front: dial or tape',
    dialRear: 'At the rear: dial or tape',
    derived: 'Worked out',
    other: 'Not used',
  },
  /** Why a cell that was seen counts for nothing. */
  why: {
    'other-column': 'column not used',
    'no-height': 'no height',
    'no-value': 'no figure beside it',
    'not-a-reading': 'not a reading',
    derived: 'worked out, left out',
  },
  andMore: (names: string, more: number): string => `${names} and ${more} more`,
  column: (name: string, heading: string): string => `Column ${name}${heading ? `: ${heading}` : ''}`,
  rows: (from: number, to: number): string => `rows ${from} to ${to}`,
  noText: (file: string): string =>
    `“${file}” is no text file. Save the sheet as CSV in your spreadsheet, or copy its cells and paste them.`,
  showAll: (all: number): string => `Show all ${all} rows`,
  showMore: (step: number, all: number): string => `Show ${step} more of ${all} rows`,
  rowsShown: (count: number, all: number): string => `Rows 1 to ${count} of ${all} are shown.`,
  pastedAs: (name: string, text: string): string => `${name} was pasted as “${text}”`,
  readings: (count: number): string => counted(count, 'reading'),
  inPasses: (readings: string, passes: number): string => `${readings} in ${counted(passes, 'pass', 'passes')}`,
  inSets: (readings: string, sets: number): string => `${readings} in ${sets} sets of parts`,
  sets: (each: readonly string[]): string => each.join(each.length > 2 ? ', ' : ' and '),
  summary: {
    none: 'No readings yet',
    range: (readings: string, from: string, to: string): string => `${readings}, ${from} to ${to}`,
    at: (readings: string, height: string): string => `${readings} at ${height}`,
    ofSets: (readings: string, sets: string): string => `${readings}: ${sets}`,
    again: (passes: number): string =>
      `the first height read again at the end ${passes > 1 ? `of ${passes} passes` : 'of the pass'}`,
    gaps: (count: number): string => counted(count, 'gap'),
    unread: (count: number): string => `${counted(count, 'cell')} cannot be read`,
    noHeight: (count: number): string => `${counted(count, 'cell')} left out for want of a height`,
    noValue: (count: number): string =>
      `${counted(count, 'cell')} left out for want of a figure beside ${count === 1 ? 'it' : 'them'}`,
    notReadings: (count: number): string =>
      count === 1 ? '1 line is not a reading' : `${count} lines are not readings`,
    columns: (count: number): string => `${counted(count, 'column')} ${count === 1 ? 'is' : 'are'} not used`,
    all: (parts: readonly string[]): string => `${parts.join('; ')}.`,
  },
  problems: {
    direction: (cell: string, text: string): string => `${cell}: “${text}” is no direction. Write up or down.`,
    tooMany: (count: string, most: number | undefined): string =>
      `The sheet holds ${count} readings; ${most} at most can be used. Paste a part of it.`,
    noFigures: (angle: string): string => `No figures are found. Each row needs a height and the ${angle} there.`,
    oneSided:
      'Toe over a base needs two figures on each line, one at the front and one at the rear. Press the head of the column that holds the other.',
    noTravel: 'No column is known to hold the travel or the height. Press the head of the column that does.',
    noAngle: (angle: string): string =>
      `No column is known to hold the ${angle}. Press the head of the column that does.`,
    more: (count: number): string =>
      `And ${counted(count, 'more cell')}, marked ✗ in the sheet: press one to correct it.`,
  },
  take: {
    nothing: 'Nothing to use yet',
    sets: (count: number): string => `Use these ${count} sets of parts`,
    readings: (count: number): string => `Use ${count === 1 ? 'this' : 'these'} ${counted(count, 'reading')}`,
    have: (readings: string, name: string): string => `You have ${readings} of ${name} already.`,
    tooManySets: (most: number): string =>
      `More than ${most} sets of parts cannot be kept. Remove some of yours first.`,
    tooMany: (most: number): string =>
      `With yours that is more than the ${most} readings that can be used. Replace yours, or paste fewer.`,
    taken: (readings: string, isReplaced: boolean): string =>
      `${readings} ${isReplaced ? 'taken' : 'added'} from the sheet.`,
  },
  choices: {
    dials: 'Front and rear of one wheel, by two dials',
    tape: 'Front and rear of one wheel, by tape',
    inTurn: (choice: string, passes: string): string => `${choice}: ${passes} passes, front and rear in turn`,
    manyPasses: (passes: string): string => `${passes} passes of one set`,
    sets: (number: string): string => `${number} sets of parts`,
    passes: 'Passes of one set',
    'leave-out': 'Leave it out',
    use: 'Take it as readings',
    both: 'Both: half of it is this wheel’s',
    one: 'This one alone: all of it',
    travel: 'Travel',
    height: 'Height, hub centre to arch',
    bump: 'Bump: wheel up',
    droop: 'Droop: wheel down',
    'top-in': 'Top in: negative',
    'top-out': 'Top out: positive',
    inboard: 'More: toe-in',
    outboard: 'Less: toe-out',
    outside: 'From a string outside the wheel: more at the front is toe-in',
    middle: 'From the car’s centreline, or the other wheel: more at the front is toe-out',
    'toe-in': 'Toe-in',
    'toe-out': 'Toe-out',
  },
  asks: {
    comma: (example: string): string => `${example} can be read in two ways`,
    minutes: (example: string): string => `${example}: decimals, or degrees and minutes?`,
    unit: (example: string): string => `In which unit is ${example}?`,
    heights: (column: string): string => `${column}: travel, or heights?`,
    zero: 'Which height is called zero?',
    zeroHint:
      'Hub centre to arch at stock height, on its wheels. On a car that is lowered already: its height now, plus the drop.',
    oneZero:
      'It is the same for all sets of this sheet: where other parts changed how high the car stands, paste each set by itself.',
    bump: (column: string, example: string): string => `${column}: ${example} is bump or droop?`,
    toe: (column: string, example: string): string => `${column}: ${example} is toe-in or toe-out?`,
    camber: (column: string, example: string): string => `${column}: does ${example} lean in or out at the top?`,
    pairs: (columns: string): string => `What stands in ${columns}?`,
    pairsHint: 'Nothing in the sheet says it. Until you do, the figures give no toe.',
    base: 'How far apart are the two places that were read?',
    baseHint: 'Along the plate or the rim: dial to dial, or tape to tape. Until you say it, the figures give no toe.',
    frontDial: 'The front of the wheel moves inboard: does the front dial read more, or less?',
    frontTape: 'From where were the two distances measured?',
    front: 'The front of the wheel moves inboard: does the figure at the front read more, or less?',
    frontHint: 'Until you say it, nobody knows toe-in from toe-out.',
    total: 'Total toe: did both wheels move together, or this one alone?',
    /** Several groups, some of which are a list themselves. */
    allOf: (each: readonly string[]): string =>
      `${each.slice(0, -1).join(', ')}${each.some((text) => / and /.test(text)) ? ', and ' : ' and '}${each.at(-1)}`,
    numbers: ['no', 'one', 'two', 'three', 'four', 'five', 'six'],
    sets: (number: string): string => `${number} sets of parts, or passes of one?`,
    apart: (columns: string, ask: string): string => `${columns} differ by more than their scatter allows. ${ask}`,
    notApart: (columns: string, ask: string): string => `${columns}: ${ask}`,
    partsIn: (columns: string): string => `Name of the parts in ${columns}`,
    average: (column: string, of: string): string =>
      `${column} is the average of ${of} in every row. Leave it out, or take it as readings?`,
    calledAverage: (column: string): string =>
      `${column} is called an average, but is not that of what stands beside it. Leave it out, or take it as readings?`,
  },
  assumptions: {
    zero: (length: string): string => `${length} is zero`,
    base: (length: string): string => `${length} from front to rear`,
    is: (example: string, choice: string): string => `${example} is ${choice}`,
    sets: (columns: string, choice: string): string => `${columns} are ${choice}`,
    average: (column: string, isUsed: boolean): string => `column ${column} is ${isUsed ? 'read' : 'left out'}`,
    total: (isBoth: boolean): string => `total toe is ${isBoth ? 'of both wheels' : 'this wheel’s'}`,
    column: (column: string, example: string, choice: string): string => `column ${column} ${example} is ${choice}`,
    all: (assumed: string, more: number): string => `${assumed}${more > 0 ? `; and ${more} more, above` : ''}.`,
  },
});
export const SPACE = '\u202f';

export const goingText = (going: 'up' | 'down'): string => NAMES.sides[going];
export const unitText = (unit: CellUnit): string => NAMES.units[unit];

export const unitName = (unit: CellUnit): string => NAMES.unitNames[unit];

export const roleName = (role: ColumnRole, { quantity }: Pick<Understanding, 'quantity'>): string =>
  role === 'value' ? NAMES[quantity === 'toe' ? 'toe' : 'camber'] : NAMES.roles[role];

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
    : [unit && unitText(unit), set, pass && shownName(pass), going && goingText(going)]
        .filter((part) => part)
        .join(', ');

/** Whether a cell's figure became part of a reading; a line that only names a pass has none. */
export const isTaken = ({ state, reading, value }: SheetCell): boolean =>
  reading !== undefined && value !== undefined && (state === 'read' || state === 'asked');

/** Whether a cell would be part of a reading with a question answered. */
export const isWaiting = ({ state, reading }: SheetCell): boolean => state === 'asked' && reading === undefined;

/** Cells by name, the first few of many: "B4, B5, B6 and 9 more". */
export function cellsText(cells: readonly (readonly [number, number])[]): string {
  const names = cells.slice(0, 3).map(([row, column]) => cellName(row, column));
  const more = cells.length - names.length;
  return more > 0 ? NAMES.andMore(names.join(', '), more) : names.join(', ');
}

export const columnTitle = (index: number, { heading }: SheetColumn): string =>
  NAMES.column(columnName(index), heading ?? '');

export const moreRows = (rest: number, step: number, all: number): string =>
  rest <= step ? NAMES.showAll(all) : NAMES.showMore(step, all);
