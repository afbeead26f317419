import { heldInTurn, loadOf, marksOf, rollPlace } from '../../core/answers/car-roll.js';
import type { CorneringAnswer, CorneringDoubt } from '../../core/answers/cornering-answer.js';
import type { CorneringRequest } from '../../core/answers/cornering-request.js';
import type { RollSource } from '../../core/answers/roll-source.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import type { CarDocument } from '../../core/document/car.js';
import type { LinkedSet } from '../../core/document/linked-sets.js';
import { sourceKindOf } from '../../core/document/setup-in-use.js';
import { photoRoll, rollWayOf } from '../../core/document/turn-roll.js';
import { InputError } from '../../core/quantity/problem.js';
import { coreBridge } from '../../core/worker/bridge.js';
import { cornering } from '../../core/worker/layers/cornering.generated.js';
import { points } from '../../core/worker/layers/points.generated.js';
import { inSet } from '../bumpline-geometry/in-set.js';
import type { CarModel } from '../car/car-model.js';
import { CarSources } from '../car/car-sources.js';
import { rolledIn } from '../car/rolled-question.js';
import { haveLayer, sourceLayers } from '../car/source-layers.js';
import type { AnswerWay } from '../element/answer-controller.js';
import type { TurnOnSheet } from './cornering-view.js';

/** The example is of hard points. */
haveLayer('corner', points);

type Request = CorneringRequest<AnySource>;

export interface Asked {
  car: CarDocument;
  request: Request;
  /** What the roll is worked out from, in place of the request’s. */
  by: RollSource | undefined;
  /** The parts that are on. */
  set: LinkedSet | undefined;
  /** Whether its doubt is waited for: there is nothing to show meanwhile. */
  waitsForDoubt: boolean;
}

/** Of a turn, what is asked of any of the car's set-ups alike. */
export function turnOf(car: CarDocument, roll: number): Omit<Request, 'source' | 'drop' | 'camber'> {
  const { measuredAt, camberReadLower, turn: { track } = {} } = car;
  return {
    roll,
    ...heldInTurn(car),
    // Of curves and readings; links tell it.
    ...(track !== undefined && { halfTrack: track / 2 }),
    ...(measuredAt !== undefined && { measuredAt }),
    ...(camberReadLower !== undefined && { camberReadLower }),
  };
}

/** What the element asks about a car by its links. */
export function askedOf(
  model: CarModel,
  car: CarDocument,
  set: LinkedSet | undefined,
  roll: number,
  waitsForDoubt: boolean,
): Asked {
  const sources = CarSources.of(model);
  const isRead = sourceKindOf(car) === 'readings';
  const fitted = isRead ? undefined : set && sources.ofParts(car, set.setup);
  const { camber } = car.turn ?? {};
  const way = rollWayOf(car);
  const photo = way === 'photo' ? photoRoll(car) : undefined;
  return {
    car,
    request: {
      source: fitted ?? (isRead ? sources.of(car) : sources.ofCorner(car)),
      drop: car.drop,
      ...turnOf(car, photo?.roll ?? roll),
      ...(photo?.uncertainty !== undefined && { rollUncertainty: photo.uncertainty }),
      ...(camber !== undefined && { camber }),
    },
    by: way === 'marks' ? { marks: marksOf(car) } : way === 'load' ? { load: loadOf(car, car.drop) } : undefined,
    set: fitted && set,
    waitsForDoubt,
  };
}

async function coreFor(source: AnySource) {
  const layers = await sourceLayers(source);
  const bridge = coreBridge();
  bridge.join([cornering, ...layers]);
  return bridge;
}

/** One turn of one set-up. @throws InputError of what is wrong with it */
export async function turnIn(request: Request, slot: object, signal?: AbortSignal): Promise<CorneringAnswer> {
  const bridge = await coreFor(request.source);
  return bridge.ask('cornering', request, { slot, ...(signal && { signal }) });
}

/** How far it is known. */
export async function doubtOf(request: Request, slot: object): Promise<CorneringDoubt> {
  const bridge = await coreFor(request.source);
  return bridge.ask('corneringDoubt', request, { slot });
}

/** Not below it in the place that is shown, m. */
export const leastRadius = (metres: number): number => Math.ceil(metres * 10 - 1e-9) / 10;

/** What is wrong with parts is told by the place of their set, what is asked of the turn by its own path. */
function told(error: unknown, { set, by, car }: Pick<Asked, 'set' | 'by' | 'car'>): unknown {
  const source = by
    ? 'load' in by
      ? 'load.lateral'
      : 'marks.outer'
    : rollWayOf(car) === 'photo'
      ? 'photo'
      : undefined;
  if (!(error instanceof InputError)) return error;
  return new InputError(
    error.problems.map((problem) => {
      const place = rollPlace(problem.path);
      if (place) return { ...problem, path: place };
      const own = /^(?:steer\.)?(roll|tyreRoll|camber|radius|wheelbase|halfTrack)$/.exec(problem.path)?.[1];
      // A roll that was not typed is mended where it comes from; what the problem is about stands beside it.
      if (own === 'roll' && source) return { ...problem, path: `turn.${source}`, other: problem.other ?? 'roll' };
      if (own === 'halfTrack') return { ...problem, path: 'turn.track' };
      // The least radius, as it is shown, is one that can be had.
      if (own === 'radius' && problem.limit !== undefined && problem.limit > Number(problem.value))
        return { ...problem, path: 'turn.radius', limit: leastRadius(problem.limit) };
      if (own) return { ...problem, path: `turn.${own}` };
      return set ? inSet(problem, set) : problem;
    }),
  );
}

export const TURN: AnswerWay<TurnOnSheet, Asked> = async (asked, { slot, signal }) => {
  const { by, set, waitsForDoubt } = asked;
  let { request } = asked;
  try {
    const rolled = by && (await rolledIn({ ...request, by }, slot as object, signal));
    const found = rolled ?? (await turnIn(request, slot as object, signal));
    if (rolled) request = { ...request, roll: rolled.suspensionRoll };
    if (rolled?.rollUncertainty !== undefined) request.rollUncertainty = rolled.rollUncertainty;
    const doubt = found.doubt ?? (waitsForDoubt ? await doubtOf(request, request) : undefined);
    const { drop, roll, camber } = request;
    return {
      ...found,
      drop,
      suspensionRoll: roll,
      camber,
      request,
      set,
      by,
      load: rolled?.load,
      ...(doubt && { doubt }),
    };
  } catch (error) {
    throw told(error, asked);
  }
};
