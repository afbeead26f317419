import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { GivenCorner } from '../../core/document/car.js';
import type { Problem } from '../../core/quantity/problem.js';
import { sourceLayers } from '../car/source-layers.js';

/** What an author wrote inside an element. */
export interface LightDom {
  /** From a JSON script child, as parsed. */
  json?: unknown;
  /** From a table of hard points. */
  given?: GivenCorner;
  problems: Problem[];
}

/** A table of the example's own values shows what a page is about; it is not the page's data. */
const DATA_TABLE = 'table:not([data-example])';

/**
 * Reads an element's light DOM and watches it; never writes there. The same markup is what readers without scripts, feed readers
 * and search engines see.
 */
export class LightDomReader implements ReactiveController {
  #host: ReactiveControllerHost & HTMLElement;
  #changed: (read: LightDom) => void;
  #observer: MutationObserver | undefined;
  #last: string | undefined;
  #number = 0;
  /** The first reading is done; until then nothing is known of the page's data. */
  isReady = false;
  /** Resolves with the newest reading. Never rejects. */
  ready: Promise<void> = Promise.resolve();

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
    const number = ++this.#number;
    const take = (read: LightDom) => {
      if (number !== this.#number) return;
      this.isReady = true;
      this.#changed(read);
    };
    const script = this.#host.querySelector('script[type="application/json"]');
    const table = this.#host.querySelector<HTMLTableElement>(DATA_TABLE);
    if (script) take(readJson(script.textContent ?? ''));
    else if (table) this.ready = readPoints(table).then(take);
    else take({ problems: [] });
  }
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
    const { readPointTable } = await import('./point-table.js');
    return readPointTable(table);
  } catch (error) {
    return { problems: [{ code: 'wrong-shape', path: 'table', value: String(error) }] };
  }
}
