import type { LimitId } from '../../core/travel/budget.js';
import { SHARED } from './first.words.js';

/** What ends travel, in a sentence. */
export const limitName = (id: LimitId): string => SHARED.limits[id];
