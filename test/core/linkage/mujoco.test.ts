import { describe, expect, it } from 'vitest';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { StrutCorner, WishboneCorner } from '../../../core/linkage/corner.js';
import type { Linkage } from '../../../core/linkage/linkage.js';
import { ballJointMoved } from '../../../core/linkage/parts/index.js';
import { sweepTravel } from '../../../core/linkage/sweep.js';
import { type EnginePoints, engineSweep } from '../../reference/mujoco-linkage.js';
import { referenceCorner } from './reference-corner.js';
import { wishboneCorner } from './wishbone-corner.js';

/*
 * Outside check by a general-purpose rigid-body engine, MuJoCo: bodies, hinges, ball joints and a slide, driven to rest. Its
 * constraints are soft, so the tolerance is the engine's: 1e-6 degrees in camber and toe are asserted; 1e-8 were seen.
 */
const TOLERANCE_DEG = 1e-6;
const ANGLES = [-0.2, -0.1, 0, 0.1, 0.2];

const common = ({ lowerArm, tieRod, wheelCentre, camber, toe }: StrutCorner | WishboneCorner): EnginePoints => ({
  lowerFront: lowerArm.front,
  lowerRear: lowerArm.rear,
  ball: lowerArm.ball,
  tieInner: tieRod.inner,
  tieOuter: tieRod.outer,
  wheelCentre,
  camber,
  toe,
});
const strutPoints: EnginePoints = {
  ...common(referenceCorner),
  top: referenceCorner.strut.top,
  low: referenceCorner.strut.low,
};
const { upperArm } = wishboneCorner;
const wishbonePoints: EnginePoints = {
  ...common(wishboneCorner),
  upperFront: upperArm.front,
  upperRear: upperArm.rear,
  upperBall: upperArm.ball,
};
const lowered = (ball: readonly [number, number, number], by: readonly [number, number, number]) =>
  ball.map((x, i) => x + by[i]!) as unknown as [number, number, number];

const PART = [2, 3, -20] as const;
const strut = buildLinkage(referenceCorner);
const wishbone = buildLinkage(wishboneCorner);

describe('an engine that knows nothing of suspensions finds the same camber and toe', () => {
  it.each<[string, EnginePoints, Linkage, number]>([
    ['strut', strutPoints, strut, 0],
    ['strut, rack 30 mm to the left', { ...strutPoints, rack: 30 }, strut, 30],
    [
      'strut with a ball joint moved in its carrier',
      { ...strutPoints, carrierBall: lowered(referenceCorner.lowerArm.ball, PART) },
      ballJointMoved({ vector: PART })(strut),
      0,
    ],
    ['double wishbone', wishbonePoints, wishbone, 0],
    ['double wishbone, rack 25 mm to the right', { ...wishbonePoints, rack: -25 }, wishbone, -25],
    [
      'double wishbone with a ball joint moved in its carrier',
      { ...wishbonePoints, carrierBall: lowered(wishboneCorner.lowerArm.ball, PART) },
      ballJointMoved({ vector: PART })(wishbone),
      0,
    ],
  ])('%s', async (_, points, linkage, rack) => {
    const poses = await engineSweep(points, ANGLES);
    const travels = poses.map(({ wheelCentreZ }) => wheelCentreZ - linkage.wheelCentreZ);
    expect(Math.max(...travels) - Math.min(...travels)).toBeGreaterThan(120);
    const sweep = sweepTravel(linkage, travels, { rack });
    poses.forEach((pose, i) => {
      expect(Math.abs(sweep.camber[i]! - pose.camber), `camber at ${travels[i]} mm`).toBeLessThan(TOLERANCE_DEG);
      expect(Math.abs(sweep.toe[i]! - pose.toe), `toe at ${travels[i]} mm`).toBeLessThan(TOLERANCE_DEG);
    });
  });
});
