import { html, nothing, type TemplateResult } from 'lit';
import type { LoweringAnswer } from '../../core/answers/lowering.js';
import { type CarDocument, drivewayOf } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import { camberSetupOf, sourceKindOf } from '../../core/document/setup-in-use.js';
import { DRIVEWAY_FIELDS, type Driveway } from '../../core/driveway/driveway.js';
import { causeName } from '../element/causes.words.js';
import { renderNotIn, renderShares } from '../element/doubt-lists.js';
import { notInDoubt } from '../element/doubts.words.js';
import { renderFacts } from '../element/facts.js';
import { listOf } from '../inputs/car-sheets.js';
import { renderInputRow } from '../inputs/input-row.js';
import { LINKS } from '../inputs/links.labels.js';
import { assumedText, notCovered } from '../inputs/sheet.labels.js';
import type { SheetSpec } from '../inputs/sheet-spec.js';
import { NAMES, reasons } from './bumpline-lowering.labels.js';
import type { Display } from './bumpline-lowering.words.js';

/** What no tape reaches. */
const HIDDEN = 'ballOffset';

/** Every number the answer rests on, each a button that opens its sheet: the drawing's balloons as a list. */
export function renderInputs(
  car: CarDocument,
  taken: Driveway['taken'] | undefined,
  display: Display,
  isBegun: (sheet: SheetSpec) => boolean,
  onSelect: (key: string) => void,
  /** Whether what nobody gave is shown as what stands in for it; a page's own data that cannot be read has nothing in its place. */
  standsIn: boolean,
): TemplateResult {
  const sourceKind = sourceKindOf(car);
  const row = (sheet: SheetSpec) =>
    renderInputRow(sheet, {
      car,
      display,
      standIn: standsIn ? sheet.standIn?.(car, taken) : undefined,
      half: isBegun(sheet) ? LINKS.half : undefined,
      onSelect,
    });
  return html`<details class="inputs">
    <summary>${NAMES.numbers}</summary>
    <p class="note">${{ points: LINKS.axes, driveway: LINKS.floor, readings: NAMES.gauge }[sourceKind]}</p>
    <ul>${listOf(car).map(row)}</ul>
    ${
      taken && sourceKind === 'driveway'
        ? html`<p class="note">${NAMES.hidden} ${causeName(DRIVEWAY_FIELDS[HIDDEN].label)} ${assumedText(HIDDEN, taken, display)}.</p>`
        : nothing
    }
  </details>`;
}

/** Which cars the ± of somebody's own six measurements does not cover. */
export function renderLimits(
  { driveway }: LoweringAnswer,
  car: CarDocument,
  display: Display,
): TemplateResult | typeof nothing {
  const limits = driveway && isUsers(car, 'corner') ? notCovered(drivewayOf(car), display) : undefined;
  return limits ? html`<p class="note limits">${limits}</p>` : nothing;
}

/** What the ± is made of, and the rates behind the sentence. */
export function renderReasons(answer: LoweringAnswer, car: CarDocument, display: Display): TemplateResult {
  const isPlane = answer.driveway !== undefined;
  return html`<details class="why">
    <summary>${NAMES.why}</summary>
    ${renderFacts(reasons(answer, display))}
    ${
      answer.contributions.length > 0
        ? html`${renderShares(answer.contributions, display.language)}
            <p class="note">${NAMES.doubtNote} ${isPlane ? notCovered(drivewayOf(car), display) : nothing}</p>
            ${answer.readings ? renderNotIn(notInDoubt(answer.curve, camberSetupOf(car), display)) : nothing}`
        : html`<p class="note">${NAMES.noDoubt}</p>`
    }
  </details>`;
}
