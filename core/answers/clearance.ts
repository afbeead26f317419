import type { TravelBudget } from '../travel/budget.js';
import type { WheelComparison } from '../wheel/compare-wheels.js';
import { gapTable, leastOverRacks } from '../wheel/gap-table.js';
import { Poses, placed } from '../wheel/gaps.js';
import { firstBelow, nearest, valueAt } from '../wheel/sampled-line.js';
import { doubtOf, gapOf, rangeOf } from './clearance-gaps.js';
import { ALLOWANCE_MM, type ClearanceRequest, checkedRequest, marginOf } from './clearance-request.js';
import { envelopeOf } from './envelope-of.js';
import { type JustClear, justClear } from './just-clear.js';

/**
 * `clears`: the whole ± and margin and allowance are left. `touches`: nothing is left of it even at the good end of the ±.
 * Anything between is too close to tell.
 */
export type Verdict = 'clears' | 'close' | 'touches';

export interface GapAt {
  travel: number;
  /** Index into the motion's rack positions. */
  rack: number;
  /** Toe that the wheel is steered to, degrees; 0 means straight ahead or nearly. */
  toe: number;
  isAhead: boolean;
  gap: number;
  /** 95 %. */
  plusMinus: number;
}

export interface PlaceAnswer {
  /** What has to stay free besides the allowance. */
  margin: number;
  verdict: Verdict;
  /** Gap at each travel straight ahead, of the new wheel and of the old one. */
  ahead: Float64Array;
  before: Float64Array;
  /** The smallest over the steering; the same as `ahead` where nothing is steered. */
  least: Float64Array;
  ride: GapAt;
  /** Where the suspension is solid. */
  solid?: GapAt;
  /** The smallest over the whole travel. */
  worst: GapAt;
  /** Gap there with the largest tyre that the standard lets pass as this size. */
  largest: number;
  /** Travel, from the height asked about upward, at which allowance and gap are used up. */
  contact?: number;
}

export interface ClearanceAnswer {
  drop: number;
  travel: Float64Array;
  isSteered: boolean;
  wheels: WheelComparison;
  budget: TravelBudget;
  /** Between which travels the answer looks: full droop to solid, or as far as is known. */
  range: [from: number, to: number];
  places: PlaceAnswer[];
  /** The place that decides; undefined without places. */
  worst?: number;
  /** Undefined without places, and while nobody said where the suspension is solid. */
  verdict?: Verdict;
  /** The first contact from the height asked about upward, beyond solid too. */
  contact?: { travel: number; place: number };
  allowance: number;
  justClear?: JustClear[];
}

/** From bad to good. */
const VERDICTS: readonly Verdict[] = ['touches', 'close', 'clears'];

/**
 * Straight ahead, at once.
 *
 * @throws InputError with all that is wrong with wheels, places, limits and margins
 */
export function clearance(request: ClearanceRequest): ClearanceAnswer {
  const steps = answered(request, false);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** Over the steering as well, with what would just clear: in steps of about a millisecond. */
export const clearanceSteered = (request: ClearanceRequest): Generator<undefined, ClearanceAnswer> =>
  answered(request, true);

function* answered(request: ClearanceRequest, isSteered: boolean): Generator<undefined, ClearanceAnswer> {
  const { motion, drop, measuredAt = 0, places, camberBy = 0, allowance = ALLOWANCE_MM } = request;
  const { wheels, budget } = checkedRequest(request);
  const poses = new Poses(motion, camberBy);
  const before = envelopeOf(wheels.before, 0);
  const after = envelopeOf(wheels.after, wheels.plane);
  // Where things were measured the wheels stood as they did before.
  const asMeasured = new Poses(motion);
  const all = places.map((place) => placed(place, before, asMeasured, measuredAt, request.isLeft));
  const { travel, rack } = motion;
  const racks = isSteered ? [...rack.keys()] : [poses.ahead];
  const table = yield* gapTable(all, after, poses, racks);
  const old = yield* gapTable(all, before, asMeasured, [poses.ahead]);
  const aheadAt = racks.indexOf(poses.ahead);
  const { solid } = budget.bump;
  const range = rangeOf(motion, budget, drop);
  const moved = { poses, envelope: after, solid };
  const { largest } = wheels.after;
  const widest = envelopeOf(wheels.after, wheels.plane, largest.sectionWidth, largest.freeRadius);

  const answers = all.map((one, p): PlaceAnswer => {
    const { least, rack: leastRack } = leastOverRacks(table, p);
    const found = (t: number): GapAt => {
      // Where it is solid, how sure the gap is depends on the steering: what counts is what is left of it for certain.
      const { rack: j, ...tightest } = racks
        .map((index) => ({
          rack: index,
          gap: gapOf(moved, one, t, index),
          plusMinus: doubtOf(moved, one, t, index),
        }))
        .reduce((a, b) => (b.gap - b.plusMinus < a.gap - a.plusMinus || Number.isNaN(a.gap) ? b : a));
      return { travel: t, rack: j, toe: motion.toe[j]!, isAhead: j === poses.ahead, ...tightest };
    };
    const worst = [
      range[0],
      range[1],
      ...[...travel.keys()].filter((i) => travel[i]! > range[0] && travel[i]! < range[1]).map((i) => travel[i]!),
    ]
      .map((t) => ({ t, gap: valueAt(travel, least, t) }))
      // Equal all the way (what goes with the wheel): told at full bump.
      .reduce((a, b) => (b.gap < a.gap - 1e-9 ? b : a), { t: range[1], gap: valueAt(travel, least, range[1]) }).t;
    const margin = marginOf(one.place, request);
    const at = found(worst);
    // Where it is solid the gap may be larger and yet less sure.
    const verdicts = [at, found(range[1])].map((one) => verdictOf(one, margin, allowance));
    const contact = firstBelow(travel, least, allowance, drop);
    const j = leastRack[nearest(travel, worst)]!;
    return {
      margin,
      verdict: VERDICTS.find((verdict) => verdicts.includes(verdict))!,
      ahead: column(table.gap[p]!, racks.length, aheadAt),
      before: old.gap[p]!,
      least,
      ride: found(clamp(drop, range)),
      ...(solid && solid.travel <= travel.at(-1)! && { solid: found(solid.travel) }),
      worst: at,
      largest: gapOf({ poses, envelope: widest }, one, worst, j),
      ...(contact !== undefined && { contact }),
    };
  });
  // What touches for certain comes before what has less left of a larger ±.
  const freeOf = ({ worst: { gap, plusMinus }, margin }: PlaceAnswer) => gap - plusMinus - margin;
  const worse = (a: PlaceAnswer, b: PlaceAnswer) =>
    VERDICTS.indexOf(a.verdict) - VERDICTS.indexOf(b.verdict) || freeOf(a) - freeOf(b);
  const worst = answers.reduce((a, b, i) => (a < 0 || worse(b, answers[a]!) < 0 ? i : a), -1);
  const contact = answers.reduce(
    (a, { contact: at }, place) => (at !== undefined && !(a && a.travel <= at) ? { travel: at, place } : a),
    undefined as ClearanceAnswer['contact'],
  );
  const answer: ClearanceAnswer = {
    drop,
    travel,
    isSteered: isSteered && rack.length > 1,
    wheels,
    budget,
    range,
    places: answers,
    ...(worst >= 0 && { worst }),
    ...(worst >= 0 && solid && { verdict: answers[worst]!.verdict }),
    ...(contact && { contact }),
    allowance,
  };
  if (isSteered && solid && worst >= 0) {
    answer.justClear = yield* justClear(request, answer, all);
  }
  return answer;
}

export function verdictOf({ gap, plusMinus }: GapAt, margin: number, allowance: number): Verdict {
  const left = gap - allowance;
  if (left - plusMinus >= margin) return 'clears';
  return left + plusMinus <= 0 ? 'touches' : 'close';
}

const clamp = (x: number, [low, high]: readonly [number, number]): number => Math.min(Math.max(x, low), high);

const column = (rows: Float64Array, width: number, at: number): Float64Array =>
  width === 1 ? rows : rows.filter((_, i) => i % width === at);
