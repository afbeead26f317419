import type { DrawnClearance } from '../../core/answers/clearance-questions.js';
import { envelopeOf } from '../../core/answers/envelope-of.js';
import { type Envelope, gapTo, type Pose, Poses } from '../../core/wheel/gaps.js';
import { type Placed, placed } from '../../core/wheel/placed.js';
import type { WheelMotion } from '../../core/wheel/wheel-motion.js';
import type { Asked } from './clearance-question.js';

/** What the pictures are drawn from: both wheels and the places, for any travel. */
export interface DrawnWheels {
  answer: DrawnClearance;
  asked: Asked;
  /** Straight ahead. */
  poses: Poses;
  before: Envelope;
  after: Envelope;
  places: readonly Placed[];
}

/** A steering in which the wheel is looked at: degrees on the scale of the motion's toe. */
export interface Steered {
  poses: Poses;
  steer: number;
}

export function drawnWheels(answer: DrawnClearance, asked: Asked): DrawnWheels {
  const { wheels, motion } = answer;
  const before = envelopeOf(wheels.before, 0);
  const asMeasured = new Poses(motion);
  return {
    answer,
    asked,
    poses: new Poses(motion, asked.camberBy),
    before,
    after: envelopeOf(wheels.after, wheels.plane),
    places: asked.places.map((place) => placed(place, before, asMeasured, asked.measuredAt ?? 0, asked.isLeft)),
  };
}

/** As a place is tightest: steered where that is worse than straight ahead. */
export function tightest({ answer, asked, poses }: DrawnWheels, place: number): Steered {
  const motion = answer.steered[place];
  const found = motion ? new Poses(motion, asked.camberBy) : poses;
  return { poses: found, steer: found.ahead };
}

/** Steered as somebody wants to see it. @param motion over the whole steering */
export function steeredTo({ asked }: DrawnWheels, motion: WheelMotion, steer: number): Steered {
  const [from, to] = steerRange(motion);
  return { poses: new Poses(motion, asked.camberBy), steer: Math.min(Math.max(steer, from), to) };
}

/** From lock to lock, degrees on the scale of the motion's toe. */
export function steerRange({ toe }: WheelMotion): [from: number, to: number] {
  const ends = [toe[0]!, toe.at(-1)!];
  return [Math.min(...ends), Math.max(...ends)];
}

export const poseAt = ({ poses, steer }: Steered, travel: number): Pose => poses.at(travel, steer);

/** Gap of a place in some steering, mm. */
export const gapIn = (
  { places, ...wheels }: DrawnWheels,
  { poses, steer }: Steered,
  place: number,
  travel: number,
  which: 'after' | 'before' = 'after',
): number => gapTo(wheels[which], poses.at(travel, steer), places[place]!.at(poses, travel, steer));
