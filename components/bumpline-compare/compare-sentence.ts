import { html, nothing, type TemplateResult } from 'lit';
import { show } from '../shared/sentence.js';
import { SentenceField } from '../shared/sentence-field.js';
import { FIRST, sentence } from './bumpline-compare.words.js';
import type { CompareApp } from './compare-app.js';

/** The sentence with the bump in it, edited in place. */
export class CompareSentence {
  readonly #app: CompareApp;
  readonly over: SentenceField;

  constructor(app: CompareApp) {
    this.#app = app;
    this.over = new SentenceField({
      host: app.host,
      drafts: app.drafts,
      path: 'over',
      label: FIRST.over,
      quantity: 'travel',
      reader: () => app.reading,
      value: () => app.over,
      // What a page wrote there and nobody could read stands there, and no other bump.
      text: () => app.unreadOver ?? show(app.over, 'travel', app.reading),
      change: (over) => app.change('over', 'bump', { over }),
      cancel: () => app.model.cancelStep('over'),
      begin: () => app.model.endStep(),
      end: () => app.endStep(),
    });
  }

  render(): TemplateResult {
    const { told, state, reading, problems } = this.#app;
    const isOld = state === 'stale' || state === 'fault';
    const isBad = problems.some(({ path }) => path === 'over');
    const words = () =>
      sentence(told!, reading).map(({ text, role }) => (role ? html`<b class=${role}>${text}</b>` : text));
    const waiting = state === 'waiting' ? html` … <small>${FIRST.waiting}</small>` : FIRST.noAnswer;
    return html`<p class="sentence">
      Over ${this.over.render(isBad)} of bump<span class="says">${told ? (isOld ? FIRST.noAnswer : words()) : waiting}</span>
      ${told && isOld ? html`<span class="before">${FIRST.before}${words()}</span>` : nothing}
    </p>`;
  }
}
