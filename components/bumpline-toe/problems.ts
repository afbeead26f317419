import { html, type TemplateResult } from 'lit';
import { emptySetup } from '../../core/document/setup-edits.js';
import { toeSetupOf } from '../../core/document/setup-in-use.js';
import { explainProblem } from '../../core/quantity/explain.js';
import type { Problem } from '../../core/quantity/problem.js';
import { textOfPart } from '../bumpline-geometry/problems.js';
import { problemText as readingsProblemText } from '../bumpline-readings/bumpline-readings.labels.js';
import { renderProblems as renderBlock } from '../element/problems-block.js';
import { LINKS } from '../inputs/links.labels.js';
import { isElsewhere, queriesOf, renderQueries, sheetToMend } from '../inputs/queries.js';
import { problemText } from '../inputs/sheet.labels.js';
import { FIRST } from './bumpline-toe.words.js';
import { toeProblemText, toeSheetOf } from './toe-kit.js';
import type { ToeView } from './toe-view.js';

const USES = ['given', 'drop', 'setups', 'measuredAt', 'toe', 'alignment'] as const;

/** What is wrong with toe or with what it is made from, what looks wrong, and where to mend it. */
export function renderProblems(view: ToeView, onShow: (key: string) => void): TemplateResult {
  const { display, sentence } = view;
  const queries = queriesOf(view);
  const block = renderBlock(view, {
    uses: USES,
    text: (problem) =>
      isElsewhere(problem, queries)
        ? LINKS.doNotFit
        : (ownText(problem, view) ?? textOfPart(problem, view, undefined) ?? problemText(problem, display)),
    fieldOf: (path) => (path === 'drop' ? sentence.drop : /^(?:toe\.)?over$/.test(path) ? sentence.over : undefined),
    sheetOf: (problem) => (toeSheetOf(problem.path) ? problem.path : sheetToMend(problem, view, queries)),
    onShow,
  });
  return html`${block} ${renderQueries(queries, view, onShow)}`;
}

/** Of a table of readings, or of one reading. */
const OF_READINGS = /^(?:readings|table|zero|base|front|zeroAt|degree|doubts|Heading|Caption)\b/;

/** Of what is asked about toe, and of readings of it. */
function ownText(problem: Problem, { display, car }: ToeView): string | undefined {
  const { language, units: unitSystem } = display;
  const { path } = problem;
  const setup = toeSetupOf(car);
  if (OF_READINGS.test(path)) {
    return readingsProblemText(problem, setup ?? emptySetup('', 'toe', car.cornerName), display);
  }
  if (path === 'over' || path === 'toe.over') {
    return explainProblem(problem, { label: FIRST.over, quantity: 'travel', language, unitSystem });
  }
  return toeProblemText(problem, display);
}
