import { html, type TemplateResult } from 'lit';
import { ending, FIRST, opening, soFar } from './bumpline-readings.words.js';
import type { ReadingsView } from './readings-view.js';

/** What the readings say, or what is there of them so far. */
export function renderSentence(
  app: Pick<ReadingsView, 'answer' | 'drafts' | 'over' | 'reading' | 'setup' | 'state'>,
): TemplateResult {
  const { answer, state, reading } = app;
  if (state === 'incomplete') return html`<p class="sentence">${soFar(app.setup)}</p>`;
  if (!answer) {
    return html`<p class="sentence">${state === 'problem' ? FIRST.noAnswer : html`… <small>${FIRST.waiting}</small>`}</p>`;
  }
  const bold = (stretches: ReturnType<typeof opening>) =>
    stretches.map(({ text, role }) => (role ? html`<b class=${role}>${text}</b>` : text));
  const isBad = app.drafts.problem('over') !== undefined;
  return html`<p class="sentence">
    ${bold(opening(answer))} ${app.over.render(isBad)}<span class="says">${bold(ending(answer, reading))}</span>
  </p>`;
}
