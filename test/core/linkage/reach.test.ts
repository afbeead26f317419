import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildLinkage, reachOf } from '../../../core/linkage/build-linkage.js';
import type { StrutCorner, WishboneCorner } from '../../../core/linkage/corner.js';
import type { Linkage } from '../../../core/linkage/linkage.js';
import { motionOf } from '../../../core/linkage/motion.js';
import {
  ARM_ANGLE,
  CLOSED,
  POSE_SIZE,
  poseAt,
  STRUT_RAN_OUT,
  TIE_ROD_RAN_OUT,
  WHEEL,
} from '../../../core/linkage/pose.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { findReach } from '../../../core/linkage/travel.js';
import { InputError } from '../../../core/quantity/problem.js';
import { independentStrutSweep } from '../../reference/independent-strut.js';
import { cross, dot, less, size, type Triple, tripleAt, unit } from './carrier-frame.js';
import { randomCorner, seeded } from './random-corner.js';
import { referenceCorner } from './reference-corner.js';

const SIDES = ['droop', 'bump'] as const;
const MARCH_RADIANS = 0.03;

/** 0 where the tie rod and the steering axis lie in one plane: there the rod's two assemblies meet. */
function tieRodDiscriminant(linkage: Linkage, travel: number): number {
  const motion = motionOf(linkage, Float64Array.of(travel));
  const ball = tripleAt(motion.ball, 0);
  const steering = unit(less(linkage.solver.top as Triple, ball));
  const across = (p: Triple) => cross(less(p, ball), steering);
  const outer = across(tripleAt(motion.tieOuter, 0));
  const inner = across(linkage.body.tieInner as Triple);
  return size(cross(outer, inner)) / size(outer) / size(inner);
}

/** 0 where the top mount stands on the foot of the ball joint on the damper's axis: nearer than that it cannot come. */
function strutDiscriminant(linkage: Linkage, { strut, lowerArm }: StrutCorner, travel: number): number {
  const axis = unit(less(strut.top, strut.low));
  const toTop = less(strut.top, lowerArm.ball);
  const footSquared = dot(toTop, toTop) - dot(toTop, axis) ** 2;
  const now = less(strut.top, tripleAt(motionOf(linkage, Float64Array.of(travel)).ball, 0));
  return (dot(now, now) - footSquared) / dot(now, now);
}

/** Height of the wheel centre at an arm angle, or NaN where the links do not join. */
function heightAt(linkage: Linkage, angle: number): number {
  const pose = new Float64Array(POSE_SIZE);
  pose[ARM_ANGLE] = angle;
  return poseAt(pose, linkage) === CLOSED ? pose[WHEEL + 2]! : Number.NaN;
}

describe('reach ends where it says', () => {
  it('a millionth of a millimetre inside is reached, outside is not, over random struts', () => {
    fc.assert(
      fc.property(randomCorner, (corner) => {
        const linkage = buildLinkage(corner);
        const { droop, bump } = reachOf(linkage);
        const { reached, camber } = sweepTravel(linkage, [droop - 1e-6, droop + 1e-6, bump - 1e-6, bump + 1e-6]);
        expect([...reached]).toEqual([0, 1, 1, 0]);
        expect([...camber].map(Number.isNaN)).toEqual([true, false, false, true]);
      }),
      seeded(21, 200),
    );
  });

  it('the named link stops joining just there, or the wheel centre turns back while everything still joins', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(randomCorner, (corner) => {
        const linkage = buildLinkage(corner);
        const pose = new Float64Array(POSE_SIZE);
        for (const side of SIDES) {
          const outward = side === 'bump' ? 1 : -1;
          const angle = linkage.reach[`${side}Angle`];
          const link = linkage.reach[`${side}EndedBy`];
          pose[ARM_ANGLE] = angle + outward * MARCH_RADIANS;
          const beyond = poseAt(pose, linkage);
          seen.add(link);
          if (link === 'lowerArm') {
            expect(beyond).toBe(CLOSED);
            const here = heightAt(linkage, angle);
            expect(outward * (here - heightAt(linkage, angle - 1e-4))).toBeGreaterThan(0);
            expect(outward * (here - heightAt(linkage, angle + 1e-4))).toBeGreaterThan(0);
          } else expect(beyond).toBe(link === 'strut' ? STRUT_RAN_OUT : TIE_ROD_RAN_OUT);
        }
      }),
      seeded(22, 200),
    );
    expect([...seen].sort()).toEqual(['lowerArm', 'tieRod']);
  });

  it('where the wheel centre turns back, the independent solver finds a position just inside and none just outside', () => {
    // Where a rod runs out it could go on, on the rod's other assembly with the arm turning back: no place for a car.
    let ends = 0;
    fc.assert(
      fc.property(randomCorner, (corner) => {
        const { reach } = buildLinkage(corner);
        for (const side of SIDES) {
          const outward = Math.sign(reach[side]);
          const walk = Array.from({ length: Math.ceil(Math.abs(reach[side])) }, (_, i) => outward * i);
          const edge = [reach[side] - outward * 0.02, reach[side] + outward * 0.02];
          const [inside, outside] = independentStrutSweep(corner, [...walk, ...edge]).slice(-2);
          expect(inside!.camber, `inside ${side}`).not.toBeNaN();
          if (reach[`${side}EndedBy`] !== 'lowerArm') continue;
          ends += 1;
          expect(outside!.camber, `outside ${side}`).toBeNaN();
        }
      }),
      seeded(23, 20),
    );
    expect(ends).toBeGreaterThan(5);
  });
});

describe('a dip in the wheel centre’s rise that a link hides by running out right after it', () => {
  // Found by the bench over random wishbones; the dip is 0.0007 rad of arm angle wide, the links part 0.002 rad beyond it.
  const corner: WishboneCorner = {
    kind: 'wishbone',
    wheelCentre: [0, 783.3972423121112, 336.6698987923623],
    loadedRadius: 329.983742652277,
    camber: 0,
    toe: 0.5,
    lowerArm: {
      front: [189.96277343424225, 344.1640465272518, 194.54165156386878],
      rear: [-204.2709982776663, 335, 191.38396528113273],
      ball: [0, 704.8037792967203, 182.09440390810752],
    },
    upperArm: {
      front: [117.13927859858377, 448.7053279112695, 490],
      rear: [-132.11071283323935, 446.1134054384782, 465.4517017262471],
      ball: [0, 703.9758857899819, 499.72987176310625],
    },
    tieRod: {
      inner: [-127.68087549803118, 368.41932015989005, 273],
      outer: [-132.76032092778289, 685.3822361363605, 252.17765778185168],
    },
  };
  it('is where reach ends: within it, height rises with the arm all the way', () => {
    const linkage = buildLinkage(corner);
    const from = linkage.reach.droopAngle;
    const heights = Array.from({ length: 2000 }, (_, i) => heightAt(linkage, from + i * 2e-5));
    for (let i = 1; i < heights.length; i++) expect(heights[i]).toBeGreaterThan(heights[i - 1]!);
    // Just beyond, the wheel would rise while the arm falls, with every link still joined.
    expect(heightAt(linkage, from - 3e-4)).toBeGreaterThan(heights[0]!);
  });
});

describe('with the rack to one side', () => {
  const linkage = buildLinkage(referenceCorner);
  it('reach is another', () => {
    const { droop, bump } = findReach(linkage, 20);
    expect(Math.abs(bump - linkage.reach.bump)).toBeGreaterThan(1);
    const { reached } = sweepTravel(linkage, [droop - 1e-3, droop + 1e-3, bump - 1e-3, bump + 1e-3], { rack: 20 });
    expect([...reached]).toEqual([0, 1, 1, 0]);
  });
  it('so far that nothing joins there is none, and the tie rod is named', () => {
    expect(findReach(linkage, 400)).toMatchObject({
      droop: NaN,
      bump: NaN,
      droopEndedBy: 'tieRod',
      bumpEndedBy: 'tieRod',
    });
  });
});

describe('each link can be the one that runs out', () => {
  it('a short tie rod: it comes to lie in one plane with the steering axis', () => {
    const corner: StrutCorner = {
      ...referenceCorner,
      tieRod: { inner: [-140, 570, 268], outer: referenceCorner.tieRod.outer },
    };
    const linkage = buildLinkage(corner);
    const ended = SIDES.filter((side) => tieRodDiscriminant(linkage, linkage.reach[side]) < 1e-6);
    expect(ended.length).toBeGreaterThan(0);
    for (const side of ended) expect(linkage.reach[`${side}EndedBy`]).toBe('tieRod');
    expect(tieRodDiscriminant(linkage, 0)).toBeGreaterThan(0.1);
  });

  it('a low top mount: the damper axis cannot come nearer to the ball joint', () => {
    const corner: StrutCorner = {
      ...referenceCorner,
      // Inboard of the ball joint, so that the carrier's last turn lifts the wheel and does not take it back first.
      wheelCentre: [0, 600, 310],
      lowerArm: { front: [150, 240, 185], rear: [-150, 240, 185], ball: [0, 700, 185] },
      strut: { top: [0, 600, 330], low: [0, 600, 230] },
      tieRod: { inner: [-135, 250, 185], outer: [-135, 660, 185] },
    };
    const linkage = buildLinkage(corner);
    expect(reachOf(linkage).bumpEndedBy).toBe('strut');
    expect(strutDiscriminant(linkage, corner, 0)).toBeGreaterThan(0.1);
    expect(Math.abs(strutDiscriminant(linkage, corner, linkage.reach.bump))).toBeLessThan(1e-9);
    expect(heightAt(linkage, linkage.reach.bumpAngle)).not.toBeNaN();
    expect(heightAt(linkage, linkage.reach.bumpAngle + 1e-9)).toBeNaN();
  });

  it('an arm that comes to stand upright: the wheel centre turns back while tie rod and strut still join', () => {
    // A tie rod that follows the arm exactly never runs out.
    const corner: StrutCorner = {
      ...referenceCorner,
      lowerArm: { front: [150, 340, 200], rear: [-150, 340, 200], ball: [0, 700, 185] },
      strut: { top: [0, 585, 835], low: [0, 632, 570] },
      tieRod: { inner: [-130, 340, 200], outer: [-130, 700, 185] },
    };
    const linkage = buildLinkage(corner);
    // In bump the rod meets the steering axis' plane before, for one instant only: there its two assemblies meet.
    expect(reachOf(linkage)).toMatchObject({ droopEndedBy: 'lowerArm', bumpEndedBy: 'tieRod' });
    expect(tieRodDiscriminant(linkage, linkage.reach.bump)).toBeLessThan(1e-6);
    expect(tieRodDiscriminant(linkage, linkage.reach.droop)).toBeGreaterThan(0.01);
    expect(strutDiscriminant(linkage, corner, linkage.reach.droop)).toBeGreaterThan(0.01);
  });
});

describe('links that cannot be a strut are refused, by the link', () => {
  const refused = (change: Partial<StrutCorner>) => {
    try {
      buildLinkage({ ...referenceCorner, ...change });
    } catch (error) {
      expect(error).toBeInstanceOf(InputError);
      return (error as InputError).problems.map(({ code, path }) => `${code} ${path}`);
    }
    return [];
  };
  const { lowerArm, strut, tieRod } = referenceCorner;

  it('ball joint above the top mount, along the damper', () => {
    expect(refused({ lowerArm: { ...lowerArm, ball: [-35, 560, 900] } })).toEqual(['cannot-close strut']);
  });
  it('outer tie rod end on the steering axis', () => {
    const outer = lowerArm.ball.map((value, k) => value + (strut.top[k]! - value) / 8) as [number, number, number];
    expect(refused({ tieRod: { ...tieRod, outer } })).toEqual(['cannot-close tieRod']);
  });
  it('tie rod in one plane with the steering axis', () => {
    const [a, b] = [lowerArm.ball, strut.top];
    const outer: [number, number, number] = [-135, 660, 262];
    const inner = outer.map((value, k) => value + 2 * (value - (a[k]! + (b[k]! - a[k]!) / 8))) as [
      number,
      number,
      number,
    ];
    expect(refused({ tieRod: { inner, outer } })).toEqual(['cannot-close tieRod']);
  });
  it('an arm that stands upright', () => {
    const upright = { front: [150, 700, 400], rear: [-150, 700, 400], ball: [0, 700, 185] } as const;
    expect(refused({ lowerArm: upright })).toEqual(['cannot-close lowerArm']);
  });
});
