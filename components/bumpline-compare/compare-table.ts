import { html, nothing, type TemplateResult } from 'lit';
import { cornerSourceOf } from '../../core/answers/car-request.js';
import type { At } from '../../core/answers/compare.js';
import type { CarDocument } from '../../core/document/car.js';
import { partsText } from '../parts/parts-text.js';
import { LABELS } from './bumpline-compare.labels.js';
import { heightText } from './bumpline-compare.words.js';
import { cellBody, figureOf } from './cell-figures.js';
import type { CompareView } from './compare-view.js';
import { type ComparedRow, isOfParts } from './compared-sets.js';
import { heightName } from './height-name.js';
import type { OwnCurve } from './own-curve.js';
import { linesOf } from './views.js';

const { table: TABLE } = LABELS;

export interface HeightEdit {
  /** Whether a height's field is open: it is edited, or its text was no drop yet. */
  isOpen(index: number): boolean;
  open(index: number | undefined): void;
  field(index: number): TemplateResult;
}

/** Sets down the side, heights across; every cell a button. */
export function renderCompareTable(
  app: Pick<CompareView, 'answer' | 'car' | 'cells' | 'choose' | 'compared' | 'host' | 'display'>,
  edit: HeightEdit,
): TemplateResult {
  const { answer, cells, display } = app;
  const { comparison, names, request } = answer!;
  const { heights } = request;
  const isAt = (at: At, curve: number, height: number) => at.curve === curve && at.height === height;
  const { dashes } = linesOf(answer!, cells.from, cells.to);
  const mark = (curve: number, height: number) =>
    isAt(cells.to, curve, height) ? 'to' : isAt(cells.from, curve, height) ? 'from' : '';
  return html`<div class="table-scroll compare-scroll" role="region" aria-label=${TABLE.title(LABELS.figures.names[figureOf(app)])} tabindex="0">
    <table class="compare">
      <thead>
        <tr>
          <td></td>
          ${heights.map(
            (drop, h) => html`<th scope="col">
              ${
                edit.isOpen(h)
                  ? edit.field(h)
                  : html`<button type="button" class="height" aria-label="${TABLE.edit}: ${heightText(drop, display)}" @click=${() => edit.open(h)}>${heightName(drop, display)}</button>`
              }
            </th>`,
          )}
        </tr>
      </thead>
      <tbody>
        ${names.map(
          (name, i) => html`<tr>
            <th scope="row">${name}${besideName(app, i)}</th>
            ${comparison.cells[i]!.map(
              (cell, h) => html`<td>
                <button type="button" class="cell-button ${mark(i, h)}" aria-pressed=${mark(i, h) !== ''}
                  @click=${() => app.choose({ curve: i, height: h })}>
                  <span class="visually-hidden">${name}, ${heightText(heights[h]!, display)}: </span>${cellBody(cell, i, app)}${sample(dashes.get(`${i} ${h}`))}
                </button>
              </td>`,
            )}
          </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}

/** The line of a cell that is not one of the two, as the chart draws it. */
const sample = (dash: number[] | undefined): TemplateResult | typeof nothing =>
  dash
    ? html`<svg class="dash" width="34" height="6" aria-hidden="true"><path d="M0 3H34" stroke-dasharray=${dash.join(' ')} /></svg>`
    : nothing;

const standInOf = (own: OwnCurve | undefined) => own?.count && `${own.count}; ${own.standIn}`;

/** Where links are learnt from readings, which rows were read and which are said before anybody fitted the parts. */
function madeBy(row: ComparedRow, car: CarDocument): string | undefined {
  if (cornerSourceOf(car).kind !== 'learnt' || row.own) return undefined;
  return isOfParts(row) ? TABLE.predicted : TABLE.measured;
}

function besideName(
  { host, compared, display, car }: Pick<CompareView, 'car' | 'compared' | 'display' | 'host'>,
  index: number,
): TemplateResult | typeof nothing {
  const { curves } = host;
  const tieRod = curves?.[index]?.tieRod;
  const row = compared.rows[index];
  const ofParts = row && isOfParts(row) ? partsText(row.setup!.parts!, display) : standInOf(row?.own);
  const said = [
    tieRod ? TABLE.tieRod(tieRod) : curves ? undefined : ofParts,
    row && !curves ? madeBy(row, car) : undefined,
  ]
    .filter(Boolean)
    .join('; ');
  return said ? html`<small class="beside-name">${said}</small>` : nothing;
}
