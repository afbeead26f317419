import type { PropertyValues, TemplateResult } from 'lit';
import { type CarDocument, dropBy, withDrop, withPageHeights } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import { isSameSource } from '../car/same-car.js';
import { type LightDom, readLightDom } from '../page-data/light-dom.js';
import { PageDataWatcher } from '../page-data/page-data-watcher.js';
import { carOf, heightsOf, type PageHeights, type PageSource, sourceOf } from '../page-data/page-source.js';
import { type Display, say } from './sentence.js';
import { SheetApp } from './sheet-app.js';
import type { SheetFrame } from './sheet-frame.js';
import type { SheetHost } from './sheet-view.js';

/** What a page may say of one corner and the height it is asked at. */
export interface CornerHost extends SheetHost, PageHeights, Partial<Omit<PageSource, 'light'>> {}

const SOURCES = ['corner', 'curve', 'coefficients', 'domain'] as const;
const HEIGHTS = ['drop', 'dropPlusMinus', 'bumpTravel'] as const;

/** The words about one corner at a drop. */
export interface CornerWords<Answer> {
  title: string;
  /** What a change of the drop is called where it is taken back: a pattern with `{drop}`. */
  step: string;
  dropText(drop: number, display: Display): string;
  completeness(car: CarDocument): 'example' | 'incomplete' | 'ready';
  /** Whose numbers these are: the line above the sentence. */
  ownership(car: CarDocument): string;
  /** The whole sentence as it is spoken. */
  spoken(answer: Answer, car: CarDocument, display: Display): string;
}

/** The app of an element that is about one corner at a drop: what a page says of both, and the drop as it is typed. */
export abstract class CornerApp<
  Host extends CornerHost,
  Answer extends { drop: number },
  Request extends object,
> extends SheetApp<Host, Answer, Request> {
  protected readonly page: PageDataWatcher<LightDom>;
  #light: LightDom = { problems: [] };

  constructor(host: Host) {
    super(host);
    this.page = new PageDataWatcher(
      host,
      () => this.readLight(),
      (light) => {
        this.#light = light;
        this.loadLight();
      },
    );
  }

  /** What an author wrote inside. */
  protected readLight(): LightDom | Promise<LightDom> {
    return readLightDom(this.host);
  }

  /** Takes it, as it was read last. */
  protected loadLight(): void {
    this.#loadSource();
  }

  protected isOther(_asked: Request, before: CarDocument): boolean {
    return !isSameSource(before, this.car);
  }

  protected get rest(): number {
    return this.answers.answer!.drop;
  }

  /** What is said of it. */
  protected abstract readonly words: CornerWords<Answer>;

  get completeness() {
    return this.words.completeness(this.car);
  }

  get spoken(): string {
    return this.words.spoken(this.answers.answer!, this.answeredCar, this.display);
  }

  /**
   * @param corner that the answer is of
   * @param hazards of what this element is about
   */
  protected frameOf(corner: string, sentence: TemplateResult, hazards: readonly string[]): SheetFrame {
    const { title, ownership } = this.words;
    return { title, corner, owner: ownership(this.car), sentence, caution: 'predicted', hazards };
  }

  get isOwn(): boolean {
    return isUsers(this.car, 'corner');
  }

  /** What a page gives as its drop, where that is no length. */
  get unreadDrop(): string | undefined {
    const found = this.pageProblems.find(({ path }) => path === 'drop');
    return found && String(found.value);
  }

  override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed);
    if (SOURCES.some((name) => changed.has(name))) this.#loadSource();
    if (HEIGHTS.some((name) => changed.has(name))) this.loadHeights();
  }

  #loadSource(): void {
    const { corner, curve, coefficients, domain } = this.host;
    const source = sourceOf({ corner, curve, coefficients, domain, light: this.#light });
    const isGiven = SOURCES.some((name) => this.host[name] != null) || 'json' in this.#light || 'given' in this.#light;
    this.cars.pageGives(
      'source',
      (car, sparesUsers) => carOf(source, car, sparesUsers),
      isGiven,
      false,
      source.problems,
    );
  }

  protected loadHeights(): void {
    const heights = heightsOf(this.host);
    const recipe = (car: CarDocument, sparesUsers: boolean) => withPageHeights(car, heights.car, sparesUsers);
    this.cars.pageGives('heights', recipe, this.hasHeights, false, heights.problems);
  }

  /** Whether a page says anything of heights. */
  protected get hasHeights(): boolean {
    return HEIGHTS.some((name) => this.host[name] != null);
  }

  changeDrop(drop: number): void {
    const before = this.model.car.drop;
    if (drop === before && dropBy(this.car) === 'user') return;
    const { step, dropText } = this.words;
    this.change('drop', say(step, { drop: dropText(before, this.display) }), (car) => withDrop(car, drop), 'drop');
  }
}
