import { html, type TemplateResult } from 'lit';
import { explainProblem } from '../../core/quantity/explain.js';
import type { Problem } from '../../core/quantity/problem.js';
import { textOfPart } from '../bumpline-geometry/problems.js';
import { renderProblems as renderBlock } from '../element/problems-block.js';
import { LINKS } from '../inputs/links.labels.js';
import { isElsewhere, queriesOf, renderQueries, sheetToMend } from '../inputs/queries.js';
import { problemText } from '../inputs/sheet.labels.js';
import { NAMES } from './bumpline-cornering.labels.js';
import { FIRST, rollText } from './bumpline-cornering.words.js';
import { turnProblemText, turnSheetOf } from './cornering-kit.js';
import type { CorneringView } from './cornering-view.js';
import { ROLL } from './roll.labels.js';
import { loadRun, rollSheetOf } from './roll-sheets.js';

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
  const { display, sentence } = view;
  const queries = queriesOf(view);
  const block = renderBlock(view, {
    uses: USES,
    text: (problem) =>
      isElsewhere(problem, queries)
        ? LINKS.doNotFit
        : (ownText(problem, view) ?? textOfPart(problem, view, undefined) ?? problemText(problem, display)),
    fieldOf: (path) =>
      path === 'drop'
        ? sentence.drop
        : /^(?:turn\.)?roll$/.test(path)
          ? sentence.roll
          : path === 'turn.load.lateral'
            ? sentence.lateral
            : undefined,
    sheetOf: (problem) =>
      (problem.path === 'turn.roll' ? sheetOfRoll(view) : turnSheetOf(problem.path, view.hasLinks)?.key) ??
      sheetToMend(problem, view, queries),
    onShow,
  });
  return html`${block} ${renderQueries(queries, view, onShow)}`;
}

/** What is wrong with a roll that was not typed is mended where it comes from. */
const sheetOfRoll = ({ rollWay, hasLinks }: CorneringView): string | undefined =>
  rollWay === 'typed'
    ? undefined
    : (rollWay === 'load' ? loadRun(hasLinks)[0]! : rollSheetOf(`turn.roll.${rollWay}`, hasLinks)!).key;

/** Of what is asked about the turn. */
function ownText(problem: Problem, view: CorneringView): string | undefined {
  const { display, rollWay, car } = view;
  const { language, units: unitSystem } = display;
  const { path, code, other } = problem;
  if (!/^(?:turn\.)?roll$/.test(path)) return turnProblemText(problem, view);
  if (rollWay === 'load' && code === 'out-of-range') return ROLL.tooFar(rollText(Number(problem.value), display));
  if (rollWay === 'photo' && Number(problem.value) < 0) {
    const { photo = 0, tyreRoll = 0 } = car.turn ?? {};
    return ROLL.photoLess(rollText(photo, display), rollText(tyreRoll, display));
  }
  const text = explainProblem(problem, { label: FIRST.roll, quantity: 'roll', language, unitSystem });
  // Which wheel it is tells what to look at.
  return code === 'outside-domain' && (other === 'outer' || other === 'inner') ? `${text} ${NAMES.ends[other]}` : text;
}
