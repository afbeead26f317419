import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { asLinks } from '../../../core/document/as-links.js';
import type { CarDocument } from '../../../core/document/car.js';
import { EMPTY_CAR } from '../../../core/document/car.js';
import { addParts, addSetup, withSetupAt } from '../../../core/document/setup-edits.js';
import { EXAMPLE_READINGS } from '../../../core/readings/example-readings.js';
import type { MadeLayer } from '../../../core/worker/protocol.js';
import { endFakeWorkers } from '../../core/worker/fake-worker.js';

const asked: unknown[] = [];

/** The real core, on the page, which tells what it is asked. */
vi.mock('../../../core/worker/layers/base.generated.js', async () => {
  const base = await import('../../../core/worker/layers/base.js');
  const createCore = (layers: Record<string, MadeLayer>) => {
    const core = base.createCore(layers);
    return {
      ...core,
      answer: (...call: Parameters<typeof core.answer>) => {
        asked.push(call[2]);
        return core.answer(...call);
      },
    };
  };
  return { base: { name: 'base', needs: [], make: () => ({ ...base, createCore }) }, BUILD: 'built' };
});
for (const name of ['given', 'fit', 'linkage', 'points'])
  vi.doMock(`../../../core/worker/layers/${name}.generated.js`, async () => {
    const made = await import(`../../../core/worker/layers/${name}.ts`);
    return { [name]: { name, needs: [], make: () => made } };
  });

const wanted = Symbol.for('bumpline.main-thread');
beforeEach(() => Reflect.set(globalThis, wanted, true));
afterEach(() => {
  asked.length = 0;
  Reflect.deleteProperty(globalThis, wanted);
  endFakeWorkers();
});

async function curvesOf(car: CarDocument) {
  const { CarModel } = await import('../../../components/car/car-model.js');
  const { CarCurves } = await import('../../../components/car/car-curves.js');
  const model = new CarModel(car);
  return { model, curves: CarCurves.of(model), CarCurves };
}

const SET = { name: 'Standard', cornerName: 'Front left', quantity: 'camber', readings: EXAMPLE_READINGS } as const;

it('all elements that share a car share its curves', async () => {
  const { model, curves, CarCurves } = await curvesOf(EMPTY_CAR);
  expect(CarCurves.of(model)).toBe(curves);
  expect((await curvesOf(EMPTY_CAR)).curves).not.toBe(curves);
});

it('a source is the same object as long as the parts it is made of are, whatever else of the car changes', async () => {
  const { curves } = await curvesOf(EMPTY_CAR);
  const { sources } = curves;
  const driveway = sources.of(EMPTY_CAR);
  expect(driveway.kind).toBe('driveway');
  expect(sources.of({ ...EMPTY_CAR, drop: 12, lowered: 'dampers', limits: { shaftBump: 60 }, measuredAt: 5 })).toBe(
    driveway,
  );
  const cambered = { ...EMPTY_CAR, givenBy: 'user', given: { points: {}, camber: -1 } } as CarDocument;
  const own = sources.of(cambered);
  expect(own).not.toBe(driveway);
  // Undo brings the parts back, and with them the source.
  expect(sources.of({ ...EMPTY_CAR })).toBe(driveway);
  expect(sources.of({ ...cambered, drop: 40 })).toBe(own);
});

it('each set of readings is one source, until the set is another', async () => {
  const car = addSetup(addSetup(EMPTY_CAR, SET), { ...SET, name: 'Long arms', degree: 2 });
  const { curves } = await curvesOf(car);
  const { sources } = curves;
  expect(sources.of(car)).toBe(sources.ofSetup(car.setups![1]!));
  const renamed = withSetupAt(car, 0, (setup) => ({ ...setup, name: 'Other' }));
  expect(sources.of(renamed)).toBe(sources.of(car));
  expect(sources.of(withSetupAt(car, 1, (setup) => ({ ...setup, degree: 3 })))).not.toBe(sources.of(car));
});

it('the parts of a set are one source, whatever the set is called, until they or the corner are others', async () => {
  const car = addParts(EMPTY_CAR, 'Joint', [{ part: 'ballJointExtended', mm: 22 }]);
  const { sources } = (await curvesOf(car)).curves;
  const [joint] = car.setups!;
  const source = sources.ofParts(car, joint!)!;
  expect(source).toMatchObject({ kind: 'parts', of: sources.ofCorner(car), parts: joint!.parts });
  expect(sources.ofParts(car, { ...joint!, name: 'Other' })).toBe(source);
  expect(sources.ofParts(car, { ...joint!, alignment: 'as-fitted' })).not.toBe(source);
  expect(sources.ofParts(car, { ...joint!, parts: [...joint!.parts!] })).not.toBe(source);
  const curve = { kind: 'coefficients', coefficients: [0, -0.02], domain: [-50, 50] } as const;
  expect(sources.ofParts({ ...car, curve } as never, joint!)).toBeUndefined();
});

it('a curve is asked of the core once, however many ask for it and however often the height changes', async () => {
  const { curves } = await curvesOf(EMPTY_CAR);
  const source = curves.sources.of(EMPTY_CAR);
  const [{ curve: one }, { curve: two }] = await Promise.all([curves.angles(source), curves.angles(source)]);
  expect(one).toBe(two);
  expect((await curves.angles(source)).curve).toBe(one);
  const { curve: lowered } = await curves.angles(source, { measuredAt: 20 });
  expect(lowered.change(45, 20)).toBeCloseTo(one.change(25, 0), 9);
  expect(asked).toHaveLength(1);
});

it('is counted from stock height, by readings as by measurements, as the answer about lowering counts', async () => {
  const { lowering } = await import('../../../core/answers/from-source.js');
  const { curves } = await curvesOf(EMPTY_CAR);
  const zeroed = curves.sources.ofSetup({ ...SET, zeroAt: 10 });
  const source = curves.sources.of(EMPTY_CAR);
  for (const [of, measuredAt] of [
    [zeroed, 0],
    [zeroed, 15],
    [source, 15],
  ] as const) {
    const answer = lowering({ source: of, drop: 25, ...(measuredAt && { measuredAt }) });
    const { curve } = await curves.angles(of, measuredAt ? { measuredAt } : {});
    expect(curve.change(25, 0)).toBe(answer.change.value);
    expect(curve.data).toEqual(answer.curve);
  }
});

it('what is wrong with a source is told to all who ask, and asked again', async () => {
  const { curves } = await curvesOf(EMPTY_CAR);
  const bad = curves.sources.ofSetup({ ...SET, readings: EXAMPLE_READINGS.slice(0, 1) });
  const { InputError } = await import('../../../core/quantity/problem.js');
  for (const _ of [1, 2]) await expect(curves.angles(bad)).rejects.toBeInstanceOf(InputError);
  expect(asked).toHaveLength(2);
});

const TOE = {
  name: 'Toe',
  cornerName: 'Front left',
  quantity: 'toe',
  degree: 3,
  readings: [-20, -10, 0, 10, 20, 30].map((travel) => ({ travel, value: 0.1 - 0.01 * travel + 2e-6 * travel ** 3 })),
} as const;

it('what toe is made from is the same object as long as its parts are, beside what camber is made from', async () => {
  const { askedOf } = await import('../../../components/bumpline-toe/toe-question.js');
  const { model, curves } = await curvesOf(EMPTY_CAR);
  const { sources } = curves;
  const asked = (car: CarDocument) => askedOf(model, car, undefined, 40)?.source;
  const read = addSetup(EMPTY_CAR, TOE);
  expect(asked(read)).toBe(sources.ofSetup(read.setups![0]!));
  const links = asLinks(EMPTY_CAR);
  const points = asked(links)!;
  expect([points.kind, sources.of(EMPTY_CAR).kind]).toEqual(['corner', 'driveway']);
  expect(asked({ ...links, drop: 12 })).toBe(points);
  const curve = { kind: 'coefficients', coefficients: [0, -0.02], domain: [-50, 50] } as const;
  expect(asked({ ...EMPTY_CAR, curve } as never)).toBeUndefined();
});

it('one set of parts on two corners is one source on each, whichever was asked for last', async () => {
  const parts = addParts(EMPTY_CAR, 'Joint', [{ part: 'ballJointExtended', mm: 22 }]);
  const car = { ...parts, fitted: 0 };
  const { sources } = (await curvesOf(car)).curves;
  const links = asLinks(car);
  const [camber, toe] = [sources.of(car), sources.of(links)];
  expect([camber, toe]).toMatchObject([
    { kind: 'parts', of: { kind: 'driveway' } },
    { kind: 'parts', of: { kind: 'corner' } },
  ]);
  expect(sources.of(car)).toBe(camber);
  expect(sources.of(links)).toBe(toe);
});

it('readings of toe are refused as camber', async () => {
  const { curves } = await curvesOf(EMPTY_CAR);
  await expect(curves.angles(curves.sources.ofSetup(TOE))).rejects.toThrow('source.quantity');
});
