import { type CarDocument, EMPTY_CAR } from '../../core/document/car.js';
import { carFromLink, carToLink } from '../../core/document/link.js';
import { asUsersOwn, isAnyUsers, withUsers } from '../../core/document/own-car.js';
import type { CarModel, KeptAddress } from './car-model.js';
import { type Fragment, goToPlace, LONGEST_LINK, readFragment, writeFragment } from './fragment.js';
import { isFirstKept, numberOnPage } from './which-car.js';

/** A pause in editing after which the address follows, ms: browsers refuse a hundred changes in half a minute. */
const PAUSE_MS = 300;

/** By what somebody goes on: a link is pressed, by Enter as well, or its menu is opened. */
const GOES_ON = ['pointerdown', 'contextmenu', 'click'];

/** Beside whatever a page keeps there: which car was on the page when the entry of the browser's history was last current. */
const MARK = 'bumpline-car';

/** The keeper of the page's address, of whatever version: a page has one address, so this is not `pageWide`. */
const KEEPER = Symbol.for('bumpline.address');
const page = globalThis as unknown as Record<symbol, object | undefined>;

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype;

/** The mark of the entry that is current. */
function markHere(): unknown {
  const state: unknown = history.state;
  return isRecord(state) ? state[MARK] : undefined;
}

/** The state of the entry with a mark in it; a page's that has no room for one stays as it is. */
function marked(mark: string): unknown {
  const state: unknown = history.state ?? {};
  return isRecord(state) ? { ...state, [MARK]: mark } : state;
}

const newMark = (): string => Math.random().toString(36).slice(2);

/**
 * The car in a page's address: read from it, and kept there while it is edited, so that a reload or a sent link shows the same.
 * One a model, however many elements ask for it.
 */
export class AddressKeeper implements KeptAddress {
  problem: KeptAddress['problem'];
  isLinked = false;
  isTooLong = false;
  isKept = false;
  readonly #model: CarModel;
  readonly #number: number;
  #mark: string;
  #holders = 0;
  #isRead = false;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #section = '';
  /** The car that stood in the address when it was last read or written. */
  #seen: string | undefined;

  private constructor(model: CarModel, host: Element) {
    this.#model = model;
    this.#number = numberOnPage(host);
    const mark = markHere();
    this.#mark = typeof mark === 'string' ? mark : newMark();
    const found = readFragment(location.hash);
    this.#section = found.car === undefined ? '' : found.section;
  }

  /**
   * The keeper of a model; the first call reads the address. Each call wants its `release`.
   *
   * @param keeps whether the car is written into the address as well
   */
  static hold(model: CarModel, host: Element, keeps: boolean): KeptAddress {
    // It may be of another copy of this program: each element of the cdn build has its own.
    model.address ??= new AddressKeeper(model, host);
    model.address.hold(host, keeps);
    return model.address;
  }

  hold(host: Element, keeps: boolean): void {
    const isNewlyKept = keeps && !this.isKept && this.#keep(host);
    if (!this.#isRead || (isNewlyKept && !this.isLinked)) this.#read(readFragment(location.hash));
    this.#listen();
    this.#write();
  }

  #listen(): void {
    if (this.#holders++ > 0) return;
    addEventListener('hashchange', this.#arrive);
    // Where only the state is another; a place on the page is gone to first.
    addEventListener('popstate', this.#arriveLater);
    addEventListener('pagehide', this.#flush);
    // Whoever goes on, by a link or its menu, takes what was typed last along.
    for (const type of GOES_ON) addEventListener(type, this.#flush, true);
    this.#model.addEventListener('change', this.#follow);
  }

  /** Whether the address is this car's to keep. */
  #keep(host: Element): boolean {
    if ((page[KEEPER] ?? this) !== this || !isFirstKept(host)) {
      console.warn(
        'Bumpline: the address of a page keeps one car, that of its first calculator with keep-in-address. Another was not kept; put both into one <bumpline-car> to share it.',
        host,
      );
      return false;
    }
    page[KEEPER] = this;
    this.isKept = true;
    return true;
  }

  release(): void {
    if (--this.#holders > 0) return;
    // Unless somebody has put another car there meanwhile.
    if (readFragment(location.hash).car === this.#seen) this.#flush();
    clearTimeout(this.#timer);
    this.#timer = undefined;
    removeEventListener('hashchange', this.#arrive);
    removeEventListener('popstate', this.#arriveLater);
    removeEventListener('pagehide', this.#flush);
    for (const type of GOES_ON) removeEventListener(type, this.#flush, true);
    this.#model.removeEventListener('change', this.#follow);
    if (page[KEEPER] === this) delete page[KEEPER];
    this.isKept = false;
  }

  goToPlace(): void {
    goToPlace(this.#section);
    this.#section = '';
  }

  /** The reader went to another entry of the browser's history, or typed, pasted or followed a fragment. */
  readonly #arrive = (): void => {
    const found = readFragment(location.hash);
    const mark = markHere();
    const isOthers = mark === undefined ? this.#isMine(found) : mark !== this.#mark;
    if (isOthers && (this.isKept || this.#isMine(found))) {
      const carried = this.#isMine(found) ? found.car : undefined;
      if (carried === carToLink(this.#model.car)) this.#mark = typeof mark === 'string' ? mark : this.#mark;
      else {
        this.#mark = typeof mark === 'string' ? mark : newMark();
        this.#read(found, true);
      }
    }
    this.#write();
  };

  readonly #arriveLater = (): void => {
    setTimeout(this.#arrive);
  };

  /** A car without a number is for the one that is kept. */
  readonly #isMine = ({ car, at }: Fragment): boolean =>
    car !== undefined && (at === undefined ? this.isKept : at === this.#number);

  /** @param isAnew whether another car was here before, of which nothing stays but what the page says */
  #read(found: Fragment, isAnew = false): void {
    this.#isRead = true;
    this.#seen = found.car;
    const read = carFromLink(this.#isMine(found) ? found.car! : '');
    this.problem = read.ok || read.reason === 'not-a-car' ? undefined : read.reason;
    this.isLinked = false;
    if (found.car === undefined && !isAnew) return;
    if (isAnew && !this.problem) this.#model.restart(EMPTY_CAR);
    this.isLinked = read.ok && isAnyUsers(read.car);
    // A car of its own even so: elements tell anew what happened to the link.
    this.#model.replace((car) => (read.ok && this.isLinked ? withUsers(car, read.car) : { ...car }));
  }

  /** Shortly after the last change; no entry of its own in the browser's history. */
  readonly #follow = (): void => {
    if (!this.isKept) return;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(this.#write, PAUSE_MS);
  };

  readonly #flush = (): void => {
    if (this.#timer !== undefined) this.#write();
  };

  readonly #write = (): void => {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    const found = readFragment(location.hash);
    // A link that could not be read stays, until there is something to put in its place.
    const isOthers = found.isForeign || (found.car !== undefined && !this.#isMine(found));
    if (!this.isKept || isOthers || (this.problem && !isAnyUsers(this.#model.car))) return;
    const car = linkText(this.#model);
    const to = bare() + writeFragment(found.section, car);
    const was = this.isTooLong;
    this.isTooLong = to.length > LONGEST_LINK;
    if (was !== this.isTooLong) this.#model.dispatchEvent(new Event('change'));
    if (this.isTooLong || (to === location.href && markHere() === this.#mark)) return;
    this.#seen = car;
    try {
      history.replaceState(marked(this.#mark), '', to);
      // Whoever links to other pages of a site takes the car along.
      dispatchEvent(new Event('bumpline-address'));
    } catch (error) {
      // A frame without an address of its own, or too many changes at once.
      console.warn('Bumpline: the address could not be written; “Copy a link” gives one with everything in it.', error);
    }
  };
}

const bare = (): string => location.href.replace(/#.*$/s, '');

/** What a link says of a model's car; nothing of a car of which nobody gave anything. */
const linkText = ({ car }: CarModel): string | undefined => (isAnyUsers(car) ? carToLink(car) : undefined);

/** The page's address with a model's car in it, whether it is kept there or not. */
export function linkTo(model: CarModel, host: Element): string {
  const found = readFragment(location.hash);
  const section = found.isForeign ? '' : found.section;
  // Whoever does not keep the address reads it only where it is meant by name.
  const number = model.address?.isKept ? undefined : numberOnPage(host);
  return bare() + writeFragment(section, linkText(model), number);
}

/** Another page's address with all of a car in it, whoever gave it, as its reader's own; without any where it is the example's. */
export function wholeLinkInto(page: string, car: CarDocument): string {
  const whole = asUsersOwn(car);
  return isAnyUsers(whole) ? linkInto(page, whole) : page;
}

/** Another page's address with a car in it. */
export const linkInto = (page: string, car: CarDocument): string => page + writeFragment('', carToLink(car));
