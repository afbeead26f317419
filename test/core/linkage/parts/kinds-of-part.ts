import type { Linkage } from '../../../../core/linkage/linkage.js';
import {
  armLonger,
  ballJointExtended,
  ballJointMoved,
  boltAxis,
  innerPivotsRaised,
  knuckleBoltsTurned,
  type Part,
  rackRaised,
  spinAxisTurned,
  tieRodEndRaised,
  tieRodLonger,
  topMountMoved,
  wheelOffset,
} from '../../../../core/linkage/parts/index.js';

type Amounts = readonly [number, number, number];

/** One kind of part, for amounts of −15 to 15 that are scaled to what is usual for it. */
export interface KindOfPart {
  name: string;
  on: 'both' | 'strut' | 'wishbone';
  /** All that it may change, and does. */
  changes: readonly string[];
  make: (amounts: Amounts, linkage: Linkage) => Part;
}

/** A bolt of the invented reference corner, from its wheel centre, mm. Common proportions, no source. */
export const BOLT: readonly [number, number, number] = [-10, -60, 90];

export const KINDS: readonly KindOfPart[] = [
  { name: 'ball joint moved', on: 'both', changes: ['carrier.lowerBall'], make: (v) => ballJointMoved({ vector: v }) },
  {
    name: 'ball joint extended along its stud',
    on: 'both',
    changes: ['carrier.lowerBall'],
    make: ([mm]) => ballJointExtended({ mm, stud: [0.1, -0.2, -2] }),
  },
  {
    name: 'ball joint extended, tie rod corrected',
    on: 'both',
    changes: ['carrier.lowerBall', 'carrier.tieOuter'],
    make: ([mm]) => ballJointExtended({ mm, correctTieRod: true }),
  },
  {
    name: 'upper ball joint moved',
    on: 'wishbone',
    changes: ['carrier.upperBall'],
    make: (v) => ballJointMoved({ vector: v, joint: 'upper' }),
  },
  { name: 'lower arm longer', on: 'both', changes: ['lengths.lowerArm'], make: ([mm]) => armLonger({ mm }) },
  {
    name: 'upper arm longer',
    on: 'wishbone',
    changes: ['lengths.upperArm'],
    make: ([mm]) => armLonger({ mm, arm: 'upper' }),
  },
  {
    name: 'lower pivots raised',
    on: 'both',
    changes: ['body.lowerFront', 'body.lowerRear'],
    make: ([front, rear]) => innerPivotsRaised({ front, rear }),
  },
  {
    name: 'upper pivots raised',
    on: 'wishbone',
    changes: ['body.upperFront', 'body.upperRear'],
    make: ([front, rear]) => innerPivotsRaised({ front, rear, arm: 'upper' }),
  },
  { name: 'top mount moved', on: 'strut', changes: ['body.top'], make: (v) => topMountMoved({ vector: v }) },
  {
    name: 'knuckle bolts turned',
    on: 'strut',
    changes: ['carrier.damperLow', 'carrier.damperAxis'],
    make: ([degrees], linkage) =>
      knuckleBoltsTurned({ degrees: degrees / 5, otherBolt: BOLT, axis: boltAxis(linkage) }),
  },
  {
    name: 'spin axis turned',
    on: 'both',
    changes: ['carrier.spin'],
    make: ([camber, toe]) => spinAxisTurned({ camber: camber / 5, toe: toe / 10 }),
  },
  { name: 'wheel offset', on: 'both', changes: ['carrier.wheelCentre'], make: ([mm]) => wheelOffset({ mm }) },
  { name: 'tie rod end raised', on: 'both', changes: ['carrier.tieOuter'], make: ([mm]) => tieRodEndRaised({ mm }) },
  { name: 'rack raised', on: 'both', changes: ['body.tieInner'], make: ([mm]) => rackRaised({ mm }) },
  { name: 'tie rod longer', on: 'both', changes: ['lengths.tieRod'], make: ([mm]) => tieRodLonger({ mm: mm / 3 }) },
];

export const kindsOn = (kind: Linkage['kind']): KindOfPart[] => KINDS.filter(({ on }) => on === 'both' || on === kind);

export const opposite = ([a, b, c]: Amounts): Amounts => [-a, -b, -c];
