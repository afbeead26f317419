import { html, nothing, type TemplateResult } from 'lit';
import { type CarDocument, limitsOf } from '../../core/document/car.js';
import { fitmentByUser, limitsInUse } from '../../core/document/limits-in-use.js';
import { InputError } from '../../core/quantity/problem.js';
import type { TravelBudget } from '../../core/travel/budget.js';
import type { DamperPath } from '../../core/travel/damper-path.js';
import { cornerUnderLoad } from '../../core/travel/loads.js';
import { type TravelLimits, USUAL_LOAD_FACTOR } from '../../core/travel/travel-limits.js';
import { sheetOf } from '../inputs/car-sheets.js';
import { renderInputRow } from '../inputs/input-row.js';
import { LIMIT_SHEETS, LOAD_SHEETS } from '../inputs/limit-sheets.js';
import { problemText } from '../inputs/sheet.labels.js';
import { renderFacts } from './facts.js';
import { PARTS } from './parts.labels.js';
import type { Display } from './sentence.js';
import { budgetRows, loadRows } from './travel-rows.js';

const { travel: NAMES } = PARTS;

export interface TravelListOptions {
  budget: TravelBudget | undefined;
  /** How the damper follows the wheel. */
  path: DamperPath | undefined;
  car: CarDocument;
  display: Display;
  /** Whether what stands in for limits that nobody gave counts in this answer. */
  standsIn: boolean;
  onSelect: (key: string) => void;
}

/** What is left both ways and what ends it, with the numbers it rests on. */
export function renderTravelList({
  budget,
  path,
  car,
  display,
  standsIn,
  onSelect,
}: TravelListOptions): TemplateResult {
  const rows = budget ? budgetRows(budget, display) : [];
  const sheets = [sheetOf('stopGap')!, ...LIMIT_SHEETS, ...LOAD_SHEETS];
  const { stopGap: gap, limits } = limitsOf(car);
  const { stopGap, ...used } = standsIn ? limitsInUse(car) : { ...limits, ...(gap !== undefined && { stopGap: gap }) };
  // The car as the answer takes it: what stands in reads like what was given.
  const taken = fitmentByUser(car, () => ({ limits: used, ...(stopGap !== undefined && { stopGap }) }));
  return html`<details class="travel">
    <summary>${NAMES.title}</summary>
    ${rows.length > 0 ? renderFacts(rows) : nothing}
    ${budget?.bump.solid ? nothing : html`<p class="note">${budget?.bump.touch ? NAMES.noStop : NAMES.noSolid}</p>`}
    ${renderLoads(car, { ...used, ...(stopGap !== undefined && { stopGap }) }, path, display)}
    <p class="note">${NAMES.found}</p>
    <ul>
      ${sheets.map((sheet) => renderInputRow(sheet, { car, display, standIn: sheet.read(taken), onSelect }))}
    </ul>
  </details>`;
}

/** Where a load takes the corner, once weight and spring are given. */
function renderLoads(
  car: CarDocument,
  limits: TravelLimits,
  path: DamperPath | undefined,
  display: Display,
): TemplateResult | typeof nothing {
  const { loads, drop, measuredAt, lowered } = car;
  if (loads?.springRate === undefined || loads.cornerMass === undefined) return nothing;
  try {
    const answer = cornerUnderLoad({
      path,
      limits,
      loads,
      drop,
      ...(measuredAt !== undefined && { measuredAt }),
      ...(lowered && { lowered }),
    });
    const rows = loadRows(answer, loads.loadFactor ?? USUAL_LOAD_FACTOR, display);
    return html`${renderFacts(rows, 'loads')}
      <p class="note">${NAMES.statics}</p>`;
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return html`<ul class="problem">${error.problems.map((problem) => html`<li>${problemText(problem, display)}</li>`)}</ul>`;
  }
}
