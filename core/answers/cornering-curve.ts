import { curveOf } from '../curve/curve.js';
import { camberOf, type SolvedSource } from '../curve-sources/solved-source.js';
import { DEG } from '../math/angle.js';
import { InputError, type Problem } from '../quantity/problem.js';
import { subtract } from '../uncertainty/combine.js';
import type { Estimate, Source } from '../uncertainty/estimate.js';
import type { CarInTurn, CorneringAnswer, WheelInTurn } from './cornering-answer.js';
import type { CorneringRequest } from './cornering-request.js';
import { fromStockHeight } from './re-zero.js';

/**
 * A car of which camber over travel is known and nothing else: in front view, the contact points half a track aside, each wheel's travel
 * what lifts them to one road: ± half track × tan(roll). What a contact point moves sideways and under the wheel centre is left out:
 * 0.004° of the outer wheel's inclination at 3° of roll on the planar strut of test/reference/roll_camber_planar_strut_exact.csv.
 */
export function curveInTurn(request: CorneringRequest, source: SolvedSource): CarInTurn {
  const { drop, tyreRoll = 0, halfTrack, toe = Number.NaN } = request;
  const problems: Problem[] = [];
  if (halfTrack === undefined) problems.push({ code: 'missing', path: 'halfTrack', value: halfTrack });
  // What camber a steered wheel takes only its links tell.
  if (request.steer !== undefined) problems.push({ code: 'wrong-shape', path: 'steer', value: undefined });
  if (problems.length > 0) throw new InputError(problems);
  const curve = curveOf(camberOf(fromStockHeight(source, request)));
  const [low, high] = curve.domain;
  if (drop < low || drop > high) {
    throw new InputError([{ code: 'outside-domain', path: 'drop', value: drop, limit: drop < low ? low : high }]);
  }
  const standing = curve.value(drop);
  const set = request.camber ?? standing;
  const room = { outer: high - drop, inner: drop - low };
  const most = Math.atan(Math.min(room.outer, room.inner) / halfTrack!) / DEG;
  const first = room.outer <= room.inner ? 'outer' : 'inner';

  const wheelAt = (roll: number, side: 1 | -1): WheelInTurn => {
    const travel = drop + side * halfTrack! * Math.tan(roll * DEG);
    const change = curve.value(travel) - standing;
    const bars = { static: set, travel: change, steer: 0, roll: side * roll, tyre: side * tyreRoll, rest: 0 };
    const camber = set + change;
    return { travel, camber, inclination: camber + bars.roll + bars.tyre, toe, steer: side * toe, bars };
  };
  const at = (roll: number): CorneringAnswer => {
    if (roll > most) {
      throw new InputError([{ code: 'outside-domain', path: 'roll', value: roll, limit: most, other: first }]);
    }
    const [outer, inner] = [wheelAt(roll, 1), wheelAt(roll, -1)];
    const perDegree = (travel: number) => 1 + curve.slope(travel) * halfTrack! * (DEG / Math.cos(roll * DEG) ** 2);
    const perDegreeOfRoll = { outer: perDegree(outer.travel), inner: -perDegree(inner.travel) };
    const partsAt = (travel: number): Estimate =>
      request.camber === undefined ? curve.estimate(travel) : subtract(curve.estimate(travel), curve.estimate(drop));
    const reach = { droop: low, bump: high };
    return {
      outer,
      inner,
      roll: roll + tyreRoll,
      rack: 0,
      perDegreeOfRoll,
      doubt: withRoll(
        {
          sources: [...curve.data.sources],
          outer: partsAt(outer.travel).parts,
          inner: partsAt(inner.travel).parts,
        },
        request,
        perDegreeOfRoll,
      ),
      limits: { outer: reach, inner: { ...reach }, first },
    };
  };
  return { at };
}

const OF_ROLL: Source = { id: 'roll', label: 'roll', dof: Number.POSITIVE_INFINITY };

/** With roll among what is not known, where its uncertainty was given. */
export function withRoll(
  doubt: NonNullable<CorneringAnswer['doubt']>,
  { rollUncertainty = 0 }: Pick<CorneringRequest, 'rollUncertainty'>,
  { outer, inner }: CorneringAnswer['perDegreeOfRoll'],
): NonNullable<CorneringAnswer['doubt']> {
  if (!(rollUncertainty > 0)) return doubt;
  return {
    sources: [...doubt.sources, OF_ROLL],
    outer: Float64Array.of(...doubt.outer, outer * rollUncertainty),
    inner: Float64Array.of(...doubt.inner, inner * rollUncertainty),
  };
}
