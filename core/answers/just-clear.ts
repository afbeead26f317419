import { travelBudget } from '../travel/budget.js';
import { type Envelope, gapTo, type Placed, Poses } from '../wheel/gaps.js';
import type { ClearanceAnswer } from './clearance.js';
import type { ClearanceRequest } from './clearance-request.js';
import { envelopeOf } from './envelope-of.js';

/** What can be changed alone until the verdict is just "clears". */
export type ChangeId = 'plane' | 'width' | 'drop' | 'camber';

export interface JustClear {
  id: ChangeId;
  /**
   * By how much, mm or degrees: the wheel's middle plane outboard (a spacer, or so much less offset), section width, drop, static
   * camber. Where the wheel clears: how far one can still go. Undefined: no such change clears, or none ends it.
   */
  by?: number;
  /** It changes nothing: with shorter springs full bump is where the stop is, whatever the drop. */
  isIdle?: true;
}

/** How far each is looked for, and in what steps; the first is the way that costs room. */
const SEARCH: Record<ChangeId, { most: number; step: number }> = {
  plane: { most: 60, step: 1.5 },
  width: { most: 90, step: 2 },
  drop: { most: 80, step: 2 },
  camber: { most: 6, step: 0.25 },
};

/**
 * What would just clear, each solved alone: where gap less margin, allowance and ± is nothing, at ride height, where the stop is
 * solid, and where the wheel is worst now, straight ahead, at both locks and at the worst steering. Not read off a grid: halved
 * down to a hundredth.
 */
export function* justClear(
  request: ClearanceRequest,
  answer: ClearanceAnswer,
  places: readonly Placed[],
): Generator<undefined, JustClear[]> {
  const found: JustClear[] = [];
  for (const id of ['plane', 'width', 'drop', 'camber'] as const) {
    if (id === 'drop' && request.lowered !== 'dampers') {
      found.push({ id, isIdle: true });
      continue;
    }
    const { most, step } = SEARCH[id];
    const free = freeBy(id, request, answer, places);
    const clears = free(0) >= 0;
    // From a wheel that clears outward into trouble; from one that does not, either way out of it.
    const ways = clears ? [1] : id === 'width' || id === 'drop' ? [-1] : [-1, 1];
    let nearest: number | undefined;
    for (const way of ways) {
      for (let x = step; x <= most && !(nearest !== undefined && Math.abs(nearest) <= x - step); x += step) {
        yield;
        if (free(way * x) >= 0 === clears) continue;
        let [good, bad] = clears ? [x - step, x] : [x, x - step];
        while (Math.abs(good - bad) > 0.005) {
          const middle = (good + bad) / 2;
          if (free(way * middle) >= 0) good = middle;
          else bad = middle;
        }
        if (nearest === undefined || good < Math.abs(nearest)) nearest = way * good;
        break;
      }
    }
    found.push({ id, ...(nearest !== undefined && { by: nearest }) });
  }
  return found;
}

/** What is free at the tightest place when one thing is changed by so much. */
function freeBy(id: ChangeId, request: ClearanceRequest, answer: ClearanceAnswer, places: readonly Placed[]) {
  const { motion, drop, measuredAt, lowered, camberBy = 0 } = request;
  const { after, plane } = answer.wheels;
  const own = new Poses(motion, camberBy);
  const worst = answer.places.map(({ worst: { travel } }) => travel);
  const racks = [...new Set([own.ahead, 0, motion.rack.length - 1, ...answer.places.map((one) => one.worst.rack)])];
  const isDamper = lowered === 'dampers';
  return (x: number): number => {
    const poses = id === 'camber' ? new Poses(motion, camberBy + x) : own;
    const envelope: Envelope =
      id === 'plane'
        ? envelopeOf(after, plane + x)
        : id === 'width'
          ? envelopeOf(after, plane, Math.max(after.sectionWidth + x, 100))
          : envelopeOf(after, plane);
    const at = id === 'drop' ? drop + x : drop;
    const solid =
      id === 'drop' && isDamper
        ? travelBudget({
            path: motion.damper,
            limits: request.limits,
            drop: at,
            lowered,
            ...(request.bumpTravel !== undefined && { bumpTravel: request.bumpTravel }),
            ...(measuredAt !== undefined && { measuredAt }),
          }).bump.solid?.travel
        : answer.range[1];
    const end = Math.min(solid ?? answer.range[1], motion.travel.at(-1)!);
    const travels = [Math.max(at, motion.travel[0]!), end];
    let free = Number.POSITIVE_INFINITY;
    places.forEach((one, p) => {
      const { margin, worst: found } = answer.places[p]!;
      // Where it is worst now, unless the end itself moves.
      for (const t of id === 'drop' ? travels : [...travels, worst[p]!]) {
        for (const j of racks) {
          const pose = poses.at(t, j);
          if (Number.isNaN(pose.centre[0])) continue;
          const gap = gapTo(envelope, pose, one.at(poses, t, j));
          free = Math.min(free, gap - margin - answer.allowance - found.plusMinus);
        }
      }
    });
    return free;
  };
}
