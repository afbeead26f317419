import type { PropertyValues } from 'lit';
import type { LoweringAnswer } from '../../core/answers/lowering.js';
import type { CarDocument } from '../../core/document/car.js';
import { fullBumpOf } from '../../core/document/full-bump.js';
import { answeredCorner, setupsBy, sourceKindOf } from '../../core/document/setup-in-use.js';
import type { Problem } from '../../core/quantity/problem.js';
import { restsOnReadings } from '../car/car-controller.js';
import { AnswerController } from '../element/answer-controller.js';
import { byHand } from '../element/by-hand.js';
import { CornerApp } from '../element/corner-app.js';
import { TRAVEL_CAUTIONS } from '../element/travel-cautions.js';
import { WORDS } from './bumpline-lowering.words.js';
import { type Asked, askedOf, fetchTravelEnds, LOWERING } from './lowering-question.js';
import type { LoweringHost, LoweringView } from './lowering-view.js';
import { namedSetupProblem, withNamedSetup } from './named-setup.js';
import { SentenceView } from './sentence-view.js';

/** What lowering does to camber: the question, and the sentence that answers it. */
export class LoweringApp extends CornerApp<LoweringHost, LoweringAnswer, Asked> implements LoweringView {
  protected readonly answers: AnswerController<LoweringAnswer, Asked>;
  readonly sentence: SentenceView;
  protected readonly words = WORDS;
  #limitsComing: Promise<void> = Promise.resolve();
  #areLimitsLost = false;
  /** What the page says of its limits is still to be read: an answer without it would be of another car. */
  #areLimitsOnTheirWay = false;

  constructor(host: LoweringHost) {
    super(host);
    this.sentence = new SentenceView(this);
    this.answers = new AnswerController(
      host,
      LOWERING,
      () => this.take(),
      () => this.placeCursor(),
    );
    this.loadHeights();
    this.begin();
  }

  protected async importBody() {
    const [{ LoweringBody }] = await Promise.all([import('./lowering-body.js'), this.cars.keep()]);
    return () => new LoweringBody(this);
  }

  override get car(): CarDocument {
    return withNamedSetup(super.car, this.host.setup);
  }

  protected requestOf(car: CarDocument): Asked {
    return askedOf(this.model, car);
  }

  protected get pageProblems(): Problem[] {
    const { car } = this.model;
    const setup = namedSetupProblem(car, this.host.setup);
    return [
      ...this.cars.pageProblems('source', 'heights', 'limits', ...(restsOnReadings(car) ? (['setups'] as const) : [])),
      ...(setup ? [setup] : []),
    ];
  }

  override get isOwn(): boolean {
    return sourceKindOf(this.car) === 'readings' ? setupsBy(this.car) === 'user' : super.isOwn;
  }

  protected override get sentenceProblems(): Problem[] {
    return this.sentence.problems;
  }

  /** What was asked from the sentence's far end is no fault of the car's. */
  protected override isAside({ path }: Problem): boolean {
    return path === 'change';
  }

  protected override get isKnown(): boolean {
    return super.isKnown && !this.#areLimitsOnTheirWay;
  }

  protected override get ready(): Promise<unknown> {
    return Promise.all([super.ready, this.#limitsComing]);
  }

  override retry(): void {
    if (this.#areLimitsLost) this.#limitsComing = this.#loadLimits();
    super.retry();
  }

  override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (changed.has('limits')) this.loadHeights();
    if (changed.has('setup')) this.ask();
  }

  protected override loadHeights(): void {
    super.loadHeights();
    this.#limitsComing = this.#loadLimits();
  }

  protected override get hasHeights(): boolean {
    return super.hasHeights || this.host.limits != null;
  }

  /** What reads them comes only where a page says any. */
  async #loadLimits(): Promise<void> {
    const { limits } = this.host;
    if (limits == null) return;
    this.#areLimitsOnTheirWay = true;
    try {
      const { limitsOf } = await fetchTravelEnds();
      const { recipe, problems } = limitsOf(limits);
      this.#areLimitsLost = this.#areLimitsOnTheirWay = false;
      this.cars.pageGives('limits', recipe, true, true, problems);
    } catch (error) {
      this.#areLimitsLost = true;
      this.#areLimitsOnTheirWay = false;
      console.warn('Bumpline: what a page says of its limits could not be read; it is tried again.', error);
      this.ask();
    }
  }

  setDrop(drop: number): void {
    this.drafts.drop('drop');
    this.changeDrop(drop);
    this.host.requestUpdate();
  }

  get #hazards(): readonly string[] {
    const { answer, answeredCar: car, display } = this;
    const { spring, stop, otherLimits } = TRAVEL_CAUTIONS;
    const { drop = 0, budget } = answer ?? {};
    return [
      byHand(fullBumpOf(car, budget?.bump.solid, drop), drop, display),
      spring,
      ...(car.lowered === 'dampers' ? [otherLimits] : []),
      ...(budget ? [stop] : []),
    ];
  }

  get frame() {
    return this.frameOf(answeredCorner(this.car), this.sentence.render(), this.#hazards);
  }
}
