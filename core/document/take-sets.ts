import { furtherPasses } from '../readings/further-passes.js';
import type { CarDocument } from './car.js';
import { readAlike } from './over-base.js';
import { SET_NAMES } from './set-names.js';
import type { Setup } from './setup.js';
import { addBeside, emptySetup, renameSetup, withSetup } from './setup-edits.js';
import { givenSetup, indexInUse, useSetup } from './setup-in-use.js';
import { setupOf } from './setups.js';

/** Readings that were taken from a sheet, under the name that their parts have there; empty where it gives none. */
export type TakenSet = Pick<Setup, 'name' | 'quantity' | 'readings' | 'overBase'>;

/** What becomes of them: in place of those shown, as further passes of them, or as sets of their own beside them. */
export type TakeHow = 'replace' | 'add' | 'beside';

/**
 * Takes the sets of a sheet over. In the place of those shown goes the first, under the sheet's name for it where it has one; further
 * ones stand beside it. What was set aside of readings that are replaced is gone with them.
 *
 * @param sets at least one; to be added as further passes, only the first counts
 */
export function takeSets(car: CarDocument, sets: readonly TakenSet[], how: TakeHow): CarDocument {
  const [first, ...others] = sets as readonly [TakenSet, ...TakenSet[]];
  const { setup, isOwn } = setupOf(car);
  const made = (some: readonly TakenSet[], cornerName = isOwn ? setup.cornerName : car.cornerName) =>
    some.map(
      ({ name, quantity, readings, overBase }): Setup => ({
        ...emptySetup(name || SET_NAMES.unnamed, quantity, cornerName),
        readings,
        ...(overBase && { overBase }),
      }),
    );
  if (how === 'beside') return addBeside(car, made(sets), 0);
  if (how === 'add') {
    return withSetup(car, (own) => {
      const added = readAlike(own, first);
      const { overBase } = added;
      return {
        ...own,
        ...(overBase && { overBase }),
        readings: [...own.readings, ...furtherPasses(own.readings, added.readings)],
      };
    });
  }
  const { quantity, readings, overBase } = first;
  const next = withSetup(car, ({ setAside: _, overBase: __, ...rest }) => ({
    ...rest,
    quantity,
    readings,
    ...(overBase && { overBase }),
  }));
  const at = indexInUse(next);
  const named = first.name ? renameSetup(next, at, first.name) : next;
  return others.length === 0 ? named : useSetup(addBeside(named, made(others, givenSetup(named)!.cornerName)), at);
}
