/** One independent cause of doubt, of unit variance. */
export interface Source {
  /** Stable name, e.g. `lowerArm.ball.z` or `drop`. */
  id: string;
  /** For people, e.g. "ball joint, height". */
  label: string;
  /** Degrees of freedom behind its standard uncertainty; Infinity when it was stated, not measured. */
  dof: number;
}

/** A value with its doubt. `parts[i]` = sensitivity × standard uncertainty of source i, in the unit of the value. */
export interface Estimate {
  value: number;
  parts: Float64Array;
}
