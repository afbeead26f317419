import { html, nothing, type TemplateResult } from 'lit';
import { type Curve, curveOf } from '../../core/curve/curve.js';
import { withSetup, withShown } from '../../core/document/setup-edits.js';
import { fromShown } from '../../core/quantity/units.js';
import { shownName } from '../car/shown-names.words.js';
import { ChartController } from '../chart/chart.js';
import { CursorLine } from '../chart/cursor-line.js';
import type { ChartModel } from '../chart/model.js';
import { renderNumbers } from '../controls/table.js';
import { LastMade } from '../element/last-made.js';
import { renderProblems } from '../element/problems-block.js';
import { SheetBody, type ShownParts } from '../element/sheet-body.js';
import { atCursor, NAMES, problemText } from './bumpline-readings.labels.js';
import { renderFit, renderWhy } from './fit-lists.js';
import { LateParts } from './late-parts.js';
import { renderPassKey } from './pass-key.js';
import { bodyStyles } from './readings-body.styles.js';
import type { ReadingsView } from './readings-view.js';
import { renderSetups } from './setup-list.js';
import { curveChart, numbers, residualChart } from './views.js';

export const setupEdits = { withSetup, withShown };

/** Everything under the sentence: what looks wrong, chart, ways in, grid, lists. */
export class ReadingsBody extends SheetBody<ReadingsView> {
  readonly styles = bodyStyles;
  readonly #late: LateParts;
  readonly #chart: ChartController;
  readonly #residuals: ChartController;
  readonly #line: CursorLine;
  #asRead = false;
  #curve?: Curve;

  constructor(view: ReadingsView) {
    super(view);
    const { host, cursor } = view;
    this.#late = new LateParts(view);
    const rest = () => view.answer?.over ?? 0;
    this.#chart = new ChartController(host, { cursor, rest, model: this.#model(curveChart) });
    this.#residuals = new ChartController(host, { cursor, rest, model: this.#model(residualChart) });
    this.#line = new CursorLine(host, cursor, (travel) => this.#atCursor(travel));
  }

  override get pictures() {
    return [
      { kind: 'chart', of: this.#chart },
      { kind: 'chart', name: NAMES.left, of: this.#residuals },
    ] as const;
  }

  override get restsOn() {
    const { answeredSetup } = this.view;
    return { sets: answeredSetup ? [answeredSetup] : [] };
  }

  override get settled(): Promise<unknown> {
    return this.#late.settled.then(() => super.settled);
  }

  override retry(): void {
    super.retry();
    this.#late.retry();
  }

  /** The same model again while nothing it shows has changed. */
  #model(make: typeof curveChart): () => ChartModel | undefined {
    const last = new LastMade<ChartModel>();
    return () => {
      const { answer, answeredSetup, display } = this.view;
      if (!answer || !answeredSetup) return undefined;
      const key = [answer, this.#asRead, JSON.stringify(display)];
      return last.of(key, () => make(answeredSetup, answer, display, this.#asRead));
    };
  }

  protected renderProblems(): TemplateResult {
    const problems = renderProblems(this.view, {
      uses: ['setups', 'readingsOver', 'readingsDegree'],
      text: (problem) => problemText(problem, this.view.setup, this.view.display),
      fieldOf: (path) => (path === 'over' ? this.view.over : undefined),
    });
    return html`${problems} ${this.#late.renderDataWarnings()}`;
  }

  protected readonly parts: ShownParts = {
    chart: () => this.#renderChart(),
    table: () => (this.view.answeredSetup ? this.#renderNumbers(true) : nothing),
  };

  #renderChart(): TemplateResult | typeof nothing {
    const { answer, answeredSetup, display } = this.view;
    if (!answer || !answeredSetup) return nothing;
    return this.#chart.renderPlace(this.#line.render(), renderPassKey(answeredSetup, answer, display));
  }

  protected renderWhole(): TemplateResult {
    const { answer, answeredSetup } = this.view;
    return html`${this.renderProblems()}
      <div class="body">
        ${this.#renderChart()}
        <div class="column">
          ${this.#renderActions()} ${this.#late.renderGrid()}
          <div class="more">
            ${this.view.isUnread ? nothing : renderSetups(this.view)}
            ${answer && answeredSetup ? this.late(() => this.#renderLists()) : nothing}
          </div>
        </div>
      </div>`;
  }

  #renderActions(): TemplateResult {
    const { answer, isOwn } = this.view;
    return html`<div class="actions">
      <button type="button" class="button main type" aria-expanded=${this.#late.isGridOpen} @click=${() => this.#late.toggleGrid()}>
        ${this.#late.isGridOpen ? NAMES.closeGrid : isOwn ? NAMES.typeOn : NAMES.type}
      </button>
      <button type="button" class="button paste" @click=${() => this.#late.openPaste()}>${NAMES.paste}</button>
      ${
        answer && answer.fit.passOffsets.length > 0
          ? html`<button type="button" class="text-button as-read" aria-pressed=${this.#asRead} @click=${() => {
              this.#asRead = !this.#asRead;
              this.view.host.requestUpdate();
            }}>${NAMES.asRead}</button>`
          : nothing
      }
      ${this.renderHistory()}
    </div>`;
  }

  #renderLists(): TemplateResult {
    const { answer, answeredSetup } = this.view;
    const setup = answeredSetup!;
    const aside = setup.setAside?.length ?? 0;
    return html`${
      aside > 0
        ? html`<p class="note">${NAMES.setAsideCount(aside)}
            <button type="button" class="text-button" @click=${() => this.view.editShown(NAMES.setAside, ({ setAside: _, ...rest }) => rest)}>${NAMES.takeBack}</button></p>`
        : nothing
    }
      ${this.folded('.why', () => renderWhy(this.view, answer!, setup))}
      ${this.folded('.how', () => renderFit(this.view, answer!, setup))}
      ${this.folded('.left-over', () => html`<details class="left-over"><summary>${NAMES.residuals}</summary>${this.#residuals.render()}</details>`)}
      ${this.folded('.numbers', () => this.#renderNumbers())}`;
  }

  #renderNumbers(open = false): TemplateResult {
    const { display, announcer, cursor, answer, answeredSetup } = this.view;
    const setup = answeredSetup!;
    return renderNumbers({
      id: 'numbers',
      caption: NAMES.table(NAMES[setup.quantity], setup.cornerName, shownName(setup.name)),
      ...numbers(setup, answer!, display),
      cursor,
      open,
      travelOf: ([travel]) => fromShown(Number(travel), 'length', display.units),
      onStatus: (text) => announcer.announce(text),
    });
  }

  protected readAgain(): void {
    this.view.over.readAgain();
  }

  renderSheet(): TemplateResult | typeof nothing {
    return this.#late.renderPaste();
  }

  #atCursor(travel: number): string | undefined {
    const { answer, display } = this.view;
    if (!answer || travel === answer.over) return undefined;
    if (this.#curve?.data !== answer.fit.curve) this.#curve = curveOf(answer.fit.curve);
    return atCursor(travel, this.#curve, answer, display);
  }
}
