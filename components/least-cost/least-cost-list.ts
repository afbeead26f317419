import { html, type TemplateResult } from 'lit';
import type { CarDocument } from '../../core/document/car.js';
import { type Display, lower, show } from '../element/sentence.js';
import type { SheetSpec } from '../inputs/sheet-spec.js';
import { NAMES } from './least-cost.labels.js';

/** What a sheet holds, in words; what is assumed where nothing is given. */
function textOf(sheet: SheetSpec, car: CarDocument, display: Display): string {
  const values = sheet.partly!.read(car);
  const assumed = sheet.standIn?.(car) ?? [];
  const said = sheet.fields.flatMap(({ path, quantity, label }, i) => {
    const value = values[i] ?? assumed[i];
    if (value === undefined) return [];
    const text = show(value, quantity, display);
    if (quantity === 'price') return [NAMES.priced(text)];
    return [/\.(least|most)[A-Z]/.test(path) ? NAMES.limited(lower(label.replace(',', '')), text) : text];
  });
  const isSpan = sheet.fields.length > 1 && assumed.length > 1;
  const [from, to, ...rest] = said;
  const parts = isSpan && from && to ? [NAMES.to(from, to), ...rest] : said;
  const chosen = (sheet.options ?? []).flatMap(({ items, read }) => {
    const item = items.find(({ id }) => id === read(car));
    return item && (isSpan || (said.length > 0 && item !== items[0])) ? [item.short] : [];
  });
  return [...parts, ...chosen].join(', ') || NAMES.notGiven;
}

/** One sheet of the search as a button that opens it. */
export function renderSearchRow(
  sheet: SheetSpec,
  { car, display, onShow }: { car: CarDocument; display: Display; onShow: (key: string) => void },
): TemplateResult {
  const isOwn = sheet.read(car) !== undefined;
  return html`<li>
    <button type="button" class="input-row ${isOwn ? 'yours' : ''}" data-key=${sheet.key} @click=${() => onShow(sheet.key)}>
      <span class="item"></span><span class="name">${sheet.title}</span
      ><span class="value words">${textOf(sheet, car, display)}</span>
    </button>
  </li>`;
}
