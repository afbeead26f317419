import type { TemplateResult } from 'lit';
import { type PartData, USUAL_PLUS_MINUS } from '../../core/linkage/parts/part-kinds.js';
import type { Problem } from '../../core/quantity/problem.js';
import { renderEntryField } from '../inputs/entry-field.js';
import type { SheetField } from '../inputs/sheet-spec.js';
import { MINUS, turnedSign } from '../inputs/turned-sign.js';
import { placeOf } from './fitted-problem.js';
import { amountIn, type PartEntry, type PartField, withField } from './part-entries.js';
import { PARTS } from './parts.labels.js';
import { changePart, type PartsEdit, partPath } from './parts-edit.js';
import { fieldProblemText, plusMinusField } from './parts-text.js';

/** A number of a part while it is typed. */
interface Typed {
  /** In drafts; and the element's id. */
  path: string;
  field: PartField;
  label: string;
  set(data: PartData, value: number): PartData;
  /** An emptied field: what stands there by itself. */
  clear?(data: PartData): PartData;
}

/** One amount of a part. */
export function renderPartField(
  edit: PartsEdit,
  data: PartData,
  at: number,
  { key }: PartEntry,
  field: PartField,
): TemplateResult {
  const label = PARTS.changed(PARTS.kinds[key].short);
  const typed = {
    path: partPath(edit, at, field.path),
    field,
    label,
    set: (part: PartData, value: number) => withField(part, field, value),
  };
  return renderNumber(edit, at, typed, { value: amountIn(data, field), standIn: undefined, signed: true });
}

/** How far its amounts can be trusted: what is usual stands there until somebody says otherwise. */
export function renderPlusMinus(
  edit: PartsEdit,
  data: PartData,
  at: number,
  { key, isAngle }: PartEntry,
): TemplateResult {
  const field = plusMinusField(isAngle);
  const without = ({ plusMinus: _, ...rest }: PartData): PartData => rest as PartData;
  const usual = USUAL_PLUS_MINUS[isAngle ? 'degrees' : 'mm'];
  const typed: Typed = {
    path: partPath(edit, at, field.path),
    field,
    label: PARTS.trusted(PARTS.kinds[key].short),
    set: (part, plusMinus) => (plusMinus === usual ? without(part) : { ...part, plusMinus }),
    clear: without,
  };
  return renderNumber(edit, at, typed, { value: data.plusMinus, standIn: usual, signed: false });
}

function renderNumber(
  edit: PartsEdit,
  at: number,
  typed: Typed,
  shown: { value: number | undefined; standIn: number | undefined; signed: boolean },
): TemplateResult {
  const { drafts, display, problems } = edit;
  const { path, field } = typed;
  const ofCore = problems.find((problem) => {
    const place = placeOf(problem);
    return place?.at === at && place.path === field.path;
  });
  const spec: SheetField = { path, label: field.label, quantity: field.quantity, signed: shown.signed };
  return renderEntryField(spec, {
    id: path,
    value: shown.value,
    standIn: shown.standIn,
    takesText: false,
    whose: undefined,
    text: drafts.text(path),
    problem: drafts.problem(path) ?? ofCore,
    display,
    describeProblem: (problem: Problem) =>
      fieldProblemText(problem, problem === ofCore ? field : { ...field, sense: 1 }, display),
    onType: (text) => type(edit, at, typed, text),
    onLeave: () => leave(edit, at, typed),
    onTurnSign: () => turnSign(edit, at, typed),
    onChoose: (choice) => {
      drafts.drop(path);
      changePart(edit, at, typed.label, (data) => typed.set(data, choice), path);
      edit.end();
    },
  });
}

function type(edit: PartsEdit, at: number, { path, field, label, set }: Typed, text: string): void {
  const { drafts, display, host } = edit;
  if (drafts.text(path) === undefined) edit.begin();
  const value = drafts.type(path, text, field.quantity, display.units);
  if (value !== undefined) changePart(edit, at, label, (data) => set(data, value), path);
  // Half of what is being typed was a number as well; it was not meant.
  else edit.cancel(path);
  host.requestUpdate();
}

/** An emptied field goes back to what stood there. */
function leave(edit: PartsEdit, at: number, { path, field, label, clear }: Typed): void {
  const { drafts, display } = edit;
  const text = drafts.text(path);
  if (text === undefined) return;
  if (text.trim() === '') {
    drafts.drop(path);
    if (clear) changePart(edit, at, label, clear, path);
  } else drafts.leave(path, field.quantity, display.units);
  edit.end();
}

function turnSign(edit: PartsEdit, at: number, typed: Typed): void {
  const { drafts, display, host } = edit;
  const input = host.renderRoot.querySelector<HTMLInputElement>(`[id="${typed.path}"]`);
  if (!input) return;
  const isValue = drafts.text(typed.path) === undefined;
  const turned = turnedSign(input.value, isValue, typed.field.quantity, display.units);
  type(edit, at, typed, turned);
  // An alone minus waits for its digits.
  if (turned !== MINUS) leave(edit, at, typed);
  void host.updateComplete.then(() => {
    input.focus();
    input.setSelectionRange(input.value.length, input.value.length);
  });
}
