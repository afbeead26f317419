import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { type Query, unusualOf } from '../../../core/document/unusual.js';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import {
  type Corner,
  type HardPointKey,
  hardPoint,
  hardPointKeys,
  type StrutCorner,
  type Vector3,
  withHardPoint,
} from '../../../core/linkage/corner.js';
import { randomCorner, seeded } from '../linkage/random-corner.js';
import { randomWishbone } from '../linkage/random-wishbone.js';
import { referenceCorner } from '../linkage/reference-corner.js';
import { wishboneCorner } from '../linkage/wishbone-corner.js';

const told = (corner: Corner) => unusualOf(corner).map(({ code, path }) => `${code} ${path}`);

/** The corner with one coordinate typed otherwise. */
function typed<C extends Corner>(corner: C, key: HardPointKey, axis: 'x' | 'y' | 'z', value: number): C {
  const point = [...hardPoint(corner as Corner, key)!] as [number, number, number];
  point['xyz'.indexOf(axis)] = value;
  return withHardPoint(corner, key, point) as C;
}

/** Invented cars of very different kinds. Proportions: common practice, no source. */
const SENSIBLE: [string, Corner][] = [
  ['the example', EXAMPLE_CORNER],
  ['the reference strut', referenceCorner],
  ['the reference double wishbone', wishboneCorner],
  [
    'a tiny old car on 10-inch wheels',
    {
      ...EXAMPLE_CORNER,
      wheelCentre: [0, 600, 238],
      loadedRadius: 236,
      lowerArm: { front: [30, 330, 175], rear: [-180, 330, 180], ball: [0, 560, 160] },
      strut: { top: [-30, 480, 720], low: [-15, 520, 400] },
      tieRod: { inner: [-110, 320, 210], outer: [-105, 530, 205] },
    },
  ],
  [
    'a raised car for rough tracks, arms hanging',
    {
      ...EXAMPLE_CORNER,
      wheelCentre: [0, 820, 385],
      loadedRadius: 380,
      lowerArm: { front: [30, 420, 340], rear: [-300, 425, 345], ball: [0, 770, 240] },
      strut: { top: [-50, 620, 1010], low: [-25, 680, 620] },
      tieRod: { inner: [-140, 400, 400], outer: [-140, 730, 310] },
    },
  ],
  [
    'a lowered one on wide wheels, arms rising to the wheel, much camber',
    {
      ...EXAMPLE_CORNER,
      wheelCentre: [5, 780, 300],
      loadedRadius: 298,
      camber: -3.5,
      lowerArm: { front: [24, 356, 150], rear: [-268, 362, 155], ball: [8, 712, 190] },
      strut: { top: [-60, 545, 790], low: [-25, 625, 470] },
      tieRod: { inner: [-132, 350, 215], outer: [-128, 670, 255] },
    },
  ],
  [
    'a club racer with long arms and its rack in front of the wheel',
    {
      ...wishboneCorner,
      wheelCentre: [0, 720, 270],
      loadedRadius: 268,
      lowerArm: { front: [190, 200, 130], rear: [-190, 205, 135], ball: [8, 680, 130] },
      upperArm: { front: [140, 290, 340], rear: [-160, 295, 330], ball: [-20, 655, 390] },
      tieRod: { inner: [120, 215, 170], outer: [125, 660, 172] },
    },
  ],
];

describe('a sensible car is not asked about', () => {
  it.each(SENSIBLE)('%s', (_, corner) => {
    expect(() => buildLinkage(corner)).not.toThrow();
    expect(unusualOf(corner)).toEqual([]);
  });
  it('nor are random double wishbones of plausible proportions', () => {
    fc.assert(
      fc.property(randomWishbone, (corner) => {
        const { wheelCentre, lowerArm, upperArm } = corner;
        // The two ball joints vary independently: a steering axis that leans outboard is no sensible car's.
        fc.pre(upperArm.ball[1] < lowerArm.ball[1]);
        expect(told({ ...corner, loadedRadius: wheelCentre[2] })).toEqual([]);
      }),
      seeded(61, 500),
    );
  });
  it('a damper’s ends and a second arm are judged only where there are some', () => {
    const damper = { top: [0, 500, 700], low: [0, 640, 200] } as const;
    expect(unusualOf({ ...wishboneCorner, damper: { ...damper } })).toEqual([]);
  });
});

describe('a slip of the keys is asked about at the point that has it, and nowhere else', () => {
  const car = EXAMPLE_CORNER;
  const bone = wishboneCorner;
  it.each<[string, Corner, string]>([
    ['ball joint 87 high for 176', typed(car, 'lowerArm.ball', 'z', 87), 'height lowerArm.ball'],
    ['ball joint above the wheel centre', typed(car, 'lowerArm.ball', 'z', 320), 'height lowerArm.ball'],
    ['front pivot 912 for 192', typed(car, 'lowerArm.front', 'z', 912), 'height lowerArm.front'],
    ['rear pivot 20 high for 200', typed(car, 'lowerArm.rear', 'z', 20), 'height lowerArm.rear'],
    ['front pivot too high to notice by itself', typed(car, 'lowerArm.front', 'z', 380), 'slope lowerArm.front'],
    ['front pivot near the ball joint', typed(car, 'lowerArm.front', 'y', 653), 'length lowerArm.front'],
    ['front pivot beyond the centreline', typed(car, 'lowerArm.front', 'y', -356), 'length lowerArm.front'],
    ['top mount lower than the wheel centre', typed(car, 'strut.top', 'z', 282), 'height strut.top'],
    ['top mount 754 out for 574', typed(car, 'strut.top', 'y', 754), 'damper-lean strut.top'],
    ['top mount 275 out for 574', typed(car, 'strut.top', 'y', 275), 'damper-lean strut.top'],
    ['top mount 380 back for 38', typed(car, 'strut.top', 'x', -380), 'caster strut.top'],
    ['top mount with the sign forgotten', typed(car, 'strut.top', 'x', 380), 'caster strut.top'],
    ['damper’s low point 865 out for 625', typed(car, 'strut.low', 'y', 865), 'damper-lean strut.low'],
    ['ball joint 400 forward', typed(car, 'lowerArm.ball', 'x', 400), 'caster lowerArm.ball'],
    ['ball joint 496 out for 694', typed(car, 'lowerArm.ball', 'y', 496), 'kingpin lowerArm.ball'],
    ['tie rod pointing up to the wheel', typed(car, 'tieRod.outer', 'z', 522), 'slope tieRod.outer'],
    ['its inner end low', typed(car, 'tieRod.inner', 'z', 26), 'slope tieRod.inner'],
    ['its inner end near the outer one', typed(car, 'tieRod.inner', 'y', 630), 'length tieRod.inner'],
    ['a track of four metres', typed(car, 'wheelCentre', 'y', 2000), 'track wheelCentre'],
    ['wheel centre 873 out for 738', typed(car, 'wheelCentre', 'y', 873), 'scrub-radius wheelCentre'],
    ['wheel centre 203 high for 302', typed(car, 'wheelCentre', 'z', 203), 'height wheelCentre'],
    ['wheel centre 230 high for 302', typed(car, 'wheelCentre', 'z', 230), 'radius-differs wheelCentre'],
    ['loaded radius 203 for 302', { ...car, loadedRadius: 203 }, 'radius-differs loadedRadius'],
    ['upper joint below the wheel centre', typed(bone, 'upperArm.ball', 'z', 300), 'height upperArm.ball'],
    ['upper joint far inboard', typed(bone, 'upperArm.ball', 'y', 540), 'length upperArm.ball'],
    [
      'upper joint far inboard, rear pivot further in than the front one',
      typed(typed(bone, 'upperArm.rear', 'y', 405), 'upperArm.ball', 'y', 530),
      'length upperArm.ball',
    ],
    ['upper pivots’ front high', typed(bone, 'upperArm.front', 'z', 840), 'slope upperArm.front'],
  ])('%s', (_, corner, expected) => {
    expect(told(corner)).toEqual([expected]);
  });

  it('an arm that slopes 35° because both pivots are off, at its outer end', () => {
    const corner = typed(typed(car, 'lowerArm.front', 'z', 390), 'lowerArm.rear', 'z', 390);
    expect(told(corner)).toEqual(['slope lowerArm.ball']);
  });
  it('two slips at two points, the one that puts a point out of place first', () => {
    const corner = typed(typed(car, 'tieRod.outer', 'z', 522), 'lowerArm.ball', 'z', 87);
    expect(told(corner)).toEqual(['height lowerArm.ball', 'slope tieRod.outer']);
  });

  it('swapping two digits in the ball joint’s height that moves it more than 100 mm is always asked about, and only that', () => {
    // Plausible car: ball joint at 45 to 70 % of a wheel centre's height of 260 to 360 mm. Common practice, no source.
    fc.assert(
      fc.property(
        fc.integer({ min: 260, max: 360 }),
        fc.integer({ min: 0, max: 100 }),
        fc.constantFrom([0, 1], [0, 2], [1, 2]),
        (radius, share, [i, j]) => {
          const height = Math.round(radius * (0.45 + share / 400));
          const raised = {
            ...raisedBy(referenceCorner, radius - referenceCorner.wheelCentre[2]),
            loadedRadius: radius,
          };
          const right = typed(raised, 'lowerArm.ball', 'z', height);
          expect(told(right)).toEqual([]);
          const digits = [...String(height)];
          [digits[i!], digits[j!]] = [digits[j!]!, digits[i!]!];
          const slip = Number(digits.join(''));
          fc.pre(Math.abs(slip - height) > 100);
          expect(told(typed(right, 'lowerArm.ball', 'z', slip))).toEqual(['height lowerArm.ball']);
        },
      ),
      seeded(62, 500),
    );
  });
});

/** Every point that much higher. */
function raisedBy(corner: StrutCorner, mm: number): StrutCorner {
  return hardPointKeys(corner).reduce<StrutCorner>(
    (all, key) => typed(all, key, 'z', hardPoint(all as Corner, key)![2] + mm),
    corner,
  );
}

describe('what is asked', () => {
  const one = (corner: Corner, code: Query['code']) => unusualOf(corner).find((query) => query.code === code)!;

  /* Points chosen so that the figure can be read off a sheet of squared paper. */
  it('is the figure itself, in mm or degrees, with the end of the usual range it lies beyond', () => {
    const strut = (ball: Vector3, top: Vector3, low: Vector3): StrutCorner => ({
      ...referenceCorner,
      camber: 0,
      lowerArm: { ...referenceCorner.lowerArm, ball },
      strut: { top, low },
    });
    const leaning = strut([0, 700, 185], [0, 300, 785], [0, 600, 485]);
    expect(one(leaning, 'damper-lean')).toMatchObject({ quantity: 'linkAngle', limit: 30 });
    expect(one(leaning, 'damper-lean').value).toBeCloseTo(45, 9);
    const swept = strut([0, 700, 200], [-500, 600, 700], [-250, 620, 400]);
    expect(one(swept, 'caster').value).toBeCloseTo(45, 9);
    expect(one(swept, 'caster').limit).toBe(20);
    const reversed = strut([0, 600, 200], [0, 700, 800], [0, 702, 400]);
    expect(one(reversed, 'kingpin').value).toBeCloseTo((-Math.atan2(100, 600) * 180) / Math.PI, 9);
    expect(one(reversed, 'kingpin').limit).toBe(-2);
    // The axis rises 100 mm inboard over 600 up, so it meets the ground 30 mm outboard of a joint 180 mm up.
    const offset = { ...strut([0, 570, 180], [0, 470, 780], [0, 500, 480]), wheelCentre: [0, 745, 310] as const };
    expect(one(offset, 'scrub-radius')).toMatchObject({ quantity: 'coordinate', limit: 120 });
    expect(one(offset, 'scrub-radius').value).toBeCloseTo(745 - 600, 9);
    // 3° of negative camber put the tyre's lowest point 310 mm × sin 3° further out.
    const cambered = one({ ...offset, camber: -3 }, 'scrub-radius').value;
    expect(cambered).toBeCloseTo(145 + 310 * Math.sin((3 * Math.PI) / 180), 9);
    const bent = typed(EXAMPLE_CORNER, 'tieRod.outer', 'z', 256 + 324);
    expect(one(bent, 'slope').value).toBeCloseTo(45, 9);
    expect(one(typed(EXAMPLE_CORNER, 'wheelCentre', 'y', 2000), 'track')).toEqual({
      code: 'track',
      path: 'wheelCentre',
      value: 4000,
      quantity: 'coordinate',
      limit: 2100,
    });
    expect(one(typed(EXAMPLE_CORNER, 'lowerArm.ball', 'z', 87), 'height').limit).toBeCloseTo(302 / 3, 9);
  });

  it('lies beyond its limit, at a point the corner has, once a point, whatever was typed', () => {
    const anywhere = fc.tuple(...[-900, -100, 1].map((min) => fc.integer({ min, max: 1200 })));
    fc.assert(
      fc.property(
        fc.oneof(randomCorner, randomWishbone),
        fc.array(fc.tuple(fc.nat({ max: 8 }), anywhere), { minLength: 1, maxLength: 3 }),
        (plausible, slips) => {
          let corner: Corner = plausible;
          for (const [index, point] of slips) {
            const keys = hardPointKeys(corner);
            corner = withHardPoint(corner, keys[index % keys.length]!, point as unknown as Vector3);
          }
          const queries = unusualOf(corner);
          const paths = queries.map(({ path }) => path);
          expect(new Set(paths).size).toBe(paths.length);
          for (const { path, value, limit } of queries) {
            expect([...hardPointKeys(corner), 'loadedRadius']).toContain(path);
            expect(Number.isFinite(limit)).toBe(true);
            expect(Number.isFinite(value)).toBe(true);
            expect(value).not.toBe(limit);
          }
        },
      ),
      seeded(63, 500),
    );
  });
});
