import type { Corner } from '../linkage/corner.js';
import { assumedBolt } from '../linkage/parts/assumed-bolt.js';
import type { PartData } from '../linkage/parts/part-kinds.js';

/** The ways of adding static camber; `lowering` stands among them for comparison. */
export const CAMBER_WAYS = ['topMount', 'knuckleBolts', 'knuckle', 'longerArm', 'ballJoint', 'lowering'] as const;
export type CamberWay = (typeof CAMBER_WAYS)[number];

/** A way that is a part. */
interface PartWay {
  unit: 'mm' | 'degrees';
  /** By how much of it either way what is sold changes the car. */
  most: number;
  isOnStrutAlone?: true;
  /** The part for an amount, as plain data. */
  data(amount: number, corner: Corner): PartData;
}

/**
 * What each way does for an amount, and within what such parts give. Common practice, no source: every `most` of this file.
 *
 * topMount: mm, y of the car, so inboard is negative. knuckleBolts: degrees by which the knuckle is turned, top of the wheel inboard
 * positive, about the bolt of `assumedBolt`. knuckle: degrees added to the spin axis, top outward positive. longerArm: mm further from
 * the lower arm's pivots. ballJoint: mm by which the lower joint's centre is further outboard in the knuckle; the arm keeps its length,
 * so a negative amount holds the foot of the knuckle further out.
 */
export const PART_WAYS: Readonly<Record<Exclude<CamberWay, 'lowering'>, PartWay>> = {
  topMount: {
    unit: 'mm',
    most: 25,
    isOnStrutAlone: true,
    data: (mm) => ({ part: 'topMountMoved', vector: [0, mm, 0] }),
  },
  knuckleBolts: {
    unit: 'degrees',
    most: 2.5,
    isOnStrutAlone: true,
    data: (degrees, corner) => ({ part: 'knuckleBoltsTurned', degrees, otherBolt: assumedBolt(corner) }),
  },
  knuckle: {
    unit: 'degrees',
    most: 2.5,
    data: (camber) => ({ part: 'spinAxisTurned', camber }),
  },
  longerArm: {
    unit: 'mm',
    most: 20,
    data: (mm) => ({ part: 'armLonger', mm }),
  },
  ballJoint: {
    unit: 'mm',
    most: 15,
    data: (mm) => ({ part: 'ballJointMoved', vector: [0, mm, 0] }),
  },
};

/** No road car is asked for more, degrees: common practice, no source. */
export const MOST_ADDED_DEG = 6;

/** How much lower still a car is set; back up to stock height and no further. mm, common practice, no source. */
export const LOWEST_MORE_MM = 40;
