import { html, nothing, type TemplateResult } from 'lit';
import { type ShimRequest, shimFromToe } from '../../core/answers/shim.js';
import { explainProblem } from '../../core/quantity/explain.js';
import { InputError } from '../../core/quantity/problem.js';
import { effectiveDof, standardUncertainty } from '../../core/uncertainty/combine.js';
import { show } from '../element/sentence.js';
import { renderInputRow } from '../inputs/input-row.js';
import { knownArm } from '../inputs/known-arm.js';
import { HOW_SURE } from '../inputs/sheet-spec.js';
import { NAMES } from './bumpline-toe.labels.js';
import { amountText } from './cure.words.js';
import { firstUnknown, ROD_SHEETS } from './toe-kit.js';
import type { ToeView } from './toe-view.js';

const { shim: WORDS } = NAMES;

/** As well as a tape reads a rod between two joints, mm. */
const TAPE_MM = HOW_SURE.length[1].plusMinus;

/** The shim that readings of toe alone tell, once the rod, its steering arm and its side are known. */
export function renderShim(view: ToeView, onSelect: (key: string) => void): TemplateResult {
  const { car, display } = view;
  const missing = firstUnknown(car);
  return html`<section class="cure" aria-label=${WORDS.title}>
    <p><b>${WORDS.title}</b></p>
    <div role="status">${found(view)}</div>
    ${missing ? html`<button type="button" class="button main enter-rod" @click=${() => onSelect(missing.key)}>${WORDS.enter(missing.title)}</button>` : nothing}
    <ul class="rod">${ROD_SHEETS.map((sheet) => renderInputRow(sheet, { car, display, standIn: sheet.standIn?.(car), onSelect }))}</ul>
  </section>`;
}

function found({ answer, answeredCar, display }: ToeView): TemplateResult | typeof nothing {
  const { rodLength, lever, rack } = knownArm(answeredCar);
  if (!answer) return nothing;
  if (rodLength === undefined || lever === undefined || rack === undefined) return html`<p>${WORDS.needs}</p>`;
  const { curve, drop, rate } = answer;
  if (Math.abs(rate.value) <= (rate.plusMinus ?? 0)) return html`<p>${WORDS.flat}</p>`;
  const slope = curve.slopeEstimate(drop);
  const dof = effectiveDof(slope, curve.data.sources);
  const asked: ShimRequest = {
    rate: { value: rate.value, standardUncertainty: standardUncertainty(slope), ...(dof > 0 && { dof }) },
    rodLength: { value: rodLength, plusMinus: TAPE_MM },
    lever: { value: lever, plusMinus: TAPE_MM },
    rack,
  };
  const side = NAMES.sheets.rackSide.items[rack].short;
  const rod = WORDS.rod(show(rodLength, 'rodLength', display), show(lever, 'lever', display), side);
  try {
    const shim = shimFromToe(asked);
    return html`<p><b>${WORDS.found(amountText('outerEnd', shim.amount, display, shim.plusMinus), rod)}</b></p>
      <p class="note">${WORDS.rule}</p>`;
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return html`${error.problems.map((problem) => html`<p class="problem">${explainProblem(problem, { label: rod, language: display.language, unitSystem: display.units })}</p>`)}`;
  }
}
