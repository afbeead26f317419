import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** A table of the example's own values shows what a page is about; it is not the page's data. */
export const DATA_TABLE = 'table:not([data-example])';
export const DATA_SCRIPT = 'script[type="application/json"]';

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
  /** The first reading is done; until then nothing is known of the page's data. */
  isReady = false;
  /** Resolves with the newest reading. Never rejects. */
  ready: Promise<void> = Promise.resolve();

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
    const take = (read: T) => {
      if (text !== this.#last) return;
      this.isReady = true;
      this.#changed(read);
    };
    const read = this.#parse();
    if (read instanceof Promise) this.ready = read.then(take);
    else take(read);
  }
}
