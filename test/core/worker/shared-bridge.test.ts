import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { VERSION } from '../../../core/version.js';
import { endFakeWorkers, FakeWorker, pageCore, settle, useFakeWorkers } from './fake-worker.js';

vi.mock('../../../core/worker/core-function.generated.js', () => ({ coreFactory: pageCore }));
vi.mock('../../../core/worker/readings-function.generated.js', () => ({ coreFactory: pageCore }));

const key = Symbol.for(`bumpline.worker/${VERSION}`);
const readingsKey = Symbol.for(`bumpline.worker/${VERSION}/readings`);

/** One more copy of the code on the page, with classes of its own. */
async function copy() {
  vi.resetModules();
  const { sharedBridge, WorkerFault } = await import('../../../core/worker/bridge.js');
  const { readingsBridge } = await import('../../../core/worker/readings-bridge.js');
  const { InputError } = await import('../../../core/quantity/problem.js');
  const bridge = sharedBridge();
  return { sharedBridge, readingsBridge, bridge, WorkerFault, InputError };
}

beforeEach(useFakeWorkers);
afterEach(() => {
  endFakeWorkers();
  Reflect.deleteProperty(globalThis, key);
  Reflect.deleteProperty(globalThis, readingsKey);
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

it('readings have a worker of their own, which all copies share too', async () => {
  const one = await copy();
  expect(Object.getOwnPropertySymbols(globalThis)).not.toContain(readingsKey);
  const two = await copy();
  for (const { readingsBridge } of [one, two])
    readingsBridge()
      .askForReply('readings', 1 as never, { slot: `slot ${readingsBridge === one.readingsBridge}` })
      .catch(() => {});
  await settle();
  expect(FakeWorker.all).toHaveLength(1);
  expect(FakeWorker.last.calls.map(({ question }) => question)).toEqual(['readings', 'readings']);
  expect([one.bridge.mode, two.readingsBridge().mode]).toEqual(['idle', 'worker']);
  one.bridge.askForReply('lowering', 1 as never, { slot: 'one' }).catch(() => {});
  await settle();
  expect(FakeWorker.all).toHaveLength(2);
  for (const { calls } of FakeWorker.all) for (const call of calls) call.answer(null);
});

it('both stay on the page where workers are not wanted', async () => {
  const wanted = Symbol.for('bumpline.main-thread');
  Reflect.set(globalThis, wanted, true);
  const { bridge, readingsBridge } = await copy();
  const replies = [
    bridge.askForReply('lowering', 1 as never, { slot: 'one' }),
    readingsBridge().askForReply('readings', 2 as never, { slot: 'two' }),
  ];
  expect(await Promise.all(replies)).toMatchObject([
    { ok: true, value: { page: 1 } },
    { ok: true, value: { page: 2 } },
  ]);
  expect([bridge.mode, readingsBridge().mode]).toEqual(['main-thread', 'main-thread']);
  expect(FakeWorker.all).toEqual([]);
  Reflect.deleteProperty(globalThis, wanted);
});
