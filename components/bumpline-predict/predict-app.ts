import { tellsToe } from '../../core/answers/car-request.js';
import type { PredictedShape } from '../../core/answers/predict.js';
import { asLinks } from '../../core/document/as-links.js';
import type { CarDocument } from '../../core/document/car.js';
import { learntSourceOf } from '../../core/document/learnt-in-use.js';
import type { LinkedSet } from '../../core/document/linked-sets.js';
import {
  type PredictInUse,
  type PredictSettings,
  predictInUse,
  USUAL_PREDICT_OVER_MM,
  withPredict,
} from '../../core/document/predict-in-use.js';
import type { ReadingQuantity } from '../../core/readings/reading.js';
import { pageSetups, tableIn } from '../bumpline-readings/page-readings.js';
import { AnswerController } from '../element/answer-controller.js';
import { ReadApp } from '../element/read-app.js';
import { TRAVEL_CAUTIONS } from '../element/travel-cautions.js';
import { DATA_SCRIPT, DATA_TABLE } from '../page-data/data-marks.js';
import { givenSetups, setupProblems } from '../page-data/given-setups.js';
import { type LightDom, readLightDom } from '../page-data/light-dom.js';
import { FIRST, WORDS } from './bumpline-predict.words.js';
import { type Asked, type AskedShape, askedOf, PREDICTION, SHAPE } from './predict-question.js';
import type { PredictHost, PredictOnSheet, PredictView } from './predict-view.js';
import { SentenceView } from './sentence-view.js';

/** What parts would do on a car measured once: the question, and the sentence that answers it. */
export class PredictApp extends ReadApp<PredictHost, PredictOnSheet, Asked> implements PredictView {
  protected readonly answers: AnswerController<PredictOnSheet, Asked>;
  readonly #shapes: AnswerController<PredictedShape, AskedShape>;
  readonly sentence: SentenceView;
  protected readonly words = WORDS;
  protected readonly chosenStep = FIRST.chosen;
  /** What the question is about: parts that nobody fitted yet. */
  protected readonly exampleShown = 0;
  protected readonly readQuantity = 'camber';
  protected readonly usualOver = USUAL_PREDICT_OVER_MM;

  constructor(host: PredictHost) {
    super(host);
    this.sentence = new SentenceView(this);
    this.answers = new AnswerController(
      host,
      PREDICTION,
      () => this.take(),
      () => this.placeCursor(),
    );
    this.#shapes = new AnswerController(host, SHAPE, () => host.requestUpdate());
    this.loadHeights();
    if (host.setups || host.readings) this.loadSetups();
    this.begin();
  }

  protected async importBody() {
    const [{ PredictBody, More }] = await Promise.all([import('./predict-body.js'), this.cars.keep()]);
    // Its figures stand there from the first rendering on, so that nothing moves when they come.
    const more = new More(this);
    more.ask();
    await more.settle();
    return () => new PredictBody(this, more);
  }

  /** By its links; a curve of a page has none. */
  override get car(): CarDocument {
    const car = super.car;
    return car.curve ? car : asLinks(car);
  }

  get learnt(): PredictInUse {
    return predictInUse(this.car);
  }

  protected shownOf(car: CarDocument, sets: readonly LinkedSet[]): number {
    return Math.max(
      0,
      sets.findIndex(({ index }) => index !== undefined && index === car.fitted),
    );
  }

  protected get ownOver(): number | undefined {
    return this.car.predict?.over;
  }

  /** Of toe where somebody asks for it and it is known; of toe readings alone nothing else is asked. */
  get quantity(): ReadingQuantity {
    const source = learntSourceOf(this.learnt.car);
    if (!source || !tellsToe(source)) return 'camber';
    return this.car.predict?.of ?? (source.readings ? 'camber' : 'toe');
  }

  get moved(): PredictedShape | undefined {
    const { answered, answer } = this.#shapes;
    const isNewer = answered !== undefined && answered.parts !== this.answers.answered?.parts;
    const isNow = answered?.parts === this.sets[this.shown]?.setup.parts;
    return isNewer && isNow ? answer : undefined;
  }

  /** A script inside is of hard points, and a table beside it of readings; a table alone is of what it looks like. */
  protected override async readLight(): Promise<LightDom> {
    this.table = {};
    const light = await readLightDom(this.host);
    if (light.given && Object.keys(light.given.points).length > 0) return light;
    const hasTable = this.host.querySelector(DATA_TABLE) !== null;
    if (hasTable) this.table = await tableIn(this.host, 'camber');
    return hasTable && !this.host.querySelector(DATA_SCRIPT) ? { problems: [] } : light;
  }

  /** Readings of the page, and its sets of parts. */
  protected override loadSetups(): void {
    const { setups } = this.host;
    const read = pageSetups(this.pageReadings, this.table);
    const problems = [...this.readingProblems, ...(setups ? setupProblems(setups) : [])];
    const parts = (setups && givenSetups(setups)) ?? [];
    this.pageGivesSetups([...(read ?? []), ...parts], problems);
  }

  protected requestOf(car: CarDocument): Asked {
    return askedOf(this.model, car, this.sets[this.shown], this);
  }

  /** The curve of other parts comes before what is known of its doubt. */
  override ask(): void {
    const { answered } = this.answers;
    if (answered && this.isKnown && this.isEnough) {
      const request = this.requestOf(this.car);
      if (request.parts !== answered.parts) this.#shapes.ask(request);
    }
    super.ask();
  }

  /** The example's answer is of no car that anybody measured, whatever was begun since. */
  protected override isOther(asked: Asked, before: CarDocument): boolean {
    return super.isOther(asked, before) || predictInUse(before).isExample !== this.learnt.isExample;
  }

  protected override get isEnough(): boolean {
    return this.learnt.needs.length === 0;
  }

  set(label: string, settings: { [K in keyof PredictSettings]?: PredictSettings[K] | undefined }, step?: string): void {
    this.change('predict', label, (car) => withPredict(car, settings), step);
    this.host.requestUpdate();
  }

  get frame() {
    const { springOut, carried } = TRAVEL_CAUTIONS;
    return this.frameOf(this.car.cornerName, this.sentence.render(), [...this.partHazards, springOut, carried]);
  }
}
