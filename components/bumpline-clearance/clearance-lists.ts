import { html, nothing, type TemplateResult } from 'lit';
import type { DrawnClearance } from '../../core/answers/clearance-questions.js';
import type { CarDocument } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import type { Place } from '../../core/wheel/place.js';
import type { Display } from '../element/sentence.js';
import { NAMES } from './bumpline-clearance.labels.js';
import { changeRow } from './changes.words.js';
import { doubtHint, limitsOfDriveway } from './doubt-words.js';
import { wheelRows } from './views.js';
import { notYours } from './whose-car.words.js';

/** What would make it surer, and what would make it clear. @param isNew whether they are those of what is shown */
export const renderWhatNext = (
  answer: DrawnClearance,
  isNew: boolean,
  places: readonly Place[],
  car: CarDocument,
  display: Display,
): TemplateResult =>
  html`${renderDoubt(answer, car, display)} ${renderChanges(answer, isNew, places, notYours(car).trim(), display)}`;

/** What makes most of the ± of the gap that decides; and of somebody's own six measurements, which cars it does not cover. */
function renderDoubt(answer: DrawnClearance, car: CarDocument, display: Display): TemplateResult {
  const hint = doubtHint(answer, car, display);
  const limits = isUsers(car, 'corner') ? limitsOfDriveway(car, display) : undefined;
  return html`${hint ? html`<p class="hint">${hint}</p>` : nothing}
  ${limits ? html`<p class="note limits">${limits}</p>` : nothing}`;
}

/** What would just clear, or how far one can still go. */
/** @param isNew whether they are those of what is shown @param whose whose car it is not */
export function renderChanges(
  { justClear, verdict, wheels, budget }: DrawnClearance,
  isNew: boolean,
  places: readonly Place[],
  whose: string,
  display: Display,
): TemplateResult | typeof nothing {
  if (!justClear || !verdict) return nothing;
  const clears = verdict === 'clears';
  return html`<section class="changes ${isNew ? '' : 'old'}">
    <p class="title">${clears ? NAMES.howFar : NAMES.wouldClear}${whose && html` <small>${whose}</small>`}</p>
    <dl>
      ${justClear.map((change) => {
        const { label, texts } = changeRow(change, clears, { wheels, budget, places }, display);
        return html`<div><dt>${label}</dt>${texts.map(({ main, more }) => html`<dd><b>${main}</b>${more}</dd>`)}</div>`;
      })}
    </dl>
    <p class="note">${clears ? NAMES.farNote : NAMES.wouldNote}</p>
    <p class="note">${NAMES.looked}</p>
  </section>`;
}

/** Old wheel and new, side by side. */
export function renderWheels({ wheels }: DrawnClearance, display: Display): TemplateResult {
  const { after } = wheels;
  const { wheelRows: words } = NAMES;
  const { fit, permittedRimInch, isFactorUncertain } = after.dimensions;
  return html`<details class="wheels">
    <summary>${NAMES.wheels}</summary>
    <table class="pairs">
      <thead>
        <tr><td></td><th scope="col">${words.old}</th><th scope="col">${words.new}</th><th scope="col">${words.change}</th></tr>
      </thead>
      <tbody>
        ${wheelRows(wheels, display).map(
          ({ label, before, after: is, change }) =>
            html`<tr><th scope="row">${label}</th><td>${before}</td><td>${is}</td><td>${change}</td></tr>`,
        )}
      </tbody>
    </table>
    ${fit === 'permitted' ? nothing : html`<p class="note">${words.fit(fit === 'stretched', permittedRimInch)}</p>`}
    ${isFactorUncertain ? html`<p class="note">${words.uncertain}</p>` : nothing}
    <p class="note">${words.standard}</p>
  </details>`;
}
