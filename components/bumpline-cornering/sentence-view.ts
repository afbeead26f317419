import { html, type TemplateResult } from 'lit';
import { dropText } from '../element/drop-words.js';
import { renderSays, renderStretches } from '../element/says.js';
import { say } from '../element/sentence.js';
import { dropField } from '../inputs/drop-field.js';
import { PressedField } from '../inputs/pressed-field.js';
import { SentenceField } from '../inputs/sentence-field.js';
import { FIRST, rollText, sentence, wayText } from './bumpline-cornering.words.js';
import type { CorneringView } from './cornering-view.js';

/** An arrow key's step, degrees. */
const STEP_DEG = 0.1;

type View = Omit<CorneringView, 'sentence'>;

/** The sentence, with the drop edited in place; the roll is once it is pressed. */
export class SentenceView {
  readonly #app: View;
  readonly drop: SentenceField;
  readonly roll: SentenceField;
  readonly #roll: PressedField;

  constructor(app: View) {
    this.#app = app;
    const { host, drafts } = app;
    this.drop = dropField(app, FIRST.drop, (drop) => dropText(drop, app.display));
    this.roll = new SentenceField({
      host,
      drafts,
      path: 'turn.roll',
      label: FIRST.roll,
      quantity: 'roll',
      step: STEP_DEG,
      display: () => app.display,
      value: () => app.roll,
      text: () => this.#rollText,
      // A tenth more than 0.1 is no more than 0.2.
      change: (roll) => app.set(FIRST.rollStep, { roll: Math.round(roll * 1e6) / 1e6 }, 'turn.roll'),
      cancel: () => app.model.cancelStep('turn.roll'),
      begin: () => {
        app.model.endStep();
        app.beginEdit();
      },
      end: () => app.endStep(),
    });
    this.#roll = new PressedField({ host, drafts, path: 'turn.roll', field: this.roll, edit: FIRST.rollEdit });
  }

  get #rollText(): string {
    const { unreadRoll, roll, display } = this.#app;
    return unreadRoll ?? rollText(roll, display);
  }

  render(): TemplateResult {
    const { answer, answeredCar, display, problems, car } = this.#app;
    const isBad = (...paths: string[]) => problems.some(({ path }) => paths.includes(path));
    const words = answer && renderStretches(sentence(answer, answeredCar, display));
    // Of an older answer, what it was asked with.
    const before = answer
      ? say(FIRST.before, {
          roll: rollText(answer.suspensionRoll, display),
          drop: dropText(answer.drop, display),
          way: wayText(answer.drop).trim(),
        })
      : '';
    return html`<p class="sentence">
      ${FIRST.opening}${this.#roll.render(this.#rollText, isBad('turn.roll', 'roll'))}${FIRST.ofRoll}${this.drop.render(isBad('drop'))}${wayText(car.drop)}${renderSays(this.#app, words, { ...FIRST, before })}
    </p>`;
  }
}
