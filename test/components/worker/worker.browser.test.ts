import { expect } from 'chai';
import { InputError } from '../../../core/quantity/problem.js';
import { type Bridge, type BridgeOptions, createBridge } from '../../../core/worker/create-bridge.js';
import { WorkerFault } from '../../../core/worker/errors.js';
import { JoinedLayers } from '../../../core/worker/layer.js';
import { fixture } from './fixture.generated.js';
import type { questions } from './fixture-core.js';

type Questions = typeof questions;

const RealWorker = globalThis.Worker;
const started: Worker[] = [];
const bridges: Bridge<Questions>[] = [];

function bridgeWith(options: Partial<BridgeOptions> = {}): Bridge<Questions> {
  const bridge = createBridge<Questions>({ layers: [fixture], ...options });
  bridges.push(bridge);
  return bridge;
}

const wait = (ms: number) => new Promise((resume) => setTimeout(resume, ms));

async function until(condition: () => boolean, ms = 4000): Promise<void> {
  for (const end = Date.now() + ms; !condition(); await wait(5))
    if (Date.now() > end) throw new Error(`Not within ${ms} ms: ${condition}`);
}

/** What a promise rejects with; where it is answered, an error that says so. */
async function errorOf(promise: Promise<unknown>): Promise<Error> {
  try {
    return new Error(`It was answered: ${JSON.stringify(await promise)}`);
  } catch (error) {
    return error as Error;
  }
}

const numbers = new Float64Array([0.25, 0.5]);
const sum = (bridge: Bridge<Questions>, slot = 'sum') => bridge.ask('sum', { numbers }, { slot });

/** Another source for the workers to come: what happens on pages that change or block it. */
function replaceWorkerSource(change: (source: string) => string): void {
  globalThis.Worker = class extends RealWorker {
    constructor(url: string | URL, options?: WorkerOptions) {
      const request = new XMLHttpRequest();
      request.open('GET', url, false);
      request.send();
      super(URL.createObjectURL(new Blob([change(request.responseText)])), options);
      started.push(this);
    }
  };
}

beforeEach(() => {
  started.length = 0;
  globalThis.Worker = class extends RealWorker {
    constructor(url: string | URL, options?: WorkerOptions) {
      super(url, options);
      started.push(this);
    }
  };
});

afterEach(() => {
  for (const bridge of bridges.splice(0)) bridge.end();
  for (const worker of started) worker.terminate();
  globalThis.Worker = RealWorker;
});

describe('the worker made from the source of the core function', () => {
  it('answers with typed arrays, in a worker', async () => {
    const bridge = bridgeWith();
    const answer = await sum(bridge);
    expect(answer.where).to.equal('worker');
    expect(answer.sum).to.equal(0.75);
    expect(answer.numbers).to.be.instanceOf(Float64Array);
    expect(answer.numbers).to.not.equal(numbers);
    expect(bridge.mode).to.equal('worker');
  });

  it('speaks the strict language there, as the page does', async () => {
    for (const mainThread of [false, true])
      expect(await bridgeWith({ mainThread }).ask('strict', {}, { slot: 'a' })).to.equal(true);
  });

  it('is one for all slots', async () => {
    const bridge = bridgeWith();
    const answers = await Promise.all(['a', 'b', 'c'].map((slot) => sum(bridge, slot)));
    expect(answers.map((answer) => answer.turn)).to.deep.equal([1, 2, 3]);
    expect(started).to.have.length(1);
  });

  it('leaves the page free while it computes', async () => {
    const bridge = bridgeWith();
    await sum(bridge);
    let turns = 0;
    const timer = setInterval(() => turns++, 10);
    expect(await bridge.ask('busyUntil', { until: Date.now() + 300 }, { slot: 'a' })).to.equal('worker');
    clearInterval(timer);
    // None while a page computes itself; some 30 where nothing else runs beside it.
    expect(turns).to.be.greaterThan(3);
  });

  it('works in a sandboxed frame, whose origin is nobody’s', async () => {
    const frame = document.createElement('iframe');
    frame.setAttribute('sandbox', 'allow-scripts');
    const layers = new JoinedLayers();
    layers.join([fixture]);
    const source = layers.script;
    frame.srcdoc = `<script>new Worker(URL.createObjectURL(new Blob([${JSON.stringify(source).replaceAll('<', '\\u003c')}])))
      .onmessage = (event) => parent.postMessage(event.data, '*')</script>`;
    const said = new Promise((resolve) =>
      addEventListener('message', (event) => event.source === frame.contentWindow && resolve(event.data)),
    );
    document.body.append(frame);
    expect(await said).to.equal('ready');
    frame.remove();
  });
});

for (const mainThread of [false, true])
  describe(`errors ${mainThread ? 'on the page' : 'out of a worker'}`, () => {
    it('an InputError arrives as one, with all its problems', async () => {
      const error = await errorOf(bridgeWith({ mainThread }).ask('refuse', { drop: 400 }, { slot: 'a' }));
      expect(error).to.be.instanceOf(InputError);
      expect((error as InputError).problems).to.deep.equal([
        { code: 'out-of-range', path: 'drop', value: 400, limit: 150 },
        { code: 'missing', path: 'lowerArm.ball', value: undefined },
        { code: 'ambiguous', path: 'camber', value: '1.30', choices: [1.3, 1.5] },
      ]);
      expect((error as InputError).code).to.equal('out-of-range');
      expect((error as InputError).field).to.equal('drop');
    });

    it('any other error is a WorkerFault that says what was thrown, and the next question is answered', async () => {
      const bridge = bridgeWith({ mainThread });
      const error = await errorOf(bridge.ask('fail', {}, { slot: 'a' }));
      expect(error).to.be.instanceOf(WorkerFault);
      expect(error.message).to.equal('TypeError: no such link');
      expect((await sum(bridge)).sum).to.equal(0.75);
      expect(started.length).to.equal(mainThread ? 0 : 1);
    });

    it('an answer with methods is a WorkerFault', async () => {
      expect(await errorOf(bridgeWith({ mainThread }).ask('methods', {}, { slot: 'a' }))).to.be.instanceOf(WorkerFault);
    });

    it('a question nobody knows is a WorkerFault that names it', async () => {
      const ask = bridgeWith({ mainThread }).ask as (...rest: unknown[]) => Promise<unknown>;
      const error = await errorOf(ask('lowring', {}, { slot: 'a' }));
      expect(error).to.be.instanceOf(WorkerFault);
      expect(error.message).to.contain('"lowring"');
    });
  });

for (const mainThread of [false, true])
  describe(`sliced work ${mainThread ? 'on the page' : 'in a worker'}`, () => {
    it('gives its answer', async () => {
      const answer = await bridgeWith({ mainThread }).ask('steps', { steps: 30 }, { slot: 'a' });
      expect(answer).to.deep.equal({ done: 30, where: mainThread ? 'page' : 'worker' });
    });

    it('does not hold up other slots', async () => {
      const bridge = bridgeWith({ mainThread });
      const order: string[] = [];
      await Promise.all([
        bridge.ask('steps', { steps: 150 }, { slot: 'a' }).then(() => order.push('long')),
        sum(bridge, 'b').then(() => order.push('short')),
      ]);
      expect(order).to.deep.equal(['short', 'long']);
    });

    for (const way of ['a newer question of its slot', 'its signal'])
      it(`is stopped half way by ${way}`, async () => {
        const bridge = bridgeWith({ mainThread });
        await sum(bridge);
        const name = `steps ${Math.random()}`;
        const channel = new BroadcastChannel(name);
        const stoppedAfter = new Promise<number>((resolve) => {
          channel.onmessage = (event) => resolve(event.data);
        });
        const abort = new AbortController();
        const request = { steps: 2000, channel: name };
        const long = errorOf(bridge.ask('steps', request, { slot: 'a', signal: abort.signal }));
        await wait(40);
        let next: Promise<unknown> | undefined;
        if (way === 'its signal') abort.abort();
        else next = sum(bridge, 'a');
        expect((await long).name).to.equal('AbortError');
        expect(await stoppedAfter).to.be.within(1, 1000);
        channel.close();
        if (next) expect(await next).to.include({ sum: 0.75 });
      });
  });

describe('sliced work on the page', () => {
  it('lets the page draw and listen in between', async () => {
    const bridge = bridgeWith({ mainThread: true });
    let turns = 0;
    const channel = new MessageChannel();
    channel.port1.onmessage = () => {
      turns++;
      channel.port2.postMessage(0);
    };
    channel.port2.postMessage(0);
    await bridge.ask('steps', { steps: 300 }, { slot: 'a' });
    channel.port1.close();
    // 300 ms in slices of 8 ms are some 37 turns; one long task would be none.
    expect(turns).to.be.greaterThan(20);
  });

  it('has plain questions of several slots in tasks of their own', async () => {
    const bridge = bridgeWith({ mainThread: true });
    let between = 0;
    const channel = new MessageChannel();
    channel.port1.onmessage = () => {
      between++;
      channel.port2.postMessage(0);
    };
    channel.port2.postMessage(0);
    await Promise.all(['a', 'b', 'c', 'd'].map((slot) => bridge.ask('busyUntil', { until: Date.now() + 5 }, { slot })));
    channel.port1.close();
    expect(between).to.be.greaterThan(1);
  });
});

describe('of many questions in one slot', () => {
  it('the first and the latest are answered, those between reject with AbortError', async () => {
    const bridge = bridgeWith();
    const asked = [1, 2, 3, 4, 5].map((n) => bridge.ask('sum', { numbers: new Float64Array([n]) }, { slot: 'a' }));
    const results = await Promise.allSettled(asked);
    expect(results.map((r) => (r.status === 'fulfilled' ? r.value.sum : r.reason.name))).to.deep.equal([
      1,
      'AbortError',
      'AbortError',
      'AbortError',
      5,
    ]);
    expect(results[4]).to.have.nested.property('value.turn', 2);
  });

  it('a plain one in flight whose signal is aborted rejects at once, long before the worker is through', async () => {
    const bridge = bridgeWith();
    await sum(bridge);
    const abort = new AbortController();
    const end = Date.now() + 400;
    const asked = errorOf(bridge.ask('busyUntil', { until: end }, { slot: 'a', signal: abort.signal }));
    await wait(20);
    abort.abort();
    expect((await asked).name).to.equal('AbortError');
    expect(Date.now()).to.be.lessThan(end - 100);
    expect((await sum(bridge, 'a')).turn).to.equal(2);
    expect(started).to.have.length(1);
  });
});

describe('a worker that cannot be had', () => {
  it('because the constructor throws leaves the page to answer', async () => {
    globalThis.Worker = class {
      constructor() {
        throw new TypeError('This document requires a trusted address.');
      }
    } as unknown as typeof Worker;
    const bridge = bridgeWith();
    expect((await sum(bridge)).where).to.equal('page');
    expect(bridge.mode).to.equal('main-thread');
  });

  it('because its script is refused (error event) leaves the page to answer, well before the time limit', async () => {
    globalThis.Worker = class extends RealWorker {
      constructor() {
        super('/no-such-script.js');
      }
    };
    const start = performance.now();
    const bridge = bridgeWith({ readyMs: 10_000 });
    expect((await sum(bridge)).where).to.equal('page');
    expect(performance.now() - start).to.be.lessThan(5000);
    expect(bridge.mode).to.equal('main-thread');
  });

  it('because a content security policy blocks it leaves the page of that policy to answer', async () => {
    const frame = document.createElement('iframe');
    const hold = new URL('/test/components/worker/fixture-frame.ts', location.origin).href;
    frame.srcdoc = `<meta http-equiv="Content-Security-Policy" content="worker-src 'none'"><script type="module" src="${hold}"></script>`;
    const said = new Promise<unknown>((resolve) =>
      addEventListener('message', (event) => event.source === frame.contentWindow && resolve(event.data)),
    );
    document.body.append(frame);
    expect(await said).to.deep.equal({ where: 'page', mode: 'main-thread' });
    frame.remove();
  });

  it('because Trusted Types forbid the address leaves the page to answer, and is had where they allow the policy', async () => {
    const hold = new URL('/test/components/worker/fixture-frame.ts', location.origin).href;
    const modes: Record<string, unknown> = {};
    for (const allowed of ["'none'", 'bumpline']) {
      const frame = document.createElement('iframe');
      const policy = `require-trusted-types-for 'script'; trusted-types ${allowed}`;
      frame.srcdoc = `<meta http-equiv="Content-Security-Policy" content="${policy}"><script type="module" src="${hold}"></script>`;
      const said = new Promise<unknown>((resolve) =>
        addEventListener('message', (event) => event.source === frame.contentWindow && resolve(event.data)),
      );
      document.body.append(frame);
      modes[allowed] = await said;
      frame.remove();
    }
    expect(modes).to.deep.equal({
      "'none'": { where: 'page', mode: 'main-thread' },
      bumpline: { where: 'worker', mode: 'worker' },
    });
  });

  it('because its source was broken by a tool (it throws before ready) leaves the page to answer', async () => {
    replaceWorkerSource((source) => `counter.hit++;${source}`);
    const bridge = bridgeWith({ readyMs: 10_000 });
    expect((await sum(bridge)).where).to.equal('page');
  });

  it('because it never says ready leaves the page to answer after the time limit, all slots of it', async () => {
    replaceWorkerSource(() => '');
    const bridge = bridgeWith({ readyMs: 200 });
    const start = performance.now();
    const answers = await Promise.all([sum(bridge, 'a'), sum(bridge, 'b')]);
    expect(performance.now() - start).to.be.greaterThan(180);
    expect(answers.map((answer) => answer.where)).to.deep.equal(['page', 'page']);
    expect((await sum(bridge)).where).to.equal('page');
    expect(started).to.have.length(1);
  });

  it('in time is waited for: a slow start still ends in the worker', async () => {
    replaceWorkerSource((source) => `const t = Date.now(); while (Date.now() < t + 300);${source}`);
    const bridge = bridgeWith();
    const answer = sum(bridge);
    await wait(50);
    expect(bridge.mode).to.equal('starting');
    expect((await answer).where).to.equal('worker');
  });

  it('because the page forbids it (main-thread mode) is not even tried', async () => {
    const flag = Symbol.for('bumpline.main-thread');
    Reflect.set(globalThis, flag, true);
    try {
      const bridge = bridgeWith();
      expect((await sum(bridge)).where).to.equal('page');
      expect(bridge.mode).to.equal('main-thread');
    } finally {
      Reflect.deleteProperty(globalThis, flag);
    }
    expect(started).to.have.length(0);
  });
});

describe('a worker killed in mid-call', () => {
  it('by the browser is replaced, and the call answered by the next', async () => {
    const bridge = bridgeWith({ stallMs: 300 });
    await sum(bridge);
    const answer = bridge.ask('busyUntil', { until: Date.now() + 200 }, { slot: 'a' });
    await wait(30);
    started[0]?.terminate();
    expect(await answer).to.equal('worker');
    expect(started).to.have.length(2);
    expect((await sum(bridge)).turn).to.equal(1);
  });

  it('by itself is replaced, and the call answered by the next', async () => {
    const bridge = bridgeWith({ stallMs: 300 });
    await sum(bridge);
    const answer = bridge.ask('quitBefore', { until: Date.now() + 200 }, { slot: 'a' });
    expect(await answer).to.equal('worker');
    expect(started).to.have.length(2);
    expect((await sum(bridge)).turn).to.equal(1);
  });

  it('between two calls, unnoticed, is replaced when the second finds nobody there', async () => {
    const bridge = bridgeWith({ stallMs: 300 });
    expect(await bridge.ask('quit', {}, { slot: 'a' })).to.equal('worker');
    expect((await sum(bridge)).turn).to.equal(1);
    expect(started).to.have.length(2);
  });

  it('by an error outside of any call is replaced at once, without a word to the page', async () => {
    const heard: unknown[] = [];
    const listen = (event: ErrorEvent) => heard.push(event.message);
    addEventListener('error', listen);
    const bridge = bridgeWith();
    const answer = bridge.ask('crashBefore', { until: Date.now() + 200 }, { slot: 'a' });
    const start = performance.now();
    // The second worker is asked before the time is up and fails too: the error's own words come out.
    const error = await errorOf(answer);
    expect(error).to.be.instanceOf(WorkerFault);
    expect(error.message).to.contain('out of thin air');
    expect(performance.now() - start).to.be.lessThan(3000);
    expect((await sum(bridge)).where).to.equal('worker');
    expect(started).to.have.length(3);
    removeEventListener('error', listen);
    expect(heard).to.deep.equal([]);
  });

  it('twice makes the call reject with WorkerFault; the other slots get their answers', async () => {
    const bridge = bridgeWith({ stallMs: 200 });
    await sum(bridge);
    const stuck = errorOf(bridge.ask('busyUntil', { until: Number.POSITIVE_INFINITY }, { slot: 'a' }));
    const other = sum(bridge, 'b');
    const error = await stuck;
    expect(error).to.be.instanceOf(WorkerFault);
    expect(error.message).to.contain('"busyUntil"');
    expect((await other).where).to.equal('worker');
    expect(started).to.have.length(3);
  });

  it('is not what a long sliced question is: it takes longer than the limit and is answered by the first worker', async () => {
    // A busy machine may hold a worker up for half a second.
    const bridge = bridgeWith({ stallMs: 1600 });
    expect(await bridge.ask('steps', { steps: 6000 }, { slot: 'a' })).to.deep.equal({ done: 6000, where: 'worker' });
    expect(started).to.have.length(1);
  });
});

describe('a worker with nothing to do', () => {
  it('is ended after a while and started again by the next question', async () => {
    const bridge = bridgeWith({ idleMs: 60 });
    expect((await sum(bridge)).turn).to.equal(1);
    expect((await sum(bridge)).turn).to.equal(2);
    await until(() => bridge.mode === 'idle');
    expect((await sum(bridge)).turn).to.equal(1);
    expect(started).to.have.length(2);
  });

  it('is not ended while a question runs longer than that', async () => {
    const bridge = bridgeWith({ idleMs: 60 });
    expect(await bridge.ask('busyUntil', { until: Date.now() + 250 }, { slot: 'a' })).to.equal('worker');
    expect(started).to.have.length(1);
  });
});
