import type { DrivewayMeasurements } from '../driveway/driveway.js';

/**
 * The invented example car (example-corner.ts) as a person would measure it with a tape and an angle gauge: whole millimetres,
 * half degrees, ± of the tape and the gauge. The offsets stay hidden and are assumed.
 */
export const EXAMPLE_DRIVEWAY: DrivewayMeasurements = {
  armLength: { value: 338, plusMinus: 3 },
  pivotHeight: { value: 193, plusMinus: 3 },
  ballHeight: { value: 176, plusMinus: 3 },
  wheelCentreHeight: { value: 302, plusMinus: 3 },
  topHeight: { value: 822, plusMinus: 3 },
  damperLean: { value: 8, plusMinus: 0.5 },
  track: { value: 1476, plusMinus: 3 },
  camber: { value: -0.6, plusMinus: 0.1 },
};
