import { html, nothing, type TemplateResult } from 'lit';
import type { Problem } from '../../core/quantity/problem.js';
import { dropText, FIRST, sentence, verb } from './bumpline-lowering.words.js';
import { ChangeField } from './change-field.js';
import { DropField } from './drop-field.js';
import type { LoweringApp } from './lowering-app.js';

/** The sentence, edited in place from either end: the drop, or the change that it makes. */
export class SentenceView {
  #app: LoweringApp;
  readonly drop: DropField;
  #change: ChangeField;

  constructor(app: LoweringApp) {
    this.#app = app;
    this.drop = new DropField(app);
    this.#change = new ChangeField(app);
  }

  /** Of what was asked for from the far end. */
  get problems(): Problem[] {
    return this.#change.problems;
  }

  /** The drop that adds so much negative camber, degrees. */
  findDrop(change: number): void {
    this.#change.find(change);
  }

  /** @param isEditable once what reads typed text has come */
  render(isEditable: boolean): TemplateResult {
    const { answer, answeredCar, car, problems, reading, state } = this.#app;
    const isBad = problems.some(({ path }) => path === 'drop');
    // The drop that is typed never stands in one sentence with an answer to another.
    const isOld = state === 'stale' || state === 'fault';
    const words =
      answer &&
      sentence(answer, answeredCar, reading).map(({ text, role }) => {
        if (!role) return text;
        return role === 'change' && isEditable && !isOld
          ? this.#change.render(text)
          : html`<b class=${role}>${text}</b>`;
      });
    const waiting = state === 'waiting' ? html` … <small>${FIRST.waiting}</small>` : nothing;
    return html`<p class="sentence">
      ${verb(car.drop)} ${this.drop.render(isBad, !isEditable)}<span class="says"
        >${words ? (isOld ? FIRST.noAnswer : words) : waiting}</span
      >
      ${
        answer && isOld
          ? html`<span class="before">${FIRST.before} ${verb(answer.drop)} ${dropText(answer.drop, reading)}${words}</span>`
          : nothing
      }
    </p>`;
  }
}
