import type { ReadingsAnswer } from '../../core/answers/readings.js';
import type { Curve } from '../../core/curve/curve.js';
import type { Candidate, CurveFit } from '../../core/curve/curve-fit.js';
import type { Setup } from '../../core/document/setup.js';
import { studentTQuantile } from '../../core/math/student-t.js';
import { explainProblem } from '../../core/quantity/explain.js';
import { formatNumber, formatQuantity } from '../../core/quantity/format.js';
import type { Problem } from '../../core/quantity/problem.js';
import { words } from '../../core/quantity/words.js';
import { DEFAULT_DOUBTS } from '../../core/readings/doubts.js';
import type { ReadingQuantity } from '../../core/readings/reading.js';
import { isReturned } from '../../core/readings/returned.js';
import { shownName } from '../car/shown-names.words.js';
import { type DoubtKey, doubtFields, doubtText, instrumentOf, isDriftAllowed } from '../element/doubts.words.js';
import { counted, type Display, show } from '../element/sentence.js';
import type { PassView } from './pass-view.js';

/** All English words of the element besides those of its first answer, of its grid and of its warnings. */
export const NAMES = words('readings/labels', {
  travel: 'Wheel travel',
  camber: 'Camber',
  toe: 'Toe',
  zero: 'zero',
  turns: 'turns back',
  hatched: 'Hatched: not measured, so there is no curve. Dotted: where 95 of 100 further readings would fall.',
  left: 'Scatter around the curve',
  onePass: 'One pass',
  curve: 'Curve',
  ofCurve: 'curve',
  changeFromZero: 'Change from zero',
  rawMean: 'Plain mean',
  count: 'Readings',
  type: 'Type readings in',
  typeOn: 'Continue typing',
  paste: 'Paste a sheet',
  closeGrid: 'Done typing',
  asRead: 'Show as read',
  oneZero: 'Show with one zero',
  corner: 'Corner',
  setup: 'Set of parts',
  setupName: 'Its name',
  newSetup: 'New set of parts',
  removeSetup: 'Remove this set',
  quantity: 'What the gauge read',
  degree: 'Degree of the curve',
  byEvidence: 'automatic',
  how: 'How the curve was fitted',
  residuals: 'Scatter around the curve, reading by reading',
  setAside: 'Set aside',
  takeBack: 'Take it back in',
  wrong: 'Worth a second look',
  inclination:
    'A gauge on the hub reads the wheel’s inclination against the ground it was zeroed on. With the steering straight that is camber.',
  missing: 'This part could not be fetched. Check the connection and press the button again; your readings are kept.',
  more: (count: number): string => `Show ${count} more`,
  shown: 'Set of parts shown',
  zeroAt: 'At zero the car was lowered by',
  zeroNote: 'Enter 0 if your zero is stock height. The lowering calculator counts from stock height.',
  newName: 'New parts',
  notOwn: 'These are not your readings. Your first change starts a set of your own.',
  candidates: 'Degrees that were tried',
  candidateHeads: ['Degree', 'Scatter', 'Readings to spare', 'Score (lower is better)'],
  taken: '(used)',
  coefficients: 'Coefficients for travel in mm, in degrees, each with its standard uncertainty:',
  standardUncertainty: (size: string): string => `(standard uncertainty ${size})`,
  doubt: 'Every ± and every band is a 95 % interval.',
  rounds: 'All readings count the same, and each pass has a zero of its own. Nothing is drawn beyond the readings.',
  why: 'Why ±, and what it leaves out',
  chart: (quantity: string, count: number, from: string, to: string): string =>
    `${quantity} over wheel travel: ${count} readings and the curve through them, from ${from} to ${to}.`,
  residualChart: 'Scatter around the curve, reading by reading.',
  table: (quantity: string, corner: string, set: string): string =>
    `${quantity} over wheel travel, ${corner.toLowerCase()}, ${set}`,
  plusMinus: '±',
  rSquared: (share: string, typical: string): string =>
    `R² ${share}: the share of the readings’ spread that the curve explains. A longer travel alone raises it; how well you read the gauge shows in the ${typical} by which a reading typically misses the curve.`,
  ways: { up: '↑ going up', down: '↓ going down', both: '↕ both ways' },
  readings: (count: number): string => counted(count, 'reading'),
  ofZero: (count: string, zero: string): string => `${count}, zero ${zero}`,
  upDown: (size: string): string => `Going up reads ${size} compared with going down: that is play and friction.`,
  chosenDegree: (degree: number): string => `Degree ${degree}, as you chose.`,
  bestDegree: (degree: number, tried: number, more: number): string =>
    `Degree ${degree}. Of ${counted(tried, 'degree')} tried, ${degree - more} predicts best${more === 0 ? '.' : `; ${more} more, because a linkage is not a polynomial, and on simulated cars the bands of the simpler curve came out too narrow.`}`,
  facts: {
    residual: 'Scatter around the curve (residual standard deviation)',
    repeated: 'Scatter of readings repeated at one height',
    nothingRepeated: 'nothing repeated',
    freedom: 'Readings to spare (degrees of freedom)',
    rSquared: 'R²',
    adjusted: 'Adjusted R²',
  },
  setAsideCount: (count: number): string => `${counted(count, 'reading')} set aside by you.`,
  zeros: (size: string | undefined): string =>
    `The zeros of the passes differ. That moves the whole curve, but not its shape: ${size === undefined ? 'two passes cannot tell by how much.' : `its height is known to ±${size}.`}`,
  noDrift: (instrument: string, size: string): string =>
    `No drift of the ${instrument} shows in these passes: ${size} from the first reading of a pass to its last.`,
  drift: (instrument: string, size: string): string =>
    `The ${instrument} drifted by ${size} from the first reading of a pass to its last. That is taken off.`,
  driftAllowed: (instrument: string, size: string): string =>
    `These passes cannot tell whether the ${instrument} drifted, so every ± allows for ${size} a pass. Read the first height again at the end of each pass, and the ± narrows.`,
  driftReturned: (instrument: string, size: string): string =>
    `The first heights that were read again cannot tell whether the ${instrument} drifted, so every ± allows for ${size} a pass. Another pass narrows it.`,
  cursorUnmeasured: (travel: string): string => `${travel}: not measured`,
  cursor: (travel: string, quantity: ReadingQuantity, value: string, change: string | undefined): string =>
    `${travel}: ${quantity} ${value}${change === undefined ? '' : `, ${change} from zero`}`,
  cell: (row: number, column: number): string => `This page’s table, row ${row}, column ${column}`,
  fields: {
    over: 'Travel',
    zeroAt: 'Drop at zero',
    degree: 'Degree of the curve',
    readings: 'The readings',
    table: 'This page’s table',
    quantity: 'The quantity',
    doubts: 'The table’s data-doubts',
    zero: 'The table’s data-zero',
    base: 'The table’s data-base',
    front: 'The table’s data-front (inboard or outboard)',
    pair: 'A column at the front or at the rear',
  },
});

/** "+25 mm". */
export const overName = (over: number, { units, language }: Display): string =>
  formatQuantity(over, 'travel', units, { language, sign: 'always' }).text;

/** What R² says and does not say, in one line. */
export function rSquaredLine({ fit }: ReadingsAnswer, display: Display): string {
  const r = formatNumber(Math.min(fit.rSquared, 1), 5, display.language);
  return NAMES.rSquared(r, residualText(fit.residualSd, display));
}

/** A standard deviation, to two figures. */
function residualText(sd: number, { units, language }: Display): string {
  if (units.angle === 'arcminutes') return `${formatNumber(sd * 60, 1, language)}′`;
  return `${formatNumber(sd, sd < 0.01 ? 4 : 3, language)}°`;
}

/** "Pass 2 ↓ going down: 16 readings, 0.05° ± 0.02° lower than the mean of all passes". */
export function passText({ name, going, offset, standardError, readings }: PassView, display: Display): string {
  const way = going ? ` ${NAMES.ways[going]}` : '';
  const count = NAMES.readings(readings.length);
  if (!Number.isFinite(offset)) return `${name}${way}: ${count}`;
  const zero = formatQuantity(offset, 'camberChange', display.units, {
    language: display.language,
    sign: 'always',
    plusMinus: standardError * 2,
  }).text;
  return `${name}${way}: ${NAMES.ofZero(count, zero)}`;
}

/** Play and friction, where both ways were read. */
export function upDownText({ fit }: ReadingsAnswer, display: Display): string | undefined {
  const { upLessDown } = fit;
  if (!upLessDown) return undefined;
  const { value, standardError } = upLessDown;
  const size = formatQuantity(value, 'camberChange', display.units, {
    language: display.language,
    sign: 'always',
    plusMinus: standardError * 2,
  }).text;
  return NAMES.upDown(size);
}

/** Why this degree. */
export function degreeText({ candidates, degree }: CurveFit, isChosen: boolean): string {
  if (isChosen) return NAMES.chosenDegree(degree);
  const best = candidates.reduce((least, one) => (one.criterion < least.criterion ? one : least));
  return NAMES.bestDegree(degree, candidates.length, degree - best.degree);
}

/** One row of the table of degrees. */
export const candidateRow = ({ degree, criterion, residualSd, dof }: Candidate, display: Display): string[] => [
  String(degree),
  residualText(residualSd, display),
  String(dof),
  Number.isFinite(criterion) ? formatNumber(criterion, 1, display.language) : '–',
];

/** The figures behind the fit. */
export function fitFacts({ fit }: ReadingsAnswer, display: Display): { label: string; text: string }[] {
  const { repeatability } = fit;
  const { facts } = NAMES;
  return [
    { label: facts.residual, text: residualText(fit.residualSd, display) },
    {
      label: facts.repeated,
      text: repeatability ? residualText(repeatability.sd, display) : facts.nothingRepeated,
    },
    { label: facts.freedom, text: String(fit.dof) },
    { label: facts.rSquared, text: formatNumber(fit.rSquared, 6, display.language) },
    { label: facts.adjusted, text: formatNumber(fit.adjustedRSquared, 6, display.language) },
  ];
}

const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** Each coefficient with its standard uncertainty, in the API's units and with a decimal point: to be copied. */
export const coefficientRows = ({ powerCoefficients, coefficientSd }: CurveFit): string[] =>
  [...powerCoefficients].map((coefficient, power) => {
    const unit = power === 0 ? '' : ` · t${power === 1 ? '' : SUPERSCRIPTS[power]}`;
    return `${coefficient.toPrecision(8)}${unit}  ${NAMES.standardUncertainty(coefficientSd[power]!.toPrecision(2))}`;
  });

/** Fewer zeros say nothing of how far they scatter. */
const FEWEST_ZEROS = 3;

/** What the passes' zeros leave open. */
export function zeroText({ fit, passes }: ReadingsAnswer, display: Display): string {
  if (passes < FEWEST_ZEROS) return NAMES.zeros(undefined);
  const half = fit.zeroSd * studentTQuantile(0.975, passes - 1);
  return NAMES.zeros(show(half, 'camberChange', display));
}

/** What became of the gauge's drift. */
export function driftText({ fit }: ReadingsAnswer, setup: Setup, display: Display): string {
  const { drift, curve } = fit;
  const by = instrumentOf(setup);
  if (drift) {
    const { units, language } = display;
    const plusMinus = drift.standardError * 2;
    const size = formatQuantity(drift.value, 'camberChange', units, { language, sign: 'always', plusMinus }).text;
    if (Math.abs(drift.value) <= plusMinus) return NAMES.noDrift(by, size);
    return NAMES.drift(by, size);
  }
  if (!isDriftAllowed(curve)) return '';
  const allowed = doubtText('drift', setup.doubts?.drift ?? DEFAULT_DOUBTS.drift, display);
  return isReturned(setup.readings, setup.setAside)
    ? NAMES.driftReturned(by, allowed)
    : NAMES.driftAllowed(by, allowed);
}

/** A travel of the chart, read aloud. */
export function atCursor(
  travel: number,
  curve: Curve,
  { quantity }: ReadingsAnswer,
  { units, language }: Display,
): string {
  const at = formatQuantity(travel, 'travel', units, { language, sign: 'always' }).text;
  const value = curve.value(travel);
  if (!Number.isFinite(value)) return NAMES.cursorUnmeasured(at);
  const change = curve.change(travel, 0);
  const from = Number.isFinite(change)
    ? formatQuantity(change, 'camberChange', units, { language, sign: 'always' }).text
    : undefined;
  return NAMES.cursor(at, quantity, formatQuantity(value, quantity, units, { language }).text, from);
}

/** A problem in words, its reading named by pass and height. */
export function problemText(problem: Problem, setup: Setup, display: Display): string {
  const [first, index, field] = problem.path.split('.');
  const { language, units } = display;
  if (/^(?:Heading|Caption)/.test(problem.path)) return explainProblem(problem, { language });
  if (first === 'table' && field !== undefined) {
    const label = NAMES.cell(Number(index) + 1, Number(field) + 1);
    return explainProblem(problem, { label, language });
  }
  const reading = first === 'readings' && index !== undefined ? setup.readings[Number(index)] : undefined;
  if (reading) {
    const at = formatQuantity(reading.travel, 'travel', units, { language, sign: 'always' }).text;
    return explainProblem(problem, {
      label: `${reading.pass === undefined ? NAMES.onePass : shownName(reading.pass)}, ${at}`,
      language,
    });
  }
  const doubt = doubtFields()[first as DoubtKey] as ReturnType<typeof doubtFields>[DoubtKey] | undefined;
  const label = doubt?.label ?? (NAMES.fields as Readonly<Record<string, string>>)[first!] ?? first;
  const quantity = doubt?.quantity ?? ({ over: 'travel', zeroAt: 'drop' } as const)[first as 'over' | 'zeroAt'];
  return explainProblem(problem, { label, quantity, language, unitSystem: units });
}
