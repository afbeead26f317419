import { html, nothing, type TemplateResult } from 'lit';
import { MOST_HEIGHTS } from '../../core/document/car.js';
import { ChartController } from '../chart/chart.js';
import type { ChartModel } from '../chart/model.js';
import { renderSlider } from '../controls/slider.js';
import { keepFocus } from '../element/keep-focus.js';
import { LastMade } from '../element/last-made.js';
import { derivedText } from '../element/left-out.js';
import { type ProblemWords, renderProblems } from '../element/problems-block.js';
import { lower, show } from '../element/sentence.js';
import { SheetBody, type ShownParts } from '../element/sheet-body.js';
import { SentenceField } from '../inputs/sentence-field.js';
import { onLinks } from '../publish/rests-on.js';
import { LABELS } from './bumpline-compare.labels.js';
import { FIRST, placeText, type Told } from './bumpline-compare.words.js';
import { renderFigureChoice } from './cell-figures.js';
import { bodyStyles } from './compare-body.styles.js';
import { renderEach, renderEven, renderLeftOut, renderPaths, renderWhy } from './compare-lists.js';
import { renderCompareTable } from './compare-table.js';
import type { CompareView } from './compare-view.js';
import { isOfParts } from './compared-sets.js';
import { DoubtfulSets } from './doubtful-sets.js';
import { OwnSets } from './own-sets.js';
import { PartCosts } from './part-costs.js';
import { problemText } from './problem-text.js';
import { reachText } from './reach-text.js';
import { RollCentres } from './roll-centres.js';
import { ToeLink } from './toe-link.js';
import { chartModel } from './views.js';
import { whatReaches } from './what-reaches.js';

const { body: NAMES, table: TABLE } = LABELS;

/** The slider's end, mm. */
const SLIDER_MM = 80;

/** Everything under the sentence. */
export class CompareBody extends SheetBody<CompareView> {
  readonly styles = bodyStyles;
  readonly #chart: ChartController;
  readonly #sets: OwnSets;
  readonly #doubtful: DoubtfulSets;
  readonly #rollCentres: RollCentres;
  readonly #costs: PartCosts;
  readonly #toeLink: ToeLink;
  readonly #charted = new LastMade<ChartModel>();
  /** The height whose field is open, and that field. */
  #edited: number | undefined;
  readonly #fields = new Map<number, SentenceField>();

  constructor(view: CompareView) {
    super(view);
    this.#sets = new OwnSets(view);
    this.#doubtful = new DoubtfulSets(view);
    this.#rollCentres = new RollCentres(view);
    this.#costs = new PartCosts(view);
    this.#toeLink = new ToeLink(view);
    this.#chart = new ChartController(view.host, {
      cursor: view.cursor,
      model: () => this.#chartModel(),
      rest: () => view.over,
    });
  }

  #chartModel(): ChartModel | undefined {
    const { answer, cells, display } = this.view;
    return (
      answer &&
      this.#charted.of([answer, JSON.stringify([cells, display])], () =>
        chartModel(answer, cells.from, cells.to, display),
      )
    );
  }

  override get pictures() {
    return [{ kind: 'chart', of: this.#chart }] as const;
  }

  override get restsOn() {
    const { host, compared, car } = this.view;
    const { rows } = compared;
    if (host.curves) return { sets: [] };
    const sets = rows.flatMap((row) => (row.setup && !isOfParts(row) ? [row.setup] : []));
    const isOfLinks = rows.some((row) => isOfParts(row) || (row.own && !car.curve));
    return isOfLinks ? onLinks(car, sets) : { sets };
  }

  /** Resolves when what looks wrong in the readings has been looked for. */
  override get settled(): Promise<unknown> {
    return Promise.all([
      this.#sets.settled,
      this.#doubtful.settled,
      this.#rollCentres.settled,
      this.#costs.settled,
      this.#toeLink.settled,
    ]).then(() => super.settled);
  }

  override retry(): void {
    super.retry();
    this.#doubtful.retry();
  }

  protected renderProblems(): TemplateResult {
    return html`${renderProblems(this.view, this.#problemWords)} ${this.#doubtful.render()} ${this.#sets.renderSheet()}`;
  }

  protected readonly parts: ShownParts = {
    chart: () => this.#chart.renderPlace(),
    table: () => (this.view.told ? html`${this.#renderReach(this.view.told)} ${this.#renderTable()}` : nothing),
  };

  #renderTable(): TemplateResult {
    return html`<div class="stacked" part="table">
      ${renderCompareTable(this.view, {
        isOpen: (index) => index === this.#edited || this.#isUnread(index),
        open: (index) => this.#openHeight(index),
        field: (index) => this.#renderHeight(index),
      })}
    </div>`;
  }

  protected renderWhole(): TemplateResult {
    const { answer, told, named } = this.view;
    return html`${this.renderProblems()}
    ${
      answer && told
        ? html`${this.#renderReach(told)}
          <div class="body">
            <div class="column">
              ${this.#costs.render()} ${this.#renderSlider()} ${renderFigureChoice(this.view)}
              ${this.#renderTable()}
              ${this.#toeLink.render()} ${this.#renderHints()} ${this.#renderActions()} ${this.#sets.renderChooser()} ${named.length < 2 && this.view.wrong.length === 0 ? html`<p class="hint">${this.view.compared.rows[0]?.own ? NAMES.ownOnly : NAMES.one}</p>` : nothing}
              ${this.#sets.renderList()} ${renderPaths(this.view)}
            </div>
            <div class="chart-place" part="chart">${this.#chart.render()} ${renderEven(this.view)} ${renderEach(this.view)} ${renderWhy(this.view)} ${this.late(() => nothing)}</div>
          </div>`
        : html`<div class="actions">${this.renderHistory()}</div>`
    }`;
  }

  readonly #problemWords: ProblemWords = {
    uses: ['setups', 'given', 'compare', 'bumpTravel', 'limits', 'stopGap'],
    text: (problem) => problemText(problem, this.view.car, this.view.display),
    fieldOf: (path) => {
      const height = /^heights\.(\d+)$/.exec(path)?.[1];
      if (path === 'over') return this.view.sentence.over;
      return height === undefined ? undefined : this.#fieldOf(Number(height));
    },
  };

  /** Where the bump that was asked for was not measured: what could be compared, as buttons. */
  #renderReach(told: Told): TemplateResult | typeof nothing {
    const { view: app } = this;
    const { display, cells, answer, heights } = app;
    const found = whatReaches(answer!.request, cells, display.units.length === 'in' ? 1.27 : 1);
    if (!found) return nothing;
    const { at, bump, drop } = found;
    const take = (change: () => void) => () => {
      change();
      app.endStep();
      void keepFocus(app);
    };
    return html`<div class="queries reach" role="status">
      <p>${reachText(found, told, display)}</p>
      <div class="choices">
        ${
          bump === undefined
            ? nothing
            : html`<button type="button" class="button over-less" @click=${take(() => app.set('over', FIRST.steps.over, { over: bump }))}>${NAMES.overLess(show(bump, 'travel', display))}</button>`
        }
        ${
          drop === undefined || heights[at.height] === undefined
            ? nothing
            : html`<button type="button" class="button from-higher" @click=${take(() => app.setHeight(at.height, drop))}>${NAMES.fromHigher(placeText(drop, display))}</button>`
        }
      </div>
    </div>`;
  }

  /** The height of the cell that is asked about. */
  #renderSlider(): TemplateResult {
    const { display, cells, heights } = this.view;
    const drop = heights[cells.to.height]!;
    const { names, request } = this.view.answer!;
    const measured = request.curves[cells.to.curve]!.curve.domain[1] - request.bump;
    const end = Math.max(10, Math.ceil(drop), Math.min(SLIDER_MM, Math.floor(measured)));
    const even = this.view.answer!.comparison.breakEvens[cells.to.curve - 1]?.change;
    return renderSlider({
      id: 'height-slider',
      label: NAMES.drop(names[cells.to.curve]!),
      quantity: 'drop',
      display,
      value: drop,
      min: Math.min(0, Math.floor(drop)),
      max: end,
      ticks: [
        { at: 0, label: NAMES.stock, kind: 'plain' },
        ...(even?.kind === 'at'
          ? [
              {
                at: even.drop,
                label: NAMES.even(show(Math.round(even.drop), 'drop', display)),
                kind: 'turn' as const,
              },
            ]
          : []),
      ],
      onInput: (mm) => this.view.setHeight(cells.to.height, mm),
      onChange: () => this.view.endDrag(),
      step: this.stepOf(`heights.${cells.to.height}`),
    });
  }

  #isUnread(index: number): boolean {
    return this.view.drafts.problem(`heights.${index}`) !== undefined;
  }

  #openHeight(index: number | undefined): void {
    const { host } = this.view;
    this.#edited = index;
    host.requestUpdate();
    void host.updateComplete.then(() =>
      host.renderRoot.querySelector<HTMLInputElement>(`.height-field[data-height="${index}"] input`)?.focus(),
    );
  }

  #fieldOf(index: number): SentenceField {
    const { view: app } = this;
    const field =
      this.#fields.get(index) ??
      new SentenceField({
        host: app.host,
        drafts: app.drafts,
        path: `heights.${index}`,
        label: TABLE.edit,
        quantity: 'drop',
        display: () => app.display,
        value: () => app.heights[index]!,
        text: () => show(app.heights[index]!, 'drop', app.display),
        change: (drop) => app.setHeight(index, drop),
        cancel: () => app.model.cancelStep(`heights.${index}`),
        begin: () => app.model.endStep(),
        end: () => app.endStep(),
      });
    this.#fields.set(index, field);
    return field;
  }

  #renderHeight(index: number): TemplateResult {
    const { view: app } = this;
    const leave = (event: FocusEvent) => {
      const inside = (event.currentTarget as Element).contains(event.relatedTarget as Node | null);
      if (!inside && index === this.#edited && !this.#isUnread(index)) this.#openHeight(undefined);
    };
    return html`<span class="height-field" data-height=${index} @focusout=${leave}>
      ${this.#fieldOf(index).render(this.#isUnread(index))}
      ${
        app.heights.length > 1
          ? html`<button type="button" aria-label=${TABLE.remove} title=${TABLE.remove} @click=${() => {
              // Those behind it move up, and their texts would stand in other columns.
              for (let i = index; i < app.heights.length; i++) app.drafts.drop(`heights.${i}`);
              this.#openHeight(undefined);
              app.set('heights', lower(TABLE.remove), { heights: app.heights.filter((_, i) => i !== index) });
              app.endStep();
              void keepFocus(app);
            }}>×</button>`
          : nothing
      }
    </span>`;
  }

  #renderHints(): TemplateResult {
    const { answer, cells, display, pageTable: table } = this.view;
    const isOne = cells.from.curve === cells.to.curve && cells.from.height === cells.to.height;
    const droop = show(answer!.request.droop!, 'travel', display);
    return html`${renderLeftOut(this.view)}<p class="note">${TABLE.overDroop(droop)}</p>
      ${table?.derived.length ? html`<p class="note left-out">${derivedText(table)}</p>` : nothing}
      ${isOne ? html`<p class="hint">${NAMES.pressOther}</p>` : nothing}`;
  }

  #renderActions(): TemplateResult | typeof nothing {
    const { view: app } = this;
    const { heights } = app;
    return html`<div class="actions">
      ${
        heights.length < MOST_HEIGHTS
          ? html`<button type="button" class="button add-height" @click=${() => {
              app.set('heights', lower(TABLE.add), { heights: [...heights, Math.max(...heights) + 10] });
              app.endStep();
              this.#openHeight(heights.length);
            }}>${TABLE.add}</button>`
          : nothing
      }
      ${this.#sets.renderButton()}
      ${this.renderHistory()}
    </div>`;
  }

  protected readAgain(): void {
    this.view.sentence.over.readAgain();
  }
}
