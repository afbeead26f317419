import { html, type TemplateResult } from 'lit';
import { renderSays, renderStretches } from '../element/says.js';
import { say } from '../element/sentence.js';
import { dropField } from '../inputs/drop-field.js';
import { OverField } from '../inputs/over-field.js';
import type { SentenceField } from '../inputs/sentence-field.js';
import { FIRST, fromText, lengthText, sentence, wayText } from './bumpline-toe.words.js';
import type { ToeView } from './toe-view.js';

type View = Omit<ToeView, 'sentence'>;

/** The sentence, with the drop edited in place; the travel is once it is pressed. */
export class SentenceView {
  readonly #app: View;
  readonly drop: SentenceField;
  readonly over: SentenceField;
  readonly #over: OverField;

  constructor(app: View) {
    this.#app = app;
    this.drop = dropField(app, FIRST.drop, (drop) => lengthText(drop, app.display));
    this.#over = new OverField(app, 'toe.over', FIRST);
    this.over = this.#over.field;
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
    return html`<p class="sentence" part="sentence">
      ${FIRST.opening}${this.#over.render(isBad('toe.over') || isBad('over'))}${fromText(app.over)}${this.drop.render(isBad('drop'))}${wayText(app.car.drop)}${renderSays(app, words, { ...FIRST, before })}
    </p>`;
  }
}
