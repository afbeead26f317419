import type { CoreApi, QuestionRecord, ServedCore, ServeScope, WireOutcome } from './protocol.js';

/*
 * What crosses between page and worker. To the worker: a call as [id, question, request], and [id] alone to cancel it. To the page: 'ready',
 * the id of the call that is worked on, and [id, outcome].
 */

/** The worker's end: answers the calls that arrive at `scope`. */
export function serve(scope: ServeScope, { answer, cancel }: Pick<CoreApi<QuestionRecord>, 'answer' | 'cancel'>): void {
  scope.addEventListener('message', async (event) => {
    const [id, question, request] = (event as MessageEvent<[number, string?, unknown?]>).data;
    if (question === undefined) {
      cancel(id);
      return;
    }
    const outcome = await answer(id, question, request as never, () => scope.postMessage(id));
    try {
      scope.postMessage([id, outcome]);
    } catch (error) {
      // Nothing that can be sent: a fault of the program, which nobody must wait for in vain.
      scope.postMessage([id, { ok: false, fault: String(error) }]);
    }
  });
  scope.postMessage('ready');
}

/** The page's end. What cannot be sent rejects. */
export function servedBy(worker: Worker): ServedCore {
  const waiting = new Map<number, (outcome: WireOutcome<unknown>) => void>();
  worker.addEventListener('message', ({ data }) => {
    if (!Array.isArray(data)) return;
    const [id, outcome] = data as [number, WireOutcome<unknown>];
    waiting.get(id)?.(outcome);
    waiting.delete(id);
  });
  return {
    answer: (id, question, request) =>
      new Promise((resolve) => {
        worker.postMessage([id, question, request]);
        waiting.set(id, resolve);
      }),
    cancel: (id) => worker.postMessage([id]),
  };
}
