import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { inTime } from '../delivery/in-time.js';
import { carScript } from './car-script.js';
import type { ReadPageCar } from './page-car.js';

/**
 * Reads what an author wrote inside an element and watches it; never writes there. The same markup is what readers without scripts,
 * feed readers and search engines see.
 */
export class PageDataWatcher<T> implements ReactiveController {
  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #parse: () => T | Promise<T>;
  readonly #changed: (read: T) => void;
  readonly #besides: () => string;
  #observer: MutationObserver | undefined;
  #last: string | undefined;
  /** Whether the last reading had a whole car in it. */
  #hadCar = false;
  /** The first reading is done; until then nothing is known of the page's data. */
  isReady = false;
  /** Resolves with the newest reading. Never rejects. */
  ready: Promise<void> = Promise.resolve();
  /** Takes a whole car that stands inside, before the rest; undefined: there is none any more. */
  takeCar: (read: ReadPageCar | undefined) => void = () => {};

  /**
   * @param parse gives what is there, at once or when its reader has come; never rejects
   * @param changed called with every reading but those that a newer one has overtaken
   * @param besides what else a reading depends on
   */
  constructor(
    host: ReactiveControllerHost & HTMLElement,
    parse: () => T | Promise<T>,
    changed: (read: T) => void,
    besides = () => '',
  ) {
    this.#host = host;
    this.#parse = parse;
    this.#changed = changed;
    this.#besides = besides;
  }

  hostConnected(): void {
    this.look();
    this.#observer = new MutationObserver(() => this.look());
    this.#observer.observe(this.#host, { childList: true, subtree: true, characterData: true, attributes: true });
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
  }

  /** Reads it once more: what reads it did not come. */
  again(): void {
    this.#last = undefined;
    this.look();
  }

  /** Reads again what has changed. */
  look(): void {
    const text = this.#besides() + this.#host.innerHTML;
    if (text === this.#last) return;
    this.#last = text;
    const take = (read: T, car?: ReadPageCar) => {
      if (text !== this.#last) return;
      this.isReady = true;
      if (car || this.#hadCar) this.takeCar(car);
      this.#hadCar = car !== undefined;
      this.#changed(read);
    };
    const script = carScript(this.#host);
    const read = this.#parse();
    if (script) this.ready = Promise.all([read, readCar(script)]).then(([rest, car]) => take(rest, car));
    else if (read instanceof Promise) this.ready = read.then((rest) => take(rest));
    else take(read);
  }
}

/** What checks a car comes only where a page has one. */
async function readCar(script: { car: unknown }): Promise<ReadPageCar> {
  try {
    const { readPageCar } = await inTime(import('./page-car.js'));
    return readPageCar(script);
  } catch (error) {
    return {
      said: {},
      problems: [{ code: 'wrong-shape', path: 'JSON script', value: String(error) }],
      put: (car) => car,
    };
  }
}
