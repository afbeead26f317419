import { html, type TemplateResult } from 'lit';
import { dropText } from '../element/drop-words.js';
import { isOld, renderSays, renderStretches } from '../element/says.js';
import { say, show } from '../element/sentence.js';
import { dropField } from '../inputs/drop-field.js';
import { PressedField } from '../inputs/pressed-field.js';
import { SentenceField } from '../inputs/sentence-field.js';
import { FIRST, lateralOf, rollsText, rollText, sentence, wayText } from './bumpline-cornering.words.js';
import type { CorneringView } from './cornering-view.js';

/** An arrow key's step, degrees; g. */
const STEP_DEG = 0.1;
const STEP_G = 0.05;

const LATERAL = 'turn.load.lateral';

/** The lateral acceleration alone is another; what else was given of the load stays. */
export const setLateral = (view: Pick<CorneringView, 'car' | 'set'>, label: string, lateral: number): void =>
  view.set(label, { load: { ...view.car.turn?.load, lateral: Math.max(0, Math.round(lateral * 1e6) / 1e6) } }, LATERAL);

type View = Omit<CorneringView, 'sentence'>;

/** The sentence, with the drop edited in place; the roll is once it is pressed. */
export class SentenceView {
  readonly #app: View;
  readonly drop: SentenceField;
  readonly roll: SentenceField;
  readonly lateral: SentenceField;
  readonly #roll: PressedField;
  readonly #lateral: PressedField;

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
      change: (roll) =>
        app.set(FIRST.rollStep, { roll: Math.round(roll * 1e6) / 1e6, rollFrom: undefined }, 'turn.roll'),
      cancel: () => app.model.cancelStep('turn.roll'),
      begin: () => {
        app.model.endStep();
        app.beginEdit();
      },
      end: () => app.endStep(),
    });
    this.lateral = new SentenceField({
      host,
      drafts,
      path: LATERAL,
      label: FIRST.lateral,
      quantity: 'lateral',
      step: STEP_G,
      display: () => app.display,
      value: () => this.#lateralNow,
      text: () => show(this.#lateralNow, 'lateral', app.display),
      change: (lateral) => setLateral(app, FIRST.lateralStep, lateral),
      cancel: () => app.model.cancelStep(LATERAL),
      begin: () => {
        app.model.endStep();
        app.beginEdit();
      },
      end: () => app.endStep(),
    });
    this.#lateral = new PressedField({ host, drafts, path: LATERAL, field: this.lateral, edit: FIRST.lateralEdit });
    this.#roll = new PressedField({ host, drafts, path: 'turn.roll', field: this.roll, edit: FIRST.rollEdit });
  }

  askRoll(): void {
    this.#roll.open();
  }

  get #lateralNow(): number {
    return this.#app.car.turn?.load?.lateral ?? 0;
  }

  get #rollText(): string {
    const { unreadRoll, roll, display } = this.#app;
    return unreadRoll ?? rollText(roll, display);
  }

  render(): TemplateResult {
    const { answer, answeredCar, display, problems, car, rollWay, solidShort } = this.#app;
    const isBad = (...paths: string[]) => problems.some(({ path }) => paths.includes(path));
    const words = answer && renderStretches(sentence(answer, answeredCar, display, solidShort));
    const lateral = answer && lateralOf(answer);
    // Of an older answer, what it was asked with.
    const before = answer
      ? say(lateral === undefined ? FIRST.before : FIRST.beforeAt, {
          ...(lateral !== undefined && { lateral: show(lateral, 'lateral', display) }),
          roll: rollText(answer.suspensionRoll, display),
          drop: dropText(answer.drop, display),
          way: wayText(answer.drop).trim(),
        })
      : '';
    const asked =
      rollWay === 'load'
        ? html`${FIRST.at}${this.#lateral.render(show(this.#lateralNow, 'lateral', display), isBad(LATERAL))}${rollsText(isOld(this.#app) ? undefined : answer, display)}`
        : html`${FIRST.opening}${this.#roll.render(this.#rollText, isBad('turn.roll', 'roll'))}${FIRST.ofRoll}`;
    return html`<p class="sentence" part="sentence">
      ${asked}${this.drop.render(isBad('drop'))}${wayText(car.drop)}${renderSays(this.#app, words, { ...FIRST, before })}
    </p>`;
  }
}
