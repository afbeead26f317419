import { html, nothing, type TemplateResult } from 'lit';
import { renderSays, renderStretches } from '../element/says.js';
import { show } from '../element/sentence.js';
import { SentenceField } from '../inputs/sentence-field.js';
import { FIRST, notYours as notYoursText, sentence, spoken } from './bumpline-compare.words.js';
import type { CompareView } from './compare-view.js';

type View = Omit<CompareView, 'sentence'>;

/** Said first where the example's parts stand beside a car that was given; empty where they do not. */
const notYoursOf = ({ isExample, car }: View): string => (isExample ? notYoursText(car) : '');

/** What is spoken of an answer. */
export const spokenOf = (app: View): string =>
  app.told ? `${notYoursOf(app)}${spoken(app.told, show(app.over, 'travel', app.display), app.display)}` : '';

/** The sentence with the bump in it, edited in place; where it is about the example and not the car that was given, that first. */
export class CompareSentence {
  readonly #app: View;
  readonly over: SentenceField;

  constructor(app: View) {
    this.#app = app;
    this.over = new SentenceField({
      host: app.host,
      drafts: app.drafts,
      path: 'over',
      label: FIRST.over,
      quantity: 'travel',
      display: () => app.display,
      value: () => app.over,
      // What a page wrote there and nobody could read stands there, and no other bump.
      text: () => app.unreadOver ?? show(app.over, 'travel', app.display),
      change: (over) => app.set('over', FIRST.steps.over, { over }),
      cancel: () => app.model.cancelStep('over'),
      begin: () => app.model.endStep(),
      end: () => app.endStep(),
    });
  }

  render(): TemplateResult {
    const { told, display, problems } = this.#app;
    const notYours = told ? notYoursOf(this.#app) : '';
    const isBad = problems.some(({ path }) => path === 'over');
    const [over, bump] = FIRST.spoken.split(/\{\w+\}/);
    const words = told && renderStretches(sentence(told, display));
    return html`<p class="sentence" part="sentence">
      ${notYours ? html`<span class="not-yours">${notYours}</span>` : nothing}${over}${this.over.render(isBad)}${bump}${renderSays(this.#app, words, FIRST)}
    </p>
    ${notYours ? html`<p class="hint make-yours">${FIRST.makeYours}</p>` : nothing}`;
  }
}
