import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { decimalMark } from '../../core/quantity/format.js';
import type { ReadingsHost } from '../paste/readings-host.js';
import { AGAIN, type CellRef, GridEntries, HEIGHT, keyOf, NEW } from './grid-entries.js';
import { renderAsked, renderPassPanel } from './grid-panels.js';
import { renderNumberKeys, typeKey } from './number-keys.js';
import { pairText } from './pair-text.js';
import { PhoneGauge } from './phone-gauge.js';
import { againLabel, cellLabel, columnName, GRID, heightText, signsOf, valueText } from './reading-grid.labels.js';

export { gridStyles } from './reading-grid.styles.js';

const isTouched = (): boolean => matchMedia('(pointer: coarse)').matches;

/** Readings typed in by hand: heights down the side, a column a pass, and keys for a thumb below. */
export class ReadingGrid {
  #app: ReadingsHost;
  #entries: GridEntries;
  #phone: PhoneGauge;
  #at: CellRef = { row: NEW, column: 0 };
  /** Where there is a real keyboard, it is the one to type on. */
  #ownKeys = !isTouched();
  /** The pass whose head was pressed. */
  #opened: number | undefined;

  constructor(app: ReadingsHost) {
    this.#app = app;
    this.#entries = new GridEntries(app);
    this.#phone = new PhoneGauge(app, (value) => this.#takeFromPhone(value));
  }

  /** The grid was opened: to the field of the next reading, with the keys in sight. */
  begin(): void {
    this.#go(this.#at);
  }

  render(): TemplateResult {
    const { setup, display } = this.#app;
    const { grid } = this.#entries;
    const { columns, rows } = grid;
    const fresh = heightText(this.#entries.height(columns[this.#at.column]), display, false);
    const opened = this.#opened === undefined ? undefined : columns[this.#opened];
    const { howRead } = this.#entries;
    return html`<div class="reading-grid" @keydown=${this.#pressed}>
      ${howRead.render()}
      <div class="grid-scroll" role="region" aria-label=${GRID.title} tabindex="0">
        <table class=${howRead.isPair ? 'pairs' : ''}>
          <thead>
            <tr>
              <th scope="col">${display.units.length}</th>
              ${columns.map(
                (column, i) => html`<th scope="col">
                  <button type="button" class="pass-name" aria-expanded=${this.#opened === i} @click=${() => this.#open(i)}>${columnName(column)}</button>
                </th>`,
              )}
              <th>
                <button type="button" class="add-pass" aria-label=${GRID.addPass} title=${GRID.addPass} @click=${() => this.#addPass()}>+</button>
              </th>
            </tr>
          </thead>
          <tbody>
            ${rows.map(
              (row, r) => html`<tr>
                <th scope="row">${this.#renderField({ row: r, column: HEIGHT }, heightText(row.travel, display, false), heightText(row.travel, display))}</th>
                ${row.cells.map(
                  (index, c) => html`<td>
                    ${this.#renderReading({ row: r, column: c }, index, cellLabel(columns[c]!, row.travel, display))}
                  </td>`,
                )}
                <td>
                  <button type="button" class="remove-row" aria-label="${GRID.removeRow}, ${heightText(row.travel, display)}" @click=${() => this.#entries.removeRow(row.travel)}>×</button>
                </td>
              </tr>`,
            )}
            <tr class="new-row">
              <th scope="row">${this.#renderField({ row: NEW, column: HEIGHT }, '', GRID.newRow, fresh)}</th>
              ${columns.map((column, c) => html`<td>${this.#renderReading({ row: NEW, column: c }, undefined, `${columnName(column)}, ${GRID.newRow}`)}</td>`)}
              <td></td>
            </tr>
            ${this.#renderAgain()}
          </tbody>
        </table>
      </div>
      ${
        this.#ownKeys
          ? nothing
          : renderNumberKeys({
              decimalMark: decimalMark(display.language),
              hasMinutes: display.units.angle === 'arcminutes',
              hasPairs: howRead.isPair,
              signs: signsOf(setup.quantity),
              onKey: (key) => this.#key(key),
            })
      }
      ${renderAsked(this.#app, this.#entries, (act, cell) => this.#answer(act, cell))}
      ${
        opened
          ? renderPassPanel(opened, {
              onChange: (to) => this.#act(() => this.#entries.changeColumn(opened, to)),
              onRemove: () =>
                this.#act(() => {
                  this.#opened = undefined;
                  this.#at = { row: NEW, column: 0 };
                  this.#entries.removeColumn(opened);
                }),
            })
          : nothing
      }
      <p class="note">${GRID.body} ${howRead.isPair ? GRID.pairNote : `${signsOf(setup.quantity)}.`} ${GRID.againNote}</p>
      ${setup.quantity === 'camber' ? this.#phone.render() : nothing}
      <button type="button" class="text-button own-keys" @click=${() => this.#toggleKeys()}>${this.#ownKeys ? GRID.theseKeys : GRID.ownKeys}</button>
    </div>`;
  }

  /** Each pass's first height once more, where there is something to come back from. */
  #renderAgain(): TemplateResult | typeof nothing {
    const { display } = this.#app;
    const { columns, again } = this.#entries.grid;
    const heights = columns.map((_, c) => this.#entries.heightAgain(c));
    if (heights.every((height) => height === undefined)) return nothing;
    return html`<tr class="again-row">
      <th scope="row">${GRID.again}</th>
      ${columns.map((column, c) => {
        const [height, index] = [heights[c], again[c]];
        if (height === undefined) return html`<td></td>`;
        const shown = `${heightText(height, display, false)}?`;
        return html`<td>${this.#renderReading({ row: AGAIN, column: c }, index, againLabel(column, height, display), shown)}</td>`;
      })}
      <td></td>
    </tr>`;
  }

  /** A reading's field: its angle, or both figures with the angle that they make below. */
  #renderReading(cell: CellRef, index: number | undefined, label: string, placeholder = ''): TemplateResult {
    const { setup, display } = this.#app;
    const { isPair } = this.#entries.howRead;
    const reading = index === undefined ? undefined : setup.readings[index]!;
    const angle = reading ? valueText(reading.value, setup.quantity, display, isPair) : '';
    if (!isPair) return this.#renderField(cell, angle, label, placeholder);
    const pair = reading?.pair;
    const field = this.#renderField(
      cell,
      pair ? pairText(pair, display) : angle,
      `${label}, ${GRID.pair}`,
      placeholder,
    );
    return html`${field}${pair ? html`<small class="becomes">${angle}</small>` : nothing}`;
  }

  #renderField(cell: CellRef, value: string, label: string, placeholder = ''): TemplateResult {
    const key = keyOf(cell);
    return html`<input
      type="text"
      class="cell"
      data-place=${key}
      inputmode=${this.#ownKeys ? 'text' : 'none'}
      autocomplete="off"
      enterkeyhint="next"
      aria-label=${label}
      aria-invalid=${this.#entries.problems.has(key) ? 'true' : 'false'}
      placeholder=${placeholder}
      .value=${live(this.#entries.texts.get(key) ?? value)}
      @focus=${(event: FocusEvent) => this.#entered(cell, event.target as HTMLInputElement)}
      @input=${(event: InputEvent) => this.#entries.type(cell, (event.target as HTMLInputElement).value)}
      @blur=${() => this.#act(() => this.#entries.leave(cell))}
    />`;
  }

  #act(act: () => void): void {
    act();
    this.#app.host.requestUpdate();
  }

  /** A question was answered. The keys go on with the next cell, where they were waiting for it. */
  #answer(act: () => void, cell: CellRef | undefined): void {
    const isHere = cell !== undefined && keyOf(cell) === keyOf(this.#at);
    this.#act(act);
    if (isHere) this.#next();
  }

  #entered(cell: CellRef, input: HTMLInputElement): void {
    this.#at = cell;
    // The sign of the last reading stays: a phone's keypad has none, and it seldom changes.
    if (cell.column === HEIGHT || this.#entries.howRead.isPair || !/^−?$/.test(input.value)) {
      input.select();
      return;
    }
    input.value = this.#entries.lastValue(cell.column) < 0 ? '−' : '';
    this.#entries.type(cell, input.value);
    // Set by script: the caret is not everywhere at the end then.
    input.setSelectionRange(1, 1);
  }

  #takeFromPhone(value: number): void {
    const cell = this.#at.column === HEIGHT ? { ...this.#at, column: 0 } : this.#at;
    this.#at = cell;
    // Its sensor is not told finer than a tenth of a degree; an average is a little.
    this.#entries.take(cell, Math.round(value * 100) / 100);
    this.#next();
  }

  #key(key: string): void {
    if (key === 'Enter') {
      this.#next();
      return;
    }
    const input = this.#input(this.#at);
    input?.focus();
    if (input) typeKey(input, key);
  }

  #input(cell: CellRef): HTMLInputElement | null {
    return this.#app.host.renderRoot.querySelector(`[data-place="${keyOf(cell)}"]`);
  }

  /** On to the next empty cell of the pass: down the side, or up it where the pass goes against the first. */
  #next(): void {
    const { row, column } = this.#at;
    this.#entries.leave(this.#at);
    this.#app.host.requestUpdate();
    if (this.#entries.problems.has(keyOf(this.#at))) return;
    const { rows, columns } = this.#entries.grid;
    if (column === HEIGHT) {
      this.#go({ row, column: 0 });
      return;
    }
    const at = typeof row === 'number' ? row : undefined;
    const isBack = at !== undefined && this.#entries.isBack(columns[column]!);
    const after = [...rows.keys()].filter((r) => at !== undefined && (isBack ? r < at : r > at));
    if (isBack) after.reverse();
    const empty = after.find((r) => rows[r]!.cells[column] === undefined);
    // A further pass that went through the heights of the first is at its end: its first height once more.
    const isDone = empty === undefined && at !== undefined && column > 0;
    const isLeft = this.#entries.heightAgain(column) !== undefined && this.#entries.grid.again[column] === undefined;
    this.#go({ row: empty ?? (isDone && isLeft ? AGAIN : NEW), column });
  }

  #go(cell: CellRef): void {
    this.#at = cell;
    this.#app.host.requestUpdate();
    void this.#app.host.updateComplete.then(() => {
      const input = this.#input(cell);
      if (!input) return;
      input.focus();
      // The row that is not there yet keeps its field: no event of focus tells that it is another reading's now.
      this.#entered(cell, input);
      input.scrollIntoView({ block: 'nearest', inline: 'nearest' });
      // What stands above grows with the first curve: on a phone grid and keys stay where the thumb is.
      if (isTouched()) this.#app.host.renderRoot.querySelector('.reading-grid')?.scrollIntoView({ block: 'start' });
    });
  }

  readonly #pressed = (event: KeyboardEvent): void => {
    const input = event.target as HTMLElement;
    if (!input.matches('input.cell')) return;
    const { row, column } = this.#at;
    const last = this.#entries.grid.rows.length;
    const hasAgain = column !== HEIGHT && this.#entries.heightAgain(column) !== undefined;
    const places: CellRef['row'][] = [...this.#entries.grid.rows.keys(), NEW, ...(hasAgain ? ([AGAIN] as const) : [])];
    const step = { ArrowUp: -1, ArrowDown: 1 }[event.key];
    const to = step && places[(row === NEW ? last : row === AGAIN ? last + 1 : row) + step];
    if (event.key === 'Enter') this.#next();
    else if (to !== undefined) this.#go({ row: to, column });
    else if (event.key === 'Escape') {
      this.#act(() => this.#entries.forget(this.#at));
      input.blur();
    } else return;
    event.preventDefault();
  };

  #open(column: number): void {
    this.#act(() => {
      this.#opened = this.#opened === column ? undefined : column;
    });
  }

  #addPass(): void {
    const { rows } = this.#entries.grid;
    const at = this.#entries.grid.columns.length;
    const { isBack } = this.#entries.addColumn();
    this.#go({ row: rows.length === 0 ? NEW : isBack ? rows.length - 1 : 0, column: at });
  }

  #toggleKeys(): void {
    this.#ownKeys = !this.#ownKeys;
    this.#go(this.#at);
  }
}
