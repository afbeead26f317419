import type { FittedSource } from '../../core/answers/camber-source.js';
import type { ReadingsSource } from '../../core/answers/readings-source.js';
import { readingsBridge } from '../../core/worker/readings-bridge.js';

let last: { key: string; fitted: Promise<FittedSource> } | undefined;
let counter = 0;

/** The fit of readings. Dragging a height asks for the same again and again: the last one is remembered. */
export function fittedSource(source: ReadingsSource): Promise<FittedSource> {
  const key = JSON.stringify(source);
  if (last?.key !== key) {
    last = { key, fitted: readingsBridge().ask('fitReadings', source, { slot: `fit-${counter++}` }) };
    last.fitted.catch(() => {
      // What failed is asked again the next time.
      if (last?.key === key) last = undefined;
    });
  }
  return last.fitted;
}
