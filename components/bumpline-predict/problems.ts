import type { TemplateResult } from 'lit';
import { readSetsOf } from '../../core/document/read-sets.js';
import { emptySetup } from '../../core/document/setup-edits.js';
import type { Turned } from '../../core/learn/turned.js';
import { explainProblem } from '../../core/quantity/explain.js';
import { formatNumber } from '../../core/quantity/format.js';
import type { Problem } from '../../core/quantity/problem.js';
import { renderLinkedProblems } from '../bumpline-geometry/linked-problems.js';
import { problemText as readingsProblemText } from '../bumpline-readings/bumpline-readings.labels.js';
import { causeName } from '../element/causes.words.js';
import { NAMES } from './bumpline-predict.labels.js';
import { FIRST } from './bumpline-predict.words.js';
import { OWN_SHEETS } from './predict-kit.js';
import type { PredictView } from './predict-view.js';

const USES = ['given', 'drop', 'setups', 'measuredAt', 'predict', 'predictions', 'links', 'fitted'] as const;

/** What is wrong with the question, the readings, the links or the parts, what looks wrong, and where to mend it. */
export function renderProblems(view: PredictView, onShow: (key: string) => void): TemplateResult {
  const { sentence } = view;
  return renderLinkedProblems(view, onShow, {
    uses: USES,
    sheets: OWN_SHEETS,
    text: (problem) => ownText(problem, view),
    fields: { drop: sentence.drop, over: sentence.over, 'predict.over': sentence.over },
  });
}

const { problems: WORDS } = NAMES;

/** Of a table of readings, or of one reading. */
const OF_READINGS = /^(?:readings|toe|table|zero|base|front|zeroAt|degree|doubts|Heading|Caption)\b/;

function ownText(problem: Problem, { display, learnt: { car } }: PredictView): string | undefined {
  const { language, units: unitSystem } = display;
  const { path, code } = problem;
  const turned = WORDS.turned[problem.other as Turned];
  if (code === 'cannot-close' && path === 'readings')
    return turned ? `${WORDS.outOfReach} ${turned}` : WORDS.outOfReach;
  if (code === 'too-few' && problem.other === 'travel')
    return WORDS.heights(String(problem.value), String(problem.limit));
  if (code === 'inconsistent') {
    const apart = WORDS.apart(formatNumber(Math.max(1, Number(problem.value)), 1, language));
    const names = problem.names?.length ? [WORDS.again(problem.names.map(causeName).join(', '))] : [];
    return [apart, ...(turned ? [turned] : [WORDS.another, ...names])].join(' ');
  }
  if (OF_READINGS.test(path)) {
    const [setup = emptySetup('', 'camber', car.cornerName)] = readSetsOf(car).stock;
    return readingsProblemText({ ...problem, path: path.replace(/^toe\b/, 'readings') }, setup, display);
  }
  if (path === 'over' || path === 'predict.over')
    return explainProblem(problem, { label: FIRST.over, quantity: 'travel', language, unitSystem });
  return OWN_SHEETS.problemText(problem, display);
}
