import { asLinks } from '../../core/document/as-links.js';
import type { CarDocument } from '../../core/document/car.js';
import { type LinkedSet, shownSet } from '../../core/document/linked-sets.js';
import type { Problem } from '../../core/quantity/problem.js';
import { LinkedApp } from '../element/linked-app.js';
import { FIRST, WORDS } from './bumpline-geometry.words.js';
import { GeometryAnswers } from './geometry-answers.js';
import { type Asked, askedOf } from './geometry-question.js';
import type { GeometryHost, GeometryView, WorkbenchAnswer } from './geometry-view.js';
import { SentenceView } from './sentence-view.js';

/** What links do over travel: the question, and the sentence that answers it. */
export class GeometryApp extends LinkedApp<GeometryHost, WorkbenchAnswer, Asked> implements GeometryView {
  protected readonly answers: GeometryAnswers;
  readonly sentence: SentenceView;
  protected readonly words = WORDS;
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

  protected get pageProblems(): Problem[] {
    return this.cars.pageProblems('source', 'heights', 'setups');
  }

  get frame() {
    return this.frameOf(this.car.cornerName, this.sentence.render(), this.partHazards);
  }
}
