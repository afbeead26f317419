import type { GeometryAnswer } from '../../core/answers/geometry.js';
import type { LinksOverTravel } from '../../core/answers/geometry-at.js';
import type { GeometryDoubt } from '../../core/answers/geometry-doubt.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import type { CarDocument } from '../../core/document/car.js';
import { type LinkedSet, linkedSets } from '../../core/document/linked-sets.js';
import { InputError } from '../../core/quantity/problem.js';
import { coreBridge } from '../../core/worker/bridge.js';
import { geometry } from '../../core/worker/layers/geometry.generated.js';
import { parts } from '../../core/worker/layers/parts.generated.js';
import { points } from '../../core/worker/layers/points.generated.js';
import type { CarModel } from '../car/car-model.js';
import { CarSources } from '../car/car-sources.js';
import { haveLayer, sourceLayers } from '../car/source-layers.js';
import type { AnswerWay } from '../element/answer-controller.js';
import type { WorkbenchAnswer } from './geometry-view.js';
import { inSet } from './in-set.js';
import { workbenchOf } from './workbench.js';

/** The example is of hard points, with parts on them. */
haveLayer('corner', points);
haveLayer('parts', parts);

export interface Asked {
  car: CarDocument;
  bare: AnySource;
  sets: readonly { set: LinkedSet; source: AnySource }[];
  shown: number;
  /** Whether its doubt is waited for: there is nothing to show meanwhile. */
  waitsForDoubt: boolean;
}

/** What the element asks about a car by its links. */
export function askedOf(model: CarModel, car: CarDocument, shown: number, waitsForDoubt: boolean): Asked {
  const sources = CarSources.of(model);
  return {
    car,
    bare: sources.ofCorner(car),
    sets: linkedSets(car).flatMap((set) => {
      const source = sources.ofParts(car, set.setup);
      return source ? [{ set, source }] : [];
    }),
    shown,
    waitsForDoubt,
  };
}

/** What sources came to, by their identity: whatever has not changed is not asked again. */
const curves = new WeakMap<AnySource, GeometryAnswer>();
const doubts = new WeakMap<AnySource, GeometryDoubt>();
/** Of one element: a place each for its bare links and its sets, so that a drag floods nothing. */
const slots = new WeakMap<object, Map<string, object>>();

function slotOf(owner: object, name: string): object {
  const own = slots.get(owner) ?? new Map<string, object>();
  slots.set(owner, own);
  const slot = own.get(name) ?? {};
  own.set(name, slot);
  return slot;
}

/** The core, with what a source needs of it. */
async function coreFor(source: AnySource) {
  const layers = await sourceLayers(source);
  const bridge = coreBridge();
  bridge.join([geometry, ...layers]);
  return bridge;
}

async function askCurves(source: AnySource, slot: object, signal: AbortSignal | undefined): Promise<void> {
  if (curves.has(source)) return;
  const bridge = await coreFor(source);
  curves.set(source, await bridge.ask('geometry', { source }, { slot, ...(signal && { signal }) }));
}

const sourcesOf = ({ bare, sets }: Asked): AnySource[] => [bare, ...sets.map(({ source }) => source)];

export const isDoubtKnown = (request: Asked): boolean => sourcesOf(request).every((source) => doubts.has(source));

/** Has the core tell the doubt of everything that is asked. What came to nothing is asked again another time. */
export async function fetchDoubts(request: Asked, owner: object): Promise<void> {
  await Promise.allSettled(
    sourcesOf(request).map(async (source, i) => {
      if (doubts.has(source)) return;
      const bridge = await coreFor(source);
      doubts.set(source, await bridge.ask('geometryDoubt', { source }, { slot: slotOf(owner, `doubt ${i}`) }));
    }),
  );
}

async function solved(request: Asked, owner: object, signal: AbortSignal | undefined): Promise<void> {
  const found = await Promise.allSettled(
    sourcesOf(request).map((source, i) => askCurves(source, slotOf(owner, `curves ${i}`), signal)),
  );
  const [bare, ...sets] = found;
  const failed = found.find((one) => one.status === 'rejected' && !(one.reason instanceof InputError));
  if (failed?.status === 'rejected') throw failed.reason;
  // What is wrong with the links is wrong with every set.
  if (bare!.status === 'rejected') throw bare!.reason;
  const problems = sets.flatMap((one, i) =>
    one.status === 'rejected'
      ? (one.reason as InputError).problems.map((problem) => inSet(problem, request.sets[i]!.set))
      : [],
  );
  if (problems.length > 0) throw new InputError(problems);
}

function workbench({ car, bare, sets, shown }: Asked): WorkbenchAnswer {
  const of = (source: AnySource): LinksOverTravel => ({ curves: curves.get(source)!, doubt: doubts.get(source) });
  return workbenchOf(
    car,
    of(bare),
    sets.map(({ set, source }) => ({ set, ...of(source) })),
    shown,
  );
}

/** At once where all of it was solved before. */
export const GEOMETRY: AnswerWay<WorkbenchAnswer, Asked> = (request, { slot, signal }) => {
  const owner = slot as object;
  if (sourcesOf(request).every((source) => curves.has(source)) && !request.waitsForDoubt) return workbench(request);
  return (async () => {
    await solved(request, owner, signal);
    if (request.waitsForDoubt) await fetchDoubts(request, owner);
    return workbench(request);
  })();
};
