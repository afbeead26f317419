import { type CarDocument, hasMeasured } from '../../core/document/car.js';
import { sourceKindOf } from '../../core/document/setup-in-use.js';
import type { Query } from '../../core/document/unusual.js';
import {
  type AssumableKey,
  COVERED,
  type Driveway,
  type DrivewayMeasurements,
  scaleOfMeasure,
} from '../../core/driveway/driveway.js';
import { DRIVEWAY_WHY } from '../../core/driveway/driveway-why.js';
import { explainProblem } from '../../core/quantity/explain.js';
import { explainQuery } from '../../core/quantity/explain-query.js';
import { formatNumber, formatQuantity } from '../../core/quantity/format.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { worded } from '../../core/quantity/words.js';
import { standInName } from '../car/stand-in.js';
import type { Display } from '../element/sentence.js';
import { sheetOfPath } from './car-sheets.js';
import { NAMES } from './inputs.labels.js';
import { sheetProblemText } from './sheet-problem.js';
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
    ...(caster ? [] : [NAMES.moreCaster(formatNumber(COVERED.caster, 0, language))]),
    ...(bumpSteer ? [] : [NAMES.moreBumpSteer(formatNumber(COVERED.bumpSteer, 3, language))]),
  ];
  if (missing.length === 0) return undefined;
  return NAMES.notCovered(missing);
}

const OWN_FIELDS: Record<string, { label: string; quantity?: Quantity }> = worded(() => ({
  drop: { label: NAMES.fields.drop, quantity: 'drop' },
  change: { label: NAMES.fields.change, quantity: 'camberChange' },
  readings: { label: NAMES.fields.readings },
  degree: { label: NAMES.fields.degree },
  zeroAt: { label: NAMES.fields.zeroAt, quantity: 'drop' },
}));

/** A problem in words, with the field's name as it stands on its sheet. @param open the sheet on which it is told, where it is one */
export function problemText(problem: Problem, display: Display, open?: SheetSpec): string {
  const found = sheetOfPath(problem.path);
  const other = problem.other ? sheetOfPath(problem.other)?.sheet.title : undefined;
  const own = OWN_FIELDS[problem.path];
  const asThere = !found && !own && open && sheetProblemText(open, problem, display);
  if (asThere) return asThere;
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

/** "Take the example’s value again"; of a car that is measured in the driveway nothing of the example’s is left to take. */
export const takeAgain = (car: CarDocument): string =>
  sourceKindOf(car) === 'driveway' && hasMeasured(car.given) ? NAMES.removeOptional : NAMES.takeAgain(standInName(car));

/** What keeps a point from counting. */
export function halfGiven(sheet: SheetSpec, empty: readonly number[], car: CarDocument): string {
  // Of a point's axes the letter, of a tyre's three numbers the tyre.
  const labels = [
    ...new Set(empty.map((index) => sheet.fields[index]!.label.replace(/^([xyz]),.*/, '$1').replace(/:.*/, ''))),
  ];
  if (!sheet.partly) return NAMES.halfGiven(labels, sheet.number !== undefined, standInName(car));
  if (!sheet.fields.some(({ whose }) => whose)) return NAMES.halfAlone(labels);
  return NAMES.halfCounts(labels, [...new Set(empty.map((index) => sheet.fields[index]!.whose?.(car) ?? ''))]);
}
