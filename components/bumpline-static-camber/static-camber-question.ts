import type { AnySource } from '../../core/curve-sources/source.js';
import type { CarDocument } from '../../core/document/car.js';
import type { LinkedSet } from '../../core/document/linked-sets.js';
import { InputError, type Problem } from '../../core/quantity/problem.js';
import { points } from '../../core/worker/layers/points.generated.js';
import { staticCamber } from '../../core/worker/layers/staticCamber.generated.js';
import { inSet } from '../bumpline-geometry/in-set.js';
import type { CarModel } from '../car/car-model.js';
import { CarSources } from '../car/car-sources.js';
import { haveLayer, sourceLayers } from '../car/source-layers.js';
import { type AnswerWay, askCore, type WayOptions } from '../element/answer-controller.js';
import type { WaysOnSheet } from './static-camber-view.js';

/** The example is of hard points. */
haveLayer('corner', points);

export interface Asked {
  source: AnySource;
  /** The parts that are on already. */
  set: LinkedSet | undefined;
  drop: number;
  measuredAt: number;
  camberReadLower?: number;
  by: number;
  over: number;
}

/** What the element asks about a car by its links. */
export function askedOf(
  model: CarModel,
  car: CarDocument,
  set: LinkedSet | undefined,
  { by, over }: Pick<Asked, 'by' | 'over'>,
): Asked {
  const sources = CarSources.of(model);
  const fitted = set && sources.ofParts(car, set.setup);
  return {
    source: fitted ?? sources.ofCorner(car),
    set: fitted && set,
    drop: car.drop,
    measuredAt: car.measuredAt ?? 0,
    ...(car.camberReadLower !== undefined && { camberReadLower: car.camberReadLower }),
    by,
    over,
  };
}

const ask = askCore('staticCamber', [staticCamber], ({ source }: { source: AnySource }) => sourceLayers(source));

/** Bump steer is told over the same travel either way, so it is that travel which is at fault. */
const ofOver = (problem: Problem, over: number): Problem =>
  problem.path.startsWith('window.')
    ? { ...problem, path: 'over', value: over, limit: Math.abs(problem.limit ?? 0) }
    : problem;

async function answerOf({ set, ...request }: Asked, options: WayOptions): Promise<WaysOnSheet> {
  const { source, measuredAt, camberReadLower, over } = request;
  try {
    const answer = await ask({ ...request, window: [-over, over] }, options);
    return { ...answer, source, set, measuredAt, ...(camberReadLower !== undefined && { camberReadLower }) };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new InputError(error.problems.map((one) => (set ? inSet(one, set) : one)).map((one) => ofOver(one, over)));
  }
}

/** The ways side by side, worked out in the worker. */
export const WAYS: AnswerWay<WaysOnSheet, Asked> = answerOf;
