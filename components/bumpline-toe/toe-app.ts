import { USUAL_TOE_OVER_MM } from '../../core/answers/toe.js';
import { asLinks } from '../../core/document/as-links.js';
import { type CarDocument, cornerGivenBy } from '../../core/document/car.js';
import { EXAMPLE_SHOWN_BY_TOE, type LinkedSet } from '../../core/document/linked-sets.js';
import { setupsBy, toeSetupOf } from '../../core/document/setup-in-use.js';
import { type ToeSettings, withToe } from '../../core/document/toe-settings.js';
import { pageSetups, tableIn } from '../bumpline-readings/page-readings.js';
import { AnswerController } from '../element/answer-controller.js';
import { PART_CAUTIONS } from '../element/part-cautions.js';
import { ReadApp } from '../element/read-app.js';
import { TRAVEL_CAUTIONS } from '../element/travel-cautions.js';
import { type LightDom, readLightDom } from '../page-data/light-dom.js';
import { FIRST, WORDS } from './bumpline-toe.words.js';
import { SentenceView } from './sentence-view.js';
import { type Asked, askedOf, TOE } from './toe-question.js';
import type { ToeHost, ToeOnSheet, ToeView } from './toe-view.js';

/** How much a wheel steers itself: the question, and the sentence that answers it. */
export class ToeApp extends ReadApp<ToeHost, ToeOnSheet, Asked> implements ToeView {
  protected readonly answers: AnswerController<ToeOnSheet, Asked>;
  readonly sentence: SentenceView;
  protected readonly words = WORDS;
  protected readonly chosenStep = FIRST.chosen;
  protected readonly readQuantity = 'toe';
  protected readonly usualOver = USUAL_TOE_OVER_MM;

  constructor(host: ToeHost) {
    super(host);
    this.sentence = new SentenceView(this);
    this.answers = new AnswerController(
      host,
      TOE,
      () => this.take(),
      () => this.placeCursor(),
    );
    this.loadHeights();
    if (host.setups || host.readings) this.loadSetups();
    this.begin();
  }

  protected async importBody() {
    const [{ ToeBody, Cure }] = await Promise.all([import('./toe-body.js'), this.cars.keep()]);
    // What it says stands there from its first rendering on, so that nothing moves when it comes.
    const cure = new Cure(this);
    cure.ask();
    await cure.settle();
    return () => new ToeBody(this, cure);
  }

  /** By readings of toe where there are any to be heard, else by its links. */
  override get car(): CarDocument {
    const { car } = this.model;
    return toeSetupOf(car) || car.curve ? car : asLinks(car);
  }

  get isRead(): boolean {
    return toeSetupOf(this.car) !== undefined;
  }

  override get isOwn(): boolean {
    return this.isRead ? setupsBy(this.car) === 'user' : super.isOwn;
  }

  /** A lower joint with the tie rod as it was, on the example car alone: on a car that was given there is nothing that nobody fitted. */
  protected get exampleShown(): number {
    return cornerGivenBy(this.car) ? -1 : EXAMPLE_SHOWN_BY_TOE;
  }

  protected shownOf(car: CarDocument, sets: readonly LinkedSet[]): number {
    return sets.findIndex(({ index }) => index !== undefined && index === car.fitted);
  }

  protected get ownOver(): number | undefined {
    return this.car.toe?.over;
  }

  /** A table inside is of hard points, else of readings. */
  protected override async readLight(): Promise<LightDom> {
    this.table = {};
    const light = await readLightDom(this.host);
    if ('json' in light || (light.given && Object.keys(light.given.points).length > 0)) return light;
    this.table = await tableIn(this.host, 'toe');
    return this.table.understanding || this.table.problem ? { problems: [] } : light;
  }

  /** Readings of the page, where it gives any; else its sets of parts. */
  protected override loadSetups(): void {
    const given = pageSetups(this.pageReadings, this.table);
    const problems = this.readingProblems;
    if (!given && problems.length === 0) super.loadSetups();
    else this.pageGivesSetups(given, problems);
  }

  protected requestOf(car: CarDocument): Asked {
    return askedOf(this.model, car, this.sets[this.shown], this.over)!;
  }

  protected override get isEnough(): boolean {
    return askedOf(this.model, this.car, undefined, this.over) !== undefined;
  }

  set(label: string, settings: { [K in keyof ToeSettings]?: ToeSettings[K] | undefined }, step?: string): void {
    this.change('toe', label, (car) => withToe(car, settings), step);
    this.host.requestUpdate();
  }

  get frame() {
    const { car } = this;
    const { springOut, carried } = TRAVEL_CAUTIONS;
    return this.frameOf(toeSetupOf(car)?.cornerName ?? car.cornerName, this.sentence.render(), [
      PART_CAUTIONS.steering,
      ...this.partHazards,
      // Toe is read, or is to be.
      ...(this.isRead || !this.isEnough ? [springOut, carried] : []),
    ]);
  }
}
