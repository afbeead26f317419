import { InputError, type Problem } from '../../quantity/problem.js';
import { armLonger, innerPivotsRaised } from './arm.js';
import { ballJointExtended, ballJointMoved } from './ball-joint.js';
import { checkNumbers } from './check.js';
import { spinAxisTurned, wheelOffset } from './hub.js';
import { knuckleBoltsTurned } from './knuckle-bolts.js';
import { MOST_OF_A_PART } from './most-of-a-part.js';
import type { Part } from './part.js';
import { AMOUNT_UNIT, numbersIn, PART_KINDS, PART_NAMES, type PartKind, type PartName } from './part-kinds.js';
import { rackRaised, tieRodEndRaised, tieRodLonger } from './tie-rod.js';
import { topMountMoved } from './top-mount.js';

// biome-ignore lint/suspicious/noExplicitAny: the options' type is that of the name, which is read at run time.
const MAKE: Readonly<Record<PartName, (options: any) => Part>> = {
  ballJointExtended,
  ballJointMoved,
  armLonger,
  innerPivotsRaised,
  topMountMoved,
  knuckleBoltsTurned,
  spinAxisTurned,
  tieRodEndRaised,
  tieRodLonger,
  rackRaised,
  wheelOffset,
};

/**
 * The part that some data describe.
 *
 * @throws InputError at the data's own paths: `part`, `mm`, `vector.0`, `plusMinus`, …; `unknown-name` for a part or an option that
 *   there is none of, `out-of-range` for an amount beyond ±150 mm or ±20°. Put on a linkage the part throws as `Part` does.
 */
export function partOf(data: unknown): Part {
  const { options, name, kind } = checked(data);
  return inside(kind, () => MAKE[name](options));
}

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

function checked(data: unknown): { name: PartName; kind: PartKind; options: object } {
  if (data === undefined || data === null) throw new InputError([{ code: 'missing', path: 'part', value: data }]);
  const { part, plusMinus, ...options } = data as { part?: unknown; plusMinus?: unknown };
  const unknown = (path: string, value: unknown, names: readonly string[]): Problem => ({
    code: 'unknown-name',
    path,
    value: typeof value === 'object' ? undefined : value,
    names,
  });
  if (typeof part !== 'string' || !Object.hasOwn(PART_KINDS, part)) {
    throw new InputError([unknown('part', part, PART_NAMES)]);
  }
  const name = part as PartName;
  const kind = PART_KINDS[name];
  const names = [...kind.amounts, ...kind.others, 'plusMinus'];
  const problems = Object.keys(options).flatMap((key) => (names.includes(key) ? [] : [unknown(key, key, names)]));
  const limit = (path: string, value: number, least: number, most: number) => {
    if (value < least || value > most) {
      problems.push({ code: 'out-of-range', path, value, limit: value < least ? least : most });
    }
  };
  for (const key of kind.amounts) {
    const most = MOST_OF_A_PART[AMOUNT_UNIT[key]];
    for (const [path, value] of numbersIn(options, key)) if (typeof value === 'number') limit(path, value, -most, most);
  }
  if (plusMinus !== undefined) {
    checkNumbers({ plusMinus });
    limit('plusMinus', plusMinus as number, 0, MOST_OF_A_PART[AMOUNT_UNIT[kind.amounts[0]!]]);
  }
  if (problems.length > 0) throw new InputError(problems);
  return { name, kind, options };
}

/** What a part's function says is wrong, by the paths of its data. */
function inside<T>({ path: own }: PartKind, run: () => T): T {
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
