import type { PartData } from '../linkage/parts/part-kinds.js';
import type { Reading, ReadingQuantity } from '../readings/reading.js';
import { type CarDocument, type CornerName, givenByUser } from './car.js';
import { give, isUsers } from './provenance.js';
import { SET_NAMES } from './set-names.js';
import type { Setup } from './setup.js';
import {
  fittedSetup,
  givenSetup,
  indexInUse as indexOf,
  LONGEST_NAME,
  MOST_SETUPS,
  ownSetups,
  setupsBy,
} from './setup-in-use.js';
import { byReadings, setupOf } from './setups.js';

/**
 * Changes the set in use. What a page or the example shows is left behind: an empty set of the user's own begins in its place, of
 * the same quantity; a page's set that stands among the user's own stays there.
 */
export function withSetup(car: CarDocument, recipe: (setup: Setup) => Setup): CarDocument {
  const own = ownSetups(car);
  const { setup, isOwn } = setupOf(car);
  const at = indexOf(car);
  if (isOwn) {
    const next = recipe(setup);
    return next === setup ? car : withOwn(car, replaced(own, at, next), at);
  }
  const empty = emptySetup(
    freeName(SET_NAMES.first, own),
    setup.quantity,
    own.length > 0 ? setup.cornerName : car.cornerName,
  );
  const begun = recipe(empty);
  if (begun === empty) return car;
  if (setup.givenBy === 'example') return withOwn(car, replaced(own, at, begun), at);
  return withOwn(car, [...own, begun], own.length);
}

/** Changes the set that is shown, whoever gave it: of somebody else's readings the change makes a set among the user's that says whose it was. */
export function withShown(car: CarDocument, recipe: (setup: Setup) => Setup): CarDocument {
  const own = ownSetups(car);
  const { setup, by } = setupOf(car);
  const next = recipe(setup);
  if (next === setup) return car;
  if (own.length > 0) return withOwn(car, replaced(own, indexOf(car), next), indexOf(car));
  return withOwn(
    car,
    [{ ...next, name: cut(SET_NAMES.changed(setup.name)), ...(by !== 'user' && { givenBy: by }) }],
    0,
  );
}

export const emptySetup = (name: string, quantity: ReadingQuantity, cornerName: CornerName): Setup => ({
  name,
  cornerName,
  quantity,
  readings: [],
});

/** Adds a set and uses it. Its name is made to differ from the others'. More than `MOST_SETUPS` are not kept: the same car comes back. */
export function addSetup(car: CarDocument, setup: Setup): CarDocument {
  const own = ownSetups(car);
  if (own.length >= MOST_SETUPS) return car;
  return withOwn(car, [...own, { ...setup, name: freeName(setup.name, own) }], own.length);
}

/**
 * Adds sets beside those that are there, a page's too, which stand among the user's from then on and say whose they are: sets are
 * there to be compared. The example's are left behind. Names are made to differ; more than `MOST_SETUPS` are not kept.
 *
 * @param shown index among the added of the one that is in use then; the one before stays in use without it
 */
export function addBeside(car: CarDocument, added: readonly Setup[], shown?: number): CarDocument {
  const isPages = setupsBy(car) === 'page';
  const all = (car.setups ?? [])
    .filter((setup) => setup.givenBy !== 'example')
    .map((setup): Setup => (isPages ? { ...setup, givenBy: 'page' } : setup));
  const kept = all.length;
  const inUse = givenSetup(car);
  const old = inUse ? all.findIndex(({ name }) => name === inUse.name) : -1;
  for (const setup of added.slice(0, Math.max(0, MOST_SETUPS - kept))) {
    all.push({ ...setup, name: freeName(setup.name, all) });
  }
  if (all.length === kept) return car;
  return withOwn(car, all, shown === undefined ? Math.max(0, old) : Math.min(kept + shown, all.length - 1));
}

/**
 * Makes some readings of the set that is shown a set of their own beside it; the rest stays in use. Where no more sets are kept, the same
 * car comes back.
 */
export function withSetApart(car: CarDocument, indexes: readonly number[], name: string): CarDocument {
  const { setup, by } = setupOf(car);
  if (by === 'example' || (car.setups ?? []).length >= MOST_SETUPS) return car;
  const [rest, apart] = [false, true].map((isApart) =>
    withReadings(
      setup,
      setup.readings.filter((_, i) => indexes.includes(i) === isApart),
    ),
  ) as [Setup, Setup];
  return addBeside(
    withShown(car, () => rest),
    [{ ...apart, name }],
  );
}

/** Adds a set of parts beside those that are there, a page's too; which readings are in use does not change. */
export function addParts(car: CarDocument, name: string, parts: readonly PartData[]): CarDocument {
  return addBeside(car, [{ ...emptySetup(name, 'camber', car.cornerName), parts }]);
}

/** Changes the parts of one of the own sets. */
export const withPartsAt = (
  car: CarDocument,
  index: number,
  recipe: (parts: readonly PartData[]) => readonly PartData[],
) =>
  withSetupAt(car, index, (setup) => {
    const { parts = [] } = setup;
    const next = recipe(parts);
    return next === parts ? setup : { ...setup, parts: next };
  });

/** Removes an own set. The one before it, or else the first, is in use then; after the last, the page's are not brought back. */
export function removeSetup(car: CarDocument, index: number): CarDocument {
  const own = ownSetups(car);
  if (!own[index]) return car;
  const rest = without(own, index);
  const inUse = indexOf(car);
  return withOwn(car, rest, Math.max(0, inUse >= index ? inUse - 1 : inUse));
}

/** Changes one of the own sets, whichever is in use. */
export function withSetupAt(car: CarDocument, index: number, recipe: (setup: Setup) => Setup): CarDocument {
  const own = ownSetups(car);
  const setup = own[index];
  const next = setup && recipe(setup);
  return !next || next === setup ? car : withOwn(car, replaced(own, index, next), indexOf(car));
}

/** A name of nothing but spaces is none: the same car comes back. */
export function renameSetup(car: CarDocument, index: number, name: string): CarDocument {
  const own = ownSetups(car);
  const setup = own[index];
  const kept = cut(name);
  if (!setup || kept === '' || kept === setup.name) return car;
  const renamed = { ...setup, name: freeName(kept, without(own, index)) };
  return withOwn(car, replaced(own, index, renamed), indexOf(car));
}

function withOwn(car: CarDocument, setups: readonly Setup[], setup: number): CarDocument {
  const fitted = fittedIn(car, setups);
  const own = setups.length > 0 ? { setups, ...(setup > 0 && { setup }), ...(fitted !== undefined && { fitted }) } : {};
  // Their car begins with a set of theirs; a corner that is theirs already stays the same object, and what was solved of it.
  const isTheirs = isUsers(car, 'corner') && car.whole === undefined;
  const given = give(isTheirs ? car : givenByUser(car, (corner) => corner), 'setups', 'user', () => own);
  return given.setups ? byReadings(given) : given;
}

/** Where the set stands among others whose parts are on: it may have moved, or been renamed in its place. */
function fittedIn(car: CarDocument, setups: readonly Setup[]): number | undefined {
  const now = fittedSetup(car);
  if (!now) return undefined;
  const found = setups.findIndex(({ name, parts }) => name === now.name && parts);
  if (found >= 0) return found;
  return setups.length === car.setups?.length && setups[car.fitted!]?.parts ? car.fitted : undefined;
}

const replaced = (setups: readonly Setup[], at: number, setup: Setup): Setup[] =>
  setups.map((other, index) => (index === at ? setup : other));
const without = (setups: readonly Setup[], at: number): Setup[] => setups.filter((_, index) => index !== at);
const cut = (name: string): string => [...name.trim()].slice(0, LONGEST_NAME).join('').trim();

function freeName(name: string, others: readonly Setup[]): string {
  const wanted = cut(name) || SET_NAMES.first;
  const isTaken = (text: string) => others.some((other) => other.name === text);
  let free = wanted;
  for (let n = 2; isTaken(free); n++) free = `${[...wanted].slice(0, LONGEST_NAME - 4).join('')} ${n}`;
  return free;
}

/** A set with some of its readings replaced; those set aside keep their places only where the readings do. */
export const withReadings = (setup: Setup, readings: readonly Reading[]): Setup => {
  const { setAside = [], ...rest } = setup;
  const aside = new Set(setAside.map((index) => setup.readings[index]));
  const kept = readings.flatMap((reading, index) => (aside.has(reading) ? [index] : []));
  return { ...rest, readings, ...(kept.length > 0 && { setAside: kept }) };
};
