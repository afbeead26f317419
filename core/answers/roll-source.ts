import type { AxleInRoll } from '../travel/axle-in-roll.js';
import type { RollAnswer } from '../travel/roll.js';
import type { RollMarks } from '../travel/roll-from-marks.js';
import type { CorneringAnswer } from './cornering-answer.js';
import type { CorneringRequest } from './cornering-request.js';

/** Of an axle, what its links do not tell; what they do tell may be given in their place. Units as in `AxleInRoll`. */
export type AxleWithLinks = Omit<AxleInRoll, 'rollCentreHeight' | 'track' | 'motionRatio'> &
  Partial<Pick<AxleInRoll, 'rollCentreHeight' | 'track' | 'motionRatio'>>;

/** Marks on the dampers; track and motion ratio are those of the links where they are not given. */
export type MarksWithLinks = Omit<RollMarks, 'track' | 'motionRatio'> &
  Partial<Pick<RollMarks, 'track' | 'motionRatio'>>;

/** A lateral acceleration and what answers it; see `RollRequest`. The centre of gravity as it is at the request's drop. */
export interface LoadWithLinks {
  /** g. */
  lateral: number;
  centreOfGravityHeight: number;
  heightUncertainty?: number;
  axle: AxleWithLinks;
  otherAxle?: AxleInRoll;
  /** How much lower the springs hold the car than where the gap to its stop was measured, mm at the wheel. Default 0. */
  lowerThanGap?: number;
  /** Spring rates are what they are, however unlikely. */
  isRateSure?: boolean;
}

/** What a body's roll is worked out from. */
export type RollSource =
  | {
      /** Cable ties on the damper rods, mm. */
      marks: MarksWithLinks;
    }
  | {
      /** Lateral acceleration, g, and what answers it: kg, mm, N/mm. */
      load: LoadWithLinks;
    };

/** Both wheels of an axle in a turn of which the roll is worked out. */
export type RolledRequest<S = CorneringRequest['source']> = Omit<CorneringRequest<S>, 'roll' | 'rollUncertainty'> & {
  by: RollSource;
};

/** What links tell of an axle standing at its drop, the body level: mm. NaN where the source does not tell it. */
export interface StandingAxle {
  rollCentreHeight: number;
  track: number;
  /** −d(damper length)/d(wheel travel). */
  motionRatio: number;
  /** Of the wheel centre over the road: that of the unsprung mass too, as good as anybody knows. */
  wheelCentreHeight: number;
}

export interface RolledAnswer extends CorneringAnswer {
  /** On the suspension, degrees; `roll` has the tyres' share with it. */
  suspensionRoll: number;
  /** Standard uncertainty of that, degrees, as far as that of marks, or of the height of the centre of gravity, was given. */
  rollUncertainty?: number;
  /** Where lateral acceleration rolls it. */
  load?: RollAnswer;
}
