import type { ReactiveController } from 'lit';
import { isAnyData } from '../car/page-says.js';
import { carScript } from '../page-data/car-script.js';
import { DATA_SCRIPT, DATA_TABLE } from '../page-data/data-marks.js';
import { READ } from '../page-data/read.words.js';
import { readText, unreadText } from '../page-data/what-was-read.js';
import type { SheetView } from './sheet-view.js';

type View = Pick<SheetView, 'host' | 'cars'>;

/** Tells the page's author in the console what was read of their data, once for each change of them; of an example nothing. */
export class AuthorLine implements ReactiveController {
  readonly #view: View;
  #revision: number | undefined;
  #last = '';

  constructor(view: View) {
    this.#view = view;
    view.host.addController(this);
  }

  hostUpdated(): void {
    const { cars, host } = this.#view;
    if (cars.pageRevision === this.#revision) return;
    this.#revision = cars.pageRevision;
    const says = cars.allPageSays;
    const said = isAnyData(says) ? JSON.stringify(says) : '';
    if (said === this.#last) return;
    this.#last = said;
    if (said === '') return;
    const unread = unreadText(says.problems);
    const line = READ.line(host.localName, readText(says.car), READ.from[fromOf(host)], unread);
    if (unread) console.warn(line);
    else console.info(line);
  }
}

function fromOf(host: HTMLElement): keyof typeof READ.from {
  const [script, table] = [DATA_SCRIPT, DATA_TABLE].map((mark) => host.querySelector(mark));
  if (!script) return table ? 'table' : 'attributes';
  // One that predicts reads hard points as JSON and readings from a table.
  return table && !carScript(host) && host.localName === 'bumpline-predict' ? 'both' : 'json';
}
