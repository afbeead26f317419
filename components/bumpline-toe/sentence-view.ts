import { html, type TemplateResult } from 'lit';
import { renderSays, renderStretches } from '../element/says.js';
import { say } from '../element/sentence.js';
import { dropField } from '../inputs/drop-field.js';
import { PressedField } from '../inputs/pressed-field.js';
import { SentenceField } from '../inputs/sentence-field.js';
import { FIRST, fromText, lengthText, sentence, wayText } from './bumpline-toe.words.js';
import type { ToeView } from './toe-view.js';

type View = Omit<ToeView, 'sentence'>;

/** The sentence, with the drop edited in place; the travel is once it is pressed. */
export class SentenceView {
  readonly #app: View;
  readonly drop: SentenceField;
  readonly over: SentenceField;
  readonly #over: PressedField;

  constructor(app: View) {
    this.#app = app;
    this.drop = dropField(app, FIRST.drop, (drop) => lengthText(drop, app.display));
    this.over = new SentenceField({
      host: app.host,
      drafts: app.drafts,
      path: 'toe.over',
      label: FIRST.over,
      quantity: 'travel',
      display: () => app.display,
      value: () => app.over,
      text: () => this.#overText,
      change: (over) => app.set(FIRST.overStep, { over }, 'toe.over'),
      cancel: () => app.model.cancelStep('toe.over'),
      begin: () => {
        app.model.endStep();
        app.beginEdit();
      },
      end: () => app.endStep(),
    });
    const { host, drafts } = app;
    this.#over = new PressedField({ host, drafts, path: 'toe.over', field: this.over, edit: FIRST.overEdit });
  }

  render(): TemplateResult {
    const app = this.#app;
    const { answer, answeredCar, display, problems } = app;
    const isBad = (field: string) => problems.some(({ path }) => path === field);
    // Of an older answer, what it was asked with.
    const before = answer
      ? say(FIRST.before, {
          over: lengthText(answer.over, display),
          drop: lengthText(answer.drop, display),
          way: wayText(answer.drop).trim(),
        })
      : '';
    const words = answer && renderStretches(sentence(answer, answeredCar, display));
    return html`<p class="sentence">
      ${FIRST.opening}${this.#over.render(this.#overText, isBad('toe.over') || isBad('over'))}${fromText(app.over)}${this.drop.render(isBad('drop'))}${wayText(app.car.drop)}${renderSays(app, words, { ...FIRST, before })}
    </p>`;
  }

  get #overText(): string {
    const { unreadOver, over, display } = this.#app;
    return unreadOver ?? lengthText(over, display);
  }
}
