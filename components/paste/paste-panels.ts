import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { CellUnit, ColumnRole, Understanding } from '../../core/readings/table/understanding.js';
import { shownName } from '../car/shown-names.words.js';
import type { Display } from '../element/sentence.js';
import { cellName, columnTitle, goingText, NAMES, quantityOf, roleName, unitName } from './paste.labels.js';
import { cellProblem } from './paste.words.js';
import type { PasteState } from './paste-state.js';

const LENGTHS: readonly CellUnit[] = ['mm', 'cm', 'in'];
const ANGLES: readonly CellUnit[] = ['degrees', 'arcminutes'];

function rolesOf({ quantity }: Understanding): ColumnRole[] {
  const dials: ColumnRole[] = quantity === 'toe' ? ['dialFront', 'dialRear'] : [];
  return ['travel', 'height', 'value', ...dials, 'pass', 'going', 'body', 'derived', 'other'];
}

function unitsOf(role: ColumnRole, { quantity }: Understanding): readonly CellUnit[] {
  if (role === 'pass' || role === 'going' || role === 'other' || role === 'derived') return [];
  if (role === 'dialFront' || role === 'dialRear') return [...LENGTHS, 'thou'];
  if (role !== 'value') return LENGTHS;
  // A gauge over a base gives toe as a distance.
  return quantity === 'toe' ? [...ANGLES, ...LENGTHS, 'thou'] : ANGLES;
}

/** What one column holds, to be said by the user. */
export function renderColumnPanel(
  index: number,
  understanding: Understanding,
  state: PasteState,
  onDone: () => void,
): TemplateResult | typeof nothing {
  const column = understanding.columns[index];
  if (!column) return nothing;
  const { role, unit, going } = column;
  // Of a single set, or a single pass, the columns do not say which: what was typed stands there all the same.
  const said = state.said(index);
  const { sets } = understanding;
  const set = said?.set ?? column.set ?? (sets.length === 1 ? sets[0]!.name : undefined);
  const pass = said?.pass ?? column.pass;
  const units = unitsOf(role, understanding);
  const given = (event: Event) => (event.target as HTMLSelectElement | HTMLInputElement).value;
  const isReading = role === 'value' || role === 'dialFront';
  return html`<div class="panel" role="group" aria-labelledby="panel-title" @keydown=${onEscape(onDone)}>
    <p id="panel-title">${columnTitle(index, column)}</p>
    <label>
      <span>${NAMES.holds}</span>
      <select class="text words" id="panel-first" @change=${(event: Event) => state.say(index, { role: given(event) as ColumnRole })}>
        ${rolesOf(understanding).map((one) => option(one, roleName(one, understanding), one === role))}
      </select>
    </label>
    ${
      units.length > 0
        ? html`<label>
            <span>${NAMES.unit}</span>
            <select class="text words" @change=${(event: Event) => state.say(index, { unit: given(event) as CellUnit })}>
              ${units.map((one) => option(one, unitName(one), one === unit))}
            </select>
          </label>`
        : nothing
    }
    ${
      isReading
        ? html`<label>
              <span>${NAMES.parts}</span>
              <input
                class="text words"
                autocomplete="off"
                .value=${live(set ?? '')}
                @change=${(event: Event) => state.say(index, { set: given(event).trim() })}
              />
            </label>
            <label>
              <span>${NAMES.pass}</span>
              <input
                class="text words"
                autocomplete="off"
                .value=${live(pass ? shownName(pass) : '')}
                @change=${(event: Event) => state.say(index, { pass: given(event).trim() })}
              />
            </label>
            <label>
              <span>${NAMES.going}</span>
              <select class="text words" @change=${(event: Event) => state.say(index, { going: given(event) as 'up' | 'down' })}>
                ${going ? nothing : option('', NAMES.notSaid, true)}
                ${(['up', 'down'] as const).map((one) => option(one, goingText(one), one === going))}
              </select>
            </label>`
        : nothing
    }
    <div class="choices">
      <button type="button" class="button main" @click=${onDone}>${NAMES.columnDone}</button>
      ${
        state.said(index)
          ? html`<button type="button" class="button" @click=${() => {
              state.unsay(index);
              onDone();
            }}>${NAMES.columnReset}</button>`
          : nothing
      }
    </div>
  </div>`;
}

const option = (value: string, name: string, isChosen: boolean): TemplateResult =>
  html`<option value=${value} .selected=${live(isChosen)}>${name}</option>`;

/** One cell that cannot be read, or was corrected: what it should say. */
export function renderCellPanel(
  [row, column]: readonly [number, number],
  understanding: Understanding,
  state: PasteState,
  display: Display,
  onDone: () => void,
): TemplateResult | typeof nothing {
  const cell = understanding.cells[row]?.[column];
  if (!cell) return nothing;
  const name = cellName(row, column);
  const was = state.mended.get(`${row},${column}`)?.was ?? cell.text;
  const mend = (text: string) => state.mend(row, column, was, text.trim());
  const field = (event: Event) => (event.currentTarget as Element).closest('.panel')!.querySelector('input')!;
  const done = (event: Event) => {
    mend(field(event).value);
    if (state.understanding?.cells[row]?.[column]?.state !== 'problem') onDone();
  };
  return html`<div
    class="panel"
    role="group"
    aria-labelledby="panel-title"
    @keydown=${(event: KeyboardEvent) => {
      if (event.key === 'Enter' && event.target instanceof HTMLInputElement) {
        event.preventDefault();
        done(event);
      } else onEscape(onDone)(event);
    }}
  >
    <p id="panel-title">${NAMES.pastedAs(name, was)}</p>
    ${
      cell.problem
        ? html`<p class="problem" id="panel-problem">
            ${cellProblem(name, cell.problem, quantityOf(understanding.columns[column]!, understanding), display)}
          </p>`
        : nothing
    }
    <label>
      <span>${NAMES.readAs}</span>
      <input
        class="text words"
        id="panel-first"
        autocomplete="off"
        aria-invalid=${cell.problem ? 'true' : nothing}
        aria-describedby=${cell.problem ? 'panel-problem' : nothing}
        .value=${live(cell.text)}
      />
    </label>
    <div class="choices">
      <button type="button" class="button main" @click=${done}>${NAMES.set}</button>
      <button
        type="button"
        class="button"
        @click=${() => {
          mend('');
          onDone();
        }}
      >
        ${NAMES.leaveOut}
      </button>
      ${
        was === cell.text
          ? nothing
          : html`<button
              type="button"
              class="button"
              @click=${() => {
                mend(was);
                onDone();
              }}
            >
              ${NAMES.asWas}
            </button>`
      }
    </div>
  </div>`;
}

/** Closes the panel and not the dialog around it. */
const onEscape =
  (onDone: () => void) =>
  (event: KeyboardEvent): void => {
    if (event.key !== 'Escape') return;
    event.preventDefault();
    event.stopPropagation();
    onDone();
  };
