import { html, nothing, type TemplateResult } from 'lit';
import { FIRST, notYours as notYoursText, sentence } from './bumpline-compare.words.js';
import type { CompareApp } from './compare-app.js';

/** Said first where the example's parts stand beside a car that was given; empty where they do not. */
export const notYoursOf = ({ isExample, car }: CompareApp): string => (isExample ? notYoursText(car) : '');

/** The answer in one sentence, its bump edited in place; where it is about the example and not the car that was given, that first. */
export function renderSentence(app: CompareApp): TemplateResult {
  const { told, state, reading, problems, overField } = app;
  const notYours = notYoursOf(app);
  const isOld = state === 'stale' || state === 'fault';
  const isBad = problems.some(({ path }) => path === 'over');
  const words = () =>
    sentence(told!, reading).map(({ text, role }) => (role ? html`<b class=${role}>${text}</b>` : text));
  const waiting = state === 'waiting' ? html` … <small>${FIRST.waiting}</small>` : FIRST.noAnswer;
  return html`<p class="sentence">
      ${notYours ? html`<span class="not-yours">${notYours}</span>` : nothing}Over ${overField.render(isBad)} of bump<span class="says">${told ? (isOld ? FIRST.noAnswer : words()) : waiting}</span>
      ${told && isOld ? html`<span class="before">${FIRST.before}${words()}</span>` : nothing}
    </p>
    ${notYours ? html`<p class="hint make-yours">${FIRST.makeYours}</p>` : nothing}`;
}
