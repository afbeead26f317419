/** What a kind of curve must be able to do; asked within the domain only. Degrees, mm. */
export interface Shape {
  value(t: number): number;
  /** d(value)/dt. */
  slope(t: number): number;
  /** Sensitivity × standard uncertainty of each source; empty when no doubt is known. */
  parts(t: number): Float64Array;
  /** The same of the slope. */
  slopeParts(t: number): Float64Array;
}
