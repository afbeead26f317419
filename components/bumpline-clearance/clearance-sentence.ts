import { html, nothing, type TemplateResult } from 'lit';
import { withPartsText } from '../car/with-parts.js';
import { isOld, renderSays, renderStretches } from '../element/says.js';
import { show } from '../element/sentence.js';
import { SentenceField } from '../inputs/sentence-field.js';
import { FIRST, lowerWord, outWord, sentence, spoken } from './bumpline-clearance.words.js';
import type { ClearanceView } from './clearance-view.js';
import { notYours, standInWords } from './whose-car.words.js';

type View = Omit<ClearanceView, 'sentence'>;

/** The sentence with its two numbers, edited in place. */
export class ClearanceSentence {
  readonly #app: View;
  readonly drop: SentenceField;
  /** Its field stands there only while it is edited: the slider's value is the one that is typed most. */
  #isDropOpen = false;
  readonly plane: SentenceField;

  constructor(app: View) {
    this.#app = app;
    this.drop = this.#field('drop', 'drop');
    this.plane = this.#field('plane', 'offset');
  }

  #field(path: 'drop' | 'plane', quantity: 'drop' | 'offset'): SentenceField {
    const app = this.#app;
    const value = () => (path === 'drop' ? app.car.drop : app.plane);
    return new SentenceField({
      host: app.host,
      drafts: app.drafts,
      path,
      label: FIRST[path],
      quantity,
      display: () => app.display,
      value,
      text: () => show(Math.abs(value()), quantity, app.display),
      change: (to) => (path === 'drop' ? app.changeDrop(to) : app.changePlane(to)),
      cancel: () => app.model.cancelStep(path),
      begin: () => {
        // What came by slider or arrow keys before is a step of its own.
        app.model.endStep();
        app.beginEdit();
      },
      end: () => {
        if (path === 'drop' && !app.drafts.problem(path)) this.#isDropOpen = false;
        app.endStep();
      },
    });
  }

  /** @param lead whose car it is not */
  spoken(lead = notYours(this.#app.answeredCar)): string {
    const { display, plane, told, answeredCar } = this.#app;
    const { drop } = told!.answer;
    const size = (mm: number, quantity: 'drop' | 'offset') => show(Math.abs(mm), quantity, display);
    const height = `${size(drop, 'drop')} ${lowerWord(drop)}`;
    return spoken(
      told!,
      `${lead}${withPartsText(answeredCar)}`,
      height,
      `${size(plane, 'offset')} ${outWord(plane)}`,
      display,
    );
  }

  render(): TemplateResult {
    const { told, display, car, plane, problems, answeredCar, isUnread } = this.#app;
    // Drop and plane would be another car's.
    if (isUnread) return html`<p class="sentence" part="sentence" data-verdict="none">${FIRST.none}</p>`;
    const isBad = (path: string) => problems.some((problem) => problem.path === path);
    const words =
      told &&
      html`${renderStretches(sentence(told, display))}<small class="stand-ins">${standInWords(answeredCar)}</small>`;
    const lead = notYours(car);
    const [, , wheels, colon] = FIRST.lead.split(/\{\w+\}/);
    return html`<p class="sentence" part="sentence" data-verdict=${(!isOld(this.#app) && told?.answer.verdict) || 'none'}>
      ${lead ? html`<strong class="not-yours">${lead}</strong>` : nothing}${withPartsText(car)}${this.#renderDrop(isBad('drop'))} ${lowerWord(car.drop)}${wheels}${this.plane.render(isBad('plane'))}
      ${outWord(plane)}${colon}${renderSays(this.#app, words, FIRST)}
    </p>`;
  }

  #renderDrop(isBad: boolean): TemplateResult {
    const app = this.#app;
    if (this.#isDropOpen || isBad || app.drafts.text('drop') !== undefined) {
      return html`<span class="field-place" @focusout=${() => this.#closeDrop()}>${this.drop.render(isBad)}</span>`;
    }
    return html`<button
      type="button"
      class="drop"
      aria-label="${FIRST.drop}, ${show(Math.abs(app.car.drop), 'drop', app.display)}"
      ?disabled=${!app.drafts.parser}
      @click=${() => this.#openDrop()}
    >
      ${show(Math.abs(app.car.drop), 'drop', app.display)}
    </button>`;
  }

  #openDrop(): void {
    const { host } = this.#app;
    this.#isDropOpen = true;
    host.requestUpdate();
    void host.updateComplete.then(() => host.renderRoot.querySelector<HTMLInputElement>('.field-place input')?.focus());
  }

  #closeDrop(): void {
    if (this.#app.drafts.problem('drop')) return;
    this.#isDropOpen = false;
    this.#app.host.requestUpdate();
  }
}
