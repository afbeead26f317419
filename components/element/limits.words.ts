import { words } from '../../core/quantity/words.js';
import type { LimitId } from '../../core/travel/budget.js';

/** English names of what ends travel. */
export const LIMITS = words<Record<LimitId, string>>('element/limits', {
  stop: 'the bump stop',
  damper: 'the damper’s own end',
  spring: 'the spring’s coils',
  linkage: 'the links',
  shaft: 'the driveshaft',
  bumpTravel: 'bump travel as measured',
});

/** What ends travel, in a sentence. */
export const limitName = (id: LimitId): string => LIMITS[id];
