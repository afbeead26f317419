import type { JoinedLayers } from './layer.js';
import type { ServedCore, WireOutcome } from './protocol.js';
import { yieldToEventLoop } from './yield-to-event-loop.js';

/**
 * The core on the page's own thread, behind the interface it has in a worker. Requests and answers are cloned as on the way to a
 * worker, so that nothing is shared in one mode and not in the other. The first call starts in the task it was asked in, each further one
 * in a task of its own.
 */
export function onPage(layers: JoinedLayers): ServedCore {
  let turn = Promise.resolve();

  async function run(id: number, question: string, request: unknown): Promise<WireOutcome<unknown>> {
    return structuredClone(await layers.core.answer(id, question, structuredClone(request) as never));
  }

  return {
    answer: (id, question, request) =>
      new Promise((resolve) => {
        turn = turn.then(() => {
          resolve(run(id, question, request));
          return yieldToEventLoop();
        });
      }),
    cancel(id) {
      layers.core.cancel(id);
      // Once more behind its start, should it still wait for its turn.
      turn = turn.then(() => layers.core.cancel(id));
    },
  };
}
