import type { RollCentre } from '../../core/curve/roll-centre.js';
import { rollCentreFrom } from '../../core/curve/roll-centre.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import { coreBridge } from '../../core/worker/bridge.js';
import type { CurveHeights } from '../car/car-curves.js';
import { sourceLayers } from '../car/source-layers.js';
import type { CompareView } from './compare-view.js';
import { isOfParts } from './compared-sets.js';

/** Where the roll centres of what is compared are: asked for once something shows them, and each source once. */
export class RollCentres {
  readonly #view: Pick<CompareView, 'curves' | 'compared' | 'car' | 'ask' | 'host'>;
  readonly #known = new WeakMap<AnySource, RollCentre>();
  readonly #asked = new WeakSet<AnySource>();
  readonly #counted = new WeakMap<RollCentre, { measuredAt: number; counted: RollCentre }>();
  #coming = new Set<Promise<void>>();

  constructor(view: CompareView) {
    this.#view = view;
    view.curves.rollCentreOf = (source, heights) => this.#of(source, heights);
    // The first answer was there before this.
    if (this.#isShown) queueMicrotask(() => view.ask());
  }

  /** Resolves when those that were asked for have come. */
  get settled(): Promise<unknown> {
    return Promise.all(this.#coming);
  }

  /** Parts are bought for it; of a car as it is it may be asked. */
  get #isShown(): boolean {
    const { compared, car } = this.#view;
    return car.compare?.show === 'rollCentre' || compared.rows.some(isOfParts);
  }

  #of(source: AnySource, { measuredAt = 0 }: CurveHeights): RollCentre | undefined {
    const known = this.#known.get(source);
    if (known) return this.#countedFrom(known, measuredAt);
    if (this.#isShown && !this.#asked.has(source)) {
      this.#asked.add(source);
      const coming = this.#ask(source).finally(() => this.#coming.delete(coming));
      this.#coming.add(coming);
    }
    return undefined;
  }

  /** The same object for the same heights. */
  #countedFrom(known: RollCentre, measuredAt: number): RollCentre {
    const last = this.#counted.get(known);
    if (last?.measuredAt === measuredAt) return last.counted;
    const counted = rollCentreFrom(known, measuredAt);
    this.#counted.set(known, { measuredAt, counted });
    return counted;
  }

  async #ask(source: AnySource): Promise<void> {
    try {
      const bridge = coreBridge();
      bridge.join([...(await sourceLayers(source)), ...(await sourceLayers({ kind: 'parts' }))]);
      const found = await bridge.ask('rollCentre', { source }, { slot: {} });
      if (found) this.#known.set(source, found);
      this.#view.ask();
      this.#view.host.requestUpdate();
    } catch (error) {
      // The rest of the answer stands without it; it is asked for again with the next.
      this.#asked.delete(source);
      console.warn('Bumpline: a roll centre could not be worked out.', error);
    }
  }
}
