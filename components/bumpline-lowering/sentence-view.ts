import { html, type TemplateResult } from 'lit';
import type { Problem } from '../../core/quantity/problem.js';
import { dropText } from '../element/drop-words.js';
import { isOld, renderSays } from '../element/says.js';
import { dropField } from '../inputs/drop-field.js';
import type { SentenceField } from '../inputs/sentence-field.js';
import { FIRST, opening, sentence, verb } from './bumpline-lowering.words.js';
import type { FarField, LoweringView } from './lowering-view.js';

type View = Omit<LoweringView, 'sentence'>;

/** The sentence, edited in place from either end: the drop, or the change that it makes. */
export class SentenceView {
  readonly #app: View;
  readonly drop: SentenceField;
  /** Its far end, which comes with the body. */
  change: FarField | undefined;

  constructor(app: View) {
    this.#app = app;
    this.drop = dropField(app, FIRST.drop, (drop) => dropText(drop, app.display));
  }

  /** Of what was asked for from the far end. */
  get problems(): Problem[] {
    return this.change?.problems ?? [];
  }

  render(): TemplateResult {
    const { answer, answeredCar, car, problems, display } = this.#app;
    const isBad = problems.some(({ path }) => path === 'drop');
    const far = isOld(this.#app) ? undefined : this.change;
    const words =
      answer &&
      sentence(answer, answeredCar, display).map(({ text, role }) =>
        role === 'change' && far ? far.render(text) : role ? html`<b class=${role}>${text}</b>` : text,
      );
    const before = answer && `${FIRST.before} ${verb(answer.drop)} ${dropText(answer.drop, display)}`;
    return html`<p class="sentence" part="sentence">
      ${opening(car.drop, car)} ${this.drop.render(isBad)}${renderSays(this.#app, words, { ...FIRST, before: before ?? '' })}
    </p>`;
  }
}
