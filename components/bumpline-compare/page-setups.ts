import type { ReactiveController } from 'lit';
import type { Setup } from '../../core/document/setup.js';
import { told } from '../../core/quantity/number-problem.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Understanding } from '../../core/readings/understanding.js';
import type { BumplineCompare } from './bumpline-compare.js';

interface Read {
  setups?: Setup[];
  /** The table as it was understood. */
  table?: Pick<Understanding, 'derived' | 'columns'>;
  /** The table shows what the page is about: its sets are an example, nobody's data. */
  isExample?: boolean;
  problems: Problem[];
}

/**
 * The sets of parts that a page gives: the `setups` property, or a table of readings with one column a set. A table marked
 * `data-example` is an example, which the user's own sets take the place of. Never writes there.
 */
export class PageSetups implements ReactiveController {
  readonly #host: BumplineCompare;
  readonly #changed: () => void;
  #observer: MutationObserver | undefined;
  #last: string | undefined;
  #read: Read = { problems: [] };
  /** The first reading is done; until then nothing is known of the page's data. */
  isReady = false;
  /** Resolves with the newest reading. Never rejects. */
  ready: Promise<void> = Promise.resolve();

  constructor(host: BumplineCompare, changed: () => void) {
    this.#host = host;
    this.#changed = changed;
  }

  hostConnected(): void {
    this.#look();
    this.#observer = new MutationObserver(() => this.#look());
    this.#observer.observe(this.#host, { childList: true, subtree: true, characterData: true, attributes: true });
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
  }

  #look(): void {
    const text = this.#host.innerHTML;
    if (text === this.#last) return;
    this.#last = text;
    const tables = [...this.#host.querySelectorAll('table')];
    const table = tables.find(({ dataset }) => dataset.example === undefined) ?? tables[0];
    const script = this.#host.querySelector('script[type="application/json"]');
    const strange: Problem[] = script ? [{ code: 'wrong-shape', path: 'JSON script', value: script.textContent }] : [];
    if (!table) this.#take({ problems: strange });
    else this.ready = readTable(table).then((read) => (this.#last === text ? this.#take(read) : undefined));
  }

  #take(read: Read): void {
    this.#read = read;
    this.isReady = true;
    this.#changed();
  }

  get setups(): readonly Setup[] | undefined {
    const { setups } = this.#host;
    return setups ? setups.filter?.(isSetup) : this.#read.isExample ? undefined : this.#read.setups;
  }

  /** What the page shows until somebody gives readings. */
  get example(): readonly Setup[] | undefined {
    return this.#read.isExample && this.#read.setups?.length ? this.#read.setups : undefined;
  }

  /** The table that the sets are of, as it was understood. */
  get table(): Pick<Understanding, 'derived' | 'columns'> | undefined {
    return this.#host.setups ? undefined : this.#read.table;
  }

  get problems(): Problem[] {
    const { setups } = this.#host;
    return setups ? setupProblems(setups) : this.#read.problems;
  }
}

const isSetup = (one: Partial<Setup> | undefined): boolean =>
  typeof one?.name === 'string' &&
  one.quantity === 'camber' &&
  Array.isArray(one.readings) &&
  one.readings.every(Boolean);

/** What a page's script hands over instead of sets of camber, each by itself. */
function setupProblems(setups: unknown): Problem[] {
  if (!Array.isArray(setups)) return [{ code: 'wrong-shape', path: 'setups', value: told(setups) }];
  return setups.flatMap((one, i) =>
    isSetup(one) ? [] : [{ code: 'wrong-shape', path: `setups.${i}`, value: told(one) }],
  );
}

/** The reader of tables comes only where there is one. */
async function readTable(table: HTMLTableElement): Promise<Read> {
  try {
    const { readDoubts, readReadingTable } = await import('../shared/reading-table.js');
    const ofDoubts: Problem[] = [];
    const doubts = readDoubts(table.dataset.doubts, ofDoubts);
    const understanding = readReadingTable(table, 'camber');
    const { readings, sets, problems, cells } = understanding;
    const ofCells = cells.flatMap((row, i) =>
      row.flatMap((cell, j) => (cell.problem ? [{ ...cell.problem, path: `table.${i}.${j}` }] : [])),
    );
    const setups = sets.map(
      ({ name, readings: own }): Setup => ({
        name: name || UNNAMED,
        cornerName: 'Front left',
        quantity: 'camber',
        readings: own.map((i) => readings[i]!),
        ...(doubts && { doubts }),
      }),
    );
    return {
      setups,
      table: understanding,
      isExample: table.dataset.example !== undefined,
      problems: [...problems, ...ofDoubts, ...ofCells],
    };
  } catch (error) {
    return { problems: [{ code: 'wrong-shape', path: 'table', value: String(error) }] };
  }
}

const UNNAMED = 'Readings';
