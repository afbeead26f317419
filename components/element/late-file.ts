import { inTime } from '../delivery/in-time.js';

/** After so long a reader is told that something is on its way, ms. */
const SIGN_MS = 2000;

/** How far a file has come that a reader waits for. */
export type Coming = 'here' | 'coming' | 'slow' | 'lost';

/**
 * One file that comes over the network, perhaps late, perhaps at the second try. What hangs counts as lost after a while and is taken
 * all the same when it comes.
 */
export class LateFile {
  state: Coming = 'coming';
  readonly #fetch: () => Promise<unknown>;
  readonly #changed: () => void;
  #pending: Promise<void> | undefined;
  #trying: Promise<void> | undefined;
  #isWantedAgain = false;

  /**
   * @param fetch fetches it and takes it; called again only after it has failed
   * @param changed the state is another
   */
  constructor(fetch: () => Promise<unknown>, changed: () => void) {
    this.#fetch = fetch;
    this.#changed = changed;
  }

  /** Resolves when it is here, has failed or counts as lost. Never rejects. What was lost is tried again. */
  get(): Promise<void> {
    if (this.state === 'here') return Promise.resolve();
    this.#trying ??= this.#try().finally(() => {
      this.#trying = undefined;
    });
    return this.#trying;
  }

  #is(state: Coming): void {
    this.state = state;
    this.#changed();
  }

  async #try(): Promise<void> {
    // A browser asks once for a file that hangs, however often it is wanted.
    this.#isWantedAgain = this.#pending !== undefined;
    this.#pending ??= this.#fetch().then(
      () => this.#is('here'),
      (error) => {
        this.#pending = undefined;
        if (this.#isWantedAgain) void this.get();
        throw error;
      },
    );
    this.state = 'coming';
    const slow = setTimeout(() => this.#is('slow'), SIGN_MS);
    try {
      await inTime(this.#pending);
    } catch (error) {
      console.warn('Bumpline: a file could not be fetched; it is tried again when the connection is back.', error);
      this.#is('lost');
    } finally {
      clearTimeout(slow);
    }
  }
}
