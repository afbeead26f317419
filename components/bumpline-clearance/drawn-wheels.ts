import type { DrawnClearance } from '../../core/answers/clearance-questions.js';
import { envelopeOf } from '../../core/answers/envelope-of.js';
import { type Envelope, gapTo, Poses } from '../../core/wheel/gaps.js';
import { type Placed, placed } from '../../core/wheel/placed.js';
import type { Asked } from './clearance-question.js';

/** What the pictures are drawn from: both wheels and the places, for any travel, straight ahead. */
export interface DrawnWheels {
  answer: DrawnClearance;
  asked: Asked;
  /** Straight ahead. */
  poses: Poses;
  before: Envelope;
  after: Envelope;
  places: readonly Placed[];
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

/** The poses in which a place is tightest: steered where that is worse than straight ahead. */
export function tightPoses({ answer, asked, poses }: DrawnWheels, place: number): Poses {
  const motion = answer.steered[place];
  return motion ? new Poses(motion, asked.camberBy) : poses;
}

/** Gap of a place in some poses, mm. */
export const gapIn = (
  { places, ...wheels }: DrawnWheels,
  poses: Poses,
  place: number,
  travel: number,
  which: 'after' | 'before' = 'after',
): number => gapTo(wheels[which], poses.at(travel), places[place]!.at(poses, travel));
