import { html, noChange, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { ref } from 'lit/directives/ref.js';
import { type Curve, curveFrom } from '../../core/curve/curve.js';
import { linkProblemText } from '../../core/document/link-problem.js';
import { parseQuantity } from '../../core/quantity/parse.js';
import type { Problem } from '../../core/quantity/problem.js';
import { fromShown } from '../../core/quantity/units.js';
import { renderCautions } from '../shared/cautions.js';
import { ChartController } from '../shared/chart/chart.js';
import type { ChartModel } from '../shared/chart/model.js';
import { renderCopyLink } from '../shared/copy-link.js';
import { notesOf, renderNotes } from '../shared/notes.js';
import { renderNumbers } from '../shared/table.js';
import { renderUnitTools } from '../shared/unit-tools.js';
import { atCursor, NAMES, problemText, setAsideText, undoText } from './bumpline-readings.labels.js';
import { renderFit, renderWhy } from './fit-lists.js';
import { LateParts } from './late-parts.js';
import { renderPassKey } from './pass-key.js';
import type { ReadingsApp } from './readings-app.js';
import { renderSetups } from './setup-list.js';
import { curveChart, numbers, residualChart } from './views.js';

export { bodyStyles } from './readings-body.styles.js';

/** Everything under the sentence: what looks wrong, chart, ways in, grid, lists, cautions. */
export class ReadingsBody {
  #app: ReadingsApp;
  #late: LateParts;
  #chart: ChartController;
  #residuals: ChartController;
  #models = new Map<string, { key: unknown[]; model: ChartModel }>();
  #asRead = false;
  #curve?: Curve;
  #stopCursor: (() => void) | undefined;

  constructor(app: ReadingsApp) {
    this.#app = app;
    const { host, cursor } = app;
    app.drafts.reading = { parse: parseQuantity, live };
    this.#late = new LateParts(app);
    // `toggle` does not bubble.
    host.renderRoot.addEventListener('toggle', () => host.requestUpdate(), true);
    const rest = () => app.answer?.over ?? 0;
    this.#chart = new ChartController(host, { cursor, rest, model: () => this.#model('curve', curveChart) });
    this.#residuals = new ChartController(host, { cursor, rest, model: () => this.#model('left', residualChart) });
  }

  /** Resolves when what looks wrong in the readings has been looked for. */
  get settled(): Promise<void> {
    return this.#late.settled;
  }

  /** The same model again while nothing it shows has changed. */
  #model(name: string, make: typeof curveChart): ChartModel | undefined {
    const { answer, answeredSetup, reading } = this.#app;
    if (!answer || !answeredSetup) return undefined;
    const key = [answer, this.#asRead, JSON.stringify(reading)];
    const held = this.#models.get(name);
    if (held?.key.every((part, i) => part === key[i])) return held.model;
    const model = make(answeredSetup, answer, reading, this.#asRead);
    this.#models.set(name, { key, model });
    return model;
  }

  get notes(): Problem[] {
    return notesOf(this.#app);
  }

  render(): TemplateResult {
    const { answer, answeredSetup } = this.#app;
    return html`${this.#renderProblems()} ${this.#late.renderFindings()}
      <div class="body">
        ${
          answer && answeredSetup
            ? html`<div class="chart-place">
                ${this.#chart.render()}
                <p class="at-cursor" ${ref(this.#cursorPlaced)}></p>
                ${renderPassKey(answeredSetup, answer, this.#app.reading)}
              </div>`
            : nothing
        }
        <div class="column">
          ${this.#renderActions()} ${this.#late.renderGrid()}
          <div class="more">
            ${this.#app.isUnread ? nothing : renderSetups(this.#app)}
            ${answer && answeredSetup ? this.#renderLists() : nothing}
          </div>
        </div>
        ${renderCautions(['stands', 'springOut', 'spring', 'carried', 'bushes', 'hub'])}
      </div>`;
  }

  #renderProblems(): TemplateResult | typeof nothing {
    const { problems, fault, reading, state, model } = this.#app;
    if (state === 'fault') {
      return html`<div class="problems" id="problems" role="alert">
        <p>${NAMES.fault}</p>
        <p class="fault-text">${fault}</p>
        <button type="button" class="button" @click=${() => this.#app.ask()}>${NAMES.retry}</button>
      </div>`;
    }
    const link = model.address?.problem;
    const notes = renderNotes(this.#app);
    if (problems.length === 0 && !link) return notes;
    if (link) return html`<p class="queries" role="alert">${linkProblemText(link)}</p>${notes}`;
    return html`${notes}<div class="problems" id="problems" role="alert">
      <ul>${problems.map((problem) => html`<li>${problemText(problem, this.#app.setup, reading)}</li>`)}</ul>
    </div>`;
  }

  #renderActions(): TemplateResult {
    const { model, answer, isOwn, announcer } = this.#app;
    const { undoLabel, redoLabel } = model;
    return html`<div class="actions">
      <button type="button" class="button main type" aria-expanded=${this.#late.isGridOpen} @click=${() => this.#late.toggleGrid()}>
        ${this.#late.isGridOpen ? NAMES.closeGrid : isOwn ? NAMES.typeOn : NAMES.type}
      </button>
      <button type="button" class="button paste" @click=${() => this.#late.openPaste()}>${NAMES.paste}</button>
      ${
        undoLabel
          ? html`<button type="button" class="text-button undo" @click=${() => this.#app.step('undo')}>${undoText(undoLabel)}</button>`
          : nothing
      }
      ${
        redoLabel
          ? html`<button type="button" class="text-button redo" @click=${() => this.#app.step('redo')}>${NAMES.redo}</button>`
          : nothing
      }
      ${
        answer && answer.fit.passOffsets.length > 0
          ? html`<button type="button" class="text-button as-read" aria-pressed=${this.#asRead} @click=${() => {
              this.#asRead = !this.#asRead;
              this.#app.host.requestUpdate();
            }}>${NAMES.asRead}</button>`
          : nothing
      }
      ${renderCopyLink(model, announcer)}
    </div>`;
  }

  #renderLists(): TemplateResult {
    const { reading, announcer, cursor, answer, answeredSetup } = this.#app;
    const setup = answeredSetup!;
    const aside = setup.setAside?.length ?? 0;
    return html`${
      aside > 0
        ? html`<p class="note">${setAsideText(aside)}
            <button type="button" class="text-button" @click=${() => this.#app.editShown(NAMES.setAside, ({ setAside: _, ...rest }) => rest)}>${NAMES.takeBack}</button></p>`
        : nothing
    }
      ${this.#folded('.why', () => renderWhy(this.#app, answer!, setup))}
      ${this.#folded('.how', () => renderFit(this.#app, answer!, setup))}
      ${this.#folded('.left-over', () => html`<details class="left-over"><summary>${NAMES.residuals}</summary>${this.#residuals.render()}</details>`)}
      ${this.#folded('.numbers', () =>
        renderNumbers({
          id: 'numbers',
          caption: `${NAMES[setup.quantity]} over wheel travel, ${setup.cornerName.toLowerCase()}, ${setup.name}`,
          ...numbers(setup, answer!, reading),
          cursor,
          travelOf: ([travel]) => fromShown(Number(travel), 'length', reading.units),
          onStatus: (text) => announcer.announce(text),
        }),
      )}`;
  }

  /** A folded part is left as it is: nobody sees it, and it would cost a redraw most of its time. Unfolding renders it. */
  #folded(selector: string, content: () => TemplateResult): TemplateResult | typeof noChange {
    const details = this.#app.host.renderRoot.querySelector<HTMLDetailsElement>(selector);
    return details && !details.open ? noChange : content();
  }

  renderTools(): TemplateResult {
    return renderUnitTools(this.#app.host, () => this.#app.over.readAgain());
  }

  renderSheet(): TemplateResult | typeof nothing {
    return this.#late.renderPaste();
  }

  /** The line under the chart follows the cursor without a render of the element. */
  readonly #cursorPlaced = (place?: Element): void => {
    this.#stopCursor?.();
    this.#stopCursor = place && this.#app.cursor.subscribe((travel) => this.#showCursor(place, travel));
  };

  #showCursor(place: Element, travel: number): void {
    const { answer, reading } = this.#app;
    if (!answer || travel === answer.over) {
      place.textContent = '';
      return;
    }
    if (this.#curve?.data !== answer.fit.curve) this.#curve = curveFrom(answer.fit.curve);
    place.textContent = atCursor(travel, this.#curve, answer, reading);
  }
}
