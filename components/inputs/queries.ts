import { html, nothing, type TemplateResult } from 'lit';
import { isWishbone } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import { sourceKindOf } from '../../core/document/setup-in-use.js';
import { strutOf } from '../../core/document/strut-in-use.js';
import { type Query, unusualOf } from '../../core/document/unusual.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { SheetView } from '../element/sheet-view.js';
import { sheetOfPath } from './car-sheets.js';
import { LINKS } from './links.labels.js';
import { queryText } from './sheet.labels.js';

/** What in a user's points looks like a slip of the keys: beside an answer, and above all where the links do not fit together. */
export function queriesOf({ problems, car }: Pick<SheetView, 'car' | 'problems'>): Query[] {
  if (!isUsers(car, 'corner') || sourceKindOf(car) !== 'points' || car.curve || car.whole !== undefined) return [];
  const doNotFit = problems.some(({ code }) => code === 'cannot-close' || code === 'ends-swapped');
  return problems.length === 0 || doNotFit ? unusualOf(strutOf(car)) : [];
}

/** Where a point looks wrong, that one is to be corrected, not the end of a link that cannot reach it. */
export const isElsewhere = ({ code }: Problem, queries: readonly Query[]): boolean =>
  code === 'cannot-close' && queries.length > 0;

/** The sheet on which a problem is mended; undefined where there is none, or where a reader cannot mend it. */
export function sheetToMend(
  problem: Problem,
  { car, isUnread }: Pick<SheetView, 'car' | 'isUnread'>,
  queries: readonly Query[],
): string | undefined {
  // What stands in a page's table or attributes a reader cannot mend.
  const isPages = isUnread && car.whole === undefined;
  return isElsewhere(problem, queries) || isPages || isWishbone(car) ? undefined : sheetOfPath(problem.path)?.sheet.key;
}

/** The figures to look at again, each with the way to it. */
export const renderQueries = (
  queries: readonly Query[],
  { state, display }: Pick<SheetView, 'state' | 'display'>,
  onShow: (key: string) => void,
): TemplateResult | typeof nothing =>
  queries.length > 0 && state !== 'fault'
    ? html`<ul class="queries" aria-label=${LINKS.suspects}>
        ${queries.map((query) => html`<li>${queryText(query, display)} <button type="button" class="button" @click=${() => onShow(query.path)}>${LINKS.lookAgain}</button></li>`)}
      </ul>`
    : nothing;
