import { finished } from '../math/finished.js';
import { firstBelow } from '../wheel/sampled-line.js';
import { GapSurface, type Spot } from '../wheel/tightest.js';
import { gapAlong, gapAtSample } from '../wheel/track.js';
import { aheadOf, indexAhead } from '../wheel/wheel-motion.js';
import { besideWheels } from './beside-wheels.js';
import type { ClearanceAnswer, GapAt, PlaceAnswer } from './clearance-answer.js';
import { doubtOf, leastSure, rangeOf, sharesOf } from './clearance-gaps.js';
import { ALLOWANCE_MM, type ClearanceRequest, checkedRequest, marginOf } from './clearance-request.js';
import { envelopeOf } from './envelope-of.js';
import { justClear } from './just-clear.js';
import { lazily } from './lazily.js';
import { Trials } from './trial.js';
import { rankOf, verdictOf } from './verdict.js';

export type { ClearanceAnswer, GapAt, PlaceAnswer, Verdict } from './clearance-answer.js';

/** Steered by less than this is straight ahead, degrees. */
const AHEAD_DEGREES = 0.1;

/**
 * Straight ahead, at once.
 *
 * @throws InputError with all that is wrong with wheels, places, limits and margins
 */
export function clearance(request: ClearanceRequest): ClearanceAnswer {
  return finished(answered(request, false));
}

/** Over the steering as well, without what would just clear, which takes ten times as long. */
export const clearanceSwept = (request: ClearanceRequest): Generator<undefined, ClearanceAnswer> =>
  answered(request, true, false);

/** Over the steering as well, with what would just clear: in steps of about a millisecond. */
export const clearanceSteered = (request: ClearanceRequest): Generator<undefined, ClearanceAnswer> =>
  answered(request, true);

function* answered(
  request: ClearanceRequest,
  isSteered: boolean,
  isTried = isSteered,
): Generator<undefined, ClearanceAnswer> {
  const { drop, allowance = ALLOWANCE_MM } = request;
  const { wheels, budget } = checkedRequest(request);
  const motion = isSteered ? request.motion : aheadOf(request.motion);
  const after = envelopeOf(wheels.after, wheels.plane);
  const { before, poses, all, tracks, old } = yield* besideWheels(request, motion, wheels.before);
  const { travel, toe } = motion;
  const surfaces = tracks.map((track) => new GapSurface(track, after));
  const { solid } = budget.bump;
  const range = rangeOf(motion, budget, drop);
  const moved = { poses, envelope: after, solid };
  const { largest } = wheels.after;
  const widest = () => envelopeOf(wheels.after, wheels.plane, largest.sectionWidth, largest.freeRadius);
  const aheadAt = indexAhead(motion);

  const answers: PlaceAnswer[] = [];
  for (const [p, one] of all.entries()) {
    const [surface, track] = [surfaces[p]!, tracks[p]!];
    const found = ({ travel: at, steer, gap }: Spot): GapAt => ({
      travel: at,
      toe: steer,
      isAhead: Math.abs(steer - poses.ahead) < AHEAD_DEGREES,
      gap,
      plusMinus: doubtOf(moved, one, at, steer),
    });
    const margin = marginOf(one.place, request);
    const worst = found(yield* surface.tightest(...range));
    const needed = margin + allowance;
    const unsure = yield* leastSure(moved, one, range);
    const atEnd = worseOf(worst, found(surface.leastAt(range[1])), needed);
    const decisive = unsure ? worseOf(atEnd, found(unsure), needed) : atEnd;
    const contact = firstBelow(travel, (i) => surface.leastAt(travel[i]!).gap, allowance, drop);
    const atSolid = solid && solid.travel <= travel.at(-1)! ? solid.travel : undefined;
    // What a sentence says is worked out; what pictures and lists show, when they are drawn: they come a frame later in a drag.
    answers.push(
      lazily(
        {
          margin,
          ...(solid && { verdict: verdictOf(decisive, needed) }),
          worst,
          decisive,
          ...(contact !== undefined && { contact }),
        },
        {
          ahead: () => travel.map((_, i) => gapAtSample(track, after, i * toe.length + aheadAt)),
          before: () => travel.map((_, i) => gapAtSample(old[p]!, before, i)),
          least: () => travel.map((t) => surface.leastAt(t).gap),
          ride: () => found(surface.leastAt(clamp(drop, range))),
          ...(atSolid !== undefined && { solid: () => found(surface.leastAt(atSolid)) }),
          shares: () => sharesOf(moved, one, decisive.travel, decisive.toe),
          largest: () => gapAlong(track, widest(), worst.travel, worst.toe),
        },
      ),
    );
    yield;
  }
  // What touches for certain comes before what has less left of a larger ±.
  const freeOf = ({ decisive: { gap, plusMinus }, margin }: PlaceAnswer) => gap - plusMinus - margin;
  const worse = (a: PlaceAnswer, b: PlaceAnswer) =>
    (a.verdict && b.verdict ? rankOf(a.verdict) - rankOf(b.verdict) : 0) || freeOf(a) - freeOf(b);
  const worst = answers.reduce((a, b, i) => (a < 0 || worse(b, answers[a]!) < 0 ? i : a), -1);
  const contact = answers.reduce(
    (a, { contact: at }, place) => (at !== undefined && !(a && a.travel <= at) ? { travel: at, place } : a),
    undefined as ClearanceAnswer['contact'],
  );
  const answer: ClearanceAnswer = {
    drop,
    travel,
    isSteered: toe.length > 1,
    wheels,
    budget,
    range,
    places: answers,
    ...(worst >= 0 && { worst }),
    ...(answers[worst]?.verdict && { verdict: answers[worst].verdict }),
    ...(contact && { contact }),
    allowance,
  };
  if (isTried && solid && worst >= 0) {
    const trials = new Trials(answer, all, tracks, poses);
    answer.justClear = yield* justClear({ ...request, motion }, answer, trials, { ...moved, range });
  }
  return answer;
}

/** The one with the worse verdict; of two alike the first. @param needed what must stay free, mm */
const worseOf = (a: GapAt, b: GapAt, needed: number): GapAt =>
  rankOf(verdictOf(b, needed)) < rankOf(verdictOf(a, needed)) ? b : a;

const clamp = (x: number, [low, high]: readonly [number, number]): number => Math.min(Math.max(x, low), high);
