import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { VERSION } from '../../../core/version.js';
import { endFakeWorkers, FakeWorker, pageCore, settle, useFakeWorkers } from './fake-worker.js';

vi.mock('../../../core/worker/core-function.generated.js', () => ({ coreFactory: pageCore }));

const key = Symbol.for(`bumpline.worker/${VERSION}`);

/** One more copy of the code on the page, with classes of its own. */
async function copy() {
  vi.resetModules();
  const { sharedBridge, WorkerFault } = await import('../../../core/worker/bridge.js');
  const { InputError } = await import('../../../core/quantity/problem.js');
  const bridge = sharedBridge();
  return { sharedBridge, bridge, WorkerFault, InputError };
}

beforeEach(useFakeWorkers);
afterEach(() => {
  endFakeWorkers();
  Reflect.deleteProperty(globalThis, key);
});

it('all callers of one copy get the same bridge', async () => {
  const { bridge, sharedBridge } = await copy();
  expect(sharedBridge()).toBe(bridge);
});

it('all copies of one version share one worker, whose mode each of them tells', async () => {
  const one = await copy();
  const two = await copy();
  one.bridge.askForReply('work' as never, 1 as never, { slot: 'one' });
  two.bridge.askForReply('work' as never, 2 as never, { slot: 'two' });
  await settle();
  expect(FakeWorker.all).toHaveLength(1);
  expect(FakeWorker.last.calls.map((call) => call.request)).toEqual([1, 2]);
  expect([one.bridge.mode, two.bridge.mode]).toEqual(['worker', 'worker']);
  for (const call of FakeWorker.last.calls) call.answer(null);
});

it('another version has a worker of its own', async () => {
  const { bridge } = await copy();
  Reflect.set(globalThis, Symbol.for('bumpline.worker/0.0.0'), 'another bridge');
  bridge.askForReply('work' as never, 1 as never, { slot: 'one' }).catch(() => {});
  await settle();
  expect(bridge.mode).toBe('worker');
  expect(Object.getOwnPropertySymbols(globalThis)).toContain(key);
  Reflect.deleteProperty(globalThis, Symbol.for('bumpline.worker/0.0.0'));
});

it('errors are of the class of the copy that asked, not of the copy that made the bridge', async () => {
  const maker = await copy();
  const asker = await copy();
  expect(asker.InputError).not.toBe(maker.InputError);
  const refused = asker.bridge.ask('work' as never, 1 as never, { slot: 'a' });
  const failed = asker.bridge.ask('work' as never, 2 as never, { slot: 'b' });
  refused.catch(() => {});
  failed.catch(() => {});
  await settle();
  const [first, second] = FakeWorker.last.calls;
  first?.end({ ok: false, problems: [{ code: 'missing', path: 'drop', value: undefined }] });
  second?.end({ ok: false, fault: 'broken' });
  await expect(refused).rejects.toBeInstanceOf(asker.InputError);
  await expect(refused).rejects.toMatchObject({ field: 'drop', code: 'missing' });
  await expect(failed).rejects.toBeInstanceOf(asker.WorkerFault);
});
