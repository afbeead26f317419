import { describe, expect, it } from 'vitest';
import { loweringRequestOf, sourceOfCar } from '../../../core/answers/car-request.js';
import { lowering } from '../../../core/answers/from-source.js';
import type { LoweringRequest } from '../../../core/answers/lowering.js';
import { curveFrom } from '../../../core/curve/check-curve-data.js';
import { type CarDocument, drivewayOf, EMPTY_CAR, givenByUser } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { gave } from '../../../core/document/provenance.js';
import type { DrivewayMeasurements } from '../../../core/driveway/driveway.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import type { InputError } from '../../../core/quantity/problem.js';

const corner = { kind: 'corner', corner: EXAMPLE_CORNER } as const;
const ask = (request: Omit<LoweringRequest, 'source'>, source: LoweringRequest['source'] = corner) =>
  lowering({ source, ...request });
const problemsOf = (request: Omit<LoweringRequest, 'source'>, source: LoweringRequest['source'] = corner) => {
  try {
    ask(request, source);
  } catch (error) {
    return (error as InputError).problems.map(({ code, path }) => `${path} ${code}`);
  }
  return [];
};

const exactly = (values: Record<string, number>): DrivewayMeasurements =>
  Object.fromEntries(Object.entries(values).map(([key, value]) => [key, { value, plusMinus: 0 }]));

describe('a car that is measured as it stands, already lowered', () => {
  it('gives the change from stock height that it would have given when measured before', () => {
    const drop = 25;
    const stock = {
      armLength: 338,
      pivotHeight: 193,
      ballHeight: 176,
      wheelCentreHeight: 302,
      topHeight: 822,
      damperLean: 8,
      ballOffset: 20,
      hubOffset: 44,
      track: 1476,
      // In front view alone: of a leaned strut what is assumed of the rod depends on where it stands.
      caster: 0,
      bumpSteer: 0,
    };
    const before = ask({ drop }, { kind: 'driveway', driveway: exactly(stock) });
    const { motion } = before;
    const at = motion!.travel.indexOf(drop);
    const point = (name: 'ball' | 'low' | 'upper' | 'wheelCentre') => [...motion![name].slice(3 * at, 3 * at + 3)];
    const [ball, low, top, wheel] = [point('ball'), point('low'), point('upper'), point('wheelCentre')];
    // The floor has come up by the drop; what a tape and a gauge read on the lowered car.
    const lowered = {
      ...stock,
      pivotHeight: stock.pivotHeight - drop,
      topHeight: stock.topHeight - drop,
      ballHeight: ball[2]! - drop,
      wheelCentreHeight: wheel[2]! - drop,
      damperLean: (Math.atan2(low[1]! - top[1]!, top[2]! - low[2]!) * 180) / Math.PI,
      hubOffset: wheel[1]! - ball[1]!,
    };
    const after = ask({ drop, measuredAt: drop }, { kind: 'driveway', driveway: exactly(lowered) });
    expect(after.change.value).toBeCloseTo(before.change.value, 8);
    expect(after.rateBefore.value).toBeCloseTo(before.rateBefore.value, 8);
    expect(after.reversal!.travel.value).toBeCloseTo(before.reversal!.travel.value, 4);
    // The drawing stands at the same heights.
    expect(after.motion!.travel.some((travel) => travel === drop)).toBe(true);
  });

  it('is asked about other drops from there', () => {
    const here = ask({ drop: 25, measuredAt: 25, bumpTravel: 40 });
    const less = ask({ drop: 15, measuredAt: 25, bumpTravel: 40 });
    expect(less.bumpLeft).toBe(50);
    // The same curve: only the place on it is another.
    expect(curveFrom(less.curve).data).toEqual(curveFrom(here.curve).data);
    expect(less.change.value).toBeGreaterThan(here.change.value);
  });

  it('has changes from stock height alone where nobody said its camber', () => {
    const { camber: _, ...driveway } = EXAMPLE_DRIVEWAY;
    const answer = ask({ drop: 20, measuredAt: 25 }, { kind: 'driveway', driveway });
    expect(curveFrom(answer.curve).value(0)).toBeCloseTo(0, 12);
    expect(answer.camberAfter).toBeCloseTo(answer.change.value, 12);
  });

  it('has its bump travel left as it was measured', () => {
    expect(ask({ drop: 25, bumpTravel: 40, measuredAt: 25 }).bumpLeft).toBe(40);
    expect(ask({ drop: 25, bumpTravel: 40 }).bumpLeft).toBe(15);
  });

  it('refuses a height out of reason', () => {
    expect(problemsOf({ drop: 25, measuredAt: 400 })).toEqual(['measuredAt out-of-range']);
  });
});

describe('how it was lowered', () => {
  it('by springs takes the drop off the bump travel; by shorter dampers the stroke stays', () => {
    expect(ask({ drop: 30, bumpTravel: 62 }).bumpLeft).toBe(32);
    expect(ask({ drop: 30, bumpTravel: 62, lowered: 'springs' }).bumpLeft).toBe(32);
    expect(ask({ drop: 30, bumpTravel: 62, lowered: 'dampers' }).bumpLeft).toBe(62);
  });
});

describe('a gap to the bump stop along the rod', () => {
  it('is followed through the damper’s motion to wheel travel', () => {
    for (const gap of [10, 30, 55]) {
      const { bumpLeft } = ask({ drop: 0, stopGap: gap });
      const { damperLength } = sweepTravel(buildLinkage(EXAMPLE_CORNER), [0, bumpLeft!]);
      expect(damperLength[0]! - damperLength[1]!).toBeCloseTo(gap, 2);
      // One division by the motion ratio at stock height is not the same.
      expect(bumpLeft).toBeGreaterThan(gap);
    }
  });
  it('beyond what is known, or without a damper, is refused', () => {
    expect(problemsOf({ drop: 0, stopGap: 300 })).toEqual(['stopGap outside-domain']);
    const source = { kind: 'coefficients', coefficients: [0, -0.01], domain: [-50, 80] } as LoweringRequest['source'];
    expect(problemsOf({ drop: 0, stopGap: 30 }, source)).toEqual(['stopGap wrong-shape']);
    expect(problemsOf({ drop: 0, stopGap: -3 })).toEqual(['stopGap out-of-range']);
  });
});

describe('static camber from a sheet that was read with people aboard', () => {
  it('holds at the height where it was read; the change does not depend on it', () => {
    const empty = ask({ drop: 30 });
    const loaded = ask({ drop: 30, camberReadLower: 20 });
    expect(curveFrom(loaded.curve).value(20)).toBeCloseTo(EXAMPLE_CORNER.camber, 9);
    expect(loaded.change.value).toBeCloseTo(empty.change.value, 12);
    expect(loaded.camberAfter).toBeGreaterThan(empty.camberAfter);
  });
});

describe('the roll centre', () => {
  it('is that of the solver at both heights, from hard points and from the driveway', () => {
    for (const source of [corner, { kind: 'driveway', driveway: EXAMPLE_DRIVEWAY }] as const) {
      const { rollCentre, corner: solved } = ask({ drop: 31 }, source);
      const { rollCentreHeight } = sweepTravel(buildLinkage(solved!), [0, 31]);
      expect(rollCentre!.before).toBeCloseTo(rollCentreHeight[0]!, 6);
      expect(rollCentre!.after).toBeCloseTo(rollCentreHeight[1]!, 1);
    }
  });
  it('asks for the track, which nothing of camber does', () => {
    const wider = { ...EXAMPLE_DRIVEWAY, track: { value: 1600, plusMinus: 3 } };
    const [a, b] = [EXAMPLE_DRIVEWAY, wider].map((driveway) => ask({ drop: 30 }, { kind: 'driveway', driveway }));
    expect(b!.rollCentre!.after).not.toBeCloseTo(a!.rollCentre!.after, 1);
    expect(b!.change.value).toBeCloseTo(a!.change.value, 9);
  });
});

describe('the other side of the axle', () => {
  it('sits elsewhere on the same curve, with its own camber', () => {
    const { camberAfter, other } = ask({ drop: 30, other: { drop: 24, camber: -0.9 } });
    // The mirrored corner solved by itself, with that camber.
    const mirrored = lowering({ source: { kind: 'corner', corner: { ...EXAMPLE_CORNER, camber: -0.9 } }, drop: 24 });
    expect(other!.camberAfter).toBeCloseTo(mirrored.camberAfter, 3);
    expect(other!.difference).toBeCloseTo(camberAfter - other!.camberAfter, 12);
  });
  it('has the camber that was read, on a car that was measured lowered', () => {
    expect(ask({ drop: 30, measuredAt: 30, other: { drop: 24, camber: -0.9 } }).other!.camberAfter).toBe(-0.9);
  });
  it('was read with as many people aboard as this side', () => {
    const { camberAfter, other } = ask({
      drop: 30,
      camberReadLower: 20,
      other: { drop: 30, camber: EXAMPLE_CORNER.camber },
    });
    expect(other!.camberAfter).toBeCloseTo(camberAfter, 9);
  });
  it('is refused outside what is known', () => {
    expect(problemsOf({ drop: 30, other: { drop: 140, camber: -1 } })).toEqual(['other.drop outside-domain']);
  });
});

describe('the question that a car document asks', () => {
  const own = (change: Partial<CarDocument>): CarDocument => ({ ...EMPTY_CAR, ...change });

  it('is of the driveway example until somebody gives something', () => {
    expect(sourceOfCar(EMPTY_CAR)).toEqual({ kind: 'driveway', driveway: EXAMPLE_DRIVEWAY });
    expect(sourceOfCar(own({ by: 'points' }))).toMatchObject({ kind: 'corner' });
  });

  it('is of the user’s own measurements alone as soon as there is one', () => {
    const armLength = { value: 352, plusMinus: 3 };
    const car = givenByUser(EMPTY_CAR, (given) => ({ ...given, measures: { armLength } }));
    expect(drivewayOf(car)).toEqual({ armLength });
    // The track alone makes no car of one's own: nothing of camber asks for it.
    const track = { value: 1500, plusMinus: 3 };
    const wider = givenByUser(EMPTY_CAR, (given) => ({ ...given, measures: { track } }));
    expect(drivewayOf(wider)).toEqual({ ...EXAMPLE_DRIVEWAY, track });
    // A static camber alone stands over the example's.
    const camber = givenByUser(EMPTY_CAR, (given) => ({ ...given, camber: -1.2 }));
    expect(drivewayOf(camber)).toEqual({ ...EXAMPLE_DRIVEWAY, camber: { value: -1.2, plusMinus: 0.1 } });
  });

  it('keeps what a page had measured, for what a user takes back', () => {
    const armLength = { value: 352, plusMinus: 3 };
    const page = own({ given: { points: {}, measures: { armLength } }, provenance: { corner: { by: 'page' } } });
    const begun = givenByUser(page, (given) => ({ ...given, camber: -1 }));
    expect(gave(begun, 'corner', 'page').given).toEqual(page.given);
    expect(drivewayOf(begun)).toMatchObject({ armLength, camber: { value: -1 } });
  });

  it('carries how it stands, how it was lowered and how its camber was read', () => {
    const car = own({ drop: 25, measuredAt: 25, lowered: 'dampers', stopGap: 30, camberReadLower: 8 });
    expect(loweringRequestOf(car)).toMatchObject({ measuredAt: 25, lowered: 'dampers', stopGap: 30 });
    // A load says nothing while the camber is the example's.
    expect(loweringRequestOf(car)).not.toHaveProperty('camberReadLower');
    expect(loweringRequestOf({ ...car, given: { points: {}, camber: -1 } })).toMatchObject({ camberReadLower: 8 });
  });
});
