import { asLinks } from './as-links.js';
import type { CarDocument } from './car.js';
import { EXAMPLE_SETUPS } from './example-setups.js';
import { hasLinks, type PredictNeed, predictNeeds } from './predict-needs.js';
import { readSetsOf } from './read-sets.js';
import type { Setup } from './setup.js';
import { withSettings } from './with-settings.js';

/** Bump over which a change is told unless somebody asks otherwise, mm: a kerb, or a hard corner. Common practice, no source. */
export const USUAL_PREDICT_OVER_MM = 40;

export type PredictSettings = NonNullable<CarDocument['predict']>;

export interface PredictInUse {
  /** The car to learn from: of one of which nothing was given, the example's readings on the example's links. */
  car: CarDocument;
  isExample: boolean;
  /** Nothing of it: enough to ask. */
  needs: readonly PredictNeed[];
}

/** The example's readings as it stands. */
const [EXAMPLE_READ] = EXAMPLE_SETUPS as readonly [Setup];

const known = new WeakMap<CarDocument, PredictInUse>();

/** What of a car a prediction can be made from. The same object for the same car. */
export function predictInUse(car: CarDocument): PredictInUse {
  const found = known.get(car) ?? inUse(car);
  known.set(car, found);
  return found;
}

function inUse(car: CarDocument): PredictInUse {
  const isNothing = !hasLinks(car) && !car.curve && readSetsOf(car).stock.length === 0;
  return isNothing
    ? { car: withExample(car), isExample: true, needs: [] }
    : { car, isExample: false, needs: predictNeeds(car) };
}

const NONE: readonly Setup[] = [];
const exampleBefore = new WeakMap<readonly Setup[], readonly Setup[]>();

/** Before the sets of parts that are there: which of them is fitted moves by one. The same sets for the same sets: what was solved of them stays known. */
function withExample(car: CarDocument): CarDocument {
  const { setups = NONE, fitted } = car;
  const all = exampleBefore.get(setups) ?? [EXAMPLE_READ, ...setups];
  exampleBefore.set(setups, all);
  return { ...car, setups: all, ...(fitted !== undefined && { fitted: fitted + 1 }) };
}

const unread = new WeakMap<Setup, readonly Setup[]>();

/** A car without the readings that were taken with a set of parts on: what is predicted of that is not made from them. */
export function withoutReadingsOf(car: CarDocument, setup: Setup): CarDocument {
  const { setups = NONE } = car;
  if (setup.readings.length === 0 || !setups.includes(setup)) return car;
  const before = unread.get(setup);
  const isSame = before?.length === setups.length && before.every((one, i) => one === setups[i] || setups[i] === setup);
  const others = isSame ? before : setups.map((one) => (one === setup ? { ...one, readings: [] } : one));
  unread.set(setup, others);
  return { ...car, setups: others };
}

/** Changes what is asked of a prediction. What is undefined is taken back. */
export const withPredict = (
  car: CarDocument,
  settings: { [K in keyof PredictSettings]?: PredictSettings[K] | undefined },
): CarDocument => withSettings(car, 'predict', settings);

/** Has every answer take the links as readings correct them, or as they were measured. */
export function withLinksFrom(car: CarDocument, from: 'measured' | 'learnt'): CarDocument {
  const { links: _, ...measured } = car;
  return from === 'measured' ? measured : { ...(car.by === 'readings' ? asLinks(car) : car), links: from };
}
