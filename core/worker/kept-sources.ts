import type { SolvedData } from '../answers/solved.js';
import { noSource } from '../curve-sources/no-source.js';
import { type TriedSource, triedSource } from '../curve-sources/solved-source.js';
import { InputError } from '../quantity/problem.js';
import type { MadeLayer, NumberedSource } from './protocol.js';

/** Two elements, each with a few sources, and what undo brings back. */
const KEPT_AT_MOST = 16;

/** Stands for a source that is asked for by its number only and is not kept. */
export const UNKNOWN = Symbol('unknown');

/** Sources that were solved, by the page's numbers for them: dragging a height asks of the same one again and again. */
export class KeptSources {
  readonly #layers: Readonly<Record<string, MadeLayer>>;
  readonly #kept = new Map<number, TriedSource>();

  /** @param layers those that solve sources */
  constructor(layers: Readonly<Record<string, MadeLayer>>) {
    this.#layers = layers;
  }

  /** A request with its source solved, if it has one. */
  solvedIn(request: unknown): unknown {
    if (typeof request !== 'object' || request === null || !('source' in request)) return request;
    const source = this.#solved(request.source);
    return source ? { ...request, source } : UNKNOWN;
  }

  #solved(source: unknown): SolvedData | undefined {
    const { number, given, solved: known } = (source ?? {}) as Partial<NumberedSource>;
    if (known) return known;
    if (number === undefined) return this.#try(source);
    const solved = this.#kept.get(number) ?? (given === undefined ? undefined : this.#try(given));
    if (!solved) return undefined;
    // The newest stands last, the first is forgotten.
    this.#kept.delete(number);
    this.#kept.set(number, solved);
    if (this.#kept.size > KEPT_AT_MOST) this.#kept.delete(this.#kept.keys().next().value as number);
    return solved;
  }

  #try(source: unknown): TriedSource {
    return triedSource(() => {
      const { kind = '' } = (source ?? {}) as { kind?: string };
      for (const { solvers } of Object.values(this.#layers)) {
        if (solvers && Object.hasOwn(solvers, kind)) return solvers[kind]!(source as never);
      }
      throw new InputError([noSource(source)]);
    });
  }
}
