import type { PropertyValues, TemplateResult } from 'lit';
import { type At, type CompareRequest, type Comparison, compareCurves, netChange } from '../../core/answers/compare.js';
import type { Curve } from '../../core/curve/curve.js';
import type { CarDocument } from '../../core/document/car.js';
import type { Setup } from '../../core/document/setup.js';
import { setupsBy } from '../../core/document/setup-in-use.js';
import { withPageSetups } from '../../core/document/setups.js';
import { InputError, type Problem } from '../../core/quantity/problem.js';
import { CarCurves } from '../car/car-curves.js';
import { adoptedStyles } from '../shared/adopted-styles.js';
import { Announcer } from '../shared/announce.js';
import { CarController } from '../shared/car-controller.js';
import type { CarModel } from '../shared/car-model.js';
import { Cursor } from '../shared/cursor.js';
import { Drafts } from '../shared/drafts.js';
import { BumplineAnswerEvent, BumplineChangeEvent } from '../shared/events.js';
import { firstStyles } from '../shared/first.styles.js';
import { readerOf } from '../shared/reader-of.js';
import type { Reader } from '../shared/sentence.js';
import { renderFrame } from '../shared/sheet-frame.js';
import { theme } from '../shared/theme.js';
import type { BumplineCompare } from './bumpline-compare.js';
import { type ElementState, FIRST, ownership, type Told } from './bumpline-compare.words.js';
import { ChosenCells } from './chosen-cells.js';
import type { CompareBody } from './compare-body.js';
import { CompareSentence, spokenOf } from './compare-sentence.js';
import { compareRequest, heightsOf, overOf, requestProblems, settingProblems } from './compare-settings.js';
import { givenCurves, isSame, setCurves } from './compared-curves.js';
import { type ComparedSets, comparedSets, firstCells } from './compared-sets.js';
import { PageSetups } from './page-setups.js';
import { TravelEnd } from './travel-end.js';

export interface Answered {
  comparison: Comparison;
  request: CompareRequest;
  names: readonly string[];
}

/** The element's state and its sentence. The curves come from the core of readings; comparing them is a matter of a millisecond. */
export class CompareApp {
  readonly host: BumplineCompare;
  readonly cursor = new Cursor();
  readonly drafts = new Drafts();
  readonly announcer: Announcer;
  readonly addStyles: ReturnType<typeof adoptedStyles>;
  readonly page: PageSetups;
  readonly #cars: CarController;
  readonly sentence: CompareSentence;
  #curves: { setups: readonly Setup[]; curves: Curve[] } | undefined;
  #fitting: Promise<void> | undefined;
  #body: CompareBody | undefined;
  #bodyComing: Promise<void>;
  #problems: Problem[] = [];
  #speak = false;
  readonly #chosen = new ChosenCells();
  readonly #travelEnd = new TravelEnd(() => this.#askAgain());
  #answer: Answered | undefined;
  /** What was compared in it. */
  #answered: { setups: readonly Setup[]; curves: unknown } | undefined;
  fault: string | undefined;

  constructor(host: BumplineCompare) {
    this.host = host;
    this.announcer = new Announcer(host);
    this.#cars = new CarController(host, () => this.#askAgain());
    this.page = new PageSetups(host, () => this.#loadPage());
    this.sentence = new CompareSentence(this);
    this.addStyles = adoptedStyles(host, theme, ...firstStyles);
    host.addController(this.page);
    host.addController(this.#cars);
    this.#bodyComing = this.#fetchBody();
  }

  async #fetchBody(): Promise<void> {
    try {
      await this.#ready;
      await this.#fitting;
      const { CompareBody, bodyStyles } = await import('./compare-body.js');
      this.#body = new CompareBody(this);
      this.addStyles(...bodyStyles);
      this.host.requestUpdate();
    } catch (error) {
      console.warn('Bumpline: the table could not be fetched; the sentence stands alone.', error);
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

  /** The sets of camber that are compared, and whose they are. */
  get compared(): ComparedSets {
    return comparedSets(this.car, this.page.example);
  }

  get setups(): readonly Setup[] {
    return this.compared.sets;
  }

  get isExample(): boolean {
    return !this.host.curves && this.compared.isExample;
  }

  /** What is compared, by name. */
  get named(): readonly { name: string }[] {
    return this.host.curves ?? this.setups;
  }

  get heights(): readonly number[] {
    return heightsOf(this.car, this.host);
  }

  get over(): number {
    return overOf(this.car, this.host);
  }

  /** Which two cells are compared: of those that are answered, while others are still coming or have just gone. */
  get cells(): { from: At; to: At } {
    const { curves, heights } = this.answer?.request ?? { curves: this.named, heights: this.heights };
    return this.#chosen.within(
      Math.min(curves.length, this.named.length),
      Math.min(heights.length, this.heights.length),
      firstCells(this.host.curves ? { sets: [], yours: 0, pages: 0 } : this.compared),
    );
  }

  /** Nothing where it would be about other parts: the page's own cannot be read or make no answer. */
  get answer(): Answered | undefined {
    return this.#isBlocked ? undefined : this.#answer;
  }

  /** What is wrong with the page's sets, heights and limits, where it is them that are compared. */
  get #pageProblems(): Problem[] {
    const ofSets = this.host.curves ? [] : this.#cars.pageProblems('setups');
    return [...ofSets, ...this.#cars.pageProblems('limits'), ...settingProblems(this.car, this.host)];
  }

  /** What a page gives as its bump, where that is no length. */
  get unreadOver(): string | undefined {
    return this.#pageProblems.find(({ path }) => path === 'over')?.value as string | undefined;
  }

  get #isBlocked(): boolean {
    if (this.#pageProblems.length > 0) return true;
    // Beside what is wrong now, an older answer may stand only of a user's own sets, or of the same as now.
    const { curves } = this.host;
    if (this.#problems.length === 0 || !this.#answered) return false;
    if (curves || this.#answered.curves) return curves !== this.#answered.curves;
    return setupsBy(this.car) !== 'user' && !isSame(this.#answered.setups, this.setups);
  }

  get unknownCar(): string | undefined {
    return this.#cars.unknownCar;
  }

  get notes(): Problem[] {
    return this.#body?.notes ?? [];
  }

  get problems(): Problem[] {
    const own = this.#pageProblems;
    return [...own, ...this.drafts.problems, ...(own.length > 0 ? [] : this.#problems)];
  }

  get state(): ElementState {
    if (this.fault) return 'fault';
    if (this.#isBlocked) return 'problem';
    if (this.problems.length > 0) return this.answer ? 'stale' : 'problem';
    if (!this.answer) return 'waiting';
    if (this.isExample) return 'example';
    return this.named.length > 1 ? 'ready' : 'incomplete';
  }

  get #ready(): Promise<unknown> {
    return Promise.all([this.#cars.settle(), this.page.ready]);
  }

  async settle(): Promise<void> {
    await this.#ready;
    while (this.#fitting) await this.#fitting;
    await Promise.all([this.#travelEnd.coming, this.#bodyComing]);
    await this.#body?.settled;
    await this.host.updateComplete;
  }

  willUpdate(changed: PropertyValues): void {
    if (changed.has('car') || changed.has('carId')) this.#cars.find();
    if (changed.has('setups')) this.#loadPage();
    if (['over', 'heights', 'curves'].some((name) => changed.has(name))) this.ask();
  }

  #loadPage(): void {
    const { setups, problems } = this.page;
    const recipe = (car: CarDocument) => withPageSetups(car, setups);
    this.#cars.pageGives('setups', recipe, setups !== undefined && setups.length > 0, true, problems);
  }

  #askAgain(): void {
    this.ask();
    this.host.requestUpdate();
  }

  /** Compares at once where the curves are known; else fits them first. */
  ask(): void {
    if (this.#pageProblems.length > 0) return;
    if (this.host.curves) {
      this.#compare();
      return;
    }
    if (!this.#cars.isReady || (!this.page.isReady && this.#cars.isPages)) return;
    const { setups } = this;
    if (this.#curves && isSame(this.#curves.setups, setups)) {
      this.#compare();
      return;
    }
    const fitting = this.#fit(setups).finally(() => {
      if (this.#fitting === fitting) this.#fitting = undefined;
      this.host.requestUpdate();
    });
    this.#fitting = fitting;
  }

  async #fit(setups: readonly Setup[]): Promise<void> {
    try {
      const curves = await setCurves(CarCurves.of(this.model), setups);
      // While they were fitted others may have come.
      if (!isSame(setups, this.setups)) return;
      this.#curves = { setups, curves };
      this.fault = undefined;
      this.#compare();
    } catch (error) {
      if (error instanceof InputError) this.#problems = error.problems;
      else this.fault = error instanceof Error ? error.message : String(error);
    }
  }

  #compare(): void {
    const { curves: given } = this.host;
    const solid = this.#travelEnd.of(this.car);
    try {
      const curves = given
        ? givenCurves(CarCurves.of(this.model), given)
        : this.#curves!.curves.map((curve) => ({ curve }));
      const request = compareRequest({ curves, heights: this.heights, over: this.over, solid });
      this.#answer = { comparison: compareCurves(request), request, names: this.named.map(({ name }) => name) };
      this.#answered = { setups: this.setups, curves: given };
      this.#problems = [];
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      this.#problems = requestProblems(error);
      return;
    }
    this.cursor.set(this.over, 'over');
    if (this.#speak) this.announcer.announce(spokenOf(this));
    this.host.dispatchEvent(new BumplineAnswerEvent(this.#answer.comparison));
  }

  get told(): Told | undefined {
    const { answer, cells } = this;
    if (!answer) return undefined;
    const { request, names, comparison } = answer;
    return { names, heights: request.heights, comparison, ...cells, net: netChange(request, cells.from, cells.to) };
  }

  /** Other sets are compared now: what was chosen of those before is none of them. */
  forgetChoice(): void {
    this.#chosen.forget();
  }

  /** The first tap chooses one cell, the second the other. */
  choose(cell: At): void {
    this.#chosen.tap(cell);
    this.#speak = true;
    this.ask();
    this.host.requestUpdate();
  }

  /** Something a user did: one step of undo, told to the page, and the next answer is spoken. */
  change(path: string, label: string, compare: CarDocument['compare']): void {
    this.#speak = true;
    this.model.update(label, (car) => ({ ...car, compare: { ...car.compare, ...compare } }), path);
    this.host.dispatchEvent(new BumplineChangeEvent(path, compare));
  }

  setHeight(index: number, drop: number): void {
    const heights = this.heights.map((height, i) => (i === index ? drop : height));
    this.change(`heights.${index}`, 'height', { heights });
  }

  /** A drag, or typing, is over. */
  endStep(): void {
    this.model.endStep();
    this.host.requestUpdate();
  }

  render(): TemplateResult {
    const { state, answer, car, setups, compared } = this;
    const { curves } = this.host;
    return renderFrame({
      state,
      title: FIRST.title,
      corner: setups[0]!.cornerName,
      owner: curves ? 'this page’s curves' : ownership(compared, car),
      isUnread: state === 'problem' && (curves !== undefined || setupsBy(car) !== 'user'),
      hasAnswer: answer !== undefined,
      sentence: this.sentence.render(),
      caution: 'predicted',
      body: this.#body,
      announcer: this.announcer,
    });
  }
}
