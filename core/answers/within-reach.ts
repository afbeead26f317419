import type { Linkage } from '../linkage/linkage.js';
import { InputError } from '../quantity/problem.js';

/**
 * @param asked by path: the travel that is meant, mm from where the links were measured, and the value that asks for it, which goes with it
 * @throws InputError `outside-domain` of the first that the links do not reach, with the nearest value that they do as limit
 */
export function checkReach(
  { droop, bump }: Linkage['reach'],
  asked: readonly (readonly [path: string, travel: number, value: number])[],
): void {
  for (const [path, travel, value] of asked) {
    if (travel >= droop && travel <= bump) continue;
    const end = travel < droop ? droop : bump;
    throw new InputError([{ code: 'outside-domain', path, value, limit: value + end - travel }]);
  }
}
