import { html, type PropertyValues, type TemplateResult } from 'lit';
import type { CarDocument } from '../../core/document/car.js';
import type { Problem } from '../../core/quantity/problem.js';
import { CarController } from '../car/car-controller.js';
import type { CarModel } from '../car/car-model.js';
import { BY_ANSWER, Cursor } from '../chart/cursor.js';
import { Drafts } from '../inputs/drafts.js';
import { type WatchedPage, withWholeCar } from '../page-data/whole-car.js';
import { adoptedStyles } from '../theme/adopted-styles.js';
import { firstStyles } from '../theme/first.styles.js';
import { theme } from '../theme/theme.js';
import { allProblems } from './all-problems.js';
import { Announcer } from './announce.js';
import { ComingBody } from './body-to-come.js';
import { displayOf } from './display-of.js';
import { BumplineAnswerEvent, BumplineChangeEvent } from './events.js';
import { noteChange } from './in-turn.js';
import { OnceAPage } from './once-a-page.js';
import { OutOfSight } from './out-of-sight.js';
import type { Display } from './sentence.js';
import { type LateBody, renderFrame, type SheetFrame } from './sheet-frame.js';
import type { SheetHost, SheetState, SheetView } from './sheet-view.js';

/** What keeps an element's question answered. */
export interface SheetAnswers<Answer, Request> {
  readonly answer?: Answer | undefined;
  /** The request that `answer` belongs to. */
  readonly answered?: Request | undefined;
  /** What is wrong with the newest request. */
  readonly problems: Problem[];
  readonly fault?: string | undefined;
  ask(request: Request): void;
  /** Resolves when the latest request has its answer, problem or fault. Never rejects. */
  settle(): Promise<void>;
  beginEdit(): void;
  endEdit(): void;
}

/**
 * The state of an element and its sentence: all that the first answer needs, as far as every element has it. The rest of the sheet is
 * the body, fetched when the first answer is under way. An element's own app says what it asks, of what, and what its sentence is; when
 * it is made it calls `begin`.
 */
export abstract class SheetApp<Host extends SheetHost, Answer, Request extends object>
  implements SheetView<Answer, Host>
{
  readonly host: Host;
  readonly cursor = new Cursor();
  readonly drafts = new Drafts();
  readonly announcer: Announcer;
  readonly addStyles: ReturnType<typeof adoptedStyles>;
  readonly #outOfSight: OutOfSight;
  readonly #general: OnceAPage;
  readonly cars: CarController;
  #isSpoken = false;
  /** Whether an answer has been rendered. */
  #isSaid = false;
  /** Whether the cursor still stands where an older answer put it. */
  #isCursorDue = false;
  readonly #late: ComingBody;
  readonly #asked = new WeakMap<Request, CarDocument>();

  constructor(host: Host) {
    this.host = host;
    this.announcer = new Announcer(host);
    this.cars = new CarController(host, () => {
      this.ask();
      host.requestUpdate();
    });
    this.addStyles = adoptedStyles(host, theme, ...firstStyles);
    this.#outOfSight = new OutOfSight(host, () => this.#body?.painted);
    this.#general = new OnceAPage(host);
    this.#late = new ComingBody(host, this.addStyles, this.#outOfSight, () => this.importBody());
  }

  protected abstract readonly answers: SheetAnswers<Answer, Request>;
  protected abstract readonly page: WatchedPage;
  /** What a car asks. */
  protected abstract requestOf(car: CarDocument): Request;
  /** Whether an older answer would be about another car than the one whose problems are told now. */
  protected abstract isOther(asked: Request, before: CarDocument): boolean;
  /** What is wrong with the page's data that the answer rests on. */
  protected abstract get pageProblems(): Problem[];
  /** Whether what the answer rests on is the user's, so that no page's data can be at fault. */
  abstract get isOwn(): boolean;
  /** How much of what the answer rests on is given. */
  abstract get completeness(): 'example' | 'incomplete' | 'ready';
  /** The travel that the cursor rests at, mm. */
  protected abstract get rest(): number;
  abstract get spoken(): string;
  /** Fetches the body, and says how it is made. */
  protected abstract importBody(): Promise<() => LateBody>;
  abstract get frame(): SheetFrame;

  /** Of fields in the sentence that ask in another way, besides what is in the drafts. */
  protected get sentenceProblems(): Problem[] {
    return [];
  }

  /** Whether a problem leaves the answer as it is: it is of what was asked besides. */
  protected isAside(_problem: Problem): boolean {
    return false;
  }

  /** Whether there is enough to ask at all. */
  protected get isEnough(): boolean {
    return true;
  }

  /** Whether all that the answer rests on has come: an answer about the example would be the wrong one. */
  protected get isKnown(): boolean {
    return this.cars.isReady && (this.page.isReady || !this.cars.isPages);
  }

  /** Resolves when it has. */
  protected get ready(): Promise<unknown> {
    return Promise.all([this.cars.settle(), this.page.ready]);
  }

  protected begin(): void {
    this.host.addController(withWholeCar(this.page, this.cars));
    this.host.addController(this.cars);
    void this.#getBody();
  }

  async #getBody(): Promise<void> {
    await this.ready;
    // The answer first: its bytes and its time come before those of chart and drawing.
    await this.answers.settle();
    await this.#late.shown();
    // An answer out of sight moves no place on the page.
    this.model.address?.goToPlace();
  }

  /** Makes everything whose files have come ready for paper: the next rendering is whole. */
  print(): void {
    this.#late.show();
    this.#body?.hurry();
    this.#body?.print?.();
    this.show();
    this.host.requestUpdate();
  }

  get #body(): LateBody | undefined {
    return this.#late.body;
  }

  /** Fetches again what did not come: the connection is back, or the element is. */
  retry(): void {
    this.cars.retry();
    if (this.isUnread) this.page.again();
    this.#late.retry();
    if (this.fault) this.ask();
  }

  get model(): CarModel {
    return this.cars.model;
  }

  get car(): CarDocument {
    return this.model.car;
  }

  get display(): Display {
    return displayOf(this.host);
  }

  get answer(): Answer | undefined {
    return this.isEnough && !this.#isBlocked ? this.answers.answer : undefined;
  }

  get answeredCar(): CarDocument {
    const { answered } = this.answers;
    return (answered && this.#asked.get(answered)) ?? this.car;
  }

  /** The page's own cannot be read or makes no answer: whatever stood there before is of another car. */
  get #isBlocked(): boolean {
    if (this.pageProblems.length > 0) return true;
    const { answered, problems } = this.answers;
    return problems.length > 0 && answered !== undefined && this.isOther(answered, this.answeredCar);
  }

  get isUnread(): boolean {
    return this.state === 'problem' && !this.isOwn;
  }

  get unknownCar(): string | undefined {
    return this.cars.unknownCar;
  }

  /** What the next rendering waits for, out of sight; the first answer for nothing, because what stands there before is the page's. */
  get wait(): Promise<void> | undefined {
    return this.#isSaid ? this.#outOfSight.wait : undefined;
  }

  /** Has what waits come at once. */
  show(): void {
    this.#outOfSight.show();
  }

  get notes(): Problem[] {
    return this.#body?.notes ?? [];
  }

  get fault(): string | undefined {
    return this.answers.fault;
  }
  get problems(): Problem[] {
    const { pageProblems, answers } = this;
    const isAsked = this.isEnough && pageProblems.length === 0;
    return allProblems(pageProblems, this.drafts.problems, this.sentenceProblems, isAsked ? answers.problems : []);
  }

  get state(): SheetState {
    if (this.fault) return 'fault';
    if (this.#isBlocked) return 'problem';
    if (!this.isEnough) return 'incomplete';
    const { answer } = this;
    if (this.problems.some((problem) => !this.isAside(problem))) return answer ? 'stale' : 'problem';
    return answer ? this.completeness : 'waiting';
  }

  async settle(): Promise<void> {
    await this.ready;
    await this.answers.settle();
    await this.#late.fetched();
    this.#late.show();
    await this.host.updateComplete;
    await this.#body?.settled;
    await this.#body?.painted;
  }

  willUpdate(changed: PropertyValues): void {
    if (changed.has('car') || changed.has('carId')) this.cars.find();
    if (this.#isCursorDue) this.#moveCursor();
  }

  ask(): void {
    if (!this.isKnown || !this.isEnough || this.pageProblems.length > 0) return;
    const { car } = this;
    const request = this.requestOf(car);
    this.#asked.set(request, car);
    this.answers.ask(request);
  }

  /** A good answer has come. */
  protected take(): void {
    this.host.speak();
    this.placeCursor();
    if (this.#isSpoken) this.announcer.announce(this.spoken);
    this.host.dispatchEvent(new BumplineAnswerEvent(this.answerOfPage));
  }

  /** The answer as the page gets it. */
  protected get answerOfPage(): unknown {
    return this.answers.answer;
  }

  /** Drawing and chart follow the cursor, so out of sight it moves when they are drawn. */
  protected placeCursor(): void {
    this.#isCursorDue = this.wait !== undefined;
    if (!this.#isCursorDue) this.#moveCursor();
  }

  #moveCursor(): void {
    this.#isCursorDue = false;
    if (this.answers.answer !== undefined) this.cursor.set(this.rest, BY_ANSWER);
  }

  answered(): Promise<void> {
    return this.answers.settle();
  }

  speak(): void {
    this.#isSpoken = true;
  }

  change(path: string, label: string, recipe: (car: CarDocument) => CarDocument, step?: string): void {
    this.speak();
    noteChange();
    this.model.update(label, recipe, step);
    this.changed(path, this.valueOf(path));
  }

  /** What the page is told of a change. */
  protected valueOf(path: string): unknown {
    return this.car[path as keyof CarDocument];
  }

  changed(path: string, value: unknown): void {
    this.speak();
    this.host.dispatchEvent(new BumplineChangeEvent(path, value));
  }

  beginEdit(): void {
    this.answers.beginEdit();
  }

  endEdit(): void {
    this.answers.endEdit();
  }

  endDrag(): void {
    this.model.endStep();
    this.endEdit();
  }

  endStep(): void {
    this.endDrag();
    this.host.requestUpdate();
  }

  render(): TemplateResult {
    // While a link's car is on its way, every figure would be of another.
    if (!this.cars.isReady) return html``;
    this.#isSaid ||= this.answer !== undefined;
    return renderFrame(this, this.frame, this.#body ?? this.#late.state, this.#general);
  }
}
