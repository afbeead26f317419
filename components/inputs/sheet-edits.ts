import type { CarDocument } from '../../core/document/car.js';
import { QUANTITIES } from '../../core/quantity/quantities.js';
import type { SheetView } from '../element/sheet-view.js';
import type { Drafts } from './drafts.js';
import { NAMES } from './inputs.labels.js';
import { HOW_SURE, type OptionGroup, type SheetField, type SheetSpec, scaleOf } from './sheet-spec.js';

/** What an input sheet knows of the element it belongs to. */
export type InputView = Pick<
  SheetView,
  'host' | 'model' | 'display' | 'drafts' | 'problems' | 'changed' | 'answered' | 'beginEdit' | 'endEdit'
>;

/** As good as a tape or a gauge until somebody says otherwise. */
const defaultPlusMinus = (sheet: SheetSpec): number => HOW_SURE[scaleOf(sheet)][1].plusMinus;

/** From what is typed and chosen on a sheet to the car. */
export class SheetEdits {
  #app: InputView;
  #drafts: Drafts;
  /** How sure one is of values that are still to come. */
  #doubts = new Map<string, number>();

  constructor(app: InputView) {
    this.#app = app;
    this.#drafts = app.drafts;
  }

  /** A text is typed; each that can be read takes effect at once. */
  typed(sheet: SheetSpec, field: SheetField, text: string): void {
    this.#app.beginEdit();
    const spread = sheet.spread?.(text);
    spread?.forEach((value, index) => {
      const { path, quantity } = sheet.fields[index]!;
      if (value !== undefined) this.#drafts.type(path, String(value), quantity, this.#app.display.units);
    });
    const isRead =
      spread !== undefined ||
      this.#drafts.type(field.path, text, field.quantity, this.#app.display.units) !== undefined;
    if (isRead) this.#take(sheet, field);
    // Half of what is being typed was a number as well; it was not meant.
    else this.#app.model.cancelStep(stepOf(field));
    this.#app.host.requestUpdate();
  }

  /** A field is left. */
  left(sheet: SheetSpec, field: SheetField): void {
    const text = this.#drafts.text(field.path);
    if (text === undefined) return;
    this.#take(sheet, field);
    const { units } = this.#app.display;
    // Until all three coordinates are known the texts are all there is of them: one that can be read is kept as it is.
    const isWaiting = (of: SheetField) =>
      sheet.fields.length > 1 && this.#givenOf(sheet)?.[sheet.fields.indexOf(of)] === undefined;
    const isRead = this.#drafts.type(field.path, text, field.quantity, units) !== undefined;
    // One that was emptied so as to be taken back stays empty until its dialog is done.
    if (text.trim() === '') this.#dropEmpty(sheet, field);
    else if (!isWaiting(field) || !isRead) this.#drafts.leave(field.path, field.quantity, units);
    // What the others waited for has come.
    if (!isWaiting(field)) {
      for (const other of sheet.fields) {
        if (other !== field && !isWaiting(other)) this.#drafts.leave(other.path, other.quantity, units);
      }
    }
    this.#app.model.endStep();
    this.#app.endEdit();
    this.#app.host.requestUpdate();
  }

  #dropEmpty(sheet: SheetSpec, field: SheetField): void {
    const isGiven = this.#givenOf(sheet)?.[sheet.fields.indexOf(field)] !== undefined;
    if (!(sheet.optional && isGiven)) this.#drafts.drop(field.path);
  }

  /** Takes back what was emptied of what can be left out: a field by itself, or all of the sheet. What cannot keeps its value. */
  takeBackEmptied(sheet: SheetSpec): void {
    const { fields, partly, optional } = sheet;
    const before = optional ? this.#givenOf(sheet) : undefined;
    if (!before) return;
    const isEmptied = ({ path }: SheetField) => this.#drafts.text(path)?.trim() === '';
    const emptied = fields.filter((field, i) => before[i] !== undefined && isEmptied(field));
    if (emptied.length === 0) return;
    for (const { path } of emptied) this.#drafts.drop(path);
    const isWhole = fields.every((field, i) => before[i] === undefined || emptied.includes(field));
    const back = isWhole ? emptied : partly ? emptied.filter((field) => !field.needed) : [];
    const first = back[0];
    if (!first) return;
    const values = before.map((value, i) => (back.includes(fields[i]!) ? undefined : value));
    this.#app.model.update(sheet.title, (car) => (partly ? partly.write(car, values) : sheet.write(car, undefined)));
    this.#app.changed(back.length > 1 ? sheet.key : first.path, undefined);
    this.#app.host.requestUpdate();
  }

  /** The chosen reading stands in the field, written so that it can be read in one way only. */
  choose(sheet: SheetSpec, field: SheetField, choice: number): void {
    const { dimension } = QUANTITIES[field.quantity];
    const unit = dimension === 'plain' ? '' : dimension === 'length' ? 'mm' : '°';
    // Four places: no comma or point of thousands can be meant.
    const digits = Number.isInteger(choice) ? String(choice) : choice.toFixed(4);
    this.#drafts.type(field.path, `${digits}${unit}`, field.quantity, this.#app.display.units);
    this.#take(sheet, field);
    this.left(sheet, field);
  }

  /** Takes a value back: what stood there before it was given stands there again. */
  remove(sheet: SheetSpec): void {
    for (const field of sheet.fields) this.#drafts.drop(field.path);
    this.#app.model.update(sheet.title, (car) => sheet.write(car, undefined));
    this.#app.changed(sheet.key, undefined);
    this.#app.host.requestUpdate();
  }

  /** Takes over what another sheet has given. */
  copy({ title, copy }: SheetSpec): void {
    this.#app.model.update(title, (car) => copy!.write(car));
    this.#app.changed(title, undefined);
    this.#app.host.requestUpdate();
  }

  choseOption({ legend, write }: OptionGroup, id: string): void {
    this.#app.model.update(legend, (car) => write(car, id));
    this.#app.changed(legend, undefined);
    this.#app.host.requestUpdate();
  }

  /** What is stated of a value; of one that is not given yet, what was chosen for it. */
  statedDoubt(sheet: SheetSpec): number {
    const { car } = this.#app.model;
    if (sheet.read(car)) return sheet.doubt?.read(car) ?? 0;
    return this.#doubts.get(sheet.key) ?? defaultPlusMinus(sheet);
  }

  setDoubt(sheet: SheetSpec, plusMinus: number): void {
    const { model, host } = this.#app;
    this.#doubts.set(sheet.key, plusMinus);
    if (sheet.read(model.car)) {
      model.update(NAMES.sureOf(sheet.title), (car) => sheet.doubt!.write(car, plusMinus), `doubt ${sheet.key}`);
      this.#app.changed(`plusMinus.${sheet.key}`, plusMinus);
    }
    host.requestUpdate();
  }

  /** Places of the fields that keep a point from being whole; none where nothing was typed at all. */
  emptyFields(sheet: SheetSpec): number[] {
    const { car } = this.#app.model;
    if (sheet.read(car)) return [];
    const given = this.#givenOf(sheet);
    const isTyped = ({ path }: SheetField) => (this.#drafts.text(path)?.trim() ?? '') !== '';
    const isEmpty = (field: SheetField, index: number) =>
      !isTyped(field) && given?.[index] === undefined && field.otherwise?.(car) === undefined;
    const empty = sheet.fields.flatMap((field, index) => (isEmpty(field, index) ? [index] : []));
    const isTouched = sheet.fields.some((field, index) => isTyped(field) || given?.[index] !== undefined);
    return isTouched ? empty : [];
  }

  /** What is given of a sheet's fields. */
  #givenOf({ read, partly }: SheetSpec): readonly (number | undefined)[] | undefined {
    const { car } = this.#app.model;
    return partly ? partly.read(car) : read(car);
  }

  /** Writes the sheet's values once every field has one: a typed text, or what was given before. */
  #take(sheet: SheetSpec, changed: SheetField): void {
    const { model, display } = this.#app;
    const { partly } = sheet;
    const before = this.#givenOf(sheet);
    const values = sheet.fields.map((field, index) => {
      const text = this.#drafts.text(field.path);
      if (text === undefined || text.trim() === '') {
        return before?.[index] ?? (partly ? undefined : field.otherwise?.(model.car));
      }
      const typed = this.#drafts.type(field.path, text, field.quantity, display.units);
      return typed ?? (partly ? before?.[index] : undefined);
    });
    if (!partly && !values.every((value) => value !== undefined)) return;
    if (before && values.every((value, index) => value === before[index])) return;
    model.update(
      sheet.title,
      (car) => (partly ? partly.write(car, values) : this.#write(sheet, car, values as number[])),
      stepOf(changed),
    );
    this.#app.changed(changed.path, values[sheet.fields.indexOf(changed)]);
  }

  #write(sheet: SheetSpec, car: CarDocument, values: number[]): CarDocument {
    // A point measured for the first time is as good as a tape until somebody says otherwise.
    const isNew = sheet.read(car) === undefined;
    const next = sheet.write(car, values);
    return isNew && sheet.doubt
      ? sheet.doubt.write(next, this.#doubts.get(sheet.key) ?? defaultPlusMinus(sheet))
      : next;
  }
}

/** Typing in one field is one step of undo. */
const stepOf = ({ path }: SheetField): string => `field ${path}`;
