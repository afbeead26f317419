import { html, type TemplateResult } from 'lit';
import { renderSays, renderStretches } from '../element/says.js';
import { ending, FIRST, opening, overText, soFar } from './bumpline-readings.words.js';
import type { ReadingsView } from './readings-view.js';

/** What the readings say, or what is there of them so far. */
export function renderSentence(
  app: Pick<ReadingsView, 'answer' | 'drafts' | 'over' | 'display' | 'setup' | 'state'>,
): TemplateResult {
  const { answer, state, display } = app;
  if (state === 'incomplete') return html`<p class="sentence" part="sentence">${soFar(app.setup)}</p>`;
  if (!answer) {
    return html`<p class="sentence" part="sentence">${state === 'waiting' ? html`… <small>${FIRST.waiting}</small>` : FIRST.none}</p>`;
  }
  const before = `${FIRST.before} ${overText(answer.over, display)}`;
  const says = renderSays(app, renderStretches(ending(answer, display)), { ...FIRST, before });
  const isBad = app.drafts.problem('over') !== undefined;
  return html`<p class="sentence" part="sentence">
    ${renderStretches(opening(answer))} ${app.over.render(isBad)}${says}
  </p>`;
}
