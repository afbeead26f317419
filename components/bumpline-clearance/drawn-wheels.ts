import type { DrawnClearance } from '../../core/answers/clearance-questions.js';
import { envelopeOf } from '../../core/answers/envelope-of.js';
import { type Envelope, gapTo, type Placed, Poses, placed } from '../../core/wheel/gaps.js';
import type { Asked } from './clearance-app.js';

/** What the pictures are drawn from: both wheels and the places, for any travel, straight ahead. */
export interface DrawnWheels {
  answer: DrawnClearance;
  asked: Asked;
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

/** Gap of a place straight ahead, mm. */
export const gapAhead = (
  { poses, places, ...wheels }: DrawnWheels,
  place: number,
  travel: number,
  which: 'after' | 'before' = 'after',
): number => gapTo(wheels[which], poses.at(travel), places[place]!.at(poses, travel));
