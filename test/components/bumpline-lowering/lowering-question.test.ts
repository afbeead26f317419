import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { Asked } from '../../../components/bumpline-lowering/lowering-question.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';

vi.mock('../../../core/worker/layers/base.generated.js', async () => {
  const base = await import('../../../core/worker/layers/base.js');
  return { base: { name: 'base', needs: [], make: () => base }, BUILD: 'built' };
});
for (const name of ['linkage', 'lowering'])
  vi.doMock(`../../../core/worker/layers/${name}.generated.js`, async () => {
    const made = await import(`../../../core/worker/layers/${name}.ts`);
    const { base } = await import('../../../core/worker/layers/base.generated.js');
    return { [name]: { name, needs: [base], make: () => made } };
  });

/** Whether files come over the network. */
let isConnected = false;
vi.doMock('../../../components/delivery/in-time.js', () => ({
  inTime: async <T>(coming: Promise<T>) => {
    await coming;
    if (!isConnected) throw new TypeError('no connection');
    return coming;
  },
}));

const wanted = Symbol.for('bumpline.main-thread');
beforeEach(() => Reflect.set(globalThis, wanted, true));
afterEach(() => Reflect.deleteProperty(globalThis, wanted));

it('the same request is answered once what failed to come has come', async () => {
  const { LOWERING } = await import('../../../components/bumpline-lowering/lowering-question.js');
  const request: Asked = { source: { kind: 'driveway', driveway: EXAMPLE_DRIVEWAY }, drop: 20, bumpTravel: 60 };
  const ask = async () => LOWERING(request, { slot: {}, isNewest: () => true });
  await expect(ask()).rejects.toThrow('no connection');
  await expect(ask()).rejects.toThrow('no connection');
  isConnected = true;
  const answer = await ask();
  expect(answer.bumpLeft).toBeCloseTo(40, 6);
  expect(await ask()).toBe(answer);
});
