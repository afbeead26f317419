import type { CarDocument } from '../../core/document/car.js';
import { readSetsOf } from '../../core/document/read-sets.js';
import type { Setup } from '../../core/document/setup.js';
import { withSetupAt } from '../../core/document/setup-edits.js';
import type { Slip } from '../../core/learn/slips.js';
import type { Reading } from '../../core/readings/reading.js';
import type { PredictOnSheet } from './predict-view.js';

/** A reading where it stands in the car. */
export interface ReadRow {
  reading: Reading;
  /** The set, and its place in that. */
  setup: Setup;
  index: number;
}

/** The readings that one of the learnt sets was made from, in its order; undefined of one with parts on. */
export function rowsOf({ sets }: PredictOnSheet, set: number, car: CarDocument): ReadRow[] | undefined {
  const of = sets[set];
  if (!of || of.parts.length > 0) return undefined;
  return readSetsOf(car)
    .stock.filter(({ quantity }) => quantity === of.quantity)
    .flatMap((setup) => {
      const aside = new Set(setup.setAside);
      return setup.readings.flatMap((reading, index) => (aside.has(index) ? [] : [{ reading, setup, index }]));
    });
}

/** What of a pass is after a slip, and the pass as a whole, in the order in which it was read as far as that is known. */
export function slipped(rows: readonly ReadRow[], { from }: Pick<Slip, 'from'>): { all: ReadRow[]; after: ReadRow[] } {
  const first = rows[from];
  // Passes of several sets are told apart by the number of their set before them.
  const all = rows.filter(
    ({ reading, setup }) => first && setup === first.setup && (reading.pass ?? '') === (first.reading.pass ?? ''),
  );
  const ways = new Set(all.map(({ reading }) => reading.going));
  // Up and down in one pass: nothing but the order in which they stand tells it.
  const way = ways.size > 1 ? 0 : ways.has('down') ? -1 : 1;
  const sorted = [...all].sort((a, b) => way * (a.reading.travel - b.reading.travel) || a.index - b.index);
  return { all: sorted, after: first ? sorted.slice(sorted.indexOf(first)) : [] };
}

/** A car with some readings set aside; those of sets that are not the user's own stay. */
export const withAside = (car: CarDocument, rows: readonly ReadRow[]): CarDocument =>
  (car.setups ?? []).reduce((all, setup, at) => {
    const own = rows.filter((row) => row.setup === setup).map(({ index }) => index);
    if (own.length === 0) return all;
    return withSetupAt(all, at, (one) => ({
      ...one,
      setAside: [...new Set([...(one.setAside ?? []), ...own])].sort((a, b) => a - b),
    }));
  }, car);
