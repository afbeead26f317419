import { html, nothing, type TemplateResult } from 'lit';
import type { LoweringAnswer } from '../../core/answers/lowering.js';
import type { CarDocument } from '../../core/document/car.js';
import { wayOf } from '../../core/document/setup-in-use.js';
import { DRIVEWAY_FIELDS, type Driveway } from '../../core/driveway/driveway.js';
import { formatQuantity } from '../../core/quantity/format.js';
import { listOf } from '../shared/sheet/car-sheets.js';
import { assumedText } from '../shared/sheet/sheet.labels.js';
import { offered, type SheetSpec } from '../shared/sheet/sheet-spec.js';
import { NAMES, reasons, shares } from './bumpline-lowering.labels.js';
import type { Reading } from './bumpline-lowering.words.js';

/** What no tape reaches. */
const HIDDEN = ['ballOffset', 'hubOffset'] as const;

/** Every number the answer rests on, each a button that opens its sheet: the drawing's balloons as a list. */
export function renderInputs(
  car: CarDocument,
  taken: Driveway['taken'] | undefined,
  reading: Reading,
  isBegun: (sheet: SheetSpec) => boolean,
  onSelect: (key: string) => void,
): TemplateResult {
  const by = wayOf(car);
  const row = (sheet: SheetSpec) => {
    const given = sheet.read(car);
    const values = given ?? sheet.standIn?.(car, taken);
    const chosen = sheet.options?.flatMap((group) => {
      const id = group.read(car);
      return offered(group, car).flatMap((item) => (item.id === id ? [item.short] : []));
    });
    const text =
      sheet.fields.length === 0
        ? chosen?.join(', ')
        : isBegun(sheet)
          ? NAMES.half
          : [...(values?.map((value, i) => write(value, sheet, i, reading)) ?? []), ...unlike(sheet, car)].join('  ') ||
            undefined;
    return html`<li>
      <button type="button" class="input-row ${given ? 'yours' : ''}" @click=${() => onSelect(sheet.key)}>
        <span class="item">${sheet.number ?? nothing}</span><span class="name">${sheet.title}</span
        ><span class="value ${sheet.options ? 'words' : ''}">${text ?? 'not given'}${given || !text ? nothing : html`<span class="visually-hidden">, ${NAMES.notYours}</span>`}</span>
      </button>
    </li>`;
  };
  return html`<details class="inputs">
    <summary>${NAMES.numbers}</summary>
    <p class="note">${{ points: NAMES.axes, driveway: NAMES.floor, readings: NAMES.gauge }[by]}</p>
    <ul>${listOf(car).map(row)}</ul>
    ${taken && by === 'driveway' ? html`<p class="note">${NAMES.hidden} ${HIDDEN.map((key) => `${DRIVEWAY_FIELDS[key].label} ${assumedText(key, taken, reading)}`).join('; ')}.</p>` : nothing}
  </details>`;
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

function write(value: number, sheet: SheetSpec, index: number, { units, language }: Reading): string {
  const { quantity } = sheet.fields[index]!;
  return formatQuantity(value, quantity, units, {
    language,
    unit: quantity !== 'coordinate' || sheet.fields.length === 1,
  }).text;
}

/** What the ± is made of, and the rates behind the sentence. */
export function renderReasons(answer: LoweringAnswer, reading: Reading): TemplateResult {
  const parts = shares(answer, reading);
  return html`<details class="why">
    <summary>${NAMES.why}</summary>
    <dl>
      ${reasons(answer, reading).map(({ label, text }) => html`<div><dt>${label}</dt><dd>${text}</dd></div>`)}
    </dl>
    ${
      parts.length > 0
        ? html`<p class="note">What the ± of the change is made of, as shares of its square:</p>
            <ul class="shares">
              ${parts.map(
                ({ label, percent, share }) =>
                  html`<li><span class="bar" .style=${`--share: ${share}`}></span><span>${label}</span><b>${percent}</b></li>`,
              )}
            </ul>
            <p class="note">${NAMES.doubtNote}</p>`
        : html`<p class="note">${NAMES.noDoubt}</p>`
    }
  </details>`;
}
