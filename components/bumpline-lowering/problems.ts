import { html, nothing, type TemplateResult } from 'lit';
import { isWishbone } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import { sourceKindOf } from '../../core/document/setup-in-use.js';
import { strutOf } from '../../core/document/strut-in-use.js';
import { type Query, unusualOf } from '../../core/document/unusual.js';
import { renderProblems as renderBlock } from '../element/problems-block.js';
import { sheetOfPath } from '../inputs/car-sheets.js';
import { problemText, queryText } from '../inputs/sheet.labels.js';
import { fittedProblemText } from '../parts/parts-text.js';
import { NAMES, unmeasuredText } from './bumpline-lowering.labels.js';
import type { LoweringView } from './lowering-view.js';

/** What in a user's points looks like a slip of the keys: beside an answer, and above all where the links do not fit together. */
export function queriesOf({ problems, car }: Pick<LoweringView, 'car' | 'problems'>): Query[] {
  if (!isUsers(car, 'corner') || sourceKindOf(car) !== 'points' || car.curve || car.whole !== undefined) return [];
  const doNotFit = problems.some(({ code }) => code === 'cannot-close' || code === 'ends-swapped');
  return problems.length === 0 || doNotFit ? unusualOf(strutOf(car)) : [];
}

const USES = [
  ...(['given', 'drop', 'bumpTravel', 'stopGap', 'limits', 'loads', 'setups'] as const),
  ...(['lowered', 'measuredAt', 'camberReadLower', 'other'] as const),
];

/** What is wrong, what looks wrong, and where to mend it. */
export function renderProblems(view: LoweringView, onShow: (key: string) => void): TemplateResult {
  const { state, display, car, sentence } = view;
  const queries = queriesOf(view);
  const isRead = sourceKindOf(car) === 'readings';
  // Where a point looks wrong, that one is to be corrected, not the end of a link that cannot reach it.
  const isElsewhere = (code: string) => code === 'cannot-close' && queries.length > 0;
  // What stands in a page's table or attributes a reader cannot mend.
  const isPages = view.isUnread && car.whole === undefined;
  const block = renderBlock(view, {
    uses: USES,
    text: (problem) =>
      isElsewhere(problem.code)
        ? NAMES.doNotFit
        : (isRead && unmeasuredText(problem, display)) ||
          fittedProblemText(problem, car, display) ||
          problemText(problem, display),
    fieldOf: (path) => (path === 'drop' ? sentence.drop : path === 'change' ? sentence.change : undefined),
    sheetOf: ({ code, path }) =>
      isElsewhere(code) || isPages || isWishbone(car) ? undefined : sheetOfPath(path)?.sheet.key,
    onShow,
  });
  return html`${block}
  ${
    queries.length > 0 && state !== 'fault'
      ? html`<ul class="queries" aria-label=${NAMES.suspects}>
          ${queries.map((query) => html`<li>${queryText(query, display)} <button type="button" class="button" @click=${() => onShow(query.path)}>${NAMES.lookAgain}</button></li>`)}
        </ul>`
      : nothing
  }`;
}
