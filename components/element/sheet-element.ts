import {
  css,
  html,
  LitElement,
  nothing,
  type PropertyDeclarations,
  type PropertyValues,
  type TemplateResult,
} from 'lit';
import { languageTag, WORDS_LANGUAGE } from '../../core/quantity/language.js';
import type { Problem } from '../../core/quantity/problem.js';
import type { UnitSystem } from '../../core/quantity/units.js';
import { speak } from '../../core/quantity/words.js';
import { VERSION } from '../../core/version.js';
import type { CarModel } from '../car/car-model.js';
import { carriesCar } from '../car/carries-car.js';
import { theme } from '../theme/theme.js';
import { fetchWordsOf, primaryOf, spokenFor } from '../words/fetch-words.js';
import { speakWhenHeard } from '../words/speak-when-heard.js';
import { type BumplineEventMap, BumplineProblemEvent } from './events.js';
import { languageOf } from './language.js';
import { LateFile } from './late-file.js';
import { onPrint } from './on-print.js';
import type { SheetState } from './sheet-view.js';
import { SHELL } from './shell.words.js';
import { SHOWN, type Shown } from './shown.js';

/** What a shell needs of the rest of its element. */
interface SheetContent {
  readonly state: SheetState;
  readonly problems: Problem[];
  /** What an attribute was given and does not take, where the answer does not rest on it. */
  readonly notes: Problem[];
  readonly fault: string | undefined;
  /** What the answer rests on is the reader's. */
  readonly isOwn: boolean;
  /** What the next rendering waits for. */
  readonly wait: Promise<void> | undefined;
  /** Has what waits come at once. */
  show(): void;
  /** Has the next rendering be whole. */
  print(): void;
  settle(): Promise<void>;
  /** Fetches again what did not come. */
  retry(): void;
  willUpdate(changed: PropertyValues): void;
  render(): TemplateResult;
}

/**
 * The shell of an element with a sheet: it registers quickly, shows its light DOM, and fetches the rest, its app. What all of them
 * have in common is here: how they show numbers, whose car theirs is, and when they are done.
 *
 * @csspart sheet - all of it
 * @csspart head - whose corner it is, and the choice of units
 * @csspart sentence - the answer in words
 * @csspart drawing - the drawing, where there is one
 * @csspart chart - the chart, where there is one
 * @csspart table - the table of numbers, of figures or of ways
 * @csspart actions - undo and the way to the whole, where a part is shown
 * @cssstate waiting - no answer has come yet
 * @cssstate example - the answer is the invented example's
 * @cssstate incomplete - some of what it rests on is still the example's, or nothing can be answered yet
 * @cssstate ready - all it rests on is given
 * @cssstate stale - the answer is of what was given before something that is wrong now
 * @cssstate problem - nothing can be answered for what is wrong
 * @cssstate fault - the program failed
 * @cssprop --bumpline-paper - ground of the whole element
 * @cssprop --bumpline-sheet - fields, parts in the drawing
 * @cssprop --bumpline-ink - text and outlines
 * @cssprop --bumpline-soft - what is said more quietly
 * @cssprop --bumpline-hair - hairlines
 * @cssprop --bumpline-now - the car as lowered, and what can be changed
 * @cssprop --bumpline-now-wash - a ground of that colour
 * @cssprop --bumpline-before - stock height
 * @cssprop --bumpline-limit - stops, cautions
 * @cssprop --bumpline-limit-wash - a ground of that colour
 * @cssprop --bumpline-contact - touching, and errors
 * @cssprop --bumpline-next - what to measure next
 * @cssprop --bumpline-tyre - the tyre
 * @cssprop --bumpline-sans - typeface of small text
 * @cssprop --bumpline-serif - typeface of the sentence
 */
export abstract class SheetElement<App extends SheetContent, Answer = unknown> extends LitElement {
  /** Of the package. */
  static readonly version = VERSION;
  /** What can be shown alone: what `show` takes. */
  static readonly shows: readonly Shown[] = SHOWN;
  static override styles = [
    theme,
    css`
      .late {
        margin: 4px 0;
        font-size: 0.875em;
        color: var(--_soft);
      }
    `,
  ];
  static override properties: PropertyDeclarations = {
    units: {},
    angles: {},
    theme: { reflect: true },
    show: {},
    language: {},
    car: { attribute: false },
    carId: { attribute: 'car-id' },
    keepInAddress: { type: Boolean, attribute: 'keep-in-address' },
    authorPage: { attribute: 'author-page' },
  };

  /** What lengths are shown in. Readers can change it. */
  declare units: UnitSystem['length'];
  /** What angles are shown in. Readers can change it. */
  declare angles: UnitSystem['angle'];
  /** Left out: the page's own `color-scheme`. A page that names none is light; one that says `light dark` follows the reader. */
  declare theme: 'light' | 'dark' | undefined;
  /**
   * What of the element stands in your article, as in `show="sentence chart"`. Left out: everything. Where you show a part, its cautions
   * are folded under it, and “Open the whole calculator” brings the rest.
   */
  declare show: string | undefined;
  /** The language of its words and numbers, `en` or `de`. Left out: that of your page (`lang`), where the element has it, else English. */
  declare language: string | undefined;
  /**
   * Reads a reader's car from your page's address and keeps it there (the part after #), so that a reload or a sent link shows the same.
   * One car a page: that of the first element that has it. Links to your own sections (`#section`) work and keep the car; a router's
   * fragment is left alone, and then the address does not hold the car. Without it, “Copy a link” still makes a link that your page
   * opens. It takes no value.
   */
  declare keepInAddress: boolean;
  /** Address of a page with the snippet builder. A link “Put this in an article” then leads there with the car. Left out: no such link. */
  declare authorPage: string | undefined;
  /** The car that it shares with other elements: a `CarModel` from `bumpline`. Without it that of the `bumpline-car` around it, if there is one. */
  declare car: CarModel | undefined;
  /** The `id` of a `<bumpline-car>` elsewhere on the page, whose car it shares. */
  declare carId: string | undefined;

  protected app: App | undefined;
  /** Which of our words are this element's, besides those that all share. @ignore */
  abstract readonly words: string;
  #spoken: string = WORDS_LANGUAGE;
  #wanted: string = WORDS_LANGUAGE;
  readonly #late = new LateFile(
    async () => {
      [this.app] = await Promise.all([this.fetchApp(), this.#learn()]);
    },
    () => this.requestUpdate(),
  );

  constructor() {
    super();
    this.units = 'mm';
    this.angles = 'degrees';
    this.keepInAddress = false;
  }

  /** The language of its words and numbers, as a BCP 47 tag. */
  get spokenLanguage(): string {
    return this.#spoken;
  }

  /** From here on words are taken in its language: several may stand on one page. @ignore */
  speak(): void {
    speak(primaryOf(this.#spoken));
  }

  /** Has it speak the language that it or its page says, as soon as the words are here. */
  async #learn(): Promise<void> {
    const wanted = spokenFor(languageTag(this.language ?? languageOf(this)));
    if (wanted === this.#wanted) return;
    this.#wanted = wanted;
    const parts = ['first', `${this.words}/first`];
    await fetchWordsOf(wanted, ...parts, ...(this.app ? ['late', `${this.words}/late`] : []));
    if (wanted !== this.#wanted) return;
    this.#spoken = wanted;
    this.requestUpdate();
  }

  /** Fetches the app and makes it. */
  protected abstract fetchApp(): Promise<App>;

  /** The newest good answer. */
  abstract get answer(): Answer | undefined;

  /** Everything that is wrong now, of your data and of what was typed: what `bumpline-problem` tells. */
  get problems(): Problem[] {
    return [...(this.app?.problems ?? []), ...(this.app?.notes ?? [])];
  }

  /** How far it is: what `:state()` tells a style sheet. */
  get state(): SheetState {
    return this.app?.state ?? 'waiting';
  }

  /** Whether the answer rests on what the reader entered, and no longer on your data or the invented example. */
  get isReaders(): boolean {
    return this.app?.isOwn ?? false;
  }

  /** Resolves when everything given so far is answered and rendered. Never rejects. */
  get settled(): Promise<void> {
    return (async () => {
      if (!this.isConnected && !this.app) return;
      await this.#late.get();
      do {
        await this.updateComplete;
        await this.app?.settle();
      } while (!(await this.updateComplete));
    })().catch((error) => console.error('Bumpline: not all of an element has come.', error));
  }

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('online', this.#retry);
    this.#stopPrint = onPrint(this.#print);
    this.#retry();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener('online', this.#retry);
    this.#stopPrint();
  }

  readonly #retry = (): void => {
    this.app?.retry();
    void this.#late.get();
  };

  #stopPrint = () => {};
  readonly #print = (): void => {
    // What the first rendering brings, the second unfolds.
    for (let i = 0; i < 2; i++) {
      this.app?.print();
      if (this.isUpdatePending) this.performUpdate();
    }
  };

  protected override scheduleUpdate(): ReturnType<LitElement['scheduleUpdate']> {
    const wait = this.app?.wait;
    return wait ? wait.then(() => super.scheduleUpdate()) : super.scheduleUpdate();
  }

  /** Who waits for it gets it. */
  protected override getUpdateComplete(): Promise<boolean> {
    this.app?.show();
    return super.getUpdateComplete();
  }

  /** Its own events with what they carry, typed. */
  override addEventListener<K extends keyof BumplineEventMap<Answer>>(
    type: K,
    listener: (this: this, event: BumplineEventMap<Answer>[K]) => unknown,
    options?: boolean | AddEventListenerOptions,
  ): void;
  override addEventListener(
    type: string,
    listener: EventListenerOrEventListenerObject,
    options?: boolean | AddEventListenerOptions,
  ): void;
  override addEventListener(...all: Parameters<HTMLElement['addEventListener']>): void {
    super.addEventListener(...all);
  }

  /** For style sheets: `:state(waiting)`, `:state(problem)` … Browsers of before 2024 have none. */
  readonly #states = this.attachInternals().states as CustomStateSet | undefined;
  #shownState: SheetState | undefined;
  #toldProblems = '[]';

  protected override updated(): void {
    const { state, problems } = this;
    if (state !== this.#shownState) {
      if (this.#shownState) this.#states?.delete(this.#shownState);
      this.#states?.add(state);
      this.#shownState = state;
    }
    const { fault } = this.app ?? {};
    const told = JSON.stringify(fault === undefined ? problems : [problems, fault]);
    if (told === this.#toldProblems) return;
    this.#toldProblems = told;
    this.dispatchEvent(new BumplineProblemEvent(problems, fault));
  }

  protected override performUpdate(): void {
    this.speak();
    super.performUpdate();
  }

  protected override createRenderRoot(): ReturnType<LitElement['createRenderRoot']> {
    return speakWhenHeard(super.createRenderRoot(), () => this.speak());
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (this.app) void this.#learn();
    this.app?.willUpdate(changed);
  }

  get #isLinked(): boolean {
    const keeps = this.keepInAddress || this.closest('bumpline-car[keep-in-address]') !== null;
    return keeps && carriesCar(location.hash);
  }

  protected override render(): TemplateResult {
    if (this.app) return this.app.render();
    const { state } = this.#late;
    // The light DOM stays: data, and the author's own words. Not where a link brings another car than theirs.
    return html`${state !== 'lost' && this.#isLinked ? nothing : html`<slot></slot>`}${state === 'slow' || state === 'lost' ? html`<p class="late" role="status">${SHELL[state]}</p>` : nothing}`;
  }
}
