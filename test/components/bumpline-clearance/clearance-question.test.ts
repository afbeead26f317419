import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { Asked } from '../../../components/bumpline-clearance/clearance-question.js';
import { clearanceRequestOf } from '../../../core/answers/fitment-request.js';
import { EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_READINGS } from '../../../core/readings/example-readings.js';

vi.mock('../../../core/worker/layers/base.generated.js', async () => {
  const base = await import('../../../core/worker/layers/base.js');
  return { base: { name: 'base', needs: [], make: () => base }, BUILD: 'built' };
});
for (const name of ['fit', 'linkage', 'clearance'])
  vi.doMock(`../../../core/worker/layers/${name}.generated.js`, async () => {
    const made = await import(`../../../core/worker/layers/${name}.ts`);
    const { base } = await import('../../../core/worker/layers/base.generated.js');
    return { [name]: { name, needs: [base], make: () => made } };
  });

const wanted = Symbol.for('bumpline.main-thread');
beforeEach(() => Reflect.set(globalThis, wanted, true));
afterEach(() => Reflect.deleteProperty(globalThis, wanted));

it('a dragged wheel is answered on a car without steering whose motion is not known yet, as it is at rest', async () => {
  const { STEERED, SWEPT } = await import('../../../components/bumpline-clearance/clearance-question.js');
  const asked = clearanceRequestOf(EMPTY_CAR, { kind: 'readings', readings: EXAMPLE_READINGS });
  const request: Asked = { ...asked, limits: { ...asked.limits, motionRatio: 0.95 } };
  expect([request.lock, request.sideways, request.measuredAt]).toEqual([undefined, undefined, undefined]);
  const options = { slot: {}, isNewest: () => true };
  const first = await SWEPT(request, options);
  const atRest = await STEERED(request, options);
  expect(first.places.map(({ verdict, worst }) => [verdict, worst])).toEqual(
    atRest.places.map(({ verdict, worst }) => [verdict, worst]),
  );
  // From now on in the frame of the input.
  expect(SWEPT({ ...request }, options)).not.toBeInstanceOf(Promise);
});
