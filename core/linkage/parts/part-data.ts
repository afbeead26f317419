import { InputError, type Problem } from '../../quantity/problem.js';
import type { Vector3 } from '../corner.js';
import { type ArmOptions, armLonger, innerPivotsRaised } from './arm.js';
import { type BallJointOptions, ballJointExtended, ballJointMoved } from './ball-joint.js';
import { checkNumbers } from './check.js';
import { spinAxisTurned, wheelOffset } from './hub.js';
import { knuckleBoltsTurned } from './knuckle-bolts.js';
import type { Part } from './part.js';
import { rackRaised, tieRodEndRaised, tieRodLonger } from './tie-rod.js';
import { topMountMoved } from './top-mount.js';

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

const UNIT = {
  mm: 'mm',
  vector: 'mm',
  front: 'mm',
  rear: 'mm',
  degrees: 'degrees',
  camber: 'degrees',
  toe: 'degrees',
} as const;

/** Of an amount, where nobody says how far it can be trusted: common practice, no source. */
const USUAL_PLUS_MINUS = { mm: 1, degrees: 0.1 } as const;
/** More than any part does. */
export const MOST_OF_A_PART = { mm: 150, degrees: 20 } as const;

interface Kind {
  /** First word of the paths by which its function tells what is wrong. */
  path: string;
  label: string;
  amounts: readonly (keyof typeof UNIT)[];
  others: readonly string[];
  // biome-ignore lint/suspicious/noExplicitAny: the options' type is that of the name, which is read at run time.
  make(options: any): Part;
}

const JOINT = ['joint', 'correctTieRod'] as const;

const KINDS: Readonly<Record<PartName, Kind>> = {
  ballJointExtended: {
    path: 'ballJoint',
    label: 'ball joint',
    amounts: ['mm'],
    others: [...JOINT, 'stud'],
    make: ballJointExtended,
  },
  ballJointMoved: { path: 'ballJoint', label: 'ball joint', amounts: ['vector'], others: JOINT, make: ballJointMoved },
  armLonger: { path: 'arm', label: 'arm', amounts: ['mm'], others: ['arm'], make: armLonger },
  innerPivotsRaised: {
    path: 'innerPivots',
    label: 'inner pivots',
    amounts: ['front', 'rear'],
    others: ['arm'],
    make: innerPivotsRaised,
  },
  topMountMoved: { path: 'topMount', label: 'top mount', amounts: ['vector'], others: [], make: topMountMoved },
  knuckleBoltsTurned: {
    path: 'knuckleBolts',
    label: 'knuckle bolts',
    amounts: ['degrees'],
    others: ['otherBolt', 'axis'],
    make: knuckleBoltsTurned,
  },
  spinAxisTurned: { path: 'spinAxis', label: 'knuckle', amounts: ['camber', 'toe'], others: [], make: spinAxisTurned },
  tieRodEndRaised: { path: 'tieRodEnd', label: 'tie-rod end', amounts: ['mm'], others: [], make: tieRodEndRaised },
  tieRodLonger: { path: 'tieRod', label: 'tie rod', amounts: ['mm'], others: [], make: tieRodLonger },
  rackRaised: { path: 'rack', label: 'rack', amounts: ['mm'], others: [], make: rackRaised },
  wheelOffset: { path: 'wheelOffset', label: 'wheel offset', amounts: ['mm'], others: [], make: wheelOffset },
};

export const PART_NAMES = Object.keys(KINDS) as readonly PartName[];

/**
 * The part that some data describe.
 *
 * @throws InputError at the data's own paths: `part`, `mm`, `vector.0`, `plusMinus`, …; `unknown-name` for a part or an option that
 *   there is none of, `out-of-range` for an amount beyond ±150 mm or ±20°. Put on a linkage the part throws as `Part` does.
 */
export function partOf(data: unknown): Part {
  const { options, kind } = checked(data);
  return inside(kind, () => kind.make(options));
}

/** One amount of a part. */
export interface PartAmount {
  /** In the data: `mm`, `vector.1`, … */
  path: string;
  value: number;
  unit: 'mm' | 'degrees';
  /** Half-width of its 95 % interval. */
  plusMinus: number;
}

/** A part's amounts, but for what it leaves as it was: of a top mount moved inboard, the way inboard. @throws InputError as `partOf` */
export function amountsOf(data: PartData): PartAmount[] {
  const { kind } = checked(data);
  return kind.amounts.flatMap((key) => {
    const unit = UNIT[key];
    const plusMinus = data.plusMinus ?? USUAL_PLUS_MINUS[unit];
    return numbersIn(data, key).flatMap(([path, value]) => (value === 0 ? [] : [{ path, value, unit, plusMinus }]));
  });
}

/** The same part with one of its amounts more by so much. */
export function withMore(data: PartData, path: string, by: number): PartData {
  const [key, at] = path.split('.') as [string, string?];
  const value = (data as unknown as Record<string, number | Vector3>)[key]!;
  const more =
    typeof value === 'number' ? value + by : value.map((one, axis) => (axis === Number(at) ? one + by : one));
  return { ...data, [key]: more } as PartData;
}

/** What a part is called in a list of doubts. */
export const partLabel = ({ part }: PartData): string => KINDS[part].label;

/**
 * The linkage with parts on, one after another.
 *
 * @throws InputError with the part's place in the list before its paths: `1.mm`; `cannot-close`, path `1`, with the link as `other`
 */
export const partsOn = (parts: readonly unknown[]): Part => {
  const made = parts.map((data, at) => within(at, () => ({ kind: checked(data).kind, put: partOf(data) })));
  return (linkage) =>
    made.reduce((built, { kind, put }, at) => within(at, () => inside(kind, () => put(built))), linkage);
};

function numbersIn(data: object, key: string): (readonly [path: string, value: number])[] {
  const value = (data as Record<string, unknown>)[key];
  if (value === undefined) return [];
  return Array.isArray(value) ? value.map((one, axis) => [`${key}.${axis}`, one] as const) : [[key, value as number]];
}

function checked(data: unknown): { kind: Kind; options: object } {
  if (data === undefined || data === null) throw new InputError([{ code: 'missing', path: 'part', value: data }]);
  const { part, plusMinus, ...options } = data as { part?: unknown; plusMinus?: unknown };
  const unknown = (path: string, value: unknown, names: readonly string[]): Problem => ({
    code: 'unknown-name',
    path,
    value: typeof value === 'object' ? undefined : value,
    names,
  });
  if (typeof part !== 'string' || !Object.hasOwn(KINDS, part)) {
    throw new InputError([unknown('part', part, PART_NAMES)]);
  }
  const kind = KINDS[part as PartName];
  const names = [...kind.amounts, ...kind.others, 'plusMinus'];
  const problems = Object.keys(options).flatMap((key) => (names.includes(key) ? [] : [unknown(key, key, names)]));
  const limit = (path: string, value: number, least: number, most: number) => {
    if (value < least || value > most) {
      problems.push({ code: 'out-of-range', path, value, limit: value < least ? least : most });
    }
  };
  for (const key of kind.amounts) {
    const most = MOST_OF_A_PART[UNIT[key]];
    for (const [path, value] of numbersIn(options, key)) if (typeof value === 'number') limit(path, value, -most, most);
  }
  if (plusMinus !== undefined) {
    checkNumbers({ plusMinus });
    limit('plusMinus', plusMinus as number, 0, MOST_OF_A_PART[UNIT[kind.amounts[0]!]]);
  }
  if (problems.length > 0) throw new InputError(problems);
  return { kind, options };
}

/** What a part's function says is wrong, by the paths of its data. */
function inside<T>({ path: own }: Kind, run: () => T): T {
  return translated(run, (problem) => {
    // Its path is a link.
    if (problem.code === 'cannot-close') return problem;
    if (problem.path === own) return { ...problem, path: 'part' };
    return problem.path.startsWith(`${own}.`) ? { ...problem, path: problem.path.slice(own.length + 1) } : problem;
  });
}

function within<T>(at: number, run: () => T): T {
  return translated(run, (problem) =>
    problem.code === 'cannot-close'
      ? { ...problem, path: `${at}`, other: problem.path }
      : { ...problem, path: `${at}.${problem.path}` },
  );
}

function translated<T>(run: () => T, by: (problem: Problem) => Problem): T {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(error.problems.map(by));
  }
}
