import type { PropertyValues } from 'lit';
import { USUAL_ROLL } from '../../core/answers/usual-roll.js';
import { asLinks } from '../../core/document/as-links.js';
import { type CarDocument, givenPointCount } from '../../core/document/car.js';
import type { LinkedSet } from '../../core/document/linked-sets.js';
import type { RollWay } from '../../core/document/roll-ways.js';
import { sourceKindOf } from '../../core/document/setup-in-use.js';
import { photoRoll, rollWayOf } from '../../core/document/turn-roll.js';
import { type TurnSettings, withTurn } from '../../core/document/turn-settings.js';
import { readAngleAttribute } from '../../core/quantity/angle-attribute.js';
import type { Problem } from '../../core/quantity/problem.js';
import { AnswerController } from '../element/answer-controller.js';
import { LinkedApp } from '../element/linked-app.js';
import { PART_CAUTIONS } from '../element/part-cautions.js';
import { TRAVEL_CAUTIONS } from '../element/travel-cautions.js';
import { FIRST, WORDS } from './bumpline-cornering.words.js';
import { type Asked, askedOf, doubtOf, TURN } from './cornering-question.js';
import type { CorneringHost, CorneringView, TurnOnSheet } from './cornering-view.js';
import { SentenceView } from './sentence-view.js';
import type { SetupTurns } from './setup-turns.js';

/** What the tyres see in a turn: the question, and the sentence that answers it. */
export class CorneringApp extends LinkedApp<CorneringHost, TurnOnSheet, Asked> implements CorneringView {
  protected readonly answers: AnswerController<TurnOnSheet, Asked>;
  readonly sentence: SentenceView;
  protected readonly words = WORDS;
  protected readonly chosenStep = FIRST.chosen;
  /** No parts are on the example car: they stand beside it. */
  protected readonly exampleShown = -1;
  #coming: Promise<void> = Promise.resolve();
  #turns: Pick<SetupTurns, 'isOf' | 'stop'> | undefined;

  constructor(host: CorneringHost) {
    super(host);
    this.sentence = new SentenceView(this);
    this.answers = new AnswerController(
      host,
      TURN,
      () => this.take(),
      () => this.placeCursor(),
    );
    this.loadHeights();
    if (host.setups) this.loadSetups();
    this.begin();
  }

  protected async importBody() {
    const [{ CorneringBody, SetupTurns: Turns }] = await Promise.all([import('./cornering-body.js'), this.cars.keep()]);
    // What stands in the table stands there from the first rendering on.
    const turns = new Turns(this);
    this.#turns = turns;
    turns.ask();
    await turns.settled;
    return () => new CorneringBody(this, turns);
  }

  /** By its links where there are any; readings and curves tell the front view alone. */
  override get car(): CarDocument {
    const { car } = this.model;
    return this.#isRead(car) ? car : asLinks(car);
  }

  get hasLinks(): boolean {
    return !this.#isRead(this.model.car);
  }

  #isRead(car: CarDocument): boolean {
    return car.curve !== undefined || (sourceKindOf(car) === 'readings' && givenPointCount(car) === 0);
  }

  protected shownOf(car: CarDocument, sets: readonly LinkedSet[]): number {
    return sets.findIndex(({ index }) => index !== undefined && index === car.fitted);
  }

  get rollWay(): RollWay | 'typed' {
    return rollWayOf(this.car);
  }

  get roll(): number {
    const { rollWay } = this;
    if (rollWay === 'photo') return photoRoll(this.car).roll;
    return rollWay === 'typed' ? this.#typedRoll : (this.answer?.suspensionRoll ?? this.#typedRoll);
  }

  get #typedRoll(): number {
    const read = this.#readRoll;
    return this.car.turn?.roll ?? (read?.ok ? read.value : USUAL_ROLL);
  }

  get #readRoll() {
    const { roll } = this.host;
    return roll === undefined || roll === null ? undefined : readAngleAttribute(String(roll), 'roll', 'roll');
  }

  get solidShort(): number | undefined {
    const { answer } = this;
    const solid = answer && this.#turns?.isOf(answer) ? this.#turns.stop?.solid : undefined;
    const short = solid === undefined ? 0 : answer!.outer.travel - answer!.drop - solid;
    return short > 0 ? short : undefined;
  }

  get unreadRoll(): string | undefined {
    const found = this.pageProblems.find(({ path }) => path === 'roll');
    return found && String(found.value);
  }

  override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (changed.has('roll')) this.ask();
  }

  /** What is wanted changes nothing of what is. */
  protected override isAside({ path }: Problem): boolean {
    return path === 'turn.wanted';
  }

  protected requestOf(car: CarDocument): Asked {
    return askedOf(this.model, car, this.sets[this.shown], this.#typedRoll, this.answers.answer === undefined);
  }

  /** A drag has its answer at once, and how far it can be trusted when it rests. */
  protected override take(): void {
    super.take();
    const { answer } = this.answers;
    if (answer && !answer.doubt) this.#coming = this.#getDoubt(answer);
  }

  async #getDoubt(answer: TurnOnSheet): Promise<void> {
    try {
      const doubt = await doubtOf(answer.request, this);
      if (this.answers.answer !== answer) return;
      this.answers.answer = { ...answer, doubt };
      this.host.requestUpdate();
    } catch {
      // Without it no ± is stated; the next answer asks again.
    }
  }

  override async settle(): Promise<void> {
    await super.settle();
    await this.#coming;
    await this.host.updateComplete;
  }

  protected get pageProblems(): Problem[] {
    const roll = this.rollWay === 'typed' && this.car.turn?.roll === undefined ? this.#readRoll : undefined;
    return [...this.cars.pageProblems('source', 'heights', 'setups'), ...(roll && !roll.ok ? [roll.problem] : [])];
  }

  set(label: string, settings: { [K in keyof TurnSettings]?: TurnSettings[K] | undefined }, step?: string): void {
    this.change('turn', label, (car) => withTurn(car, settings), step);
    this.host.requestUpdate();
  }

  get frame() {
    return this.frameOf(this.car.cornerName, this.sentence.render(), [
      PART_CAUTIONS.camber,
      TRAVEL_CAUTIONS.stop,
      ...this.partHazards,
    ]);
  }
}
