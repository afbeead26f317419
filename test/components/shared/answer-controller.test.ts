import type { ReactiveControllerHost } from 'lit';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { AnswerController } from '../../../components/element/answer-controller.js';
import type { LoweringAnswer, LoweringRequest } from '../../../core/answers/lowering.js';
import type { AnySource } from '../../../core/curve-sources/source.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { EXAMPLE_READINGS } from '../../../core/readings/example-readings.js';
import {
  type ArrivedCall,
  endFakeWorkers,
  FakeWorker,
  pageCore,
  settle,
  useFakeWorkers,
} from '../../core/worker/fake-worker.js';

type Asked = LoweringRequest<AnySource>;

vi.mock('../../../core/worker/layers/base.generated.js', async () => {
  const { baseOf } = await import('../../core/worker/fake-worker.js');
  return { base: baseOf(pageCore), BUILD: 'built' };
});
for (const name of ['given', 'fit', 'linkage', 'points', 'lowering'])
  vi.doMock(`../../../core/worker/layers/${name}.generated.js`, () => ({
    [name]: { name, needs: [], make: () => ({ name }) },
  }));

let key: symbol;
beforeEach(() => {
  useFakeWorkers();
  vi.resetModules();
});
afterEach(() => {
  endFakeWorkers();
  Reflect.deleteProperty(globalThis, key);
});

const READINGS: AnySource = { kind: 'readings', readings: EXAMPLE_READINGS };
const COEFFICIENTS: AnySource = { kind: 'coefficients', coefficients: [0, -0.02], domain: [-50, 50] };
const DRIVEWAY: AnySource = { kind: 'driveway', driveway: EXAMPLE_DRIVEWAY };
const POINTS: AnySource = { kind: 'corner', corner: EXAMPLE_CORNER };

const calls = (): ArrivedCall[] => FakeWorker.all.flatMap((worker) => worker.calls);
const drops = () => calls().map(({ request }) => (request as Asked).drop);
/** Answers the newest call with the drop it was asked for. */
const answer = async () => {
  calls()
    .at(-1)!
    .answer({ drop: drops().at(-1) });
  await settle();
};

/** An element's answers about lowering, what they were, and a way to ask and let everything happen that needs no worker. */
async function controlled() {
  const { AnswerController: Controller, askCore } = await import('../../../components/element/answer-controller.js');
  const { sourceLayers } = await import('../../../components/car/source-layers.js');
  const { lowering } = await import('../../../core/worker/layers/lowering.generated.js');
  const { BRIDGE } = await import('../../../core/worker/bridge.js');
  key = BRIDGE;
  const host = { addController: () => {}, requestUpdate: () => {} } as unknown as ReactiveControllerHost;
  const answered: number[] = [];
  const way = askCore<'lowering', Asked>('lowering', [lowering], ({ source }) => sourceLayers(source));
  const answers: AnswerController<LoweringAnswer, Asked> = new Controller(host, way, () =>
    answered.push(answers.answered!.drop),
  );
  const ask = async (request: Asked) => {
    answers.ask(request);
    await settle();
  };
  return { answers, answered, ask };
}

it('a request whose layers are there is asked in the task it was made in', async () => {
  const { answers, answered } = await controlled();
  answers.ask({ source: DRIVEWAY, drop: 30 });
  expect(FakeWorker.all).toHaveLength(1);
  await settle();
  expect(calls().map(({ question, request }) => [question, request])).toEqual([
    ['lowering', { source: { number: 1, given: DRIVEWAY }, drop: 30 }],
  ]);
  await answer();
  expect(answered).toEqual([30]);
});

it('copies of the code do not take each other’s turn', async () => {
  const one = await controlled();
  vi.resetModules();
  const two = await controlled();
  one.answers.ask({ source: DRIVEWAY, drop: 30 });
  two.answers.ask({ source: DRIVEWAY, drop: 40 });
  await settle();
  expect(drops()).toEqual([30, 40]);
  for (const call of calls()) call.answer({ drop: (call.request as Asked).drop });
  await settle();
  expect([one.answered, two.answered]).toEqual([[30], [40]]);
});

it('what solves a source joins the core where there is such a source, and not before', async () => {
  const { ask } = await controlled();
  const made = vi.spyOn(URL, 'createObjectURL');
  const script = () => (made.mock.lastCall![0] as Blob).text();
  await ask({ source: COEFFICIENTS, drop: 10 });
  expect([...(await script()).matchAll(/made\.(\w+)=/g)].map(([, name]) => name)).toEqual([
    'base',
    'lowering',
    'given',
  ]);
  await answer();
  await ask({ source: READINGS, drop: 10 });
  await answer();
  await ask({ source: POINTS, drop: 10 });
  await answer();
  expect([...(await script()).matchAll(/made\.(\w+)=/g)].map(([, name]) => name)).toEqual([
    'base',
    'lowering',
    'given',
    'fit',
    'points',
  ]);
});

it('a drag sends the source once', async () => {
  const { ask } = await controlled();
  for (const drop of [10, 11, 12]) {
    await ask({ source: READINGS, drop });
    await answer();
  }
  expect(calls().map(({ request }) => request)).toEqual([
    { source: { number: 1, given: READINGS }, drop: 10 },
    { source: { number: 1 }, drop: 11 },
    { source: { number: 1 }, drop: 12 },
  ]);
});

it('a newer request is not held up by an older one whose layer is on its way', async () => {
  const { answers, answered } = await controlled();
  answers.ask({ source: READINGS, drop: 20 });
  answers.ask({ source: DRIVEWAY, drop: 30 });
  await settle();
  expect(drops()).toEqual([30]);
  await answer();
  await answers.settle();
  expect(answered).toEqual([30]);
});

it('of many the latest wins, one being under way', async () => {
  const { answers, answered, ask } = await controlled();
  for (const n of [1, 2, 3, 4]) await ask({ source: { ...READINGS, degree: n } as AnySource, drop: n });
  expect(drops()).toEqual([1]);
  await answer();
  await answer();
  await answers.settle();
  expect(drops()).toEqual([1, 4]);
  expect(answered).toEqual([1, 4]);
});

it('an element that leaves the page is not answered, and asks again when it comes back', async () => {
  const { answers, answered, ask } = await controlled();
  await ask({ source: READINGS, drop: 20 });
  answers.hostDisconnected();
  answers.hostConnected();
  await ask({ source: READINGS, drop: 21 });
  calls()[0]!.answer({ drop: 20 });
  await settle();
  await answer();
  await answers.settle();
  expect(answered).toEqual([21]);
});

it('a calculation that broke is a fault, and is tried again when asked again', async () => {
  const { answers, answered, ask } = await controlled();
  await ask({ source: READINGS, drop: 20 });
  calls()[0]!.end({ ok: false, fault: 'broken' });
  await settle();
  expect(answers.fault).toBe('broken');
  await ask({ source: READINGS, drop: 20 });
  await answer();
  expect(answers.fault).toBeUndefined();
  expect(answered).toEqual([20]);
});
