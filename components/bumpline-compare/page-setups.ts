import type { ReactiveController } from 'lit';
import type { Setup } from '../../core/document/setup.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Reading } from '../../core/readings/reading.js';
import type { BumplineCompare } from './bumpline-compare.js';

const DATA_TABLE = 'table:not([data-example])';

interface Read {
  setups?: Setup[];
  problems: Problem[];
}

/** The sets of parts that a page gives: the `setups` property, or a table of readings with one column a set. Never writes there. */
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
    const table = this.#host.querySelector<HTMLTableElement>(DATA_TABLE);
    if (!table) this.#take({ problems: [] });
    else this.ready = readTable(table).then((read) => (this.#last === text ? this.#take(read) : undefined));
  }

  #take(read: Read): void {
    this.#read = read;
    this.isReady = true;
    this.#changed();
  }

  get setups(): readonly Setup[] | undefined {
    return this.#host.setups ?? this.#read.setups;
  }

  get problems(): Problem[] {
    return this.#host.setups ? [] : this.#read.problems;
  }
}

/** The reader of tables comes only where there is one. */
async function readTable(table: HTMLTableElement): Promise<Read> {
  try {
    const { readReadingTable, readDoubts } = await import('../shared/reading-table.js');
    const ofDoubts: Problem[] = [];
    const doubts = readDoubts(table.dataset.doubts, ofDoubts);
    const { readings, problems, cells } = readReadingTable(table, 'camber');
    const ofCells = cells.flatMap((row, i) =>
      row.flatMap((cell, j) => (cell.problem ? [{ ...cell.problem, path: `table.${i}.${j}` }] : [])),
    );
    const setups = bySet(readings ?? []).map((setup) => (doubts ? { ...setup, doubts } : setup));
    return { setups, problems: [...problems, ...ofDoubts, ...ofCells] };
  } catch (error) {
    return { problems: [{ code: 'wrong-shape', path: 'table', value: String(error) }] };
  }
}

const UNNAMED = 'Readings';

/** A column's heading names its set, and behind it the pass where there are several: "Standard joints, pass 2". */
export function bySet(readings: readonly Reading[]): Setup[] {
  const sets = new Map<string, Reading[]>();
  for (const { pass = UNNAMED, ...reading } of readings) {
    const [, name = pass, number] = /^(.*?)[,;:]?\s*\(?pass\s*(\w+)\)?$/i.exec(pass) ?? [];
    const key = name.trim() || UNNAMED;
    const list = sets.get(key) ?? [];
    list.push(number === undefined ? reading : { ...reading, pass: `Pass ${number}` });
    sets.set(key, list);
  }
  return [...sets].map(([name, own]) => ({ name, cornerName: 'Front left', quantity: 'camber', readings: own }));
}
