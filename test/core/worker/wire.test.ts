import { expect, it } from 'vitest';
import type { ServeScope } from '../../../core/worker/protocol.js';
import { serve, servedBy } from '../../../core/worker/wire.js';
import { settle } from './fake-worker.js';

/** A worker and its scope, whose messages are cloned as those of a real one are, and all that was said to the page. */
function pair() {
  const worker = new EventTarget();
  const scope = new EventTarget();
  const said: unknown[] = [];
  const post = (to: EventTarget, data: unknown) => {
    const copy = structuredClone(data);
    queueMicrotask(() => to.dispatchEvent(new MessageEvent('message', { data: copy })));
  };
  Object.assign(worker, { postMessage: (data: unknown) => post(scope, data) });
  Object.assign(scope, {
    postMessage: (data: unknown) => {
      post(worker, data);
      said.push(data);
    },
  });
  return { worker: worker as unknown as Worker, scope: scope as unknown as ServeScope, said };
}

it('a call gets its own outcome, whichever ends first, and a cancelled one its id', async () => {
  const { worker, scope, said } = pair();
  const ends: Record<number, (outcome: never) => void> = {};
  const cancelled: number[] = [];
  serve(scope, {
    answer: (id, question, request, announce) => {
      announce?.();
      return question === 'late'
        ? new Promise((end) => {
            ends[id] = end;
          })
        : ({ ok: true, value: [question, request] } as never);
    },
    cancel: (id) => cancelled.push(id),
  });
  const served = servedBy(worker);
  const [late, soon] = [served.answer(7, 'late', 1), served.answer(8, 'soon', new Float64Array([2]))];
  expect(await soon).toEqual({ ok: true, value: ['soon', new Float64Array([2])] });
  served.cancel(7);
  await settle();
  expect(cancelled).toEqual([7]);
  ends[7]!({ ok: true, value: 'late' } as never);
  expect(await late).toEqual({ ok: true, value: 'late' });
  expect(said.slice(0, 3)).toEqual(['ready', 7, 8]);
});

it('an outcome that cannot be sent is a fault, and a request that cannot be sent rejects', async () => {
  const { worker, scope } = pair();
  serve(scope, { answer: () => ({ ok: true, value: () => {} }) as never, cancel: () => {} });
  const served = servedBy(worker);
  expect(await served.answer(1, 'work', 0)).toMatchObject({ ok: false, fault: expect.stringContaining('clone') });
  await expect(served.answer(2, 'work', () => {})).rejects.toThrow('clone');
});
