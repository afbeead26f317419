import { html, type TemplateResult } from 'lit';
import { dropText } from '../element/drop-words.js';
import { renderSays, renderStretches } from '../element/says.js';
import { say } from '../element/sentence.js';
import { dropField } from '../inputs/drop-field.js';
import { OverField } from '../inputs/over-field.js';
import type { SentenceField } from '../inputs/sentence-field.js';
import { FIRST, fromText, lengthText, opening, sentence, wayText } from './bumpline-predict.words.js';
import type { PredictView } from './predict-view.js';

type View = Omit<PredictView, 'sentence'>;

/** The sentence, with the drop edited in place; the travel is once it is pressed. */
export class SentenceView {
  readonly drop: SentenceField;
  readonly #over: OverField;
  readonly #app: View;

  constructor(app: View) {
    this.#over = new OverField(app, 'predict.over', FIRST);
    this.drop = dropField(app, FIRST.drop, (drop) => dropText(drop, app.display));
    this.#app = app;
  }

  get over(): SentenceField {
    return this.#over.field;
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
    return html`<p class="sentence" part="sentence">
      ${opening(car, set)}${this.drop.render(isBad('drop'))}${wayText(car.drop)}${FIRST.comma}${this.#over.render(isBad('predict.over') || isBad('over'))}${fromText(app.over)}${renderSays(app, words, { ...FIRST, before })}
    </p>`;
  }
}
