import { html, nothing, type ReactiveControllerHost, type TemplateResult } from 'lit';
import { createRef, ref } from 'lit/directives/ref.js';
import { type CarDocument, strutOf } from '../../core/document/car.js';
import { type Query, unusualOf } from '../../core/document/unusual.js';
import type { StrutPointKey } from '../../core/linkage/corner.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { CarModel } from '../shared/car-model.js';
import { renderCautions } from '../shared/cautions.js';
import type { Drafts } from '../shared/drafts.js';
import { ALL_SHEETS, HOW_SURE, RUN, type SheetField, type SheetSpec } from './bumpline-lowering.fields.js';
import { halfGiven, NAMES, ofRun, queryText, takeAgain } from './bumpline-lowering.labels.js';
import type { Reading } from './bumpline-lowering.words.js';
import { renderEntryField } from './entry-field.js';
import { renderHowSure } from './how-sure.js';
import { renderWhere } from './where.js';

interface SheetApp {
  readonly host: ReactiveControllerHost;
  readonly model: CarModel;
  readonly reading: Reading;
  readonly drafts: Drafts;
  /** Every problem, the solver's too. */
  readonly problems: Problem[];
  /** Tells the page what a user did. */
  changed(path: string, value: number | undefined): void;
  beginEdit(): void;
  endEdit(): void;
}

const DEFAULT_PLUS_MINUS_MM = HOW_SURE[1].plusMinus;
const MINUS = '\u2212';

/**
 * Opens one thing to give at a time: where it is, how to measure it, its fields, how sure; then leads on to the next. Each valid
 * text takes effect at once.
 */
export class InputSheet {
  #app: SheetApp;
  #drafts: Drafts;
  #dialog = createRef<HTMLDialogElement>();
  #open: SheetSpec | undefined;
  /** The sheet that was told that a field of it is still empty: asked a second time, it lets go. */
  #warned: SheetSpec | undefined;

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
    this.#warned = undefined;
    this.#app.host.requestUpdate();
    await this.#app.host.updateComplete;
    const dialog = this.#dialog.value;
    if (dialog && !dialog.open) dialog.showModal();
    dialog?.scrollTo(0, 0);
    this.#inputs[0]?.focus({ preventScroll: true });
  }

  get #inputs(): HTMLInputElement[] {
    return [...(this.#dialog.value?.querySelectorAll<HTMLInputElement>('.fields input') ?? [])];
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
    const at = RUN.indexOf(sheet);
    const next = at >= 0 ? RUN[at + 1] : undefined;
    return html`<div class="entry">
      <h2 id="sheet-title">
        ${sheet.number ? html`<span class="number" aria-hidden="true">${sheet.number}</span>` : nothing}<span
          class="title"
          >${sheet.title}</span
        >
        ${at >= 0 ? html`<small>${ofRun(at + 1, RUN.length)}</small>` : nothing}
      </h2>
      ${sheet.number ? renderWhere(strutOf(car), sheet.key as StrutPointKey) : nothing}
      <p>${sheet.howTo}</p>
      <div class="fields" @keydown=${this.#entered}>
        ${sheet.fields.map((field, index) => this.#renderField(sheet, field, index))}
      </div>
      ${this.#queriesOf(sheet).map((query) => html`<p class="query">${queryText(query, this.#app.reading)}</p>`)}
      ${this.#warned === sheet ? html`<div class="problem" role="alert">${halfGiven(sheet, this.#emptyFields(sheet), car)}</div>` : nothing}
      ${sheet.doubt ? this.#renderDoubt(sheet) : nothing}
      ${
        isGiven
          ? html`<button type="button" class="text-button" @click=${() => this.#remove(sheet)}>
              ${sheet.optional ? NAMES.removeOptional : takeAgain(car)}
            </button>`
          : nothing
      }
      ${sheet.caution ? renderCautions([sheet.caution], NAMES.whileMeasuring) : nothing}
      <div class="buttons">
        ${
          at > 0
            ? html`<button type="button" class="button" @click=${() => this.show(RUN[at - 1]!.key)}>${NAMES.back}</button>`
            : nothing
        }
        <button type="button" class="button ${next ? '' : 'main'}" @click=${() => this.#done()}>${NAMES.done}</button>
        ${
          next
            ? html`<button type="button" class="button main" @click=${() => this.#goOn()}>${NAMES.next}</button>`
            : nothing
        }
      </div>
    </div>`;
  }

  /** What looks like a slip of the keys in this point, as soon as it is typed. */
  #queriesOf(sheet: SheetSpec): Query[] {
    const { car } = this.#app.model;
    if (!sheet.read(car) || car.whole !== undefined) return [];
    return unusualOf(strutOf(car)).filter(({ path }) => path === sheet.key);
  }

  #renderField(sheet: SheetSpec, field: SheetField, index: number): TemplateResult {
    const { reading, model } = this.#app;
    return renderEntryField(field, {
      id: `field-${index}`,
      value: sheet.read(model.car)?.[index],
      standIn: sheet.standIn?.(model.car)[index],
      text: this.#drafts.text(field.path),
      problem: this.#problemOf(field),
      reading,
      onType: (text) => this.#typed(sheet, field, text),
      onLeave: () => this.#left(sheet, field),
      onTurnSign: () => this.#turnSign(sheet, field, index),
      onChoose: (choice) => this.#choose(sheet, field, choice),
    });
  }

  /** What is wrong with a field: its text, or what the solver says of its value. */
  #problemOf(field: SheetField): Problem | undefined {
    return this.#drafts.problem(field.path) ?? this.#app.problems.find(({ path }) => path === field.path);
  }

  #renderDoubt(sheet: SheetSpec): TemplateResult {
    const { reading, model, host } = this.#app;
    return renderHowSure({
      path: `plusMinus.${sheet.key}`,
      stated: sheet.doubt?.read(model.car) ?? (sheet.read(model.car) ? 0 : DEFAULT_PLUS_MINUS_MM),
      reading,
      drafts: this.#drafts,
      onSet: (plusMinus) => {
        model.update(`how sure of ${sheet.title}`, (car) => sheet.doubt!.write(car, plusMinus), `doubt ${sheet.key}`);
        this.#app.changed(`plusMinus.${sheet.key}`, plusMinus);
      },
      onText: () => host.requestUpdate(),
    });
  }

  #typed(sheet: SheetSpec, field: SheetField, text: string): void {
    this.#app.beginEdit();
    this.#warned = undefined;
    const isRead = this.#drafts.type(field.path, text, field.quantity, this.#app.reading.units) !== undefined;
    if (isRead) this.#take(sheet, field);
    // Half of what is being typed was a number as well; it was not meant.
    else this.#app.model.cancelStep(stepOf(field));
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
    if (text.trim() === '') this.#drafts.drop(field.path);
    else if (!isWaiting || !isRead) this.#drafts.leave(field.path, field.quantity, units);
    // The point is whole: its other texts were waiting for this one.
    if (!isWaiting) {
      for (const { path, quantity } of sheet.fields) if (path !== field.path) this.#drafts.leave(path, quantity, units);
    }
    this.#app.model.endStep();
    this.#app.endEdit();
    this.#app.host.requestUpdate();
  }

  #turnSign(sheet: SheetSpec, field: SheetField, index: number): void {
    const input = this.#inputs[index];
    if (!input) return;
    const text = input.value.trim();
    const turned = /^[-−]/.test(text) ? text.slice(1) : `${MINUS}${text.replace(/^\+/, '')}`;
    this.#typed(sheet, field, turned);
    // An alone minus waits for its digits.
    if (turned !== MINUS) this.#left(sheet, field);
    void this.#app.host.updateComplete.then(() => {
      input.focus();
      input.setSelectionRange(input.value.length, input.value.length);
    });
  }

  /** The chosen reading stands in the field, written so that it can be read in one way only. */
  #choose(sheet: SheetSpec, field: SheetField, choice: number): void {
    const isAngle = field.quantity === 'camber' || field.quantity === 'toe';
    // Four places: no comma or point of thousands can be meant.
    const digits = Number.isInteger(choice) ? String(choice) : choice.toFixed(4);
    this.#drafts.type(field.path, `${digits}${isAngle ? '°' : 'mm'}`, field.quantity, this.#app.reading.units);
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
    model.update(sheet.title, (car) => this.#write(sheet, car, values as number[]), stepOf(changed));
    this.#app.changed(changed.path, values[sheet.fields.indexOf(changed)]);
  }

  #write(sheet: SheetSpec, car: CarDocument, values: number[]): CarDocument {
    // A point measured for the first time is as good as a tape until somebody says otherwise.
    const isNew = sheet.read(car) === undefined;
    const next = sheet.write(car, values);
    return isNew && sheet.doubt && sheet.doubt.read(next) === undefined
      ? sheet.doubt.write(next, DEFAULT_PLUS_MINUS_MM)
      : next;
  }

  #remove(sheet: SheetSpec): void {
    for (const field of sheet.fields) this.#drafts.drop(field.path);
    this.#app.model.update(sheet.title, (car) => sheet.write(car, undefined));
    this.#app.changed(sheet.key, undefined);
    this.#app.host.requestUpdate();
    this.#inputs[0]?.focus();
  }

  /** Enter goes on to the next field, and from the last one to the next sheet. */
  readonly #entered = (event: KeyboardEvent): void => {
    if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return;
    event.preventDefault();
    const inputs = this.#inputs;
    const next = inputs[inputs.indexOf(event.target) + 1];
    if (next) next.focus();
    else this.#goOn();
  };

  #goOn(): void {
    const sheet = this.#open;
    const next = sheet && RUN.includes(sheet) ? RUN[RUN.indexOf(sheet) + 1] : undefined;
    if (!next) this.#done();
    else if (this.#mayLeave()) void this.show(next.key);
  }

  #done(): void {
    if (this.#mayLeave()) this.#dialog.value?.close();
  }

  /** Nothing given is dropped in silence: a field with a problem holds the sheet open, a missing one asks once. */
  #mayLeave(): boolean {
    const sheet = this.#open;
    if (!sheet) return true;
    this.#leaveAll();
    const wrong = sheet.fields.findIndex((field) => this.#problemOf(field));
    const [empty] = this.#emptyFields(sheet);
    if (wrong < 0 && (empty === undefined || this.#warned === sheet)) return true;
    if (wrong < 0) this.#warned = sheet;
    this.#app.host.requestUpdate();
    void this.#app.host.updateComplete.then(() => this.#inputs[wrong < 0 ? empty! : wrong]?.focus());
    return false;
  }

  /** Places of the fields that keep a point from being whole; none where nothing was typed at all. */
  #emptyFields(sheet: SheetSpec): number[] {
    if (sheet.read(this.#app.model.car)) return [];
    const isEmpty = ({ path }: SheetField) => (this.#drafts.text(path)?.trim() ?? '') === '';
    const empty = sheet.fields.flatMap((field, index) => (isEmpty(field) ? [index] : []));
    return empty.length === sheet.fields.length ? [] : empty;
  }

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
    this.#warned = undefined;
    this.#app.host.requestUpdate();
  };

  readonly #outside = (event: MouseEvent): void => {
    if (event.target === this.#dialog.value) this.#dialog.value?.close();
  };
}

/** Typing in one field is one step of undo. */
const stepOf = ({ path }: SheetField): string => `field ${path}`;
