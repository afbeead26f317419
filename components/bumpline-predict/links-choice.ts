import { html, nothing, type TemplateResult } from 'lit';
import { withLinksFrom } from '../../core/document/predict-in-use.js';
import { counting } from '../element/sentence.js';
import { NAMES } from './bumpline-predict.labels.js';
import { FIRST, readAsItStands } from './bumpline-predict.words.js';
import type { PredictView } from './predict-view.js';

const { links: WORDS } = NAMES;

/** Whether every other page of the car takes its links as the readings correct them. */
export function renderLinksChoice(view: PredictView): TemplateResult | typeof nothing {
  const { car, learnt } = view;
  // What nobody measured corrects nobody's links.
  if (learnt.isExample) return nothing;
  const isUsed = car.links === 'learnt';
  const use = () => {
    view.change('links', isUsed ? WORDS.backStep : WORDS.useStep, (before) =>
      withLinksFrom(before, isUsed ? 'measured' : 'learnt'),
    );
    view.endStep();
  };
  const count = counting(readAsItStands(car).readings, FIRST.reading);
  return html`<section class="links-from" aria-label=${WORDS.title}>
    <p class="note">${isUsed ? WORDS.isUsed(count) : WORDS.isNot}</p>
    <button type="button" class="button use-links" aria-pressed=${isUsed} @click=${use}>${isUsed ? WORDS.back : WORDS.use}</button>
  </section>`;
}
