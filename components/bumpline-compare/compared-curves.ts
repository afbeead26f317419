import { isOfLinks } from '../../core/answers/car-request.js';
import type { ComparedCurve } from '../../core/answers/compare.js';
import type { RollCentre } from '../../core/curve/roll-centre.js';
import type { AnySource, LearntSource, PartsSource } from '../../core/curve-sources/source.js';
import type { Setup } from '../../core/document/setup.js';
import type { Corner } from '../../core/linkage/corner.js';
import { InputError, type Problem } from '../../core/quantity/problem.js';
import { fit } from '../../core/worker/layers/fit.generated.js';
import { CarCurves, type CurveHeights } from '../car/car-curves.js';
import type { CarModel } from '../car/car-model.js';
import { CarSources } from '../car/car-sources.js';
import { isSameList } from '../car/same-car.js';
import { haveLayer } from '../car/source-layers.js';
import { type ComparedRow, type ComparedSets, comparedSets, isOfParts } from './compared-sets.js';

// The example, and most of what is compared, are readings.
haveLayer('readings', fit);

/** What the curves of one corner share, with and without parts. */
const CAR = 'car';

interface Known {
  /** What the curves depend on. */
  readonly keys: readonly unknown[];
  readonly compared: ComparedSets;
  readonly curves: readonly ComparedCurve[];
  /** What each row is made from. */
  readonly sources: readonly AnySource[];
  /** The car's own, with no parts on. */
  readonly corner: Corner | undefined;
  /** What is wrong with the car's own curve, which is left out then. */
  readonly leftOut: readonly Problem[];
  /** Sets whose parts do not go on, which are left out then. */
  readonly wrong: readonly WrongSet[];
}

/** A set whose parts do not go on the car's links, and why. */
export interface WrongSet {
  setup: Setup;
  problems: readonly Problem[];
}

/** What is compared of a car, and its curves. */
export class ComparedCurves {
  readonly #of: () => { model: CarModel; example: readonly Setup[] | undefined };
  #known: Known | undefined;
  /** Where a source's roll centre is, once something shows it. */
  rollCentreOf: ((source: AnySource, heights: CurveHeights) => RollCentre | undefined) | undefined;

  constructor(of: () => { model: CarModel; example: readonly Setup[] | undefined }) {
    this.#of = of;
  }

  #sets(hasOwn = true): ComparedSets {
    const { model, example } = this.#of();
    return comparedSets(model.car, example, hasOwn);
  }

  #sourceOf(row: ComparedRow): AnySource {
    const { model } = this.#of();
    const sources = CarSources.of(model);
    const { setup } = row;
    if (!setup) return sources.ofCorner(model.car);
    return isOfParts(row) ? sources.ofParts(model.car, setup)! : sources.ofSetup(setup);
  }

  /** What the curves of the present rows depend on, by identity. */
  get keys(): readonly unknown[] {
    const { measuredAt, camberReadLower } = this.#of().model.car;
    return this.#sets().rows.flatMap<unknown>((row) =>
      row.setup && !isOfParts(row) ? row.setup : [row.setup, this.#sourceOf(row), measuredAt, camberReadLower],
    );
  }

  isOf(keys: readonly unknown[]): boolean {
    return isSameList(this.keys, keys);
  }

  /** The curves of the present rows, where they are known. */
  get known(): Known | undefined {
    return this.#known && this.isOf(this.#known.keys) ? this.#known : undefined;
  }

  /** The same for a comparison, with all that is known of them by now. */
  get curves(): readonly ComparedCurve[] {
    const { curves, sources } = this.known!;
    return curves.map((one, i) => {
      const rollCentre = one.shares && this.rollCentreOf?.(sources[i]!, this.heights);
      return rollCentre ? { ...one, rollCentre } : one;
    });
  }

  /** Whose rows these are; without the car's own curve where that makes none. */
  get compared(): ComparedSets {
    return this.known?.compared ?? this.#sets();
  }

  /** Where the car stood when its links were measured. */
  get heights(): CurveHeights {
    const { measuredAt, camberReadLower, given } = this.#of().model.car;
    return {
      ...(measuredAt !== undefined && { measuredAt }),
      ...(camberReadLower !== undefined && given.camber !== undefined && { camberReadLower }),
    };
  }

  /**
   * Has the curve of each row solved. The car's own is left out where it makes none and there are others, and so is a set whose parts do
   * not go on: what is wrong is told, and the others are compared.
   *
   * @throws InputError of the first set of readings that cannot be fitted, or of the car's own curve where nothing stands without it
   */
  async solve(): Promise<void> {
    const { keys, heights } = this;
    const made = CarCurves.of(this.#of().model);
    let [compared, leftOut]: [ComparedSets, readonly Problem[]] = [this.#sets(), []];
    const bare = compared.rows.find(({ own }) => own);
    let corner: Corner | undefined;
    try {
      if (bare) ({ corner } = await made.angles(this.#sourceOf(bare), heights));
    } catch (error) {
      const others = this.#sets(false);
      if (!(error instanceof InputError) || others.isExample) throw error;
      [compared, leftOut] = [others, error.problems];
    }
    const wrong: WrongSet[] = [];
    const rows = await Promise.all(
      compared.rows.map(async (row) => {
        const source = this.#sourceOf(row);
        const { setup } = row;
        const isOwn = !setup || isOfParts(row);
        try {
          const { curve, toe } = await made.angles(source, isOwn ? heights : {});
          return { row, source, curve: { curve, ...(isOfLinks(source) && { shares: CAR }), ...(toe && { toe }) } };
        } catch (error) {
          if (!(error instanceof InputError) || !isOfParts(row)) throw error;
          wrong.push({ setup: setup!, problems: error.problems });
          return undefined;
        }
      }),
    );
    const found = rows.filter((one) => one !== undefined);
    // While they were solved others may have come.
    if (!this.isOf(keys)) return;
    this.#known = {
      keys,
      compared: { ...compared, rows: found.map(({ row }) => row) },
      curves: found.map(({ curve }) => curve),
      sources: found.map(({ source }) => source),
      corner,
      leftOut,
      wrong,
    };
  }

  /** The car's links, with no parts on, whether they are compared or not; undefined where there are none that fit together. */
  async bareCorner(): Promise<Corner | undefined> {
    const made = CarCurves.of(this.#of().model);
    try {
      return (await made.angles(made.sources.ofCorner(this.#of().model.car))).corner;
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      return undefined;
    }
  }

  /** The toe of the same corner with other parts on, where it is known. */
  async toeOf(source: PartsSource | LearntSource): Promise<ComparedCurve> {
    const { curve, toe } = await CarCurves.of(this.#of().model).angles(source, this.heights);
    return { curve, shares: CAR, ...(toe && { toe }) };
  }
}
