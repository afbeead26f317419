import type { ReadingDoubts } from '../readings/doubts.js';
import { plusMinus95 } from '../uncertainty/combine.js';
import type { Estimate, Source } from '../uncertainty/estimate.js';
import type { Curve } from './curve.js';

/** A curve among others, and whose sources of doubt it has in common with them. */
export interface Compared {
  readonly curve: Curve;
  /**
   * Curves with the same text share their sources by id: one corner with and without a part. Without it the curve's sources are its
   * own: separate fits know nothing of each other.
   */
  readonly shares?: string | undefined;
  /**
   * Curves with the same text were read with the same gauge and the same tape, whose scales they share: what one shows too much the
   * other does too. Without it each has instruments of its own, the safe side of a comparison.
   */
  readonly instruments?: string | undefined;
}

/** Sources that belong to the gauge and the tape, not to one set of readings. */
const OF_INSTRUMENTS: ReadonlySet<string> = new Set<keyof ReadingDoubts>(['gaugeScale', 'tapeScale']);

/**
 * Several curves over one list of sources, so that what they share cancels in a difference and what they do not adds in quadrature
 * (GUM, JCGM 100:2008, 5.1.2 and 5.2.2).
 */
export class Joint {
  readonly sources: readonly Source[];
  readonly #places: readonly (readonly number[])[];

  /** @param sourcesOf those that the estimates of a curve are made of, where they are not the curve's own */
  constructor(
    curves: readonly Compared[],
    sourcesOf: (at: number) => readonly Source[] = (at) => curves[at]!.curve.data.sources,
  ) {
    const index = new Map<string, number>();
    const sources: Source[] = [];
    this.#places = curves.map(({ shares, instruments }, i) =>
      sourcesOf(i).map((source) => {
        const own = shares === undefined ? `${i} ${source.id}` : `of ${shares} ${source.id}`;
        const isShared = instruments !== undefined && OF_INSTRUMENTS.has(source.id);
        const key = isShared ? `by ${instruments} ${source.id}` : own;
        let place = index.get(key);
        if (place === undefined) {
          place = sources.push(source) - 1;
          index.set(key, place);
        }
        return place;
      }),
    );
    this.sources = sources;
  }

  /** Σ weight · estimate, each of the curve at its index. A curve without doubt adds none. */
  sum(...terms: readonly (readonly [curve: number, estimate: Estimate, weight: number])[]): Estimate {
    const parts = new Float64Array(this.sources.length);
    let value = 0;
    for (const [curve, estimate, weight] of terms) {
      value += weight * estimate.value;
      estimate.parts.forEach((part, i) => {
        parts[this.#places[curve]![i]!]! += weight * part;
      });
    }
    return { value, parts };
  }

  /** Half-width of the 95 % interval. */
  plusMinus(estimate: Estimate): number {
    return this.sources.length === 0 ? 0 : plusMinus95(estimate, this.sources);
  }
}
