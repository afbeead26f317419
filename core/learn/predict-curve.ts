import type { CurveData } from '../curve/curve-data.js';
import { rollCentreOfDriveway } from '../curve-sources/driveway-roll-centre.js';
import { solveKnownParts } from '../curve-sources/solve-parts.js';
import type { Alignment } from '../curve-sources/source.js';
import type { PartData } from '../linkage/parts/part-kinds.js';
import { sweepTravel } from '../linkage/sweep.js';
import type { ReadingQuantity } from '../readings/reading.js';
import { NORMAL_95 } from '../uncertainty/normal.js';
import type { LearntCorner } from './learn-corner.js';

/**
 * The curve that parts not yet bought would give: over all travels that the links allow, with what readings and tape leave open and each
 * part's own tolerance. `measured` is where readings stand.
 *
 * @param alignment what is set again once they are on; default nothing, rods as they were
 * @throws InputError of the parts, as `solveParts`
 */
export function predictCurve(
  learnt: LearntCorner,
  parts: readonly PartData[],
  quantity: ReadingQuantity = 'camber',
  { alignment = 'as-fitted' }: { alignment?: Alignment } = {},
): CurveData {
  const { camber, toe } = solveKnownParts(learnt.known, parts, alignment);
  const curve = quantity === 'toe' ? toe : camber;
  if (!curve) throw new RangeError('Six measurements in a driveway tell nothing of toe.');
  const ends = learnt.sets.map(({ measured }) => measured);
  const measured: [number, number] = [
    Math.max(curve.domain[0], Math.min(...ends.map(([low]) => low))),
    Math.min(curve.domain[1], Math.max(...ends.map(([, high]) => high))),
  ];
  return { ...curve, measured };
}

/** By how many standard uncertainties a source is put off either way. */
const NUDGE = 0.1;

/**
 * Roll-centre height above the road at some travels, mm, and the half-width of its 95 % interval: NaN out of reach.
 *
 * @throws InputError of the parts, as `solveParts`
 */
export function predictRollCentre(
  learnt: LearntCorner,
  parts: readonly PartData[],
  travels: ArrayLike<number>,
  { alignment = 'as-fitted' }: { alignment?: Alignment } = {},
): { height: Float64Array; plusMinus: Float64Array } {
  const solved = solveKnownParts(learnt.known, parts, alignment);
  const { links } = solved;
  const at = Float64Array.from(travels);
  const height = sweepTravel(links!.linkage, at).rollCentreHeight.slice();
  const variance = new Float64Array(at.length);
  for (const source of links!.sources) {
    const [up, down] = [NUDGE, -NUDGE].map((times) => sweepTravel(links!.moved(source, times), at).rollCentreHeight);
    at.forEach((_, i) => {
      variance[i]! += ((up![i]! - down![i]!) / (2 * NUDGE)) ** 2;
    });
  }
  for (const { partsAt } of rollCentreOfDriveway(solved, links!)) {
    const of = partsAt(at);
    at.forEach((_, i) => {
      variance[i]! += of[i]! ** 2;
    });
  }
  return { height, plusMinus: variance.map((one) => NORMAL_95 * Math.sqrt(one)) };
}
