import { describe, expect, it } from 'vitest';
import { EMPTY_CAR } from '../../../../core/document/car.js';
import { EXAMPLE_SETUPS } from '../../../../core/document/example-setups.js';
import { withSetApart, withSetup } from '../../../../core/document/setup-edits.js';
import { MOST_SETUPS, ownSetups } from '../../../../core/document/setup-in-use.js';
import { setupOf } from '../../../../core/document/setups.js';
import type { Reading } from '../../../../core/readings/reading.js';
import type { DataWarningOf } from '../../../../core/readings/warnings/data-warning.js';
import { fixOf } from '../../../../core/readings/warnings/fix.js';
import { randomNumbers } from '../../driveway/random-car.js';
import { CLEAN, cleanStudy, look, SEEDS } from './data-warnings-study.js';
import { randomReadings } from './random-readings.js';

/** Two joints of the invented car, the standard one read upward and the lowered one downward, typed as passes of one set. */
const typed: Reading[] = EXAMPLE_SETUPS.flatMap(({ readings }, set) =>
  readings
    .filter(({ travel, pass }) => pass === (set === 0 ? 'Pass 1' : 'Pass 2') && travel % 10 === 0 && travel >= -20)
    .map(
      ({ travel, value }): Reading => ({ travel, value, pass: `Pass ${set + 1}`, going: set === 0 ? 'up' : 'down' }),
    ),
);

describe('two sets of parts typed as passes of one', () => {
  it('are told as what a drift of the gauge may be, where one went up and the other down', () => {
    const warnings = look(typed);
    expect(warnings.map(({ kind }) => kind)).toEqual(['drift']);
    const { apart } = warnings[0] as DataWarningOf<'drift'>;
    expect(apart?.passes).toEqual(['Pass 2']);
    expect(apart?.readings).toEqual([...typed.keys()].filter((i) => typed[i]!.pass === 'Pass 2'));
  });

  it('are told where no drift can be what parts them', () => {
    const up = typed.map((reading): Reading => ({ ...reading, going: 'up' }));
    const [warning, ...others] = look(up);
    expect(others).toEqual([]);
    expect(warning!.kind === 'two-sets' || (warning as DataWarningOf<'pass-apart'>).apart !== undefined).toBe(true);
    expect(fixOf(warning!, up)).toMatchObject({ kind: 'new-set', passes: ['Pass 2'] });
  });

  it('are not told of drift that the first height read again proves', () => {
    const one = typed.filter(({ pass }) => pass === 'Pass 1');
    const drifted = (rows: readonly Reading[], pass: string, going: 'up' | 'down'): Reading[] => [
      ...rows.map((reading, i) => ({ ...reading, value: reading.value + (0.2 * i) / rows.length, pass, going })),
      { ...rows[0]!, value: rows[0]!.value + 0.2, pass, going, again: true },
    ];
    const readings = [...drifted(one, 'Pass 1', 'up'), ...drifted([...one].reverse(), 'Pass 2', 'down')];
    const warnings = look(readings);
    expect(warnings.map(({ kind }) => kind)).toEqual(['drift']);
    expect(fixOf(warnings[0]!, readings)).toBeUndefined();
  });

  it('are found between a set read twice and another read once', () => {
    const third = typed
      .filter(({ pass }) => pass === 'Pass 2')
      .map((reading): Reading => ({ ...reading, value: reading.value - 0.03, pass: 'Pass 3', going: 'up' }));
    const readings = [...typed, ...third];
    const fixes = look(readings).flatMap((warning) => fixOf(warning, readings) ?? []);
    expect(fixes).toMatchObject([{ kind: 'new-set', passes: ['Pass 2', 'Pass 3'] }]);
  });

  it('become two with one tap, the first in use, with nothing lost', () => {
    const car = withSetup(EMPTY_CAR, (setup) => ({ ...setup, readings: typed }));
    const fix = fixOf(look(typed)[0]!, typed);
    expect(fix).toMatchObject({ kind: 'new-set', passes: ['Pass 2'] });
    const apart = withSetApart(car, (fix as { indexes: number[] }).indexes, 'Standard parts, Pass 2');
    expect(ownSetups(apart).map(({ name, readings }) => [name, readings])).toEqual([
      ['Standard parts', typed.filter(({ pass }) => pass === 'Pass 1')],
      ['Standard parts, Pass 2', typed.filter(({ pass }) => pass === 'Pass 2')],
    ]);
    expect(setupOf(apart).setup.name).toBe('Standard parts');
    expect(
      ownSetups(apart).every(({ readings }) =>
        look(readings).every((warning) => fixOf(warning, readings)?.kind !== 'new-set'),
      ),
    ).toBe(true);
  });

  it('stay one set where no more sets are kept', () => {
    let car = withSetup(EMPTY_CAR, (setup) => ({ ...setup, readings: typed }));
    while (ownSetups(car).length < MOST_SETUPS) car = withSetApart(car, [0], 'More');
    expect(withSetApart(car, [0], 'More')).toBe(car);
  });
});

describe('clean passes of one set', () => {
  it.each(SEEDS)('are told as two in 2 % of sets at most, seed %i', (seed) => {
    expect(cleanStudy(seed, 100).told['two-sets'] ?? 0).toBeLessThanOrEqual(2);
  });

  it('are not told as two for a drift of 0.05° in each, one way or both', () => {
    const random = randomNumbers(5);
    let told = 0;
    for (let n = 0; n < 60; n++) {
      const readings = randomReadings(random, CLEAN['2 to 4 passes']);
      const travels = readings.map(({ travel }) => travel);
      const [low, high] = [Math.min(...travels), Math.max(...travels)];
      const drifted = readings.map((reading) => {
        const share = (reading.travel - low) / (high - low);
        return { ...reading, value: reading.value + 0.05 * (reading.going === 'down' ? 1 - share : share) };
      });
      if (look(drifted).some(({ kind }) => kind === 'two-sets')) told++;
    }
    expect(told).toBeLessThanOrEqual(4);
  });
});
