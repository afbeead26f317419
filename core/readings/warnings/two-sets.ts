import type { Reading } from '../reading.js';
import type { DataWarningOf } from './data-warning.js';
import { groupsAmong, shapesApart } from './differ.js';
import { passNames, passOf } from './robust-fit.js';

/** Passes that follow two curves: two sets of parts typed as one, it may be. */
export function twoSets(readings: readonly Reading[]): DataWarningOf<'two-sets'> | undefined {
  const names = passNames(readings);
  const passes = names.map((name) => readings.filter((reading) => passOf(reading) === name && !reading.again));
  const [one, other, ...more] = groupsAmong(passes, Number.POSITIVE_INFINITY);
  if (!one || !other || more.length > 0) return undefined;
  return {
    kind: 'two-sets',
    readings: [...readings.keys()].filter((i) => other.includes(names.indexOf(passOf(readings[i]!)))),
    passes: one.map((k) => names[k]!),
    others: other.map((k) => names[k]!),
    degrees: shapesApart(
      one.map((k) => passes[k]!),
      other.map((k) => passes[k]!),
    ),
  };
}
