import * as v from 'valibot';
import { isMissing, shown } from '../quantity/number-problem.js';
import type { Problem, ProblemCode } from '../quantity/problem.js';

/** Of one record; whoever hands over a long list by mistake is told enough. */
const MOST_UNKNOWN_NAMES = 20;

/** What a schema made of some data: `output` is its own copy, as far as it came. */
export interface Inspected<T> {
  problems: Problem[];
  output?: T | undefined;
}

/**
 * The schema's verdict on anything, as problems; reads the data once and never throws.
 *
 * @param schemaOf may look at the data to choose
 * @param whole path of a problem with the data as a whole
 */
export function inspectData<S extends v.GenericSchema>(
  schemaOf: () => S,
  data: unknown,
  whole: string,
): Inspected<v.InferOutput<S>> {
  try {
    const schema = schemaOf();
    const result = v.safeParse(schema, data, { abortPipeEarly: true });
    const problems = (result.issues ?? []).flatMap((issue) => toProblems(issue, schema, whole));
    return { problems, output: result.output as v.InferOutput<S> };
  } catch {
    // Getters and proxies that throw: still the user's data, still a problem and not a crash.
    return { problems: [{ code: 'wrong-shape', path: whole, value: undefined }] };
  }
}

function toProblems(issue: v.BaseIssue<unknown>, schema: unknown, whole: string): Problem[] {
  const path = v.getDotPath(issue) ?? whole;
  if (issue.expected === 'never' && issue.type === 'strict_object') return unknownNames(issue, path, schema, whole);
  const value = issue.input;
  let code: ProblemCode = 'wrong-shape';
  if (isMissing(value)) code = 'missing';
  else if (issue.type === 'finite' || (issue.expected === 'number' && typeof value === 'number')) code = 'not-finite';
  else if (issue.type === 'min_value' || issue.type === 'max_value') code = 'out-of-range';
  else if (issue.expected === 'number') code = 'not-a-number';
  else if (issue.type === 'picklist' && typeof value === 'string') return [unknownWord(issue, path)];
  else if (issue.type === 'max_length') return [tooMany(issue, path)];
  const problem: Problem = { code, path, value: shown(value) };
  if (code === 'out-of-range') problem.limit = issue.requirement as number;
  return [problem];
}

const unknownWord = ({ input, expected }: v.BaseIssue<unknown>, path: string): Problem => ({
  code: 'unknown-name',
  path,
  value: input,
  names: [...(expected ?? '').matchAll(/"([^"]*)"/g)].map(([, word]) => word!),
});

const tooMany = ({ input, requirement }: v.BaseIssue<unknown>, path: string): Problem => ({
  code: 'out-of-range',
  path: `${path}.length`,
  value: (input as { length: number }).length,
  limit: requirement as number,
});

/** As much of a schema as tells what is inside it. */
interface Node {
  entries?: Record<string, Node>;
  item?: Node;
  wrapped?: Node;
  getter?: (value: unknown) => Node;
}

const innermost = (node: Node | undefined, value: unknown): Node | undefined => {
  const inner = node?.wrapped ?? node?.getter?.(value);
  return inner ? innermost(inner, value) : node;
};

/** The schema stops at the first name it does not know: here are all of them. */
function unknownNames(issue: v.BaseIssue<unknown>, path: string, schema: unknown, whole: string): Problem[] {
  const steps = (issue.path ?? []) as v.ObjectPathItem[];
  let node = schema as Node | undefined;
  for (const { key, value } of steps.slice(0, -1)) node = innermost(node?.entries?.[key] ?? node?.item, value);
  const parent = path.slice(0, path.length - String(steps.at(-1)?.key ?? '').length);
  const names: string[] = [];
  for (const name in steps.at(-1)?.input) {
    if (!Object.hasOwn(node?.entries ?? {}, name) && names.length < MOST_UNKNOWN_NAMES) names.push(name);
  }
  return names.map((name) => ({ code: 'wrong-shape', path: parent + name || whole, value: name }));
}
