import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { ReadingsAnswer } from '../../core/answers/readings.js';
import type { Setup } from '../../core/document/setup.js';
import { renderNotIn, renderShares } from '../element/doubt-lists.js';
import { notInDoubt } from '../element/doubts.words.js';
import { renderFacts } from '../element/facts.js';
import {
  candidateRow,
  coefficientRows,
  degreeText,
  fitFacts,
  NAMES,
  rSquaredLine,
} from './bumpline-readings.labels.js';
import type { ReadingsView } from './readings-view.js';

/** What the ± of the change is made of, and what no ± covers. */
export const renderWhy = (app: Pick<ReadingsView, 'display'>, answer: ReadingsAnswer, setup: Setup): TemplateResult =>
  html`<details class="why">
    <summary>${NAMES.why}</summary>
    ${answer.contributions.length > 0 ? renderShares(answer.contributions, app.display.language) : nothing}
    ${renderNotIn(notInDoubt(answer.fit.curve, setup, app.display))}
  </details>`;

/** How the curve was fitted: the degree and its rivals, what R² says, the coefficients. */
export function renderFit(
  app: Pick<ReadingsView, 'degree' | 'display' | 'setDegree'>,
  answer: ReadingsAnswer,
  setup: Setup,
): TemplateResult {
  const { display } = app;
  const { fit } = answer;
  const choose = (event: Event) => {
    const { value } = event.target as HTMLSelectElement;
    app.setDegree(value === 'auto' ? undefined : Number(value));
  };
  return html`<details class="how">
    <summary>${NAMES.how}</summary>
    <p class="note">${rSquaredLine(answer, display)}</p>
    <label class="pick">${NAMES.degree}
      <select class="text" .value=${live(String(app.degree ?? 'auto'))} @change=${choose}>
        <option value="auto">${NAMES.byEvidence}</option>
        ${fit.candidates.map(({ degree }) => html`<option value=${degree} ?selected=${degree === app.degree}>${degree}</option>`)}
      </select>
    </label>
    <p class="note">${degreeText(fit, app.degree !== undefined)}</p>
    <div class="numbers-scroll" role="region" aria-label=${NAMES.candidates} tabindex="0">
      <table class="candidates">
        <thead><tr>${NAMES.candidateHeads.map((head) => html`<th scope="col">${head}</th>`)}</tr></thead>
        <tbody>
          ${fit.candidates.map((candidate) => {
            const [first, ...rest] = candidateRow(candidate, display);
            return html`<tr aria-current=${candidate.degree === fit.degree ? 'true' : 'false'}>
              <th scope="row">${first}${candidate.degree === fit.degree ? ` ${NAMES.taken}` : ''}</th>
              ${rest.map((cell) => html`<td>${cell}</td>`)}
            </tr>`;
          })}
        </tbody>
      </table>
    </div>
    ${renderFacts(fitFacts(answer, display))}
    <p class="note">${NAMES.coefficients}</p>
    <ul class="coefficients">${coefficientRows(fit).map((row) => html`<li>${row}</li>`)}</ul>
    <p class="note">${NAMES.rounds} ${NAMES.doubt}</p>
    ${setup.quantity === 'camber' ? html`<p class="note">${NAMES.inclination}</p>` : ''}
  </details>`;
}
