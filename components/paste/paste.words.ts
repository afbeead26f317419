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
import { columnTitle, counted, isTaken, NAMES, quantityOf, SPACE, unitText } from './paste.labels.js';
import { averageQuestion, groupsText, numberWord, setsQuestion } from './paste-sets.words.js';

const mm = (value: number, { units, language }: Display, sign: 'auto' | 'always' = 'auto'): string =>
  formatQuantity(value, 'coordinate', units, { language, sign }).text;
const passCount = (readings: readonly Reading[]): number => new Set(readings.map(({ pass }) => pass)).size;

/** "54 readings in 3 passes" */
const inPasses = (readings: readonly Reading[]): string => {
  const passes = passCount(readings);
  return `${counted(readings.length, 'reading')}${passes > 1 ? ` in ${counted(passes, 'pass', 'passes')}` : ''}`;
};

type Sets = Pick<Understanding, 'readings' | 'sets'>;

/** The same; of several sets "54 readings in 2 sets of parts". */
export const readingsText = ({ readings, sets }: Sets): string =>
  sets.length > 1 ? `${counted(readings.length, 'reading')} in ${sets.length} sets of parts` : inPasses(readings);

/** "Stock (27 readings in 3 passes) and Lowered joint (27 readings in 3 passes)" */
const setsText = ({ readings, sets }: Sets): string => {
  const each = sets.map(({ name, readings: own }) => `${name} (${inPasses(own.map((i) => readings[i]!))})`);
  return each.length > 2 ? each.join(', ') : each.join(' and ');
};

/** How many cells of each kind there are, and why those that count for nothing do not. */
function tally({ cells, columns }: Understanding) {
  const count = { problem: 0, 'no-height': 0, 'no-value': 0, 'not-a-reading': 0, columns: 0, gaps: 0 };
  for (const row of cells) {
    if (row.some(({ why }) => why === 'not-a-reading')) {
      count['not-a-reading']++;
      continue;
    }
    const isReading = row.some(isTaken);
    const isUnread = row.some(({ state }) => state === 'problem');
    for (const [i, { state, why }] of row.entries()) {
      if (state === 'problem') count.problem++;
      // What stands beside a cell that cannot be read waits for that one.
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
  let first = 'No readings yet';
  if (readings.length > 0) {
    let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const { travel } of readings) {
      low = Math.min(low, travel);
      high = Math.max(high, travel);
    }
    const { units, language } = display;
    const from = formatQuantity(low, 'travel', units, { language, sign: 'always', unit: false }).text;
    first = `${readingsText(understanding)}${low < high ? `, ${from} to ` : ' at '}${mm(high, display, 'always')}`;
    if (understanding.sets.length > 1) first += `: ${setsText(understanding)}`;
  }
  const are = (n: number) => (n === 1 ? 'is' : 'are');
  const again = readings.filter((reading) => reading.again).length;
  const parts = [
    first,
    again && `the first height read again at the end ${again > 1 ? `of ${again} passes` : 'of the pass'}`,
    count.gaps && counted(count.gaps, 'gap'),
    count.problem && `${counted(count.problem, 'cell')} cannot be read`,
    count['no-height'] && `${counted(count['no-height'], 'cell')} left out for want of a height`,
    count['no-value'] &&
      `${counted(count['no-value'], 'cell')} left out for want of a figure beside ${count['no-value'] === 1 ? 'it' : 'them'}`,
    count['not-a-reading'] &&
      `${counted(count['not-a-reading'], 'line')} ${are(count['not-a-reading'])} not ${count['not-a-reading'] === 1 ? 'a reading' : 'readings'}`,
    count.columns && `${counted(count.columns, 'column')} ${are(count.columns)} not used`,
  ];
  return `${parts.filter((part) => part).join('; ')}.`;
}

/** What is wrong with one cell, and what to do. */
export function cellProblem(
  name: string,
  problem: Problem,
  quantity: Quantity | undefined,
  { units, language }: Display,
): string {
  if (problem.code === 'wrong-shape') return `${name}: “${String(problem.value)}” is no direction. Write up or down.`;
  return explainProblem(problem, { label: name, quantity, unitSystem: units, language });
}

/** Of the sheet as a whole. */
export function sheetProblem({ code, path, limit, value }: Problem, { quantity }: Understanding): string {
  const angle = quantity === 'toe' ? 'toe' : 'camber';
  if (code === 'out-of-range')
    return `The sheet holds ${String(value)} readings; ${limit} at most can be used. Paste a part of it.`;
  if (path === 'readings') return `No figures are found. Each row needs a height and the ${angle} there.`;
  const what = path === 'travel' ? 'the travel or the height' : `the ${angle}`;
  return `No column is known to hold ${what}. Press the head of the column that does.`;
}

export function takeText({ readings, sets }: Sets): string {
  if (readings.length === 0) return 'Nothing to use yet';
  if (sets.length > 1) return `Use these ${sets.length} sets of parts`;
  return `Use ${readings.length === 1 ? 'this' : 'these'} ${counted(readings.length, 'reading')}`;
}
export const haveText = ({ name, readings }: Setup): string => `You have ${inPasses(readings)} of ${name} already.`;

export const tooManySets = (most: number): string =>
  `More than ${most} sets of parts cannot be kept. Remove some of yours first.`;

export const tooMany = (most: number): string =>
  `With yours that is more than the ${most} readings that can be used. Replace yours, or paste fewer.`;

export const takenText = (taken: Sets, how: TakeHow): string =>
  `${readingsText(taken)} ${how === 'replace' ? 'taken' : 'added'} from the sheet.`;

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
  if (code === 'sets' && id === 'sets') return `${capital(numberWord(question.groups?.length ?? 2))} sets of parts`;
  const names: Record<string, string> = {
    passes: 'Passes of one set',
    'leave-out': 'Leave it out',
    use: 'Take it as readings',
    both: 'Both: half of it is this wheel’s',
    one: 'This one alone: all of it',
    travel: 'Travel',
    height: 'Height, hub centre to arch',
    bump: 'Bump: wheel up',
    droop: 'Droop: wheel down',
    'top-in': 'Top in: negative',
    'top-out': 'Top out: positive',
    'toe-in': 'Toe-in',
    'toe-out': 'Toe-out',
  };
  return names[id] ?? id;
}
const options = ({ units, language }: Display) => ({ unitSystem: units, language });

export function questionText(question: SheetQuestion, { columns, quantity }: Understanding): string {
  const { code, example, cells } = question;
  const column = cells[0]?.[1] ?? 0;
  const where = columns[column] ? columnTitle(column, columns[column]) : '';
  switch (code) {
    case 'comma':
      return `${example} can be read in two ways`;
    case 'minutes':
      return `${example}: decimals, or degrees and minutes?`;
    case 'unit':
      return `In which unit is ${example}?`;
    case 'height-or-travel':
      return `${where}: travel, or heights?`;
    case 'zero':
      return 'Which height is called zero?';
    case 'bump-sign':
      return `${where}: ${example} is bump or droop?`;
    case 'value-sign':
      return quantity === 'toe'
        ? `${where}: ${example} is toe-in or toe-out?`
        : `${where}: does ${example} lean in or out at the top?`;
    case 'base':
      return 'How far apart are the two dials, or the ends of the gauge?';
    case 'sets':
      return setsQuestion(question);
    case 'average':
      return averageQuestion(question, columns);
    case 'total':
      return 'Total toe: did both wheels move together, or this one alone?';
  }
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const QUESTION_HINTS: Partial<Record<SheetQuestion['code'], string>> = {
  zero: 'Hub centre to arch at stock height, on its wheels. On a car that is lowered already: its height now, plus the drop.',
  base: 'Along the plate. Until you say it, the dials give no toe.',
};

/** Of a sheet with several sets one height is zero for all. */
export const hintOf = ({ code }: SheetQuestion, { sets }: Understanding): string | undefined =>
  code === 'zero' && sets.length > 1 ? `${QUESTION_HINTS.zero} ${ONE_ZERO}` : QUESTION_HINTS[code];
const ONE_ZERO =
  'It is the same for all sets of this sheet: where other parts changed how high the car stands, paste each set by itself.';

/** What counts until it is answered, for the line at the button: "1.30 is 1.30°". */
export function assumption(
  question: SheetQuestion,
  understanding: Understanding,
  display: Display,
): string | undefined {
  const { choices, chosen, code, example, cells } = question;
  if (chosen === undefined) return undefined;
  const index = choices.findIndex(({ id }) => id === chosen);
  if (index < 0) {
    const length = mm(Number(chosen), display);
    return code === 'zero' ? `${length} is zero` : code === 'base' ? `dials ${length} apart` : length;
  }
  const name = choiceName(question, index, understanding, display);
  if (code === 'comma' || code === 'minutes') return `${example} is ${name}`;
  if (code === 'unit') return name;
  if (code === 'sets') return `${groupsText(question)} are ${name.charAt(0).toLowerCase()}${name.slice(1)}`;
  if (code === 'average')
    return `column ${columnName(cells[0]?.[1] ?? 0)} is ${chosen === 'use' ? 'read' : 'left out'}`;
  if (code === 'total') return `total toe is ${chosen === 'both' ? 'of both wheels' : 'this wheel’s'}`;
  return `column ${columnName(cells[0]?.[1] ?? 0)} ${example} is ${name.charAt(0).toLowerCase()}${name.slice(1)}`;
}

/** The line at the button that takes the readings: what counts meanwhile. */
export function assumptionsText(assumed: readonly string[]): string {
  const more = assumed.length - 3;
  return `${NAMES.untilSaid} ${assumed.slice(0, 3).join('; ')}${more > 0 ? `; and ${more} more, above` : ''}.`;
}

export const moreProblems = (count: number): string =>
  `And ${counted(count, 'more cell')}, marked ✗ in the sheet: press one to correct it.`;
