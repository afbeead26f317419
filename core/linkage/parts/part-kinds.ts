import type { Vector3 } from '../corner.js';
import type { ArmOptions } from './arm.js';
import type { BallJointOptions } from './ball-joint.js';

/** What each part is asked for, by the name of the function that makes it: mm and degrees, see there. */
interface PartOptions {
  ballJointExtended: BallJointOptions & { mm: number; stud?: Vector3 };
  ballJointMoved: BallJointOptions & { vector: Vector3 };
  armLonger: ArmOptions & { mm: number };
  innerPivotsRaised: ArmOptions & { front: number; rear: number };
  topMountMoved: { vector: Vector3 };
  knuckleBoltsTurned: { degrees: number; otherBolt: Vector3; axis?: Vector3 };
  spinAxisTurned: { camber: number; toe?: number };
  tieRodEndRaised: { mm: number };
  tieRodLonger: { mm: number };
  rackRaised: { mm: number };
  wheelOffset: { mm: number };
}

export type PartName = keyof PartOptions;

/**
 * A part as plain data: the name of the function that makes it, and its options. `plusMinus`: how far each of its amounts can be
 * trusted, the half-width of a 95 % interval, mm or degrees; 0: exact. Without it ±1 mm or ±0.1°.
 */
export type PartData = { [K in PartName]: { part: K; plusMinus?: number } & PartOptions[K] }[PartName];

/** What each amount is counted in. */
export const AMOUNT_UNIT = {
  mm: 'mm',
  vector: 'mm',
  front: 'mm',
  rear: 'mm',
  degrees: 'degrees',
  camber: 'degrees',
  toe: 'degrees',
} as const;

/** Of an amount, where nobody says how far it can be trusted: common practice, no source. */
export const USUAL_PLUS_MINUS = { mm: 1, degrees: 0.1 } as const;
export interface PartKind {
  /** First word of the paths by which its function tells what is wrong. */
  path: string;
  label: string;
  amounts: readonly (keyof typeof AMOUNT_UNIT)[];
  /** Amounts that may be left out. */
  optional?: readonly string[];
  others: readonly string[];
}

/** Which joint or arm a part is for. */
export const PART_JOINTS = ['lower', 'upper'] as const;

const JOINT = ['joint', 'correctTieRod'] as const;

export const PART_KINDS: Readonly<Record<PartName, PartKind>> = {
  ballJointExtended: {
    path: 'ballJoint',
    label: 'ball joint',
    amounts: ['mm'],
    others: [...JOINT, 'stud'],
  },
  ballJointMoved: { path: 'ballJoint', label: 'ball joint', amounts: ['vector'], others: JOINT },
  armLonger: { path: 'arm', label: 'arm', amounts: ['mm'], others: ['arm'] },
  innerPivotsRaised: {
    path: 'innerPivots',
    label: 'inner pivots',
    amounts: ['front', 'rear'],
    others: ['arm'],
  },
  topMountMoved: { path: 'topMount', label: 'top mount', amounts: ['vector'], others: [] },
  knuckleBoltsTurned: {
    path: 'knuckleBolts',
    label: 'knuckle bolts',
    amounts: ['degrees'],
    others: ['otherBolt', 'axis'],
  },
  spinAxisTurned: { path: 'spinAxis', label: 'knuckle', amounts: ['camber', 'toe'], optional: ['toe'], others: [] },
  tieRodEndRaised: { path: 'tieRodEnd', label: 'tie-rod end', amounts: ['mm'], others: [] },
  tieRodLonger: { path: 'tieRod', label: 'tie rod', amounts: ['mm'], others: [] },
  rackRaised: { path: 'rack', label: 'rack', amounts: ['mm'], others: [] },
  wheelOffset: { path: 'wheelOffset', label: 'wheel offset', amounts: ['mm'], others: [] },
};

export const PART_NAMES = Object.keys(PART_KINDS) as readonly PartName[];

/** One amount of a part. */
export interface PartAmount {
  /** In the data: `mm`, `vector.1`, … */
  path: string;
  value: number;
  unit: 'mm' | 'degrees';
  /** Half-width of its 95 % interval. */
  plusMinus: number;
}

/** A part's amounts, but for what it leaves as it was: of a top mount moved inboard, the way inboard. */
export function amountsOf(data: PartData): PartAmount[] {
  const kind = PART_KINDS[data.part];
  return kind.amounts.flatMap((key) => {
    const unit = AMOUNT_UNIT[key];
    const plusMinus = data.plusMinus ?? USUAL_PLUS_MINUS[unit];
    return numbersIn(data, key).flatMap(([path, value]) => (value === 0 ? [] : [{ path, value, unit, plusMinus }]));
  });
}

/** The same part with one of its amounts more by so much. */
export const withMore = (data: PartData, path: string, by: number): PartData =>
  changed(data, path, (value) => value + by);

/** The same part with one of its amounts so large. */
export const withAmount = (data: PartData, path: string, amount: number): PartData => changed(data, path, () => amount);

function changed(data: PartData, path: string, by: (value: number) => number): PartData {
  const [key, at] = path.split('.') as [string, string?];
  // One that may be left out is none then.
  const value = (data as unknown as Record<string, number | Vector3 | undefined>)[key] ?? 0;
  const next = typeof value === 'number' ? by(value) : value.map((one, axis) => (axis === Number(at) ? by(one) : one));
  return { ...data, [key]: next } as PartData;
}

/** What a part is called in a list of doubts. */
export const partLabel = ({ part }: PartData): string => PART_KINDS[part].label;

/** The numbers of an amount: one, or those of a vector. */
export function numbersIn(data: object, key: string): (readonly [path: string, value: number])[] {
  const value = (data as Record<string, unknown>)[key];
  if (value === undefined) return [];
  return Array.isArray(value) ? value.map((one, axis) => [`${key}.${axis}`, one] as const) : [[key, value as number]];
}
