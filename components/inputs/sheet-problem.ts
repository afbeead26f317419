import { explainProblem } from '../../core/quantity/explain.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import type { Display } from '../element/sentence.js';
import { NAMES } from './inputs.labels.js';
import { type SheetSpec, scaleOf } from './sheet-spec.js';

const DOUBT_OF = { length: 'plusMinusLength', angle: 'plusMinusAngle', toe: 'plusMinusToe' } as const;

/** What a sheet calls a path: by its title, or by its field's name where it has several; undefined of what is not on it. */
function namedOn(sheet: SheetSpec, path: string): { label: string; quantity: Quantity | undefined } | undefined {
  const { key, title, fields } = sheet;
  if (path === `plusMinus.${key}`) return { label: NAMES.sureOf(title), quantity: DOUBT_OF[scaleOf(sheet)] };
  const field = fields.find((one) => one.path === path) ?? (path === key ? fields[0] : undefined);
  return field && { label: fields.length > 1 ? field.label : title, quantity: field.quantity };
}

/** A problem of one of a sheet's fields, in the words that stand on the sheet; undefined of any other. */
export function sheetProblemText(
  sheet: SheetSpec,
  problem: Problem,
  { units: unitSystem, language }: Display,
): string | undefined {
  const named = namedOn(sheet, problem.path);
  if (!named) return undefined;
  const otherLabel = problem.other === undefined ? undefined : namedOn(sheet, problem.other)?.label;
  return explainProblem(problem, { ...named, otherLabel, unitSystem, language });
}
