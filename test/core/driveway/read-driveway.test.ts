import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lowering } from '../../../core/answers/from-source.js';
import type { LoweringAnswer } from '../../../core/answers/lowering.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { DRIVEWAY_FIELDS, DRIVEWAY_KEYS, isAngle } from '../../../core/driveway/driveway.js';
import { DRIVEWAY_WHY } from '../../../core/driveway/driveway-why.js';
import { readDriveway } from '../../../core/driveway/read-driveway.js';
import { InputError, type Problem } from '../../../core/quantity/problem.js';
import { randomDriveway } from './random-driveway.js';

function problemsOf(data: unknown): Problem[] {
  try {
    readDriveway(data);
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    return (error as InputError).problems;
  }
  throw new Error('Was accepted.');
}
const only = (data: unknown): Problem => {
  const problems = problemsOf(data);
  expect(problems).toHaveLength(1);
  return problems[0]!;
};
const m = (value: unknown, plusMinus: unknown = 3) => ({ value, plusMinus });
/** The example with some measurements put in the place of its own. */
const but = (others: object) => ({ ...EXAMPLE_DRIVEWAY, ...others });

describe('measurements', () => {
  it('are taken as given; only what is missing is assumed', () => {
    const { taken, camber, answersToe } = readDriveway(EXAMPLE_DRIVEWAY);
    expect(taken.armLength).toEqual({ ...EXAMPLE_DRIVEWAY.armLength, measured: true });
    expect(camber).toEqual(EXAMPLE_DRIVEWAY.camber);
    expect(answersToe).toBe(false);
    const assumed = Object.entries(taken).filter(([, { measured }]) => !measured);
    expect(assumed.map(([key]) => key)).toEqual(['ballOffset', 'hubOffset', 'caster', 'bumpSteer']);
  });

  it('may be left out altogether: everything is then assumed, each with its reason', () => {
    const { taken, ...rest } = readDriveway({});
    expect(rest).toEqual({ answersToe: false });
    for (const [key, { measured, plusMinus }] of Object.entries(taken)) {
      expect(measured).toBe(false);
      expect(plusMinus).toBeGreaterThan(0);
      expect(DRIVEWAY_WHY[key as keyof typeof taken]).not.toBe('');
    }
  });

  it('pass through JSON, which leaves out what is undefined', () => {
    expect(readDriveway(JSON.parse(JSON.stringify(EXAMPLE_DRIVEWAY)))).toEqual(readDriveway(EXAMPLE_DRIVEWAY));
    expect(readDriveway(but({ track: undefined })).taken.track.measured).toBe(false);
  });

  it('put a height that is missing above one that is there', () => {
    const heights = (data: object) => {
      const { pivotHeight, ballHeight, topHeight, wheelCentreHeight } = readDriveway(data).taken;
      return [wheelCentreHeight, ballHeight, pivotHeight, topHeight].map(({ value }) => value);
    };
    expect(heights({})).toEqual([310, 185, 195, 840]);
    expect(heights({ wheelCentreHeight: m(330) })).toEqual([330, 205, 215, 860]);
    expect(heights({ ballHeight: m(150) })).toEqual([310, 150, 160, 840]);
    expect(heights({ pivotHeight: m(230) })).toEqual([310, 220, 230, 840]);
  });

  it('use kingpin inclination only where no lean was measured', () => {
    expect(readDriveway({ kingpin: m(11, 0.5) }).kingpin).toEqual(m(11, 0.5));
    expect(readDriveway(but({ kingpin: m(11, 0.5) }))).not.toHaveProperty('kingpin');
  });

  it('are copied: what happens to the data later does not reach them', () => {
    const data = { ...EXAMPLE_DRIVEWAY, armLength: { value: 340, plusMinus: 3 } };
    const { taken } = readDriveway(data);
    data.armLength!.value = 0;
    expect(taken.armLength.value).toBe(340);
  });
});

describe('what cannot be', () => {
  it('is told all at once', () => {
    const found = problemsOf({
      armLength: m(Number.NaN),
      pivotHeight: { value: 190 },
      ballHeight: m('low'),
      topHeight: m(820, -1),
      damperLean: m(83, 0.5),
      wheelCentreHeight: m(12),
      camper: m(1),
    });
    expect(found.map(({ code, path }) => `${path} ${code}`).sort()).toEqual([
      'armLength.value not-finite',
      'ballHeight.value not-a-number',
      'camper wrong-shape',
      'damperLean.value out-of-range',
      'pivotHeight.plusMinus missing',
      'topHeight.plusMinus out-of-range',
      'wheelCentreHeight.value looks-like-inches',
    ]);
  });

  it.each([null, undefined, 7, 'driveway', []])('%j is no set of measurements', (data) => {
    expect(only(data).path).toBe('driveway');
  });

  it('a lean read from the horizontal, or towards the wrong side by far', () => {
    expect(only(but({ damperLean: m(82, 0.5) }))).toMatchObject({ path: 'damperLean.value', value: 82, limit: 35 });
    expect(only(but({ damperLean: m(-20, 0.5) }))).toMatchObject({ code: 'out-of-range', limit: -10 });
  });

  it('lengths in inches, each by itself', () => {
    for (const key of ['armLength', 'pivotHeight', 'ballHeight', 'wheelCentreHeight', 'topHeight', 'track'] as const) {
      const inches = EXAMPLE_DRIVEWAY[key]!.value / 25.4;
      expect(only(but({ [key]: m(inches) }))).toMatchObject({ code: 'looks-like-inches', path: `${key}.value` });
    }
    expect(only({ armLength: m(0) }).code).toBe('out-of-range');
  });

  it('an arm shorter than the height difference of its ends', () => {
    expect(only(but({ armLength: m(160), pivotHeight: m(400) }))).toEqual({
      code: 'cannot-close',
      path: 'armLength.value',
      value: 160,
      other: 'pivotHeight',
    });
    // Against an assumed ball joint only the pivot can be to blame.
    expect(only(but({ armLength: undefined, ballHeight: m(480), pivotHeight: m(45) }))).toMatchObject({
      path: 'pivotHeight.value',
      other: 'ballHeight',
    });
  });

  it('a top mount below the ball joint, or hardly above it', () => {
    const low = but({ ballHeight: m(450), pivotHeight: m(450), topHeight: m(400) });
    expect(only(low)).toEqual({ code: 'ends-swapped', path: 'topHeight.value', value: 400, other: 'ballHeight' });
    expect(only({ ...low, topHeight: m(500) }).code).toBe('no-direction');
  });

  it('data that throws when it is read', () => {
    const trap = {
      get armLength() {
        throw new Error('No.');
      },
    };
    expect(only(trap)).toEqual({ code: 'wrong-shape', path: 'driveway', value: undefined });
  });
});

describe('arbitrary measurements', () => {
  it('are refused with problems, or answered with finite numbers', () => {
    let answered = 0;
    fc.assert(
      fc.property(randomDriveway, (driveway) => {
        let answer: LoweringAnswer;
        try {
          answer = lowering({ source: { kind: 'driveway', driveway }, drop: 1 });
        } catch (error) {
          expect(error).toBeInstanceOf(InputError);
          return;
        }
        answered += 1;
        const { change, curve } = answer;
        expect(change.value + change.plusMinus!).toBeTypeOf('number');
        expect(Number.isFinite(change.value + change.plusMinus!)).toBe(true);
        expect(curve.kind === 'sampled' && curve.parts.every(Number.isFinite)).toBe(true);
      }),
      { seed: 61, numRuns: 200, endOnFailure: true },
    );
    expect(answered).toBeGreaterThan(60);
  });

  it('of any shape lead to no other error', () => {
    fc.assert(
      fc.property(fc.constantFrom(...DRIVEWAY_KEYS), fc.anything(), fc.anything(), (key, value, plusMinus) => {
        for (const data of [value, { [key]: value }, { [key]: { value, plusMinus } }]) {
          try {
            readDriveway(data);
          } catch (error) {
            expect(error).toBeInstanceOf(InputError);
          }
        }
      }),
      { seed: 62, numRuns: 300, endOnFailure: true },
    );
  });
});

describe('the fields', () => {
  it('have limits in their order, and assumptions within them', () => {
    const { taken } = readDriveway({});
    for (const key of DRIVEWAY_KEYS) {
      const { least, most } = DRIVEWAY_FIELDS[key];
      expect(least).toBeLessThan(most);
      const value = { ...taken, kingpin: { value: 10 }, camber: { value: 0 } }[key].value;
      expect(value).toBeGreaterThan(least);
      expect(value).toBeLessThan(most);
    }
    expect(DRIVEWAY_KEYS.filter(isAngle)).toEqual(['damperLean', 'caster', 'bumpSteer', 'kingpin', 'camber']);
  });
});
