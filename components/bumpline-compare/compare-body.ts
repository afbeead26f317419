import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { MOST_HEIGHTS } from '../../core/document/car.js';
import { fullBumpOf } from '../../core/document/full-bump.js';
import { explainProblem } from '../../core/quantity/explain.js';
import { formatQuantity } from '../../core/quantity/format.js';
import { parseQuantity } from '../../core/quantity/parse.js';
import type { Problem } from '../../core/quantity/problem.js';
import { fromShown, toShown } from '../../core/quantity/units.js';
import { byHand } from '../shared/by-hand.js';
import { type Caution, renderCautions } from '../shared/cautions.js';
import { ChartController } from '../shared/chart/chart.js';
import type { ChartModel } from '../shared/chart/model.js';
import { renderCopyLink } from '../shared/copy-link.js';
import { DOUBT_FIELDS, type DoubtKey } from '../shared/doubts.words.js';
import { derivedText } from '../shared/left-out.js';
import { notesOf, renderNotes } from '../shared/notes.js';
import { show } from '../shared/sentence.js';
import { SentenceField } from '../shared/sentence-field.js';
import { renderSlider } from '../shared/slider.js';
import { renderUnitTools } from '../shared/unit-tools.js';
import { FIRST, heightText, reachText, type Told } from './bumpline-compare.words.js';
import type { Answered, CompareApp } from './compare-app.js';
import { renderEach, renderEven, renderPaths, renderWhy } from './compare-lists.js';
import { renderCompareTable, TABLE } from './compare-table.js';
import { DoubtfulSets } from './doubtful-sets.js';
import { OwnSets } from './own-sets.js';
import { chartModel } from './views.js';
import { whatReaches } from './what-reaches.js';

export { bodyStyles } from './compare-body.styles.js';

const NAMES = {
  pressOther: 'Now press another cell to compare it with this one.',
  one: 'One set of parts: heights can be compared. Give a second one to compare parts.',
  overLess: (bump: string): string => `Compare over ${bump} of bump`,
  fromHigher: (height: string): string => `Compare ${height.startsWith('at ') ? height : `at ${height}`}`,
  undo: 'Undo',
  redo: 'Redo',
  fault: 'The calculation failed. This is our fault, not yours; your numbers are kept.',
  retry: 'Try again',
} as const;

/** What is asked of a set's instruments: `doubts.0.tapeScale`. */
const doubtOf = (path: string) => DOUBT_FIELDS[path.slice(path.lastIndexOf('.') + 1) as DoubtKey];

/** The slider's end, mm. */
const SLIDER_MM = 80;

/** Everything under the sentence. */
export class CompareBody {
  readonly #app: CompareApp;
  readonly #chart: ChartController;
  readonly #sets: OwnSets;
  readonly #doubtful: DoubtfulSets;
  #charted?: { key: string; answer: Answered; model: ChartModel };
  /** The height whose field is open, and that field. */
  #edited: number | undefined;
  readonly #fields = new Map<number, SentenceField>();

  constructor(app: CompareApp) {
    this.#app = app;
    this.#sets = new OwnSets(app);
    this.#doubtful = new DoubtfulSets(app);
    app.drafts.reading = { parse: parseQuantity, live };
    this.#chart = new ChartController(app.host, {
      cursor: app.cursor,
      model: () => this.#chartModel(),
      rest: () => app.over,
    });
  }

  #chartModel(): ChartModel | undefined {
    const { answer, cells, reading } = this.#app;
    if (!answer) return undefined;
    const key = JSON.stringify([cells, reading]);
    if (this.#charted?.answer !== answer || this.#charted.key !== key) {
      this.#charted = { key, answer, model: chartModel(answer, cells.from, cells.to, reading) };
    }
    return this.#charted.model;
  }

  /** Resolves when what looks wrong in the readings has been looked for. */
  get settled(): Promise<void> {
    return this.#doubtful.settled;
  }

  get notes(): Problem[] {
    return notesOf(this.#app);
  }

  render(): TemplateResult {
    const { answer, told, named } = this.#app;
    return html`${this.#renderProblems()} ${this.#doubtful.render()} ${this.#sets.renderSheet()}
    ${
      answer && told
        ? html`${this.#renderReach(told)}
          <div class="body">
            <div class="column">
              ${this.#renderSlider()}
              ${renderCompareTable(this.#app, {
                isOpen: (index) => index === this.#edited || this.#isUnread(index),
                open: (index) => this.#openHeight(index),
                field: (index) => this.#renderHeight(index),
              })}
              ${this.#renderHints()} ${this.#renderActions()} ${named.length < 2 ? html`<p class="hint">${NAMES.one}</p>` : nothing}
              ${this.#sets.renderList()} ${renderPaths(this.#app)}
            </div>
            <div class="chart-place">${this.#chart.render()} ${renderEven(this.#app)} ${renderEach(this.#app)} ${renderWhy(this.#app)}</div>
            ${renderCautions(['lowJoint', 'springOut', 'spring', 'carried', this.#byHand(), 'rules'], 'Cautions about parts')}
          </div>`
        : nothing
    }`;
  }

  /** Counted from stock height: what is compared stands at several heights at once. */
  #byHand(): Caution {
    const { answer, car, reading } = this.#app;
    const solid = answer?.request.solid;
    return byHand(fullBumpOf(car, solid === undefined ? undefined : { travel: solid }, 0), 0, reading);
  }

  #renderProblems(): TemplateResult | typeof nothing {
    const { problems, state, fault, reading } = this.#app;
    if (state === 'fault') {
      return html`<div class="problems" id="problems" role="alert">
        <p>${NAMES.fault}</p>
        <p class="fault-text">${fault}</p>
        <button type="button" class="button" @click=${() => this.#app.ask()}>${NAMES.retry}</button>
      </div>`;
    }
    const notes = renderNotes(this.#app);
    if (problems.length === 0) return notes;
    const label = (path: string) => {
      const [first, row, column] = path.split('.');
      if (first === 'table' && column) return `This page’s table, row ${Number(row) + 1}, column ${Number(column) + 1}`;
      if (first === 'over') return FIRST.over;
      return first === 'heights' && row ? `Height ${Number(row) + 1}` : doubtOf(path)?.label;
    };
    const quantity = (path: string) =>
      path === 'over' ? 'travel' : path.startsWith('heights.') ? ('drop' as const) : doubtOf(path)?.quantity;
    return html`${notes}<div class="problems" id="problems" role="alert">
      <ul>
        ${problems.map(
          (problem) =>
            html`<li>${explainProblem(problem, {
              label: label(problem.path),
              quantity: quantity(problem.path),
              unitSystem: reading.units,
              language: reading.language,
            })}</li>`,
        )}
      </ul>
    </div>`;
  }

  /** Where the bump that was asked for was not measured: what could be compared, as buttons. */
  #renderReach(told: Told): TemplateResult | typeof nothing {
    const app = this.#app;
    const { reading, cells, answer, heights } = app;
    const found = whatReaches(answer!.request, cells, reading.units.length === 'in' ? 1.27 : 1);
    if (!found) return nothing;
    const { at, bump, drop } = found;
    const take = (change: () => void) => () => {
      change();
      app.endStep();
    };
    return html`<div class="queries reach" role="status">
      <p>${reachText(found, told, reading)}</p>
      <div class="choices">
        ${
          bump === undefined
            ? nothing
            : html`<button type="button" class="button over-less" @click=${take(() => app.change('over', 'bump', { over: bump }))}>${NAMES.overLess(show(bump, 'travel', reading))}</button>`
        }
        ${
          drop === undefined || heights[at.height] === undefined
            ? nothing
            : html`<button type="button" class="button from-higher" @click=${take(() => app.setHeight(at.height, drop))}>${NAMES.fromHigher(heightText(drop, reading))}</button>`
        }
      </div>
    </div>`;
  }

  /** The height of the cell that is asked about. */
  #renderSlider(): TemplateResult {
    const { reading, cells, heights } = this.#app;
    const { units, language } = reading;
    const drop = heights[cells.to.height]!;
    const { names, request } = this.#app.answer!;
    const measured = request.curves[cells.to.curve]!.curve.domain[1] - request.bump;
    const end = Math.max(10, Math.ceil(drop), Math.min(SLIDER_MM, Math.floor(measured)));
    const shown = (mm: number) => toShown(mm, 'length', units);
    const even = this.#app.answer!.comparison.breakEvens[cells.to.curve - 1]?.change;
    return renderSlider({
      id: 'height-slider',
      label: `Drop: ${names[cells.to.curve]!}`,
      value: shown(drop),
      min: shown(Math.min(0, Math.floor(drop))),
      max: shown(end),
      step: units.length === 'in' ? 0.05 : 1,
      valueText: (value) => formatQuantity(fromShown(value, 'length', units), 'drop', units, { language }).text,
      ticks: [
        { at: 0, label: 'stock height', kind: 'plain' },
        ...(even?.kind === 'at'
          ? [
              {
                at: shown(even.drop),
                label: `even ${show(Math.round(even.drop), 'drop', reading)}`,
                kind: 'turn' as const,
              },
            ]
          : []),
      ],
      onInput: (value) => this.#app.setHeight(cells.to.height, fromShown(value, 'length', units)),
      onChange: () => this.#app.endStep(),
    });
  }

  #isUnread(index: number): boolean {
    return this.#app.drafts.problem(`heights.${index}`) !== undefined;
  }

  #openHeight(index: number | undefined): void {
    const { host } = this.#app;
    this.#edited = index;
    host.requestUpdate();
    void host.updateComplete.then(() =>
      host.renderRoot.querySelector<HTMLInputElement>(`.height-field[data-height="${index}"] input`)?.focus(),
    );
  }

  #fieldOf(index: number): SentenceField {
    const app = this.#app;
    const field =
      this.#fields.get(index) ??
      new SentenceField({
        host: app.host,
        drafts: app.drafts,
        path: `heights.${index}`,
        label: TABLE.edit,
        quantity: 'drop',
        reader: () => app.reading,
        value: () => app.heights[index]!,
        text: () => show(app.heights[index]!, 'drop', app.reading),
        change: (drop) => app.setHeight(index, drop),
        cancel: () => app.model.cancelStep(`heights.${index}`),
        begin: () => app.model.endStep(),
        end: () => app.endStep(),
      });
    this.#fields.set(index, field);
    return field;
  }

  #renderHeight(index: number): TemplateResult {
    const app = this.#app;
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
              app.change('heights', TABLE.remove.toLowerCase(), { heights: app.heights.filter((_, i) => i !== index) });
              app.endStep();
            }}>×</button>`
          : nothing
      }
    </span>`;
  }

  #renderHints(): TemplateResult {
    const { answer, cells, reading, page, compared } = this.#app;
    const table = compared.pages > 0 || compared.isExample ? page.table : undefined;
    const isOne = cells.from.curve === cells.to.curve && cells.from.height === cells.to.height;
    const droop = show(answer!.request.droop!, 'travel', reading);
    return html`<p class="note">${TABLE.droop}: over ${droop} down from each height.</p>
      ${table?.derived.length ? html`<p class="note left-out">${derivedText(table)}</p>` : nothing}
      ${isOne ? html`<p class="hint">${NAMES.pressOther}</p>` : nothing}`;
  }

  #renderActions(): TemplateResult | typeof nothing {
    const app = this.#app;
    const { model, announcer, heights } = app;
    return html`<div class="actions">
      ${
        heights.length < MOST_HEIGHTS
          ? html`<button type="button" class="button add-height" @click=${() => {
              app.change('heights', TABLE.add.toLowerCase(), { heights: [...heights, Math.max(...heights) + 10] });
              app.endStep();
              this.#openHeight(heights.length);
            }}>${TABLE.add}</button>`
          : nothing
      }
      ${this.#sets.renderButton()}
      ${
        model.undoLabel
          ? html`<button type="button" class="text-button undo" @click=${() => model.undo()}>${NAMES.undo}: ${model.undoLabel}</button>`
          : nothing
      }
      ${model.redoLabel ? html`<button type="button" class="text-button redo" @click=${() => model.redo()}>${NAMES.redo}</button>` : nothing}
      ${renderCopyLink(model, announcer)}
    </div>`;
  }

  renderTools(): TemplateResult {
    return renderUnitTools(this.#app.host, () => this.#app.sentence.over.readAgain());
  }
}
