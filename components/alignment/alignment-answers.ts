import type { AlignmentAnswer, AlignmentRequest } from '../../core/answers/alignment.js';
import { isOfLinks } from '../../core/answers/car-request.js';
import type { AnySource } from '../../core/curve-sources/source.js';
import type { Problem } from '../../core/quantity/problem.js';
import { alignment } from '../../core/worker/layers/alignment.generated.js';
import { sourceLayers } from '../car/source-layers.js';
import { AnswerController, askCore } from '../element/answer-controller.js';
import type { SheetView } from '../element/sheet-view.js';
import type { AlignedLinks } from './aligned-links.js';
import { dropOf, GAUGE, givenOf, WHEEL_SIDES, type WheelPlan, type WheelSide, wheelPlan } from './wheel-plan.js';

type Request = AlignmentRequest<AnySource>;

const rest = ({ source: _, ...others }: Request): object => others;

/** What the core says of both wheels' links, asked anew where something of it changed. */
export class AlignmentAnswers {
  readonly #view: SheetView;
  readonly #links: () => AlignedLinks | undefined;
  readonly #wheels: Record<WheelSide, AnswerController<AlignmentAnswer, Request>>;
  readonly #asked: Partial<Record<WheelSide, Request>> = {};

  constructor(view: SheetView, links: () => AlignedLinks | undefined) {
    this.#view = view;
    this.#links = links;
    const wheel = () =>
      new AnswerController(
        view.host,
        askCore('alignment', [alignment], (request: Request) => sourceLayers(request.source)),
        () => view.host.requestUpdate(),
      );
    this.#wheels = { left: wheel(), right: wheel() };
  }

  /** Whether links are known that can be asked. */
  get hasLinks(): boolean {
    return hasLinks(this.#links()?.source);
  }

  get isByWishbone(): boolean {
    const source = this.#links()?.source;
    const of = source?.kind === 'parts' || source?.kind === 'learnt' ? source.of : source;
    return of?.kind === 'corner' && (of.corner as { kind?: unknown } | null)?.kind === 'wishbone';
  }

  ask(): void {
    for (const side of WHEEL_SIDES) {
      const request = this.#requestOf(side);
      const before = this.#asked[side];
      if (!request) delete this.#asked[side];
      else if (
        !before ||
        before.source !== request.source ||
        JSON.stringify(rest(before)) !== JSON.stringify(rest(request))
      ) {
        this.#asked[side] = request;
        this.#wheels[side].ask(request);
      }
    }
  }

  #requestOf(side: WheelSide): Request | undefined {
    const links = this.#links();
    const { car } = this.#view;
    if (!links || !hasLinks(links.source)) return undefined;
    const { lower, camber, toe } = givenOf(car, side);
    const { camberWanted, toeWanted } = car.alignment ?? {};
    return {
      source: links.source,
      drop: dropOf(car, side),
      measuredAt: links.measuredAt,
      lower,
      ...(camber !== undefined && { camber, camberPlusMinus: GAUGE.camber }),
      ...(toe !== undefined && { toe, toePlusMinus: GAUGE.toe }),
      ...(camberWanted !== undefined && { camberWanted }),
      ...(toeWanted !== undefined && { toeWanted }),
    };
  }

  /** Of both wheels; what the links say of a setting that stands no more is left out. */
  get plans(): Record<WheelSide, WheelPlan> {
    const plan = (side: WheelSide) => {
      const { answer, answered } = this.#wheels[side];
      const isNow = answered !== undefined && answered === this.#asked[side];
      return wheelPlan(this.#view.car, side, isNow ? answer : undefined);
    };
    return { left: plan('left'), right: plan('right') };
  }

  /** Whether the core still works on a wheel. */
  isWaiting(side: WheelSide): boolean {
    const { answered, problems, fault } = this.#wheels[side];
    const asked = this.#asked[side];
    return asked !== undefined && answered !== asked && problems.length === 0 && fault === undefined;
  }

  problemsOf(side: WheelSide): Problem[] {
    const { answered, problems } = this.#wheels[side];
    const asked = this.#asked[side];
    return asked && answered !== asked ? problems : [];
  }

  get fault(): string | undefined {
    return this.#wheels.left.fault ?? this.#wheels.right.fault;
  }

  async settle(): Promise<void> {
    await this.#wheels.left.settle();
    await this.#wheels.right.settle();
  }
}

const hasLinks = (source: AnySource | undefined): boolean => source !== undefined && isOfLinks(source);
