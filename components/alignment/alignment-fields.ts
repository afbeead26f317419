import { html, type TemplateResult } from 'lit';
import { type AlignmentSettings, withAlignment } from '../../core/document/alignment-settings.js';
import type { CarDocument } from '../../core/document/car.js';
import { explainProblem } from '../../core/quantity/explain.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { QUANTITIES } from '../../core/quantity/quantities.js';
import type { SheetView } from '../element/sheet-view.js';
import { Drafts } from '../inputs/drafts.js';
import { renderEntryField } from '../inputs/entry-field.js';
import { turnedSign } from '../inputs/turned-sign.js';
import { ALIGNMENT } from './alignment.labels.js';

/** A number of the alignment sheet: where it is kept, and what it is called. */
export interface AlignmentField {
  key: string;
  label: string;
  quantity: Quantity;
  /** Shown in italics while nothing is given. */
  standIn?: number | undefined;
  read(car: CarDocument): number | undefined;
  write(car: CarDocument, value: number | undefined): CarDocument;
}

type NumberKey = Exclude<keyof AlignmentSettings, 'thread'>;

/** A field that is kept in the car's record of its alignment. */
export const settingField = (key: NumberKey, label: string, quantity: Quantity, standIn?: number): AlignmentField => ({
  key,
  label,
  quantity,
  standIn,
  read: ({ alignment }) => alignment?.[key],
  write: (car, value) => withAlignment(car, { [key]: value }),
});

/** The fields of the sheet. A text that is no number stays in its field, with what is wrong under it, and dims nothing else. */
export class AlignmentFields {
  readonly #view: SheetView;
  readonly #drafts = new Drafts();

  constructor(view: SheetView) {
    this.#view = view;
  }

  /** @param problem what an answer says of the value */
  render(field: AlignmentField, problem?: Problem): TemplateResult {
    const { display, drafts, car } = this.#view;
    // What reads texts comes with the sheet's own.
    this.#drafts.parser ??= drafts.parser;
    const { key, label, quantity, standIn, read } = field;
    const id = `alignment-${key}`;
    const describe = (one: Problem) =>
      explainProblem(one, { label, quantity, language: display.language, unitSystem: display.units });
    return html`${renderEntryField(
      { path: key, label, quantity, signed: QUANTITIES[quantity].signed },
      {
        id,
        value: read(car),
        standIn,
        takesText: false,
        whose: undefined,
        text: this.#drafts.text(key),
        problem: this.#drafts.problem(key) ?? problem,
        display,
        describeProblem: describe,
        onType: (text) => this.#type(field, text),
        onLeave: () => this.#leave(field),
        onTurnSign: () => {
          const input = this.#view.host.renderRoot.querySelector<HTMLInputElement>(`#${id}`);
          if (!input) return;
          const isValue = this.#drafts.text(key) === undefined;
          this.#type(field, turnedSign(input.value, isValue, quantity, display.units));
          this.#leave(field);
        },
        onChoose: (choice) => {
          this.#drafts.drop(key);
          this.#write(field, choice);
          this.#view.endStep();
        },
      },
    )}`;
  }

  /** Another unit may make sense of a text that the one before did not. */
  readAgain(fields: readonly AlignmentField[]): void {
    for (const field of fields) {
      const text = this.#drafts.text(field.key);
      if (text === undefined) continue;
      this.#type(field, text);
      this.#leave(field);
    }
  }

  #type(field: AlignmentField, text: string): void {
    const { host, model, display } = this.#view;
    const { key, quantity } = field;
    const value = this.#drafts.type(key, text, quantity, display.units);
    if (value !== undefined) this.#write(field, value);
    // Half of what is being typed was a number as well; it was not meant.
    else model.cancelStep(stepOf(field));
    host.requestUpdate();
  }

  #leave(field: AlignmentField): void {
    const { display } = this.#view;
    const text = this.#drafts.text(field.key);
    if (text === undefined) return;
    if (text.trim() === '') {
      this.#drafts.drop(field.key);
      if (field.read(this.#view.car) !== undefined) this.#write(field, undefined);
    } else this.#drafts.leave(field.key, field.quantity, display.units);
    this.#view.endStep();
  }

  #write(field: AlignmentField, value: number | undefined): void {
    this.#view.change('alignment', ALIGNMENT.step, (car) => field.write(car, value), stepOf(field));
  }
}

/** Typing in one field is one step of undo. */
const stepOf = ({ key }: AlignmentField): string => `alignment.${key}`;
