import fc from 'fast-check';
import { buildLinkage } from '../../../core/linkage/build-linkage.js';
import type { StrutCorner, Vector3 } from '../../../core/linkage/corner.js';
import { referenceCorner } from './reference-corner.js';

/** How far each coordinate of each point may lie from that of the reference corner, mm. Common proportions, no source. */
const SPREAD: Record<string, readonly [x: number, y: number, z: number]> = {
  armFront: [60, 30, 30],
  armRear: [60, 30, 30],
  ball: [30, 30, 30],
  top: [50, 50, 60],
  low: [20, 20, 60],
  tieInner: [40, 40, 30],
  tieOuter: [40, 30, 30],
  wheelCentre: [20, 30, 30],
};

const between = (least: number, most: number) =>
  fc.integer({ min: Math.round(least * 100), max: Math.round(most * 100) }).map((hundredths) => hundredths / 100);
const around = (point: Vector3, [x, y, z]: readonly [number, number, number]) =>
  fc.tuple(
    between(point[0] - x, point[0] + x),
    between(point[1] - y, point[1] + y),
    between(point[2] - z, point[2] + z),
  );

const { lowerArm, strut, tieRod, wheelCentre } = referenceCorner;

/** Travel both ways, mm, that every random corner allows. */
export const SURE_TRAVEL_MM = 60;

/**
 * Struts of very different proportions that could still stand in a road car: every coordinate lies up to several centimetres
 * from the reference corner's, independently, and each can move at least 60 mm both ways.
 */
export const randomCorner: fc.Arbitrary<StrutCorner> = fc
  .record({
    kind: fc.constant('strut' as const),
    wheelCentre: around(wheelCentre, SPREAD.wheelCentre!),
    loadedRadius: between(250, 380),
    camber: between(-4, 2),
    toe: between(-1, 1),
    lowerArm: fc.record({
      front: around(lowerArm.front, SPREAD.armFront!),
      rear: around(lowerArm.rear, SPREAD.armRear!),
      ball: around(lowerArm.ball, SPREAD.ball!),
    }),
    strut: fc.record({ top: around(strut.top, SPREAD.top!), low: around(strut.low, SPREAD.low!) }),
    tieRod: fc.record({
      inner: around(tieRod.inner, SPREAD.tieInner!),
      outer: around(tieRod.outer, SPREAD.tieOuter!),
    }),
  })
  .filter((corner) => {
    const { reach } = buildLinkage(corner);
    return reach.droop < -SURE_TRAVEL_MM && reach.bump > SURE_TRAVEL_MM;
  });

/** Settings of every property over random corners: the same corners on every run. */
export const seeded = (seed: number, numRuns: number): fc.Parameters<unknown> => ({ seed, numRuns });
