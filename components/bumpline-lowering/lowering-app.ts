import type { PropertyValues } from 'lit';
import type { LoweringAnswer } from '../../core/answers/lowering.js';
import { type CarDocument, dropBy, withDrop, withPageHeights } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import { answeredCorner } from '../../core/document/setup-in-use.js';
import type { Problem } from '../../core/quantity/problem.js';
import { restsOnReadings } from '../car/car-controller.js';
import { isSameSource } from '../car/same-car.js';
import { AnswerController } from '../element/answer-controller.js';
import { say } from '../element/sentence.js';
import { SheetApp } from '../element/sheet-app.js';
import { type LightDom, lightDomWatcher } from '../page-data/light-dom.js';
import type { PageDataWatcher } from '../page-data/page-data-watcher.js';
import { completeness, dropText, FIRST, ownership, spoken } from './bumpline-lowering.words.js';
import { type Asked, askedOf, fetchTravelEnds, LOWERING } from './lowering-question.js';
import type { LoweringHost, LoweringView } from './lowering-view.js';
import { namedSetupProblem, withNamedSetup } from './named-setup.js';
import { carOf, heightsOf, sourceOf } from './page-source.js';
import { SentenceView } from './sentence-view.js';

const SOURCES = ['corner', 'curve', 'coefficients', 'domain'] as const;
const HEIGHTS = ['drop', 'dropPlusMinus', 'bumpTravel', 'limits'] as const;

/** What lowering does to camber: the question, and the sentence that answers it. */
export class LoweringApp extends SheetApp<LoweringHost, LoweringAnswer, Asked> implements LoweringView {
  protected readonly answers: AnswerController<LoweringAnswer, Asked>;
  protected readonly page: PageDataWatcher<LightDom>;
  readonly sentence: SentenceView;
  #light: LightDom = { problems: [] };
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
    this.#loadHeights();
    this.page = lightDomWatcher(host, (light) => {
      this.#light = light;
      this.#loadSource();
    });
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

  protected isOther(_asked: Asked, before: CarDocument): boolean {
    return !isSameSource(before, this.car);
  }

  protected get pageProblems(): Problem[] {
    const { car } = this.model;
    const setup = namedSetupProblem(car, this.host.setup);
    return [
      ...this.cars.pageProblems('source', 'heights', 'limits', ...(restsOnReadings(car) ? (['setups'] as const) : [])),
      ...(setup ? [setup] : []),
    ];
  }

  protected override get sentenceProblems(): Problem[] {
    return this.sentence.problems;
  }

  /** What was asked from the sentence's far end is no fault of the car's. */
  protected override isAside({ path }: Problem): boolean {
    return path === 'change';
  }

  protected get isOwn(): boolean {
    return isUsers(this.car, 'corner');
  }

  protected get completeness() {
    return completeness(this.car);
  }

  get unreadDrop(): string | undefined {
    const found = this.pageProblems.find(({ path }) => path === 'drop');
    return found && String(found.value);
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
    if (SOURCES.some((name) => changed.has(name))) this.#loadSource();
    if (HEIGHTS.some((name) => changed.has(name))) this.#loadHeights();
    if (changed.has('setup')) this.ask();
  }

  #loadSource(): void {
    const { corner, curve, coefficients, domain } = this.host;
    const source = sourceOf({ corner, curve, coefficients, domain, light: this.#light });
    const isGiven = SOURCES.some((name) => this.host[name] != null) || 'json' in this.#light || 'given' in this.#light;
    this.cars.pageGives(
      'source',
      (car, sparesUsers) => carOf(source, car, sparesUsers),
      isGiven,
      false,
      source.problems,
    );
  }

  #loadHeights(): void {
    const heights = heightsOf(this.host);
    const isGiven = HEIGHTS.some((name) => this.host[name] != null);
    const recipe = (car: CarDocument, sparesUsers: boolean) => withPageHeights(car, heights.car, sparesUsers);
    this.cars.pageGives('heights', recipe, isGiven, false, heights.problems);
    this.#limitsComing = this.#loadLimits();
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

  protected get rest(): number {
    return this.answers.answer!.drop;
  }

  protected get spoken(): string {
    return spoken(this.answers.answer!, this.answeredCar, this.display);
  }

  setDrop(drop: number): void {
    this.drafts.drop('drop');
    this.changeDrop(drop);
    this.host.requestUpdate();
  }

  changeDrop(drop: number): void {
    const before = this.model.car.drop;
    if (drop === before && dropBy(this.car) === 'user') return;
    this.change(
      'drop',
      say(FIRST.step, { drop: dropText(before, this.display) }),
      (car) => withDrop(car, drop),
      'drop',
    );
  }

  protected get frame() {
    const { car } = this;
    return {
      title: FIRST.title,
      corner: answeredCorner(car),
      owner: ownership(car),
      sentence: this.sentence.render(),
      caution: 'predicted' as const,
    };
  }
}
