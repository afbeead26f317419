import type { Linkage } from '../linkage/linkage.js';
import { partOf } from '../linkage/parts/part-data.js';
import type { PartData } from '../linkage/parts/part-kinds.js';
import { ifJoined } from '../linkage/parts/targets.js';
import { opened } from '../linkage/travel.js';
import { camberOfPose, heldAtTravel } from './corner-at.js';

const CLOSE_DEG = 1e-10;
const MOST_TRIES = 30;
/** First step: mm, or degrees, of a part. */
const NUDGE = 0.5;

/**
 * How much of a part gives a static camber where a linkage stands at its own travel 0, toe held: by the secant rule from none of it.
 *
 * @param part for an amount
 * @param wanted degrees
 * @returns undefined where that leads to none
 */
export function amountForCamber(
  linkage: Linkage,
  part: (amount: number) => PartData,
  wanted: { camber: number; toe: number },
): number | undefined {
  const bare = opened(linkage);
  const miss = (amount: number) => {
    const built = amount === 0 ? bare : ifJoined(() => partOf(part(amount))(bare));
    const pose = built && heldAtTravel(built, 0, wanted.toe);
    return pose ? camberOfPose(pose) - wanted.camber : Number.NaN;
  };
  let [before, missBefore] = [0, miss(0)];
  if (Math.abs(missBefore) < CLOSE_DEG) return 0;
  let now = NUDGE;
  for (let i = 0; i < MOST_TRIES; i++) {
    const missNow = miss(now);
    if (Math.abs(missNow) < CLOSE_DEG) return now;
    const next = now - (missNow * (now - before)) / (missNow - missBefore);
    if (!Number.isFinite(next)) return undefined;
    [before, missBefore, now] = [now, missNow, next];
  }
  return undefined;
}
