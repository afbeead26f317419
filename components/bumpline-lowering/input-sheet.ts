import { html, nothing, type ReactiveControllerHost, svg, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { createRef, ref } from 'lit/directives/ref.js';
import type { CarDocument } from '../../core/document/car.js';
import { choiceText } from '../../core/quantity/explain.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { CarModel } from '../shared/car-model.js';
import { renderCautions } from '../shared/cautions.js';
import type { Drafts } from '../shared/drafts.js';
import { ALL_SHEETS, HOW_SURE, POINT_SHEETS, type SheetField, type SheetSpec } from './bumpline-lowering.fields.js';
import { NAMES, problemText } from './bumpline-lowering.labels.js';
import type { Reading } from './bumpline-lowering.words.js';

interface SheetApp {
  readonly host: ReactiveControllerHost;
  readonly model: CarModel;
  readonly reading: Reading;
  readonly drafts: Drafts;
  /** Tells the page what a user did. */
  changed(path: string, value: number | undefined): void;
}

const DEFAULT_PLUS_MINUS_MM = HOW_SURE[1].plusMinus;

/** Opens one thing to give at a time: how to measure it, its fields, how sure. Each valid text takes effect at once. */
export class InputSheet {
  #app: SheetApp;
  #drafts: Drafts;
  #dialog = createRef<HTMLDialogElement>();
  #open: SheetSpec | undefined;

  constructor(app: SheetApp) {
    this.#app = app;
    this.#drafts = app.drafts;
  }

  /** The key of the sheet that is open. */
  get open(): string | undefined {
    return this.#open?.key;
  }

  async show(key: string): Promise<void> {
    this.#leaveAll();
    this.#open = ALL_SHEETS.find((sheet) => sheet.key === key);
    this.#app.host.requestUpdate();
    await this.#app.host.updateComplete;
    const dialog = this.#dialog.value;
    if (dialog && !dialog.open) dialog.showModal();
    dialog?.querySelector<HTMLInputElement>('input')?.focus();
  }

  render(): TemplateResult {
    const sheet = this.#open;
    return html`<dialog ${ref(this.#dialog)} aria-labelledby="sheet-title" @close=${this.#closed} @click=${this.#outside}>
      ${sheet ? this.#renderSheet(sheet) : html`<h2 id="sheet-title">${NAMES.numbers}</h2>`}
    </dialog>`;
  }

  #renderSheet(sheet: SheetSpec): TemplateResult {
    const { car } = this.#app.model;
    const isGiven = sheet.read(car) !== undefined;
    const next = POINT_SHEETS[POINT_SHEETS.indexOf(sheet) + 1];
    return html`<form method="dialog" novalidate @submit=${this.#submitted}>
      <h2 id="sheet-title">
        ${sheet.number ? html`<span class="number" aria-hidden="true">${sheet.number}</span>` : nothing}${sheet.title}
      </h2>
      ${sheet.fields.length > 1 ? axes() : nothing}
      <p>${sheet.howTo}</p>
      <div class="fields">${sheet.fields.map((field, index) => this.#renderField(sheet, field, index))}</div>
      ${sheet.doubt ? this.#renderDoubt(sheet) : nothing}
      <div class="buttons">
        <button class="button main" value="done">${NAMES.done}</button>
        ${
          sheet.number && next
            ? html`<button type="button" class="button" @click=${() => this.show(next.key)}>${NAMES.next}</button>`
            : nothing
        }
        ${
          isGiven
            ? html`<button type="button" class="button" @click=${() => this.#remove(sheet)}>
                ${sheet.optional ? NAMES.removeOptional : NAMES.remove}
              </button>`
            : nothing
        }
      </div>
      ${sheet.caution ? renderCautions([sheet.caution], NAMES.whileMeasuring) : nothing}
    </form>`;
  }

  #renderField(sheet: SheetSpec, field: SheetField, index: number): TemplateResult {
    const { reading, model } = this.#app;
    const value = sheet.read(model.car)?.[index];
    const problem = this.#drafts.problem(field.path);
    const example = sheet.example?.[index];
    const id = `field-${index}`;
    const parts = formatQuantity(value ?? example ?? 0, field.quantity, reading.units, { language: reading.language });
    return html`<div class="field">
      <label for=${id}>${field.label}<span class="visually-hidden">, ${parts.unit || 'degrees and minutes'}</span></label>
      <input
        class="text"
        id=${id}
        type="text"
        autocomplete="off"
        enterkeyhint="next"
        placeholder=${example === undefined ? parts.unit : parts.text}
        .value=${live(this.#drafts.text(field.path) ?? (value === undefined ? '' : parts.text))}
        aria-invalid=${problem ? 'true' : 'false'}
        aria-describedby=${problem ? `${id}-problem` : nothing}
        @focus=${(event: FocusEvent) => (event.target as HTMLInputElement).select()}
        @input=${(event: InputEvent) => this.#typed(sheet, field, (event.target as HTMLInputElement).value)}
        @change=${() => this.#left(sheet, field)}
      />
      ${
        problem
          ? html`<div class="problem" id="${id}-problem">
              ${problemText(problem, reading)} ${this.#renderChoices(sheet, field, problem.choices)}
            </div>`
          : nothing
      }
    </div>`;
  }

  #renderChoices(sheet: SheetSpec, field: SheetField, choices: number[] | undefined): unknown {
    if (!choices) return nothing;
    const { units, language } = this.#app.reading;
    return html`<div class="buttons">
      ${choices.map(
        (choice, index) =>
          html`<button type="button" class="button" @click=${() => this.#choose(sheet, field, choice)}>
            ${choiceText(choice, index, { quantity: field.quantity, unitSystem: units, language })}
          </button>`,
      )}
    </div>`;
  }

  #renderDoubt(sheet: SheetSpec): TemplateResult {
    const { reading, model } = this.#app;
    const path = `plusMinus.${sheet.key}`;
    const stated = sheet.doubt?.read(model.car) ?? (sheet.read(model.car) ? 0 : DEFAULT_PLUS_MINUS_MM);
    const short = (plusMinus: number) =>
      formatQuantity(plusMinus, 'plusMinusLength', reading.units, { language: reading.language }).text;
    const isListed = HOW_SURE.some(({ plusMinus }) => plusMinus === stated);
    const problem = this.#drafts.problem(path);
    const set = (plusMinus: number) => {
      this.#drafts.drop(path);
      this.#setDoubt(sheet, plusMinus);
    };
    return html`<fieldset>
      <legend>${NAMES.howSure}</legend>
      <div class="sure">
        ${HOW_SURE.map(
          ({ id, label, plusMinus }) =>
            html`<label class="choice"
              ><input
                type="radio"
                name="sure"
                value=${id}
                .checked=${live(plusMinus === stated)}
                @change=${() => set(plusMinus)}
              />${label} ±\u202f${short(plusMinus)}</label
            >`,
        )}
        <label for="sure-figure">${NAMES.orFigure}</label>
        <input
          class="text"
          id="sure-figure"
          type="text"
          inputmode="decimal"
          autocomplete="off"
          .value=${live(this.#drafts.text(path) ?? (isListed || stated === 0 ? '' : short(stated)))}
          aria-invalid=${problem ? 'true' : 'false'}
          @input=${(event: InputEvent) => {
            const text = (event.target as HTMLInputElement).value;
            const plusMinus = this.#drafts.type(path, text, 'plusMinusLength', reading.units);
            if (plusMinus !== undefined) this.#setDoubt(sheet, plusMinus);
            this.#app.host.requestUpdate();
          }}
          @change=${() => {
            this.#drafts.leave(path, 'plusMinusLength', reading.units);
            this.#app.host.requestUpdate();
          }}
        />
      </div>
      ${problem ? html`<div class="problem">${problemText(problem, reading)}</div>` : nothing}
    </fieldset>`;
  }

  #setDoubt(sheet: SheetSpec, plusMinus: number): void {
    this.#app.model.update(
      `how sure of ${sheet.title}`,
      (car) => sheet.doubt!.write(car, plusMinus),
      `doubt ${sheet.key}`,
    );
    this.#app.changed(`plusMinus.${sheet.key}`, plusMinus);
  }

  #typed(sheet: SheetSpec, field: SheetField, text: string): void {
    this.#drafts.type(field.path, text, field.quantity, this.#app.reading.units);
    this.#take(sheet, field);
    this.#app.host.requestUpdate();
  }

  #left(sheet: SheetSpec, field: SheetField): void {
    const text = this.#drafts.text(field.path);
    if (text === undefined) return;
    this.#take(sheet, field);
    const { units } = this.#app.reading;
    // Until all three coordinates are known the texts are all there is of them: one that can be read is kept as it is.
    const isWaiting = sheet.fields.length > 1 && sheet.read(this.#app.model.car) === undefined;
    const isRead = this.#drafts.type(field.path, text, field.quantity, units) !== undefined;
    if (text === '') this.#drafts.drop(field.path);
    else if (!isWaiting || !isRead) this.#drafts.leave(field.path, field.quantity, units);
    this.#app.model.endStep();
    this.#app.host.requestUpdate();
  }

  /** The chosen reading stands in the field, written so that it can be read in one way only. */
  #choose(sheet: SheetSpec, field: SheetField, choice: number): void {
    const isAngle = field.quantity === 'camber' || field.quantity === 'toe';
    this.#drafts.type(
      field.path,
      `${choice.toFixed(6)}${isAngle ? '°' : 'mm'}`,
      field.quantity,
      this.#app.reading.units,
    );
    this.#take(sheet, field);
    this.#left(sheet, field);
  }

  /** Writes the sheet's values once every field has one: a typed text, or what was given before. */
  #take(sheet: SheetSpec, changed: SheetField): void {
    const { model, reading } = this.#app;
    const before = sheet.read(model.car);
    const values = sheet.fields.map((field, index) => {
      const text = this.#drafts.text(field.path);
      if (text === undefined) return before?.[index];
      return this.#drafts.type(field.path, text, field.quantity, reading.units);
    });
    if (!values.every((value) => value !== undefined)) return;
    if (before && values.every((value, index) => value === before[index])) return;
    model.update(sheet.title, (car) => this.#write(sheet, car, values as number[]), `field ${sheet.key}`);
    this.#app.changed(changed.path, values[sheet.fields.indexOf(changed)]);
  }

  #write(sheet: SheetSpec, car: CarDocument, values: number[]): CarDocument {
    const next = sheet.write(car, values);
    // A point measured for the first time is as good as a tape until somebody says otherwise.
    const isNew = sheet.read(car) === undefined && sheet.doubt?.read(car) === undefined;
    return isNew && sheet.doubt ? sheet.doubt.write(next, DEFAULT_PLUS_MINUS_MM) : next;
  }

  #remove(sheet: SheetSpec): void {
    for (const field of sheet.fields) this.#drafts.drop(field.path);
    this.#app.model.update(sheet.title, (car) => sheet.write(car, undefined));
    this.#app.changed(sheet.key, undefined);
    this.#app.host.requestUpdate();
  }

  /** Enter in a field goes on to the next one, and closes from the last. */
  readonly #submitted = (event: SubmitEvent): void => {
    if (event.submitter?.getAttribute('value') !== 'done') return;
    const root = this.#dialog.value?.getRootNode() as ShadowRoot | undefined;
    const fields = [...(this.#dialog.value?.querySelectorAll<HTMLInputElement>('.fields input') ?? [])];
    const at = fields.indexOf(root?.activeElement as HTMLInputElement);
    const next = fields[at + 1];
    if (at < 0 || !next) return;
    event.preventDefault();
    next.focus();
  };

  /** A field that still has the focus was not left yet. */
  #leaveAll(): void {
    const sheet = this.#open;
    for (const field of sheet?.fields ?? []) this.#left(sheet!, field);
  }

  readonly #closed = (): void => {
    // The event comes late: another sheet may be open by now.
    if (this.#dialog.value?.open) return;
    this.#leaveAll();
    this.#open = undefined;
    this.#app.host.requestUpdate();
  };

  readonly #outside = (event: MouseEvent): void => {
    if (event.target === this.#dialog.value) this.#dialog.value?.close();
  };
}

/** The three directions, drawn. */
const axes = (): TemplateResult => html`<svg
  class="axes"
  viewBox="0 0 104 72"
  width="104"
  height="72"
  role="img"
  aria-label="x points forward, y out to the left wheel, z up"
>
  ${svg`<g fill="none" stroke="var(--_ink)" stroke-width="1.6"><path d="M40 56V12M36 19l4-8 4 8"/><path d="M40 56h46M79 52l8 4-8 4"/><path d="M40 56L20 69M24 61l-5 8 10-1"/></g>
  <g fill="var(--_soft)" font-size="12" font-family="sans-serif"><text x="48" y="18">z up</text><text x="58" y="49">y out</text><text x="0" y="58">x fwd</text></g>`}
</svg>`;
