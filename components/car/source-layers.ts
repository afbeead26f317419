import type { AnySource } from '../../core/curve-sources/source.js';
import type { Layer } from '../../core/worker/layer.js';
import { inTime } from '../delivery/in-time.js';

type Kind = AnySource['kind'];

const given = () => import('../../core/worker/layers/given.generated.js').then((layer) => layer.given);

/** What solves a source; it comes only where there is such a source. */
const FETCH: Partial<Record<Kind, () => Promise<Layer>>> = {
  curve: given,
  coefficients: given,
  readings: () => import('../../core/worker/layers/fit.generated.js').then(({ fit }) => fit),
  driveway: () => import('../../core/worker/layers/linkage.generated.js').then(({ linkage }) => linkage),
  corner: () => import('../../core/worker/layers/points.generated.js').then(({ points }) => points),
  learnt: () => import('../../core/worker/layers/learn.generated.js').then(({ learn }) => learn),
  parts: () => import('../../core/worker/layers/parts.generated.js').then(({ parts }) => parts),
};

const fetched: Partial<Record<Kind, readonly Layer[]>> = {};

/** The layers of the core that a kind of source needs; at once where they are there, so that a drag need not wait a frame for them. */
export function sourceLayers({ kind }: Pick<AnySource, 'kind'>): readonly Layer[] | Promise<readonly Layer[]> {
  const here = fetched[kind];
  const fetch = FETCH[kind];
  if (here || !fetch) return here ?? [];
  return inTime(fetch()).then((layer) => {
    fetched[kind] = [layer];
    return fetched[kind];
  });
}

/** What comes with an element anyway need not be fetched. */
export function haveLayer(kind: Kind, layer: Layer): void {
  fetched[kind] = [layer];
}
