import type { ReactiveControllerHost } from 'lit';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { AnswerController } from '../../../components/shared/answer-controller.js';
import type { LoweringRequest } from '../../../core/answers/lowering.js';
import type { AnySource } from '../../../core/answers/lowering-by-readings.js';
import type { Questions } from '../../../core/answers/questions.js';
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

type Asked = LoweringRequest<AnySource>;

vi.mock('../../../core/worker/core-function.generated.js', () => ({ coreFactory: pageCore }));
vi.mock('../../../core/worker/readings-function.generated.js', () => ({ coreFactory: pageCore }));

const keys = ['', '/readings'].map((name) => Symbol.for(`bumpline.worker/${VERSION}${name}`));
const onPage = () => keys.map((key) => Object.getOwnPropertySymbols(globalThis).includes(key));
const FITTED = { kind: 'fitted', curve: { kind: 'polynomial' }, readings: { degree: 3 } };

beforeEach(() => {
  useFakeWorkers();
  vi.resetModules();
});
afterEach(() => {
  endFakeWorkers();
  for (const key of keys) Reflect.deleteProperty(globalThis, key);
});

const byReadings = (drop: number, more: object = {}): Asked => ({
  source: { kind: 'readings', readings: EXAMPLE_READINGS, ...more },
  drop,
});
const byPoints = (drop: number, corner: unknown = EXAMPLE_CORNER): Asked => ({
  source: { kind: 'corner', corner },
  drop,
});
const byCoefficients = (drop: number): Asked => ({
  source: { kind: 'coefficients', coefficients: [0, -0.02], domain: [-50, 50] },
  drop,
});

/** Every call that arrived at a worker so far, of one question. */
const calls = (question: string): ArrivedCall[] =>
  FakeWorker.all.flatMap(({ calls }) => calls).filter((call) => call.question === question);
const requests = (question: string) => calls(question).map(({ request }) => request);
const drops = () => calls('lowering').map(({ request }) => (request as Asked).drop);
const endFit = async (call = calls('fitReadings').at(-1)!) => {
  call.answer(FITTED);
  await settle();
};
/** Answers the newest call with the drop it was asked for. */
const answer = async () => {
  calls('lowering')
    .at(-1)!
    .answer({ drop: drops().at(-1) });
  await settle();
};

/** An element's answers about lowering, what they were, and a way to ask and let everything happen that needs no worker. */
async function controlled() {
  // Fetched already, so that `settle` need not wait for them.
  await import('../../../core/document/check-corner.js');
  await import('../../../components/shared/fitted-source.js');
  const { AnswerController: Controller } = await import('../../../components/shared/answer-controller.js');
  const { ready } = await import('../../../components/shared/ready.js');
  const { sharedBridge } = await import('../../../core/worker/bridge.js');
  const host = { addController: () => {}, requestUpdate: () => {} } as unknown as ReactiveControllerHost;
  const answered: number[] = [];
  const way = { bridge: sharedBridge, question: 'lowering', ready: ready<Asked> } as const;
  const answers: AnswerController<Questions, 'lowering', Asked> = new Controller(host, way, () =>
    answered.push(answers.answered!.drop),
  );
  const ask = async (request: Asked) => {
    answers.ask(request);
    await settle();
  };
  return { answers, answered, ask };
}

it('a request that needs nothing more is asked in the task it was made in, and brings no core of readings', async () => {
  const { answers, answered } = await controlled();
  answers.ask(byCoefficients(30));
  expect(onPage()).toEqual([true, false]);
  await settle();
  expect(requests('lowering')).toEqual([byCoefficients(30)]);
  await answer();
  expect(answered).toEqual([30]);
});

it('hard points are checked first; what is wrong with them is told by the question about lowering', async () => {
  const { ask } = await controlled();
  await ask(byPoints(30));
  expect(requests('lowering')).toEqual([{ source: { kind: 'checked', corner: EXAMPLE_CORNER }, drop: 30 }]);
  await answer();
  const { toe: _, ...corner } = EXAMPLE_CORNER;
  await ask(byPoints(900, { ...corner, camber: 'steep' }));
  expect(requests('lowering').at(-1)).toMatchObject({
    source: {
      kind: 'refused',
      problems: [
        { code: 'not-a-number', path: 'camber', value: 'steep' },
        { code: 'missing', path: 'toe' },
      ],
    },
    drop: 900,
  });
  await answer();
  expect(onPage()).toEqual([true, false]);
});

it('readings are fitted by their own worker, and their curve takes their place', async () => {
  const { answers, answered, ask } = await controlled();
  const request = { ...byReadings(25, { degree: 3, zeroAt: 10 }), bumpTravel: 60, measuredAt: 5 };
  await ask(request);
  expect(requests('fitReadings')).toEqual([request.source]);
  expect(calls('lowering')).toEqual([]);
  await endFit();
  expect(requests('lowering')).toEqual([{ source: FITTED, drop: 25, bumpTravel: 60, measuredAt: 5 }]);
  await answer();
  expect(answered).toEqual([25]);
  expect(answers.answered).toBe(request);
  expect(FakeWorker.all).toHaveLength(2);
});

it('nothing is fitted again while only heights change, and all as soon as the readings do', async () => {
  const { ask } = await controlled();
  const fits = async (request: Asked) => {
    await ask(request);
    const before = calls('fitReadings').length;
    await endFit();
    await answer();
    return before;
  };
  expect(await fits(byReadings(20))).toBe(1);
  // What is in use of a set is a new list each time, of the same readings.
  expect(await fits(byReadings(21, { readings: [...EXAMPLE_READINGS] }))).toBe(1);
  expect(await fits(byReadings(22))).toBe(1);
  expect(await fits(byReadings(22, { degree: 2 }))).toBe(2);
  expect(await fits(byReadings(22, { degree: 2, zeroAt: 5 }))).toBe(3);
  const changed = EXAMPLE_READINGS.map((reading, i) => (i === 3 ? { ...reading, value: 0 } : reading));
  expect(await fits(byReadings(22, { readings: changed }))).toBe(4);
  expect(await fits(byReadings(23, { readings: changed }))).toBe(4);
});

it('what is wrong with readings is told by the question about lowering, together with the rest', async () => {
  const { ask } = await controlled();
  await ask(byReadings(900));
  const problems = [{ code: 'too-few', path: 'readings', value: 1 }];
  calls('fitReadings')[0]!.end({ ok: false, problems: problems as never });
  await settle();
  expect(requests('lowering')).toEqual([{ source: { kind: 'refused', problems }, drop: 900 }]);
  await answer();
});

it('a fit that broke is a fault, and is tried again when asked again', async () => {
  const { answers, answered, ask } = await controlled();
  await ask(byReadings(20));
  calls('fitReadings')[0]!.end({ ok: false, fault: 'broken' });
  await settle();
  expect(answers.fault).toBe('broken');
  await ask(byReadings(20));
  await endFit();
  await answer();
  expect(answers.fault).toBeUndefined();
  expect(answered).toEqual([20]);
});

it('settles when both steps of the latest request are done', async () => {
  const { answers, answered, ask } = await controlled();
  let isSettled = false;
  await ask(byReadings(20));
  void answers.settle().then(() => (isSettled = true));
  await endFit();
  await ask(byReadings(21));
  await answer();
  expect(isSettled).toBe(false);
  await answer();
  expect(isSettled).toBe(true);
  expect(answered).toEqual([20, 21]);
});

it('an older request whose curve comes late neither displaces a newer one that waits, nor its answer', async () => {
  const { answers, answered, ask } = await controlled();
  await ask(byCoefficients(10));
  await ask(byReadings(20));
  await ask(byCoefficients(30));
  await endFit();
  expect(drops()).toEqual([10]);
  await answer();
  await answer();
  await answers.settle();
  expect(drops()).toEqual([10, 30]);
  expect(answered).toEqual([10, 30]);
  expect(answers.fault).toBeUndefined();
});

it('of many by changing readings the latest wins, and one fit at a time is under way', async () => {
  const { answers, answered, ask } = await controlled();
  for (const n of [1, 2, 3, 4]) await ask(byReadings(n, { readings: EXAMPLE_READINGS.slice(n) }));
  expect(calls('fitReadings')).toHaveLength(1);
  await endFit();
  expect(calls('fitReadings')).toHaveLength(2);
  await endFit();
  await answer();
  await answers.settle();
  expect(answered).toEqual([4]);
});

it('an element that leaves the page asks no further, and answers again when it comes back', async () => {
  const { answers, answered, ask } = await controlled();
  await ask(byReadings(20));
  answers.hostDisconnected();
  answers.hostConnected();
  await ask(byReadings(21));
  await endFit(calls('fitReadings')[0]);
  expect(drops()).toEqual([]);
  await endFit();
  await answer();
  await answers.settle();
  expect(drops()).toEqual([21]);
  expect(answered).toEqual([21]);
});
