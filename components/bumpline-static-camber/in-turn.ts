import { heldInTurn, loadOf, marksOf, rollPlace } from '../../core/answers/car-roll.js';
import type { CorneringAnswer } from '../../core/answers/cornering-answer.js';
import type { CorneringRequest } from '../../core/answers/cornering-request.js';
import type { WayAnswer } from '../../core/answers/static-camber.js';
import { USUAL_ROLL } from '../../core/answers/usual-roll.js';
import type { AnySource, LearntSource, PartsSource } from '../../core/curve-sources/source.js';
import type { CarDocument } from '../../core/document/car.js';
import { photoRoll, rollWayOf } from '../../core/document/turn-roll.js';
import type { PartData } from '../../core/linkage/parts/part-kinds.js';
import { InputError, type Problem } from '../../core/quantity/problem.js';
import { coreBridge } from '../../core/worker/bridge.js';
import { cornering } from '../../core/worker/layers/cornering.generated.js';
import { stopLeft } from '../bumpline-cornering/stop-left.js';
import { rolledIn } from '../car/rolled-question.js';
import { sourceLayers } from '../car/source-layers.js';
import { AnswerController, type AnswerWay } from '../element/answer-controller.js';
import type { Turn, TurnFigures } from './costs.js';
import type { StaticCamberView, WaysOnSheet } from './static-camber-view.js';

/** Its roll, or what that is worked out from. */
export type TurnAsked = Pick<CorneringRequest, 'tyreRoll' | 'steer'> & {
  roll: number | undefined;
  by?: 'marks' | 'load';
};

/** The turn of the car: its roll, what the tyres add to it, and its radius where both that and the wheelbase are given. */
export function turnOf(car: CarDocument): TurnAsked {
  const { roll = USUAL_ROLL } = car.turn ?? {};
  const way = rollWayOf(car);
  return {
    ...(way === 'marks' || way === 'load'
      ? { roll: undefined, by: way }
      : { roll: way === 'photo' ? photoRoll(car).roll : roll }),
    ...heldInTurn(car),
  };
}

/** A pause in a drag, ms. */
const AFTER_MS = 160;

interface Request {
  car: CarDocument;
  answer: WaysOnSheet;
  turn: TurnAsked;
}

/** The source with one more part on; undefined of a curve, which has no links. */
function withPart(source: AnySource, part: PartData): PartsSource | LearntSource | undefined {
  if (source.kind === 'learnt') return { ...source, parts: [...(source.parts ?? []), part] };
  if (source.kind === 'parts') return { ...source, parts: [...source.parts, part] };
  if (source.kind !== 'corner' && source.kind !== 'driveway') return undefined;
  return { kind: 'parts', of: source, parts: [part] };
}

/** A question about one turn; without a way, of the car as it is. */
interface OneTurn {
  way?: WayAnswer['way'];
  request: Omit<CorneringRequest<AnySource>, 'roll'> & { roll: number | undefined };
}

/** Toe is set again at the drop with every way, as for the other figures; of a driveway nobody knows it. */
function requestsOf({ answer, turn: { by: _, ...turn } }: Request): OneTurn[] {
  const { source, drop, measuredAt, camberReadLower, toeSet, asItIs, ways } = answer;
  const bare = {
    source,
    drop,
    measuredAt,
    ...(camberReadLower !== undefined && { camberReadLower }),
    ...turn,
    ...(asItIs.bumpSteer !== undefined && { toe: toeSet }),
  };
  return [
    { request: bare },
    ...ways.flatMap(({ way, part, amount, isReached, ends }): OneTurn[] => {
      const put = part && withPart(source, part);
      if (put) return [{ way, request: { ...bare, source: put } }];
      return way === 'lowering'
        ? [{ way, request: { ...bare, drop: drop + (isReached ? amount : ends!.amount) } }]
        : [];
    }),
  ];
}

const inTurn: AnswerWay<TurnFigures, Request> = async (request, { slot, signal, isNewest }) => {
  const [layers, ofParts] = await Promise.all([sourceLayers(request.answer.source), sourceLayers({ kind: 'parts' })]);
  if (!isNewest()) throw new DOMException('cornering', 'AbortError');
  const bridge = coreBridge();
  bridge.join([cornering, ...layers, ...ofParts]);
  const asked = requestsOf(request);
  const { car, turn } = request;
  const one = (
    { request: { roll, ...others } }: OneTurn,
    i: number,
  ): Promise<CorneringAnswer & { suspensionRoll?: number }> => {
    const own = slotOf(slot as object, i);
    if (roll !== undefined)
      return bridge.ask('cornering', { ...others, roll }, { slot: own, ...(signal && { signal }) });
    const by = turn.by === 'marks' ? { marks: marksOf(car) } : { load: loadOf(car, others.drop) };
    return rolledIn({ ...others, by }, own, signal);
  };
  const found = await Promise.allSettled(asked.map(one));
  const [asItIs, ...ways] = found;
  if (asItIs!.status === 'rejected') throw inCar(asItIs!.reason);
  const failed = ways.find((one) => one.status === 'rejected' && !(one.reason instanceof InputError));
  if (failed?.status === 'rejected') throw failed.reason;
  return {
    ...(await solidIn(request, asItIs!.value, new Map(ways.map((one, i) => [asked[i + 1]!.way!, one])))),
    asItIs: leanOf(asItIs!),
    roll: asItIs!.value.suspensionRoll ?? turn.roll!,
    ways: new Map(ways.map((one, i) => [asked[i + 1]!.way!, leanOf(one)])),
  };
};

/** What the turn takes of the bump that is left, and with which ways that is too much. */
async function solidIn(
  { car, answer: { source, drop, ways: asked } }: Request,
  { outer }: CorneringAnswer,
  turns: ReadonlyMap<WayAnswer['way'], PromiseSettledResult<CorneringAnswer>>,
): Promise<Pick<TurnFigures, 'bump' | 'solid'>> {
  const left = (await stopLeft(car, source))?.solid;
  if (left === undefined) return { solid: [] };
  const takes = asked.flatMap(({ way, bumpTravel = 0, isReached, amount, ends }) => {
    const turn = turns.get(way);
    if (turn?.status !== 'fulfilled') return [];
    const stands = way === 'lowering' ? drop + (isReached ? amount : ends!.amount) : drop;
    // Lowered by screwed-down dampers, the stop comes down with the car.
    const more = way === 'lowering' && car.lowered === 'dampers' ? 0 : bumpTravel;
    return turn.value.outer.travel - stands > left + more ? [way] : [];
  });
  return { bump: { left, taken: outer.travel - drop }, solid: takes };
}

/** What is wrong with a roll that is worked out, by its place in the car. */
function inCar(error: unknown): unknown {
  if (!(error instanceof InputError)) return error;
  return new InputError(error.problems.map((one) => ({ ...one, path: rollPlace(one.path) ?? one.path })));
}

const leanOf = (one: PromiseSettledResult<CorneringAnswer>): number =>
  one.status === 'fulfilled' ? one.value.outer.inclination : Number.NaN;

/** A place each for as it is and the ways: a newer question takes the place of its own older one only. */
const slots = new WeakMap<object, object[]>();
function slotOf(owner: object, index: number): object {
  const own = slots.get(owner) ?? [];
  slots.set(owner, own);
  own[index] ??= {};
  return own[index];
}

/** What each way does to the outer wheel in the turn of the car, asked beside the element's own question. */
export class InTurn {
  readonly #view: StaticCamberView;
  readonly #answers: AnswerController<TurnFigures, Request>;
  #asked: Request | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(view: StaticCamberView) {
    const { host } = view;
    this.#view = view;
    this.#answers = new AnswerController(host, inTurn, () => host.requestUpdate());
  }

  /** Asks what the answer on the sheet asks; after the first, once a drag pauses: the ways themselves come first in the worker. */
  ask(): void {
    const { answer, answeredCar } = this.#view;
    if (!answer) return;
    const turn = turnOf(answeredCar);
    const before = this.#asked;
    const said = JSON.stringify(answeredCar.turn);
    if (before?.answer === answer && JSON.stringify(before.car.turn) === said) return;
    const asked = { car: answeredCar, answer, turn };
    this.#asked = asked;
    clearTimeout(this.#timer);
    const ask = () => {
      this.#timer = undefined;
      this.#answers.ask(asked);
    };
    if (before) this.#timer = setTimeout(ask, AFTER_MS);
    else ask();
  }

  /** Of the answer on the sheet. */
  get found(): Turn {
    if (this.#answers.answered === this.#asked) return this.#answers.answer;
    const isWrong = this.#answers.problems.length > 0 || this.fault !== undefined;
    return isWrong && this.#timer === undefined ? undefined : 'coming';
  }

  get problems(): readonly Problem[] {
    return this.found ? [] : this.#answers.problems;
  }

  get fault(): string | undefined {
    return this.#answers.fault;
  }

  async settle(): Promise<void> {
    while (this.#timer !== undefined) await new Promise((resolve) => setTimeout(resolve, AFTER_MS / 4));
    await this.#answers.settle();
  }

  retry(): void {
    if (!this.fault) return;
    this.#asked = undefined;
    this.ask();
  }
}
