import type { PropertyValues } from 'lit';
import type { ReadingsAnswer, ReadingsRequest } from '../../core/answers/readings.js';
import type { CarDocument } from '../../core/document/car.js';
import type { Setup } from '../../core/document/setup.js';
import { setupOf, withPageSetups } from '../../core/document/setups.js';
import type { Problem } from '../../core/quantity/problem.js';
import { worded } from '../../core/quantity/words.js';
import { fit } from '../../core/worker/layers/fit.generated.js';
import { AnswerController, askCore } from '../element/answer-controller.js';
import { lower } from '../element/sentence.js';
import { SheetApp } from '../element/sheet-app.js';
import type { SheetFrame } from '../element/sheet-frame.js';
import type { SheetHost } from '../element/sheet-view.js';
import { TRAVEL_CAUTIONS } from '../element/travel-cautions.js';
import { SentenceField } from '../inputs/sentence-field.js';
import { PageDataWatcher } from '../page-data/page-data-watcher.js';
import { FEWEST_HEIGHTS, FIRST, overText, ownership, spoken } from './bumpline-readings.words.js';
import {
  type PageTable,
  pageProblems,
  pageSetups,
  quantityOf,
  type ReadingsAttributes,
  readOver,
  tableIn,
} from './page-readings.js';
import { renderSentence } from './readings-sentence.js';
import type { ReadingsView } from './readings-view.js';

type Host = SheetHost & ReadingsAttributes;

/** All that a corner needs before it is moved through its travel. */
const HAZARDS: readonly string[] = worded(() => {
  const { springOut, spring, carried, bushes, hub } = TRAVEL_CAUTIONS;
  return [springOut, spring, carried, bushes, hub];
});

/** The curve that readings make: the question, and the sentence that answers it. */
export class ReadingsApp extends SheetApp<Host, ReadingsAnswer, ReadingsRequest> implements ReadingsView {
  protected readonly answers: AnswerController<ReadingsAnswer, ReadingsRequest>;
  protected readonly page: PageDataWatcher<PageTable>;
  readonly over: SentenceField;
  readonly keepsAll = false;
  readonly takesEither = true;
  #table: PageTable = {};
  /** What changes sets of parts: nobody edits before the body is there. */
  #edits: typeof import('./readings-body.js').setupEdits | undefined;

  constructor(host: Host) {
    super(host);
    this.answers = new AnswerController(
      host,
      askCore('readings', [fit]),
      () => this.take(),
      () => this.placeCursor(),
    );
    this.page = new PageDataWatcher(
      host,
      () => tableIn(host, quantityOf(host)),
      (table) => {
        this.#table = table;
        this.#loadPage();
      },
      () => quantityOf(host),
    );
    this.over = new SentenceField({
      host,
      drafts: this.drafts,
      path: 'over',
      label: FIRST.over,
      quantity: 'travel',
      display: () => this.display,
      value: () => this.#overShown,
      text: () => overText(this.#overShown, this.display),
      change: (over) => this.change('over', lower(FIRST.over), (car) => ({ ...car, readingsOver: over }), 'over'),
      cancel: () => this.model.cancelStep('over'),
      begin: () => {
        this.model.endStep();
        this.beginEdit();
      },
      end: () => this.endStep(),
    });
    this.begin();
  }

  protected async importBody() {
    const [{ ReadingsBody, setupEdits }] = await Promise.all([import('./readings-body.js'), this.cars.keep()]);
    this.#edits = setupEdits;
    return () => new ReadingsBody(this);
  }

  get setup(): Setup {
    return setupOf(this.car).setup;
  }

  get isOwn(): boolean {
    return setupOf(this.car).isOwn;
  }

  get pageTable(): PageTable['understanding'] {
    return this.host.readings ? undefined : this.#table.understanding;
  }

  protected get pageProblems(): Problem[] {
    const { by, setup } = setupOf(this.car);
    const over = this.car.readingsOver === undefined ? readOver(this.host) : undefined;
    const told = [...this.cars.pageProblems('setups'), ...(over && !over.ok ? [over.problem] : [])];
    if (told.length > 0 || by !== 'page' || this.isEnough) return told;
    return [{ code: 'too-few', path: 'readings', value: setup.readings.length, limit: FEWEST_HEIGHTS }];
  }

  protected isOther(): boolean {
    return setupOf(this.car).by === 'page' && this.answeredSetup !== this.setup;
  }

  get completeness() {
    return setupOf(this.car).by === 'example' ? 'example' : 'ready';
  }

  /** Whether there are heights enough to ask for a curve at all. */
  protected override get isEnough(): boolean {
    const { readings } = this.setup;
    return new Set(readings.map(({ travel }) => travel)).size >= FEWEST_HEIGHTS;
  }

  override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (changed.has('quantity')) this.page.look();
    if (['readings', 'quantity', 'degree'].some((name) => changed.has(name))) this.#loadPage();
    if (changed.has('over')) this.ask();
  }

  #loadPage(): void {
    const setups = pageSetups(this.host, this.#table);
    const recipe = (car: CarDocument) => withPageSetups(car, setups);
    this.cars.pageGives('setups', recipe, setups !== undefined, true, pageProblems(this.host, this.#table));
  }

  /** What a user asked for in the sentence, else the page's; without either what the readings reach to. */
  get #overAsked(): number | undefined {
    const read = readOver(this.host);
    return this.car.readingsOver ?? (read?.ok ? read.value : undefined);
  }

  get #overShown(): number {
    return this.#overAsked ?? this.answer?.over ?? 25;
  }

  protected requestOf(car: CarDocument): ReadingsRequest {
    const { quantity, readings, setAside, doubts } = setupOf(car).setup;
    return { quantity, readings, doubts, setAside, degree: this.degree, over: this.#overAsked };
  }

  protected get rest(): number {
    return this.answers.answer!.over;
  }

  get spoken(): string {
    return spoken(this.answers.answer!, this.display);
  }

  edit(label: string, recipe: (setup: Setup) => Setup, step?: string): void {
    this.change('readings', label, (car) => this.#edits!.withSetup(car, recipe), step);
  }

  editShown(label: string, recipe: (setup: Setup) => Setup): void {
    this.change('readings', label, (car) => this.#edits!.withShown(car, recipe));
  }

  changeSets(label: string, recipe: (car: CarDocument) => CarDocument): void {
    this.change('setups', label, recipe);
  }

  protected override valueOf(path: string): unknown {
    return path === 'over' ? this.car.readingsOver : this.setup;
  }

  get degree(): number | undefined {
    return this.setup.degree ?? (this.isOwn ? undefined : this.car.readingsDegree);
  }

  /** Of readings that are not the user's it is a way of looking at them, and changes nothing of theirs. */
  setDegree(degree: number | undefined): void {
    if (this.isOwn) {
      this.edit(FIRST.step, ({ degree: _, ...rest }) => (degree === undefined ? rest : { ...rest, degree }));
      return;
    }
    this.model.replace(({ readingsDegree: _, ...car }) =>
      degree === undefined ? car : { ...car, readingsDegree: degree },
    );
  }

  get answeredSetup(): Setup | undefined {
    return this.answers.answered && setupOf(this.answeredCar).setup;
  }

  get frame(): SheetFrame {
    return {
      title: FIRST.title,
      corner: this.setup.cornerName,
      owner: ownership(this.car),
      sentence: renderSentence(this),
      caution: 'predicted',
      hazards: HAZARDS,
    };
  }
}
