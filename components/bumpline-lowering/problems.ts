import { html, type TemplateResult } from 'lit';
import { sourceKindOf } from '../../core/document/setup-in-use.js';
import { renderProblems as renderBlock } from '../element/problems-block.js';
import { LINKS } from '../inputs/links.labels.js';
import { isElsewhere, queriesOf, renderQueries, sheetToMend } from '../inputs/queries.js';
import { problemText } from '../inputs/sheet.labels.js';
import { fittedProblemText } from '../parts/fitted-problem.js';
import { unmeasuredText } from './bumpline-lowering.labels.js';
import type { LoweringView } from './lowering-view.js';

const USES = [
  ...(['given', 'drop', 'bumpTravel', 'stopGap', 'limits', 'loads', 'setups'] as const),
  ...(['lowered', 'measuredAt', 'camberReadLower', 'other'] as const),
];

/** What is wrong, what looks wrong, and where to mend it. */
export function renderProblems(view: LoweringView, onShow: (key: string) => void): TemplateResult {
  const { display, car, sentence } = view;
  const queries = queriesOf(view);
  const isRead = sourceKindOf(car) === 'readings';
  const block = renderBlock(view, {
    uses: USES,
    text: (problem) =>
      isElsewhere(problem, queries)
        ? LINKS.doNotFit
        : (isRead && unmeasuredText(problem, display)) ||
          fittedProblemText(problem, car, display) ||
          problemText(problem, display),
    fieldOf: (path) => (path === 'drop' ? sentence.drop : path === 'change' ? sentence.change : undefined),
    sheetOf: (problem) => sheetToMend(problem, view, queries),
    onShow,
  });
  return html`${block} ${renderQueries(queries, view, onShow)}`;
}
