import type { live } from 'lit/directives/live.js';
import type { parseQuantity } from '../../core/quantity/parse.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import type { UnitSystem } from '../../core/quantity/units.js';

/**
 * Texts that people have typed and that are not (yet) numbers. A text stays here until it is understood, so nothing typed is
 * ever lost or rewritten under the fingers; a problem is shown only once the field was left.
 */
export class Drafts {
  /** What reads typed text, and keeps it in its field: comes with the body of a sheet. Until then fields are read-only. */
  parser: { parse: typeof parseQuantity; live: typeof live } | undefined;
  #texts = new Map<string, string>();
  #problems = new Map<string, Problem>();

  text(path: string): string | undefined {
    return this.#texts.get(path);
  }

  problem(path: string): Problem | undefined {
    return this.#problems.get(path);
  }

  get problems(): Problem[] {
    return [...this.#problems.values()];
  }

  /** The path of the text that was last found unreadable, or undefined. */
  get lastUnread(): string | undefined {
    return [...this.#problems.keys()].at(-1);
  }

  /** While typing. Gives back the number, or undefined while there is none. */
  type(path: string, text: string, quantity: Quantity, units: UnitSystem): number | undefined {
    this.#texts.set(path, text);
    const parsed = this.parser!.parse(text, quantity, units, path);
    // A problem that is already shown goes away as soon as it is mended, and is kept up to date till then.
    if (parsed.ok) this.#problems.delete(path);
    else if (this.#problems.has(path)) this.#problems.set(path, parsed.problem);
    return parsed.ok ? parsed.value : undefined;
  }

  /** When the field is left: what was understood is dropped here, the rest is now a problem. */
  leave(path: string, quantity: Quantity, units: UnitSystem): void {
    const text = this.#texts.get(path);
    if (text === undefined) return;
    const parsed = this.parser!.parse(text, quantity, units, path);
    if (parsed.ok) this.drop(path);
    else this.#problems.set(path, parsed.problem);
  }

  /** Forgets a text: it was understood, or its value was set otherwise. */
  drop(path: string): void {
    this.#texts.delete(path);
    this.#problems.delete(path);
  }

  /** Forgets all texts whose paths begin so: what they stood for is gone, or stands elsewhere. */
  dropAll(start: string): void {
    for (const path of [...this.#texts.keys()]) if (path.startsWith(start)) this.drop(path);
  }
}
