import type { PropertyValues } from 'lit';
import { type At, netChange } from '../../core/answers/compare.js';
import type { CarDocument, CornerName } from '../../core/document/car.js';
import { fullBumpOf } from '../../core/document/full-bump.js';
import type { Setup } from '../../core/document/setup.js';
import { setupsBy } from '../../core/document/setup-in-use.js';
import { withPageSetups } from '../../core/document/setups.js';
import type { Corner } from '../../core/linkage/corner.js';
import type { Problem } from '../../core/quantity/problem.js';
import { CarCurves } from '../car/car-curves.js';
import { byHand } from '../element/by-hand.js';
import { PART_CAUTIONS, partCautions } from '../element/part-cautions.js';
import { SheetApp } from '../element/sheet-app.js';
import type { SheetFrame } from '../element/sheet-frame.js';
import type { SheetHost } from '../element/sheet-view.js';
import { TRAVEL_CAUTIONS } from '../element/travel-cautions.js';
import { givenSetups, setupProblems } from '../page-data/given-setups.js';
import { PageDataWatcher } from '../page-data/page-data-watcher.js';
import { FIRST, ownership, type Told } from './bumpline-compare.words.js';
import { chosenWithin, tapped } from './chosen-cells.js';
import { type Asked, CompareAnswers } from './compare-answers.js';
import { CompareSentence, spokenOf } from './compare-sentence.js';
import { heightsOf, overOf, settingProblems } from './compare-settings.js';
import type { Answered, CompareAttributes, CompareView } from './compare-view.js';
import { ComparedCurves, type WrongSet } from './compared-curves.js';
import { type ComparedSets, firstCells } from './compared-sets.js';
import { type PageSets, setsIn } from './page-setups.js';
import { TravelEnd } from './travel-end.js';

type Host = SheetHost & CompareAttributes;

/** What parts and heights change: the question, and the sentence that answers it. */
export class CompareApp extends SheetApp<Host, Answered, Asked> implements CompareView {
  protected readonly answers: CompareAnswers;
  protected readonly page: PageDataWatcher<PageSets>;
  readonly sentence: CompareSentence;
  readonly #travelEnd = new TravelEnd(() => {
    this.ask();
    this.host.requestUpdate();
  });
  #sets: PageSets = { problems: [] };
  readonly #curves = new ComparedCurves(() => {
    const { setups, isExample } = this.#sets;
    // What the page shows until somebody gives readings.
    return { model: this.model, example: isExample && setups?.length ? setups : undefined };
  });

  constructor(host: Host) {
    super(host);
    this.answers = new CompareAnswers(host, () => this.take());
    this.page = new PageDataWatcher(
      host,
      () => setsIn(host),
      (sets) => {
        this.#sets = sets;
        this.#loadPage();
      },
    );
    this.sentence = new CompareSentence(this);
    this.begin();
  }

  protected async importBody() {
    const [{ CompareBody }] = await Promise.all([import('./compare-body.js'), this.cars.keep()]);
    return () => new CompareBody(this);
  }

  get compared(): ComparedSets {
    return this.#curves.compared;
  }

  get leftOut(): readonly Problem[] {
    return this.#curves.known?.leftOut ?? [];
  }

  get wrong(): readonly WrongSet[] {
    return this.#curves.known?.wrong ?? [];
  }

  get corner(): Corner | undefined {
    return this.#curves.known?.corner;
  }

  get curves(): ComparedCurves {
    return this.#curves;
  }

  get setups(): readonly Setup[] {
    return this.compared.sets;
  }

  get cornerName(): CornerName {
    return this.compared.rows[0]?.setup?.cornerName ?? this.car.cornerName;
  }

  get isExample(): boolean {
    return !this.host.curves && this.compared.isExample;
  }

  get named(): readonly { name: string }[] {
    return this.host.curves ?? this.compared.rows;
  }

  get heights(): readonly number[] {
    return heightsOf(this.car, this.host);
  }

  get over(): number {
    return overOf(this.car, this.host);
  }

  get pageTable(): PageSets['table'] {
    const { compared } = this;
    return !this.host.setups && (compared.pages > 0 || compared.isExample) ? this.#sets.table : undefined;
  }

  get cells(): { from: At; to: At } {
    const { curves, heights } = this.answer?.request ?? { curves: this.named, heights: this.heights };
    return chosenWithin(
      this.car.compare,
      Math.min(curves.length, this.named.length),
      Math.min(heights.length, this.heights.length),
      firstCells(this.host.curves ? { rows: [], own: undefined, yours: 0, pages: 0 } : this.compared),
    );
  }

  protected get pageProblems(): Problem[] {
    const ofSets = this.host.curves ? [] : this.cars.pageProblems('setups');
    return [...ofSets, ...this.cars.pageProblems('limits'), ...settingProblems(this.car, this.host)];
  }

  get unreadOver(): string | undefined {
    return this.pageProblems.find(({ path }) => path === 'over')?.value as string | undefined;
  }

  /** Beside what is wrong now, an older answer may stand only of a user's own sets, or of the same as now. */
  protected isOther({ given, keys, hasOwn }: Asked): boolean {
    const { curves } = this.host;
    if (curves || given) return curves !== given;
    const isUsers = setupsBy(this.car) === 'user' || (hasOwn && this.#hasOwn);
    return !isUsers && !this.#curves.isOf(keys);
  }

  get isOwn(): boolean {
    return this.host.curves === undefined && (setupsBy(this.car) === 'user' || this.#hasOwn);
  }

  /** Whether a curve of the user's own car is compared. */
  get #hasOwn(): boolean {
    return this.compared.own?.by === 'user';
  }

  get completeness() {
    if (this.isExample || (!this.host.curves && this.compared.own?.by === 'example')) return 'example';
    return this.named.length > 1 ? 'ready' : 'incomplete';
  }

  protected override get isKnown(): boolean {
    return this.host.curves !== undefined || super.isKnown;
  }

  override async settle(): Promise<void> {
    await super.settle();
    await this.#travelEnd.coming;
    await this.host.updateComplete;
  }

  override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (changed.has('setups')) this.#loadPage();
    if (['over', 'heights', 'curves'].some((name) => changed.has(name))) this.ask();
  }

  #loadPage(): void {
    const { setups } = this.host;
    const given = setups ? givenSetups(setups) : this.#sets.isExample ? undefined : this.#sets.setups;
    const recipe = (car: CarDocument) => withPageSetups(car, given);
    const problems = setups ? setupProblems(setups) : this.#sets.problems;
    this.cars.pageGives('setups', recipe, given !== undefined && given.length > 0, true, problems);
  }

  protected requestOf(car: CarDocument): Asked {
    const { heights, over, host } = this;
    return {
      curves: this.#curves,
      keys: this.#curves.keys,
      hasOwn: this.#hasOwn,
      given: host.curves,
      made: CarCurves.of(this.model),
      heights,
      over,
      solid: this.#travelEnd.of(car),
    };
  }

  protected get rest(): number {
    return this.over;
  }

  get spoken(): string {
    return spokenOf(this);
  }

  protected override get answerOfPage(): unknown {
    return this.answers.answer!.comparison;
  }

  get told(): Told | undefined {
    const { answer, cells } = this;
    if (!answer) return undefined;
    const { request } = answer;
    return { ...answer, heights: request.heights, ...cells, net: netChange(request, cells.from, cells.to) };
  }

  choose(cell: At): void {
    this.speak();
    // A way of looking, so no step of undo; the address carries it.
    this.model.replace((car) => ({ ...car, compare: tapped(car.compare, cell) }));
  }

  set(path: string, label: string, compare: CarDocument['compare']): void {
    this.change(path, label, (car) => ({ ...car, compare: { ...car.compare, ...compare } }), path);
  }

  protected override valueOf(path: string): unknown {
    const { setups, compare } = this.car;
    if (path === 'setups') return setups;
    return path === 'over' ? { over: compare?.over } : { heights: compare?.heights };
  }

  setHeight(index: number, drop: number): void {
    const heights = this.heights.map((height, i) => (i === index ? drop : height));
    this.set(`heights.${index}`, FIRST.steps.height, { heights });
  }

  get frame(): SheetFrame {
    const { car, compared, host, cornerName } = this;
    return {
      title: FIRST.title,
      corner: cornerName,
      owner: host.curves ? FIRST.whose.curves : ownership(compared, car),
      sentence: this.sentence.render(),
      caution: 'predicted',
      hazards: this.#hazards,
    };
  }

  /** Bump counted from stock height: what is compared stands at several heights at once. */
  get #hazards(): readonly string[] {
    const { answer, car, display } = this;
    const { springOut, spring, carried } = TRAVEL_CAUTIONS;
    const solid = answer?.request.solid;
    const full = fullBumpOf(car, solid === undefined ? undefined : { travel: solid }, 0);
    const ofParts = partCautions(car.setups ?? []);
    return [PART_CAUTIONS.lowJoint, ...ofParts, springOut, spring, carried, byHand(full, 0, display)];
  }
}
