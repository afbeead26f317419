import { isMissing, numberProblem, shown } from '../quantity/number-problem.js';
import { InputError, type Problem, type ProblemCode } from '../quantity/problem.js';
import {
  type AssumableKey,
  DRIVEWAY_FIELDS,
  DRIVEWAY_KEYS,
  type Driveway,
  type DrivewayKey,
  type Measured,
  type Taken,
} from './driveway.js';
import { sizeProblem } from './size-problem.js';

/** Rise over length of a steeper arm is none: first-order doubt means nothing there. */
const STEEPEST_ARM = 0.8;
/** A top mount nearer to the ball joint's height than this, mm, gives the damper no length to speak of. */
const SHORTEST_STRUT_MM = 150;
const LARGEST_PLUS_MINUS = 200;
/** Of one record; whoever hands over a long list by mistake is told enough. */
const MOST_UNKNOWN_NAMES = 20;

type Given = Partial<Record<DrivewayKey, Measured>>;

/**
 * Reads `DrivewayMeasurements` from anything, and fills in what was not measured.
 *
 * @throws InputError with every problem found, each with its path (`armLength.value`), never another error.
 */
export function readDriveway(data: unknown): Driveway {
  const { problems, given } = inspect(data);
  const taken = fillIn(given);
  problems.push(...strutProblems(given, taken));
  if (problems.length > 0) throw new InputError(problems);
  const { kingpin, damperLean, camber } = given;
  return { answersToe: false, taken, ...(kingpin && !damperLean && { kingpin }), ...(camber && { camber }) };
}

/** As much as can be read. Written out, since a schema would bring its library along into everybody's first answer. */
function inspect(data: unknown): { problems: Problem[]; given: Given } {
  const problems: Problem[] = [];
  const given: Given = {};
  try {
    const measurements = recordOf(data, '', DRIVEWAY_KEYS, problems);
    for (const key of DRIVEWAY_KEYS) {
      const found = measurements?.[key];
      if (found === undefined) continue;
      const others = problems.length;
      const { value, plusMinus } = recordOf(found, key, ['value', 'plusMinus'], problems) ?? {};
      if (problems.length > others) continue;
      const wrong = [
        numberProblem(`${key}.value`, value, -Infinity, Infinity) ?? sizeProblem(key, value as number),
        numberProblem(`${key}.plusMinus`, plusMinus, 0, LARGEST_PLUS_MINUS),
      ].filter((problem) => problem !== undefined);
      problems.push(...wrong);
      if (wrong.length === 0) given[key] = { value, plusMinus } as Measured;
    }
    return { problems, given };
  } catch {
    // Getters and proxies that throw: still the user's data, still a problem and not a crash.
    return { problems: [{ code: 'wrong-shape', path: 'driveway', value: undefined }], given: {} };
  }
}

/** The data as a record of these names and no others, so that a misspelt one is not silently missing. */
function recordOf<Name extends string>(
  data: unknown,
  path: string,
  names: readonly Name[],
  problems: Problem[],
): Partial<Record<Name, unknown>> | undefined {
  if (typeof data !== 'object' || data === null || Array.isArray(data)) {
    const code = isMissing(data) ? 'missing' : 'wrong-shape';
    problems.push({ code, path: path || 'driveway', value: shown(data) });
    return undefined;
  }
  const unknown = Object.keys(data).filter((name) => !(names as readonly string[]).includes(name));
  for (const name of unknown.slice(0, MOST_UNKNOWN_NAMES)) {
    problems.push({ code: 'wrong-shape', path: path ? `${path}.${name}` : name, value: name });
  }
  return data;
}

/** A height that was not measured is put above one that was, where it can be. */
function fillIn(given: Given): Record<AssumableKey, Taken> {
  const taken = {} as Record<AssumableKey, Taken>;
  for (const key of DRIVEWAY_KEYS as AssumableKey[]) {
    const { assumed } = DRIVEWAY_FIELDS[key];
    if (given[key]) taken[key] = { ...given[key], measured: true };
    else if (key === 'ballHeight' && given.pivotHeight) {
      // The other way round.
      const { value, plusMinus } = DRIVEWAY_FIELDS.pivotHeight.assumed;
      taken[key] = { value: given.pivotHeight.value - value, plusMinus, above: 'pivotHeight', measured: false };
    } else if (assumed) {
      const base = assumed.above ? taken[assumed.above].value : 0;
      taken[key] = { ...assumed, value: base + assumed.value, measured: false };
    }
  }
  return taken;
}

/** What no single figure can show. Only what was measured is to blame. */
function strutProblems(
  given: Given,
  { armLength, pivotHeight, ballHeight, topHeight }: Record<AssumableKey, Taken>,
): Problem[] {
  const problems: Problem[] = [];
  const blame = (code: ProblemCode, keys: AssumableKey[]) => {
    const [key, other] = keys.filter((key) => given[key]);
    if (key) problems.push({ code, path: `${key}.value`, value: given[key]!.value, ...(other && { other }) });
  };
  if (Math.abs(ballHeight.value - pivotHeight.value) > STEEPEST_ARM * armLength.value) {
    blame('cannot-close', ['armLength', 'pivotHeight', 'ballHeight']);
  }
  const length = topHeight.value - ballHeight.value;
  if (length < SHORTEST_STRUT_MM) blame(length > 0 ? 'no-direction' : 'ends-swapped', ['topHeight', 'ballHeight']);
  return problems;
}
