import type { PointMark } from '../shared/chart/model.js';

/** The name a pass goes by, and the mark of its readings. */
export interface PassView {
  pass: string;
  name: string;
  mark: PointMark;
  /** Degrees, to the mean of all passes; NaN with a single one. */
  offset: number;
  standardError: number;
  going?: 'up' | 'down' | 'both';
  /** Indexes into the setup's readings. */
  readings: number[];
}
