import type { ReactiveController } from 'lit';
import type { Setup } from '../../core/document/setup.js';
import { readLengthAttribute } from '../../core/quantity/attribute.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { ReadingDoubts } from '../../core/readings/doubts.js';
import type { Understanding } from '../../core/readings/understanding.js';
import type { BumplineReadings } from './bumpline-readings.js';

/** A table of the example's own values shows what a page is about; it is not the page's data. */
const DATA_TABLE = 'table:not([data-example])';

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
    this.#read();
    this.#observer = new MutationObserver(() => this.#read());
    this.#observer.observe(this.#host, { childList: true, subtree: true, characterData: true, attributes: true });
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
  }

  #read(): void {
    const text = this.#host.innerHTML;
    if (text === this.#last) return;
    this.#last = text;
    const table = this.#host.querySelector<HTMLTableElement>(DATA_TABLE);
    if (!table) this.#take({});
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

  /** The page's set of parts with its readings; undefined where it gives none. */
  get setup(): Setup | undefined {
    const { readings, degree } = this.#host;
    const given = readings ?? this.#table.understanding?.readings;
    if (!given) return undefined;
    return {
      name: this.#table.caption || 'Readings of this page',
      cornerName: 'Front left',
      quantity: this.#quantity,
      readings: given,
      ...(!readings && this.#table.doubts && { doubts: this.#table.doubts }),
      ...(degree !== undefined && degree !== null && { degree: Number(degree) }),
    };
  }

  get over(): number | undefined {
    const { over } = this.#host;
    if (over === undefined || over === null) return undefined;
    const parsed = readLengthAttribute(String(over), 'travel', 'over');
    return parsed.ok ? parsed.value : undefined;
  }

  get problems(): Problem[] {
    const { over, readings } = this.#host;
    const problems: Problem[] = [];
    const parsed =
      over === undefined || over === null ? undefined : readLengthAttribute(String(over), 'travel', 'over');
    if (parsed && !parsed.ok) problems.push(parsed.problem);
    if (readings) return problems;
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

/** The reader of tables comes only where there is one. */
async function readTable(table: HTMLTableElement, quantity: 'camber' | 'toe'): Promise<PageTable> {
  try {
    const { readReadingTable, readDoubts } = await import('../shared/reading-table.js');
    const caption = table.caption?.textContent?.trim();
    const doubtProblems: Problem[] = [];
    const doubts = readDoubts(table.dataset.doubts, doubtProblems);
    return { understanding: readReadingTable(table, quantity), ...(caption && { caption }), doubts, doubtProblems };
  } catch (error) {
    return { problem: { code: 'wrong-shape' as const, path: 'table', value: String(error) } };
  }
}
