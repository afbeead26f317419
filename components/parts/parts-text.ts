import type { Corner } from '../../core/linkage/corner.js';
import type { PartData } from '../../core/linkage/parts/part-kinds.js';
import { explainProblem } from '../../core/quantity/explain.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Display } from '../element/sentence.js';
import { amountIn, entryOf, hasTieRod, type PartField } from './part-entries.js';
import { PARTS } from './parts.labels.js';

/** "lower joint +22 mm, tie rod corrected" */
export function partText(data: PartData, { units, language }: Display): string {
  const { key, fields } = entryOf(data);
  const amounts = fields.flatMap((field) => {
    const amount = field.path.startsWith('otherBolt') ? undefined : amountIn(data, field);
    if (!amount) return [];
    return formatQuantity(amount, field.quantity, units, { language, sign: 'always' }).text;
  });
  const rod = hasTieRod(data) ? [data.correctTieRod ? PARTS.rod.corrected : PARTS.rod.asItWas] : [];
  return [[PARTS.kinds[key].short, ...amounts].join(' '), ...rod].join(', ');
}

/** What a set of parts is, in one line. */
export const partsText = (parts: readonly PartData[], display: Display): string =>
  parts.map((data) => partText(data, display)).join('; ');

/** Which part a problem of the core is of, and where in it: `parts.1.mm` → 1, `mm`. */
export function placeOf({ path }: Problem): { at: number; path: string } | undefined {
  const found = /^parts\.(\d+)(?:\.(.+))?$/.exec(path);
  return found ? { at: Number(found[1]), path: found[2] ?? '' } : undefined;
}

/** What is wrong with one amount, counted the way it is asked for. */
export function fieldProblemText(problem: Problem, { label, quantity, sense }: PartField, display: Display): string {
  const turned = (figure: unknown) => (typeof figure === 'number' ? sense * figure : figure);
  const limit = turned(problem.limit) as number | undefined;
  return explainProblem(
    { ...problem, value: turned(problem.value), ...(limit !== undefined && { limit }) },
    { label, quantity, unitSystem: display.units, language: display.language },
  );
}

/** What is wrong with the list of parts, by its core's paths: `parts.1.mm`, `parts.1`, `alignment`. */
export function partProblemText(
  problem: Problem,
  parts: readonly PartData[],
  kind: Corner['kind'] | undefined,
  display: Display,
): string {
  if (problem.path === 'alignment') return PARTS.cannotSet[problem.other === 'camber' ? 'camber' : 'toe'];
  const place = placeOf(problem);
  const data = place && parts[place.at];
  const options = { unitSystem: display.units, language: display.language };
  if (!data) return explainProblem(problem, options);
  const { key, fields } = entryOf(data);
  const { what, title } = PARTS.kinds[key];
  if (problem.code === 'cannot-close') {
    const { other } = problem;
    const link = other !== undefined && other in PARTS.links ? PARTS.links[other as keyof typeof PARTS.links] : other;
    return explainProblem(problem, { ...options, label: what, otherLabel: link });
  }
  const field = fields.find(({ path }) => path === place.path);
  if (field) return `${title}: ${fieldProblemText(problem, field, display)}`;
  const isNowhere = problem.code === 'wrong-shape' && ['part', 'joint', 'arm'].includes(place.path);
  if (isNowhere && kind) return PARTS.notOn[kind](what);
  return explainProblem(problem, { ...options, label: title });
}
