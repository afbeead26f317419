import type { PropertyValues } from 'lit';
import { asLinks } from '../../core/document/as-links.js';
import type { CarDocument } from '../../core/document/car.js';
import { type LinkedSet, linkedSets, shownSet } from '../../core/document/linked-sets.js';
import { fitSetup } from '../../core/document/setup-in-use.js';
import { withPageSetups } from '../../core/document/setups.js';
import type { Problem } from '../../core/quantity/problem.js';
import { isSameSource } from '../car/same-car.js';
import { CornerApp } from '../element/corner-app.js';
import { say } from '../element/sentence.js';
import { givenSetups, setupProblems } from '../page-data/given-setups.js';
import { completeness, dropText, FIRST, ownership, spoken } from './bumpline-geometry.words.js';
import { GeometryAnswers } from './geometry-answers.js';
import { type Asked, askedOf } from './geometry-question.js';
import type { GeometryHost, GeometryView, WorkbenchAnswer } from './geometry-view.js';
import { SentenceView } from './sentence-view.js';

/** What links do over travel: the question, and the sentence that answers it. */
export class GeometryApp extends CornerApp<GeometryHost, WorkbenchAnswer, Asked> implements GeometryView {
  protected readonly answers: GeometryAnswers;
  readonly sentence: SentenceView;
  /** Which of the example's sets is on: nothing of anybody's car. */
  #shownExample = 0;

  constructor(host: GeometryHost) {
    super(host);
    this.sentence = new SentenceView(this);
    this.answers = new GeometryAnswers(
      host,
      () => this.take(),
      () => this.placeCursor(),
    );
    this.loadHeights();
    if (host.setups) this.#loadSetups();
    this.begin();
  }

  protected async importBody() {
    const [{ GeometryBody }] = await Promise.all([import('./geometry-body.js'), this.cars.keep()]);
    return () => new GeometryBody(this);
  }

  override get car(): CarDocument {
    return asLinks(super.car);
  }

  get sets(): readonly LinkedSet[] {
    return linkedSets(this.car);
  }

  get shown(): number {
    const { sets, car } = this;
    return sets[0]?.by === 'example' ? this.#shownExample : shownSet(car, sets);
  }

  override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (changed.has('setups')) this.#loadSetups();
  }

  #loadSetups(): void {
    const { setups } = this.host;
    const given = setups && givenSetups(setups);
    this.cars.pageGives(
      'setups',
      (car) => withPageSetups(car, given),
      given !== undefined && given.length > 0,
      true,
      setups ? setupProblems(setups) : [],
    );
  }

  protected requestOf(car: CarDocument): Asked {
    return askedOf(this.model, car, this.shown, this.answers.answer === undefined);
  }

  protected isOther(_asked: Asked, before: CarDocument): boolean {
    return !isSameSource(before, this.car);
  }

  protected get pageProblems(): Problem[] {
    return this.cars.pageProblems('source', 'heights', 'setups');
  }

  protected get completeness() {
    return completeness(this.car);
  }

  protected get rest(): number {
    return this.answers.answer!.drop;
  }

  protected get spoken(): string {
    return spoken(this.answers.answer!, this.answeredCar, this.display);
  }

  protected dropStep(before: number): string {
    return say(FIRST.step, { drop: dropText(before, this.display) });
  }

  choose(set: number): void {
    const { index } = this.sets[set]!;
    if (index !== undefined) {
      this.change('setups', FIRST.chosen, (car) => fitSetup(car, index));
      return;
    }
    this.#shownExample = set;
    this.speak();
    this.ask();
    this.host.requestUpdate();
  }

  protected get frame() {
    const { car } = this;
    return {
      title: FIRST.title,
      corner: car.cornerName,
      owner: ownership(car),
      sentence: this.sentence.render(),
      caution: 'predicted' as const,
    };
  }
}
