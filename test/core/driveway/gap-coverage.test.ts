import { describe, expect, it } from 'vitest';
import { missed } from '../study-limits.js';
import { SEEDS } from './coverage.js';
import { cellOf, type GapRow, type GapStudy, gapClaims, gapRows } from './gap-coverage.js';
import { MUCH_CASTER } from './random-car.js';

/** The full study runs in the bench: `node test/bench/run.mjs gap-coverage`. Six places a car, each in 31 poses; cars a seed. */
const CARS = 3;

const known = new Map<string, GapRow[]>();
/** Several tests ask for the same rows. */
function rowsOf(seed: number, study: Partial<GapStudy>): GapRow[] {
  const key = JSON.stringify([seed, study]);
  const rows = known.get(key) ?? gapRows({ seed, cars: CARS, placePlusMinus: 2, ...study });
  known.set(key, rows);
  return rows;
}
const rows = (study: Partial<GapStudy>): GapRow[] => SEEDS.flatMap((seed) => rowsOf(seed, study));

describe('the ± of a gap, over random three-dimensional cars', { timeout: 120_000 }, () => {
  it.each<[string, Partial<GapStudy>]>([
    ['six measurements, places to 5 mm', { placePlusMinus: 5 }],
    ['six measurements, places to 2 mm', {}],
    ['six measurements without camber', { withoutCamber: true }],
    ['caster and the hub’s offset besides', { also: ['caster', 'hubOffset'] }],
    ['caster of 8 to 13°, given', { kind: MUCH_CASTER, also: ['caster'] }],
    ['a camber curve, straight ahead', { by: 'curve' }],
  ])('leaves at most 3 of 100 true gaps smaller than stated less it: %s', (_, study) => {
    expect(missed(gapClaims(rows(study)), true)).toEqual([]);
  });

  it('holds them for hard points with a stated ± as well', () => {
    expect(missed(gapClaims(rows({ by: 'points' }), false), true)).toEqual([]);
  });

  it('is narrower by what was measured besides the six', () => {
    const atLock = (study: Partial<GapStudy>) =>
      cellOf(rowsOf(SEEDS[0], study).filter(({ steered }) => steered === 'lock')).medianPlusMinus;
    const [six, caster, both] = [atLock({}), atLock({ also: ['caster'] }), atLock({ also: ['caster', 'hubOffset'] })];
    expect(caster).toBeLessThan(six);
    expect(both).toBeLessThan(0.7 * six);
  });
});
