import type { TriedSource } from '../curve-sources/solved-source.js';
import { sweepTravel } from '../linkage/sweep.js';
import { InputError, type Problem } from '../quantity/problem.js';
import type { AxleInRoll } from '../travel/axle-in-roll.js';
import { unlikelyRate } from '../travel/likely-rate.js';
import { type RollAnswer, rollFromAcceleration } from '../travel/roll.js';
import { rollFromMarks } from '../travel/roll-from-marks.js';
import type { RollRequest } from '../travel/roll-request.js';
import { alignedAtDrop } from './aligned-at-drop.js';
import { carInTurn } from './cornering.js';
import { withRoll } from './cornering-curve.js';
import { type CorneringRequest, MOST_ROLL } from './cornering-request.js';
import type { LoadWithLinks, RolledAnswer, RolledRequest, StandingAxle } from './roll-source.js';

/**
 * Both wheels of an axle in a turn whose roll is worked out, from marks on the dampers or from lateral acceleration. Roll centre, track and
 * motion ratio are those of the links at the drop, the body level, where the request gives none.
 *
 * @throws InputError as `corneringOf`, `rollFromMarks` and `rollFromAcceleration`, with paths `marks.…` and `load.…`; `looks-like-unit`, path
 *   `load.axle.springRate` or `load.otherAxle.springRate`; `out-of-range`, path `roll`, with the roll as value
 */
export function rolledOf({ by, ...request }: RolledRequest): RolledAnswer {
  const car = carInTurn({ ...request, roll: 0 });
  const { roll, uncertainty, load } = rollOf(standingOf(request), by);
  if (!(roll >= 0 && roll <= MOST_ROLL)) {
    const limit = roll < 0 ? 0 : MOST_ROLL;
    throw new InputError([{ code: 'out-of-range', path: 'roll', value: roll, limit }]);
  }
  const answer = car.at(roll);
  const rollUncertainty = uncertainty === undefined ? {} : { rollUncertainty: uncertainty };
  return {
    ...answer,
    ...(answer.doubt && { doubt: withRoll(answer.doubt, rollUncertainty, answer.perDegreeOfRoll) }),
    suspensionRoll: roll,
    ...rollUncertainty,
    ...(load && { load }),
  };
}

/** @throws InputError as `corneringOf` */
export function standingOf(request: Omit<CorneringRequest, 'roll'>): StandingAxle {
  carInTurn({ ...request, roll: 0 });
  const source = request.source as Exclude<TriedSource, { problems: unknown }>;
  const { halfTrack = Number.NaN } = request;
  if (!source.links) {
    const unknown = Number.NaN;
    return { rollCentreHeight: unknown, track: 2 * halfTrack, motionRatio: unknown, wheelCentreHeight: unknown };
  }
  const linkage = alignedAtDrop(source.links.linkage, source, request);
  const swept = sweepTravel(linkage, [0]);
  return {
    rollCentreHeight: swept.rollCentreHeight[0]!,
    track: 2 * swept.halfTrack[0]!,
    motionRatio: swept.motionRatio[0]!,
    wheelCentreHeight: linkage.loadedRadius,
  };
}

/** What the request gives, or the links tell; what neither does is missing. */
const told = (given: number | undefined, known: number): number =>
  given ?? (Number.isFinite(known) ? known : (undefined as unknown as number));

/** @throws InputError as `rolledOf` */
function rollOf(
  standing: StandingAxle,
  by: RolledRequest['by'],
): { roll: number; uncertainty?: number | undefined; load?: RollAnswer } {
  if ('marks' in by) {
    const { motionRatio, track, ...marks } = by.marks;
    return under('marks', () =>
      rollFromMarks({
        ...marks,
        motionRatio: told(motionRatio, standing.motionRatio),
        track: told(track, standing.track),
      }),
    );
  }
  const load = under('load', () => rollFromAcceleration(loadRequest(standing, by.load)));
  return { roll: load.roll, uncertainty: load.uncertainty, load };
}

/**
 * A load with what the links tell at its drop.
 *
 * @throws InputError `looks-like-unit`
 */
export function loadRequest(standing: StandingAxle, given: LoadWithLinks): RollRequest {
  const { axle, isRateSure, lowerThanGap = 0, ...load } = given;
  const { stop } = axle;
  const whole: AxleInRoll = {
    ...axle,
    rollCentreHeight: told(axle.rollCentreHeight, standing.rollCentreHeight),
    track: told(axle.track, standing.track),
    motionRatio: told(axle.motionRatio, standing.motionRatio),
  };
  if (axle.unsprungMass !== undefined)
    whole.unsprungHeight = told(axle.unsprungHeight, standing.wheelCentreHeight) ?? 0;
  // Lowered until it is touched, it is touched from the first degree on.
  if (stop)
    whole.stop = { ...stop, gap: stop.gap < 0 ? stop.gap : Math.max(0, stop.gap - whole.motionRatio! * lowerThanGap) };
  if (axle.motionRatio === undefined && !Number.isFinite(standing.motionRatio)) {
    throw new InputError([{ code: 'missing', path: 'axle.motionRatio', value: undefined }]);
  }
  const unlikely = isRateSure
    ? []
    : [unlikelyRate('axle', whole), ...(load.otherAxle ? [unlikelyRate('otherAxle', load.otherAxle)] : [])].filter(
        (problem): problem is Problem => problem !== undefined,
      );
  if (unlikely.length > 0) throw new InputError(unlikely);
  return { ...load, axle: whole };
}

/** Paths told by where they stand in the request. */
export function under<T>(place: 'marks' | 'load', run: () => T): T {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(error.problems.map((problem) => ({ ...problem, path: `${place}.${problem.path}` })));
  }
}
