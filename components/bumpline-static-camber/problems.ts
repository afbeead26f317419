import { html, type TemplateResult } from 'lit';
import { MOST_ADDED_DEG } from '../../core/answers/camber-ways.js';
import { explainProblem } from '../../core/quantity/explain.js';
import type { Problem } from '../../core/quantity/problem.js';
import { ARCMINUTES_PER_DEGREE } from '../../core/quantity/units.js';
import { renderLinkedProblems } from '../bumpline-geometry/linked-problems.js';
import type { Display } from '../element/sentence.js';
import { isOfPanel } from './aside.js';
import { NAMES } from './bumpline-static-camber.labels.js';
import { angleText, senseText } from './bumpline-static-camber.words.js';
import { OWN_SHEETS } from './static-camber-kit.js';
import type { StaticCamberView } from './static-camber-view.js';

const { problems: WORDS } = NAMES;
const USES = [
  'alignment',
  'given',
  'drop',
  'setups',
  'measuredAt',
  'camberReadLower',
  'camberAdded',
  'turn',
  'leastCost',
  'bumpTravel',
  'lowered',
] as const;

/** What is wrong with the question or with the links, what looks wrong, and where to mend it. */
export function renderProblems(view: StaticCamberView, onShow: (key: string) => void): TemplateResult {
  const { display, sentence } = view;
  return renderLinkedProblems(view, onShow, {
    uses: USES,
    isToldElsewhere: isOfPanel,
    sheets: OWN_SHEETS,
    text: (problem) => amountProblem(problem, view) ?? OWN_SHEETS.problemText(problem, display),
    fields: { drop: sentence.drop, by: sentence.by },
  });
}

/** The most that can be asked for, rounded so that it can be had. */
function mostOf(limit: number, { units }: Display): number {
  const steps = units.angle === 'arcminutes' ? ARCMINUTES_PER_DEGREE : 100;
  return (Math.sign(limit) * Math.floor(Math.abs(limit) * steps + 1e-9)) / steps;
}

/** Of the amount: a text that is none, one beyond what any car takes, and one that no way gives. */
function amountProblem(problem: Problem, view: StaticCamberView): unknown {
  const { path, code, value, limit } = problem;
  if (path !== 'by') return undefined;
  const { display } = view;
  const { language, units: unitSystem } = display;
  if (code !== 'out-of-range' || typeof value !== 'number' || limit === undefined) {
    return explainProblem(problem, { label: WORDS.by, quantity: 'partAngle', language, unitSystem });
  }
  const [asked, sense] = [angleText(value, display), senseText(value)];
  const most = mostOf(limit, display);
  if (Math.abs(value) > MOST_ADDED_DEG) return WORDS.most(asked, angleText(limit, display));
  if (most === 0) return WORDS.nothing(asked, sense);
  const text = angleText(most, display);
  const use = () => view.sentence.by.take(most);
  return html`${WORDS.unreached(asked, sense, text)}
    <button type="button" class="button use-most" @click=${use}>${WORDS.useMost(text)}</button>`;
}
