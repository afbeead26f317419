import type { LeastCostAnswer, LeastCostRow } from '../../core/answers/least-cost-answer.js';
import type { LeastCost } from '../../core/document/cost-weights.js';
import { explainProblem } from '../../core/quantity/explain.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { Problem } from '../../core/quantity/problem.js';
import { amountText } from '../bumpline-static-camber/bumpline-static-camber.words.js';
import { type Display, show } from '../element/sentence.js';
import { problemText as carProblemText } from '../inputs/sheet.labels.js';
import { NAMES } from './least-cost.labels.js';
import { sheetWith } from './least-cost-kit.js';
import type { Asked } from './least-cost-question.js';

const { row: ROW } = NAMES;

/** An inclination has its sign: minus is top inboard. */
export const inclinationText = (degrees: number, { units, language }: Display): string =>
  formatQuantity(degrees, 'camberChange', units, { language, sign: 'always' }).text;

export const rollText = (degrees: number, display: Display): string => show(degrees, 'roll', display);

const heightText = (drop: number, display: Display): string => {
  if (drop === 0) return ROW.stock;
  return (drop > 0 ? ROW.lower : ROW.higher)(show(Math.abs(drop), 'drop', display));
};

/** What a setup takes, a line each; what is as it was is left out. */
export function takesOf(row: LeastCostRow, { request }: Asked, display: Display): string[] {
  const { way, amount, joint, spring, bar, camber, drop } = row;
  const lines: string[] = [];
  if (way !== undefined) {
    lines.push(
      `${ROW.set(show(camber, 'camber', display))}: ${ROW.by(NAMES.ways[way], amountText(way, amount!, display))}`,
    );
  }
  if (drop !== request.drop) lines.push(heightText(drop, display));
  const { mm, correctTieRod } = (joint === undefined ? undefined : request.joints?.[joint]) ?? {};
  if (mm !== undefined) {
    lines.push(ROW.joint(show(mm, 'partLength', display)) + (correctTieRod ? `, ${ROW.rods}` : ''));
  }
  if (spring !== undefined) lines.push(ROW.spring(show(request.springs![spring]!.rate, 'springRate', display)));
  if (bar !== undefined) lines.push(ROW.bar(show(request.bars![bar]!.rate, 'springRate', display)));
  return lines.length > 0 ? lines : [ROW.asItIs];
}

export const comesTo = ({ inclination, roll }: Pick<LeastCostRow, 'inclination' | 'roll'>, display: Display): string =>
  ROW.comes(inclinationText(inclination, display), rollText(roll, display));

/** A cost of a setup, and what stands under it. */
export function costText(row: LeastCostRow, cost: LeastCost, display: Display): { main: string; under: string[] } {
  const { costs, bumpLeft, gapStrut, isPriceOpen } = row;
  const length = (mm: number) => show(mm, 'travel', display);
  if (cost === 'price') {
    const price = show(costs.price, 'price', display);
    return { main: isPriceOpen ? (costs.price > 0 ? NAMES.open(price) : NAMES.allOpen) : price, under: [] };
  }
  if (cost === 'bumpSteer') {
    return {
      main: costs.bumpSteer === undefined ? NAMES.unknownToe : show(costs.bumpSteer, 'toe', display),
      under: [],
    };
  }
  if (cost === 'scrubChange') {
    return {
      main: length(costs.scrubChange),
      under: gapStrut === undefined ? [] : [NAMES.gap(show(Math.max(0, gapStrut), 'gap', display))],
    };
  }
  const isWon = show(costs.bumpTravel, 'travel', display) !== length(0) && costs.bumpTravel < 0;
  return {
    main: isWon ? NAMES.wonTravel(length(-costs.bumpTravel)) : length(Math.max(0, costs.bumpTravel)),
    under: bumpLeft === undefined ? [] : [NAMES.left(length(bumpLeft))],
  };
}

/** How many were tried, how many get there, and how those shown were chosen. */
export function countsText({ tried, reach, rows }: LeastCostAnswer): string {
  const reached = reach === 1 ? NAMES.reachOne : NAMES.reachMany(String(reach));
  const shown = rows.length === 1 ? NAMES.shown.one : NAMES.shown.many(String(rows.length));
  return `${NAMES.counts(String(tried), reached)} ${NAMES.chosen(shown)}`;
}

/** How the roll of the setups came about. */
export function rollNote({ request }: Asked, { asItIs }: LeastCostAnswer, display: Display): string {
  const roll = rollText(asItIs.roll, display);
  const { load } = request;
  if (!load) return NAMES.held(roll);
  const worked = NAMES.worked(show(load.lateral, 'lateral', display), roll);
  return load.otherAxle ? worked : `${worked} ${NAMES.alike}`;
}

/** What is wrong with what is asked of the search, by the paths of the car. */
export function problemText(problem: Problem, asked: Asked | undefined, display: Display): string {
  const { path, code, value, limit } = problem;
  const { problems: WORDS } = NAMES;
  if (asked && path === 'turn.wanted' && code === 'out-of-range' && value === asked.request.inclination) {
    const wanted = inclinationText(asked.request.inclination, display);
    return limit === undefined ? WORDS.none(wanted) : WORDS.nearest(wanted, inclinationText(limit, display));
  }
  if (path === 'limits') return WORDS.limits;
  if (path === 'load') return WORDS.load;
  if (path === 'leastCost.way') return WORDS.noWay;
  if (path === 'turn.roll' && asked?.request.load) return WORDS.tooFar;
  if (path.startsWith('turn.load.') && !sheetWith(path)) return WORDS.otherLoad;
  if (path === 'drop' || /^turn\.(?!wanted|load)/.test(path)) return WORDS.turn;
  if (path === 'bumpTravel' && code === 'missing') return WORDS.needsLeft;
  if (path === 'leastCost.gapStrut' && code === 'missing') return WORDS.needsGap;
  if (path === 'leastCost.mostBumpSteer' && code === 'wrong-shape') return WORDS.noToe;
  const sheet = sheetWith(path);
  const field = sheet?.fields.find((one) => one.path === path);
  if (!sheet || !field) return carProblemText(problem, display);
  const label = sheet.fields.length > 1 ? `${sheet.title}, ${field.label}` : sheet.title;
  const isLimit = /\.(least|most)/.test(path) && code === 'out-of-range' && limit !== undefined;
  if (isLimit) {
    const size = (of: unknown) => show(of as number, field.quantity, display);
    return WORDS.limit(field.label, size(value), size(limit));
  }
  const { quantity } = field;
  return explainProblem(problem, { label, quantity, unitSystem: display.units, language: display.language });
}
