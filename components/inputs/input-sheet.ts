import { html, nothing, type TemplateResult } from 'lit';
import { createRef, ref } from 'lit/directives/ref.js';
import { type CarDocument, otherCorner } from '../../core/document/car.js';
import { answeredCorner } from '../../core/document/setup-in-use.js';
import type { Problem } from '../../core/quantity/problem.js';
import { shownName } from '../car/shown-names.words.js';
import { renderCautions } from '../element/cautions.js';
import { focusSentence } from '../element/keep-focus.js';
import type { Display } from '../element/sentence.js';
import type { Drafts } from './drafts.js';
import { renderEntryField } from './entry-field.js';
import { renderHowSure } from './how-sure.js';
import { NAMES } from './inputs.labels.js';
import { unitOf } from './keypad.js';
import { halfGiven, takeAgain } from './sheet.labels.js';
import { type InputView, SheetEdits } from './sheet-edits.js';
import { renderInstead, renderOptions } from './sheet-options.js';
import { type SheetField, type SheetSpec, scaleOf } from './sheet-spec.js';
import { MINUS, turnedSign } from './turned-sign.js';

/** Which sheets there are, and what only some of them show. */
export interface SheetKit {
  sheetOf(key: string): SheetSpec | undefined;
  /** Those among which one is, in the order in which one leads to the next. */
  runOf(car: CarDocument, sheet: SheetSpec): readonly SheetSpec[];
  /** A problem in words. @param sheet the one that is open, by whose words it is told where nothing else knows it */
  describeProblem(problem: Problem, sheet?: SheetSpec): string;
  /** Drawn above the fields: where it is, how it is measured. */
  drawn?(sheet: SheetSpec): TemplateResult | typeof nothing;
  /** Under the fields: what is assumed in its place, what looks like a slip. */
  notes?(sheet: SheetSpec): readonly { text: string; isQuery?: boolean }[];
  /** The answer as it stands, in a line: what is typed changes it under the reader's eyes. */
  answer?(): string | undefined;
  /** What stands in for it: of the example, of the page, or of what the answer took. */
  standIn?(sheet: SheetSpec): readonly number[] | undefined;
}

/** Whether a unit takes more room than most. */
const hasLongUnits = ({ fields }: SheetSpec, { units }: Display): boolean =>
  fields.some(({ quantity }) => unitOf(quantity, units).length > 3);

const placeIn = (run: readonly SheetSpec[], { key }: SheetSpec): number => run.findIndex((one) => one.key === key);

/**
 * Opens one thing to give at a time: where it is, how to measure it, its fields, how sure; then leads on to the next. Each valid
 * text takes effect at once.
 */
export class InputSheet {
  #app: InputView;
  #kit: SheetKit;
  #drafts: Drafts;
  #edits: SheetEdits;
  #dialog = createRef<HTMLDialogElement>();
  #key: string | undefined;
  /** The sheet that was told that a field of it is still empty: asked a second time, it lets go. */
  #warned: string | undefined;

  constructor(app: InputView, kit: SheetKit) {
    this.#app = app;
    this.#kit = kit;
    this.#drafts = app.drafts;
    this.#edits = new SheetEdits(app);
  }

  /** The key of the sheet that is open. */
  get open(): string | undefined {
    return this.#key;
  }

  /** Looked up anew: what a sheet asks may depend on the car. */
  get #open(): SheetSpec | undefined {
    return this.#key === undefined ? undefined : this.#kit.sheetOf(this.#key);
  }

  async show(key: string): Promise<void> {
    this.#leaveAll();
    this.#key = key;
    this.#warned = undefined;
    this.#app.host.requestUpdate();
    await this.#app.host.updateComplete;
    const dialog = this.#dialog.value;
    if (dialog && !dialog.open) dialog.showModal();
    dialog?.scrollTo(0, 0);
    const first = this.#inputs[0] ?? dialog?.querySelector<HTMLInputElement>('input:checked');
    first?.focus({ preventScroll: true });
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
    const isGiven = sheet.read(car) !== undefined || sheet.partly?.read(car).some((value) => value !== undefined);
    const corner = answeredCorner(car);
    const run = this.#kit.runOf(car, sheet);
    const at = placeIn(run, sheet);
    const next = at >= 0 ? run[at + 1] : undefined;
    const options = sheet.options?.map((group, index) =>
      renderOptions(group, index, car, (id) => this.#edits.choseOption(group, id)),
    );
    return html`<div class="entry">
      <h2 id="sheet-title">
        ${sheet.number ? html`<span class="number" aria-hidden="true">${sheet.number}</span>` : nothing}<span
          class="title"
          >${sheet.title}</span
        >
        <small>${at >= 0 ? NAMES.ofRun(corner, at + 1, run.length) : sheet.key === 'other' ? shownName(otherCorner(corner)) : shownName(corner)}</small>
      </h2>
      <div class="how">
        ${this.#kit.drawn?.(sheet) ?? nothing}
        <p>${sheet.howTo}</p>
      </div>
      ${sheet.optionsFirst ? options : nothing}
      <div class="fields ${hasLongUnits(sheet, this.#app.display) ? 'long-units' : ''}" @keydown=${this.#entered}>
        ${sheet.fields.map((field, index) => this.#renderField(sheet, field, index))}
      </div>
      ${this.#kit.notes?.(sheet).map(({ text, isQuery }) => html`<p class=${isQuery ? 'query' : 'note'}>${text}</p>`)}
      ${this.#warned === sheet.key ? html`<div class="problem" role="alert">${halfGiven(sheet, this.#edits.emptyFields(sheet), car)}</div>` : nothing}
      ${sheet.doubt ? this.#renderDoubt(sheet) : nothing}
      ${sheet.optionsFirst ? nothing : options}
      ${
        sheet.copy?.offers(car)
          ? html`<button type="button" class="text-button" @click=${() => this.#edits.copy(sheet)}>${sheet.copy.label}</button>`
          : nothing
      }
      ${renderInstead(sheet, car, (key) => void this.show(key))}
      ${
        isGiven
          ? html`<button type="button" class="text-button" @click=${() => {
              this.#edits.remove(sheet);
              if (sheet.goesWhole) this.#dialog.value?.close();
              else this.#inputs[0]?.focus();
            }}>
              ${sheet.partly ? NAMES.clear : sheet.optional ? NAMES.removeOptional : takeAgain(car)}
            </button>`
          : nothing
      }
      ${sheet.caution ? renderCautions([sheet.caution].flat(), NAMES.whileMeasuring) : nothing}
      <div class="buttons">
        ${this.#renderAnswer()}
        ${
          at > 0
            ? html`<button type="button" class="button" @click=${() => this.show(run[at - 1]!.key)}>${NAMES.back}</button>`
            : nothing
        }
        <button type="button" class="button ${next ? '' : 'main'}" @click=${() => void this.#done()}>${NAMES.done}</button>
        ${
          next
            ? html`<button type="button" class="button main" @click=${() => void this.#goOn()}>${NAMES.next}</button>`
            : nothing
        }
      </div>
    </div>`;
  }

  #renderAnswer(): TemplateResult | typeof nothing {
    const answer = this.#kit.answer?.();
    return answer === undefined ? nothing : html`<p class="answer">${answer}</p>`;
  }

  #renderField(sheet: SheetSpec, field: SheetField, index: number): TemplateResult {
    const { display, model } = this.#app;
    return renderEntryField(field, {
      id: `field-${index}`,
      value: (sheet.partly?.read(model.car) ?? sheet.read(model.car))?.[index],
      whose: field.whose?.(model.car),
      standIn: (this.#kit.standIn?.(sheet) ?? sheet.standIn?.(model.car))?.[index],
      takesText: index === 0 && sheet.spread !== undefined,
      text: this.#drafts.text(field.path),
      problem: this.#problemOf(sheet, field),
      display,
      describeProblem: (problem) => this.#kit.describeProblem(problem, sheet),
      onType: (text) => {
        this.#warned = undefined;
        this.#edits.typed(sheet, field, text);
      },
      onLeave: () => this.#edits.left(sheet, field),
      onTurnSign: () => this.#turnSign(sheet, field, index),
      onChoose: (choice) => this.#edits.choose(sheet, field, choice),
    });
  }

  /** What is wrong with a field: its text, what the solver says of its value, or the value by itself where nothing was asked yet. */
  #problemOf(sheet: SheetSpec, field: SheetField): Problem | undefined {
    const found = this.#drafts.problem(field.path) ?? this.#app.problems.find(({ path }) => path === field.path);
    // Half of what is being typed is no value yet.
    if (found || this.#drafts.text(field.path) !== undefined) return found;
    const value = sheet.read(this.#app.model.car)?.[sheet.fields.indexOf(field)];
    return value === undefined ? undefined : field.check?.(value);
  }

  #renderDoubt(sheet: SheetSpec): TemplateResult {
    const { display, host } = this.#app;
    return renderHowSure({
      path: `plusMinus.${sheet.key}`,
      scale: scaleOf(sheet),
      stated: this.#edits.statedDoubt(sheet),
      display,
      drafts: this.#drafts,
      describeProblem: (problem) => this.#kit.describeProblem(problem, sheet),
      onSet: (plusMinus) => this.#edits.setDoubt(sheet, plusMinus),
      onText: () => host.requestUpdate(),
    });
  }

  #turnSign(sheet: SheetSpec, field: SheetField, index: number): void {
    const input = this.#inputs[index];
    if (!input) return;
    const isValue = this.#drafts.text(field.path) === undefined;
    const turned = turnedSign(input.value, isValue, field.quantity, this.#app.display.units);
    this.#edits.typed(sheet, field, turned);
    // An alone minus waits for its digits.
    if (turned !== MINUS) this.#edits.left(sheet, field);
    void this.#app.host.updateComplete.then(() => {
      input.focus();
      input.setSelectionRange(input.value.length, input.value.length);
    });
  }

  /** Enter goes on to the next field, and from the last one to the next sheet. */
  readonly #entered = (event: KeyboardEvent): void => {
    if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return;
    event.preventDefault();
    const inputs = this.#inputs;
    const next = inputs[inputs.indexOf(event.target) + 1];
    if (next) next.focus();
    else void this.#goOn();
  };

  async #goOn(): Promise<void> {
    const sheet = this.#open;
    const run = sheet ? this.#kit.runOf(this.#app.model.car, sheet) : [];
    const at = sheet ? placeIn(run, sheet) : -1;
    const next = at < 0 ? undefined : run[at + 1];
    if (!next) await this.#done();
    else if (await this.#mayLeave()) await this.show(next.key);
  }

  async #done(): Promise<void> {
    if (await this.#mayLeave()) this.#dialog.value?.close();
  }

  /** Nothing given is dropped in silence: a field with a problem holds the sheet open, a missing one asks once. */
  async #mayLeave(): Promise<boolean> {
    const sheet = this.#open;
    if (!sheet) return true;
    this.#leaveAll();
    // What is wrong with half of a number is not wrong with the whole one: the answer to that is waited for.
    await this.#app.answered();
    if (this.#key !== sheet.key) return false;
    // Of what is still missing the field says so; it is wrong with nothing that was typed.
    const wrong = sheet.fields.findIndex((field) => {
      const problem = this.#problemOf(sheet, field);
      return problem !== undefined && problem.code !== 'missing';
    });
    const [empty] = this.#edits.emptyFields(sheet);
    if (wrong < 0 && (empty === undefined || this.#warned === sheet.key)) return true;
    if (wrong < 0) this.#warned = sheet.key;
    this.#app.host.requestUpdate();
    void this.#app.host.updateComplete.then(() => {
      this.#inputs[wrong < 0 ? empty! : wrong]?.focus();
      this.#dialog.value?.querySelector('[role=alert]')?.scrollIntoView({ block: 'nearest' });
    });
    return false;
  }

  /** A field that still has the focus was not left yet. */
  #leaveAll(): void {
    const sheet = this.#open;
    for (const field of sheet?.fields ?? []) this.#edits.left(sheet!, field);
    if (sheet) this.#edits.takeBackEmptied(sheet);
  }

  readonly #closed = (): void => {
    // The event comes late: another sheet may be open by now.
    if (this.#dialog.value?.open) return;
    this.#leaveAll();
    this.#key = undefined;
    this.#warned = undefined;
    this.#app.host.requestUpdate();
    void focusSentence(this.#app.host);
  };

  readonly #outside = (event: MouseEvent): void => {
    if (event.target === this.#dialog.value) this.#dialog.value?.close();
  };
}
