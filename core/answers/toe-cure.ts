import { travelsWithinReach } from '../curve-sources/solve-corner.js';
import type { SolvedLinks, TriedSource } from '../curve-sources/solved-source.js';
import type { Corner } from '../linkage/corner.js';
import { type HeldPath, heldAt, heldPath, type IdealRod, idealRod } from '../linkage/ideal-rod.js';
import type { Linkage } from '../linkage/linkage.js';
import { type Motion, motionOf } from '../linkage/motion.js';
import { toeIn, toeOver, withRodEnd } from '../linkage/rod-ends.js';
import type { ToeAdjustment } from '../linkage/toe-adjustment.js';
import { type ToeCorrection, toeCorrection, toeSetFor } from '../linkage/toe-correction.js';
import { checkedCorrection, type ToeCorrectionOptions } from '../linkage/toe-correction-options.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { linksOf } from './links-of.js';

/** How much does a wheel steer itself over travel, and what flattens it? See `ToeCorrectionOptions`; mm and degrees. */
export interface ToeCureRequest<S = TriedSource> {
  /** Hard points, bare or with parts on. */
  source: S;
  /** Travel from where the source was measured to the ride height. */
  at: number;
  /** Droop and bump from there. */
  window: readonly [number, number];
  adjust: ToeAdjustment;
  rack?: number;
  range?: readonly [number, number];
  toe?: number;
}

export interface ToeCure {
  at: number;
  window: readonly [number, number];
  adjust: ToeAdjustment;
  rack: number;
  /** Toe-in at ride height, straight ahead, that is set again for every amount, degrees. */
  toeSet: number;
  /** mm, ascending: every whole mm of the range at which the rod joins at ride height, and the ends of the range. */
  amounts: Float64Array;
  /** From where the source was measured, mm, ascending: every 2.5 mm that the links reach, ride height and both ends of the window. */
  travel: Float64Array;
  /** Amounts × travels, row by row: toe-in, degrees; NaN where a link runs out. */
  toe: Float64Array;
  /** The same of the wheel on the other side, for which the rack moves the other way. Only with the rack off its middle. */
  otherToe?: Float64Array;
  correction: ToeCorrection;
  /** What one mm of amount changes of the toe change from ride height to the window's end in bump, degrees per mm, at amount 0. */
  sensitivity: number;
  /** At ride height: the rod that is there beside the one it should be, with none of the amount and with each optimum. */
  rods: { asItIs: IdealRod; slope: IdealRod | null; leastSquares: IdealRod; minimax: IdealRod };
  /** For drawings: of any amount at any travel `idealRodOf` tells the ideal rod by it. */
  path: HeldPath;
  /** Where the joints are with none of the amount. */
  motion: Motion;
  corner: Corner;
}

/** Of amounts, for the sensitivity, mm. */
const NUDGE = 0.5;
/** Travels that differ by less are one, mm. */
const APART_MM = 1e-3;
/** Neighbours in the table, mm; further apart the rod does not join between them. */
const WHOLE_MM = 1 + 1e-9;

/**
 * @throws InputError of what is wrong with the source; `wrong-shape`, path `source`, of one without links; `missing`, path
 *   `source.tieRod`, of one from the driveway, which tells nothing of the tie rod; and as `toeCorrection`
 */
export function toeCureOf({ source, ...options }: ToeCureRequest): ToeCure {
  const { corner, linkage } = linksWithRod(source, options);
  const asked = checkedCorrection(options);
  const { at, window, adjust, rack, range } = asked;
  const correction = toeCorrection(linkage, options);
  const set = toeSetFor(linkage, asked);
  const toeSet = toeIn(set);
  const built = (amount: number, by: number) => withRodEnd(linkage, set, adjust, amount, by);
  const reached = travelsWithinReach(linkage);
  const travel = travelsWith(reached, [at, at + window[0], at + window[1]]);
  const home = travel.indexOf(at);
  const none = new Float64Array(1);
  const joins = (amount: number) => {
    const there = built(amount, rack);
    return there !== undefined && toeOver(there, Float64Array.of(at), 0, none);
  };
  const amounts = Float64Array.from(wholesOf(range).filter(joins));
  const table = (by: number) => {
    const toe = new Float64Array(amounts.length * travel.length).fill(Number.NaN);
    amounts.forEach((amount, i) => {
      const there = built(amount, by);
      if (there) toeOver(there, travel, home, toe.subarray(i * travel.length, (i + 1) * travel.length));
    });
    return toe;
  };
  const path = heldPath(linkage, set, toeSet, travel);
  const inner = linkage.body.tieInner;
  const rodWith = (amount: number) => idealRodOf({ path, adjust, inner }, at, amount);
  const rodOf = (found: { amount: number } | null) => found && rodWith(found.amount);
  const { slope, leastSquares, minimax } = correction;
  return {
    at,
    window,
    adjust,
    rack,
    toeSet,
    amounts,
    travel,
    toe: table(rack),
    ...(rack !== 0 && { otherToe: table(-rack) }),
    correction,
    sensitivity: sensitivityOf(linkage, set, { at, window, adjust, rack }),
    rods: {
      asItIs: rodWith(0),
      slope: rodOf(slope),
      leastSquares: rodWith(leastSquares.amount),
      minimax: rodWith(minimax.amount),
    },
    path,
    motion: motionOf(linkage, reached),
    corner,
  };
}

/** The links, of which the tie rod is known. @throws InputError as `toeCureOf`, with all that is wrong with the options besides */
export function linksWithRod(source: TriedSource, options: ToeCorrectionOptions): SolvedLinks {
  const problems: Problem[] = [];
  try {
    checkedCorrection(options);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    problems.push(...error.problems);
  }
  if ('driveway' in source && source.driveway)
    problems.push({ code: 'missing', path: 'source.tieRod', value: undefined });
  return linksOf(source, problems);
}

/** Degrees per mm of amount, at amount 0: of the toe change from ride height to the window's end in bump. */
export function sensitivityOf(
  linkage: Linkage,
  set: Float64Array,
  { at, window, adjust, rack }: Pick<ToeCure, 'at' | 'window' | 'adjust' | 'rack'>,
): number {
  const travel = Float64Array.of(at, at + window[1]);
  const [more, less] = [NUDGE, -NUDGE].map((amount) => {
    const toe = new Float64Array(2);
    const there = withRodEnd(linkage, set, adjust, amount, rack);
    return there && toeOver(there, travel, 0, toe) ? toe[1]! - toe[0]! : Number.NaN;
  });
  return (more! - less!) / (2 * NUDGE);
}

/** The ideal rod at a travel, and how the rod with so much of the amount differs from it: cheap, for a page that drags. */
export function idealRodOf(
  { path, adjust, inner }: { path: HeldPath; adjust: ToeAdjustment; inner: Motion['fixed']['tieInner'] },
  travel: number,
  amount: number,
): IdealRod {
  const [x, y, z] = inner;
  const isOuter = adjust === 'outerEnd';
  return idealRod(heldAt(path, travel), isOuter ? inner : [x, y, z + amount], isOuter ? amount : 0);
}

/** Travels with some more among them, which stand for what lies next to nothing from them. */
function travelsWith(travels: Float64Array, more: readonly number[]): Float64Array {
  const others = travels.filter((one) => more.every((own) => Math.abs(one - own) > APART_MM));
  return Float64Array.from(new Set([...others, ...more])).sort();
}

/** Every whole mm of the range, and its ends. */
function wholesOf([low, high]: readonly [number, number]): number[] {
  const amounts = new Set([low]);
  for (let i = Math.ceil(low); i <= high; i++) amounts.add(i || 0);
  return [...amounts.add(high)];
}

/**
 * Toe over the cure's travels with any amount, between those of its table by cubics: cheap, for a page that drags. Within 1e-4 degrees
 * of the solver, but right beside amounts at which a link runs out.
 *
 * @param amount mm; beyond the table the nearest one that is in it
 * @param side which of the two wheels
 * @returns degrees; NaN where a link runs out with the amount before or after
 */
export function toeAtAmount(
  { amounts, travel, toe, otherToe }: Pick<ToeCure, 'amounts' | 'travel' | 'toe' | 'otherToe'>,
  amount: number,
  side: 'this' | 'other' = 'this',
): Float64Array {
  const table = side === 'this' ? toe : (otherToe ?? toe);
  const x = Math.min(Math.max(amount, amounts[0]!), amounts.at(-1)!);
  const next = amounts.findIndex((one) => one >= x);
  const row = (i: number, t: number) => table[i * travel.length + t]!;
  if (amounts[next] === x) return travel.map((_, t) => row(next, t));
  const isNext = (i: number) => amounts[i]! - amounts[i - 1]! <= WHOLE_MM;
  return travel.map((_, t) => {
    const has = (i: number) => !Number.isNaN(row(i, t) ?? Number.NaN);
    let [low, high] = [next - 1, next];
    if (!isNext(next) || !has(low) || !has(high)) return Number.NaN;
    // Two more, one on either side if there is one.
    while (high - low < 3) {
      const [below, above] = [low > 0 && isNext(low) && has(low - 1), isNext(high + 1) && has(high + 1)];
      if (above && (!below || high - next <= next - 1 - low)) high++;
      else if (below) low--;
      else break;
    }
    let sum = 0;
    for (let i = low; i <= high; i++) {
      let weight = 1;
      for (let j = low; j <= high; j++) if (j !== i) weight *= (x - amounts[j]!) / (amounts[i]! - amounts[j]!);
      sum += weight * row(i, t);
    }
    return sum;
  });
}
