import { html, nothing, type TemplateResult } from 'lit';
import { givenPointCount } from '../../core/document/car.js';
import type { PredictNeed } from '../../core/document/predict-needs.js';
import { NAMES } from './bumpline-predict.labels.js';
import type { PredictView } from './predict-view.js';

const { needs: WORDS } = NAMES;

/** What is there and what is missing, where no answer can be given. */
export function renderNeeds({ car, learnt: { needs } }: PredictView): TemplateResult {
  const row = (need: readonly PredictNeed[], text: string) => {
    const isMissing = need.some((one) => needs.includes(one));
    return html`<li class=${isMissing ? 'missing' : 'done'}><span>${text}</span> <b>${isMissing ? WORDS.missing : WORDS.done}</b></li>`;
  };
  const ofLinks = needs.includes('points') ? WORDS.points(String(givenPointCount(car))) : WORDS.links;
  return html`<section class="needs" aria-label=${WORDS.title}>
    <p class="section-title"><b>${WORDS.title}</b></p>
    <ul>
      ${row(['readings'], WORDS.readings)} ${row(['links', 'points'], ofLinks)}
    </ul>
    <p class="note">${WORDS.why}</p>
    ${car.curve ? html`<p class="note">${WORDS.curve}</p>` : nothing}
  </section>`;
}
