import { describe, expect, it } from 'vitest';
import { type Call, createSlots } from '../../../core/worker/slots.js';

function setUp() {
  const sent: Call[] = [];
  const cancelled: Call[] = [];
  const slots = createSlots(
    (call) => sent.push(call),
    (call) => cancelled.push(call),
  );
  const ask = (request: unknown, slot = 'a', signal?: AbortSignal) => {
    const promise = slots.ask('work', request, { slot, signal });
    promise.catch(() => {});
    return promise;
  };
  const finish = (index: number) => sent[index]?.finish({ ok: true, value: sent[index].request });
  return { slots, sent, cancelled, ask, finish };
}

const requests = (calls: Call[]) => calls.map((call) => call.request);

describe('slots', () => {
  it('send a first call at once and settle it with its outcome', async () => {
    const { ask, sent, finish } = setUp();
    const answer = ask(1);
    expect(requests(sent)).toEqual([1]);
    finish(0);
    expect(await answer).toEqual({ ok: true, value: 1 });
  });

  it('let one call wait, and send it when the one in flight has come down, which is answered too', async () => {
    const { ask, sent, finish } = setUp();
    const first = ask(1);
    const second = ask(2);
    expect(requests(sent)).toEqual([1]);
    finish(0);
    expect(requests(sent)).toEqual([1, 2]);
    finish(1);
    expect(await first).toEqual({ ok: true, value: 1 });
    expect(await second).toEqual({ ok: true, value: 2 });
  });

  it('put the latest call in the place of the one that waits, which is never sent and rejects with AbortError', async () => {
    const { ask, sent, finish } = setUp();
    ask(1);
    const second = ask(2);
    const third = ask(3);
    await expect(second).rejects.toMatchObject({ name: 'AbortError' });
    await expect(second).rejects.toBeInstanceOf(DOMException);
    finish(0);
    finish(1);
    expect(requests(sent)).toEqual([1, 3]);
    expect(await third).toEqual({ ok: true, value: 3 });
  });

  it('ask for the call in flight to be cancelled as soon as a newer one waits', () => {
    const { ask, cancelled, sent } = setUp();
    ask(1);
    expect(cancelled).toEqual([]);
    ask(2);
    expect(requests(cancelled)).toEqual([1]);
    expect(sent[0]?.superseded).toBe(true);
  });

  it('reject a call with AbortError whose generator was stopped, and go on with the one that waits', async () => {
    const { ask, sent } = setUp();
    const first = ask(1);
    ask(2);
    sent[0]?.finish({ ok: false, cancelled: true });
    await expect(first).rejects.toMatchObject({ name: 'AbortError' });
    expect(requests(sent)).toEqual([1, 2]);
  });

  it('do not hold each other up', () => {
    const { ask, sent } = setUp();
    ask(1, 'a');
    ask(2, 'b');
    ask(3, 'a');
    expect(requests(sent)).toEqual([1, 2]);
  });

  it('are free again after their last call', () => {
    const { ask, sent, finish } = setUp();
    ask(1);
    finish(0);
    ask(2);
    expect(requests(sent)).toEqual([1, 2]);
  });

  describe('and abort signals', () => {
    it('an aborted call in flight rejects at once, but keeps its place until the core lets go of it', async () => {
      const { ask, sent, cancelled, finish } = setUp();
      const abort = new AbortController();
      const first = ask(1, 'a', abort.signal);
      abort.abort();
      await expect(first).rejects.toMatchObject({ name: 'AbortError' });
      expect(requests(cancelled)).toEqual([1]);
      ask(2);
      expect(requests(sent)).toEqual([1]);
      finish(0);
      expect(requests(sent)).toEqual([1, 2]);
    });

    it('an aborted call that waits is never sent', async () => {
      const { ask, sent, finish } = setUp();
      const abort = new AbortController();
      ask(1);
      const second = ask(2, 'a', abort.signal);
      abort.abort();
      await expect(second).rejects.toMatchObject({ name: 'AbortError' });
      finish(0);
      expect(requests(sent)).toEqual([1]);
      ask(3);
      expect(requests(sent)).toEqual([1, 3]);
    });

    it('a call with a signal that is aborted already is not sent', async () => {
      const { ask, sent } = setUp();
      await expect(ask(1, 'a', AbortSignal.abort())).rejects.toMatchObject({ name: 'AbortError' });
      expect(sent).toEqual([]);
      ask(2);
      expect(requests(sent)).toEqual([2]);
    });

    it('no listener stays behind on a signal that outlives its calls', async () => {
      const { ask, finish, sent } = setUp();
      const { signal } = new AbortController();
      let listeners = 0;
      const add = signal.addEventListener.bind(signal);
      const remove = signal.removeEventListener.bind(signal);
      signal.addEventListener = (...rest: Parameters<typeof add>) => {
        listeners++;
        add(...rest);
      };
      signal.removeEventListener = (...rest: Parameters<typeof remove>) => {
        listeners--;
        remove(...rest);
      };
      const first = ask(1, 'a', signal);
      expect(listeners).toBe(1);
      finish(0);
      await first;
      ask(2);
      ask(3, 'a', signal);
      ask(4);
      expect(requests(sent)).toEqual([1, 2]);
      expect(listeners).toBe(0);
    });
  });

  it('reject all calls with AbortError when cleared, and take new ones', async () => {
    const { slots, ask, sent } = setUp();
    const first = ask(1);
    const second = ask(2);
    slots.clear();
    await expect(first).rejects.toMatchObject({ name: 'AbortError' });
    await expect(second).rejects.toMatchObject({ name: 'AbortError' });
    ask(3);
    expect(requests(sent)).toEqual([1, 3]);
  });
});
