import { html, nothing, type TemplateResult } from 'lit';
import type { GapAt } from '../../core/answers/clearance-answer.js';
import type { DrawnClearance } from '../../core/answers/clearance-questions.js';
import type { CarDocument } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { Place } from '../../core/wheel/place.js';
import { type Display, lower, show, upper } from '../element/sentence.js';
import { NAMES } from './bumpline-clearance.labels.js';
import { placeName, verdictText } from './bumpline-clearance.words.js';
import { changeRow } from './changes.words.js';
import type { Asked } from './clearance-question.js';
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

/** "8 ± 7 mm" */
export const amountText = ({ gap, plusMinus }: GapAt, { units, language, ...display }: Display): string =>
  `${formatQuantity(Math.round(gap), 'travel', units, { language, unit: false }).text}\u00a0±\u202f${show(Math.round(plusMinus), 'travel', { units, language, ...display })}`;

/** How many of the places are listed: the rest stand in the picture from the side and in the table. */
const TIGHTEST = 3;

/** The places with the least to spare, each a button that shows it from the front. */
export function renderTightest(
  { places, allowance }: DrawnClearance,
  { places: asked, isLeft }: Pick<Asked, 'places' | 'isLeft'>,
  selected: number | undefined,
  display: Display,
  onSelect: (place: number) => void,
): TemplateResult | typeof nothing {
  const spare = ({ decisive, margin }: (typeof places)[number]) =>
    decisive.gap - decisive.plusMinus - margin - allowance;
  const order = places.map((_, i) => i).sort((a, b) => spare(places[a]!) - spare(places[b]!));
  if (order.length === 0) return nothing;
  return html`<section class="tightest">
    <p class="title">${NAMES.tightest}</p>
    <ul>
      ${order.slice(0, TIGHTEST).map((i) => {
        const { decisive, verdict } = places[i]!;
        return html`<li>
          <button type="button" class="input-row yours" aria-pressed=${i === selected} @click=${() => onSelect(i)}>
            <span class="name">${upper(placeName(asked[i]!, isLeft).replace(NAMES.article, ''))} <small class=${verdict ?? nothing}>${verdictText(places[i]!)}</small></span>
            <span class="value">${amountText(decisive, display)}</span>
          </button>
        </li>`;
      })}
    </ul>
  </section>`;
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
  const changed = { wheels, budget, places };
  // What does nothing by itself is named together: what does stands first.
  const all = justClear.map((change) => ({ ...change, ...changeRow(change, clears, changed, display) }));
  const isNone = ({ ends, isIdle, texts }: (typeof all)[number]) => !isIdle && ends.length === 0 && texts.length === 1;
  const none = all.filter(isNone).map(({ label }) => label);
  return html`<section class="changes ${isNew ? '' : 'old'}">
    <p class="title">${clears ? NAMES.howFar : NAMES.wouldClear}${whose && html` <small>${whose}</small>`}</p>
    <dl>
      ${all
        .filter((row) => !isNone(row))
        .map(
          ({ label, texts }) =>
            html`<div><dt>${label}</dt>${texts.map(({ main, more }) => html`<dd><b>${main}</b>${more}</dd>`)}</div>`,
        )}
      ${none.length > 0 ? html`<div class="none"><dt>${clears ? NAMES.alsoEndless : NAMES.notAlone}:</dt> <dd>${listed(none)}</dd></div>` : nothing}
    </dl>
    <p class="note">${clears ? NAMES.farNote : NAMES.wouldNote}</p>
  </section>`;
}

/** "offset or spacer, smaller tyre, camber." */
const listed = (names: readonly string[]): string => `${names.map(lower).join(', ')}.`;

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
