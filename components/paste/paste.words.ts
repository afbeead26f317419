import type { Setup } from '../../core/document/setup.js';
import type { TakeHow } from '../../core/document/take-sets.js';
import { choiceText, explainProblem } from '../../core/quantity/explain.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import type { Reading } from '../../core/readings/reading.js';
import type { CellUnit, SheetQuestion, Understanding } from '../../core/readings/table/understanding.js';
import { columnName } from '../element/left-out.js';
import type { Display } from '../element/sentence.js';
import { lower } from '../element/sentence.js';
import { columnTitle, isTaken, isWaiting, NAMES, quantityOf, SPACE, unitText } from './paste.labels.js';
import { averageQuestion, groupsText, numberWord, setsQuestion } from './paste-sets.words.js';

const mm = (value: number, { units, language }: Display, sign: 'auto' | 'always' = 'auto'): string =>
  formatQuantity(value, 'coordinate', units, { language, sign }).text;
const passCount = (readings: readonly Reading[]): number => new Set(readings.map(({ pass }) => pass)).size;

/** "54 readings in 3 passes" */
const inPasses = (readings: readonly Reading[]): string => {
  const passes = passCount(readings);
  const count = NAMES.readings(readings.length);
  return passes > 1 ? NAMES.inPasses(count, passes) : count;
};

type Sets = Pick<Understanding, 'readings' | 'sets'>;

/** The same; of several sets "54 readings in 2 sets of parts". */
const readingsText = ({ readings, sets }: Sets): string =>
  sets.length > 1 ? NAMES.inSets(NAMES.readings(readings.length), sets.length) : inPasses(readings);

/** "Stock (27 readings in 3 passes) and Lowered joint (27 readings in 3 passes)" */
const setsText = ({ readings, sets }: Sets): string =>
  NAMES.sets(sets.map(({ name, readings: own }) => `${name} (${inPasses(own.map((i) => readings[i]!))})`));

/** How many cells of each kind there are, and why those that count for nothing do not. */
function tally({ cells, columns }: Understanding) {
  const count = { problem: 0, 'no-height': 0, 'no-value': 0, 'not-a-reading': 0, columns: 0, gaps: 0 };
  for (const row of cells) {
    if (row.some(({ why }) => why === 'not-a-reading')) {
      count['not-a-reading']++;
      continue;
    }
    const isReading = row.some(isTaken);
    const isUnread = row.some(({ state }) => state === 'problem') || row.some(isWaiting);
    for (const [i, { state, why }] of row.entries()) {
      if (state === 'problem') count.problem++;
      // What stands beside a cell that cannot be read, or waits for an answer, waits for that one.
      else if (why === 'no-height' || why === 'no-value') count[why] += isUnread ? 0 : 1;
      else if (state === 'empty' && isReading && columns[i]?.role === 'value') count.gaps++;
    }
  }
  count.columns = columns.filter(
    ({ role }, i) => role === 'other' && cells.some((row) => row[i]?.why === 'other-column'),
  ).length;
  return count;
}

/** "54 readings in 3 passes, −40 to +50 mm; 5 gaps; 2 cells cannot be read; 1 column is not used." */
export function summary(understanding: Understanding, display: Display): string {
  const { readings } = understanding;
  const count = tally(understanding);
  const { summary: words } = NAMES;
  let first: string = words.none;
  if (readings.length > 0) {
    let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const { travel } of readings) {
      low = Math.min(low, travel);
      high = Math.max(high, travel);
    }
    const { units, language } = display;
    const from = formatQuantity(low, 'travel', units, { language, sign: 'always', unit: false }).text;
    const to = mm(high, display, 'always');
    const all = readingsText(understanding);
    first = low < high ? words.range(all, from, to) : words.at(all, to);
    if (understanding.sets.length > 1) first = words.ofSets(first, setsText(understanding));
  }
  const told = (amount: number, text: (count: number) => string) => (amount > 0 ? [text(amount)] : []);
  return words.all([
    first,
    ...told(readings.filter((reading) => reading.again).length, words.again),
    ...told(count.gaps, words.gaps),
    ...told(count.problem, words.unread),
    ...told(count['no-height'], words.noHeight),
    ...told(count['no-value'], words.noValue),
    ...told(count['not-a-reading'], words.notReadings),
    ...told(count.columns, words.columns),
  ]);
}

/** What is wrong with one cell, and what to do. */
export function cellProblem(
  name: string,
  problem: Problem,
  quantity: Quantity | undefined,
  { units, language }: Display,
): string {
  if (problem.code === 'wrong-shape') return NAMES.problems.direction(name, String(problem.value));
  return explainProblem(problem, { label: name, quantity, unitSystem: units, language });
}

/** What a number that is asked for is called where it cannot be used. */
export const lengthName = ({ code }: SheetQuestion): string =>
  NAMES.lengths[code === 'base' || code === 'zero' ? code : 'other'];

/** Of the sheet as a whole. */
export function sheetProblem({ code, path, limit, value }: Problem, { quantity }: Understanding): string {
  const { problems: words } = NAMES;
  const angle = NAMES.angles[quantity === 'toe' ? 'toe' : 'camber'];
  if (code === 'out-of-range') return words.tooMany(String(value), limit);
  if (path === 'readings') return words.noFigures(angle);
  if (path === 'pair') return words.oneSided;
  return path === 'travel' ? words.noTravel : words.noAngle(angle);
}

export function takeText({ readings, sets }: Sets): string {
  const { take: words } = NAMES;
  if (readings.length === 0) return words.nothing;
  return sets.length > 1 ? words.sets(sets.length) : words.readings(readings.length);
}
export const haveText = ({ name, readings }: Setup): string => NAMES.take.have(inPasses(readings), name);

export const takenText = (taken: Sets, how: TakeHow): string =>
  NAMES.take.taken(readingsText(taken), how === 'replace');

/** An answer as its button says it. */
export function choiceName(
  question: SheetQuestion,
  index: number,
  understanding: Understanding,
  display: Display,
): string {
  const { id, value } = question.choices[index]!;
  const { code, example } = question;
  const column = understanding.columns[question.cells[0]?.[1] ?? -1];
  const quantity = (column && quantityOf(column, understanding)) ?? 'coordinate';
  if (code === 'comma' && value !== undefined) return choiceText(value, 0, { ...options(display), quantity });
  if (code === 'minutes' && value !== undefined) return choiceText(value, index, { ...options(display), quantity });
  if (code === 'unit') {
    const given = `${example}${id === 'degrees' || id === 'arcminutes' ? '' : SPACE}${unitText(id as CellUnit)}`;
    const own = id === display.units.length || id === display.units.angle;
    return own || value === undefined
      ? given
      : `${given} = ${formatQuantity(value, quantity, display.units, { language: display.language }).text}`;
  }
  if (code === 'front-sign' && question.by === 'tape') return NAMES.choices[id === 'inboard' ? 'outside' : 'middle'];
  if (code === 'pairs') return pairsChoice(question, id);
  if (code === 'sets' && id === 'sets') return capital(NAMES.choices.sets(numberWord(question.groups?.length ?? 2)));
  const { sets: _, inTurn: __, manyPasses: ___, ...names } = NAMES.choices;
  return (names as Readonly<Record<string, string>>)[id] ?? id;
}

/** Of more than two columns each answer says how they are taken. */
function pairsChoice({ groups = [] }: SheetQuestion, id: string): string {
  const { choices: words } = NAMES;
  const count = numberWord(groups.length);
  if (id === 'sets') return capital(words.sets(count));
  if (id === 'passes') return capital(words.manyPasses(count));
  const name = id === 'tape' ? words.tape : words.dials;
  return groups.length > 2 ? words.inTurn(name, numberWord(groups.length / 2)) : name;
}

const options = ({ units, language }: Display) => ({ unitSystem: units, language });

export function questionText(question: SheetQuestion, { columns, quantity }: Understanding): string {
  const { code, example, cells } = question;
  const column = cells[0]?.[1] ?? 0;
  const where = columns[column] ? columnTitle(column, columns[column]) : '';
  const { asks: words } = NAMES;
  switch (code) {
    case 'comma':
      return words.comma(example);
    case 'minutes':
      return words.minutes(example);
    case 'unit':
      return words.unit(example);
    case 'height-or-travel':
      return words.heights(where);
    case 'zero':
      return words.zero;
    case 'bump-sign':
      return words.bump(where, example);
    case 'value-sign':
      return (quantity === 'toe' ? words.toe : words.camber)(where, example);
    case 'pairs':
      return words.pairs(groupsText(question));
    case 'base':
      return words.base;
    case 'front-sign':
      return question.by === 'dials' ? words.frontDial : question.by === 'tape' ? words.frontTape : words.front;
    case 'sets':
      return setsQuestion(question);
    case 'average':
      return averageQuestion(question, columns);
    case 'total':
      return words.total;
  }
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Of a sheet with several sets one height is zero for all. */
export function hintOf({ code }: SheetQuestion, { sets }: Understanding): string | undefined {
  const { asks: words } = NAMES;
  if (code === 'pairs') return words.pairsHint;
  if (code === 'base') return words.baseHint;
  if (code === 'front-sign') return words.frontHint;
  if (code !== 'zero') return undefined;
  return sets.length > 1 ? `${words.zeroHint} ${words.oneZero}` : words.zeroHint;
}

/** What counts until it is answered, for the line at the button: "1.30 is 1.30°". */
export function assumption(
  question: SheetQuestion,
  understanding: Understanding,
  display: Display,
): string | undefined {
  const { choices, chosen, code, example, cells } = question;
  if (chosen === undefined) return undefined;
  const { assumptions: words } = NAMES;
  const index = choices.findIndex(({ id }) => id === chosen);
  if (index < 0) {
    const length = mm(Number(chosen), display);
    return code === 'zero' ? words.zero(length) : code === 'base' ? words.base(length) : length;
  }
  const name = choiceName(question, index, understanding, display);
  const where = columnName(cells[0]?.[1] ?? 0);
  const small = lower(name);
  if (code === 'comma' || code === 'minutes') return words.is(example, name);
  if (code === 'unit') return name;
  if (code === 'sets') return words.sets(groupsText(question), small);
  if (code === 'average') return words.average(where, chosen === 'use');
  if (code === 'total') return words.total(chosen === 'both');
  return words.column(where, example, small);
}

/** The line at the button that takes the readings: what counts meanwhile. */
export function assumptionsText(assumed: readonly string[]): string {
  const more = assumed.length - 3;
  return `${NAMES.untilSaid} ${NAMES.assumptions.all(assumed.slice(0, 3).join('; '), more)}`;
}
