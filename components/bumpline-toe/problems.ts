import type { TemplateResult } from 'lit';
import { emptySetup } from '../../core/document/setup-edits.js';
import { toeSetupOf } from '../../core/document/setup-in-use.js';
import { explainProblem } from '../../core/quantity/explain.js';
import type { Problem } from '../../core/quantity/problem.js';
import { renderLinkedProblems } from '../bumpline-geometry/linked-problems.js';
import { problemText as readingsProblemText } from '../bumpline-readings/bumpline-readings.labels.js';
import { FIRST } from './bumpline-toe.words.js';
import { TOE_SHEETS } from './toe-kit.js';
import type { ToeView } from './toe-view.js';

const USES = ['given', 'drop', 'setups', 'measuredAt', 'toe', 'alignment'] as const;

/** What is wrong with toe or with what it is made from, what looks wrong, and where to mend it. */
export function renderProblems(view: ToeView, onShow: (key: string) => void): TemplateResult {
  const { sentence } = view;
  return renderLinkedProblems(view, onShow, {
    uses: USES,
    sheets: TOE_SHEETS,
    text: (problem) => ownText(problem, view),
    fields: { drop: sentence.drop, over: sentence.over, 'toe.over': sentence.over },
  });
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
  return TOE_SHEETS.problemText(problem, display);
}
