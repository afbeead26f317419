import { curveOf } from '../curve/curve.js';
import { knownCorner, solveKnownParts } from '../curve-sources/solve-parts.js';
import type { FittedReadings, SolvedCamber } from '../curve-sources/solved-source.js';
import type { LearntSource } from '../curve-sources/source.js';
import { type LearntCorner, learnKnown } from './learn-corner.js';

/** Learnt before: parts that come and go on one corner learn it once. */
let last: { key: string; learnt: LearntCorner } | undefined;

/** @throws InputError as `learnCorner`, and of `source.of` */
export function learntOf({
  of,
  readings,
  toe,
  setups,
  doubts,
  toeDoubts,
  inOrder,
  raisedBy,
}: LearntSource): LearntCorner {
  const request = {
    ...(readings && { readings }),
    ...(toe && { toe }),
    ...(setups && { setups }),
    ...(doubts && { allowances: doubts }),
    ...(toeDoubts && { toeAllowances: toeDoubts }),
    ...(inOrder !== undefined && { inOrder }),
    ...(raisedBy !== undefined && { raisedBy }),
  };
  const key = JSON.stringify([of, request]);
  if (last?.key !== key) last = { key, learnt: learnKnown(knownCorner(of), request) };
  return last.learnt;
}

/**
 * A corner learnt from readings as a source: everything that hard points answer is answered of it, with what the readings leave open.
 *
 * @throws InputError as `learnCorner` and, of its parts, `solveParts`
 */
export function solveLearnt(source: LearntSource): SolvedCamber & { learnt: LearntCorner } {
  const learnt = learntOf(source);
  const { parts = [], alignment = 'toe' } = source;
  // Readings of toe tell of a driveway's car what six measurements do not: its toe as it stands. On which side of the axle the rod lies,
  // and so what parts do to toe, and by caster to camber, they do not tell.
  const { driveway, ...corner } = learnt.known;
  const isToeRead = learnt.sets.some(({ quantity }) => quantity === 'toe');
  const known = driveway && isToeRead && parts.length === 0 ? corner : learnt.known;
  const solved = solveKnownParts(known, parts, alignment);
  return Object.assign(solved, { learnt, ...(parts.length > 0 && { parts }) });
}

/** The stock readings of camber, each with the zero of its pass taken off, as the curve has them. */
export function readOf({ estimated }: LearntCorner, quantity: 'camber' | 'toe' = 'camber'): FittedReadings | undefined {
  const set = estimated.sets.find((one) => one.quantity === quantity && one.parts.length === 0);
  if (!set) return undefined;
  const { fit, readings, raisedBy } = set;
  const curve = curveOf(fit.curve);
  return {
    degree: fit.degree,
    travel: Float64Array.from(readings, ({ travel }) => travel + raisedBy),
    value: fit.residuals.map((residual, i) => curve.value(readings[i]!.travel) + residual),
  };
}
