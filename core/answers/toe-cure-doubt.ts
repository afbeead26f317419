import type { TriedSource } from '../curve-sources/solved-source.js';
import { causeOf } from '../linkage/causes.js';
import { heldAt, heldPath, idealRod } from '../linkage/ideal-rod.js';
import type { Linkage } from '../linkage/linkage.js';
import { toeIn } from '../linkage/rod-ends.js';
import { toeCorrection, toeSetFor } from '../linkage/toe-correction.js';
import { checkedCorrection } from '../linkage/toe-correction-options.js';
import { QUANTITIES } from '../quantity/quantities.js';
import { unlessRefused } from '../quantity/unless-refused.js';
import { type Contribution, contributions, plusMinus95 } from '../uncertainty/combine.js';
import { type Figures, figureSlopes } from './figure-slopes.js';
import { linksWithRod, sensitivityOf, type ToeCureRequest } from './toe-cure.js';

/** How far a figure can be trusted. */
export interface FigureDoubt {
  /** Half-width of the 95 % interval, in the figure's unit. */
  plusMinus: number;
  /** What it is made of, largest first. */
  contributions: Contribution[];
}

export interface CorrectionDoubt {
  amount: FigureDoubt;
  /** Of the change that the best amount leaves. */
  after: FigureDoubt;
}

/** The doubt of what `toeCureOf` says. Left out: where no doubt was stated, and of an amount that the range ended, which is no optimum. */
export interface ToeCureDoubt {
  slope?: CorrectionDoubt;
  leastSquares?: CorrectionDoubt;
  minimax?: CorrectionDoubt;
  /** Of the change with none of the amount, degrees. */
  before?: FigureDoubt;
  sensitivity?: FigureDoubt;
  /** Of the rod at ride height with none of the amount, mm. Left out of what is infinite. */
  tooShort?: FigureDoubt;
  tooHigh?: FigureDoubt;
}

/** By how many standard uncertainties a source is put off either way: all of it is smooth on this scale. */
const NUDGE = 0.1;
/** A neighbour's optimum is looked for no further than this from the optima, so that it is the same one. mm. */
const NEIGHBOURHOOD = 3;
/** An amount so near to the end of its range was ended by it, mm. */
const AT_END = 1e-3;

const OPTIMA = ['slope', 'leastSquares', 'minimax'] as const;

/**
 * How far the cure can be trusted, by central differences (first order: GUM, JCGM 100:2008, 5.1.2), half a source a step.
 *
 * @throws InputError as `toeCureOf`
 */
export function* toeCureDoubtSteps({
  source,
  ...options
}: ToeCureRequest<TriedSource>): Generator<undefined, ToeCureDoubt> {
  const { linkage, moved, sources } = linksWithRod(source, options);
  const { range, ...asked } = checkedCorrection(options);
  const correction = toeCorrection(linkage, options);
  const toe = toeIn(toeSetFor(linkage, { range, ...asked }));
  const found = OPTIMA.flatMap((name) => correction[name]?.amount ?? []);
  const most = QUANTITIES.partLength.max;
  const around = [
    Math.max(-most, Math.min(...found) - NEIGHBOURHOOD),
    Math.min(most, Math.max(...found) + NEIGHBOURHOOD),
  ] as const;
  const figuresOf = (of: Linkage): Figures => {
    const options = { ...asked, toe, range: around };
    const { slope, leastSquares, minimax } = toeCorrection(of, options);
    const set = toeSetFor(of, options);
    const { tooShort, tooHigh } = idealRod(
      heldAt(heldPath(of, set, toe, Float64Array.of(asked.at)), asked.at),
      of.body.tieInner,
    );
    return {
      'slope.amount': slope?.amount ?? Number.NaN,
      'slope.after': slope?.after ?? Number.NaN,
      'leastSquares.amount': leastSquares.amount,
      'leastSquares.after': leastSquares.after,
      'minimax.amount': minimax.amount,
      'minimax.after': minimax.after,
      before: minimax.before,
      sensitivity: sensitivityOf(of, set, asked),
      tooShort,
      tooHigh,
    };
  };
  const here = figuresOf(linkage);
  const rows: Figures[] = [];
  for (const one of sources) {
    const more = unlessRefused(() => figuresOf(moved(one, NUDGE)));
    yield undefined;
    const less = unlessRefused(() => figuresOf(moved(one, -NUDGE)));
    rows.push(figureSlopes(here, more, less, NUDGE));
    yield undefined;
  }
  const doubtOf = (name: string): FigureDoubt | undefined => {
    const estimate = { value: here[name]!, parts: Float64Array.from(rows, (row) => row[name]!) };
    if (rows.length === 0 || !estimate.parts.every(Number.isFinite)) return undefined;
    return { plusMinus: plusMinus95(estimate, sources), contributions: contributions(estimate, sources, causeOf) };
  };
  const doubt: ToeCureDoubt = {};
  for (const name of OPTIMA) {
    const at = correction[name]?.amount;
    if (at === undefined || range.some((end) => Math.abs(end - at) < AT_END)) continue;
    const [amount, after] = [doubtOf(`${name}.amount`), doubtOf(`${name}.after`)];
    if (amount && after) doubt[name] = { amount, after };
  }
  for (const name of ['before', 'sensitivity', 'tooShort', 'tooHigh'] as const) {
    const known = doubtOf(name);
    if (known) doubt[name] = known;
  }
  return doubt;
}
