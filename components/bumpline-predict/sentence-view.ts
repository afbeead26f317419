import { html, type TemplateResult } from 'lit';
import { dropText } from '../element/drop-words.js';
import { renderSays, renderStretches } from '../element/says.js';
import { say } from '../element/sentence.js';
import { dropField } from '../inputs/drop-field.js';
import { PressedField } from '../inputs/pressed-field.js';
import { SentenceField } from '../inputs/sentence-field.js';
import { FIRST, fromText, lengthText, opening, sentence, wayText } from './bumpline-predict.words.js';
import type { PredictView } from './predict-view.js';

type View = Omit<PredictView, 'sentence'>;

/** The sentence, with the drop edited in place; the travel is once it is pressed. */
export class SentenceView {
  readonly #app: View;
  readonly drop: SentenceField;
  readonly over: SentenceField;
  readonly #over: PressedField;

  constructor(app: View) {
    this.#app = app;
    this.drop = dropField(app, FIRST.drop, (drop) => dropText(drop, app.display));
    this.over = new SentenceField({
      host: app.host,
      drafts: app.drafts,
      path: 'predict.over',
      label: FIRST.over,
      quantity: 'travel',
      display: () => app.display,
      value: () => app.over,
      text: () => this.#overText,
      change: (over) => app.set(FIRST.overStep, { over }, 'predict.over'),
      cancel: () => app.model.cancelStep('predict.over'),
      begin: () => {
        app.model.endStep();
        app.beginEdit();
      },
      end: () => app.endStep(),
    });
    const { host, drafts } = app;
    this.#over = new PressedField({ host, drafts, path: 'predict.over', field: this.over, edit: FIRST.overEdit });
  }

  render(): TemplateResult {
    const app = this.#app;
    const { answer, display, problems, car } = app;
    const isBad = (field: string) => problems.some(({ path }) => path === field);
    // Of an older answer, what it was asked with.
    const before = answer
      ? say(FIRST.before, {
          drop: dropText(answer.drop, display),
          way: wayText(answer.drop).trim(),
          over: lengthText(answer.over, display) + fromText(answer.over),
        })
      : '';
    const words = answer && renderStretches(sentence(answer, display));
    const set = app.sets[app.shown]?.setup.name;
    return html`<p class="sentence">
      ${opening(car, set)}${this.drop.render(isBad('drop'))}${wayText(car.drop)}${FIRST.comma}${this.#over.render(this.#overText, isBad('predict.over') || isBad('over'))}${fromText(app.over)}${renderSays(app, words, { ...FIRST, before })}
    </p>`;
  }

  get #overText(): string {
    const { unreadOver, over, display } = this.#app;
    return unreadOver ?? lengthText(over, display);
  }
}
