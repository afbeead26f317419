import { type StiffnessForRoll, stiffnessForRoll } from '../travel/stiffness-for-roll.js';
import { rollForInclination } from './cornering-questions.js';
import type { LoadWithLinks, RolledRequest } from './roll-source.js';
import { loadRequest, standingOf, under } from './rolled.js';

/** Which springs, or which bar, would bring the outer wheel to an inclination to the road (degrees, top outward positive) at this load? */
export type StiffnessRequest<S = RolledRequest['source']> = Omit<RolledRequest<S>, 'by'> & {
  load: LoadWithLinks;
  inclination: number;
};

export interface StiffnessForInclination extends StiffnessForRoll {
  /** At which the outer wheel stands so, degrees. */
  roll: number;
}

/**
 * The roll at which the outer wheel comes to an inclination, and the springs, or the bar, of this axle that leave the car so much roll.
 *
 * @throws InputError as `rollForInclination` and `rolledOf`; `out-of-range`, path `load.roll`, where neither springs nor a bar give that roll
 */
export function* stiffnessForInclination({
  load,
  inclination,
  ...request
}: StiffnessRequest): Generator<undefined, StiffnessForInclination> {
  const asked = under('load', () => loadRequest(standingOf(request), load));
  const { roll } = yield* rollForInclination({ ...request, roll: 0, inclination });
  return { roll, ...under('load', () => stiffnessForRoll({ ...asked, roll })) };
}
