import { DEG } from '../math/angle.js';
import { InputError } from '../quantity/problem.js';
import { type AxleInRoll, axleMoment, touchesAt } from './axle-in-roll.js';
import { type RollRequest, rollProblems } from './roll-request.js';

/** One axle in the turn. */
export interface RolledAxle {
  /** Before a stop is touched, N·m per degree of roll. */
  rollStiffness: number;
  /** What the outer wheel gains and the inner one loses, N. */
  loadTransfer: number;
  /** Mean wheel travel, mm: below zero where a bump stop lifts the body. */
  heave: number;
  /** Suspension roll at which the outer wheel meets its bump stop, degrees; only where a stop was given. */
  stopTouchedAt?: number;
  isStopTouched: boolean;
}

export interface RollAnswer {
  /** Suspension roll, degrees. */
  roll: number;
  /** At small roll, before a stop is touched, degrees per g. */
  gradient: number;
  /** The sprung mass's centre of gravity over the roll axis, mm. */
  arm: number;
  /** Standard uncertainty, degrees: of the height of the centre of gravity alone. Only where that was given. */
  uncertainty?: number;
  /** This axle. */
  axle: RolledAxle;
  /** The other axle. */
  otherAxle?: RolledAxle;
  /** One axle alone cannot give roll: the other one was taken to have the same roll moment for its stiffness. */
  assumesOtherAxle: boolean;
}

/** Standard gravity, m/s². ISO 80000-3. */
const GRAVITY = 9.80665;
const HEIGHT_STEP_MM = 0.1;

/**
 * Suspension roll of a car in a steady turn, small angles: the roll moment of the sprung mass about the roll axis, with what its weight
 * adds as it shifts sideways, is carried by springs, bars and, once they are touched, bump stops.
 *
 *     φ = m a d / (Σk − m g d), d = h − (m₁ h₁ + m₂ h₂)/m        ΔF = (M_φ + m₁ a h₁ + m_u a h_u)/t, M_φ what one axle carries
 *
 * Barton & Fieldhouse, Automotive Chassis Engineering, Springer 2018, p. 174. Tyres, the jacking of inclined links and geometry that
 * changes with travel are left out. A stop pushes on one side only and lifts its end of the car until the springs balance it: see
 * `axleMoment`.
 *
 * @throws InputError with all that is wrong; `out-of-range`, path `centreOfGravityHeight`, where the car would lean over of itself
 */
export function rollFromAcceleration(request: RollRequest): RollAnswer {
  const problems = rollProblems(request);
  if (problems.length > 0) throw new InputError(problems);
  const { axle, otherAxle, centreOfGravityHeight: height, heightUncertainty } = request;
  const axles = otherAxle ? [axle, otherAxle] : [axle];
  const radians = rollAt(request, axles, height);
  const acceleration = request.lateral * GRAVITY;
  const told = (of: AxleInRoll): RolledAxle => {
    const { moment, heave } = axleMoment(of, radians);
    const { sprungMass, rollCentreHeight, unsprungMass = 0, unsprungHeight = 0, track } = of;
    const direct = acceleration * (sprungMass * rollCentreHeight + unsprungMass * unsprungHeight);
    const touched = touchesAt(of);
    return {
      rollStiffness: stiffnessOf(of) * DEG * 1e-3,
      loadTransfer: (moment + direct) / track,
      heave,
      ...(of.stop && { stopTouchedAt: touched / DEG }),
      isStopTouched: Math.abs(radians) > touched,
    };
  };
  const { perG, arm } = linear(axles, height);
  return {
    roll: radians / DEG,
    gradient: perG / DEG,
    arm,
    ...(heightUncertainty !== undefined && {
      uncertainty: (heightUncertainty * slopeOver(height, (one) => rollAt(request, axles, one))) / DEG,
    }),
    axle: told(axle),
    ...(otherAxle && { otherAxle: told(otherAxle) }),
    assumesOtherAxle: !otherAxle,
  };
}

/** What turns the body over at a suspension roll, N·mm: the sideways force on the sprung mass, and its weight as it shifts. @param roll radians */
export function turningMoment({ lateral, axle, otherAxle, centreOfGravityHeight }: RollRequest, roll: number): number {
  return (lateral + roll) * linear(otherAxle ? [axle, otherAxle] : [axle], centreOfGravityHeight).shift;
}

/** N·mm per radian. */
const stiffnessOf = (axle: AxleInRoll): number => axleMoment({ ...axle, stop: undefined }, 1).moment;

const sum = (axles: readonly AxleInRoll[], of: (axle: AxleInRoll) => number): number =>
  axles.reduce((all, axle) => all + of(axle), 0);

/** What moves the body over, as far as no stop is touched. mm, N·mm, radians. */
function linear(axles: readonly AxleInRoll[], height: number) {
  const mass = sum(axles, ({ sprungMass }) => sprungMass);
  const axis = sum(axles, ({ sprungMass, rollCentreHeight }) => sprungMass * rollCentreHeight) / mass;
  const arm = height - axis;
  const stiffness = sum(axles, stiffnessOf);
  /** Of its weight, a radian. */
  const shift = mass * GRAVITY * arm;
  return { arm, axis, mass, stiffness, shift, perG: shift / (stiffness - shift) };
}

/** Roll, radians: straight pieces between the rolls at which stops are touched, solved one after the other. */
function rollAt({ lateral }: RollRequest, axles: readonly AxleInRoll[], height: number): number {
  const { shift, stiffness, axis, mass } = linear(axles, height);
  if (!(stiffness > shift)) {
    const limit = axis + stiffness / (mass * GRAVITY);
    throw new InputError([{ code: 'out-of-range', path: 'centreOfGravityHeight', value: height, limit }]);
  }
  const side = Math.sign(shift);
  const turning = lateral * Math.abs(shift);
  const missing = (roll: number) => turning + shift * roll - sum(axles, (axle) => axleMoment(axle, roll).moment);
  const pieces = [
    0,
    ...axles
      .map(touchesAt)
      .filter(Number.isFinite)
      .sort((a, b) => a - b),
  ];
  let roll = 0;
  for (const [i, from] of pieces.entries()) {
    const beyond = pieces[i + 1] ?? from + 1;
    const to = beyond > from ? beyond : from + 1;
    const [left, right] = [missing(from), missing(to)];
    roll = from + (left * (to - from)) / (left - right);
    if (roll <= beyond) break;
  }
  return side * roll || 0;
}

/** By central differences. */
const slopeOver = (at: number, of: (at: number) => number): number =>
  Math.abs(of(at + HEIGHT_STEP_MM) - of(at - HEIGHT_STEP_MM)) / (2 * HEIGHT_STEP_MM);
