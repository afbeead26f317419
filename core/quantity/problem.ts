/** What can be wrong with something a user gave. Codes are part of the public interface: texts for people are made from them elsewhere. */
export type ProblemCode =
  /** Nothing was given where something is needed. */
  | 'missing'
  /** Given, but not a number (or a text no number can be read from). */
  | 'not-a-number'
  /** NaN or infinite. */
  | 'not-finite'
  /** Can be read in two ways; `choices` holds them. */
  | 'ambiguous'
  /** Names a unit of another kind of quantity, or an unknown one. */
  | 'wrong-unit'
  /** Below or above what is possible; `limit` is the bound that was crossed. */
  | 'out-of-range'
  /** Not the kind of thing expected here (a list for a record, an unknown `kind`, an unknown name). */
  | 'wrong-shape'
  /** A word where only some are understood; `names` holds them. */
  | 'unknown-name'
  /** Two points that must differ are the same; `other` names the second. */
  | 'coincide'
  /** Two pivots, or two points of the damper's axis, too close to give a direction. */
  | 'no-direction'
  /** The links cannot be joined, or cannot move, in the reference position. */
  | 'cannot-close'
  /** Magnitudes of inches where millimetres belong. */
  | 'looks-like-inches'
  /** A rate that fits what it carries in another unit only: `names` holds that unit, `choices` the rate in N/mm. */
  | 'looks-like-unit'
  /** The points are those of the right corner. */
  | 'looks-like-right-corner'
  /** Two ends of a link are swapped: inboard and outboard, or top and bottom; `other` names the second. */
  | 'ends-swapped'
  /** Fewer than are needed: `value` were given, `limit` are needed. */
  | 'too-few'
  /** Readings that what else was given does not allow: `names` says what would have to be off furthest. */
  | 'inconsistent'
  /** The asked travel, drop or height lies outside what the source covers. */
  | 'outside-domain';

/** One thing wrong, as plain data that crosses the worker's boundary. */
export interface Problem {
  /** What kind of mistake it is. */
  code: ProblemCode;
  /** Where: a dotted path into what was given, e.g. `lowerArm.ball.2`, `drop`. */
  path: string;
  /** What was given there. */
  value: unknown;
  /** The bound that was crossed, in the unit of the API. */
  limit?: number;
  /** The possible readings of an ambiguous text, in the unit of the API. */
  choices?: number[];
  /** A second path that the problem involves. */
  other?: string;
  /** What is understood there, as it is written. */
  names?: readonly string[];
}

/** The only error a user can cause. `problems` holds all of them; `code` and `field` are those of the first. */
export class InputError extends Error {
  readonly problems: Problem[];
  readonly code: ProblemCode;
  readonly field: string;

  /** @param problems at least one. Throws RangeError when empty. */
  constructor(problems: Problem[]) {
    const first = problems[0];
    if (!first) throw new RangeError('An InputError needs at least one problem.');
    super(problems.map((p) => `${p.path}: ${p.code} (${show(p.value)})`).join('; '));
    this.name = 'InputError';
    this.problems = problems;
    this.code = first.code;
    this.field = first.path;
  }
}

function show(value: unknown): string {
  try {
    return (JSON.stringify(value) ?? String(value)).slice(0, 80);
  } catch {
    return typeof value;
  }
}
