import type { KnownCorner } from '../curve-sources/solve-corner.js';
import type { ReadSetup } from '../curve-sources/source.js';
import { InputError } from '../quantity/problem.js';
import type { Reading } from '../readings/reading.js';

/** One thing wrong with all readings at once that would account for readings which no corner gives. */
export const TURNED = ['camber', 'travel', 'both', 'centimetres', 'inches'] as const;
export type Turned = (typeof TURNED)[number];

/** What is turned round, of a request to learn. */
interface Readings {
  readings?: readonly Reading[];
  toe?: readonly Reading[];
  setups?: readonly ReadSetup[];
}

const OTHER_WAY = { up: 'down', down: 'up' } as const;
const MM = { centimetres: 10, inches: 25.4 } as const;

/** Readings as they would be with that put right. */
export function turnedRound<T extends Readings>(request: T, how: Turned): T {
  const times = how === 'centimetres' || how === 'inches' ? MM[how] : how === 'camber' ? 1 : -1;
  const sign = how === 'camber' || how === 'both' ? -1 : 1;
  const turned = (all: readonly Reading[], by: number): Reading[] =>
    all.map(({ going, ...one }) => ({
      ...one,
      travel: times * one.travel,
      value: by * one.value,
      ...(going && { going: times < 0 ? OTHER_WAY[going] : going }),
    }));
  const { readings, toe, setups } = request;
  return {
    ...request,
    ...(readings && { readings: turned(readings, sign) }),
    ...(toe && { toe: turned(toe, 1) }),
    ...(setups && {
      setups: setups.map((setup) => ({
        ...setup,
        ...(setup.readings && { readings: turned(setup.readings, sign) }),
        ...(setup.toe && { toe: turned(setup.toe, 1) }),
      })),
    }),
  };
}

/**
 * Whether readings that do not go with a corner would do so with a sign the other way, or in another unit.
 *
 * @param fits how well they go with it then, the less the better; undefined where they do not
 * @returns the one that fits best
 */
export function turnedThatFits<T extends Readings>(
  known: KnownCorner,
  request: T,
  fits: (known: KnownCorner, request: T) => number | undefined,
): Turned | undefined {
  const found = TURNED.flatMap((how) => {
    try {
      const badness = fits(known, turnedRound(request, how));
      return badness === undefined ? [] : [{ how, badness }];
    } catch (error) {
      if (error instanceof InputError) return [];
      throw error;
    }
  });
  return found.sort((a, b) => a.badness - b.badness)[0]?.how;
}
