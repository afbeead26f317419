import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { shownName } from '../car/shown-names.words.js';
import { choicesOf } from '../controls/choices.js';
import type { ReadingsHost } from '../paste/readings-host.js';
import { AGAIN, type CellRef, cellRefOf, type GridEntries, HEIGHT, NEW } from './grid-entries.js';
import type { GridColumn } from './grid-model.js';
import { againLabel, cellLabel, cellProblem, columnName, GRID, heightText, valueText } from './reading-grid.labels.js';

interface PassPanelOptions {
  onChange: (to: GridColumn) => void;
  onRemove: () => void;
}

/** What a pass is called, and which way the wheel went. */
export function renderPassPanel(column: GridColumn, { onChange, onRemove }: PassPanelOptions): TemplateResult {
  const { pass, going } = column;
  return html`<div class="pass-panel">
    <label class="pick">${GRID.passName}
      <input class="text name" type="text" autocomplete="off" maxlength="60" .value=${live(shownName(pass))}
        @change=${(event: Event) => onChange({ ...column, pass: (event.target as HTMLInputElement).value.trim() || pass })} />
    </label>
    <label class="pick">${GRID.way}
      <select class="text" .value=${live(going ?? '')}
        @change=${(event: Event) => {
          const { value } = event.target as HTMLSelectElement;
          onChange({ pass, ...(value && { going: value as 'up' | 'down' }) });
        }}>
        <option value="up" ?selected=${going === 'up'}>${GRID.up}</option>
        <option value="down" ?selected=${going === 'down'}>${GRID.down}</option>
        <option value="" ?selected=${!going}>${GRID.unsaid}</option>
      </select>
    </label>
    <button type="button" class="text-button" @click=${onRemove}>${GRID.removePass}</button>
  </div>`;
}

/** Cells that cannot be read, can be read in two ways, or lie far off: each named, with buttons where one would do. */
export function renderAsked(
  app: ReadingsHost,
  entries: GridEntries,
  act: (change: () => void, cell?: CellRef) => void,
): TemplateResult | typeof nothing {
  const { setup, display } = app;
  const { quantity } = setup;
  const { problems, farOff, grid } = entries;
  if (problems.size + farOff.size === 0) return nothing;
  const button = (text: string, change: () => void, cell?: CellRef) =>
    html`<button type="button" class="button" @click=${() => act(change, cell)}>${text}</button>`;
  const labelOf = (key: string) => {
    const { row, column } = cellRefOf(key);
    if (row === AGAIN) return againLabel(grid.columns[column]!, entries.heightAgain(column) ?? 0, display);
    const travel = row === NEW ? entries.boundTo({ row, column }) : grid.rows[row]?.travel;
    const height = travel === undefined ? GRID.newRow : heightText(travel, display);
    return column === HEIGHT ? height : `${columnName(grid.columns[column]!)}, ${height}`;
  };
  return html`<ul class="queries" aria-live="polite">
    ${[...problems].map(([key, problem]) => {
      const cell = cellRefOf(key);
      const kind = cell.column === HEIGHT ? 'travel' : quantity;
      return html`<li>
        ${cellProblem(problem, labelOf(key), kind, display)}
        <div class="choices">${choicesOf(problem, kind, display).map(({ value, text }) => button(text, () => entries.choose(cell, value), cell))}</div>
      </li>`;
    })}
    ${[...farOff].map(([key, { travel, column, value, meant }]) => {
      const [is, other] = [value, meant].map((one) => valueText(one, quantity, display, true)) as [string, string];
      return html`<li>
        ${GRID.farOff(cellLabel(column, travel, display), is, other)}
        <div class="choices">
          ${button(is, () => entries.farOff.delete(key))}
          ${button(other, () => {
            entries.farOff.delete(key);
            entries.set(travel, column, meant);
          })}
        </div>
      </li>`;
    })}
  </ul>`;
}
