import type { Curve } from '../../core/curve/curve.js';
import type { Setup } from '../../core/document/setup.js';
import { InputError, type Problem } from '../../core/quantity/problem.js';
import { fit } from '../../core/worker/layers/fit.generated.js';
import { CarCurves } from '../car/car-curves.js';
import type { CarModel } from '../car/car-model.js';
import { CarSources } from '../car/car-sources.js';
import { isSameList } from '../car/same-car.js';
import { haveLayer } from '../car/source-layers.js';
import { type ComparedSets, comparedSets } from './compared-sets.js';

// The example, and most of what is compared, are readings.
haveLayer('readings', fit);

interface Known {
  /** What the curves depend on. */
  readonly keys: readonly unknown[];
  readonly compared: ComparedSets;
  readonly curves: readonly Curve[];
  /** What is wrong with the car's own curve, which is left out then. */
  readonly leftOut: readonly Problem[];
}

/** What is compared of a car, and its curves. */
export class ComparedCurves {
  readonly #of: () => { model: CarModel; example: readonly Setup[] | undefined };
  #known: Known | undefined;

  constructor(of: () => { model: CarModel; example: readonly Setup[] | undefined }) {
    this.#of = of;
  }

  #sets(hasOwn = true): ComparedSets {
    const { model, example } = this.#of();
    return comparedSets(model.car, example, hasOwn);
  }

  /** What the curves of the present rows depend on, by identity. */
  get keys(): readonly unknown[] {
    const { model } = this.#of();
    const { measuredAt, camberReadLower } = model.car;
    return this.#sets().rows.flatMap<unknown>(
      ({ setup }) => setup ?? [CarSources.of(model).ofCorner(model.car), measuredAt, camberReadLower],
    );
  }

  isOf(keys: readonly unknown[]): boolean {
    return isSameList(this.keys, keys);
  }

  /** The curves of the present rows, where they are known. */
  get known(): Known | undefined {
    return this.#known && this.isOf(this.#known.keys) ? this.#known : undefined;
  }

  /** Whose rows these are; without the car's own curve where that makes none. */
  get compared(): ComparedSets {
    return this.known?.compared ?? this.#sets();
  }

  /**
   * Has the curve of each row solved. The car's own is left out where it makes none and there are others: its values are not to be
   * mended here.
   *
   * @throws InputError of the first set that cannot be fitted, or of the car's own curve where it stands alone
   */
  async solve(): Promise<void> {
    const { keys } = this;
    const { model } = this.#of();
    const { car } = model;
    const curves = CarCurves.of(model);
    const { measuredAt, camberReadLower, given } = car;
    const heights = {
      ...(measuredAt !== undefined && { measuredAt }),
      ...(camberReadLower !== undefined && given.camber !== undefined && { camberReadLower }),
    };
    const own = () => curves.camber(curves.sources.ofCorner(car), heights);
    let [compared, leftOut]: [ComparedSets, readonly Problem[]] = [this.#sets(), []];
    try {
      if (compared.own) await own();
    } catch (error) {
      if (!(error instanceof InputError) || compared.rows.length === 1) throw error;
      [compared, leftOut] = [this.#sets(false), error.problems];
    }
    const found = await Promise.all(
      compared.rows.map(({ setup }) => (setup ? curves.camber(curves.sources.ofSetup(setup)) : own())),
    );
    // While they were solved others may have come.
    if (this.isOf(keys)) this.#known = { keys, compared, curves: found, leftOut };
  }
}
