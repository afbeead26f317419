import type { SourceCurves } from '../../core/answers/curves.js';
import { reZeroed, withCamberReadAt, withChangesOnly } from '../../core/answers/re-zero.js';
import { type Curve, curveOf } from '../../core/curve/curve.js';
import type { CurveData } from '../../core/curve/curve-data.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import type { CarDocument } from '../../core/document/car.js';
import { coreBridge } from '../../core/worker/bridge.js';
import type { CarModel } from './car-model.js';
import { CarSources } from './car-sources.js';
import { sourceLayers } from './source-layers.js';

/** Where a car stands whose curve is asked for; see LoweringRequest. */
export type CurveHeights = Pick<CarDocument, 'measuredAt' | 'camberReadLower'>;

type Made = { [K in keyof CurveHeights]: CurveHeights[K] | undefined } & { curve: Curve };

/** The curves of one car, for what is answered on the page: each source is asked for once, whichever elements share the car. */
export class CarCurves {
  static readonly #all = new WeakMap<CarModel, CarCurves>();

  static of(model: CarModel): CarCurves {
    const known = CarCurves.#all.get(model) ?? new CarCurves(CarSources.of(model));
    CarCurves.#all.set(model, known);
    return known;
  }

  readonly sources: CarSources;
  readonly #curves = new WeakMap<AnySource, Promise<SourceCurves>>();
  readonly #made = new WeakMap<SourceCurves | CurveData, Made>();

  constructor(sources: CarSources) {
    this.sources = sources;
  }

  /** Camber over travel, counted from stock height. @throws InputError of what is wrong with the source */
  async camber(source: AnySource, heights: CurveHeights = {}): Promise<Curve> {
    const curves = await this.#curvesOf(source);
    return this.#remember(curves, heights, () => {
      const read = withCamberReadAt(curves, heights.camberReadLower ?? 0);
      // Readings say themselves where they were counted from.
      return curveOf(withChangesOnly(read.readings ? read : reZeroed(read, heights.measuredAt ?? 0)).camber);
    });
  }

  /** A curve that a page's script gives, checked the first time. @throws InputError of what is wrong with it */
  given(data: CurveData, check: (data: CurveData) => Curve): Curve {
    return this.#remember(data, {}, () => check(data));
  }

  #curvesOf(source: AnySource): Promise<SourceCurves> {
    let coming = this.#curves.get(source);
    if (!coming) {
      coming = solved(source);
      this.#curves.set(source, coming);
      // What failed is tried again when it is asked for again.
      coming.catch(() => this.#curves.delete(source));
    }
    return coming;
  }

  #remember(of: SourceCurves | CurveData, heights: CurveHeights, make: () => Curve): Curve {
    const { measuredAt, camberReadLower } = heights;
    const last = this.#made.get(of);
    if (last && last.measuredAt === measuredAt && last.camberReadLower === camberReadLower) return last.curve;
    const curve = make();
    this.#made.set(of, { curve, measuredAt, camberReadLower });
    return curve;
  }
}

async function solved(source: AnySource): Promise<SourceCurves> {
  const bridge = coreBridge();
  bridge.join(await sourceLayers(source));
  return bridge.ask('curves', { source }, { slot: {} });
}
