import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { GivenCorner } from '../../core/document/car.js';
import { type PointRow, readPointRows } from '../../core/document/point-rows.js';
import type { Problem } from '../../core/quantity/problem.js';
import { METRIC, type UnitSystem } from '../../core/quantity/units.js';

/** What an author wrote inside an element. */
export interface LightDom {
  /** From a JSON script child, as parsed. */
  json?: unknown;
  /** From a table of hard points. */
  given?: GivenCorner;
  problems: Problem[];
}

/**
 * Reads an element's light DOM and watches it; never writes there. The same markup is what readers without scripts, feed readers
 * and search engines see.
 */
export class LightDomReader implements ReactiveController {
  #host: ReactiveControllerHost & HTMLElement;
  #changed: (read: LightDom) => void;
  #observer: MutationObserver | undefined;
  #last = '';

  constructor(host: ReactiveControllerHost & HTMLElement, changed: (read: LightDom) => void) {
    this.#host = host;
    this.#changed = changed;
    host.addController(this);
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
    this.#changed(readLightDom(this.#host));
  }
}

/** @param host element whose children are read: the first JSON script, else the first table with rows */
export function readLightDom(host: HTMLElement): LightDom {
  const script = host.querySelector('script[type="application/json"]');
  if (script) {
    try {
      return { json: JSON.parse(script.textContent ?? ''), problems: [] };
    } catch (error) {
      return { problems: [{ code: 'wrong-shape', path: 'JSON script', value: String(error) }] };
    }
  }
  // A table of the example's own values shows what a page is about; it is not the page's data.
  const table = host.querySelector<HTMLTableElement>('table:not([data-example])');
  if (!table) return { problems: [] };
  const { rows, lengthUnit } = readTable(table);
  return readPointRows(rows, METRIC, lengthUnit);
}

/** Rows of a table: the first cell names the row, a `<data value>` in a cell stands for its text. Headings may name the unit. */
function readTable(table: HTMLTableElement): { rows: PointRow[]; lengthUnit: (UnitSystem['length'] | undefined)[] } {
  const heading = table.tHead?.rows[0];
  const lengthUnit = [...(heading?.cells ?? [])].slice(1).map((cell) => {
    const unit = /\((mm|in)\)/.exec(cell.textContent ?? '')?.[1];
    return unit as UnitSystem['length'] | undefined;
  });
  const rows: PointRow[] = [];
  for (const body of table.tBodies) {
    for (const row of body.rows) {
      const [name, ...cells] = [...row.cells].map(
        (cell) => cell.querySelector('data')?.value ?? cell.textContent?.trim() ?? '',
      );
      if (name) rows.push({ name: row.cells[0]?.textContent?.trim() ?? name, cells });
    }
  }
  return { rows, lengthUnit };
}
