import type { CorneringRequest } from '../../core/answers/cornering-request.js';
import type { RolledAnswer, RolledRequest, StandingAxle } from '../../core/answers/roll-source.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import { coreBridge } from '../../core/worker/bridge.js';
import type { Layer } from '../../core/worker/layer.js';
import { inTime } from '../delivery/in-time.js';
import { sourceLayers } from './source-layers.js';

let layer: Layer | undefined;

/** Fetched only where the roll is worked out. */
async function rolledLayer(): Promise<Layer> {
  layer ??= (await inTime(import('../../core/worker/layers/rolled.generated.js'))).rolled;
  return layer;
}

/** All that a question about a worked-out roll needs of the core. */
export async function rolledLayers({ source }: { source: AnySource }): Promise<readonly Layer[]> {
  return [await rolledLayer(), ...(await sourceLayers(source))];
}

async function coreFor(request: { source: AnySource }) {
  const layers = await rolledLayers(request);
  const bridge = coreBridge();
  bridge.join(layers);
  return bridge;
}

/** One turn of one set-up, its roll worked out. @throws InputError of what is wrong with it */
export async function rolledIn(
  { roll: _, rollUncertainty: __, ...request }: RolledRequest<AnySource> & Partial<CorneringRequest<AnySource>>,
  slot: object,
  signal?: AbortSignal,
): Promise<RolledAnswer> {
  const bridge = await coreFor(request);
  return bridge.ask('rolled', request as RolledRequest<AnySource>, { slot, ...(signal && { signal }) });
}

/** What links tell of the axle as it stands. @throws InputError of what is wrong with it */
export async function standingIn(request: CorneringRequest<AnySource>, slot: object): Promise<StandingAxle> {
  const bridge = await coreFor(request);
  return bridge.ask('standingAxle', request, { slot });
}
