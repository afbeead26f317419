import { html, nothing, type TemplateResult } from 'lit';
import { shimFromToe } from '../../core/answers/shim.js';
import { RACK_SIDES } from '../../core/linkage/toe-adjustment.js';
import { InputError } from '../../core/quantity/problem.js';
import { effectiveDof, standardUncertainty } from '../../core/uncertainty/combine.js';
import { show } from '../element/sentence.js';
import { renderInputRow } from '../inputs/input-row.js';
import { HOW_SURE } from '../inputs/sheet-spec.js';
import { NAMES } from './bumpline-toe.labels.js';
import { amountText } from './cure.words.js';
import { ROD_SHEETS } from './toe-kit.js';
import type { ToeView } from './toe-view.js';

const { shim: WORDS } = NAMES;

/** As well as a tape reads a rod between two joints, mm. */
const TAPE_MM = HOW_SURE.length[1].plusMinus;

/** The shim that readings of toe alone tell, once the rod and its lever were measured. */
export function renderShim(view: ToeView, onSelect: (key: string) => void): TemplateResult {
  const { car, display } = view;
  const missing = ROD_SHEETS.find(({ read }) => !read(car));
  return html`<section class="cure" aria-label=${WORDS.title}>
    <p><b>${WORDS.title}</b></p>
    <div role="status">${found(view)}</div>
    ${missing ? html`<button type="button" class="button main enter-rod" @click=${() => onSelect(missing.key)}>${WORDS.enter}</button>` : nothing}
    <ul class="rod">${ROD_SHEETS.map((sheet) => renderInputRow(sheet, { car, display, standIn: undefined, onSelect }))}</ul>
  </section>`;
}

function found({ answer, answeredCar, display }: ToeView): TemplateResult | typeof nothing {
  const { rodLength, lever, rackSide = RACK_SIDES[0] } = answeredCar.toe ?? {};
  if (!answer) return nothing;
  if (rodLength === undefined || lever === undefined) return html`<p>${WORDS.needs}</p>`;
  const { curve, drop, rate } = answer;
  if (Math.abs(rate.value) <= (rate.plusMinus ?? 0)) return html`<p>${WORDS.flat}</p>`;
  const slope = curve.slopeEstimate(drop);
  const dof = effectiveDof(slope, curve.data.sources);
  try {
    const shim = shimFromToe({
      rate: { value: rate.value, standardUncertainty: standardUncertainty(slope), ...(dof > 0 && { dof }) },
      rodLength: { value: rodLength, plusMinus: TAPE_MM },
      lever: { value: lever, plusMinus: TAPE_MM },
      rack: rackSide,
    });
    const rod = WORDS.rod(show(rodLength, 'linkLength', display), show(lever, 'linkLength', display));
    return html`<p><b>${WORDS.found(amountText('outerEnd', shim.amount, display, shim.plusMinus), rod)}</b></p>
      <p class="note">${WORDS.rule}</p>`;
  } catch (error) {
    if (error instanceof InputError) return html`<p>${WORDS.needs}</p>`;
    throw error;
  }
}
