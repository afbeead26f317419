import type { LimitId } from '../../core/travel/budget.js';

const LIMITS: Record<LimitId, string> = {
  stop: 'the bump stop',
  damper: 'the damper’s own end',
  spring: 'the spring’s coils',
  linkage: 'the links',
  shaft: 'the driveshaft',
  bumpTravel: 'bump travel as measured',
};

/** What ends travel, in a sentence. */
export const limitName = (id: LimitId): string => LIMITS[id];
