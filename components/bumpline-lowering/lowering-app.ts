import type { PropertyValues, TemplateResult } from 'lit';
import { loweringRequestOf } from '../../core/answers/car-request.js';
import type { LoweringAnswer } from '../../core/answers/lowering.js';
import type { Questions } from '../../core/answers/questions.js';
import { type CarDocument, withHeights, withoutHeights } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import { answeredCorner } from '../../core/document/setup-in-use.js';
import type { Problem } from '../../core/quantity/problem.js';
import { sharedBridge } from '../../core/worker/bridge.js';
import { adoptedStyles } from '../shared/adopted-styles.js';
import { Announcer } from '../shared/announce.js';
import { AnswerController } from '../shared/answer-controller.js';
import { CarController, restsOnReadings } from '../shared/car-controller.js';
import type { CarModel } from '../shared/car-model.js';
import { Cursor } from '../shared/cursor.js';
import { Drafts } from '../shared/drafts.js';
import { BumplineAnswerEvent, BumplineChangeEvent } from '../shared/events.js';
import { firstStyles } from '../shared/first.styles.js';
import { type LightDom, LightDomReader } from '../shared/light-dom.js';
import { readerOf } from '../shared/reader-of.js';
import { ready } from '../shared/ready.js';
import { isSameSource } from '../shared/same-car.js';
import { renderFrame } from '../shared/sheet-frame.js';
import { theme } from '../shared/theme.js';
import type { BumplineLowering } from './bumpline-lowering.js';
import {
  completeness,
  dropText,
  type ElementState,
  ownership,
  type Reading,
  spoken,
} from './bumpline-lowering.words.js';
import { type Asked, finish } from './finish-answer.js';
import type { LoweringBody } from './lowering-body.js';
import { namedSetupProblem, withNamedSetup } from './named-setup.js';
import { carOf, heightsOf, sourceOf } from './page-source.js';
import { SentenceView } from './sentence-view.js';

const SOURCES = ['corner', 'curve', 'coefficients', 'domain'] as const;
const HEIGHTS = ['drop', 'dropPlusMinus', 'bumpTravel', 'limits'] as const;

/**
 * The element's state and its sentence: all that the first answer needs. The rest of the sheet (drawing, slider, chart, lists,
 * fields) is the body, fetched when the first answer is under way.
 */
export class LoweringApp {
  readonly host: BumplineLowering;
  readonly cursor = new Cursor();
  readonly drafts = new Drafts();
  readonly announcer: Announcer;
  readonly #addStyles: ReturnType<typeof adoptedStyles>;
  readonly #cars: CarController;
  #light: LightDom = { problems: [] };
  #answers: AnswerController<Questions, 'lowering', Asked>;
  #reader: LightDomReader;
  #body: LoweringBody | undefined;
  #bodyComing: Promise<void>;
  #limitsComing: Promise<void> = Promise.resolve();
  #speak = false;
  #asked = new WeakMap<Asked, CarDocument>();
  readonly sentence: SentenceView;

  constructor(host: BumplineLowering) {
    this.host = host;
    this.announcer = new Announcer(host);
    this.sentence = new SentenceView(this);
    this.#answers = new AnswerController(
      host,
      { bridge: sharedBridge, question: 'lowering', ready: ready<Asked>, finish },
      () => this.#answered(),
      () => this.cursor.set(this.#answers.answer!.drop, 'drop'),
    );
    this.#cars = new CarController(host, () => {
      this.ask();
      host.requestUpdate();
    });
    this.#loadHeights();
    this.#reader = new LightDomReader(host, (light) => {
      this.#light = light;
      this.#loadSource();
    });
    this.#addStyles = adoptedStyles(host, theme, ...firstStyles);
    host.addController(this.#cars);
    this.#bodyComing = this.#fetchBody();
  }

  async #fetchBody(): Promise<void> {
    try {
      await this.#ready;
      // The answer first: its bytes and its time come before those of the drawing.
      await this.#answers.settle();
      const { LoweringBody, bodyStyles } = await import('./lowering-body.js');
      this.#body = new LoweringBody(this);
      this.#addStyles(...bodyStyles);
      this.host.requestUpdate();
    } catch (error) {
      console.warn('Bumpline: the drawing could not be fetched; the sentence stands alone.', error);
    }
  }

  get model(): CarModel {
    return this.#cars.model;
  }

  get reading(): Reading {
    return readerOf(this.host);
  }

  /** Nothing where it would be about another car: the page's own cannot be read or makes no answer. */
  get answer(): LoweringAnswer | undefined {
    return this.#isBlocked ? undefined : this.#answers.answer;
  }

  get fault(): string | undefined {
    return this.#answers.fault;
  }

  /** What is wrong with the page's data that the answer rests on. */
  get #pageProblems(): Problem[] {
    const { car } = this.model;
    const setup = namedSetupProblem(car, this.host.setup);
    return [
      ...this.#cars.pageProblems('source', 'heights', 'limits', ...(restsOnReadings(car) ? (['setups'] as const) : [])),
      ...(setup ? [setup] : []),
    ];
  }

  get #isBlocked(): boolean {
    if (this.#pageProblems.length > 0) return true;
    const { answered, problems } = this.#answers;
    const before = answered && this.#asked.get(answered);
    return problems.length > 0 && before !== undefined && !isSameSource(before, this.car);
  }

  /** What an attribute takes and what it was given: told beside an answer, which it does not touch. */
  get unknownCar(): string | undefined {
    return this.#cars.unknownCar;
  }

  get notes(): Problem[] {
    return this.#body?.notes ?? [];
  }

  get problems(): Problem[] {
    const own = this.#pageProblems;
    // What cannot be read explains more than what the solver says of the value that stands in for it.
    const first = new Map<string, Problem>();
    for (const problem of [...own, ...this.drafts.problems, ...this.sentence.problems, ...this.#answers.problems]) {
      if (!first.has(problem.path)) first.set(problem.path, problem);
    }
    return [...first.values()];
  }

  get state(): ElementState {
    const { answer, fault } = this;
    if (fault) return 'fault';
    if (this.#isBlocked) return 'problem';
    // What was asked from the sentence's far end is no fault of the car's.
    if (this.problems.some(({ path }) => path !== 'change')) return answer ? 'stale' : 'problem';
    return answer ? completeness(this.car) : 'waiting';
  }

  /** What a page gives as its drop, where that is no length. */
  get unreadDrop(): string | undefined {
    const found = this.#pageProblems.find(({ path }) => path === 'drop');
    return found && String(found.value);
  }

  /** Resolves when the car and what the page says of it are known. */
  get #ready(): Promise<unknown> {
    return Promise.all([this.#cars.settle(), this.#reader.ready, this.#limitsComing]);
  }

  async settle(): Promise<void> {
    await this.#ready;
    await this.#answers.settle();
    await this.#bodyComing;
    await this.host.updateComplete;
    await this.#body?.settled;
  }

  willUpdate(changed: PropertyValues): void {
    if (changed.has('car') || changed.has('carId')) this.#cars.find();
    if (SOURCES.some((name) => changed.has(name))) this.#loadSource();
    if (HEIGHTS.some((name) => changed.has(name))) this.#loadHeights();
    if (changed.has('setup')) this.ask();
  }

  #loadSource(): void {
    const { corner, curve, coefficients, domain } = this.host;
    const source = sourceOf({ corner, curve, coefficients, domain, light: this.#light });
    const isGiven = SOURCES.some((name) => this.host[name] != null) || 'json' in this.#light || 'given' in this.#light;
    this.#cars.pageGives('source', (car) => carOf(source, car), isGiven, false, source.problems);
  }

  #loadHeights(): void {
    const heights = heightsOf(this.host);
    const isGiven = HEIGHTS.some((name) => this.host[name] != null);
    const recipe = (car: CarDocument) => withHeights(withoutHeights(car), heights.car, 'page');
    this.#cars.pageGives('heights', recipe, isGiven, false, heights.problems);
    this.#limitsComing = this.#loadLimits();
  }

  /** What reads them comes only where a page says any. */
  async #loadLimits(): Promise<void> {
    const { limits } = this.host;
    if (limits == null) return;
    const { limitsOf } = await import('./travel-ends.js');
    const { recipe, problems } = limitsOf(limits);
    this.#cars.pageGives('limits', recipe, true, true, problems);
  }

  ask(): void {
    // The table may still be on its way: an answer about the example would be the wrong one.
    if (!this.#cars.isReady || (!this.#reader.isReady && this.#cars.isPages)) return;
    if (this.#pageProblems.length > 0) return;
    const { car } = this;
    const request = loweringRequestOf(car);
    this.#asked.set(request, car);
    this.#answers.ask(request);
  }

  /** The car that the answer is of: while there are problems, not the one that is being edited. */
  get answeredCar(): CarDocument {
    const { answered } = this.#answers;
    return (answered && this.#asked.get(answered)) ?? this.car;
  }

  #answered(): void {
    const answer = this.#answers.answer!;
    this.cursor.set(answer.drop, 'drop');
    if (this.#speak) this.announcer.announce(spoken(answer, this.answeredCar, this.reading));
    this.host.dispatchEvent(new BumplineAnswerEvent(answer));
  }

  /** A user did something: tells the page, and has the next answer spoken. */
  changed(path: string, value: unknown): void {
    this.#speak = true;
    this.host.dispatchEvent(new BumplineChangeEvent(path, value));
  }

  setDrop(drop: number): void {
    this.drafts.drop('drop');
    this.changeDrop(drop);
    this.host.requestUpdate();
  }

  answered(): Promise<void> {
    return this.#answers.settle();
  }

  beginEdit(): void {
    this.#answers.beginEdit();
  }

  endEdit(): void {
    this.#answers.endEdit();
  }

  /** What undo would take back: a text that cannot be read goes first, so that no number goes with it. */
  get undoLabel(): string | undefined {
    const unread = this.drafts.lastUnread;
    if (unread === undefined) return this.model.undoLabel;
    return `“${this.drafts.text(unread)}”`;
  }

  undo(): void {
    const unread = this.drafts.lastUnread;
    if (unread === undefined) this.model.undo();
    else this.drafts.drop(unread);
    this.host.requestUpdate();
  }

  redo(): void {
    this.model.redo();
  }

  changeDrop(drop: number): void {
    if (drop === this.model.car.drop) return;
    this.model.update(`drop ${dropText(this.model.car.drop, this.reading)}`, (car) => ({ ...car, drop }), 'drop');
    this.changed('drop', drop);
  }

  render(): TemplateResult {
    const { state, answer, car } = this;
    return renderFrame({
      state,
      title: 'What lowering does to camber',
      corner: answeredCorner(car),
      owner: ownership(car),
      isUnread: state === 'problem' && !isUsers(car, 'corner'),
      hasAnswer: answer !== undefined,
      sentence: this.sentence.render(),
      caution: 'predicted',
      body: this.#body,
      announcer: this.announcer,
    });
  }

  /** A drag, or typing in the drop's field, is over. */
  endStep(): void {
    this.model.endStep();
    this.endEdit();
    this.host.requestUpdate();
  }

  /** What every part of the body works with. */
  get car(): CarDocument {
    return withNamedSetup(this.model.car, this.host.setup);
  }
}
