import type { Setup } from '../../core/document/setup.js';
import { readLengthAttribute } from '../../core/quantity/attribute.js';
import { numberProblem, shown } from '../../core/quantity/number-problem.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { ReadingDoubts } from '../../core/readings/doubts.js';
import type { Reading } from '../../core/readings/reading.js';
import type { Understanding } from '../../core/readings/table/understanding.js';
import { inTime } from '../delivery/in-time.js';
import { carScript } from '../page-data/car-script.js';
import { DATA_SCRIPT, DATA_TABLE } from '../page-data/data-marks.js';
import { tableProblems } from '../page-data/table-problems.js';
import { FIRST } from './first.words.js';

const QUANTITIES = ['camber', 'toe'] as const;

/** What a page may say in attributes and properties. */
export interface ReadingsAttributes {
  over: string | number | undefined;
  quantity: 'camber' | 'toe' | undefined;
  degree: string | number | undefined;
  readings: readonly Reading[] | undefined;
}

/** A table of readings, as it was understood. */
export interface PageTable {
  understanding?: Understanding;
  caption?: string;
  doubts?: ReadingDoubts | undefined;
  doubtProblems?: Problem[];
  problem?: Problem;
}

export const quantityOf = ({ quantity }: ReadingsAttributes): 'camber' | 'toe' =>
  quantity === 'toe' ? 'toe' : 'camber';

/** The table of readings inside an element; its reader comes only where there is one. None beside a whole car. */
export function tableIn(host: HTMLElement, quantity: 'camber' | 'toe'): PageTable | Promise<PageTable> {
  if (carScript(host)) return {};
  const table = host.querySelector<HTMLTableElement>(DATA_TABLE);
  if (table) return readTable(table, quantity);
  const script = host.querySelector(DATA_SCRIPT);
  return script ? { problem: { code: 'wrong-shape', path: 'JSON script', value: script.textContent } } : {};
}

/** The page's sets of parts with their readings: by the `readings` property, else by the table; undefined where it gives none. */
export function pageSetups(page: ReadingsAttributes, table: PageTable): Setup[] | undefined {
  const { readings } = page;
  const { understanding, caption, doubts } = table;
  const given = readings ? readings.filter?.(isReading) : understanding?.readings;
  if (!given) return undefined;
  const degree = degreeOf(page);
  const made = (name: string, own: readonly Reading[]): Setup => ({
    name,
    cornerName: 'Front left',
    quantity: quantityOf(page),
    readings: own,
    ...(!readings && doubts && { doubts }),
    ...(!readings && understanding?.overBase && { overBase: understanding.overBase }),
    ...(degree !== undefined && { degree }),
  });
  const sets = readings ? [] : (understanding?.sets ?? []);
  if (sets.length > 1) {
    return sets.map(({ name, readings: own }) =>
      made(
        name,
        own.map((i) => given[i]!),
      ),
    );
  }
  return [made(caption || sets[0]?.name || FIRST.ofPage, given)];
}

/** NaN where the attribute says none; `auto` is what it is without. */
const degreeOf = ({ degree }: ReadingsAttributes): number | undefined =>
  degree === undefined || degree === null || degree === '' || degree === 'auto' ? undefined : Number(degree);

/** The travel that the page asks about; undefined where it asks about none. */
export const readOver = ({
  over,
}: Pick<ReadingsAttributes, 'over'>): ReturnType<typeof readLengthAttribute> | undefined =>
  over === undefined || over === null ? undefined : readLengthAttribute(String(over), 'travel', 'over');

/** What is wrong with the page's readings. */
export function pageProblems(page: ReadingsAttributes, table: PageTable): Problem[] {
  const { readings, quantity, degree } = page;
  const problems: Problem[] = [];
  if (quantity && !QUANTITIES.includes(quantity)) {
    problems.push({ code: 'unknown-name', path: 'quantity', value: quantity, names: QUANTITIES });
  }
  const number = degreeOf(page);
  if (number !== undefined && !Number.isInteger(number)) {
    problems.push({ code: 'not-a-number', path: 'degree', value: degree });
  }
  if (readings) return [...problems, ...readingProblems(readings)];
  const { understanding, problem, doubtProblems = [] } = table;
  if (problem) problems.push(problem);
  return [...problems, ...doubtProblems, ...(understanding ? tableProblems(understanding) : [])];
}

const isReading = (one: Reading | undefined): boolean => Number.isFinite(one?.travel) && Number.isFinite(one?.value);

/** What a page's script hands over instead of readings, each by itself. */
function readingProblems(readings: unknown): Problem[] {
  if (!Array.isArray(readings)) return [{ code: 'wrong-shape', path: 'readings', value: shown(readings) }];
  return readings.flatMap((one: Partial<Reading> | undefined, i): Problem[] => {
    if (isReading(one as Reading)) return [];
    const isRecord = typeof one === 'object' && one !== null;
    const wrong = Number.isFinite(one?.travel) ? 'value' : 'travel';
    return isRecord
      ? [numberProblem(`readings.${i}.${wrong}`, one[wrong], -Infinity, Infinity)!]
      : [{ code: 'wrong-shape', path: `readings.${i}`, value: shown(one) }];
  });
}

async function readTable(table: HTMLTableElement, quantity: 'camber' | 'toe'): Promise<PageTable> {
  try {
    const { captionOf, readDoubts, readReadingTable } = await inTime(import('../page-data/reading-table.js'));
    const caption = captionOf(table);
    const doubtProblems: Problem[] = [];
    const doubts = readDoubts(table.dataset.doubts, doubtProblems);
    return { understanding: readReadingTable(table, quantity), ...(caption && { caption }), doubts, doubtProblems };
  } catch (error) {
    return { problem: { code: 'wrong-shape' as const, path: 'table', value: String(error) } };
  }
}
