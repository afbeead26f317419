import { type CarDocument, hasMeasured } from '../../core/document/car.js';
import { sourceKindOf } from '../../core/document/setup-in-use.js';
import type { Query } from '../../core/document/unusual.js';
import {
  type AssumableKey,
  COVERED,
  DRIVEWAY_WHY,
  type Driveway,
  type DrivewayMeasurements,
  scaleOfMeasure,
} from '../../core/driveway/driveway.js';
import { explainProblem } from '../../core/quantity/explain.js';
import { explainQuery } from '../../core/quantity/explain-query.js';
import { formatNumber, formatQuantity } from '../../core/quantity/format.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { standInName } from '../car/stand-in.js';
import type { Display } from '../element/sentence.js';
import { sheetOfPath } from './car-sheets.js';
import type { SheetSpec } from './sheet-spec.js';

/** What stands in for a driveway measurement that was not made, and why it may. */
export function assumedText(key: AssumableKey, taken: Driveway['taken'], { units, language }: Display): string {
  const { value, plusMinus } = taken[key];
  const [quantity, doubtOf] = QUANTITIES_OF[scaleOfMeasure(key)];
  const doubt = formatQuantity(plusMinus, doubtOf, units, { language });
  return `${formatQuantity(value, quantity, units, { language, unit: false }).text} ±\u202f${doubt.text} (${DRIVEWAY_WHY[key]})`;
}

const QUANTITIES_OF = {
  length: ['coordinate', 'plusMinusLength'],
  angle: ['lean', 'plusMinusAngle'],
  toe: ['toe', 'plusMinusToe'],
} as const;

/** Which cars an answer from the driveway does not cover, by what was not given; undefined where both were. */
export function notCovered({ caster, bumpSteer }: DrivewayMeasurements, { language }: Display): string | undefined {
  const missing = [
    ...(caster ? [] : [`more than ${formatNumber(COVERED.caster, 0, language)}° of caster`]),
    ...(bumpSteer ? [] : [`more than ${formatNumber(COVERED.bumpSteer, 3, language)}° of bump steer for each mm`]),
  ];
  if (missing.length === 0) return undefined;
  return `The ± does not cover a car with ${missing.join(' or ')} unless you enter ${missing.length > 1 ? 'them' : 'it'}.`;
}

const OWN_FIELDS: Record<string, { label: string; quantity?: Quantity }> = {
  drop: { label: 'Drop', quantity: 'drop' },
  change: { label: 'Camber change by lowering', quantity: 'camberChange' },
  readings: { label: 'Readings' },
  degree: { label: 'Degree of the curve' },
  zeroAt: { label: 'Height that the readings call zero', quantity: 'drop' },
};

/** A problem in words, with the field's name as it stands on its sheet. */
export function problemText(problem: Problem, display: Display): string {
  const found = sheetOfPath(problem.path);
  const other = problem.other ? sheetOfPath(problem.other)?.sheet.title : undefined;
  const own = OWN_FIELDS[problem.path];
  // Over a column, in a caption or behind a row's name stand units of length.
  const quantity =
    own?.quantity ?? (found ? found.field?.quantity : problem.code === 'wrong-unit' ? 'coordinate' : undefined);
  const axis = found && found.sheet.fields.length > 1 ? found.field?.label.slice(0, 1) : undefined;
  const label = own?.label ?? (found && (axis ? `${found.sheet.title}, ${axis}` : found.sheet.title));
  return explainProblem(problem, {
    label,
    otherLabel: other,
    quantity,
    unitSystem: display.units,
    language: display.language,
  });
}

/** A figure to look at again, in words. */
export function queryText(query: Query, { units, language }: Display): string {
  return explainQuery(query, { label: sheetOfPath(query.path)?.sheet.title, unitSystem: units, language });
}

export const ofRun = (corner: string, step: number, all: number): string => `${corner} · ${step} of ${all}`;

/** "Take the example’s value again"; of a car that is measured in the driveway nothing of the example’s is left to take. */
export const takeAgain = (car: CarDocument): string =>
  sourceKindOf(car) === 'driveway' && hasMeasured(car.given)
    ? NAMES.removeOptional
    : `Take ${standInName(car)} value again`;

/** What keeps a point from counting. */
export function halfGiven(sheet: SheetSpec, empty: readonly number[], car: CarDocument): string {
  // Of a point's axes the letter, of a tyre's three numbers the tyre.
  const labels = [
    ...new Set(empty.map((index) => sheet.fields[index]!.label.replace(/^([xyz]),.*/, '$1').replace(/:.*/, ''))),
  ];
  const names = labels.join(' and ');
  const isOne = labels.length === 1;
  if (sheet.partly) {
    const whose = new Set(empty.map((index) => sheet.fields[index]!.whose?.(car)));
    return `${names} ${isOne ? 'is' : 'are'} missing: what stands there in italics (${[...whose].join(', ')}) counts until you give ${isOne ? 'it' : 'them'}. Press again to go on without.`;
  }
  return `${names} ${isOne ? 'is' : 'are'} missing: until then ${sheet.number ? 'this point stays' : 'the rest does not count and all of it stays'} ${standInName(car)}. Press again to go on without.`;
}

/** Texts of every sheet. */
export const NAMES = {
  back: 'Back',
  next: 'Next',
  done: 'Done',
  removeOptional: 'Leave it out',
  clear: 'Clear',
  howSure: 'How sure?',
  whileMeasuring: 'While you measure',
  orFigure: 'or ±',
  turnSign: 'change the sign',
  numbers: 'Numbers this rests on',
} as const;
