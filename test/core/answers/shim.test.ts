import { describe, expect, it } from 'vitest';
import { shimFromToe } from '../../../core/answers/shim.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { type StrutCorner, withHardPoint } from '../../../core/linkage/corner.js';
import { toeReset } from '../../../core/linkage/parts/targets.js';
import { tieRodEndRaised } from '../../../core/linkage/parts/tie-rod.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { independentStrutSweep } from '../../reference/independent-strut.js';
import { referenceCorner } from '../linkage/reference-corner.js';
import { problemsOf } from '../problems-of.js';
import { missed, together } from '../study-limits.js';
import { exactAmount, shimClaims, shimStudy } from './shim-study.js';

const REQUEST = {
  rate: { value: -0.008, standardUncertainty: 0.0004 },
  rodLength: { value: 380, plusMinus: 3 },
  lever: { value: 125, plusMinus: 5 },
  rack: 'behind',
} as const;
/** NIST/SEMATECH e-Handbook: 97.5 % quantiles of the normal law (1.3.6.7.1) and of Student's t for 10 degrees of freedom (1.3.6.7.2). */
const [NORMAL, T_10] = [1.959964, 2.2281389];

describe('the shim from readings of toe alone', () => {
  it('is slope × rod length × lever ÷ factor, with the parts of its doubt as the GUM adds them', () => {
    const { amount, plusMinus, contributions } = shimFromToe(REQUEST);
    // −0.008° = −1.39626e-4 rad a mm; × 380 mm × 125 mm = −6.63225 mm.
    expect(amount * 0.9).toBeCloseTo(-6.63225, 5);
    const shares = { rate: 0.0004 / 0.008, rodLength: 3 / 380 / NORMAL, lever: 5 / 125 / NORMAL, rule: 0.058 / 0.9 };
    const u = Math.hypot(...Object.values(shares));
    expect(plusMinus / Math.abs(amount)).toBeCloseTo(NORMAL * u, 6);
    for (const [id, share] of Object.entries(shares)) {
      expect(contributions.find((one) => one.id === id)!.share).toBeCloseTo((share / u) ** 2, 6);
    }
    expect(contributions[0]!.id).toBe('rule');
  });

  it('widens by t where the slope rests on few readings', () => {
    const exact = { ...REQUEST, rodLength: { value: 380, plusMinus: 0 }, lever: { value: 125, plusMinus: 0 } };
    const wide = { value: 0.001, standardUncertainty: 0.05 };
    const ratio =
      shimFromToe({ ...exact, rate: { ...wide, dof: 10 } }).plusMinus / shimFromToe({ ...exact, rate: wide }).plusMinus;
    expect(ratio).toBeCloseTo(T_10 / NORMAL, 4);
  });

  it('is nothing where the wheel does not steer itself, within what the slope is known to', () => {
    const { amount, plusMinus } = shimFromToe({ ...REQUEST, rate: { value: 0, standardUncertainty: 0.0004 } });
    expect(Object.is(amount, 0)).toBe(true);
    expect(plusMinus).toBeCloseTo((NORMAL * ((0.0004 * Math.PI) / 180) * 380 * 125) / 0.9, 6);
  });

  /*
   * By a general Newton solver that shares nothing with the core (test/reference/independent-strut.ts): the inner end put too high or too
   * low makes toe move in bump; the amount that is told makes the most of it go. Raised and lowered, rack behind and ahead.
   */
  it.each([
    ['behind', 12],
    ['behind', -12],
    ['ahead', 12],
    ['ahead', -12],
  ] as const)('has the sign that flattens the curve: rack %s, inner end off by %d mm', (rack, off) => {
    const behind = referenceCorner as StrutCorner;
    const { tieRod, lowerArm } = behind;
    const turned = ([x, y, z]: readonly [number, number, number]) => [2 * lowerArm.ball[0] - x, y, z] as const;
    const ahead = withHardPoint(withHardPoint(behind, 'tieRod.inner', [...turned(tieRod.inner)]), 'tieRod.outer', [
      ...turned(tieRod.outer),
    ]);
    const flat = rack === 'behind' ? behind : ahead;
    const [x, y, z] = flat.tieRod.inner;
    const corner = withHardPoint(flat, 'tieRod.inner', [x, y, z + off]) as StrutCorner;
    const slopeOf = (of: StrutCorner) => {
      const [low, high] = independentStrutSweep(of as never, [-1, 1]);
      return (high!.toe - low!.toe) / 2;
    };
    const { outer, inner } = corner.tieRod;
    const { amount } = shimFromToe({
      ...REQUEST,
      rack,
      rate: { value: slopeOf(corner), standardUncertainty: 0 },
      rodLength: { value: Math.hypot(...[0, 1, 2].map((i) => outer[i]! - inner[i]!)), plusMinus: 0 },
      lever: { value: Math.abs(outer[0] - lowerArm.ball[0]), plusMinus: 0 },
    });
    // As built with the outer end there, the rod as long as it must be: what toe set again comes to.
    const shimmed = withHardPoint(corner, 'tieRod.outer', [outer[0], outer[1], outer[2] + amount]) as StrutCorner;
    expect(Math.abs(slopeOf(shimmed))).toBeLessThan(0.35 * Math.abs(slopeOf(corner)));
  });
});

describe('over random struts', { timeout: 120_000 }, () => {
  /** The full study runs in the bench: `node test/bench/run.mjs shim`. */
  const CARS = 220;
  const SEEDS = [1, 2, 3];
  const studies = SEEDS.map((seed) => shimStudy({ seed, cars: CARS }));

  it('the band holds the exact amount of 93 to 97 in 100, each side of the rack by its own factor', () => {
    const claims = studies.flatMap((study, i) => shimClaims(`seed ${SEEDS[i]}`, study));
    expect(missed([...claims, together('all', claims)], true)).toEqual([]);
  });

  it('the sign is always right, and the rule alone is off by 15 % at most in 95 of 100', () => {
    for (const { sign, ruleError } of studies) {
      expect(sign).toBe(1);
      expect(ruleError).toBeLessThan(0.17);
    }
  });

  it('what is called exact there is the root that bisection finds with toe set again by the part that sets it', () => {
    const bare = buildLinkage({ ...(referenceCorner as StrutCorner), toe: 0.1 });
    const rate = (mm: number) => sweepTravel(toeReset(tieRodEndRaised({ mm })(bare), 0.1), [0]).toeRate[0]!;
    let [low, high] = [-30, 30];
    expect(rate(low) * rate(high)).toBeLessThan(0);
    for (let i = 0; i < 40; i++) {
      const middle = (low + high) / 2;
      if (rate(middle) * rate(low) > 0) low = middle;
      else high = middle;
    }
    expect(exactAmount(bare, 0)).toBeCloseTo(low, 4);
  });
});

describe('what is wrong with the figures is told, all at once', () => {
  it.each([
    [{ rate: { value: Number.NaN, standardUncertainty: -1 } }, ['rate.value', 'rate.standardUncertainty']],
    [{ rate: undefined }, ['rate.value', 'rate.standardUncertainty']],
    [{ rate: { value: 0.01, standardUncertainty: 0, dof: 0 } }, ['rate.dof']],
    [
      { rodLength: { value: 38, plusMinus: 3 }, lever: { value: 5, plusMinus: 200 } },
      ['rodLength.value', 'lever.value', 'lever.plusMinus'],
    ],
    [{ rodLength: { value: '380' } }, ['rodLength.value', 'rodLength.plusMinus']],
    [{ rack: 'left' }, ['rack']],
    [{ rack: undefined }, ['rack']],
  ])('%j', (change, paths) => {
    expect(problemsOf(() => shimFromToe({ ...REQUEST, ...change } as never)).map(({ path }) => path)).toEqual(paths);
  });

  it('nothing at all too, and a wrong side with the sides there are', () => {
    expect(problemsOf(() => shimFromToe(undefined as never)).length).toBeGreaterThan(5);
    expect(problemsOf(() => shimFromToe({ ...REQUEST, rack: 'left' as never }))).toEqual([
      { code: 'unknown-name', path: 'rack', value: 'left', names: ['behind', 'ahead'] },
    ]);
  });
});
