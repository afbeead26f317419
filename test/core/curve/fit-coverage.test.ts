import { describe, expect, it } from 'vitest';
import { randomNumbers } from '../driveway/random-car.js';
import { type Claim, missed, ownSeeds, together } from '../study-limits.js';
import {
  AVERAGED_MOST,
  CRITERION_MOST,
  coverage,
  heldClaims,
  levelClaims,
  METHODS,
  plainClaim,
  SEEDS,
} from './fit-coverage.js';
import { CELLS, type Cell } from './noise-cells.js';
import { randomSeries } from './noisy-series.js';

/** The full study, 1500 sets a cell, runs in the bench: `node test/bench/run.mjs fit`. Here so many a seed, three seeds a cell. */
const SERIES = 20;
const study = { seeds: SEEDS, series: SERIES };
const expectHeld = (claims: readonly Claim[]) => expect(missed(claims, true)).toEqual([]);

describe('the 95 % band of a fitted camber change, over random three-dimensional linkages', () => {
  const asked = CELLS.filter(({ goal }) => goal !== 'beyond');
  const known = new Map<Cell, Claim[]>();
  const claimsOf = (cell: Cell): Claim[] => {
    const { noise, options = {} } = cell;
    const seeds = ownSeeds(CELLS.indexOf(cell));
    const claims = known.get(cell) ?? heldClaims(cell, coverage({ seeds, series: SERIES, noise, options }));
    known.set(cell, claims);
    return claims;
  };
  it.each(asked.map((cell) => [cell.name, cell] as const))('%s: holds the truth', (_, cell) => {
    expectHeld(claimsOf(cell));
  });

  it.each(['stated', 'inside'] as const)(
    'holds it as often as it says where what goes wrong is %s, of all cells',
    (goal) => {
      const all = asked.filter((cell) => cell.goal === goal).map(claimsOf);
      expectHeld(
        [0, 1].map((i) =>
          together(
            all[0]![i]!.what,
            all.map((claims) => claims[i]!),
          ),
        ),
      );
    },
  );

  it('holds the value at height 0 as well, and accuses hardly anything', () => {
    expectHeld(levelClaims(coverage({ ...study, noise: { layout: 'in turn' } })));
  });

  it.each(CELLS.flatMap((cell) => (cell.plainMost === undefined ? [] : [[cell.name, cell, cell.plainMost] as const])))(
    '%s: would not be held by the scatter alone',
    (_name, { noise }, most) => {
      expectHeld([plainClaim(most, coverage({ ...study, noise, method: METHODS.plain }))]);
    },
  );

  it('would not hold it with the degree that the criterion likes best', () => {
    expectHeld([plainClaim(CRITERION_MOST, coverage({ ...study, method: METHODS['AICc alone'] }), 0)]);
  });

  it('would not hold it with passes averaged height by height', () => {
    expectHeld([plainClaim(AVERAGED_MOST, coverage({ ...study, method: METHODS.averaged }))]);
  });
});

describe('the random series of the study', () => {
  it('are the same for the same seed, and incomplete', () => {
    const one = randomSeries(randomNumbers(8));
    expect(randomSeries(randomNumbers(8))).toEqual(one);
    const passes = new Set(one.readings.map(({ pass }) => pass)).size;
    const heights = new Set(one.readings.map(({ travel }) => travel)).size;
    expect(one.readings.length).toBeLessThan(passes * heights);
  });

  it('are of the same cars, whatever all readings have in common', () => {
    const plain = randomSeries(randomNumbers(3));
    expect(randomSeries(randomNumbers(3), { gaugeScale: 0.03, drift: 0.2 }).truth).toEqual(plain.truth);
  });
});
