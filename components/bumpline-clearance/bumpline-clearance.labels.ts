import type { ChangeId, JustClear } from '../../core/answers/just-clear.js';
import { explainProblem } from '../../core/quantity/explain.js';
import { formatNumber } from '../../core/quantity/format.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { type Reader, show } from '../shared/sentence.js';
import type { SheetField, SheetSpec } from '../shared/sheet/sheet-spec.js';

export const NAMES = {
  section: 'Section through tyre and',
  side: 'The wheel in its arch seen from outside, with',
  placesSeen: 'places that were measured; press one for its section.',
  above: 'above ride height',
  gap: 'gap',
  inboard: '← inboard',
  outboard: 'outboard →',
  front: 'front of car',
  smallest: 'smallest gap',
  cautions: 'Cautions about wheels and tyres',
  dashed: 'Dashed: the wheel that was on.',
  slider: 'Wheels further out than before',
  asBefore: 'as before',
  justClears: 'just clears',
  chartX: 'Wheel travel',
  chartY: 'Gap',
  old: 'before',
  needed: 'margin',
  solid: 'solid',
  touch: 'stop',
  ride: 'ride height',
  wouldClear: 'What would just clear',
  howFar: 'How far one can still go',
  wouldNote:
    'Each changed alone, the rest as it is, until the verdict is just “clears by the numbers”: margin, allowance and ± all left.',
  farNote: 'Each changed alone until one more would no longer clear by the numbers.',
  wheels: 'Old wheel and new',
  numbers: 'Numbers this rests on',
  addPlace: 'Add a place',
  own: 'Put in my own car',
  undo: 'Undo',
  redo: 'Redo',
  correct: 'Correct it',
  fault: 'The calculation failed. This is our fault, not yours; your numbers are kept.',
  retry: 'Try again',
  steering: 'Straight ahead; full lock is being worked out.',
  tightAhead: 'Tightest straight ahead.',
  tightAt: 'Drawn as it is tightest, steered',
  aheadOnly: 'Straight ahead only: no steering is known.',
  assumedLock: 'Full lock is assumed to be',
  doubt: 'Every ± on this page is a 95 % interval.',
} as const;

const CHANGES: Record<ChangeId, (by: number, reader: Reader) => string> = {
  plane: (by, reader) =>
    `wheels ${show(Math.abs(by), 'offset', reader)} further ${by < 0 ? 'in (so much more offset, or a thinner spacer)' : 'out (a spacer, or so much less offset)'}`,
  width: (by, reader) =>
    `a tyre ${show(Math.abs(by), 'travel', reader)} ${by < 0 ? 'narrower' : 'wider'} across the sidewalls`,
  drop: (by, reader) => `${show(Math.abs(by), 'drop', reader)} ${by < 0 ? 'higher' : 'lower'}`,
  camber: (by, reader) => `${show(Math.abs(by), 'camberChange', reader)} ${by < 0 ? 'more' : 'less'} negative camber`,
};

const CHANGE_TITLES: Record<ChangeId, string> = {
  plane: 'Offset or spacer',
  width: 'Width',
  drop: 'Height',
  camber: 'Camber',
};

/** One row of "what would just clear". */
export function changeRow(
  { id, by, isIdle }: JustClear,
  clears: boolean,
  reader: Reader,
): { label: string; text: string } {
  const label = CHANGE_TITLES[id];
  if (isIdle) return { label, text: 'changes nothing: with shorter springs full bump is where the stop is' };
  if (by === undefined) return { label, text: clears ? 'no end within what was looked at' : 'alone it does not' };
  // Rounded to the side that still clears.
  return { label, text: CHANGES[id](rounded(id, by, clears), reader) };
}

/** Away from trouble: what is shown must itself clear. */
function rounded(id: ChangeId, by: number, clears: boolean): number {
  const step = id === 'camber' ? 0.01 : 0.1;
  const size = Math.abs(by) / step;
  return Math.sign(by) * (clears ? Math.floor(size) : Math.ceil(size)) * step;
}

/** Labels of fields that problems name by another path than their sheet's. */
const OWN_FIELDS: Record<string, { label: string; quantity?: Quantity }> = {
  drop: { label: 'Drop', quantity: 'drop' },
  plane: { label: 'Wheels further out', quantity: 'offset' },
  'before.size': { label: 'Size of the wheel that was on' },
  'after.size': { label: 'Size of the wheel in question' },
};

export function problemText(
  problem: Problem,
  { units, language }: Reader,
  find: (path: string) => { sheet: SheetSpec; field: SheetField | undefined } | undefined,
): string {
  const { path } = problem;
  const own = OWN_FIELDS[path];
  const found = own ? undefined : find(path);
  const label =
    own?.label ??
    (found &&
      (found.field && found.sheet.fields.length > 1
        ? `${found.sheet.title}, ${found.field.label}`
        : found.sheet.title));
  return explainProblem(problem, {
    label,
    quantity: own?.quantity ?? found?.field?.quantity,
    unitSystem: units,
    language,
  });
}

/** Of a rim that the tyre's size is not made for. */
export function rimText(
  isWide: boolean,
  isBefore: boolean,
  [low, high]: readonly [number, number],
  language: string,
): string {
  const inches = (width: number) => formatNumber(width, 1, language);
  return `The rim of the wheel ${isBefore ? 'that was on' : 'in question'} is too ${isWide ? 'wide' : 'narrow'} for its tyre, which is made for ${inches(low)} to ${inches(high)}\u202fin (from memory; the tyre maker’s table decides). The formula for the width says nothing there: measure the tyre on that rim and give its width, or check the rim’s.`;
}

/** "+0.5 %" */
export const percent = (share: number, language: string): string =>
  `${share > 0 ? '+' : ''}${formatNumber(share * 100, 1, language)}\u202f%`;
