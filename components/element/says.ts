import { html, nothing, type TemplateResult } from 'lit';
import type { Stretch } from '../shared/sentence.js';
import type { SheetView } from './sheet-view.js';

export const renderStretches = (stretches: readonly Stretch[]): unknown =>
  stretches.map(({ text, role }) => (role ? html`<b class=${role}>${text}</b>` : text));

interface SaysTexts {
  waiting: string;
  noAnswer: string;
  before: string;
}

/** Whether an answer on the sheet is not of what stands in the fields. */
export const isOld = ({ state }: Pick<SheetView, 'state'>): boolean => state === 'stale' || state === 'fault';

/** What follows the fields of a sentence: the answer; else that there is none, and the last one apart, never in one sentence with what is typed. */
export function renderSays(
  view: Pick<SheetView, 'state'>,
  words: unknown,
  { waiting, noAnswer, before }: SaysTexts,
): TemplateResult {
  const isBefore = words !== undefined && isOld(view);
  const none = view.state === 'waiting' ? html` … <small>${waiting}</small>` : noAnswer;
  return html`<span class="says">${isBefore ? noAnswer : (words ?? none)}</span>
    ${isBefore ? html`<span class="before">${before}${words}</span>` : nothing}`;
}
