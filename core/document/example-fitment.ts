import type { TravelLimits } from '../travel/travel-limits.js';
import type { Fitment } from './fitment.js';

/** Wheels of the invented example car, and what was measured in its arch with the first of them on. */
export const EXAMPLE_FITMENT = {
  before: { size: '205/55R16', rimWidthInch: 6.5, offset: 45 },
  after: { size: '215/45R17', rimWidthInch: 7.5, offset: 40 },
  places: [
    { name: 'arch lip', fixedTo: 'body', is: 'bodywork', at: { clock: 12, distance: 371, out: 25 } },
    { name: 'arch lip', fixedTo: 'body', is: 'bodywork', at: { clock: 11, distance: 377, out: 22 } },
    { name: 'arch lip', fixedTo: 'body', is: 'bodywork', at: { clock: 1, distance: 379, out: 24 } },
    { name: 'liner screw', fixedTo: 'body', is: 'bodywork', at: { clock: 10, distance: 404, out: -12 } },
    {
      name: 'spring perch',
      fixedTo: 'carrier',
      is: 'chassis',
      at: { clock: 12, distance: 288, out: -21, from: 'inner' },
    },
  ],
  lock: 33,
} as const satisfies Fitment;

/** What ends its travel: measured where it stands as built. */
export const EXAMPLE_LIMITS = {
  stopGap: 34,
  stopGapPlusMinus: 2,
  stopLength: 55,
  stopUsable: 0.5,
  strokeDroop: 78,
} as const satisfies TravelLimits;
