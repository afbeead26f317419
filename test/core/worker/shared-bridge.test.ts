import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { Layer } from '../../../core/worker/layer.js';
import { endFakeWorkers, FakeWorker, pageCore, settle, useFakeWorkers } from './fake-worker.js';

vi.mock('../../../core/worker/layers/base.generated.js', async () => {
  const { baseOf } = await import('./fake-worker.js');
  return { base: baseOf(pageCore), BUILD: 'built' };
});

const layer = (name: string): Layer => ({ name, needs: [], make: () => ({}) });
let key: symbol;

/** One more copy of the code on the page, with classes of its own. */
async function copy() {
  vi.resetModules();
  const { BRIDGE, coreBridge, WorkerFault } = await import('../../../core/worker/bridge.js');
  const { InputError } = await import('../../../core/quantity/problem.js');
  key = BRIDGE;
  const bridge = coreBridge();
  return { coreBridge, bridge, WorkerFault, InputError };
}

beforeEach(useFakeWorkers);
afterEach(() => {
  endFakeWorkers();
  Reflect.deleteProperty(globalThis, key);
});

it('all callers of one copy get the same bridge', async () => {
  const { bridge, coreBridge } = await copy();
  expect(coreBridge()).toBe(bridge);
});

it('all copies of one build share one worker, whose mode each of them tells', async () => {
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

it('a layer that one copy has joined, another need not join again', async () => {
  const one = await copy();
  const two = await copy();
  one.bridge.join([layer('fit')]);
  one.bridge.askForReply('work' as never, 1 as never, { slot: 'one' });
  await settle();
  two.bridge.join([layer('fit')]);
  expect(FakeWorker.last.terminated).toBe(false);
  two.bridge.join([layer('linkage')]);
  expect(FakeWorker.all.map(({ terminated }) => terminated)).toEqual([true, false]);
  await settle();
  for (const call of FakeWorker.last.calls) call.answer(null);
});

it('another version or build has a worker of its own', async () => {
  const { bridge } = await copy();
  Reflect.set(globalThis, Symbol.for('bumpline.worker/0.0.0/built'), 'another bridge');
  bridge.askForReply('work' as never, 1 as never, { slot: 'one' }).catch(() => {});
  await settle();
  expect(bridge.mode).toBe('worker');
  expect(String(key)).toContain('/built)');
  expect(Object.getOwnPropertySymbols(globalThis)).toContain(key);
  Reflect.deleteProperty(globalThis, Symbol.for('bumpline.worker/0.0.0/built'));
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

it('the core stays on the page where workers are not wanted, whatever joins it', async () => {
  const wanted = Symbol.for('bumpline.main-thread');
  Reflect.set(globalThis, wanted, true);
  const { bridge } = await copy();
  const first = bridge.askForReply('lowering', 1 as never, { slot: 'one' });
  bridge.join([layer('fit')]);
  const replies = [first, bridge.askForReply('readings', 2 as never, { slot: 'two' })];
  expect(await Promise.all(replies)).toMatchObject([
    { ok: true, value: { page: 1 } },
    { ok: true, value: { page: 2 } },
  ]);
  expect(bridge.mode).toBe('main-thread');
  expect(FakeWorker.all).toEqual([]);
  Reflect.deleteProperty(globalThis, wanted);
});
