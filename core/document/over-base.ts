import { type OverBase, type Pair, toeOfPair } from '../readings/over-base.js';
import type { Reading } from '../readings/reading.js';
import type { Setup } from './setup.js';

type Read = Pick<Setup, 'readings' | 'overBase'>;

/** A reading by two figures. */
export const pairReading = (pair: Pair, over: OverBase): Pick<Reading, 'value' | 'pair'> => ({
  value: toeOfPair(pair, over),
  pair,
});

/**
 * A set that was read otherwise than it said: readings by two figures are worked out again. Without an answer they stay as they are, and
 * their figures with them.
 */
export function withOverBase(setup: Setup, over: OverBase | undefined): Setup {
  const { overBase: _, ...rest } = setup;
  if (!over) return rest;
  const readings = setup.readings.map((reading) =>
    reading.pair ? { ...reading, ...pairReading(reading.pair, over) } : reading,
  );
  return { ...rest, overBase: over, readings };
}

/** Readings to be added to a set: figures that were read over another base than its own leave their angle alone. */
export function readAlike(own: Read, added: Read): Read {
  const { overBase = added.overBase } = own;
  const isAlike = (['by', 'base', 'front'] as const).every((key) => overBase?.[key] === added.overBase?.[key]);
  if (isAlike && !(own.overBase === undefined && own.readings.some(({ pair }) => pair))) {
    return { readings: added.readings, ...(overBase && { overBase }) };
  }
  return {
    readings: added.readings.map(({ pair: _, ...reading }) => reading),
    ...(own.overBase && { overBase: own.overBase }),
  };
}
