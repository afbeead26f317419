import { html, nothing, type TemplateResult } from 'lit';
import { type CarDocument, isWishbone } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import { sourceKindOf } from '../../core/document/setup-in-use.js';
import type { Display } from '../element/sentence.js';
import { renderInputRow } from '../inputs/input-row.js';
import { LINKS } from '../inputs/links.labels.js';
import type { SheetSpec } from '../inputs/sheet-spec.js';
import { firstMissingPoint, linkList } from './geometry-kit.js';

type OnShow = (key: string) => void;

/** The way in to one's own hard points, and on to the next of them; none of a wishbone, which has no sheets. */
export function renderOwnPoints(
  car: CarDocument,
  names: { points: string; edit: string; next(title: string): string },
  onShow: OnShow,
  /** Whether it is the first thing to do on a car of which nothing is the user's. */
  isMain: boolean,
): TemplateResult | typeof nothing {
  if (isWishbone(car)) return nothing;
  const next = firstMissingPoint(car);
  const isBegun = hasBegun(car);
  const label = isBegun ? (next ? names.next(next.title) : names.edit) : names.points;
  const look = isBegun ? next !== undefined : isMain;
  return html`<button type="button" class="button own ${look ? 'main' : ''}" @click=${() => onShow(next?.key ?? 'lowerArm.front')}>${label}</button>`;
}

/** Whether the user's own hard points have begun. */
export const hasBegun = (car: CarDocument): boolean => isUsers(car, 'corner') && car.by === 'points';

/** What an answer rests on, a row a sheet. */
export function renderRestsOn(
  title: string,
  note: string | undefined,
  sheets: readonly SheetSpec[],
  { car, display, onShow }: { car: CarDocument; display: Display; onShow: OnShow },
): TemplateResult {
  return html`<details class="inputs">
    <summary>${title}</summary>
    ${note === undefined ? nothing : html`<p class="note">${note}</p>`}
    <ul>
      ${sheets.map((sheet) => renderInputRow(sheet, { car, display, standIn: sheet.standIn?.(car), onSelect: onShow }))}
    </ul>
  </details>`;
}

/** The same of a question about links: what is asked, then what the links rest on; a wishbone has no sheets. */
export function renderLinkInputs(
  title: string,
  asked: readonly SheetSpec[],
  { car, display }: { car: CarDocument; display: Display },
  onShow: OnShow,
): TemplateResult {
  const sheets = [...asked, ...(isWishbone(car) ? [] : linkList(car))];
  const note = sourceKindOf(car) === 'driveway' ? LINKS.floor : LINKS.axes;
  return renderRestsOn(title, note, sheets, { car, display, onShow });
}
