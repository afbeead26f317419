import { html, nothing, type TemplateResult } from 'lit';
import type { Doubted } from '../../core/answers/lowering.js';
import type { PredictMore } from '../../core/answers/predict.js';
import { type Display, show } from '../element/sentence.js';
import { NAMES } from './bumpline-predict.labels.js';
import { fromText, lengthText } from './bumpline-predict.words.js';
import type { PredictOnSheet } from './predict-view.js';

const { figures: WORDS } = NAMES;

/** What the change is made of: with the parts, as it is, by the tape alone; and the roll centre. */
export function renderFigures(answer: PredictOnSheet, more: PredictMore | undefined, display: Display): TemplateResult {
  const { quantity, over, predicted, byTape, set } = answer;
  const { stock, shifted, rollCentre, stockRollCentre } = more ?? {};
  const angle = (one: Doubted | undefined) => (one ? angleText(one) : WORDS.waiting);
  const angleText = ({ value, plusMinus }: Doubted) =>
    show(value, quantity === 'toe' ? 'toe' : 'camberChange', display, plusMinus);
  const height = (one: Doubted | undefined) =>
    one ? show(one.value, 'rollCentreHeight', display, one.plusMinus) : more ? WORDS.notKnown : WORDS.waiting;
  const row = (name: string, change: string, roll: string | undefined) =>
    html`<tr><th scope="row">${name}</th><td>${change}</td><td>${roll ?? nothing}</td></tr>`;
  return html`<div class="table-scroll" part="table" role="group" aria-label=${WORDS.title} tabindex="0"><table class="figures">
    <caption>${WORDS.title}</caption>
    <thead>
      <tr>
        <td></td>
        <th scope="col">${WORDS.change(lengthText(over, display) + fromText(over))}</th>
        <th scope="col">${WORDS.rollCentre}</th>
      </tr>
    </thead>
    <tbody>
      ${set ? row(WORDS.withSet, angle(predicted), height(rollCentre)) : nothing}
      ${row(WORDS.asItIs, angle(stock), height(stockRollCentre))} ${row(WORDS.byTape, angle(byTape), undefined)}
      ${shifted === undefined ? nothing : row(WORDS.shifted, angle({ value: shifted }), undefined)}
    </tbody>
  </table></div>`;
}
