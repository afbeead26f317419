import { signChanges } from '../curve/roots.js';
import { least } from '../math/least.js';
import { InputError, type Problem } from '../quantity/problem.js';
import type { Linkage } from './linkage.js';
import { setToToe, standingAt, toeIn, toeOver, withRodEnd } from './rod-ends.js';
import { toeByAmount } from './toe-by-amount.js';
import { type CheckedToeCorrection, checkedCorrection, type ToeCorrectionOptions } from './toe-correction-options.js';
import { ToeWindow } from './toe-window.js';
import { findReach, isOpen } from './travel.js';

export type { ToeAdjustment } from './toe-adjustment.js';
export type { ToeCorrectionOptions } from './toe-correction-options.js';

/** One amount of an adjustment, and the peak-to-peak change of toe over the window, degrees: with none of it, and with so much. */
export interface Correction {
  /** mm, upward: in the knuckle's frame for the outer end, in the body's for rack and inner end. */
  amount: number;
  before: number;
  after: number;
}

export interface ToeCorrection {
  /** Of the amounts at which toe does not change with travel at ride height the one nearest to 0; null where none is in range. */
  slope: Correction | null;
  /** The least mean square of the change from ride height. */
  leastSquares: Correction;
  /** The least peak-to-peak change. */
  minimax: Correction;
}

/** Amounts tried along the range, to tell several optima apart. */
const TRIED = 60;
/** The same where every one is asked of the linkage. */
const TRIED_ONE_BY_ONE = 24;
/** How near an amount is found, mm. */
const NEAR_MM = 1e-5;

/**
 * What one end of the tie rod must go up or down by so that toe changes least with travel, toe set again at ride height for every
 * amount. Only amounts count at which all of the window can be driven.
 *
 * @throws InputError from the options (`at`, `window`, `window.0`, `toe`, `adjust`, `range`, `range.1`, `rack`); `outside-domain`,
 *   path `at`, `window.0` or `window.1`, with the last value that the links reach as limit; `out-of-range`, path `toe` or `rack`, where
 *   they do not join so; `cannot-close`, path `range`, where they do at no amount in it
 */
export function toeCorrection(linkage: Linkage, options: ToeCorrectionOptions = {}): ToeCorrection {
  const asked = checkedCorrection(options);
  const { at, window, adjust, range, rack } = asked;
  const set = toeSetFor(linkage, asked);
  const over = new ToeWindow(at, window);
  const isDriven = (amount: number) => {
    const built = withRodEnd(linkage, set, adjust, amount, rack);
    return built !== undefined && over.sweep(built);
  };
  if (!isDriven(0)) throw new InputError(problemsOf(linkage, set, over, asked));
  const before = over.spread;

  const whole = toeByAmount(over, isDriven, range);
  const tried = triedAmounts(range, whole ? TRIED : TRIED_ONE_BY_ONE).map((amount) => {
    whole?.(amount);
    const { spread, square } = whole || isDriven(amount) ? over : NOT_DRIVEN;
    return { amount, spread, square };
  });
  const near = (from: number, to: number) => whole ?? toeByAmount(over, isDriven, [from, to]);
  const leastOf = (what: 'spread' | 'square') =>
    leastAmount(
      tried.map((one) => ({ amount: one.amount, value: one[what] })),
      (amount, within) => {
        within?.(amount);
        return within || isDriven(amount) ? over[what] : Number.POSITIVE_INFINITY;
      },
      near,
    );
  const [square, spread] = [leastOf('square'), leastOf('spread')];
  if (square === undefined || spread === undefined) {
    throw new InputError([{ code: 'cannot-close', path: 'range', value: undefined }]);
  }
  const correction = (amount: number): Correction => {
    isDriven(amount);
    return { amount, before, after: over.spread };
  };
  const flat = flatAmounts(linkage, set, asked, tried).find(isDriven);
  const slope = flat === undefined ? null : correction(flat);
  const leastSquares = correction(square);
  // Where the least is as sharp as a wedge, another's amount may be nearer to it than it was found.
  const minimax = [correction(spread), leastSquares, ...(slope ? [slope] : [])].reduce((best, one) =>
    one.after < best.after ? one : best,
  );
  return { slope, leastSquares, minimax };
}

const NOT_DRIVEN = { spread: Number.POSITIVE_INFINITY, square: Number.POSITIVE_INFINITY };

/**
 * The position at ride height, straight ahead, with toe as it is to be set.
 *
 * @throws InputError `outside-domain`, path `at`; `out-of-range`, path `toe`
 */
export function toeSetFor(linkage: Linkage, { at, toe, adjust }: CheckedToeCorrection): Float64Array {
  const standing = standingAt(linkage, at);
  if (!standing) {
    const { droop, bump } = isOpen(linkage) ? findReach(linkage) : linkage.reach;
    const limit = at < 0 ? droop : bump;
    throw new InputError([{ code: 'outside-domain', path: 'at', value: at, limit }]);
  }
  const set = setToToe(linkage, standing, toe ?? toeIn(standing));
  if (set && withRodEnd(linkage, set, adjust, 0)) return set;
  throw new InputError([{ code: 'out-of-range', path: 'toe', value: toe }]);
}

/** Evenly along the range, both ends and none at all among them. */
function triedAmounts([low, high]: readonly [number, number], steps: number): number[] {
  const amounts = Array.from({ length: steps + 1 }, (_, i) => low + ((high - low) * i) / steps);
  if (low <= 0 && high >= 0) amounts.push(0);
  return [...new Set(amounts.map((amount) => amount || 0))].sort((a, b) => a - b);
}

interface Tried {
  amount: number;
  value: number;
}

/** What is asked with an amount: as the polynomial says, or the linkage itself. Infinity where it does not join. */
type Ask = (amount: number, within?: Interpolate) => number;
type Interpolate = (amount: number) => void;

/**
 * Where something is least, from every dip among what was tried. Undefined where nothing joins.
 *
 * @param near the polynomial between two amounts
 */
function leastAmount(
  tried: readonly Tried[],
  ask: Ask,
  near: (from: number, to: number) => Interpolate | undefined,
): number | undefined {
  const found: Tried[] = [];
  tried.forEach((here, i) => {
    const [below, above] = [tried[i - 1] ?? here, tried[i + 1] ?? here];
    if (!(here.value < Number.POSITIVE_INFINITY && here.value <= below.value && here.value <= above.value)) return;
    found.push(here);
    const [from, to] = [below, above].map((end) => lastJoined(here.amount, end, ask)) as [number, number];
    if (from === to) return;
    const within = near(from, to);
    const { x, value } = least((amount) => ask(amount, within), from, to, NEAR_MM);
    found.push({ amount: x, value });
  });
  found.sort((a, b) => a.value - b.value || Math.abs(a.amount) - Math.abs(b.amount));
  return found[0]?.amount;
}

/** The amount furthest towards an end at which the links still join. */
function lastJoined(from: number, end: Tried, ask: Ask): number {
  if (end.value < Number.POSITIVE_INFINITY) return end.amount;
  let [joined, lost] = [from, end.amount];
  while (Math.abs(lost - joined) > NEAR_MM) {
    const middle = (joined + lost) / 2;
    if (ask(middle) < Number.POSITIVE_INFINITY) joined = middle;
    else lost = middle;
  }
  return joined;
}

/** Amounts at which toe does not change with travel at ride height, those nearest to 0 first. */
function flatAmounts(
  linkage: Linkage,
  set: Float64Array,
  { at, adjust, rack }: CheckedToeCorrection,
  tried: readonly { amount: number }[],
): number[] {
  const travel = Float64Array.of(at);
  const [toe, rate] = [new Float64Array(1), new Float64Array(1)];
  const rateAt = (amount: number) => {
    const built = withRodEnd(linkage, set, adjust, amount, rack);
    return built && toeOver(built, travel, 0, toe, rate) ? rate[0]! : Number.NaN;
  };
  // Runs of amounts at which the rod joins.
  const runs: number[][] = [[]];
  for (const { amount } of tried) {
    if (Number.isNaN(rateAt(amount))) runs.push([]);
    else runs.at(-1)!.push(amount);
  }
  const roots = runs.flatMap((run) => signChanges(rateAt, run).map((change) => change.at));
  return roots.sort((a, b) => Math.abs(a) - Math.abs(b));
}

/** Why the window cannot be driven with the ends of the rod as they are. */
function problemsOf(
  linkage: Linkage,
  set: Float64Array,
  { toe, home }: ToeWindow,
  asked: CheckedToeCorrection,
): Problem[] {
  const { at, window, adjust, rack } = asked;
  const withRack = (mm: number) => withRodEnd(linkage, set, adjust, 0, mm)!;
  if (Number.isNaN(toe[home]!)) {
    const [there, none] = [Float64Array.of(at), new Float64Array(1)];
    let [joined, lost] = [0, rack];
    while (Math.abs(lost - joined) > NEAR_MM) {
      const middle = (joined + lost) / 2;
      if (toeOver(withRack(middle), there, 0, none)) joined = middle;
      else lost = middle;
    }
    return [{ code: 'out-of-range', path: 'rack', value: rack, limit: joined }];
  }
  const reach = findReach(withRack(rack));
  const ends = [
    { i: 0, at: 0, limit: reach.droop - at },
    { i: 1, at: toe.length - 1, limit: reach.bump - at },
  ];
  return ends
    .filter((end) => Number.isNaN(toe[end.at]!))
    .map(({ i, limit }) => ({ code: 'outside-domain', path: `window.${i}`, value: window[i], limit }));
}
