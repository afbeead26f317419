/** Common practice, no source: wide enough for any road car, narrow enough to catch a rate in another unit or metres for millimetres. */
export const RATIO = [0.2, 1.5] as const;
export const TRACK_MM = [800, 2400] as const;
export const RATE_N_PER_MM = [1, 1000] as const;
