import type { LitElement } from 'lit';
import type { GivenCorner } from '../../core/document/car.js';
import type { Problem } from '../../core/quantity/problem.js';
import { sourceLayers } from '../car/source-layers.js';
import { inTime } from '../delivery/in-time.js';
import { carScript } from './car-script.js';
import { DATA_SCRIPT, DATA_TABLE } from './data-marks.js';
import { PageDataWatcher } from './page-data-watcher.js';

/** What an author wrote inside an element. */
export interface LightDom {
  /** From a JSON script child, as parsed. */
  json?: unknown;
  /** From a table of hard points. */
  given?: GivenCorner;
  problems: Problem[];
}

/** Watches what an element of a car's corner or of its wheels may hold. */
export const lightDomWatcher = (host: LitElement, changed: (read: LightDom) => void): PageDataWatcher<LightDom> =>
  new PageDataWatcher(host, () => readLightDom(host), changed);

/** Reads a JSON script, else a table of hard points or measurements; neither beside a whole car. */
export function readLightDom(host: HTMLElement): LightDom | Promise<LightDom> {
  if (carScript(host)) return { problems: [] };
  const script = host.querySelector(DATA_SCRIPT);
  if (script) return readJson(script.textContent ?? '');
  const table = host.querySelector<HTMLTableElement>(DATA_TABLE);
  return table ? readPoints(table) : { problems: [] };
}

function readJson(text: string): LightDom {
  try {
    const json: unknown = JSON.parse(text);
    if (typeof json === 'object' && json !== null) return { json, problems: [] };
    return { problems: [{ code: 'wrong-shape', path: 'JSON script', value: json }] };
  } catch (error) {
    return { problems: [{ code: 'wrong-shape', path: 'JSON script', value: String(error) }] };
  }
}

/** The reader of tables comes only where there is one. */
async function readPoints(table: HTMLTableElement): Promise<LightDom> {
  // Asked for as soon as the table is read: it comes beside its reader.
  Promise.resolve(sourceLayers({ kind: 'corner' })).catch(() => {});
  try {
    const { readPointTable } = await inTime(import('./point-table.js'));
    return readPointTable(table);
  } catch (error) {
    return { problems: [{ code: 'wrong-shape', path: 'table', value: String(error) }] };
  }
}
