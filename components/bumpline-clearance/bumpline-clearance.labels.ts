import { explainProblem } from '../../core/quantity/explain.js';
import { formatNumber } from '../../core/quantity/format.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import type { WheelSpec } from '../../core/wheel/wheel.js';
import type { Display } from '../element/sentence.js';
import type { SheetField, SheetSpec } from '../inputs/sheet-spec.js';

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
  dashed: 'Dashed: the old wheel.',
  slider: 'Wheels further out than the old ones',
  asBefore: 'as the old ones',
  justClears: 'just clears',
  chartX: 'Wheel travel',
  chartY: 'Gap',
  old: 'old wheel',
  needed: 'margin',
  solid: 'solid',
  touch: 'stop',
  ride: 'ride height',
  wouldClear: 'What would just clear',
  howFar: 'How far you can still go',
  wouldNote:
    'Each changed alone, the rest as it is, until the verdict is just “clears by the numbers”: margin, allowance and ± all left.',
  farNote: 'Each changed alone until one more would no longer clear by the numbers.',
  looked:
    'Looked at is what one can buy or set (common practice, no source): ET 0 to 60, at most 15 mm further in, and spacers up to 30 mm; camber 2.5° either way; tyre sizes that this rim permits, within 4 % of the old wheel’s diameter; packers up to 30 mm on the rod, until the car would stand on its stop.',
  wheels: 'Old wheel and new',
  numbers: 'Numbers this rests on',
  addPlace: 'Add a place',
  own: 'Put in my own car',
  motion: 'how the wheel moves',
  steering: 'Straight ahead; full lock is being worked out.',
  tightAhead: 'Tightest straight ahead.',
  tightAt: 'Drawn as it is tightest, steered',
  aheadOnly: 'Straight ahead only: no steering is known.',
  assumedLock: 'Full lock is assumed to be',
  doubt: 'Every ± on this page is a 95 % interval.',
} as const;

/** Labels of fields that problems name by another path than their sheet's. */
const OWN_FIELDS: Record<string, { label: string; quantity?: Quantity }> = {
  drop: { label: 'Drop', quantity: 'drop' },
  plane: { label: 'Wheels further out', quantity: 'offset' },
  'before.size': { label: 'Size of the old wheel’s tyre' },
  'after.size': { label: 'Size of the new wheel’s tyre' },
};

export function problemText(
  problem: Problem,
  { units, language }: Display,
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

/** Of a rim that the tyre's size is not made for. @param stands which of the two is not the user's own, in words */
export function rimText(
  { size, rimWidthInch }: WheelSpec,
  isWide: boolean,
  isBefore: boolean,
  [low, high]: readonly [number, number],
  stands: string,
  language: string,
): string {
  const inches = (width: number) => formatNumber(width, 1, language);
  return `The rim of the ${isBefore ? 'old' : 'new'} wheel, ${inches(rimWidthInch)}\u202fin, is too ${isWide ? 'wide' : 'narrow'} for its tyre, which is made for ${inches(low)} to ${inches(high)}\u202fin (${size}, from memory; the tyre maker’s table decides). ${stands}The formula for the width says nothing there: check the rim’s width, or measure the tyre on that rim and give its width.`;
}

/** "+0.5 %" */
export const percent = (share: number, language: string): string =>
  `${share > 0 ? '+' : ''}${formatNumber(share * 100, 1, language)}\u202f%`;
