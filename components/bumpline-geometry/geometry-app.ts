import { asLinks } from '../../core/document/as-links.js';
import type { CarDocument } from '../../core/document/car.js';
import { type LinkedSet, shownSet } from '../../core/document/linked-sets.js';
import type { Problem } from '../../core/quantity/problem.js';
import { isSameSource } from '../car/same-car.js';
import { LinkedApp } from '../element/linked-app.js';
import { say } from '../element/sentence.js';
import { completeness, dropText, FIRST, ownership, spoken } from './bumpline-geometry.words.js';
import { GeometryAnswers } from './geometry-answers.js';
import { type Asked, askedOf } from './geometry-question.js';
import type { GeometryHost, GeometryView, WorkbenchAnswer } from './geometry-view.js';
import { SentenceView } from './sentence-view.js';

/** What links do over travel: the question, and the sentence that answers it. */
export class GeometryApp extends LinkedApp<GeometryHost, WorkbenchAnswer, Asked> implements GeometryView {
  protected readonly answers: GeometryAnswers;
  readonly sentence: SentenceView;
  protected readonly exampleShown = 0;
  protected readonly chosenStep = FIRST.chosen;

  constructor(host: GeometryHost) {
    super(host);
    this.sentence = new SentenceView(this);
    this.answers = new GeometryAnswers(
      host,
      () => this.take(),
      () => this.placeCursor(),
    );
    this.loadHeights();
    if (host.setups) this.loadSetups();
    this.begin();
  }

  protected async importBody() {
    const [{ GeometryBody }] = await Promise.all([import('./geometry-body.js'), this.cars.keep()]);
    return () => new GeometryBody(this);
  }

  override get car(): CarDocument {
    return asLinks(super.car);
  }

  protected shownOf(car: CarDocument, sets: readonly LinkedSet[]): number {
    return shownSet(car, sets);
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
