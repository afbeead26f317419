import * as v from 'valibot';
import { inspectData } from '../document/schema-problems.js';
import { InputError, type Problem, type ProblemCode } from '../quantity/problem.js';
import {
  type AssumableKey,
  DRIVEWAY_FIELDS,
  DRIVEWAY_KEYS,
  type Driveway,
  type DrivewayKey,
  isAngle,
  type Measured,
  type Taken,
} from './driveway.js';

const MM_PER_INCH = 25.4;
/** Rise over length of a steeper arm is none: first-order doubt means nothing there. */
const STEEPEST_ARM = 0.8;
/** A top mount nearer to the ball joint's height than this, mm, gives the damper no length to speak of. */
const SHORTEST_STRUT_MM = 150;
const LARGEST_PLUS_MINUS = 200;

type Given = Partial<Record<DrivewayKey, Measured>>;

const number = v.pipe(v.number(), v.finite());
const measured = v.optional(
  v.strictObject({ value: number, plusMinus: v.pipe(number, v.minValue(0), v.maxValue(LARGEST_PLUS_MINUS)) }),
);
const schema = v.strictObject(v.entriesFromList(DRIVEWAY_KEYS, measured));

/**
 * Reads `DrivewayMeasurements` from anything, and fills in what was not measured.
 *
 * @throws InputError with every problem found, each with its path (`armLength.value`), never another error.
 */
export function readDriveway(data: unknown): Driveway {
  const { problems, output } = inspectData(() => schema, data, 'driveway');
  // To the schema a list is a record without names.
  if (Array.isArray(data)) problems.push({ code: 'wrong-shape', path: 'driveway', value: undefined });
  const bad = new Set(problems.map(({ path }) => path.split('.')[0]));
  const given: Given = {};
  for (const key of DRIVEWAY_KEYS) {
    const found = bad.has('driveway') || bad.has(key) ? undefined : output?.[key];
    if (!found) continue;
    const problem = sizeProblem(key, found.value);
    if (problem) problems.push(problem);
    else given[key] = found;
  }
  const taken = fillIn(given);
  problems.push(...strutProblems(given, taken));
  if (problems.length > 0) throw new InputError(problems);
  const { kingpin, damperLean, camber } = given;
  return { answersToe: false, taken, ...(kingpin && !damperLean && { kingpin }), ...(camber && { camber }) };
}

function sizeProblem(key: DrivewayKey, value: number): Problem | undefined {
  const { least, most } = DRIVEWAY_FIELDS[key];
  if (value >= least && value <= most) return undefined;
  const mm = value * MM_PER_INCH;
  const code = !isAngle(key) && value < least && mm >= least && mm <= most ? 'looks-like-inches' : 'out-of-range';
  return { code, path: `${key}.value`, value, limit: value < least ? least : most };
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
