import { html, nothing, type TemplateResult } from 'lit';
import { classMap } from 'lit/directives/class-map.js';
import { live } from 'lit/directives/live.js';
import type { LeastCostRow } from '../../core/answers/least-cost-answer.js';
import { COST_WEIGHTS, type CostWeight, LEAST_COSTS, type LeastCost } from '../../core/document/cost-weights.js';
import { withLeastCost } from '../../core/document/least-cost-settings.js';
import { withTurn } from '../../core/document/turn-settings.js';
import type { Problem } from '../../core/quantity/problem.js';
import { allProblems } from '../element/all-problems.js';
import { HEIGHT_SHEETS, standsRows } from '../inputs/car-sheets.js';
import { renderInputRow } from '../inputs/input-row.js';
import { NAMES } from './least-cost.labels.js';
import { leastCostStyles } from './least-cost.styles.js';
import {
  comesTo,
  costText,
  countsText,
  inclinationText,
  problemText,
  rollNote,
  rollText,
  takesOf,
} from './least-cost.words.js';
import { leastCostSheet, SEARCH_SHEETS, sheetWith, WANTED_SHEET } from './least-cost-kit.js';
import { renderSearchRow } from './least-cost-list.js';
import { type Asked, isOfValue, LeastCostSearch, type LeastCostView, type TurnOf } from './least-cost-question.js';

export { leastCostSheet, leastCostStyles };

const BUMP_SHEET = HEIGHT_SHEETS.find(({ key }) => key === 'bumpTravel')!;

/** Which setups bring the outer wheel where it is wanted, and what each costs: what is asked, and the few that are shown. */
export class LeastCostPanel {
  readonly #view: LeastCostView;
  readonly #search: LeastCostSearch;
  readonly #isOwn: (problem: Problem) => boolean;

  /**
   * @param turnOf the turn of a car; its roll is held where nothing makes it
   * @param isOwn whether what is wrong with a typed figure is told here
   */
  constructor(view: LeastCostView, turnOf: TurnOf, isOwn: (problem: Problem) => boolean) {
    this.#view = view;
    this.#isOwn = isOwn;
    this.#search = new LeastCostSearch(view, turnOf);
  }

  get settled(): Promise<void> {
    return this.#search.settle();
  }

  /** What is wrong with values that are asked here, each by itself: by the paths of the car. */
  get valueProblems(): readonly Problem[] {
    return this.#search.problems.filter(isOfValue);
  }

  /** What was typed and cannot be read, and what the search says. */
  get #problems(): Problem[] {
    return allProblems(this.#view.problems.filter(this.#isOwn), [...this.#search.problems]);
  }

  retry(): void {
    this.#search.retry();
  }

  render(onShow: (key: string) => void): TemplateResult {
    this.#search.ask();
    return html`${this.#renderAsked(onShow)} ${this.#renderFound(onShow)} ${this.#renderFold(onShow)}`;
  }

  #renderAsked(onShow: (key: string) => void): TemplateResult {
    const { car, display } = this.#view;
    return html`<ul class="rod wanted">${renderInputRow(WANTED_SHEET, { car, display, standIn: undefined, onSelect: onShow })}</ul>
      <fieldset class="cost-weights">
        <legend>${NAMES.weights}</legend>
        ${LEAST_COSTS.map(
          (cost) => html`<label>${NAMES.costs[cost]}
            <select class="text listed" data-cost=${cost} @change=${({ target }: Event) => this.#weigh(cost, (target as HTMLSelectElement).value as CostWeight)}>
              ${COST_WEIGHTS.map((one) => html`<option value=${one} .selected=${live(one === (car.leastCost?.[cost] ?? 'matters'))}>${NAMES.weight[one]}</option>`)}
            </select></label>`,
        )}
      </fieldset>`;
  }

  #weigh(cost: LeastCost, weight: CostWeight): void {
    const to = weight === 'matters' ? undefined : weight;
    this.#view.change(`leastCost.${cost}`, NAMES.weightStep, (car) => withLeastCost(car, { [cost]: to }));
    this.#view.endStep();
  }

  #renderFold(onShow: (key: string) => void): TemplateResult {
    const { car, display } = this.#view;
    return html`<details class="search-inputs">
      <summary>${NAMES.fold}</summary>
      <p class="note">${NAMES.foldNote}</p>
      ${this.#renderAbove()}
      <ul>
        ${SEARCH_SHEETS.map((sheet) => renderSearchRow(sheet, { car, display, onShow }))}
        ${[BUMP_SHEET, ...standsRows(car)].map((sheet) => renderInputRow(sheet, { car, display, standIn: undefined, onSelect: onShow }))}
      </ul>
    </details>`;
  }

  /** What the results have become, where they may be out of sight. */
  #renderAbove(): TemplateResult | typeof nothing {
    const { found, isCurrent } = this.#search;
    if (!found) return nothing;
    const { reach, tried } = found.answer;
    return html`<p class="note results-above">${isCurrent ? NAMES.above(String(reach), String(tried)) : NAMES.aboveNone}
      <button type="button" class="text-button" @click=${() => this.#view.host.renderRoot.querySelector('.least-cost .found')?.scrollIntoView({ block: 'start' })}>${NAMES.toResults}</button></p>`;
  }

  #renderFound(onShow: (key: string) => void): TemplateResult {
    const { asked, found, fault, isCurrent } = this.#search;
    const problems = this.#problems;
    const told = problems.length > 0 ? this.#renderProblems(problems, asked, onShow) : nothing;
    if (!asked) {
      return html`${told}<p class="note">${NAMES.noWanted}</p>
        <button type="button" class="button ask-wanted" @click=${() => onShow(WANTED_SHEET.key)}>${NAMES.ask}</button>`;
    }
    if (fault !== undefined) return html`<div class="problems" role="alert"><p>${NAMES.fault}</p></div>`;
    return html`${told}
      <div role="status">${!found && problems.length === 0 ? html`<p class="note">${NAMES.waiting}</p>` : nothing}${
        found ? html`<p class="visually-hidden">${isCurrent ? countsText(found.answer) : ''}</p>` : nothing
      }</div>
      ${found ? html`<div class=${classMap({ found: true, last: !isCurrent })}>${this.#renderTable(found.answer.rows, found)}</div>` : nothing}`;
  }

  #renderProblems(
    problems: readonly Problem[],
    asked: Asked | undefined,
    onShow: (key: string) => void,
  ): TemplateResult {
    const { display } = this.#view;
    return html`<div class="problems" role="alert"><ul>
      ${problems.map((problem) => {
        const key = keyOf(problem);
        const nearest =
          asked && problem.path === 'turn.wanted' && problem.value === asked.request.inclination
            ? problem.limit
            : undefined;
        return html`<li>${problemText(problem, asked, display)}
          ${nearest === undefined ? nothing : html`<button type="button" class="button" @click=${() => this.#want(nearest)}>${NAMES.problems.useNearest(inclinationText(nearest, display))}</button>`}
          ${key === undefined ? nothing : html`<button type="button" class="button" @click=${() => onShow(key)}>${NAMES.correct}</button>`}</li>`;
      })}
    </ul></div>`;
  }

  #want(inclination: number): void {
    // As it is shown, and no further away than the search may miss it by.
    const wanted = Math.round(inclination * 100) / 100;
    this.#view.change('turn.wanted', WANTED_SHEET.title, (car) => withTurn(car, { wanted }));
    this.#view.endStep();
  }

  #renderTable(
    rows: readonly LeastCostRow[],
    { answer, asked }: NonNullable<LeastCostSearch['found']>,
  ): TemplateResult {
    const { display } = this.#view;
    const wanted = inclinationText(answer.inclination, display);
    const isToeTold = rows.some(({ costs }) => costs.bumpSteer !== undefined);
    return html`<p>${NAMES.asItIs(inclinationText(answer.asItIs.inclination, display), rollText(answer.asItIs.roll, display))}</p>
      <table class="setups" role="table">
        <caption>${NAMES.table(wanted)}${rows.length > 1 ? html`<small>${NAMES.order}</small>` : nothing}</caption>
        <thead role="rowgroup"><tr role="row">
          <th scope="col" role="columnheader" class="setup"><span class="visually-hidden">${NAMES.setup}</span></th>
          ${LEAST_COSTS.map((cost) => html`<th scope="col" role="columnheader">${NAMES.heads[cost]}</th>`)}
        </tr></thead>
        <tbody role="rowgroup">${rows.map(
          (row, i) => html`<tr role="row">
            <th scope="row" role="rowheader" class="setup">
              ${takesOf(row, asked, display).map((line) => html`<span class="takes">${line}</span>`)}
              ${i === 0 && rows.length > 1 ? html`<small class="is-best">${NAMES.bestInAll}</small>` : nothing}
              <small>${comesTo(row, display)}</small>${isOnStop(row) ? html`<small class="on-stop">${NAMES.row.onStop}</small>` : nothing}</th>
            ${LEAST_COSTS.map((cost) => renderCost(row, cost, display))}
          </tr>`,
        )}</tbody>
      </table>
      <p class="note">${countsText(answer)} ${NAMES.solved}</p>
      <p class="note">${rollNote(asked, answer, display)}${isToeTold ? '' : ` ${NAMES.driveway}`}</p>`;
  }
}

/** Whether the outer wheel would be solid on its stop before it is there. */
const isOnStop = ({ bumpLeft, bumpInTurn }: LeastCostRow): boolean => bumpLeft !== undefined && bumpInTurn > bumpLeft;

function renderCost(row: LeastCostRow, cost: LeastCost, display: LeastCostView['display']): TemplateResult {
  const { main, under } = costText(row, cost, display);
  const isBest = row.bestIn.includes(cost);
  return html`<td role="cell" data-cost=${cost} class=${isBest ? 'best' : ''}>${main}${isBest ? html`<small class="is-best">${NAMES.best}</small>` : nothing}${under.map((line) => html`<small>${line}</small>`)}</td>`;
}

/** The sheet on which a problem is mended. */
function keyOf({ path }: Problem): string | undefined {
  if (path === 'limits') return 'leastCost.leastBump';
  if (path === 'load') return 'turn.load';
  if (path === 'leastCost.way') return 'leastCost.camberFrom';
  if (path === 'bumpTravel') return path;
  return sheetWith(path)?.key;
}
