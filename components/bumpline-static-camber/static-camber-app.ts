import type { PropertyValues } from 'lit';
import { asLinks } from '../../core/document/as-links.js';
import { type CamberAdded, withCamberAdded } from '../../core/document/camber-added.js';
import type { CarDocument } from '../../core/document/car.js';
import type { LinkedSet } from '../../core/document/linked-sets.js';
import { readAngleAttribute } from '../../core/quantity/angle-attribute.js';
import { type ReadAttribute, readLengthAttribute } from '../../core/quantity/attribute.js';
import type { Problem } from '../../core/quantity/problem.js';
import { AnswerController } from '../element/answer-controller.js';
import { LinkedApp } from '../element/linked-app.js';
import { PART_CAUTIONS } from '../element/part-cautions.js';
import { isBesides } from './aside.js';
import { FIRST, USUAL_BY_DEG, USUAL_OVER_MM, WORDS } from './bumpline-static-camber.words.js';
import { SentenceView } from './sentence-view.js';
import { type Asked, askedOf, WAYS } from './static-camber-question.js';
import type { StaticCamberHost, StaticCamberView, WaysOnSheet } from './static-camber-view.js';

/** Which way of adding static camber costs what elsewhere: the question, and the sentence that answers it. */
export class StaticCamberApp extends LinkedApp<StaticCamberHost, WaysOnSheet, Asked> implements StaticCamberView {
  protected readonly answers: AnswerController<WaysOnSheet, Asked>;
  readonly sentence: SentenceView;
  protected readonly words = WORDS;
  protected readonly chosenStep = FIRST.chosen;
  /** The bare car: what is on already is said, never assumed. */
  protected readonly exampleShown = -1;

  constructor(host: StaticCamberHost) {
    super(host);
    this.sentence = new SentenceView(this);
    this.answers = new AnswerController(
      host,
      WAYS,
      () => this.take(),
      () => this.placeCursor(),
    );
    this.loadHeights();
    if (host.setups) this.loadSetups();
    this.begin();
  }

  protected async importBody() {
    const [{ StaticCamberBody, InTurn }] = await Promise.all([import('./static-camber-body.js'), this.cars.keep()]);
    // Its figures stand there from the first rendering on, so that nothing moves when they come.
    const turn = new InTurn(this);
    turn.ask();
    await turn.settle();
    return () => new StaticCamberBody(this, turn);
  }

  override get car(): CarDocument {
    return asLinks(super.car);
  }

  protected shownOf(car: CarDocument, sets: readonly LinkedSet[]): number {
    return sets.findIndex(({ index }) => index !== undefined && index === car.fitted);
  }

  get by(): number {
    return this.car.camberAdded?.by ?? figureOf(this.#pages.by) ?? USUAL_BY_DEG;
  }

  get over(): number {
    return this.car.camberAdded?.over ?? figureOf(this.#pages.over) ?? USUAL_OVER_MM;
  }

  get unreadBy(): string | undefined {
    const found = this.pageProblems.find(({ path }) => path === 'by');
    return found && String(found.value);
  }

  /** What a page asks. */
  get #pages(): Partial<Record<'by' | 'over', ReadAttribute>> {
    const { by, over } = this.host;
    return {
      ...(isSaid(by) && { by: readAngleAttribute(String(by), 'partAngle', 'by') }),
      ...(isSaid(over) && { over: readLengthAttribute(String(over), 'travel', 'over') }),
    };
  }

  override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (changed.has('by') || changed.has('over')) this.ask();
  }

  protected override isAside(problem: Problem): boolean {
    return isBesides(problem);
  }

  protected requestOf(car: CarDocument): Asked {
    return askedOf(this.model, car, this.sets[this.shown], this);
  }

  protected get pageProblems(): Problem[] {
    const { camberAdded: own = {} } = this.car;
    const asked = (['by', 'over'] as const).flatMap((name) => {
      const { [name]: read } = own[name] === undefined ? this.#pages : {};
      return read && !read.ok ? [read.problem] : [];
    });
    return [...this.cars.pageProblems('source', 'heights', 'setups'), ...asked];
  }

  set(label: string, settings: { [K in keyof CamberAdded]?: CamberAdded[K] | undefined }, step?: string): void {
    this.change('camberAdded', label, (car) => withCamberAdded(car, settings), step);
    this.host.requestUpdate();
  }

  get frame() {
    const { topMount, camber, knuckle, armPart, lowJoint } = PART_CAUTIONS;
    const hazards = [topMount, camber, knuckle, armPart, lowJoint, ...this.partHazards];
    return this.frameOf(this.car.cornerName, this.sentence.render(), hazards);
  }
}

const isSaid = (text: string | number | undefined): text is string | number => text !== undefined && text !== null;

const figureOf = (read: ReadAttribute | undefined): number | undefined => (read?.ok ? read.value : undefined);
