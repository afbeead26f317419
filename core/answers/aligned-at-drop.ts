import type { SolvedSource } from '../curve-sources/solved-source.js';
import { leanedBy } from '../linkage/leaned-by.js';
import type { Linkage } from '../linkage/linkage.js';
import { armLonger } from '../linkage/parts/arm.js';
import { rebuilt } from '../linkage/parts/part.js';
import { camberAndToeSet, staticAngles, toeReset } from '../linkage/parts/targets.js';
import { topMountMoved } from '../linkage/parts/top-mount.js';
import { sweepTravel } from '../linkage/sweep.js';
import { InputError } from '../quantity/problem.js';
import type { CorneringRequest } from './cornering-request.js';

/** Closer to an end of reach than this a linkage cannot be put together, mm. */
const CLEAR_OF_END_MM = 1;

/**
 * A linkage that stands at the drop where it calls its own travel 0, with what is set again there set: camber at the top mount or by the
 * upper arm, toe by the tie rods. Without a toe of its own, camber set again leaves toe as it was.
 *
 * @throws InputError `outside-domain`, path `drop`; `out-of-range`, path `camber` or `toe`
 */
export function alignedAtDrop(
  linkage: Linkage,
  source: Pick<SolvedSource, 'driveway'>,
  request: Pick<CorneringRequest, 'drop' | 'measuredAt' | 'camberReadLower' | 'camber' | 'toe'>,
): Linkage {
  const { camber, toe } = request;
  const lowered = standingAtDrop(linkage, source, request);
  if (camber === undefined) return toe === undefined ? lowered : toeReset(lowered, toe);
  const adjust = (mm: number) =>
    lowered.kind === 'strut' ? topMountMoved({ vector: [0, mm, 0] }) : armLonger({ mm, arm: 'upper' });
  return camberAndToeSet(lowered, { camber, toe: toe ?? staticAngles(lowered).toe }, adjust).linkage;
}

/**
 * A linkage that stands at the drop where it calls its own travel 0, its camber counted as it was read; nothing is set again.
 *
 * @throws InputError `outside-domain`, path `drop`
 */
export function standingAtDrop(
  linkage: Linkage,
  source: Pick<SolvedSource, 'driveway'>,
  request: Pick<CorneringRequest, 'drop' | 'measuredAt' | 'camberReadLower'>,
): Linkage {
  const { drop, measuredAt = 0 } = request;
  const { reach } = linkage;
  const travel = drop - measuredAt;
  const [low, high] = [reach.droop + CLEAR_OF_END_MM, reach.bump - CLEAR_OF_END_MM];
  if (!(travel >= low && travel <= high)) {
    const limit = (travel < low ? low : high) + measuredAt;
    throw new InputError([{ code: 'outside-domain', path: 'drop', value: drop, limit }]);
  }
  const read = asRead(linkage, source, request);
  return travel === 0 ? read : rebuilt(read, { wheelCentreZ: read.wheelCentreZ + travel });
}

/** A linkage where it was measured, its camber counted as it was read. */
export const asRead = (
  linkage: Linkage,
  source: Pick<SolvedSource, 'driveway'>,
  request: Pick<CorneringRequest, 'measuredAt' | 'camberReadLower'>,
): Linkage => leanedBy(linkage, camberOff(linkage, source, request));

/**
 * By how much camber is off because it was read elsewhere, degrees: with people aboard, or never, where it counts from stock height as it
 * does in `fromStockHeight`.
 */
function camberOff(
  linkage: Linkage,
  { driveway }: Pick<SolvedSource, 'driveway'>,
  { measuredAt = 0, camberReadLower = 0 }: Pick<CorneringRequest, 'measuredAt' | 'camberReadLower'>,
): number {
  const isUnknown = driveway !== undefined && driveway.camber === undefined;
  const [from, read] = isUnknown ? [Number.NaN, -measuredAt] : [0, camberReadLower];
  if (read === from) return 0;
  const { camber } = sweepTravel(linkage, [0, Math.min(read, linkage.reach.bump)]);
  return isUnknown ? -camber[1]! : camber[0]! - camber[1]!;
}
