import fc from 'fast-check';
import {
  DRIVEWAY_FIELDS,
  DRIVEWAY_KEYS,
  type DrivewayKey,
  type DrivewayMeasurements,
  type Measured,
} from '../../../core/driveway/driveway.js';

const within = (key: DrivewayKey): fc.Arbitrary<Measured> => {
  const { least, most } = DRIVEWAY_FIELDS[key];
  return fc.record({
    value: fc.double({ min: least, max: most, noNaN: true }),
    plusMinus: fc.double({ min: 0, max: 10, noNaN: true }),
  });
};

/** Any of the measurements, each anywhere within its own limits: many do not fit together. */
export const randomDriveway: fc.Arbitrary<DrivewayMeasurements> = fc.record(
  Object.fromEntries(DRIVEWAY_KEYS.map((key) => [key, within(key)])),
  { requiredKeys: [] },
);

/** Plausible ones, complete: common practice, no source. */
const between = (min: number, max: number, plusMinus: number) =>
  fc.double({ min, max, noNaN: true }).map((value) => ({ value, plusMinus }));

export const plausibleDriveway = fc.record({
  armLength: between(280, 430, 3),
  pivotHeight: between(160, 230, 2),
  ballHeight: between(160, 210, 3),
  wheelCentreHeight: between(280, 345, 4),
  topHeight: between(780, 920, 5),
  damperLean: between(2, 15, 0.5),
  ballOffset: between(0, 40, 10),
  hubOffset: between(20, 75, 20),
  track: between(1380, 1620, 5),
  caster: between(0, 14, 0.5),
  bumpSteer: between(-0.8, 0.8, 0.1),
});

/** The same seen in front view alone: no caster and no bump steer, for certain. */
export const planeDriveway = plausibleDriveway.map((given) => ({
  ...given,
  caster: { value: 0, plusMinus: 0 },
  bumpSteer: { value: 0, plusMinus: 0 },
}));
