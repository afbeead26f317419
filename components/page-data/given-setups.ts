import type { Setup } from '../../core/document/setup.js';
import { shown } from '../../core/quantity/number-problem.js';
import type { Problem } from '../../core/quantity/problem.js';

const isSetup = (one: Partial<Setup> | undefined): boolean =>
  typeof one?.name === 'string' &&
  one.quantity === 'camber' &&
  Array.isArray(one.readings) &&
  one.readings.every(Boolean);

/** What a page's script hands over as sets, as far as they are any. */
export const givenSetups = (setups: readonly Setup[]): readonly Setup[] | undefined => setups.filter?.(isSetup);

/** What a page's script hands over instead of sets of camber, each by itself. */
export function setupProblems(setups: unknown): Problem[] {
  if (!Array.isArray(setups)) return [{ code: 'wrong-shape', path: 'setups', value: shown(setups) }];
  return setups.flatMap((one, i) =>
    isSetup(one) ? [] : [{ code: 'wrong-shape', path: `setups.${i}`, value: shown(one) }],
  );
}
