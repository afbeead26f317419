import { fromStockHeight } from '../../core/answers/re-zero.js';
import { type Curve, curveOf } from '../../core/curve/curve.js';
import type { CurveData } from '../../core/curve/curve-data.js';
import { camberOf, type MovedLinks, type SolvedSource } from '../../core/curve-sources/solved-source.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import type { CarDocument } from '../../core/document/car.js';
import type { Corner } from '../../core/linkage/corner.js';
import { InputError } from '../../core/quantity/problem.js';
import type { CarModel } from './car-model.js';
import { CarSources } from './car-sources.js';
import { solve } from './solved-sources.js';

/** Where a car stands whose curve is asked for; see LoweringRequest. */
export type CurveHeights = Pick<CarDocument, 'measuredAt' | 'camberReadLower'>;

type Solved = SolvedSource<MovedLinks>;

/** The curves of one car, for what is answered on the page: each source is asked for once, whichever elements share the car. */
export class CarCurves {
  static readonly #all = new WeakMap<CarModel, CarCurves>();

  static of(model: CarModel): CarCurves {
    const known = CarCurves.#all.get(model) ?? new CarCurves(CarSources.of(model));
    CarCurves.#all.set(model, known);
    return known;
  }

  readonly sources: CarSources;
  readonly #curves = new WeakMap<AnySource, Promise<Solved>>();
  readonly #made = new WeakMap<CurveData, Curve>();

  constructor(sources: CarSources) {
    this.sources = sources;
  }

  /** Camber over travel, and toe where it is known, counted from stock height. @throws InputError of what is wrong with the source */
  async angles(source: AnySource, heights: CurveHeights = {}): Promise<{ curve: Curve; toe?: Curve; corner?: Corner }> {
    const known = fromStockHeight(await this.#curvesOf(source), heights);
    const { toe, links } = known;
    return {
      curve: this.given(camberOf(known), curveOf),
      ...(toe && { toe: this.given(toe, curveOf) }),
      ...(links && { corner: links.corner }),
    };
  }

  /** A curve that a page's script gives, checked the first time. @throws InputError of what is wrong with it */
  given(data: CurveData, check: (data: CurveData) => Curve): Curve {
    const curve = this.#made.get(data) ?? check(data);
    this.#made.set(data, curve);
    return curve;
  }

  #curvesOf(source: AnySource): Promise<Solved> {
    let coming = this.#curves.get(source);
    if (!coming) {
      coming = solved(source);
      this.#curves.set(source, coming);
      // What failed is tried again when it is asked for again.
      coming.catch(() => this.#curves.delete(source));
    }
    return coming;
  }
}

async function solved(source: AnySource): Promise<Solved> {
  const found = await solve(source, { slot: {} });
  if ('problems' in found) throw new InputError(found.problems);
  return found;
}
