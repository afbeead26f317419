import type { SolvedData } from '../../core/answers/solved.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import { coreBridge } from '../../core/worker/bridge.js';
import { pageWide } from '../../core/worker/page-wide.js';
import type { AskOptions } from '../../core/worker/protocol.js';
import { sourceLayers } from './source-layers.js';

/** What sources came to, by their identity: each is one object, whichever elements ask for it. */
const known = pageWide('solved', () => new WeakMap<AnySource, SolvedData>());

/** What a source came to, where that is known. */
export const solvedNow = (source: AnySource): SolvedData | undefined => known.get(source);

/** Has the core solve a source. Rejects as `coreBridge().ask` does, but not for what is wrong with the source. */
export async function solve(source: AnySource, options: AskOptions): Promise<SolvedData> {
  const here = known.get(source);
  if (here && !('problems' in here)) return here;
  const layers = sourceLayers(source);
  const bridge = coreBridge();
  bridge.join(layers instanceof Promise ? await layers : layers);
  const come = await bridge.ask('solved', { source }, options);
  // Two may have asked at once: what is made of it is remembered by identity, so both take the first.
  const solved = known.get(source) ?? come;
  known.set(source, solved);
  return solved;
}
