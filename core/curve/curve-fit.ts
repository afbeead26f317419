import type { CurveData } from './curve-data.js';

/** How the gauge's zero of one pass lies to the mean of all passes. */
export interface PassOffset {
  pass: string;
  /** How many readings it has in the fit. */
  count: number;
  /** Degrees, added to the curve in this pass; the offsets of all passes sum to zero. */
  offset: number;
  /** Its standard uncertainty, degrees. */
  standardError: number;
}

/** One degree that was tried. */
export interface Candidate {
  degree: number;
  /** What the choice goes by; less is better. NaN where too few readings are left to judge. */
  criterion: number;
  /** Residual standard deviation, degrees. */
  residualSd: number;
  dof: number;
  adjustedRSquared: number;
}

/**
 * Readings fitted by least squares as *value = curve(travel) + offset of the pass*, with half the difference between going up and going
 * down and the drift along a pass where they tell it. Equal weights, one residual for all.
 */
export interface CurveFit {
  /** The highest power of travel. */
  degree: number;
  /** Low power first: degrees, degrees per mm, …, over travel in mm. */
  powerCoefficients: Float64Array;
  /** Their standard uncertainties by plain least squares, in their units; the doubt of the curve holds more. */
  coefficientSd: Float64Array;
  /** Of the whole model against the plain mean; follows the span of the curve as much as the care of its readings. */
  rSquared: number;
  /** The same share less what further powers take by chance. */
  adjustedRSquared: number;
  /** Degrees. */
  residualSd: number;
  /** Degrees of freedom: readings less what was fitted. */
  dof: number;
  /** One a pass, in order of name. Empty with a single pass. */
  passOffsets: PassOffset[];
  /** How the scatter of neighbouring readings goes together; counted in every doubt. */
  scatter: {
    /** Correlation of a reading's scatter with that of the one read before it in its pass; 0 where the residuals show none. */
    correlation: number;
    /** As many independent readings as tell the mean equally well. */
    effectiveReadings: number;
    /** Degrees of freedom behind the scatter's variance. */
    dof: number;
    /** Of the residuals, neighbours in time, pass by pass. */
    durbinWatson: number;
    /** The chance of one as small or smaller where readings know nothing of each other; exact for this model. */
    chance: number;
  };
  /**
   * How far the gauge's zero wandered from the first reading of a pass to its last, the same in all, degrees. Absent where the readings
   * do not tell it: an allowance is part of the curve's doubt then.
   */
  drift?: {
    value: number;
    standardError: number;
    /** What of each reading it is, in the order given. */
    ofReading: Float64Array;
  };
  /**
   * Standard uncertainty of the zero of all passes together, degrees: moves the whole curve, changes nothing of its shape. 0 with a
   * single pass, of which nothing is known. It is part of the curve's doubt.
   */
  zeroSd: number;
  /** Standard deviation of readings repeated at one height, their passes' offsets removed, degrees. Absent where nothing was repeated. */
  repeatability?: { sd: number; dof: number };
  /** Value going up less value going down at the same height, degrees. Absent unless both were taken. */
  upLessDown?: { value: number; standardError: number };
  /** Every degree that was tried. */
  candidates: Candidate[];
  /** By reading, in the order given, degrees: reading less model. */
  residuals: Float64Array;
  /** Externally studentised, by reading, in the order given. NaN where it cannot be told. */
  studentised: Float64Array;
  /** Indexes of readings that do not belong: told, never removed. */
  strangers: number[];
  /** The curve at the mean of all passes, over the measured travels and no further; its doubt is for values and for changes. */
  curve: CurveData;
}
