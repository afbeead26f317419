import type { FittedSource } from '../../core/answers/camber-source.js';
import type { ReadingsSource } from '../../core/answers/readings-source.js';
import type { AskOptions } from '../../core/worker/protocol.js';
import { readingsBridge } from '../../core/worker/readings-bridge.js';

let last: { key: string; fitted: FittedSource } | undefined;

/** The fit of readings. Dragging a height asks for the same again and again: the last one is remembered. */
export async function fittedSource(source: ReadingsSource, options: AskOptions): Promise<FittedSource> {
  const key = JSON.stringify(source);
  if (last?.key === key) return last.fitted;
  const fitted = await readingsBridge().ask('fitReadings', source, options);
  last = { key, fitted };
  return fitted;
}
