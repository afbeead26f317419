import type { Corner } from '../../core/linkage/corner.js';
import type { PartData } from '../../core/linkage/parts/part-kinds.js';
import { explainProblem } from '../../core/quantity/explain.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { Problem } from '../../core/quantity/problem.js';
import { shownName } from '../car/shown-names.words.js';
import type { Display } from '../element/sentence.js';
import { FITTED } from './fitted.labels.js';
import { linkName, placeOf } from './fitted-problem.js';
import { amountIn, entryOf, hasTieRod, type PartField } from './part-entries.js';
import { PARTS } from './parts.labels.js';

/** "lower joint +22 mm, tie rod corrected", "top mount inboard +15 mm, rearward +3 mm" */
export function partText(data: PartData, { units, language }: Display): string {
  const entry = entryOf(data);
  if (!entry) return String(data.part);
  const { key, fields } = entry;
  const amounts = fields.flatMap((field) => {
    const amount = field.isBeside ? undefined : amountIn(data, field);
    if (!amount) return [];
    const size = formatQuantity(amount, field.quantity, units, { language, sign: 'always' }).text;
    return field.brief ? `${field.brief} ${size}` : size;
  });
  const rod = hasTieRod(data) ? [data.correctTieRod ? PARTS.rod.corrected : PARTS.rod.asItWas] : [];
  const [first, ...others] = amounts;
  const named = [PARTS.kinds[key].short, ...(first ? [first] : [])].join(' ');
  return [named, ...others, ...rod].join(', ');
}

/** What a set of parts is, in one line. */
export const partsText = (parts: readonly PartData[], display: Display): string =>
  parts.map((data) => partText(data, display)).join('; ');

/** What is wrong with one amount, counted the way it is asked for. */
export function fieldProblemText(problem: Problem, { label, quantity, sense }: PartField, display: Display): string {
  const turned = (figure: unknown) => (typeof figure === 'number' ? sense * figure : figure);
  const limit = turned(problem.limit) as number | undefined;
  return explainProblem(
    { ...problem, value: turned(problem.value), ...(limit !== undefined && { limit }) },
    { label, quantity, unitSystem: display.units, language: display.language },
  );
}

/** What is wrong with a text that was typed for a part of a set, by its path in drafts; undefined of any other. */
export function draftProblemText(
  problem: Problem,
  setup: { name: string; parts?: readonly PartData[] | undefined } | undefined,
  display: Display,
): string | undefined {
  const place = placeOf({ ...problem, path: problem.path.replace(/^setups\.\d+\./, '') });
  const data = place && setup?.parts?.[place.at];
  const entry = data && entryOf(data);
  if (!entry) return undefined;
  const { key, fields, isAngle } = entry;
  const field = fields.find(({ path }) => path === place.path) ?? plusMinusField(isAngle);
  return `${shownName(setup.name)}, ${PARTS.kinds[key].title}: ${fieldProblemText(problem, { ...field, sense: 1 }, display)}`;
}

/** How far a part can be trusted, as a field. */
export const plusMinusField = (isAngle: true | undefined): PartField => ({
  path: 'plusMinus',
  label: `${PARTS.within} ${PARTS.plusMinus}`,
  quantity: isAngle ? 'plusMinusAngle' : 'plusMinusLength',
  sense: 1,
});

/** What is wrong with the list of parts, by its core's paths: `parts.1.mm`, `parts.1`, `alignment`. */
export function partProblemText(
  problem: Problem,
  parts: readonly PartData[],
  kind: Corner['kind'] | undefined,
  display: Display,
): string {
  if (problem.path === 'alignment') return FITTED.cannotSet[problem.other === 'camber' ? 'camber' : 'toe'];
  const place = placeOf(problem);
  const data = place && parts[place.at];
  const options = { unitSystem: display.units, language: display.language };
  const entry = data && entryOf(data);
  if (!entry) return explainProblem(problem, options);
  const { key, fields } = entry;
  const { what, title } = PARTS.kinds[key];
  if (problem.code === 'cannot-close') {
    return explainProblem(problem, { ...options, label: what, otherLabel: linkName(problem) });
  }
  const field = fields.find(({ path }) => path === place.path);
  if (field) return `${title}: ${fieldProblemText(problem, field, display)}`;
  const isNowhere = problem.code === 'wrong-shape' && ['part', 'joint', 'arm'].includes(place.path);
  if (isNowhere && kind) return PARTS.notOn[kind](what);
  return explainProblem(problem, { ...options, label: title });
}
