import type { ToeCure, ToeCureRequest } from '../../core/answers/toe-cure.js';
import type { ToeCureDoubt } from '../../core/answers/toe-cure-doubt.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import type { CarDocument } from '../../core/document/car.js';
import { toe } from '../../core/worker/layers/toe.generated.js';
import { sourceLayers } from '../car/source-layers.js';
import { AnswerController, askCore } from '../element/answer-controller.js';
import type { ToeOnSheet, ToeView } from './toe-view.js';

type Request = ToeCureRequest<AnySource>;

/** How far the rod's ends can be moved on the sheet, mm: more than any shim or tapered end does. */
export const RANGE_MM = 30;

/** Of a right corner what the car calls left is the other way: the links that are solved are a left corner's. */
export const ownRack = (car: CarDocument): number => (car.toe?.rack ?? 0) * (car.cornerName.endsWith('right') ? -1 : 1);

/** As far from where the car stands as is asked about, and as the curve goes. */
export function windowOf({ over, drop, curve }: ToeOnSheet): [number, number] {
  const reach = Math.max(1, Math.abs(over));
  const [low, high] = curve.domain;
  return [Math.max(-reach, low - drop), Math.min(reach, high - drop)];
}

/** Straight ahead, as toe is set and a shim is chosen; turned as well, for how the curves change. */
function requestsOf(answer: ToeOnSheet, car: CarDocument): { ahead: Request; turned?: Request } {
  const { adjust = 'outerEnd' } = car.toe ?? {};
  const rack = ownRack(car);
  const ahead: Request = {
    source: answer.source,
    at: answer.drop - answer.measuredAt,
    window: windowOf(answer),
    adjust,
    range: [-RANGE_MM, RANGE_MM],
  };
  return { ahead, ...(rack !== 0 && { turned: { ...ahead, rack } }) };
}

const isSame = (a: Request | undefined, b: Request): boolean =>
  a !== undefined && a.source === b.source && JSON.stringify(rest(a)) === JSON.stringify(rest(b));
const rest = ({ source: _, ...others }: Request): object => others;

/** What flattens the curve of some links, asked of the core beside the element's own question: the figures first, then how far they can be trusted. */
export class Cure {
  readonly #view: ToeView;
  readonly #ahead: AnswerController<ToeCure, Request>;
  readonly #turned: AnswerController<ToeCure, Request>;
  readonly #doubt: AnswerController<ToeCureDoubt, Request>;
  #asked: ReturnType<typeof requestsOf> | undefined;

  constructor(view: ToeView) {
    this.#view = view;
    const { host } = view;
    const layers = (request: Request) => sourceLayers(request.source);
    const update = () => host.requestUpdate();
    this.#doubt = new AnswerController(host, askCore('toeCureDoubt', [toe], layers));
    this.#turned = new AnswerController(host, askCore('toeCure', [toe], layers), update);
    this.#ahead = new AnswerController(host, askCore('toeCure', [toe], layers), () => {
      this.#doubt.ask(this.#ahead.answered!);
      update();
    });
  }

  /** Asks what the answer on the sheet asks; nothing of readings. */
  ask(): void {
    const { answer, answeredCar } = this.#view;
    if (!answer || answer.source.kind === 'readings') return;
    const before = this.#asked;
    const asked = requestsOf(answer, answeredCar);
    this.#asked = asked;
    if (!isSame(before?.ahead, asked.ahead)) this.#ahead.ask(asked.ahead);
    if (asked.turned && !isSame(before?.turned, asked.turned)) this.#turned.ask(asked.turned);
  }

  /** What was found for these links, straight ahead; while a height is dragged, for the one before. */
  get found(): ToeCure | undefined {
    return this.#of(this.#ahead);
  }

  /** The same with the steering turned, where it is. */
  get turned(): ToeCure | undefined {
    return this.#asked?.turned && this.#of(this.#turned);
  }

  #of({ answered, answer: found }: AnswerController<ToeCure, Request>): ToeCure | undefined {
    const { answer } = this.#view;
    const isOfThese = answered?.source === answer?.source && answered?.adjust === this.#asked?.ahead.adjust;
    return answer && isOfThese ? found : undefined;
  }

  /** How far that can be trusted, where that is known. */
  get doubt(): ToeCureDoubt | undefined {
    return this.found && this.#doubt.answered === this.#ahead.answered ? this.#doubt.answer : undefined;
  }

  get problems() {
    return this.#asked && !isSame(this.#ahead.answered, this.#asked.ahead) ? this.#ahead.problems : [];
  }

  get fault(): string | undefined {
    return this.#ahead.fault ?? this.#turned.fault;
  }

  async settle(): Promise<void> {
    await this.#ahead.settle();
    await this.#turned.settle();
    await this.#doubt.settle();
  }

  /** Asks again what came to a fault. */
  retry(): void {
    if (!this.fault) return;
    this.#asked = undefined;
    this.ask();
  }
}
