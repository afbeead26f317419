import type { CarDocument } from './car.js';
import type { Setup } from './setup.js';
import { addParts, withSetupAt } from './setup-edits.js';
import { fitSetup, isPartsOnly, ownerOf, ownSetups } from './setup-in-use.js';

/** Parts of the invented example car: a lower ball joint with the tie rod as it was, and with its end lowered to match. */
export const EXAMPLE_PARTS: readonly Setup[] = [
  { name: '22 mm joint + rod end', correctTieRod: true },
  { name: '22 mm joint' },
].map(({ name, ...options }) => ({
  name,
  cornerName: 'Front left',
  quantity: 'camber',
  readings: [],
  parts: [{ part: 'ballJointExtended', mm: 22, ...options }],
}));

/** Of the example's sets, the one that shows what a wheel steers itself by: the tie rod as it was. */
export const EXAMPLE_SHOWN_BY_TOE = 1;

/** A set of parts as it is put on links. */
export interface LinkedSet {
  /** The set of parts. */
  setup: Setup;
  /** Whose it is. */
  by: 'user' | 'page' | 'example';
  /** Index among the car's sets; undefined of the example's. */
  index: number | undefined;
}

/** The sets that hold parts, whoever gave them; where there are none, the example's. */
export function linkedSets(car: CarDocument): LinkedSet[] {
  const found = (car.setups ?? []).flatMap((setup, index): LinkedSet[] =>
    setup.parts ? [{ setup, by: ownerOf(car, setup), index }] : [],
  );
  return found.length > 0 ? found : EXAMPLE_PARTS.map((setup) => ({ setup, by: 'example', index: undefined }));
}

/** Of those, the one that is on: the fitted one, else the first. */
export const shownSet = (car: CarDocument, sets: readonly LinkedSet[]): number =>
  Math.max(
    0,
    sets.findIndex(({ index }) => index !== undefined && index === car.fitted),
  );

/** Adds a set of parts and fits it. Where no more are kept, the same car comes back. */
export function addFitted(car: CarDocument, name: string, parts: NonNullable<Setup['parts']>): CarDocument {
  const added = addParts(car, name, parts);
  return added === car ? car : fitSetup(added, added.setups!.length - 1);
}

/** Changes a set of parts. One that is not the user's own stays, and the change begins one of theirs beside it. */
export function withLinkedSet(
  car: CarDocument,
  { setup, by, index }: LinkedSet,
  recipe: (setup: Setup) => Setup,
): CarDocument {
  if (by === 'user' && index !== undefined && ownSetups(car)[index]) return withSetupAt(car, index, recipe);
  const next = recipe(setup);
  if (next === setup) return car;
  const added = addFitted(car, next.name, next.parts ?? []);
  const last = (added.setups?.length ?? 0) - 1;
  const { alignment } = next;
  return alignment && added !== car ? withSetupAt(added, last, (own) => ({ ...own, alignment })) : added;
}

/** Whether a set holds readings as well, which go with it. */
export const hasReadings = ({ setup }: LinkedSet): boolean => !isPartsOnly(setup);
