import { breathe } from './breathe.js';
import type { CoreApi, Outcome, QuestionRecord, ServedCore } from './protocol.js';

/**
 * The core on the page's own thread, behind the interface it has in a worker. Requests and answers are cloned as on the way to a
 * worker, so that nothing is shared in one mode and not in the other. The first call starts in the task it was asked in, each further one
 * in a task of its own.
 */
export function onPage<Q extends QuestionRecord>(coreFactory: () => CoreApi<Q>): ServedCore {
  let core: CoreApi<QuestionRecord> | undefined;
  let turn = Promise.resolve();

  async function run(id: number, question: string, request: unknown): Promise<Outcome<unknown>> {
    core ??= coreFactory() as unknown as CoreApi<QuestionRecord>;
    return structuredClone(await core.answer(id, question, structuredClone(request) as never));
  }

  return {
    answer: (id, question, request) =>
      new Promise((resolve) => {
        turn = turn.then(() => {
          resolve(run(id, question, request));
          return breathe();
        });
      }),
    cancel(id) {
      core?.cancel(id);
      // Once more behind its start, should it still wait for its turn.
      turn = turn.then(() => core?.cancel(id));
    },
  };
}
