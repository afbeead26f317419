import { expect, it, vi } from 'vitest';
import { JoinedLayers } from '../../../core/worker/layer.js';
import { onPage } from '../../../core/worker/on-page.js';
import { baseOf, coreOf } from './fake-worker.js';

function joined(core: () => unknown): JoinedLayers {
  const layers = new JoinedLayers();
  layers.join([baseOf(core)]);
  return layers;
}

const kept: unknown[] = [];
const table = { rows: [1, 2] };
const core = coreOf({
  keep: (request: object) => {
    kept.push(request);
    return table;
  },
  *endless(_: null): Generator<void, number> {
    for (;;) yield;
  },
});

it('neither request nor answer is the same object on both sides', async () => {
  const request = { drop: 30 };
  const outcome = await onPage(joined(() => core)).answer(1, 'keep', request);
  expect(kept.at(-1)).toEqual(request);
  expect(kept.at(-1)).not.toBe(request);
  expect(outcome).toEqual({ ok: true, value: table });
  expect((outcome as { value: unknown }).value).not.toBe(table);
});

it('the core is made by the first question, once', async () => {
  const factory = vi.fn(() => core);
  const page = onPage(joined(factory));
  expect(factory).not.toHaveBeenCalled();
  await page.answer(1, 'keep', {});
  await page.answer(2, 'keep', {});
  expect(factory).toHaveBeenCalledTimes(1);
});

it('the first of several questions starts in the task it was asked in, the others in one each', async () => {
  const page = onPage(joined(() => core));
  kept.length = 0;
  const answers = [1, 2, 3].map((id) => page.answer(id, 'keep', { id }));
  for (let i = 0; i < 20; i++) await Promise.resolve();
  expect(kept).toEqual([{ id: 1 }]);
  await answers[1];
  expect(kept).toHaveLength(2);
  await answers[2];
  expect(kept).toHaveLength(3);
});

it('a generator can be stopped while it runs, and before it has had its turn', async () => {
  const page = onPage(joined(() => core));
  const running = page.answer(1, 'endless', null);
  const waiting = page.answer(2, 'endless', null);
  page.cancel(2);
  expect(await waiting).toEqual({ ok: false, cancelled: true });
  page.cancel(1);
  expect(await running).toEqual({ ok: false, cancelled: true });
});

it('a generator that runs is stopped at once, however many questions wait for their turn', async () => {
  const page = onPage(joined(() => core));
  const order: string[] = [];
  const running = page.answer(1, 'endless', null).then(() => order.push('stopped'));
  await new Promise((resume) => setTimeout(resume, 30));
  const others = Array.from({ length: 20 }, (_, i) => page.answer(2 + i, 'keep', {}).then(() => order.push('kept')));
  page.cancel(1);
  await Promise.all([running, ...others]);
  expect(order.indexOf('stopped')).toBeLessThan(10);
});
