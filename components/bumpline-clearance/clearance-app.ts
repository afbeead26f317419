import type { PropertyValues, TemplateResult } from 'lit';
import type { DrawnClearance } from '../../core/answers/clearance-questions.js';
import { clearanceRequestOf } from '../../core/answers/fit-request.js';
import type { CarDocument } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import { answeredCorner } from '../../core/document/setup-in-use.js';
import type { Problem } from '../../core/quantity/problem.js';
import { planeOf } from '../../core/wheel/wheel.js';
import { adoptedStyles } from '../shared/adopted-styles.js';
import { Announcer } from '../shared/announce.js';
import { CarController, restsOnReadings } from '../shared/car-controller.js';
import type { CarModel } from '../shared/car-model.js';
import { Cursor } from '../shared/cursor.js';
import { Drafts } from '../shared/drafts.js';
import { BumplineAnswerEvent, BumplineChangeEvent } from '../shared/events.js';
import { firstStyles } from '../shared/first.styles.js';
import { type LightDom, LightDomReader } from '../shared/light-dom.js';
import { readerOf } from '../shared/reader-of.js';
import { isSameFit, isSameSource } from '../shared/same-car.js';
import { type Reader, show } from '../shared/sentence.js';
import { renderFrame } from '../shared/sheet-frame.js';
import { theme } from '../shared/theme.js';
import type { BumplineClearance } from './bumpline-clearance.js';
import { type ElementState, FIRST, type Told } from './bumpline-clearance.words.js';
import type { ClearanceBody } from './clearance-body.js';
import { ClearanceSentence } from './clearance-sentence.js';
import { pageFit } from './page-fit.js';
import { type Asked, TwoAnswers } from './two-answers.js';
import { withPlane } from './wheel-edits.js';
import { completeness, ownership } from './whose-car.words.js';

const PAGE = ['fit', 'limits', 'drop', 'wheelBefore', 'wheelAfter', 'lock'] as const;

/** The element's state and its sentence: all that the first answer needs. The rest of the sheet is the body. */
export class ClearanceApp {
  readonly host: BumplineClearance;
  readonly cursor = new Cursor();
  readonly drafts = new Drafts();
  readonly announcer: Announcer;
  readonly addStyles: ReturnType<typeof adoptedStyles>;
  readonly #cars: CarController;
  readonly #reader: LightDomReader;
  readonly #answers: TwoAnswers;
  readonly #sentence: ClearanceSentence;
  #light: LightDom = { problems: [] };
  #asked = new WeakMap<Asked, CarDocument>();
  #body: ClearanceBody | undefined;
  #bodyComing: Promise<void>;
  #speak = false;
  #isDragged = false;
  #selected: number | undefined;

  constructor(host: BumplineClearance) {
    this.host = host;
    this.announcer = new Announcer(host);
    this.#answers = new TwoAnswers(
      host,
      () => this.#answered(),
      () => this.#place(),
    );
    this.#cars = new CarController(host, () => {
      this.ask();
      host.requestUpdate();
    });
    this.#sentence = new ClearanceSentence(this);
    this.addStyles = adoptedStyles(host, theme, ...firstStyles);
    this.#reader = new LightDomReader(host, (light) => this.#loadPage(light));
    host.addController(this.#cars);
    this.#bodyComing = this.#fetchBody();
  }

  async #fetchBody(): Promise<void> {
    try {
      await this.#ready;
      await this.#answers.settle();
      const { ClearanceBody, bodyStyles } = await import('./clearance-body.js');
      this.#body = new ClearanceBody(this);
      this.addStyles(...bodyStyles);
      this.host.requestUpdate();
    } catch (error) {
      console.warn('Bumpline: the drawing could not be fetched; the sentence stands alone.', error);
    }
  }

  get model(): CarModel {
    return this.#cars.model;
  }

  get car(): CarDocument {
    return this.model.car;
  }

  get reading(): Reader {
    return readerOf(this.host);
  }

  /** Whether the steering was looked at for what is shown. */
  get isComplete(): boolean {
    return this.#answers.isWhole;
  }

  /** Nothing where it would be about another car or its wheels: the page's own cannot be read or make no answer. */
  get answer(): DrawnClearance | undefined {
    return this.#isBlocked ? undefined : this.#answers.answer;
  }

  /** What is wrong with the page's data that the answer rests on. */
  get #pageProblems(): Problem[] {
    const ofReadings = restsOnReadings(this.car) ? (['setups'] as const) : [];
    return this.#cars.pageProblems('fit', 'limits', 'source', 'heights', ...ofReadings);
  }

  get #isBlocked(): boolean {
    if (this.#pageProblems.length > 0) return true;
    const before = this.asked && this.#asked.get(this.asked);
    const isOther = before !== undefined && !(isSameSource(before, this.car) && isSameFit(before, this.car));
    return this.#answers.problems.length > 0 && isOther;
  }

  /** Whether the page's own data is what cannot be read. */
  get isUnread(): boolean {
    return this.state === 'problem' && !isUsers(this.car, 'fit');
  }

  get unknownCar(): string | undefined {
    return this.#cars.unknownCar;
  }

  get notes(): Problem[] {
    return this.#body?.notes ?? [];
  }

  /** What the answer was asked with. */
  get asked(): Asked | undefined {
    return this.#answers.answered;
  }

  /** The car that the answer is of: while there are problems, not the one that is being edited. */
  get answeredCar(): CarDocument {
    const { asked } = this;
    return (asked && this.#asked.get(asked)) ?? this.car;
  }

  get fault(): string | undefined {
    return this.#answers.fault;
  }

  get problems(): Problem[] {
    const own = this.#pageProblems;
    const first = new Map<string, Problem>();
    for (const problem of [...own, ...this.drafts.problems, ...this.#answers.problems]) {
      if (!first.has(problem.path)) first.set(problem.path, problem);
    }
    return [...first.values()];
  }

  get state(): ElementState {
    if (this.fault) return 'fault';
    if (this.#isBlocked) return 'problem';
    if (this.problems.length > 0) return this.answer ? 'stale' : 'problem';
    return this.answer ? completeness(this.car) : 'waiting';
  }

  /** How far out the wheel that is asked about stands from the one that was on, mm. */
  get plane(): number {
    const { before, after } = clearanceRequestOf(this.car);
    return planeOf(after) - planeOf(before);
  }

  /** The place that is drawn: the one that was chosen, else the one that decides. */
  get selected(): number | undefined {
    const { answer } = this;
    if (!answer) return undefined;
    return this.#selected !== undefined && this.#selected < answer.places.length ? this.#selected : answer.worst;
  }

  select(place: number): void {
    this.#selected = place;
    this.#place();
    this.host.requestUpdate();
  }

  get #ready(): Promise<unknown> {
    return Promise.all([this.#cars.settle(), this.#reader.ready]);
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
    if (PAGE.some((name) => changed.has(name))) this.#loadPage();
  }

  #loadPage(light = this.#light): void {
    this.#light = light;
    const { recipe, isGiven, problems } = pageFit(this.host, this.#light.json);
    const { given, problems: ofLight } = this.#light;
    // A table of points or measurements belongs into the element that draws them; here it would be passed over in silence.
    const strange: Problem[] = given ? [{ code: 'wrong-shape', path: 'table', value: 'points or measurements' }] : [];
    this.#cars.pageGives('fit', recipe, isGiven, true, [...problems, ...(ofLight.length > 0 ? ofLight : strange)]);
  }

  ask(): void {
    // What a script says may still be on its way: an answer about the example would be the wrong one.
    if (!this.#cars.isReady || (!this.#reader.isReady && this.#cars.isPages)) return;
    if (this.#pageProblems.length > 0) return;
    const { car } = this;
    const request = clearanceRequestOf(car);
    this.#asked.set(request, car);
    this.#answers.ask(request, this.#isDragged);
  }

  #answered(): void {
    this.#place();
    if (!this.isComplete) return;
    if (this.#speak) this.announcer.announce(this.#sentence.spoken());
    this.host.dispatchEvent(new BumplineAnswerEvent(this.answer));
  }

  /** The cursor rests where the chosen place is nearest. */
  #place(): void {
    const { answer, selected } = this;
    if (answer)
      this.cursor.set(selected === undefined ? answer.drop : answer.places[selected]!.decisive.travel, 'drop');
  }

  get told(): Told | undefined {
    const { answer, asked } = this;
    if (!answer || !asked) return undefined;
    const { places, isLeft, lock } = asked;
    return { answer, places, isLeft, lock, isSteering: answer.isSteered };
  }

  /** A user did something: tells the page, and has the next answer spoken. */
  changed(path: string, value: unknown): void {
    this.#speak = true;
    this.host.dispatchEvent(new BumplineChangeEvent(path, value));
  }

  changeDrop(drop: number): void {
    if (drop === this.car.drop) return;
    this.model.update(`drop ${show(this.car.drop, 'drop', this.reading)}`, (car) => ({ ...car, drop }), 'drop');
    this.changed('drop', drop);
  }

  /** The slider is moved. */
  dragPlane(plane: number): void {
    this.drafts.drop('plane');
    this.#isDragged = true;
    this.changePlane(plane);
    this.#isDragged = false;
    this.host.requestUpdate();
  }

  changePlane(plane: number): void {
    const before = this.plane;
    if (plane === before) return;
    this.model.update(`wheels ${show(before, 'offset', this.reading)} out`, (car) => withPlane(car, plane), 'plane');
    this.changed('plane', plane);
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

  /** A drag, or typing in the sentence, is over. */
  endStep(): void {
    this.model.endStep();
    this.endEdit();
    this.host.requestUpdate();
  }

  /** What undo would take back: a text that cannot be read goes first, so that no number goes with it. */
  get undoLabel(): string | undefined {
    const unread = this.drafts.lastUnread;
    return unread === undefined ? this.model.undoLabel : `“${this.drafts.text(unread)}”`;
  }

  undo(): void {
    const unread = this.drafts.lastUnread;
    if (unread === undefined) this.model.undo();
    else this.drafts.drop(unread);
    this.host.requestUpdate();
  }

  /** Another unit may make sense of a text that the one before did not. */
  readAgain(): void {
    this.#sentence.readAgain();
  }

  render(): TemplateResult {
    const { state, answer, car, isUnread } = this;
    return renderFrame({
      state,
      title: FIRST.title,
      corner: answeredCorner(car),
      owner: ownership(car),
      isUnread,
      hasAnswer: answer !== undefined,
      sentence: this.#sentence.render(),
      caution: 'clearByHand',
      body: this.#body,
      announcer: this.announcer,
    });
  }
}
