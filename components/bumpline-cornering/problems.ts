import { html, type TemplateResult } from 'lit';
import { explainProblem } from '../../core/quantity/explain.js';
import type { Problem } from '../../core/quantity/problem.js';
import { textOfPart } from '../bumpline-geometry/problems.js';
import { renderProblems as renderBlock } from '../element/problems-block.js';
import { LINKS } from '../inputs/links.labels.js';
import { isElsewhere, queriesOf, renderQueries, sheetToMend } from '../inputs/queries.js';
import { problemText } from '../inputs/sheet.labels.js';
import { NAMES } from './bumpline-cornering.labels.js';
import { FIRST } from './bumpline-cornering.words.js';
import { turnProblemText, turnSheetOf } from './cornering-kit.js';
import type { CorneringView } from './cornering-view.js';

const USES = ['given', 'drop', 'setups', 'measuredAt', 'camberReadLower', 'turn', 'bumpTravel', 'stopGap', 'limits'] as const;

/** What is wrong with the turn or with what it is made from, what looks wrong, and where to mend it. */
export function renderProblems(view: CorneringView, onShow: (key: string) => void): TemplateResult {
  const { display, sentence } = view;
  const queries = queriesOf(view);
  const block = renderBlock(view, {
    uses: USES,
    text: (problem) =>
      isElsewhere(problem, queries)
        ? LINKS.doNotFit
        : (ownText(problem, view) ?? textOfPart(problem, view, undefined) ?? problemText(problem, display)),
    fieldOf: (path) => (path === 'drop' ? sentence.drop : /^(?:turn\.)?roll$/.test(path) ? sentence.roll : undefined),
    sheetOf: (problem) => (turnSheetOf(problem.path) ? problem.path : sheetToMend(problem, view, queries)),
    onShow,
  });
  return html`${block} ${renderQueries(queries, view, onShow)}`;
}

/** Of what is asked about the turn. */
function ownText(problem: Problem, { display }: CorneringView): string | undefined {
  const { language, units: unitSystem } = display;
  const { path, code, other } = problem;
  if (!/^(?:turn\.)?roll$/.test(path)) return turnProblemText(problem, display);
  const text = explainProblem(problem, { label: FIRST.roll, quantity: 'roll', language, unitSystem });
  // Which wheel it is tells what to look at.
  return code === 'outside-domain' && (other === 'outer' || other === 'inner') ? `${text} ${NAMES.ends[other]}` : text;
}
