import { html, nothing, type TemplateResult } from 'lit';
import type { CarDocument } from '../../core/document/car.js';
import type { Display } from '../element/sentence.js';
import { NAMES } from './inputs.labels.js';
import { offered, type SheetSpec } from './sheet-spec.js';
import { valueText } from './sheet-values.js';

export interface InputRowOptions {
  car: CarDocument;
  display: Display;
  /** What stands in where nothing is given. */
  standIn: readonly number[] | undefined;
  /** Text in place of values that are only begun. */
  half?: string | undefined;
  /** Whether values of others are shown in a row whose values are of different people; they are not where they would be another car's. */
  showsOthers?: boolean;
  onSelect: (key: string) => void;
}

/** A number the answer rests on, as a button that opens its sheet. */
export function renderInputRow(
  sheet: SheetSpec,
  { car, display, standIn, half, showsOthers = true, onSelect }: InputRowOptions,
): TemplateResult {
  const given = sheet.read(car);
  const values = given ?? standIn;
  const chosen = sheet.options?.flatMap((group) => {
    const id = group.read(car);
    return offered(group, car).flatMap((item) => (item.id === id ? [item.short] : []));
  });
  const parts = sheet.parts?.(car, display);
  if (parts) return renderPartsRow(sheet, parts, showsOthers, onSelect);
  const text =
    sheet.fields.length === 0
      ? chosen?.join(', ')
      : (half ??
        (values && sheet.summary
          ? sheet.summary(values, display)
          : [...(values?.map((value, i) => valueText(value, sheet, i, display)) ?? []), ...unlike(sheet, car)].join(
              '  ',
            ) || undefined));
  return html`<li>
    <button type="button" class="input-row ${given ? 'yours' : ''}" data-key=${sheet.key} @click=${() => onSelect(sheet.key)}>
      <span class="item">${sheet.number ?? nothing}</span><span class="name">${sheet.title}</span
      ><span class="value ${sheet.options ? 'words' : ''}">${text ?? html`<span class="enter">${NAMES.enter}</span>`}${given || !text ? nothing : html`<span class="visually-hidden">, ${NAMES.notYours}</span>`}</span>
    </button>
  </li>`;
}

/** A row whose values are of different people: each is marked, and the user's own are counted. */
function renderPartsRow(
  { key, title }: SheetSpec,
  parts: readonly { text: string; isOwn: boolean }[],
  showsOthers: boolean,
  onSelect: (key: string) => void,
): TemplateResult {
  const own = parts.filter(({ isOwn }) => isOwn).length;
  const shown = showsOthers ? parts : parts.filter(({ isOwn }) => isOwn);
  return html`<li>
    <button type="button" class="input-row parts" data-key=${key} @click=${() => onSelect(key)}>
      <span class="item"></span
      ><span class="name">${title} <small>${NAMES.someYours(own, parts.length)}</small></span
      ><span class="value words">${shown.length === 0 ? html`<span class="enter">${NAMES.enter}</span>` : nothing}${shown.map(
        ({ text, isOwn }, i) =>
          html`${i > 0 ? ', ' : nothing}<span class=${isOwn ? 'own' : ''}>${text}${isOwn ? nothing : html`<span class="visually-hidden"> ${NAMES.notYours}</span>`}</span>`,
      )}</span>
    </button>
  </li>`;
}

/** Answers of a sheet that are not the first, the usual one. */
const unlike = ({ fields, options = [], read: given }: SheetSpec, car: CarDocument): string[] =>
  fields.length > 0 && given(car)
    ? options.flatMap(({ items, read }) =>
        items
          .slice(1)
          .filter(({ id }) => id === read(car))
          .map(({ short }) => short),
      )
    : [];
