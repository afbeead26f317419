import type { LoweringAnswer } from '../../core/answers/lowering.js';
import { type CarDocument, givenPointCount } from '../../core/document/car.js';
import { HARD_POINT_KEYS } from '../../core/linkage/corner.js';
import { explainProblem } from '../../core/quantity/explain.js';
import { formatNumber, formatQuantity } from '../../core/quantity/format.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import type { UnitSystem } from '../../core/quantity/units.js';
import { sheetOfPath } from './bumpline-lowering.fields.js';

/** How a reader wants numbers. */
export interface Reading {
  units: UnitSystem;
  language: string;
}

/** A stretch of a sentence. Values are set in bold, doubt quieter. */
export interface Stretch {
  text: string;
  role?: 'value' | 'doubt';
}

export type ElementState = 'example' | 'incomplete' | 'ready' | 'stale' | 'problem' | 'fault' | 'waiting';

const plain = (text: string): Stretch => ({ text });
const value = (text: string): Stretch => ({ text, role: 'value' });

const show = (amount: number, quantity: Quantity, { units, language }: Reading, plusMinus?: number) =>
  formatQuantity(amount, quantity, units, { language, plusMinus });

/** "30 mm", as it stands in the sentence. The drop is always said as a positive amount: the verb has the sign. */
export const dropText = (drop: number, reading: Reading): string => show(Math.abs(drop), 'drop', reading).text;

export const verb = (drop: number): string => (drop < 0 ? 'Raising' : 'Lowering');

/** What follows "Lowering 30 mm": one or two sentences. */
export function sentence(answer: LoweringAnswer, reading: Reading): Stretch[] {
  return [...changeWords(answer, reading), ...bumpWords(answer, reading), plain('.'), ...turnWords(answer, reading)];
}

/** The whole sentence as it is spoken. */
export function spoken(answer: LoweringAnswer, reading: Reading): string {
  const text = sentence(answer, reading)
    .map((stretch) => stretch.text)
    .join('');
  return `${verb(answer.drop)} ${dropText(answer.drop, reading)}${text}`;
}

function amount(size: number, plusMinus: number | undefined, reading: Reading): Stretch[] {
  const shown = show(size, 'camberChange', reading, plusMinus);
  const [main, doubt] = shown.text.split('\u202f±\u202f');
  return doubt === undefined ? [value(shown.text)] : [value(main!), plain(' '), { text: `±\u202f${doubt}`, role: 'doubt' }];
}

function changeWords({ drop, change }: LoweringAnswer, reading: Reading): Stretch[] {
  const size = Math.abs(change.value);
  if (drop === 0) return [plain(' changes nothing')];
  if (change.plusMinus !== undefined && size <= change.plusMinus) {
    return [plain(' changes camber by '), ...amount(change.value, change.plusMinus, reading), plain(': cannot be told from nothing')];
  }
  if (change.value < 0) return [plain(' adds '), ...amount(size, change.plusMinus, reading), plain(' of negative camber')];
  return [plain(' takes '), ...amount(size, change.plusMinus, reading), plain(' of negative camber away')];
}

function bumpWords({ bumpLeft }: LoweringAnswer, reading: Reading): Stretch[] {
  if (bumpLeft === undefined) return [];
  if (bumpLeft > 0) return [plain(' and leaves '), value(show(bumpLeft, 'travel', reading).text), plain(' of bump')];
  const short = bumpLeft < 0 ? [plain(': the stop is solid '), value(show(-bumpLeft, 'travel', reading).text), plain(' before')] : [];
  return [plain(' and leaves '), value('no bump'), ...short];
}

/** Where the change slows and turns back. */
function turnWords({ drop, reversal, rateBefore, rateAfter, bumpLeft }: LoweringAnswer, reading: Reading): Stretch[] {
  const stop = bumpLeft === undefined ? undefined : bumpLeft + drop;
  if (reversal) {
    // Rounded as its own doubt allows, the doubt itself left for "Why ±".
    const { value: figure, unit } = show(reversal.travel.value, 'travel', reading, reversal.travel.plusMinus);
    const at = value(`${figure}\u202f${unit}`);
    if (drop > reversal.travel.value) return [plain(' Past '), at, plain(' it turns back.')];
    if (stop !== undefined && reversal.travel.value >= stop) {
      return [plain(' It adds ever less, up to the stop.')];
    }
    return [plain(' It adds ever less and turns back at '), at, plain('.')];
  }
  if (drop === 0) return [];
  const slows = Math.abs(rateAfter.value) < Math.abs(rateBefore.value);
  return [plain(slows ? ' It adds ever less.' : ' It adds ever more.')];
}

/** Whose numbers these are: the line above the sentence. */
export function ownership(car: CarDocument): string {
  if (car.curve) return 'From a given curve';
  const count = givenPointCount(car);
  const all = HARD_POINT_KEYS.length;
  if (car.whole !== undefined || count === all) return car.givenBy === 'user' ? 'All points are yours' : 'From given hard points';
  if (count === 0) return 'Example';
  return `${count} of ${all} points ${car.givenBy === 'user' ? 'are yours' : 'are given, the rest is the example’s'}`;
}

/** The next best measurement, or undefined where no doubt was stated or nothing stands out. */
export function hint(answer: LoweringAnswer, car: CarDocument, reading: Reading): string | undefined {
  const top = answer.contributions[0];
  if (!top || top.share < 0.2) return undefined;
  const share = `${formatNumber(top.share * 100, 0, reading.language)}\u202f%`;
  const name = top.id === 'drop' ? 'The drop' : `The ${top.label}`;
  const example = !car.curve && givenPointCount(car) === 0 && car.whole === undefined;
  return example ? `${name} makes ${share} of this ±.` : `${name} makes ${share} of your ±. Measure it next.`;
}

/** Everything that "Why ±" lists, as label and value. */
export function reasons(answer: LoweringAnswer, reading: Reading): { label: string; text: string }[] {
  const rows = [
    { label: 'Camber rate at stock height', text: show(answer.rateBefore.value, 'camberRate', reading, answer.rateBefore.plusMinus).text },
    {
      label: `Camber rate ${dropText(answer.drop, reading)} ${answer.drop < 0 ? 'higher' : 'lower'}`,
      text: show(answer.rateAfter.value, 'camberRate', reading, answer.rateAfter.plusMinus).text,
    },
  ];
  if (answer.reversal) {
    const { travel, change } = answer.reversal;
    rows.push({ label: 'Turns back at', text: `${show(travel.value, 'travel', reading, travel.plusMinus).text} of bump` });
    rows.push({ label: 'Change up to there', text: show(change, 'camberChange', reading).text });
  }
  return rows;
}

export function shares(answer: LoweringAnswer, reading: Reading): { label: string; percent: string; share: number }[] {
  return answer.contributions
    .filter(({ share }) => share >= 0.005)
    .map(({ label, share }) => ({ label, share, percent: `${formatNumber(share * 100, 0, reading.language)}\u202f%` }));
}

/** A problem in words, with the field's name as it stands on its sheet. */
export function problemText(problem: Problem, reading: Reading): string {
  const found = sheetOfPath(problem.path);
  const other = problem.other ? sheetOfPath(problem.other)?.sheet.title : undefined;
  const quantity = problem.path === 'drop' ? 'drop' : found?.field?.quantity;
  const axis = found && found.sheet.fields.length > 1 ? found.field?.label.slice(0, 1) : undefined;
  const label = problem.path === 'drop' ? 'Drop' : found && (axis ? `${found.sheet.title}, ${axis}` : found.sheet.title);
  return explainProblem(problem, { label, otherLabel: other, quantity, unitSystem: reading.units, language: reading.language });
}

/** What the cursor stands on, beside the chart. */
export function atCursor(travel: number, camber: number, change: number, reading: Reading): string {
  const { units, language } = reading;
  const travelText = formatQuantity(travel, 'travel', units, { language, sign: 'always' }).text;
  const camberText = formatQuantity(camber, 'camber', units, { language }).text;
  const changeText = formatQuantity(change, 'camberChange', units, { language, sign: 'always' }).text;
  return `At ${travelText} of travel: ${camberText} (${changeText} from stock height)`;
}

export const NAMES = {
  drop: 'Drop',
  slider: 'Drop: hub centre to arch lip, shorter by',
  chartX: 'Wheel travel',
  chartY: 'Camber',
  stock: 'stock height',
  stop: 'stop',
  outside: 'not known',
  turns: 'turns back',
  numbers: 'Numbers this rests on',
  why: 'Why ±',
  doubtNote: 'Every ± on this page is a 95 % interval.',
  noDoubt: 'No ± is shown because none was stated for these numbers. Say how sure you are of each and it appears.',
  approximate: 'front view, approximate',
  waiting: 'Working it out …',
  fault: 'The calculation failed. This is our fault, not yours; your numbers are kept.',
  retry: 'Try again',
  undo: 'Undo',
  next: 'Next point',
  done: 'Done',
  remove: 'Take the example’s value again',
  removeOptional: 'Leave it out',
  howSure: 'How sure?',
  orFigure: 'or ±',
  stale: 'Shown dimmed: the last answer that worked.',
} as const;

/** "30 mm lower", at the marker of the new height. */
export const heightName = (drop: number, reading: Reading): string =>
  drop === 0 ? NAMES.stock : `${dropText(drop, reading)} ${drop < 0 ? 'higher' : 'lower'}`;
