import type { ReactiveController } from 'lit';
import type { Setup } from '../../core/document/setup.js';
import { readLengthAttribute } from '../../core/quantity/attribute.js';
import { numberProblem, told } from '../../core/quantity/number-problem.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { ReadingDoubts } from '../../core/readings/doubts.js';
import type { Reading } from '../../core/readings/reading.js';
import type { Understanding } from '../../core/readings/understanding.js';
import type { BumplineReadings } from './bumpline-readings.js';

/** A table of the example's own values shows what a page is about; it is not the page's data. */
const DATA_TABLE = 'table:not([data-example])';

const QUANTITIES = ['camber', 'toe'] as const;

/** A table, as it was understood. */
interface PageTable {
  understanding?: Understanding;
  caption?: string;
  doubts?: ReadingDoubts | undefined;
  doubtProblems?: Problem[];
  problem?: Problem;
}

/** What a page gives: the `readings` property, or a table of readings inside; attributes. Never writes there. */
export class PageReadings implements ReactiveController {
  #host: BumplineReadings;
  #changed: () => void;
  #observer: MutationObserver | undefined;
  #last: string | undefined;
  #table: PageTable = {};
  /** The first reading is done; until then nothing is known of the page's data. */
  isReady = false;
  /** Resolves with the newest reading. Never rejects. */
  ready: Promise<void> = Promise.resolve();

  constructor(host: BumplineReadings, changed: () => void) {
    this.#host = host;
    this.#changed = changed;
  }

  hostConnected(): void {
    this.look();
    this.#observer = new MutationObserver(() => this.look());
    this.#observer.observe(this.#host, { childList: true, subtree: true, characterData: true, attributes: true });
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
  }

  /** Reads again what has changed; a table also when its quantity has. */
  look(): void {
    const text = this.#quantity + this.#host.innerHTML;
    if (text === this.#last) return;
    this.#last = text;
    const table = this.#host.querySelector<HTMLTableElement>(DATA_TABLE);
    const script = this.#host.querySelector('script[type="application/json"]');
    if (!table)
      this.#take(script ? { problem: { code: 'wrong-shape', path: 'JSON script', value: script.textContent } } : {});
    else
      this.ready = readTable(table, this.#quantity).then((read) =>
        this.#last === text ? this.#take(read) : undefined,
      );
  }

  #take(table: PageTable): void {
    this.#table = table;
    this.isReady = true;
    this.#changed();
  }

  get #quantity(): 'camber' | 'toe' {
    return this.#host.quantity === 'toe' ? 'toe' : 'camber';
  }

  /** The page's sets of parts with their readings; undefined where it gives none. */
  get setups(): Setup[] | undefined {
    const { readings } = this.#host;
    const { understanding, caption } = this.#table;
    const given = readings ? readings.filter?.(isReading) : understanding?.readings;
    if (!given) return undefined;
    const degree = this.#degree;
    const made = (name: string, own: readonly Reading[]): Setup => ({
      name,
      cornerName: 'Front left',
      quantity: this.#quantity,
      readings: own,
      ...(!readings && this.#table.doubts && { doubts: this.#table.doubts }),
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
    return [made(caption || sets[0]?.name || 'Readings of this page', given)];
  }

  /** What was read in a table, where there is one. */
  get understanding(): Understanding | undefined {
    return this.#host.readings ? undefined : this.#table.understanding;
  }

  /** NaN where the attribute says none; `auto` is what it is without. */
  get #degree(): number | undefined {
    const { degree } = this.#host;
    return degree === undefined || degree === null || degree === '' || degree === 'auto' ? undefined : Number(degree);
  }

  get over(): number | undefined {
    const { over } = this.#host;
    if (over === undefined || over === null) return undefined;
    const parsed = readLengthAttribute(String(over), 'travel', 'over');
    return parsed.ok ? parsed.value : undefined;
  }

  /** What is wrong with the travel that the page asks about. */
  get overProblems(): Problem[] {
    const { over } = this.#host;
    if (over === undefined || over === null) return [];
    const parsed = readLengthAttribute(String(over), 'travel', 'over');
    return parsed.ok ? [] : [parsed.problem];
  }

  /** What is wrong with the page's readings. */
  get problems(): Problem[] {
    const { readings, quantity, degree } = this.#host;
    const problems: Problem[] = [];
    if (quantity && !QUANTITIES.includes(quantity)) {
      problems.push({ code: 'unknown-name', path: 'quantity', value: quantity, names: QUANTITIES });
    }
    if (this.#degree !== undefined && !Number.isInteger(this.#degree)) {
      problems.push({ code: 'not-a-number', path: 'degree', value: degree });
    }
    if (readings) return [...problems, ...readingProblems(readings)];
    const { understanding, problem } = this.#table;
    if (problem) problems.push(problem);
    problems.push(...(this.#table.doubtProblems ?? []));
    if (understanding) {
      problems.push(...understanding.problems);
      understanding.cells.forEach((row, i) => {
        row.forEach((cell, j) => {
          if (cell.problem) problems.push({ ...cell.problem, path: `table.${i}.${j}` });
        });
      });
    }
    return problems;
  }
}

const isReading = (one: Reading | undefined): boolean => Number.isFinite(one?.travel) && Number.isFinite(one?.value);

/** What a page's script hands over instead of readings, each by itself. */
function readingProblems(readings: unknown): Problem[] {
  if (!Array.isArray(readings)) return [{ code: 'wrong-shape', path: 'readings', value: told(readings) }];
  return readings.flatMap((one: Partial<Reading> | undefined, i): Problem[] => {
    if (isReading(one as Reading)) return [];
    const isRecord = typeof one === 'object' && one !== null;
    const wrong = Number.isFinite(one?.travel) ? 'value' : 'travel';
    return isRecord
      ? [numberProblem(`readings.${i}.${wrong}`, one[wrong], -Infinity, Infinity)!]
      : [{ code: 'wrong-shape', path: `readings.${i}`, value: told(one) }];
  });
}

/** The reader of tables comes only where there is one. */
async function readTable(table: HTMLTableElement, quantity: 'camber' | 'toe'): Promise<PageTable> {
  try {
    const { captionOf, readDoubts, readReadingTable } = await import('../shared/reading-table.js');
    const caption = captionOf(table);
    const doubtProblems: Problem[] = [];
    const doubts = readDoubts(table.dataset.doubts, doubtProblems);
    return { understanding: readReadingTable(table, quantity), ...(caption && { caption }), doubts, doubtProblems };
  } catch (error) {
    return { problem: { code: 'wrong-shape' as const, path: 'table', value: String(error) } };
  }
}
