import { html, nothing, type TemplateResult } from 'lit';
import type { CarDocument } from '../../core/document/car.js';
import { limitsInUse } from '../../core/document/fit-in-use.js';
import type { TravelBudget } from '../../core/travel/budget.js';
import type { Reader } from './sentence.js';
import { sheetOf } from './sheet/car-sheets.js';
import { renderInputRow } from './sheet/input-row.js';
import { LIMIT_SHEETS, LOAD_SHEETS } from './sheet/limit-sheets.js';
import { budgetRows } from './travel-rows.js';

const NAMES = {
  title: 'Travel left, and what ends it',
  noSolid: 'Nobody has said where the suspension is solid: give the gap to the bump stop and the stop’s length.',
  noStop: 'The stop’s length is not given, so only its first touch is known.',
  found: 'As found at the car where it stands. In italics: not yours yet.',
} as const;

export interface TravelListOptions {
  budget: TravelBudget | undefined;
  car: CarDocument;
  reader: Reader;
  /** Whether what stands in for limits that nobody gave counts in this answer. */
  standsIn: boolean;
  onSelect: (key: string) => void;
}

/** What is left both ways and what ends it, with the numbers it rests on. */
export function renderTravelList({ budget, car, reader, standsIn, onSelect }: TravelListOptions): TemplateResult {
  const rows = budget ? budgetRows(budget, reader) : [];
  const sheets = [sheetOf('stopGap')!, ...LIMIT_SHEETS, ...LOAD_SHEETS];
  const gap = limitsInUse(car).stopGap;
  const standIn = (key: string, own: readonly number[] | undefined) =>
    !standsIn ? undefined : key === 'stopGap' && gap !== undefined ? [gap] : own;
  return html`<details class="travel">
    <summary>${NAMES.title}</summary>
    ${rows.length > 0 ? html`<dl>${rows.map(({ label, text }) => html`<div><dt>${label}</dt><dd>${text}</dd></div>`)}</dl>` : nothing}
    ${budget?.bump.solid ? nothing : html`<p class="note">${budget?.bump.touch ? NAMES.noStop : NAMES.noSolid}</p>`}
    <p class="note">${NAMES.found}</p>
    <ul>
      ${sheets.map((sheet) =>
        renderInputRow(sheet, { car, reader, standIn: standIn(sheet.key, sheet.standIn?.(car)), onSelect }),
      )}
    </ul>
  </details>`;
}
