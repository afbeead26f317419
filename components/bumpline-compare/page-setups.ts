import type { Setup } from '../../core/document/setup.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Understanding } from '../../core/readings/table/understanding.js';
import { inTime } from '../delivery/in-time.js';
import { carScript } from '../page-data/car-script.js';
import { DATA_SCRIPT } from '../page-data/data-marks.js';
import { tableProblems } from '../page-data/table-problems.js';
import { FIRST } from './first.words.js';

/** The sets of parts in a table of readings with one column a set. */
export interface PageSets {
  setups?: Setup[];
  /** The table as it was understood. */
  table?: Pick<Understanding, 'derived' | 'columns'>;
  /** The table shows what the page is about: its sets are an example, nobody's data, and the user's own take their place. */
  isExample?: boolean;
  problems: Problem[];
}

/** The sets inside an element; the reader of tables comes only where there is one. None beside a whole car. */
export function setsIn(host: HTMLElement): PageSets | Promise<PageSets> {
  if (carScript(host)) return { problems: [] };
  const tables = [...host.querySelectorAll('table')];
  const table = tables.find(({ dataset }) => dataset.example === undefined) ?? tables[0];
  if (table) return readTable(table);
  const script = host.querySelector(DATA_SCRIPT);
  return { problems: script ? [{ code: 'wrong-shape', path: 'JSON script', value: script.textContent }] : [] };
}

async function readTable(table: HTMLTableElement): Promise<PageSets> {
  try {
    const { readDoubts, readReadingTable } = await inTime(import('../page-data/reading-table.js'));
    const ofDoubts: Problem[] = [];
    const doubts = readDoubts(table.dataset.doubts, ofDoubts);
    const understanding = readReadingTable(table, 'camber');
    const { readings, sets } = understanding;
    const setups = sets.map(
      ({ name, readings: own }): Setup => ({
        name: name || FIRST.unnamed,
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
      problems: [...ofDoubts, ...tableProblems(understanding)],
    };
  } catch (error) {
    return { problems: [{ code: 'wrong-shape', path: 'table', value: String(error) }] };
  }
}
