import { html, type TemplateResult } from 'lit';
import { dropText } from '../element/drop-words.js';
import { renderSays, renderStretches } from '../element/says.js';
import { say } from '../element/sentence.js';
import { dropField } from '../inputs/drop-field.js';
import { PressedField } from '../inputs/pressed-field.js';
import { SentenceField } from '../inputs/sentence-field.js';
import { angleText, FIRST, senseText, sentence, wayText } from './bumpline-static-camber.words.js';
import type { StaticCamberView } from './static-camber-view.js';

/** An arrow key's step, degrees. */
const STEP_DEG = 0.1;

/** The sentence, with the amount edited in place; the drop is once it is pressed. */
export class SentenceView {
  readonly #app: Omit<StaticCamberView, 'sentence'>;
  readonly by: SentenceField;
  readonly drop: SentenceField;
  readonly #drop: PressedField;

  constructor(app: Omit<StaticCamberView, 'sentence'>) {
    this.#app = app;
    this.drop = dropField(app, FIRST.drop, (drop) => dropText(drop, app.display));
    this.#drop = new PressedField({
      host: app.host,
      drafts: app.drafts,
      path: 'drop',
      field: this.drop,
      edit: FIRST.dropEdit,
    });
    this.by = new SentenceField({
      host: app.host,
      drafts: app.drafts,
      path: 'by',
      label: FIRST.by,
      quantity: 'partAngle',
      step: STEP_DEG,
      display: () => app.display,
      value: () => Math.abs(app.by),
      text: () => app.unreadBy ?? angleText(app.by, app.display),
      change: (size) => this.#ask(this.#asMeant(size)),
      cancel: () => app.model.cancelStep('by'),
      begin: () => {
        app.model.endStep();
        app.beginEdit();
      },
      end: () => app.endStep(),
    });
  }

  /** The words after the field have the sign; who types a minus means negative camber. */
  #asMeant(size: number): number {
    return size < 0 || this.#app.by <= 0 ? -Math.abs(size) : size;
  }

  #ask(by: number): void {
    const app = this.#app;
    // A tenth more than 0.1 is no more than 0.2.
    const rounded = Math.round(by * 1e6) / 1e6 + 0;
    app.set(say(FIRST.byStep, { by: angleText(app.by, app.display) }), { by: rounded }, 'by');
  }

  render(): TemplateResult {
    const app = this.#app;
    const { answer, answeredCar, display, problems, drafts } = app;
    const isBad = (field: string) => problems.some(({ path }) => path === field);
    // Of an older answer, what it was asked with.
    const before = answer
      ? say(FIRST.before, {
          by: angleText(answer.by, display),
          sense: senseText(answer.by),
          drop: dropText(answer.drop, display),
          way: wayText(answer.drop).trim(),
        })
      : '';
    const words = answer && renderStretches(sentence(answer, answeredCar, display));
    const sense = senseText(app.by);
    const turn = () => {
      app.model.endStep();
      this.#ask(-app.by);
      app.endStep();
    };
    return html`<p class="sentence" part="sentence">
      ${this.by.render(isBad('by'))} ${
        drafts.parser
          ? html`<button type="button" class="asked sense" aria-label="${sense}. ${FIRST.turnWay}" @click=${turn}>${sense}</button>`
          : html`<b class="to-ask">${sense}</b>`
      }${FIRST.camberAt}${this.#drop.render(dropText(app.car.drop, display), isBad('drop'))}${wayText(app.car.drop)}${renderSays(app, words, { ...FIRST, before })}
    </p>`;
  }
}
