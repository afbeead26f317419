import type { CarDocument } from '../../core/document/car.js';
import { givenBy, isBare, isUsers } from '../../core/document/provenance.js';
import { setupsBy } from '../../core/document/setup-in-use.js';

/** The same parts in the same order, by identity. */
export const isSameList = (some: readonly unknown[] = [], others: readonly unknown[] = []): boolean =>
  some.length === others.length && some.every((one, i) => one === others[i]);

/**
 * Whether an older answer may stand beside the problem of what is asked now. Of a car that a user edits it may, unless it was the example
 * before; of a page's only where corner, curve and readings are those it was made from: else its numbers would be another car's.
 */
export function isSameSource(before: CarDocument, now: CarDocument): boolean {
  if (now.by === 'readings' && setupsBy(now) === 'page') return isSameList(before.setups, now.setups);
  // A page's own stands in behind what a user changes of it; the example is nobody's car, until its links are somebody's.
  const isBegun = now.whole !== undefined || !isBare(now.given);
  if (isUsers(now, 'corner')) return givenBy(before, 'corner') !== 'example' || !isBegun;
  return before.given === now.given && before.whole === now.whole && before.curve === now.curve;
}

/** The same of wheels, places and what ends travel. */
export const isSameFitment = (before: CarDocument, now: CarDocument): boolean =>
  isUsers(now, 'fit') || (before.fit === now.fit && before.limits === now.limits && before.stopGap === now.stopGap);
