import type { NumberedSource } from './protocol.js';

/** The page's numbers for sources, by their identity, and which of them the core that runs now was sent. */
export class SentSources {
  readonly #numbers = new WeakMap<object, number>();
  #last = 0;
  #sent = new Set<number>();

  /** A request as it is sent: of a source that was sent before, the number alone. */
  numbered(request: unknown): unknown {
    const source = (request as { source?: unknown } | null | undefined)?.source;
    if (typeof source !== 'object' || source === null) return request;
    const number = this.#numbers.get(source) ?? ++this.#last;
    this.#numbers.set(source, number);
    const isSent = this.#sent.has(number);
    this.#sent.add(number);
    const numbered: NumberedSource = isSent ? { number } : { number, given: source };
    return { ...(request as object), source: numbered };
  }

  /** The core does not keep that one any more. */
  forget(number: number): void {
    this.#sent.delete(number);
  }

  /** Another core will run. */
  forgetAll(): void {
    this.#sent.clear();
  }
}
