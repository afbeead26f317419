import {
  type Corner,
  type HardPointKey,
  STRUT_POINT_KEYS,
  type Vector3,
  WISHBONE_POINT_KEYS,
} from '../linkage/corner.js';
import { distance, length, subtract } from '../math/vector.js';
import { InputError, type Problem, type ProblemCode } from '../quantity/problem.js';
import { cornerSchemas } from './corner-schema.js';
import { CORNER_RANGES } from './field-ranges.js';
import { inspectData } from './schema-problems.js';

const { loadedRadius: LOADED_RADIUS_MM } = CORNER_RANGES;
/** Points nearer than this are the same point. */
const SAME_POINT_MM = 1;
/** Two points nearer than this give no usable direction: 1 mm of error would turn it by 3°. */
const SHORTEST_AXIS_MM = 20;
/** A number of inches that large would be a lorry's; a number of millimetres that small, a toy's. */
const LARGEST_INCHES = 60;

/**
 * Takes a corner from anything, by its schema and by what points say against each other; whether its links close, only building
 * it can tell.
 *
 * @throws InputError with every problem found, each with its path, never another error.
 */
export function checkCorner(data: unknown): Corner {
  const { problems, known, corner } = inspect(data);
  problems.push(...geometryProblems(known));
  if (problems.length > 0) throw new InputError(problems);
  return corner!;
}

type Known = Partial<Record<HardPointKey, Vector3>> & { loadedRadius?: number };

/** The schema's verdict, and whatever points could be read for the checks between points. */
function inspect(data: unknown): { problems: Problem[]; known: Known; corner?: Corner } {
  const { problems, output } = inspectData<(typeof cornerSchemas)[Corner['kind']]>(
    () => cornerSchemas[kindOf(data)],
    data,
    'corner',
  );
  const known = knownPoints(output, problems);
  return problems.length > 0 ? { problems, known } : { problems, known, corner: output as Corner };
}

/** What does not say that it is a wishbone is told what a strut lacks. */
function kindOf(data: unknown): Corner['kind'] {
  return (data as { kind?: unknown } | null | undefined)?.kind === 'wishbone' ? 'wishbone' : 'strut';
}

const ALL_POINT_KEYS: readonly HardPointKey[] = [
  ...new Set<HardPointKey>([...STRUT_POINT_KEYS, ...WISHBONE_POINT_KEYS, 'damper.top', 'damper.low']),
];

/** Points without a problem of their own. */
function knownPoints(data: unknown, problems: Problem[] = []): Known {
  const known: Known = {};
  const bad = (path: string) =>
    problems.some(
      (p) => p.path === path || p.path.startsWith(`${path}.`) || path.startsWith(`${p.path}.`) || p.path === 'corner',
    );
  for (const key of ALL_POINT_KEYS) {
    if (bad(key)) continue;
    const found = key
      .split('.')
      .reduce<unknown>((at, name) => (at as Record<string, unknown> | undefined)?.[name], data);
    if (found) known[key] = found as Vector3;
  }
  if (!bad('loadedRadius')) known.loadedRadius = (data as { loadedRadius: number }).loadedRadius;
  return known;
}

/** What no single number can show: points against each other. */
function geometryProblems(known: Known): Problem[] {
  const inches = inchesProblem(known);
  if (inches) return [inches];
  const mirrored = rightCornerProblem(known);
  if (mirrored) return [mirrored];

  const problems: Problem[] = [];
  const radius = known.loadedRadius;
  if (radius !== undefined && (radius < LOADED_RADIUS_MM[0] || radius > LOADED_RADIUS_MM[1])) {
    const limit = radius < LOADED_RADIUS_MM[0] ? LOADED_RADIUS_MM[0] : LOADED_RADIUS_MM[1];
    problems.push({ code: 'out-of-range', path: 'loadedRadius', value: radius, limit });
  }
  for (const key of ALL_POINT_KEYS) {
    // z is measured up from the ground: a sign forgotten, or the car's floor taken for it.
    const z = known[key]?.[2];
    if (z !== undefined && z <= 0) problems.push({ code: 'out-of-range', path: `${key}.2`, value: z, limit: 0 });
  }
  const pairs: [HardPointKey, HardPointKey, number, ProblemCode][] = [
    ['lowerArm.rear', 'lowerArm.front', SHORTEST_AXIS_MM, 'no-direction'],
    ['strut.low', 'strut.top', SHORTEST_AXIS_MM, 'no-direction'],
    ['lowerArm.ball', 'lowerArm.front', SAME_POINT_MM, 'coincide'],
    ['lowerArm.ball', 'lowerArm.rear', SAME_POINT_MM, 'coincide'],
    ['lowerArm.ball', 'strut.top', SAME_POINT_MM, 'coincide'],
    ['upperArm.rear', 'upperArm.front', SHORTEST_AXIS_MM, 'no-direction'],
    ['upperArm.ball', 'upperArm.front', SAME_POINT_MM, 'coincide'],
    ['upperArm.ball', 'upperArm.rear', SAME_POINT_MM, 'coincide'],
    ['upperArm.ball', 'lowerArm.ball', SHORTEST_AXIS_MM, 'no-direction'],
    ['upperArm.ball', 'tieRod.outer', SAME_POINT_MM, 'coincide'],
    ['damper.low', 'damper.top', SHORTEST_AXIS_MM, 'no-direction'],
    ['lowerArm.ball', 'tieRod.outer', SAME_POINT_MM, 'coincide'],
    ['tieRod.outer', 'tieRod.inner', SAME_POINT_MM, 'coincide'],
  ];
  for (const [path, other, least, tooNear] of pairs) {
    const a = known[path];
    const b = known[other];
    if (!a || !b) continue;
    const apart = distance(a, b);
    if (apart < least) {
      const code = apart < SAME_POINT_MM ? 'coincide' : tooNear;
      problems.push({ code, path, value: a.join(' '), other, limit: least });
    }
  }
  const ends: [HardPointKey, HardPointKey, 1 | 2][] = [
    ['lowerArm.ball', 'lowerArm.front', 1],
    ['tieRod.outer', 'tieRod.inner', 1],
    ['strut.top', 'strut.low', 2],
    ['upperArm.ball', 'upperArm.front', 1],
    ['upperArm.ball', 'lowerArm.ball', 2],
    ['damper.top', 'damper.low', 2],
  ];
  for (const [outer, inner, axis] of ends) {
    const a = known[outer];
    const b = known[inner];
    if (a && b && distance(a, b) >= SHORTEST_AXIS_MM && a[axis] < b[axis]) {
      problems.push({ code: 'ends-swapped', path: outer, value: a.join(' '), other: inner });
    }
  }
  problems.push(...ballOnAxis(known, 'lowerArm'), ...ballOnAxis(known, 'upperArm'));
  return problems;
}

function ballOnAxis(known: Known, arm: 'lowerArm' | 'upperArm'): Problem[] {
  const front = known[`${arm}.front`];
  const rear = known[`${arm}.rear`];
  const ball = known[`${arm}.ball`];
  if (!front || !rear || !ball || distance(front, rear) < SHORTEST_AXIS_MM) return [];
  const axis = subtract(front, rear);
  const [ax, ay, az] = axis;
  const [bx, by, bz] = subtract(ball, rear);
  const away = length([ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx]) / length(axis);
  if (away >= SHORTEST_AXIS_MM || distance(ball, front) < SAME_POINT_MM || distance(ball, rear) < SAME_POINT_MM)
    return [];
  return [{ code: 'cannot-close', path: `${arm}.ball`, value: ball.join(' '), other: `${arm}.front` }];
}

function inchesProblem(known: Known): Problem | undefined {
  const centre = known.wheelCentre;
  const radius = known.loadedRadius;
  const small = (x: number | undefined) => x !== undefined && Math.abs(x) < LARGEST_INCHES;
  if (!centre || !small(centre[1]) || !small(centre[2])) return undefined;
  const everything = ALL_POINT_KEYS.flatMap((key) => [...(known[key] ?? [])]);
  if (!everything.every(small)) return undefined;
  if (radius !== undefined && small(radius))
    return { code: 'looks-like-inches', path: 'loadedRadius', value: radius, limit: LOADED_RADIUS_MM[0] };
  return { code: 'looks-like-inches', path: 'wheelCentre', value: centre.join(' ') };
}

function rightCornerProblem(known: Known): Problem | undefined {
  const centre = known.wheelCentre;
  const ball = known['lowerArm.ball'];
  if (!centre || !(centre[1] < 0) || (ball && ball[1] > 0)) return undefined;
  return { code: 'looks-like-right-corner', path: 'wheelCentre.1', value: centre[1] };
}
