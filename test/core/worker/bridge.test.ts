import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type BridgeOptions, createBridge } from '../../../core/worker/create-bridge.js';
import { WorkerFault } from '../../../core/worker/errors.js';
import {
  baseOf,
  endFakeWorkers,
  FakeWorker,
  pageCore,
  settle,
  type TestQuestions,
  useFakeWorkers,
} from './fake-worker.js';

const factory = vi.fn(pageCore);

function setUp(options: Partial<BridgeOptions> = {}) {
  const bridge = createBridge<TestQuestions>({ layers: [baseOf(factory)], ...options });
  const ask = (request: unknown, slot = 'a', question: 'work' | 'wait' = 'work', signal?: AbortSignal) => {
    const promise = bridge.ask(question, request, { slot, signal });
    promise.catch(() => {});
    return promise;
  };
  return { bridge, ask };
}

/** Time passes, and what it sets off happens. */
async function pass(ms: number) {
  await settle();
  await vi.advanceTimersByTimeAsync(ms);
  await settle();
}

beforeEach(() => {
  useFakeWorkers();
  factory.mockReset().mockImplementation(pageCore);
});
afterEach(endFakeWorkers);

describe('the start of the worker', () => {
  it('waits for the first call', async () => {
    const { bridge, ask } = setUp();
    expect(bridge.mode).toBe('idle');
    expect(FakeWorker.all).toHaveLength(0);
    ask(1);
    expect(bridge.mode).toBe('starting');
    await settle();
    expect(bridge.mode).toBe('worker');
    expect(FakeWorker.all).toHaveLength(1);
    expect(FakeWorker.last.calls).toHaveLength(1);
  });

  it('holds calls back until the worker is ready, then sends those of all slots', async () => {
    FakeWorker.prompt = false;
    const { ask } = setUp();
    const answers = [ask(1, 'a'), ask(2, 'b')];
    await pass(2900);
    expect(FakeWorker.last.calls).toEqual([]);
    FakeWorker.last.say('ready');
    await settle();
    expect(FakeWorker.last.calls.map((call) => call.request)).toEqual([1, 2]);
    for (const call of FakeWorker.last.calls) call.answer(`answer ${call.request}`);
    expect(await Promise.all(answers)).toEqual(['answer 1', 'answer 2']);
  });

  it('keeps the address of the blob alive until the worker is ready, and no longer', async () => {
    FakeWorker.prompt = false;
    const revoke = vi.spyOn(URL, 'revokeObjectURL');
    const { ask } = setUp();
    ask(1);
    await settle();
    expect(revoke).not.toHaveBeenCalled();
    FakeWorker.last.say('ready');
    await settle();
    expect(revoke).toHaveBeenCalledWith(FakeWorker.last.url);
  });

  const failures: [string, () => void | Promise<void>][] = [
    ['an error event', () => FakeWorker.last.fire('error')],
    ['a message that cannot be read', () => FakeWorker.last.fire('messageerror')],
    ['silence for 3 s', () => pass(3000)],
  ];
  for (const [name, failure] of failures)
    it(`falls back to the page for good after ${name} before ready`, async () => {
      FakeWorker.prompt = false;
      const revoke = vi.spyOn(URL, 'revokeObjectURL');
      const { bridge, ask } = setUp();
      const answer = ask(1);
      await settle();
      await failure();
      expect(await answer).toEqual({ page: 1 });
      expect(bridge.mode).toBe('main-thread');
      expect(FakeWorker.last.terminated).toBe(true);
      expect(revoke).toHaveBeenCalledWith(FakeWorker.last.url);
      await pass(100_000);
      expect(await ask(2)).toEqual({ page: 2 });
      expect(FakeWorker.all).toHaveLength(1);
      expect(factory).toHaveBeenCalledTimes(1);
    });

  it('is given the whole 3 s', async () => {
    FakeWorker.prompt = false;
    const { bridge, ask } = setUp();
    ask(1);
    await pass(2999);
    expect(bridge.mode).toBe('starting');
    await pass(1);
    expect(bridge.mode).toBe('main-thread');
  });

  it('falls back to the page when the constructor throws', async () => {
    FakeWorker.blocked = new TypeError('blocked');
    const revoke = vi.spyOn(URL, 'revokeObjectURL');
    const { bridge, ask } = setUp();
    expect(await ask(1)).toEqual({ page: 1 });
    expect(bridge.mode).toBe('main-thread');
    expect(revoke).toHaveBeenCalledTimes(1);
  });

  it('does not count any more when the worker is ready too late', async () => {
    FakeWorker.prompt = false;
    const { bridge, ask } = setUp();
    ask(1);
    await pass(3000);
    FakeWorker.last.dispatchEvent(new MessageEvent('message', { data: 'ready' }));
    expect(bridge.mode).toBe('main-thread');
    expect(await ask(2)).toEqual({ page: 2 });
  });

  it('does not take place in forced main-thread mode, by option or by the page', async () => {
    const byOption = setUp({ mainThread: true });
    expect(await byOption.ask(1)).toEqual({ page: 1 });
    const flag = Symbol.for('bumpline.main-thread');
    Reflect.set(globalThis, flag, true);
    try {
      const byPage = setUp();
      expect(await byPage.ask(1)).toEqual({ page: 1 });
      expect(byPage.bridge.mode).toBe('main-thread');
    } finally {
      Reflect.deleteProperty(globalThis, flag);
    }
    expect(FakeWorker.all).toHaveLength(0);
  });

  it('passes the address through the Trusted Types policy "bumpline", which is made once', async () => {
    const createPolicy = vi.fn((_name: string, rules: { createScriptURL(url: string): string }) => ({
      createScriptURL: (url: string) => `trusted ${rules.createScriptURL(url)}`,
    }));
    vi.stubGlobal('trustedTypes', { createPolicy });
    vi.resetModules();
    const fresh = await import('../../../core/worker/create-bridge.js');
    const bridge = fresh.createBridge<TestQuestions>({ layers: [baseOf(factory)], idleMs: 10 });
    for (const turn of [1, 2]) {
      const answer = bridge.ask('work', turn, { slot: 'a' });
      await settle();
      expect(FakeWorker.last.url).toMatch(/^trusted blob:/);
      FakeWorker.last.calls[0]?.answer(turn);
      expect(await answer).toBe(turn);
      await pass(10);
    }
    expect(FakeWorker.all).toHaveLength(2);
    expect(createPolicy).toHaveBeenCalledTimes(1);
    expect(createPolicy.mock.calls[0]?.[0]).toBe('bumpline');
  });

  it('takes the plain address where the policy is not allowed', async () => {
    vi.stubGlobal('trustedTypes', {
      createPolicy: () => {
        throw new TypeError('not allowed');
      },
    });
    vi.resetModules();
    const fresh = await import('../../../core/worker/create-bridge.js');
    fresh.createBridge<TestQuestions>({ layers: [baseOf(factory)] }).ask('work', 1, { slot: 'a' });
    expect(FakeWorker.last.url).toMatch(/^blob:/);
  });
});

describe('a worker that stands still', () => {
  it('is replaced after 5 s, and its call is asked once more', async () => {
    const { bridge, ask } = setUp();
    const answer = ask(1);
    await pass(4999);
    expect(FakeWorker.all).toHaveLength(1);
    await pass(1);
    const [first, second] = FakeWorker.all;
    expect(first?.terminated).toBe(true);
    expect(second?.calls.map((call) => call.request)).toEqual([1]);
    second?.calls[0]?.answer('late but right');
    expect(await answer).toBe('late but right');
    expect(bridge.mode).toBe('worker');
  });

  it('makes its call reject with WorkerFault the second time, naming the question', async () => {
    const { bridge, ask } = setUp();
    const answer = ask(1);
    await pass(5000);
    await pass(5000);
    await expect(answer).rejects.toBeInstanceOf(WorkerFault);
    await expect(answer).rejects.toThrow(/"work".*5000 ms/);
    expect(FakeWorker.all.every((worker) => worker.terminated)).toBe(true);
    expect(bridge.mode).toBe('idle');
    const next = ask(2);
    await settle();
    FakeWorker.last.calls[0]?.answer('fine again');
    expect(await next).toBe('fine again');
  });

  it('is left alone while a slice of a generator ends now and then', async () => {
    const { ask } = setUp();
    const answer = ask(1);
    await settle();
    for (let second = 0; second < 20; second += 4) {
      FakeWorker.last.say(FakeWorker.last.calls[0]?.id);
      await pass(4000);
    }
    FakeWorker.last.calls[0]?.answer('after 20 s');
    expect(await answer).toBe('after 20 s');
    expect(FakeWorker.all).toHaveLength(1);
  });

  it('does not take other slots with it: only the call it was working on is blamed', async () => {
    const { ask } = setUp();
    const innocent = ask('innocent', 'a');
    const guilty = ask('guilty', 'b');
    for (const _ of [1, 2]) {
      await settle();
      for (const call of FakeWorker.last.calls) FakeWorker.last.say(call.id);
      await pass(5000);
    }
    await expect(guilty).rejects.toBeInstanceOf(WorkerFault);
    expect(FakeWorker.all).toHaveLength(3);
    expect(FakeWorker.last.calls.map((call) => call.request)).toEqual(['innocent']);
    FakeWorker.last.calls[0]?.answer('unharmed');
    expect(await innocent).toBe('unharmed');
  });

  it('goes on with the call that waits, once the one in flight has failed twice', async () => {
    const { ask } = setUp();
    const first = ask(1);
    const second = ask(2);
    await pass(5000);
    await pass(5000);
    await expect(first).rejects.toBeInstanceOf(WorkerFault);
    expect(FakeWorker.last.calls.map((call) => call.request)).toEqual([2]);
    FakeWorker.last.calls[0]?.answer('mine');
    expect(await second).toBe('mine');
  });

  it('is not asked again what nobody waits for', async () => {
    const { bridge, ask } = setUp();
    const abort = new AbortController();
    ask(1, 'a', 'work', abort.signal);
    await settle();
    abort.abort();
    await pass(5000);
    expect(FakeWorker.all).toHaveLength(1);
    expect(FakeWorker.last.terminated).toBe(true);
    expect(bridge.mode).toBe('idle');
  });

  it('never brings its call to the page when no second worker can be had', async () => {
    const { bridge, ask } = setUp();
    const guilty = ask(1, 'a');
    const innocent = ask(2, 'b');
    await settle();
    FakeWorker.last.say(FakeWorker.last.calls[0]?.id);
    await settle();
    FakeWorker.blocked = new Error('no more workers');
    await pass(5000);
    await expect(guilty).rejects.toBeInstanceOf(WorkerFault);
    expect(await innocent).toEqual({ page: 2 });
    expect(bridge.mode).toBe('main-thread');
  });

  it('twice leaves all to the page when no third can be had: the call that waits and those of other slots, once each', async () => {
    const core = pageCore();
    const answer = vi.spyOn(core, 'answer');
    factory.mockReturnValue(core);
    const { bridge, ask } = setUp();
    const guilty = ask('guilty', 'a');
    const waiting = ask('waiting', 'a');
    const other = ask('other', 'b');
    for (const last of [false, true]) {
      await settle();
      FakeWorker.last.say(FakeWorker.last.calls[0]?.id);
      await settle();
      if (last) FakeWorker.blocked = new Error('no more workers');
      await pass(5000);
    }
    await expect(guilty).rejects.toBeInstanceOf(WorkerFault);
    expect(await waiting).toEqual({ page: 'waiting' });
    expect(await other).toEqual({ page: 'other' });
    expect(bridge.mode).toBe('main-thread');
    expect(answer.mock.calls.map((call) => call[2]).sort()).toEqual(['other', 'waiting']);
  });

  it('does no harm any more once it is replaced, whatever is still heard of it', async () => {
    const { ask } = setUp();
    const answer = ask(1);
    await pass(5000);
    const [first, second] = FakeWorker.all;
    first?.fire('error', 'dying');
    await settle();
    expect(FakeWorker.all).toHaveLength(2);
    second?.calls[0]?.answer('from the second');
    expect(await answer).toBe('from the second');
  });

  it('is not suspected when the page itself was away for longer than the limit', async () => {
    const { ask } = setUp();
    const answer = ask(1);
    await settle();
    // The page wakes up: the timer that is due goes off, and right behind it comes what the worker said meanwhile.
    vi.advanceTimersToNextTimer();
    FakeWorker.last.calls[0]?.answer('was there all the time');
    await settle();
    expect(await answer).toBe('was there all the time');
    expect(FakeWorker.all).toHaveLength(1);
  });
});

describe('a worker that dies', () => {
  for (const type of ['error', 'messageerror'] as const)
    it(`by an ${type} event in mid-call is replaced at once, and its call asked once more, then rejected`, async () => {
      const { ask } = setUp();
      const answer = ask(1);
      await settle();
      FakeWorker.last.fire(type, 'out of memory');
      await settle();
      expect(FakeWorker.all).toHaveLength(2);
      expect(FakeWorker.last.calls.map((call) => call.request)).toEqual([1]);
      FakeWorker.last.fire(type, 'out of memory');
      await expect(answer).rejects.toThrow(WorkerFault);
      await expect(answer).rejects.toThrow('out of memory');
    });

  it('keeps its error event from the page, which is told by the rejection', async () => {
    const { ask } = setUp();
    ask(1);
    await settle();
    const event = new Event('error', { cancelable: true });
    FakeWorker.last.dispatchEvent(event);
    expect(event.defaultPrevented).toBe(true);
  });

  it('with nothing to do is started again by the next call only', async () => {
    const { bridge, ask } = setUp();
    const answer = ask(1);
    await settle();
    FakeWorker.last.calls[0]?.answer(1);
    await answer;
    FakeWorker.last.fire('error');
    expect(bridge.mode).toBe('idle');
    await pass(10_000);
    expect(FakeWorker.all).toHaveLength(1);
    ask(2);
    await settle();
    expect(FakeWorker.all).toHaveLength(2);
    expect(bridge.mode).toBe('worker');
  });
});

describe('calls', () => {
  it('tell the worker to stop a generator that is superseded or aborted', async () => {
    const { ask } = setUp();
    const abort = new AbortController();
    ask(1, 'a');
    ask(2, 'b', 'work', abort.signal);
    await settle();
    const [a, b] = FakeWorker.last.calls.map((call) => call.id);
    ask(3, 'a');
    await settle();
    expect(FakeWorker.last.cancelled).toEqual([a]);
    abort.abort();
    await settle();
    expect(FakeWorker.last.cancelled).toEqual([a, b]);
  });

  it('superseded before the worker was ready are stopped as soon as they are there', async () => {
    FakeWorker.prompt = false;
    const { ask } = setUp();
    const first = ask(1);
    ask(2);
    FakeWorker.last.say('ready');
    await settle();
    const [call] = FakeWorker.last.calls;
    expect(FakeWorker.last.cancelled).toEqual([call?.id]);
    call?.end({ ok: false, cancelled: true });
    await expect(first).rejects.toMatchObject({ name: 'AbortError' });
    await settle();
    expect(FakeWorker.last.calls.map((c) => c.request)).toEqual([1, 2]);
  });

  it('aborted before the worker was ready are never sent', async () => {
    FakeWorker.prompt = false;
    const { ask } = setUp();
    const abort = new AbortController();
    ask(1, 'a', 'work', abort.signal);
    ask(2, 'a');
    abort.abort();
    FakeWorker.last.say('ready');
    await settle();
    expect(FakeWorker.last.calls.map((c) => c.request)).toEqual([2]);
  });

  it('with a request that cannot be cloned reject with WorkerFault, in a worker and on the page', async () => {
    const { ask } = setUp();
    const inWorker = ask({ method: () => 1 });
    await settle();
    await expect(inWorker).rejects.toThrow(WorkerFault);
    await expect(setUp({ mainThread: true }).ask({ method: () => 1 })).rejects.toThrow(WorkerFault);
  });

  it('share nothing with the page, in main-thread mode as little as in a worker', async () => {
    const request = { height: 355 };
    const answer = (await setUp({ mainThread: true }).ask(request)) as { page: typeof request };
    expect(answer.page).toEqual(request);
    expect(answer.page).not.toBe(request);
  });

  it('reject with WorkerFault, and the next one works, when the core itself does not start on the page', async () => {
    factory.mockImplementationOnce(() => {
      throw new SyntaxError('too old');
    });
    const { ask } = setUp({ mainThread: true });
    await expect(ask(1)).rejects.toThrow('too old');
    expect(await ask(2)).toEqual({ page: 2 });
  });
});

describe('the end', () => {
  it('comes after 20 s without a call, and the next call starts a new worker', async () => {
    const { bridge, ask } = setUp();
    const first = ask(1);
    await settle();
    FakeWorker.last.calls[0]?.answer(1);
    await first;
    await pass(19_999);
    expect(bridge.mode).toBe('worker');
    await pass(1);
    expect(bridge.mode).toBe('idle');
    expect(FakeWorker.last.terminated).toBe(true);
    const second = ask(2);
    await settle();
    expect(FakeWorker.all).toHaveLength(2);
    FakeWorker.last.calls[0]?.answer(2);
    expect(await second).toBe(2);
  });

  it('is put off by each call', async () => {
    const { bridge, ask } = setUp();
    for (const turn of [1, 2, 3]) {
      const answer = ask(turn);
      await settle();
      FakeWorker.last.calls.at(-1)?.answer(turn);
      await answer;
      await pass(15_000);
    }
    expect(bridge.mode).toBe('worker');
    expect(FakeWorker.all).toHaveLength(1);
  });

  it('by hand rejects calls under way with AbortError and leaves the bridge usable', async () => {
    const { bridge, ask } = setUp();
    const calls = [ask(1), ask(2), ask(3, 'b')];
    await settle();
    bridge.end();
    for (const call of calls) await expect(call).rejects.toMatchObject({ name: 'AbortError' });
    expect(bridge.mode).toBe('idle');
    expect(FakeWorker.last.terminated).toBe(true);
    const next = ask(4);
    await settle();
    FakeWorker.last.calls[0]?.answer('again');
    expect(await next).toBe('again');
  });

  it('by hand stops generators on the page, and later calls stay there', async () => {
    const { bridge, ask } = setUp({ mainThread: true });
    const core = pageCore();
    const cancel = vi.spyOn(core, 'cancel');
    factory.mockReturnValueOnce(core);
    const call = ask(1, 'a', 'wait');
    await settle();
    bridge.end();
    await expect(call).rejects.toMatchObject({ name: 'AbortError' });
    expect(cancel).toHaveBeenCalled();
    expect(bridge.mode).toBe('main-thread');
    expect(await ask(2)).toEqual({ page: 2 });
  });
});

describe('a layer that joins late', () => {
  const late = { name: 'late', needs: [], make: () => ({}) };

  it('has a new worker started from all, which is asked all pending questions again', async () => {
    const { bridge, ask } = setUp();
    const first = ask(1, 'a');
    await settle();
    bridge.join([late]);
    const second = ask(2, 'b');
    await settle();
    const [old, now] = FakeWorker.all;
    expect(old?.terminated).toBe(true);
    expect(now?.calls.map(({ request }) => request)).toEqual([1, 2]);
    for (const call of now!.calls) call.answer(call.request);
    expect(await Promise.all([first, second])).toEqual([1, 2]);
    expect(FakeWorker.all).toHaveLength(2);
  });

  it('counts against nobody: a call may still be lost once afterwards', async () => {
    const { bridge, ask } = setUp();
    const answer = ask(1);
    await settle();
    bridge.join([late]);
    await settle();
    FakeWorker.last.fire('error');
    await settle();
    FakeWorker.last.calls[0]?.answer('third time');
    expect(await answer).toBe('third time');
    expect(FakeWorker.all).toHaveLength(3);
  });

  it('starts nothing by itself, nor again where it is there already', async () => {
    const { bridge, ask } = setUp();
    bridge.join([late]);
    expect(FakeWorker.all).toEqual([]);
    const answer = ask(1);
    await settle();
    bridge.join([late]);
    FakeWorker.last.calls[0]?.answer(1);
    await answer;
    bridge.join([{ ...late, name: 'later' }]);
    expect(bridge.mode).toBe('idle');
    expect(FakeWorker.all).toHaveLength(1);
  });
});

describe('a source', () => {
  const source = { kind: 'readings', readings: [1, 2, 3] };

  it('is sent once under a number, and by its number alone from then on', async () => {
    const { ask } = setUp();
    const answers = [10, 20, 30].map((drop, i) => ask({ source, drop }, `slot ${i}`));
    await settle();
    expect(FakeWorker.last.calls.map(({ request }) => request)).toEqual([
      { source: { number: 1, given: source }, drop: 10 },
      { source: { number: 1 }, drop: 20 },
      { source: { number: 1 }, drop: 30 },
    ]);
    const other = ask({ source: { ...source }, drop: 30 }, 'other');
    await settle();
    expect(FakeWorker.last.calls.at(-1)?.request).toEqual({ source: { number: 2, given: source }, drop: 30 });
    for (const call of FakeWorker.last.calls) call.answer(null);
    await Promise.all([...answers, other]);
  });

  it('is sent again where the core does not keep it any more', async () => {
    const { ask } = setUp();
    const first = ask({ source });
    await settle();
    FakeWorker.last.calls[0]?.answer(null);
    await first;
    const again = ask({ source });
    await settle();
    FakeWorker.last.calls.at(-1)?.end({ ok: false, unknown: 1 });
    await settle();
    expect(FakeWorker.last.calls.map(({ request }) => request)).toEqual([
      { source: { number: 1, given: source } },
      { source: { number: 1 } },
      { source: { number: 1, given: source } },
    ]);
    FakeWorker.last.calls.at(-1)?.answer('found');
    expect(await again).toBe('found');
  });

  it('is sent again to the next worker', async () => {
    const { bridge, ask } = setUp({ idleMs: 100 });
    for (const _ of [1, 2]) {
      const answer = ask({ source });
      await settle();
      expect(FakeWorker.last.calls.map(({ request }) => request)).toEqual([{ source: { number: 1, given: source } }]);
      FakeWorker.last.calls[0]?.answer(null);
      await answer;
      await pass(100);
      expect(bridge.mode).toBe('idle');
    }
    expect(FakeWorker.all).toHaveLength(2);
  });
});
