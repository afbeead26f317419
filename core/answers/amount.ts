import type { KnownCorner } from '../curve-sources/solve-corner.js';
import { knownCorner, linkageWith, movedWith, sourcesWith } from '../curve-sources/solve-parts.js';
import type { Alignment, PartsSource } from '../curve-sources/source.js';
import { buildLinkage } from '../linkage/build-linkage.js';
import { causeOf } from '../linkage/causes.js';
import { type CornerMoves, movedBy } from '../linkage/corner-source.js';
import type { Linkage } from '../linkage/linkage.js';
import { AMOUNT_UNIT, type PartData, withAmount } from '../linkage/parts/part-kinds.js';
import { sweepTravel } from '../linkage/sweep.js';
import { finished } from '../math/finished.js';
import { numberChecks } from '../quantity/number-problem.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { QUANTITIES } from '../quantity/quantities.js';
import { type Contribution, contributions, plusMinus95 } from '../uncertainty/combine.js';

/** How large must a part be? mm and degrees. */
export interface AmountRequest {
  of: PartsSource['of'];
  /** Other parts, that are on already. */
  parts?: readonly PartData[];
  /** The part that is asked about; its amount at `path` is looked for, whatever it is now. */
  part: PartData;
  /** `mm`, `degrees`, `vector.1`, … */
  path: string;
  /** Between which it is looked for; from the one nearest to 0 on. */
  between: readonly [number, number];
  /**
   * What it is to reach at the drop: so much static camber, degrees; or the camber rate in bump that the bare links have at stock height.
   */
  goal: { camber: number } | 'stockRate';
  /** Travel from stock height, mm. */
  drop: number;
  /** Travel from stock height to where the corner was measured, mm; see LoweringRequest. Default 0. */
  measuredAt?: number;
  /** See PartsSource. What is set again is set to the angles of where the corner was measured. */
  alignment?: Exclude<Alignment, 'camber-and-toe'>;
}

export type AmountAnswer =
  | {
      kind: 'at';
      amount: number;
      /** Half-width of the 95 % interval that comes of the corner and of the other parts; left out where no doubt was stated. */
      plusMinus?: number;
      contributions: Contribution[];
    }
  | {
      /** The goal lies beyond what the amounts in between, or the links, allow: how far they lead, and by which amount. */
      kind: 'out-of-reach';
      ends: { amount: number; value: number };
      /** What is wanted, degrees, or degrees a mm. */
      wanted: number;
    };

const STEPS = 24;
const CLOSE_ENOUGH = 1e-7;
/** By how much the amount, and by how many standard uncertainties a source, is put off either way for a slope. */
const NUDGE = 0.05;

/**
 * The amount of a part that reaches a goal, by search along the amounts between and bisection on the exact linkage: the first one
 * that does, from no part on. Its ± by the implicit derivative, δamount = −Σ (∂miss/∂source) / (∂miss/∂amount): what the bare links and
 * those with the part have in common cancels (GUM, JCGM 100:2008, 5.1.2).
 *
 * @throws InputError from the corner, the parts (`parts.0.mm`; the part that is asked about stands behind the others), `between`, `goal`,
 *   `drop`
 */
export const amountFor = (request: AmountRequest): AmountAnswer => finished(amountSteps(request));

/** As `amountFor`, a tried amount or source a step. */
export function* amountSteps(request: AmountRequest): Generator<undefined, AmountAnswer> {
  check(request);
  const { of, parts = [], part, path, between, goal, drop, measuredAt = 0, alignment = 'toe' } = request;
  const known = knownCorner(of);
  const [here, stock] = [drop - measuredAt, -measuredAt];
  const withPart = (amount: number) => [...parts, withAmount(part, path, amount)];
  const reads = (linkage: Linkage) => {
    const { camber, camberRate } = sweepTravel(linkage, [here]);
    return goal === 'stockRate' ? camberRate[0]! : camber[0]!;
  };
  const wantedOf = (bare: Linkage) => (goal === 'stockRate' ? sweepTravel(bare, [stock]).camberRate[0]! : goal.camber);
  const bare = buildLinkage(known.corner);
  const { droop, bump } = bare.reach;
  for (const at of [here, stock]) {
    if (at >= droop && at <= bump) continue;
    const limit = (at < droop ? droop : bump) + measuredAt;
    throw new InputError([{ code: 'outside-domain', path: 'drop', value: at + measuredAt, limit }]);
  }
  const wanted = wantedOf(bare);
  const value = (amount: number, isOpen = true): number => {
    try {
      return reads(linkageWith(known.corner, withPart(amount), { alignment, isOpen }));
    } catch (error) {
      if (error instanceof InputError && error.code === 'cannot-close') return Number.NaN;
      throw error;
    }
  };
  const found = yield* searched((amount) => value(amount) - wanted, between);
  // What was tried did not look for the ends of reach.
  if (found.isRoot && !Number.isNaN(value(found.amount, false))) {
    const { amount } = found;
    return { kind: 'at', amount, ...(yield* doubtOf(known, withPart, amount, alignment, reads, wantedOf)) };
  }
  return { kind: 'out-of-reach', ends: { amount: found.amount, value: value(found.amount) }, wanted };
}

/** The root nearest to no part at all; or the amount that comes closest. */
function* searched(
  miss: (amount: number) => number,
  [a, b]: readonly [number, number],
): Generator<undefined, { amount: number; isRoot: boolean }> {
  const [low, high] = [Math.min(a, b), Math.max(a, b)];
  const from = Math.min(Math.max(0, low), high);
  const start = { amount: from, miss: miss(from) };
  let best = start;
  const roots: number[] = [];
  for (const end of [low, high].filter((one) => one !== from)) {
    let last = start;
    for (let i = 1; i <= STEPS; i++) {
      const amount = from + ((end - from) * i) / STEPS;
      const here = { amount, miss: miss(amount) };
      yield;
      if (Number.isNaN(here.miss)) break;
      if (Math.abs(here.miss) < Math.abs(best.miss)) best = here;
      if (last.miss * here.miss <= 0) {
        roots.push(bisected(miss, last, here));
        break;
      }
      last = here;
    }
  }
  const [nearest] = roots.sort((x, y) => Math.abs(x - from) - Math.abs(y - from));
  return nearest === undefined ? { amount: best.amount, isRoot: false } : { amount: nearest, isRoot: true };
}

interface Tried {
  amount: number;
  miss: number;
}

function bisected(miss: (amount: number) => number, from: Tried, to: Tried): number {
  let [low, high] = [from.amount, to.amount];
  while (Math.abs(high - low) > CLOSE_ENOUGH) {
    const middle = (low + high) / 2;
    if (miss(middle) * from.miss > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function* doubtOf(
  known: KnownCorner,
  withPart: (amount: number) => PartData[],
  amount: number,
  alignment: Alignment,
  reads: (linkage: Linkage) => number,
  wantedOf: (bare: Linkage) => number,
): Generator<undefined, { plusMinus?: number; contributions: Contribution[] }> {
  const at = withPart(amount);
  // The part that is asked about is as large as is answered.
  const sources = sourcesWith(known, at).filter(({ part }) => part?.at !== at.length - 1);
  if (sources.length === 0) return { contributions: [] };
  const off = (by: CornerMoves, times: number) =>
    reads(movedWith(known.corner, at, alignment, by, times)) -
    wantedOf(buildLinkage(by.part ? known.corner : movedBy(known.corner, by, times), { isOpen: true }));
  const [more, less] = [NUDGE, -NUDGE].map((by) =>
    reads(linkageWith(known.corner, withPart(amount + by), { alignment, isOpen: true })),
  );
  const slope = (more! - less!) / (2 * NUDGE);
  const rows: number[] = [];
  for (const source of sources) {
    rows.push((off(source, NUDGE) - off(source, -NUDGE)) / (2 * NUDGE));
    yield;
  }
  const estimate = { value: amount, parts: Float64Array.from(rows, (row) => -row / slope) };
  return { plusMinus: plusMinus95(estimate, sources), contributions: contributions(estimate, sources, causeOf) };
}

function check({ between, goal, drop, measuredAt, part, path }: AmountRequest): void {
  const problems: Problem[] = [];
  const number = numberChecks(problems);
  const { min, max } = QUANTITIES.drop;
  number('drop', drop, min, max);
  if (measuredAt !== undefined) number('measuredAt', measuredAt, min, max);
  if (goal !== 'stockRate') number('goal', goal?.camber, QUANTITIES.camber.min, QUANTITIES.camber.max);
  for (const [i, end] of [between?.[0], between?.[1]].entries()) number(`between.${i}`, end, -150, 150);
  const key = path?.split('.')[0] as keyof typeof AMOUNT_UNIT;
  if (!(key in AMOUNT_UNIT) || typeof part !== 'object' || !(key in (part ?? {}))) {
    problems.push({ code: 'unknown-name', path: 'path', value: path, names: Object.keys(AMOUNT_UNIT) });
  }
  if (problems.length > 0) throw new InputError(problems);
}
