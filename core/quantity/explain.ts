import { FORMAT, formatNumber, formatQuantity } from './format.js';
import type { Problem, ProblemCode } from './problem.js';
import { QUANTITIES, type Quantity } from './quantities.js';
import { ARCMINUTES_PER_DEGREE, type Dimension, METRIC, toShown, type UnitSystem } from './units.js';
import { words } from './words.js';

export interface ExplainOptions {
  /** Name of the field for people, e.g. "Drop"; the problem's path by default. */
  label?: string | undefined;
  /** Name of the second field that a problem involves; the problem's `other` by default. */
  otherLabel?: string | undefined;
  /** What the field holds: limits and values are then shown in the user's unit. */
  quantity?: Quantity | undefined;
  unitSystem?: UnitSystem | undefined;
  language?: string | undefined;
}

/** What the text of a problem is made of. */
export interface ToldProblem {
  field: string;
  other: string;
  given: string;
  isGiven: boolean;
  limit: string;
  choices: string[];
  /** What is understood. */
  names: readonly string[];
  /** A second thing is named. */
  isTwice: boolean;
  /** How a number is written, by the language's decimal mark. */
  like: string;
  /** Which side of the range was left; undefined when that cannot be told. */
  below: boolean | undefined;
  dimension: Dimension | undefined;
  unit: string;
}

/** Of what has a unit of its own for everybody, which others are understood. */
const UNITS = {
  m: 'Use m, mm, cm, ft or in',
  'N/mm': 'Use N/mm, kN/m, kg/mm or lb/in',
};

/** English words of what is wrong, and how it is put right. */
export const EXPLAIN = words('quantity/explain', {
  texts: {
    missing: ({ field }) => `${field} is missing. Enter a value.`,
    'not-a-number': ({ field, given, like }) => `${field}: ${given} cannot be read as a number. Write it like ${like}.`,
    'not-finite': ({ field, given, like }) =>
      `${field}: ${given} is not a number that can be measured. Write it like ${like}.`,
    ambiguous: ({ field, given, choices }) =>
      `${field}: ${given} can mean ${choices.join(' or ') || 'two things'}. Choose one.`,
    'wrong-unit': ({ field, given, dimension, unit }) =>
      `${field}: the unit in ${given} does not fit. ${
        dimension === undefined || dimension === 'plain'
          ? ((UNITS as Readonly<Record<string, string>>)[unit] ?? 'Use another one, or none')
          : dimension === 'length'
            ? 'Use mm, cm or in'
            : 'Use ° or ′'
      }.`,
    'out-of-range': ({ field, given, limit, below }) =>
      `${field} is ${given}, which is not possible. Enter ${
        below === undefined ? `a value within the limit of ${limit}` : `${limit} or ${below ? 'more' : 'less'}`
      }.`,
    'wrong-shape': ({ field, given, isTwice, other }) =>
      isTwice
        ? `${field}: ${given} says again what ${other} says. Leave one of them out.`
        : `${field}: ${given} is not what belongs here. Check its name, kind and length.`,
    'unknown-name': ({ field, given, names }) =>
      `${field}: ${given} is not understood. ${names.length > 0 ? `Use ${names.slice(0, -1).join(', ')}${names.length > 1 ? ' or ' : ''}${names.at(-1)}` : 'Leave it out'}.`,
    coincide: ({ field, other }) => `${field} and ${other} are the same point. Measure again and correct one of them.`,
    'no-direction': ({ field, other }) =>
      `${field} and ${other} are too close together to give a direction. Measure again, or choose points further apart.`,
    'cannot-close': ({ field, given, isGiven, isTwice, other }) =>
      isTwice
        ? `With ${field} ${other} no longer reaches. Choose a smaller amount, or check its sign.`
        : `The links do not fit together: ${field}${isGiven ? ` (${given})` : ''} cannot be reached. Check all points for a wrong sign or swapped digits.`,
    'looks-like-inches': ({ field, given }) =>
      `${field} is ${given}, which looks like inches. Enter millimetres, or set the unit to inches.`,
    inconsistent: ({ field, given, names, isTwice }) =>
      `${field} do not fit the car as it was measured: the two are ${given} times as far apart as both ± allow. ${
        isTwice
          ? 'With a sign or a unit changed they would. Check which way is positive.'
          : `Check that they are of this car, which parts were on, and the height called zero.${names.length > 0 ? ` Then measure again: ${names.join(', ')}.` : ''}`
      }`,
    'looks-like-unit': ({ field, given, names, choices }) =>
      `${field} is ${given}, which looks like ${names[0]}: that would be ${choices[0]}. Type the unit after the number.`,
    'looks-like-right-corner': ({ field, given }) =>
      `${field} is ${given}, which looks like the right corner. Give the left one: y is positive there.`,
    'ends-swapped': ({ field, other, given }) =>
      `${field} (${given}) and ${other} look swapped. Exchange the two, or check their signs.`,
    'too-few': ({ field, given, limit }) =>
      `${field}: ${given} are too few, ${limit} are needed. Add some, or ask for less.`,
    'outside-domain': ({ field, given, limit, below }) =>
      `${field} is ${given}, outside what is known, which ends at ${limit}. Enter ${
        below === undefined ? 'a value within it' : `${limit} or ${below ? 'more' : 'less'}`
      }.`,
  } satisfies Record<ProblemCode, (told: ToldProblem) => string>,
  input: 'The input',
  another: 'another point',
  possible: 'what is possible',
  nothing: 'nothing',
  quoted: (text: string): string => `“${text}”`,
  or: ' or ',
  /** What is named by its path alone: an attribute, or a place in a page’s table, such as `row 3`, `Heading “Camber”`, `Unit of “Track”`. */
  path: (path: string): string => path,
});

/** A plain sentence or two for a problem: names the field, the value and the remedy. */
export function explainProblem(problem: Problem, options: ExplainOptions = {}): string {
  const { quantity, unitSystem = METRIC, language } = options;
  const { limit, value, path, other } = problem;
  const show = (figure: number) =>
    quantity ? formatQuantity(figure, quantity, unitSystem, { language }).text : formatNumber(figure, 6, language);
  const traits = quantity && QUANTITIES[quantity];
  let below: boolean | undefined;
  if (typeof value === 'number' && limit !== undefined) below = value < limit;
  else if (traits && (limit === traits.min || limit === traits.max)) below = limit === traits.min;
  return EXPLAIN.texts[problem.code]({
    field: options.label || (path && EXPLAIN.path(path)) || EXPLAIN.input,
    other: options.otherLabel || (other && EXPLAIN.path(other)) || EXPLAIN.another,
    given: typeof value === 'number' && Number.isFinite(value) ? show(value) : quoted(value),
    limit: limit === undefined ? EXPLAIN.possible : show(limit),
    choices: (problem.choices ?? []).map((figure, i) => choiceText(figure, i, options)),
    isGiven: value !== undefined,
    names: problem.names ?? [],
    isTwice: other !== undefined,
    like: writtenLike(traits?.dimension, language),
    below,
    dimension: traits?.dimension,
    unit: traits?.unit ?? '',
  });
}

/**
 * One reading of an ambiguous text, for its sentence and its button: a length with every digit typed; an angle first as decimal
 * degrees, then in minutes, with every digit typed too.
 *
 * @param index its place in the problem's `choices`
 */
export function choiceText(figure: number, index: number, options: ExplainOptions = {}): string {
  const { quantity, unitSystem = METRIC, language } = options;
  if (!quantity) return formatNumber(figure, 6, language);
  const { dimension, unit } = QUANTITIES[quantity];
  if (dimension === 'plain') return `${formatNumber(figure, 3, language)}\u202f${FORMAT.unit(unit)}`;
  if (dimension === 'length') {
    return `${formatNumber(toShown(figure, 'length', unitSystem), 3, language)}\u202f${unitSystem.length}`;
  }
  const minutes = figure * ARCMINUTES_PER_DEGREE;
  const isPart = Math.abs(minutes - Math.round(minutes)) > 1e-6;
  if (index && dimension === 'angle' && isPart) return `${formatNumber(minutes, 2, language)}′`;
  const angle = index ? 'arcminutes' : 'degrees';
  return formatQuantity(figure, quantity, { ...unitSystem, angle }, { language }).text;
}

/** Examples of how to write a number of this dimension. */
function writtenLike(dimension: Dimension | undefined, language: string | undefined): string {
  if (dimension === 'length' || dimension === 'plain') return `${formatNumber(12.5, 1, language)}${EXPLAIN.or}1 1/2`;
  const decimal = formatNumber(dimension === 'angle' ? -1.5 : 1.5, 1, language);
  return dimension === 'angle' ? `${decimal}${EXPLAIN.or}−0°18′` : `${decimal}, 1 1/2${EXPLAIN.or}−0°18′`;
}

/** What was given, short enough for a sentence. */
function quoted(value: unknown): string {
  if (value === undefined || value === null || value === '') return EXPLAIN.nothing;
  if (typeof value === 'number') return String(value);
  let text: string;
  try {
    text = typeof value === 'string' ? value : (JSON.stringify(value) ?? typeof value);
  } catch {
    text = typeof value;
  }
  return EXPLAIN.quoted(text.length > 40 ? `${text.slice(0, 39)}…` : text);
}
