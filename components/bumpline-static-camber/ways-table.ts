import { html, nothing, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { live } from 'lit/directives/live.js';
import type { WayAnswer } from '../../core/answers/static-camber.js';
import type { CamberCost } from '../../core/document/camber-costs.js';
import { lower, show } from '../element/sentence.js';
import { NAMES } from './bumpline-static-camber.labels.js';
import { angleText, senseText } from './bumpline-static-camber.words.js';
import { afterText, costText } from './cost-text.js';
import { asItIs, type Cost, costOf, costsOf, ofWay, sortedWays, type Turn } from './costs.js';
import type { StaticCamberView, WaysOnSheet } from './static-camber-view.js';
import { reachText, wayName } from './way-names.js';

const { table: TABLE } = NAMES;

type View = Pick<StaticCamberView, 'car' | 'display' | 'over' | 'set' | 'endStep' | 'model' | 'host'>;

/** Asks for another order: the same figure again turns it round. */
export function sortBy(view: View, key: CamberCost | undefined): void {
  const { sortBy: before, order } = view.car.camberAdded ?? {};
  view.model.endStep();
  view.set(TABLE.sortStep, { sortBy: key, order: key && key === before && !order ? 'reversed' : undefined });
  view.endStep();
  void view.host.updateComplete.then(() => showFirst(view.host.renderRoot, key));
}

/** What is sorted by stands first now, whatever was scrolled to before; a heading that was pressed keeps the focus. */
function showFirst(root: HTMLElement | DocumentFragment, key: CamberCost | undefined): void {
  root.querySelector('.ways-scroll')?.scrollTo({ left: 0 });
  if (root.querySelector('.sort:focus')) root.querySelector<HTMLElement>(`.sort[data-cost="${key}"]`)?.focus();
}

/** What the ways are sorted by, as a list: on a phone no heading need be found for it. */
export function renderSortBy(view: View, answer: WaysOnSheet): TemplateResult {
  const { sortBy: by } = view.car.camberAdded ?? {};
  const groups = Object.keys(NAMES.groups) as Cost['group'][];
  const costs = costsOf(answer);
  const choose = ({ target }: Event) => {
    const { value } = target as HTMLSelectElement;
    sortBy(view, value === '' ? undefined : (value as CamberCost));
  };
  return html`<div class="sort-by">
    <label>${TABLE.sortBy}
      <select class="text listed" .value=${live(by ?? '')} @change=${choose}>
        <option value="" ?selected=${!by}>${TABLE.unsorted}</option>
        ${inGroups(costs, groups).map(
          ({ group, own }) => html`<optgroup label=${NAMES.groups[group]}>
            ${own.map(({ key }) => html`<option value=${key} ?selected=${key === by}>${nameOf(key, view).short}</option>`)}
          </optgroup>`,
        )}
      </select>
    </label>
    ${by ? html`<button type="button" class="button turn-order" @click=${() => sortBy(view, by)}>${TABLE.turn}</button>` : nothing}
  </div>`;
}

const inGroups = (costs: readonly Cost[], groups: readonly Cost['group'][]) =>
  groups
    .map((group) => ({ group, own: costs.filter((one) => one.group === group) }))
    .filter(({ own }) => own.length > 0)
    .sort((a, b) => costs.indexOf(a.own[0]!) - costs.indexOf(b.own[0]!));

export const nameOf = (key: CamberCost, { over, display }: Pick<View, 'over' | 'display'>) =>
  NAMES.costs[key](show(over, 'travel', display));

/** A way a row, a figure a column; what is sorted by stands first. Every heading is a button. */
export function renderWaysTable(view: View, answer: WaysOnSheet, turn: Turn): unknown {
  const { display, over, car } = view;
  const { sortBy: by, order } = car.camberAdded ?? {};
  // A drag whose answer is still to come changes nothing of it.
  return guard([answer, turn, over, by, order, JSON.stringify(display)], () => tableOf(view, answer, turn));
}

function tableOf(view: View, answer: WaysOnSheet, turn: Turn): TemplateResult {
  const { display, car } = view;
  const { camberAdded: asked = {} } = car;
  const { sortBy: by, order } = asked;
  const costs = costsOf(answer);
  const columns = by ? [costOf(by), ...costs.filter(({ key }) => key !== by)] : costs;
  const runs = runsOf(columns);
  const what = TABLE.asked(angleText(answer.by, display), senseText(answer.by));
  return html`<div class="table-scroll ways-scroll" role="region" aria-label=${TABLE.title(what)} tabindex="0">
      <table class="ways">
        <thead>
          <tr>
            <td></td>
            ${runs.map(({ group, count }) => html`<th scope="colgroup" colspan=${count}><span>${NAMES.groups[group]}</span></th>`)}
          </tr>
          <tr>
            <th scope="col">${TABLE.way}</th>
            ${columns.map(({ key, first }) => {
              const { label, short } = nameOf(key, view);
              const sort = key === by ? orderOf(first, order) : 'none';
              return html`<th scope="col" aria-sort=${sort}>
                <button type="button" class="sort" data-cost=${key} title=${label} @click=${() => sortBy(view, key)}>${short}<span class="visually-hidden">, ${lower(TABLE.sortBy)} ${lower(label)}</span>${
                  sort === 'none'
                    ? nothing
                    : html`<span class="arrow" aria-hidden="true">${sort === 'ascending' ? '▲' : '▼'}</span>`
                }</button>
              </th>`;
            })}
          </tr>
        </thead>
        <tbody>
          <tr class="as-it-is">
            <th scope="row">${TABLE.asItIs}<small>${TABLE.camber(show(answer.asItIs.camber, 'camber', display))}</small></th>
            ${columns.map((cost) => {
              const size = asItIs(cost.key, answer, turn);
              return html`<td class=${cost.key === by ? 'sorted' : nothing}>${size === undefined || !Number.isFinite(size) ? '–' : afterText(cost, size, display)}</td>`;
            })}
          </tr>
          ${sortedWays(answer, turn, asked).map((way) => renderWay(way, columns, view, answer, turn))}
        </tbody>
      </table>
    </div>
    <p class="note">${by ? html`${sortedText(by, order, view)} ${TABLE.unreachedLast} ` : nothing}${TABLE.legend} <span class="swipe ${display.units.length === 'mm' && display.units.angle === 'degrees' ? 'may-fit' : ''}">${TABLE.scroll}</span></p>`;
}

function renderWay(
  way: WayAnswer,
  columns: readonly Cost[],
  { display, car }: View,
  answer: WaysOnSheet,
  turn: Turn,
): TemplateResult {
  const by = car.camberAdded?.sortBy;
  return html`<tr class=${way.isReached ? '' : 'unreached'} data-way=${way.way}>
    <th scope="row">${wayName(way, answer)}<small>${reachText(way, display)}</small></th>
    ${columns.map((cost) => {
      const { main, under } = costText(cost, ofWay(cost.key, way, answer, turn), display);
      return html`<td class=${cost.key === by ? 'sorted' : nothing} data-cost=${cost.key}><b>${main}</b>${under === undefined ? nothing : html`<small>${under}</small>`}</td>`;
    })}
  </tr>`;
}

/** What is sorted by, and which way round, in words. */
function sortedText(by: CamberCost, order: 'reversed' | undefined, view: View): string {
  const texts = TABLE.first[costOf(by).first];
  return TABLE.sorted(lower(nameOf(by, view).label), texts[order ? 1 : 0]!);
}

const orderOf = (first: Cost['first'], order: 'reversed' | undefined): 'ascending' | 'descending' =>
  (first === 'smallest' || first === 'least') === (order === undefined) ? 'ascending' : 'descending';

function runsOf(columns: readonly Cost[]): { group: Cost['group']; count: number }[] {
  const runs: { group: Cost['group']; count: number }[] = [];
  for (const { group } of columns) {
    const last = runs.at(-1);
    if (last?.group === group) last.count++;
    else runs.push({ group, count: 1 });
  }
  return runs;
}
