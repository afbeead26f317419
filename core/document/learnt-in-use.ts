import type { LearntSource, ReadSetup } from '../curve-sources/source.js';
import { HOW_SURE } from '../driveway/driveway.js';
import type { Reading } from '../readings/reading.js';
import { asLinks } from './as-links.js';
import { type CarDocument, drivewayOf } from './car.js';
import { readSetsOf } from './read-sets.js';
import type { Setup } from './setup.js';
import { readingsInUse, sourceKindOf } from './setup-in-use.js';
import { cornerOf } from './strut-in-use.js';

/** Readings of some sets as those of one: travels from one height, passes by names of their own. */
function together(setups: readonly Setup[], zeroAt: number): Reading[] {
  return setups.flatMap((setup, k) =>
    readingsInUse(setup).map((reading) => ({
      ...reading,
      travel: reading.travel + (setup.zeroAt ?? 0) - zeroAt,
      ...(setups.length > 1 && { pass: `${k + 1}.${reading.pass ?? ''}` }),
    })),
  );
}

/** Points of which nobody said how sure they are were taken with a tape: readings correct nothing that is stated as exact. */
function asTaped(corner: unknown): unknown {
  if (typeof corner !== 'object' || corner === null) return corner;
  const { plusMinus, ...points } = corner as { plusMinus?: object };
  return { ...points, plusMinus: { other: HOW_SURE.length.tape, ...plusMinus } };
}

/**
 * The corner of a car as its readings correct it; undefined of one that has no links, or no readings of the parts as they stand.
 */
export function learntSourceOf(car: CarDocument): LearntSource | undefined {
  const { stock, fitted } = readSetsOf(car);
  const links = asLinks(car);
  if (stock.length === 0 || car.curve) return undefined;
  const { measuredAt = 0 } = car;
  const isMeasured = links.whole === undefined && sourceKindOf({ ...links, setups: [] }) === 'driveway';
  const of: LearntSource['of'] = isMeasured
    ? { kind: 'driveway', driveway: drivewayOf(links) }
    : { kind: 'corner', corner: asTaped(cornerOf(links)) };
  const zeroAt = stock[0]!.zeroAt ?? 0;
  const by = (quantity: Setup['quantity'], sets: readonly Setup[]) =>
    sets.filter((setup) => setup.quantity === quantity);
  const [camber, toe] = [by('camber', stock), by('toe', stock)];
  const setups = fitted.map((setup): ReadSetup => {
    const readings = together([setup], zeroAt);
    return {
      parts: setup.parts!,
      alignment: setup.alignment ?? 'toe',
      ...(setup.quantity === 'toe' ? { toe: readings } : { readings }),
    };
  });
  const [doubts, toeDoubts] = [camber[0]?.doubts, toe[0]?.doubts];
  return {
    kind: 'learnt',
    of,
    ...(camber.length > 0 && { readings: together(camber, zeroAt) }),
    ...(toe.length > 0 && { toe: together(toe, zeroAt) }),
    ...(setups.length > 0 && { setups }),
    ...(doubts && { doubts }),
    ...(toeDoubts && { toeDoubts }),
    ...(zeroAt !== measuredAt && { raisedBy: zeroAt - measuredAt }),
  };
}
