import type { TemplateResult } from 'lit';
import { explainProblem } from '../../core/quantity/explain.js';
import type { Problem } from '../../core/quantity/problem.js';
import { renderLinkedProblems } from '../bumpline-geometry/linked-problems.js';
import { NAMES } from './bumpline-cornering.labels.js';
import { FIRST, rollText } from './bumpline-cornering.words.js';
import { TURN_SHEETS } from './cornering-kit.js';
import type { CorneringView } from './cornering-view.js';
import { ROLL } from './roll.labels.js';

/** Where a roll comes from that was not typed. */
const ROLL_PLACES = ['turn.marks.outer', 'turn.photo', 'turn.load.lateral'];

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
    fields: {
      drop: sentence.drop,
      roll: sentence.roll,
      'turn.roll': sentence.roll,
      'turn.load.lateral': sentence.lateral,
    },
  });
}

/** Of what is asked about the turn. */
function ownText(problem: Problem, view: CorneringView): string | undefined {
  const { display, car } = view;
  const { language, units: unitSystem } = display;
  const { path, code, other } = problem;
  const isRoll = /^(?:turn\.)?roll$/.test(path);
  // Of a roll that was not typed the problem stands where it comes from, with what it is about beside it.
  if (!isRoll && other === undefined) return TURN_SHEETS.problemText(problem, display);
  if (path === 'turn.load.lateral') return ROLL.tooFar(rollText(Number(problem.value), display));
  if (path === 'turn.photo' && Number(problem.value) < 0) {
    const { photo = 0, tyreRoll = 0 } = car.turn ?? {};
    return ROLL.photoLess(rollText(photo, display), rollText(tyreRoll, display));
  }
  if (!isRoll && !ROLL_PLACES.includes(path)) return TURN_SHEETS.problemText(problem, display);
  const text = explainProblem(problem, { label: FIRST.roll, quantity: 'roll', language, unitSystem });
  // Which wheel it is tells what to look at.
  return code === 'outside-domain' && (other === 'outer' || other === 'inner') ? `${text} ${NAMES.ends[other]}` : text;
}
