import type { TemplateResult } from 'lit';
import { explainProblem } from '../../core/quantity/explain.js';
import type { Problem } from '../../core/quantity/problem.js';
import { renderLinkedProblems } from '../bumpline-geometry/linked-problems.js';
import { NAMES } from './bumpline-cornering.labels.js';
import { FIRST } from './bumpline-cornering.words.js';
import { TURN_SHEETS } from './cornering-kit.js';
import type { CorneringView } from './cornering-view.js';

const USES = [
  'given',
  'drop',
  'setups',
  'measuredAt',
  'camberReadLower',
  'turn',
  'bumpTravel',
  'stopGap',
  'limits',
] as const;

/** What is wrong with the turn or with what it is made from, what looks wrong, and where to mend it. */
export function renderProblems(view: CorneringView, onShow: (key: string) => void): TemplateResult {
  const { sentence } = view;
  return renderLinkedProblems(view, onShow, {
    uses: USES,
    sheets: TURN_SHEETS,
    text: (problem) => ownText(problem, view),
    fields: { drop: sentence.drop, roll: sentence.roll, 'turn.roll': sentence.roll },
  });
}

/** Of what is asked about the turn. */
function ownText(problem: Problem, { display }: CorneringView): string | undefined {
  const { language, units: unitSystem } = display;
  const { path, code, other } = problem;
  if (!/^(?:turn\.)?roll$/.test(path)) return TURN_SHEETS.problemText(problem, display);
  const text = explainProblem(problem, { label: FIRST.roll, quantity: 'roll', language, unitSystem });
  // Which wheel it is tells what to look at.
  return code === 'outside-domain' && (other === 'outer' || other === 'inner') ? `${text} ${NAMES.ends[other]}` : text;
}
