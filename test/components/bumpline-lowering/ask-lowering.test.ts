import type { ReactiveControllerHost } from 'lit';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { AnswerController } from '../../../components/shared/answer-controller.js';
import type { LoweringAnswer, LoweringRequest } from '../../../core/answers/lowering.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_READINGS } from '../../../core/readings/example-readings.js';
import { VERSION } from '../../../core/version.js';
import {
  type ArrivedCall,
  endFakeWorkers,
  FakeWorker,
  pageCore,
  settle,
  useFakeWorkers,
} from '../../core/worker/fake-worker.js';

vi.mock('../../../core/worker/lowering-function.generated.js', () => ({ coreFactory: pageCore }));
vi.mock('../../../core/worker/readings-function.generated.js', () => ({ coreFactory: pageCore }));

const keys = ['', '/readings'].map((name) => Symbol.for(`bumpline.worker/${VERSION}${name}`));
const onPage = () => keys.map((key) => Object.getOwnPropertySymbols(globalThis).includes(key));
const options = { slot: 'one' };
const SOLVED = { curve: { kind: 'polynomial' }, readings: { degree: 3 } };

beforeEach(() => {
  useFakeWorkers();
  vi.resetModules();
});
afterEach(() => {
  endFakeWorkers();
  for (const key of keys) Reflect.deleteProperty(globalThis, key);
});

const byReadings = (drop: number, more: object = {}): LoweringRequest => ({
  source: { kind: 'readings', readings: EXAMPLE_READINGS, ...more },
  drop,
});
const byPoints = (drop: number, corner: unknown = EXAMPLE_CORNER): LoweringRequest => ({
  source: { kind: 'corner', corner },
  drop,
});
const byCoefficients = (drop: number): LoweringRequest => ({
  source: { kind: 'coefficients', coefficients: [0, -0.02], domain: [-50, 50] },
  drop,
});

/** Every call that arrived at a worker so far, of one question. */
const calls = (question: string): ArrivedCall[] =>
  FakeWorker.all.flatMap(({ calls }) => calls).filter((call) => call.question === question);
const dropOf = ({ request }: ArrivedCall) => (request as LoweringRequest).drop;
/** Answers the newest call with the drop it was asked for. */
const answerLowering = (call = calls('lowering').at(-1)!) => call.answer({ drop: dropOf(call) });

async function asking() {
  // Fetched already, so that `settle` need not wait for them.
  await import('../../../core/document/check-corner.js');
  await import('../../../core/worker/readings-bridge.js');
  return (await import('../../../components/bumpline-lowering/ask-lowering.js')).askLowering();
}
/** What became of a promise. */
const fate = (promise: Promise<unknown>) =>
  promise.then(
    (value) => value,
    (error: Error) => error.name,
  );

describe('asking what lowering does', () => {
  it('needs no core that knows readings for hard points', async () => {
    const ask = await asking();
    const answer = ask(byPoints(30), options);
    await settle();
    expect(calls('lowering').map(({ request }) => request)).toEqual([
      { source: { kind: 'checked', corner: EXAMPLE_CORNER }, drop: 30 },
    ]);
    answerLowering();
    expect(await answer).toEqual({ drop: 30 });
    expect(onPage()).toEqual([true, false]);
    expect(FakeWorker.all).toHaveLength(1);
  });

  it('asks at once where there is nothing to prepare', async () => {
    const ask = await asking();
    const answer = ask(byCoefficients(30), options);
    expect(onPage()).toEqual([true, false]);
    await settle();
    expect(calls('lowering').map(({ request }) => request)).toEqual([byCoefficients(30)]);
    answerLowering();
    expect(await answer).toEqual({ drop: 30 });
  });

  it('has what is wrong with a corner told by the question about lowering', async () => {
    const ask = await asking();
    const { toe: _, ...corner } = EXAMPLE_CORNER;
    void fate(ask(byPoints(900, { ...corner, camber: 'steep' }), options));
    await settle();
    const { kind, problems } = (calls('lowering')[0]!.request as { source: { kind: string; problems: object[] } })
      .source;
    expect(kind).toBe('refused');
    expect(problems).toMatchObject([
      { code: 'not-a-number', path: 'camber', value: 'steep' },
      { code: 'missing', path: 'toe' },
    ]);
    answerLowering();
  });

  it('has readings made a curve, and takes the curve in their place', async () => {
    const ask = await asking();
    const answer = ask({ ...byReadings(25, { degree: 3, zeroAt: 10 }), bumpTravel: 60, measuredAt: 5 }, options);
    await settle();
    expect(calls('curveOfReadings').map(({ request }) => request)).toEqual([
      { kind: 'readings', readings: EXAMPLE_READINGS, degree: 3, zeroAt: 10 },
    ]);
    expect(calls('lowering')).toEqual([]);
    calls('curveOfReadings')[0]!.answer(SOLVED);
    await settle();
    expect(calls('lowering').map(({ request }) => request)).toEqual([
      { source: { kind: 'fitted', ...SOLVED }, drop: 25, bumpTravel: 60, measuredAt: 5 },
    ]);
    answerLowering();
    expect(await answer).toEqual({ drop: 25 });
  });

  it('asks for no curve while only heights change, and for another as soon as the readings do', async () => {
    const ask = await asking();
    const curves = async (request: LoweringRequest) => {
      const answer = ask(request, options);
      await settle();
      const before = calls('curveOfReadings').length;
      calls('curveOfReadings').at(-1)!.answer(SOLVED);
      await settle();
      answerLowering();
      await answer;
      return before;
    };
    expect(await curves(byReadings(20))).toBe(1);
    // What is in use of a set is a new list each time, of the same readings.
    expect(await curves(byReadings(21, { readings: [...EXAMPLE_READINGS] }))).toBe(1);
    expect(await curves(byReadings(22))).toBe(1);
    expect(await curves(byReadings(22, { degree: 2 }))).toBe(2);
    expect(await curves(byReadings(22, { degree: 2, zeroAt: 5 }))).toBe(3);
    expect(await curves(byReadings(22, { readings: EXAMPLE_READINGS.slice(1) }))).toBe(4);
    const changed = EXAMPLE_READINGS.slice(1).map((reading, i) => (i === 3 ? { ...reading, value: 0 } : reading));
    expect(await curves(byReadings(22, { readings: changed }))).toBe(5);
  });

  it('has what is wrong with readings told by the question about lowering', async () => {
    const ask = await asking();
    void fate(ask(byReadings(900), options));
    await settle();
    const problems = [{ code: 'too-few', path: 'readings', value: 1 }];
    calls('curveOfReadings')[0]!.end({ ok: false, problems: problems as never });
    await settle();
    expect(calls('lowering').map(({ request }) => request)).toEqual([
      { source: { kind: 'refused', problems }, drop: 900 },
    ]);
    answerLowering();
  });

  it('fails where the curve could not be computed, and tries again when asked again', async () => {
    const ask = await asking();
    const first = fate(ask(byReadings(20), options));
    await settle();
    calls('curveOfReadings')[0]!.end({ ok: false, fault: 'broken' });
    expect(await first).toBe('WorkerFault');
    const second = ask(byReadings(20), options);
    await settle();
    calls('curveOfReadings')[1]!.answer(SOLVED);
    await settle();
    answerLowering();
    expect(await second).toEqual({ drop: 20 });
  });

  it('an older call whose curve comes late does not displace a newer one that waits its turn', async () => {
    const ask = await asking();
    const first = ask(byPoints(10), options);
    const second = fate(ask(byReadings(20), options));
    await settle();
    const third = ask(byPoints(30), options);
    calls('curveOfReadings')[0]!.answer(SOLVED);
    expect(await second).toBe('AbortError');
    await settle();
    expect(calls('lowering').map(dropOf)).toEqual([10]);
    answerLowering();
    expect(await first).toEqual({ drop: 10 });
    await settle();
    answerLowering();
    expect(await third).toEqual({ drop: 30 });
  });

  it('of many calls by changing readings the latest wins, and one curve at a time is asked for', async () => {
    const ask = await asking();
    const ends = [1, 2, 3, 4].map((n) => fate(ask(byReadings(n, { readings: EXAMPLE_READINGS.slice(n) }), options)));
    for (const expected of [1, 2]) {
      await settle();
      expect(calls('curveOfReadings')).toHaveLength(expected);
      calls('curveOfReadings').at(-1)!.answer(SOLVED);
      await settle();
      answerLowering();
    }
    expect(await Promise.all(ends)).toEqual([{ drop: 1 }, 'AbortError', 'AbortError', { drop: 4 }]);
  });

  it.each(['curveOfReadings', 'lowering'])('is dropped by abort while “%s” is asked', async (question) => {
    const ask = await asking();
    const abort = new AbortController();
    const answer = fate(ask(byReadings(20), { ...options, signal: abort.signal }));
    await settle();
    if (question === 'lowering') {
      calls('curveOfReadings')[0]!.answer(SOLVED);
      await settle();
    }
    abort.abort();
    expect(await answer).toBe('AbortError');
    for (const call of calls('curveOfReadings')) call.answer(SOLVED);
    await settle();
    expect(calls('lowering')).toHaveLength(question === 'lowering' ? 1 : 0);
    for (const call of calls('lowering')) answerLowering(call);
    await settle();
  });
});

describe('a controller that asks so', () => {
  async function controlled() {
    const host = { addController: () => {}, requestUpdate: () => {} } as unknown as ReactiveControllerHost;
    const drops: number[] = [];
    const answers: AnswerController<LoweringRequest, LoweringAnswer> = new AnswerController(host, await asking(), () =>
      drops.push(answers.answer!.drop),
    );
    return { answers, drops };
  }

  it('settles when both steps of the latest request are done', async () => {
    const { answers, drops } = await controlled();
    let isSettled = false;
    answers.ask(byReadings(20));
    void answers.settle().then(() => (isSettled = true));
    await settle();
    calls('curveOfReadings')[0]!.answer(SOLVED);
    await settle();
    answers.ask(byReadings(21));
    answerLowering();
    await settle();
    expect(isSettled).toBe(false);
    answerLowering();
    await settle();
    expect(isSettled).toBe(true);
    expect(drops).toEqual([20, 21]);
    expect(answers.answered).toEqual(byReadings(21));
  });

  it('keeps the answer to a newer request when an older one’s curve comes after it', async () => {
    const { answers, drops } = await controlled();
    answers.ask(byReadings(20));
    await settle();
    answers.ask(byPoints(30));
    await settle();
    answerLowering();
    await settle();
    calls('curveOfReadings')[0]!.answer(SOLVED);
    await settle();
    await answers.settle();
    expect(drops).toEqual([30]);
    expect(answers.fault).toBeUndefined();
    expect(calls('lowering')).toHaveLength(1);
  });

  it('drops both steps when its element leaves the page, and answers again when it comes back', async () => {
    const { answers, drops } = await controlled();
    answers.ask(byReadings(20));
    await settle();
    answers.hostDisconnected();
    answers.hostConnected();
    answers.ask(byReadings(21));
    await settle();
    calls('curveOfReadings')[0]!.answer(SOLVED);
    await settle();
    calls('curveOfReadings')[1]!.answer(SOLVED);
    await settle();
    answerLowering();
    await answers.settle();
    expect(drops).toEqual([21]);
    expect(calls('lowering').map(dropOf)).toEqual([21]);
  });
});
