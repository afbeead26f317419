import type { CarDocument } from '../../core/document/car.js';
import type { LinkedSet } from '../../core/document/linked-sets.js';
import { readSetsOf } from '../../core/document/read-sets.js';
import type { Setup } from '../../core/document/setup.js';
import { addBeside, addParts, removeSetup, withSetupAt } from '../../core/document/setup-edits.js';
import { fitSetup, indexInUse, ownSetups, useSetup } from '../../core/document/setup-in-use.js';
import { furtherPasses } from '../../core/readings/further-passes.js';

/** Readings that went to a set of parts because their sheet names them so. */
export interface IntoParts {
  /** As their sheet has them. */
  read: Setup;
  /** The name of the set that has them now. */
  set: string;
}

const STOCK = /\b(?:stock|standard|original|factory|before|as it (?:is|stands))\b/i;
const PARTS =
  /\b(?:joints?|arms?|mounts?|knuckles?|rods?|shims?|spacers?|plates?|bush(?:es)?|lower(?:ed)?|longer|extended|parts?|fitted|new|after)\b/i;

const same = (one: string, other: string): boolean => one.trim().toLowerCase() === other.trim().toLowerCase();

/**
 * What a sheet of several sets, or one that names parts, brought to the car: readings with parts on are none of the car as it stands. Those
 * named as a set of parts are that one's; those named by some part, beside readings as it stands, are of the parts that are asked about.
 */
export function sortedOut(
  after: CarDocument,
  before: CarDocument,
  sets: readonly LinkedSet[],
  shown: number,
): { car: CarDocument; into?: IntoParts } {
  const known = before.setups ?? [];
  const added = (after.setups ?? []).filter((setup) => !setup.parts && !known.some(({ name }) => name === setup.name));
  const ofParts = ({ name }: Setup) => PARTS.test(name) && !STOCK.test(name);
  // A name made to differ from that of a set which is there ends in a number.
  const calledAs = ({ name }: Setup) =>
    sets.find(({ setup }) => same(setup.name, name) || same(setup.name, name.replace(/ \d+$/, '')));
  const isStockThere =
    readSetsOf(before).stock.length > 0 || added.some((setup) => !calledAs(setup) && !ofParts(setup));
  let car = after;
  let into: IntoParts | undefined;
  for (const read of added) {
    const set = calledAs(read) ?? (isStockThere && ofParts(read) ? sets[shown] : undefined);
    if (!set) continue;
    car = readInto(car, read, set);
    into = { read, set: set.setup.name };
  }
  return { car, ...(into && { into }) };
}

/** Readings become those of a set of parts; one that is not the user's own becomes theirs. Which set was in use stays. */
export function readInto(after: CarDocument, read: Setup, { setup, by }: LinkedSet): CarDocument {
  const from = ownSetups(after).findIndex(({ name, readings }) => name === read.name && readings === read.readings);
  if (from < 0) return after;
  const others = removeSetup(after, from);
  const isThere = by === 'user' && ownSetups(others).some(({ name }) => name === setup.name);
  const car = isThere ? others : withAlignment(addParts(others, setup.name, setup.parts ?? []), setup);
  const index = isThere ? ownSetups(car).findIndex(({ name }) => name === setup.name) : ownSetups(car).length - 1;
  const filled = withSetupAt(car, index, (own) => {
    const { readings, quantity, zeroAt, overBase } = read;
    const { setAside: _, zeroAt: __, ...kept } = own;
    const more = own.readings.length > 0 && own.quantity === quantity && (own.zeroAt ?? 0) === (zeroAt ?? 0);
    return {
      ...(own.readings.length > 0 && more ? own : kept),
      quantity,
      readings: more ? [...own.readings, ...furtherPasses(own.readings, readings)] : readings,
      ...(zeroAt !== undefined && { zeroAt }),
      ...(overBase && { overBase }),
    };
  });
  return fitSetup(useSetup(filled, indexInUse(others)), index);
}

function withAlignment(car: CarDocument, { alignment }: Setup): CarDocument {
  return alignment ? withSetupAt(car, ownSetups(car).length - 1, (own) => ({ ...own, alignment })) : car;
}

/** Readings that went to a set of parts were of the car as it stands after all. */
export function asStock(car: CarDocument, { read, set }: IntoParts): CarDocument {
  const index = ownSetups(car).findIndex(({ name }) => name === set);
  if (index < 0) return car;
  const without = withSetupAt(car, index, (own) => ({
    ...own,
    readings: own.readings.slice(0, Math.max(0, own.readings.length - read.readings.length)),
  }));
  return addBeside(without, [read]);
}
