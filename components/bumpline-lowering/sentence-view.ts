import { html, nothing, type TemplateResult } from 'lit';
import type { Problem } from '../../core/quantity/problem.js';
import { SentenceField } from '../shared/sentence-field.js';
import { dropText, FIRST, sentence, verb } from './bumpline-lowering.words.js';
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
    const { host, drafts } = app;
    this.drop = new SentenceField({
      host,
      drafts,
      path: 'drop',
      label: FIRST.drop,
      quantity: 'drop',
      reader: () => app.reading,
      value: () => app.car.drop,
      // What a page wrote there and nobody could read stands there, and no other car's drop.
      text: () => app.unreadDrop ?? dropText(app.car.drop, app.reading),
      change: (drop) => app.changeDrop(drop),
      cancel: () => app.model.cancelStep('drop'),
      begin: () => {
        // What came by slider or arrow keys before is a step of its own.
        app.model.endStep();
        app.beginEdit();
      },
      end: () => app.endStep(),
    });
  }

  /** Of what was asked for from the far end. */
  get problems(): Problem[] {
    return this.change?.problems ?? [];
  }

  render(): TemplateResult {
    const { answer, answeredCar, car, problems, reading, state } = this.#app;
    const isBad = problems.some(({ path }) => path === 'drop');
    // The drop that is typed never stands in one sentence with an answer to another.
    const isOld = state === 'stale' || state === 'fault';
    const words =
      answer &&
      sentence(answer, answeredCar, reading).map(({ text, role }) => {
        if (!role) return text;
        return role === 'change' && this.change && !isOld
          ? this.change.render(text)
          : html`<b class=${role}>${text}</b>`;
      });
    const waiting = state === 'waiting' ? html` … <small>${FIRST.waiting}</small>` : nothing;
    return html`<p class="sentence">
      ${verb(car.drop)} ${this.drop.render(isBad)}<span class="says"
        >${words ? (isOld ? FIRST.noAnswer : words) : state === 'problem' ? FIRST.noAnswer : waiting}</span
      >
      ${
        answer && isOld
          ? html`<span class="before">${FIRST.before} ${verb(answer.drop)} ${dropText(answer.drop, reading)}${words}</span>`
          : nothing
      }
    </p>`;
  }
}
