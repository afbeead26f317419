import { LONGEST_LINK, readFragment } from '../../components/car/fragment.js';
import { isAnyData } from '../../components/car/page-says.js';
import { readText, unreadText } from '../../components/page-data/what-was-read.js';
import { type CarDocument, EMPTY_CAR } from '../../core/document/car.js';
import { carFromLink } from '../../core/document/link.js';
import { withUsers } from '../../core/document/own-car.js';
import { asPageCar } from '../../core/document/page-car.js';
import { isFilled } from '../../core/document/provenance.js';
import { BUILDER } from './builder.words.js';
import { type Choices, choicesIn, queryOf, siteIn, widthIn } from './choices.js';
import { CopyButton } from './copy-button.js';
import { Fields } from './fields.js';
import { type Known, madeOf, shownOf } from './made.js';
import { carIn, type Pasted } from './pasted.js';
import { Preview, type Shown, titleOf } from './preview.js';
import { sentenceIn } from './said.js';

/** Room that an element is given beside what it took in the preview, px: fonts differ. */
const ROOM_PX = 20;
const roomy = (height: number): number => Math.ceil((height + ROOM_PX) / 10) * 10;

/** Of which angle a pasted table without the word is. */
const quantityIn = (text: string): 'camber' | 'toe' =>
  /\btoe\b|bump ?steer/i.test(text) && !/camber/i.test(text) ? 'toe' : 'camber';

/** The page: what is chosen in its fields and its address, what of it is shown, and the text that is made of both. */
export class BuilderPage {
  readonly #root: HTMLFormElement;
  readonly #fields: Fields;
  readonly #preview: Preview;
  #choices: Choices;
  #shown: Shown | undefined;

  constructor(root: HTMLFormElement) {
    this.#root = root;
    this.#choices = choicesIn(new URLSearchParams(location.search));
    this.#fields = new Fields(root, () => this.#chosen());
    this.#preview = new Preview(this.#find('iframe'), (shown) => this.#take(shown));
  }

  begin(): void {
    const root = this.#root;
    this.#fields.fill(this.#choices, this.#car);
    root.addEventListener('submit', (event) => event.preventDefault());
    new CopyButton(this.#find('.copy'), this.#find('.said'), () => this.#find('code').textContent);
    this.#find('.without').addEventListener('click', () => this.#dropCar());
    // Another car, or none: by a link, or on the way back.
    for (const type of ['hashchange', 'popstate']) addEventListener(type, () => this.#arrive());
    this.#render();
  }

  #find<E extends HTMLElement>(selector: string): E {
    return this.#root.querySelector<E>(selector)!;
  }

  #arrive(): void {
    this.#choices = choicesIn(new URLSearchParams(location.search));
    this.#fields.fill(this.#choices, this.#car);
    this.#render();
  }

  /** The car in the address. */
  get #linked(): CarDocument {
    const read = carFromLink(readFragment(location.hash).car ?? '');
    return read.ok ? read.car : EMPTY_CAR;
  }

  get #pasted(): Pasted {
    const { text } = this.#choices;
    return carIn(text, quantityIn(text), BUILDER.pasted);
  }

  /** What was pasted, over what came by a link. */
  get #car(): CarDocument {
    const { car } = this.#pasted;
    return isFilled(asPageCar(car)) ? withUsers(this.#linked, car) : this.#linked;
  }

  #dropCar(): void {
    // The way back brings it again.
    history.pushState(history.state, '', location.pathname + location.search);
    this.#choices = { ...this.#choices, text: '' };
    this.#fields.fill(this.#choices, this.#car);
    this.#keep();
    this.#render();
  }

  #chosen(): void {
    const before = this.#choices;
    this.#choices = this.#fields.read();
    if (before.tag !== this.#choices.tag) this.#shown = undefined;
    this.#keep();
    this.#fields.follow(this.#choices, this.#car);
    this.#render();
  }

  /** In the address, so that a reload brings it back. */
  #keep(): void {
    const all = queryOf(this.#choices);
    const to = (query: URLSearchParams) => `${location.pathname}?${query}${location.hash}`;
    const isTooLong = new URL(to(all), location.href).href.length > LONGEST_LINK;
    if (isTooLong) all.delete('text');
    history.replaceState(history.state, '', to(all));
    this.#fields.tell('text', isTooLong ? BUILDER.tooLong : '');
  }

  #take(shown: Shown): void {
    this.#shown = shown;
    this.#fields.offer(shown.element);
    this.#renderMade();
  }

  get #known(): Known {
    const { tag, form } = this.#choices;
    const { integrity, framesIntegrity, stylesIntegrity, unknownSite } = this.#root.dataset;
    const shown = this.#shown;
    return {
      car: this.#car,
      title: titleOf(tag),
      site: new URL('../', location.href.replace(/[?#].*$/s, '')).href,
      unknownSite: unknownSite!,
      sentence: shown && sentenceIn(tag, shown.element),
      height: shown && form !== 'table' ? roomy(shown.height) : undefined,
      integrity: filledIn(integrity),
      framesIntegrity: filledIn(framesIntegrity),
      stylesIntegrity: filledIn(stylesIntegrity),
    };
  }

  #render(): void {
    const { tag, host, width, at } = this.#choices;
    this.#preview.show(host, tag, shownOf(this.#choices, { ...this.#known, sentence: undefined }));
    this.#fields.tell('width', width.trim() === '' || widthIn(width) !== undefined ? '' : BUILDER.wrongWidth);
    this.#fields.tell('at', at.trim() === '' || siteIn(at) !== undefined ? '' : BUILDER.wrongSite);
    this.#renderCar();
    this.#renderMade();
  }

  #renderCar(): void {
    const car = this.#car;
    const { problems } = this.#pasted;
    const isGiven = isAnyData({ car, problems: [] });
    this.#find('.read').textContent = isGiven ? BUILDER.read(readText(car)) : BUILDER.example;
    const unread = unreadText(problems);
    this.#find('.unread').textContent = unread && BUILDER.unread(unread);
    this.#find('.without').hidden = !isGiven;
  }

  #renderMade(): void {
    const { html, by, left } = madeOf(this.#choices, this.#known);
    this.#find('code').textContent = html;
    const { form } = this.#choices;
    this.#find('.by').textContent = form === 'element' || form === 'div' ? BUILDER.by[by] : '';
    this.#find('.left').hidden = left.length === 0;
    this.#find('.left ul').replaceChildren(
      ...left.map((text) => Object.assign(document.createElement('li'), { textContent: text })),
    );
  }
}

/** What the build has filled in; undefined of a name that it does not know. */
const filledIn = (text: string | undefined): string | undefined => (text && !text.startsWith('%') ? text : undefined);
