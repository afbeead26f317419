import { html, type TemplateResult } from 'lit';
import { dropText } from '../element/drop-words.js';
import { renderSays, renderStretches } from '../element/says.js';
import { lower, say } from '../element/sentence.js';
import { dropField } from '../inputs/drop-field.js';
import type { SentenceField } from '../inputs/sentence-field.js';
import { FIRST, sentence, verb } from './bumpline-geometry.words.js';
import type { GeometryView } from './geometry-view.js';

type View = Omit<GeometryView, 'sentence'>;

/** The sentence, with the drop edited in place. */
export class SentenceView {
  readonly #app: View;
  readonly drop: SentenceField;

  constructor(app: View) {
    this.#app = app;
    this.drop = dropField(app, FIRST.drop, (drop) => dropText(drop, app.display));
  }

  render(): TemplateResult {
    const app = this.#app;
    return html`<p class="sentence" part="sentence">
      ${verb(app.car.drop)} ${this.drop.render(app.problems.some(({ path }) => path === 'drop'))}${renderSays(app, this.#words, { ...FIRST, before: this.#before })}
    </p>`;
  }

  get #words(): unknown {
    const { answer, answeredCar, display } = this.#app;
    return answer && renderStretches(sentence(answer, answeredCar, display));
  }

  /** Of an older answer, what it was asked with. */
  get #before(): string {
    const { answer, display } = this.#app;
    if (!answer) return '';
    return say(FIRST.before, { verb: lower(verb(answer.drop)), drop: dropText(answer.drop, display) });
  }
}
