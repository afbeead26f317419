import type { PropertyValues, TemplateResult } from 'lit';
import type { ReadingsAnswer, ReadingsRequest } from '../../core/answers/readings.js';
import type { CarDocument } from '../../core/document/car.js';
import type { Setup } from '../../core/document/setup.js';
import { setupOf, withPageSetups, withSetup, withShown } from '../../core/document/setups.js';
import type { Problem } from '../../core/quantity/problem.js';
import { fit } from '../../core/worker/layers/fit.generated.js';
import { adoptedStyles } from '../shared/adopted-styles.js';
import { Announcer } from '../shared/announce.js';
import { AnswerController } from '../shared/answer-controller.js';
import { CarController } from '../shared/car-controller.js';
import type { CarModel } from '../shared/car-model.js';
import { Cursor } from '../shared/cursor.js';
import { Drafts } from '../shared/drafts.js';
import { BumplineAnswerEvent, BumplineChangeEvent } from '../shared/events.js';
import { firstStyles } from '../shared/first.styles.js';
import { readerOf } from '../shared/reader-of.js';
import type { Reader } from '../shared/sentence.js';
import { SentenceField } from '../shared/sentence-field.js';
import { renderFrame } from '../shared/sheet-frame.js';
import { theme } from '../shared/theme.js';
import type { BumplineReadings } from './bumpline-readings.js';
import { type ElementState, FEWEST_HEIGHTS, FIRST, overText, ownership, spoken } from './bumpline-readings.words.js';
import { PageReadings } from './page-readings.js';
import type { ReadingsBody } from './readings-body.js';
import type { ReadingsHost } from './readings-host.js';
import { renderSentence } from './readings-sentence.js';

/** The element's state and its sentence: all that the first answer needs. The rest of the sheet is the body. */
export class ReadingsApp implements ReadingsHost {
  readonly host: BumplineReadings;
  readonly cursor = new Cursor();
  readonly drafts = new Drafts();
  readonly announcer: Announcer;
  readonly addStyles: ReturnType<typeof adoptedStyles>;
  readonly page: PageReadings;
  readonly over: SentenceField;
  readonly #cars: CarController;
  #answers: AnswerController<'readings'>;
  #body: ReadingsBody | undefined;
  #bodyComing: Promise<void>;
  #speak = false;
  #asked = new WeakMap<ReadingsRequest, Setup>();
  /** What a user asked for in the sentence; else the page's, else what the readings reach to. */
  #over: number | undefined;
  #degree: number | undefined;

  constructor(host: BumplineReadings) {
    this.host = host;
    this.announcer = new Announcer(host);
    this.#answers = new AnswerController(host, { question: 'readings', layers: [fit] }, () => this.#answered());
    this.#cars = new CarController(host, () => {
      this.ask();
      host.requestUpdate();
    });
    this.page = new PageReadings(host, () => this.#loadPage());
    host.addController(this.page);
    this.over = new SentenceField({
      host,
      drafts: this.drafts,
      path: 'over',
      label: FIRST.over,
      quantity: 'travel',
      reader: () => this.reading,
      value: () => this.#overShown,
      text: () => overText(this.#overShown, this.reading),
      change: (over) => this.#setOver(over),
      cancel: () => {},
      begin: () => this.#answers.beginEdit(),
      end: () => {
        this.#answers.endEdit();
        host.requestUpdate();
      },
    });
    this.addStyles = adoptedStyles(host, theme, ...firstStyles);
    host.addController(this.#cars);
    this.#bodyComing = this.#fetchBody();
  }

  async #fetchBody(): Promise<void> {
    try {
      await this.#ready;
      // The answer first: its bytes and its time come before those of the chart.
      await this.#answers.settle();
      const { ReadingsBody, bodyStyles } = await import('./readings-body.js');
      this.#body = new ReadingsBody(this);
      this.addStyles(...bodyStyles);
      this.host.requestUpdate();
    } catch (error) {
      console.warn('Bumpline: the chart could not be fetched; the sentence stands alone.', error);
    }
  }

  get model(): CarModel {
    return this.#cars.model;
  }

  get car(): CarDocument {
    return this.model.car;
  }

  get setup(): Setup {
    return setupOf(this.car).setup;
  }

  get isOwn(): boolean {
    return setupOf(this.car).isOwn;
  }

  get reading(): Reader {
    return readerOf(this.host);
  }

  get answer(): ReadingsAnswer | undefined {
    // The answer to readings that are gone would be somebody else's.
    return this.#isEnough && !this.#isBlocked ? this.#answers.answer : undefined;
  }

  /** What is wrong with the page's readings, where it is them that are shown. */
  get #pageProblems(): Problem[] {
    const { by, setup } = setupOf(this.car);
    const told = [...this.#cars.pageProblems('setups'), ...(this.#over === undefined ? this.page.overProblems : [])];
    if (told.length > 0 || by !== 'page' || this.#isEnough) return told;
    return [{ code: 'too-few', path: 'readings', value: setup.readings.length, limit: FEWEST_HEIGHTS }];
  }

  /** Whether an answer would be about other readings than those that are to be shown. */
  get #isBlocked(): boolean {
    if (this.#pageProblems.length > 0) return true;
    return this.#answers.problems.length > 0 && setupOf(this.car).by === 'page' && this.answeredSetup !== this.setup;
  }

  /** Whether the page's own data is what cannot be read. */
  get isUnread(): boolean {
    return this.state === 'problem' && !this.isOwn;
  }

  get unknownCar(): string | undefined {
    return this.#cars.unknownCar;
  }

  get notes(): Problem[] {
    return this.#body?.notes ?? [];
  }

  get fault(): string | undefined {
    return this.#answers.fault;
  }

  get problems(): Problem[] {
    const own = this.#pageProblems;
    const ofAnswer = this.#isEnough && own.length === 0 ? this.#answers.problems : [];
    return [...own, ...this.drafts.problems, ...ofAnswer];
  }

  get state(): ElementState {
    const { answer, fault } = this;
    if (fault) return 'fault';
    if (this.#isBlocked) return 'problem';
    if (!this.#isEnough) return 'incomplete';
    if (this.problems.length > 0) return answer ? 'stale' : 'problem';
    if (!answer) return 'waiting';
    return setupOf(this.car).by === 'example' ? 'example' : 'ready';
  }

  /** Whether there are heights enough to ask for a curve at all. */
  get #isEnough(): boolean {
    const { readings } = this.setup;
    return new Set(readings.map(({ travel }) => travel)).size >= FEWEST_HEIGHTS;
  }

  /** Resolves when the car and what the page says of it are known. */
  get #ready(): Promise<unknown> {
    return Promise.all([this.#cars.settle(), this.page.ready]);
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
    if (changed.has('quantity')) this.page.look();
    if (['readings', 'quantity', 'degree'].some((name) => changed.has(name))) this.#loadPage();
    if (changed.has('over')) this.ask();
  }

  #loadPage(): void {
    const { setups, problems } = this.page;
    const recipe = (car: CarDocument) => withPageSetups(car, setups);
    this.#cars.pageGives('setups', recipe, setups !== undefined, true, problems);
  }

  get #overShown(): number {
    return this.#over ?? this.page.over ?? this.answer?.over ?? 25;
  }

  #setOver(over: number): void {
    this.#over = over;
    this.#speak = true;
    this.ask();
    this.host.requestUpdate();
    this.host.dispatchEvent(new BumplineChangeEvent('over', over));
  }

  ask(): void {
    if (!this.#cars.isReady || (!this.page.isReady && this.#cars.isPages) || !this.#isEnough) return;
    if (this.#pageProblems.length > 0) return;
    const { degree } = this;
    const { quantity, readings, setAside, doubts } = this.setup;
    const request: ReadingsRequest = {
      quantity,
      readings,
      doubts,
      setAside,
      degree,
      over: this.#over ?? this.page.over,
    };
    this.#asked.set(request, this.setup);
    this.#answers.ask(request);
  }

  #answered(): void {
    const answer = this.#answers.answer!;
    this.cursor.set(answer.over, 'over');
    if (this.#speak) this.announcer.announce(spoken(answer, this.reading));
    this.host.dispatchEvent(new BumplineAnswerEvent(answer));
  }

  edit(label: string, recipe: (setup: Setup) => Setup, step?: string): void {
    this.change('readings', label, (car) => withSetup(car, recipe), step);
  }

  /** Changes what is shown, whoever gave it: of somebody else's readings the user gets a set with the change in it, which says whose it was. */
  editShown(label: string, recipe: (setup: Setup) => Setup): void {
    this.change('readings', label, (car) => withShown(car, recipe));
  }

  readonly keepsAll = false;

  changeSets(label: string, recipe: (car: CarDocument) => CarDocument): void {
    this.change('setups', label, recipe);
  }

  /** Something a user did: one step of undo, told to the page, and the next answer is spoken. */
  change(path: string, label: string, recipe: (car: CarDocument) => CarDocument, step?: string): void {
    this.#speak = true;
    this.model.update(label, recipe, step);
    this.host.dispatchEvent(new BumplineChangeEvent(path, this.setup));
  }

  get degree(): number | undefined {
    return this.setup.degree ?? (this.isOwn ? undefined : this.#degree);
  }

  /** Of readings that are not the user's it is a way of looking at them, and changes nothing of theirs. */
  setDegree(degree: number | undefined): void {
    if (this.isOwn) {
      this.edit('degree', ({ degree: _, ...rest }) => (degree === undefined ? rest : { ...rest, degree }));
      return;
    }
    this.#degree = degree;
    this.ask();
    this.host.requestUpdate();
  }

  endStep(): void {
    this.model.endStep();
  }

  step(way: 'undo' | 'redo'): void {
    this.#speak = true;
    this.model[way]();
  }

  /** The set that the answer is of: while there are problems, not the one that is being edited. */
  get answeredSetup(): Setup | undefined {
    const { answered } = this.#answers;
    return answered && this.#asked.get(answered);
  }

  render(): TemplateResult {
    const { state, answer } = this;
    const { setup } = this;
    return renderFrame({
      state,
      title: FIRST.title,
      corner: setup.cornerName,
      owner: ownership(this.car),
      isUnread: this.isUnread,
      hasAnswer: answer !== undefined,
      sentence: renderSentence(this),
      caution: 'predicted',
      body: this.#body,
      announcer: this.announcer,
    });
  }
}
