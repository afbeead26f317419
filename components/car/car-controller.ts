import type { LitElement, ReactiveController } from 'lit';
import { type CarDocument, EMPTY_CAR, givenPointCount } from '../../core/document/car.js';
import { isUsers } from '../../core/document/provenance.js';
import { setupsBy, sourceKindOf } from '../../core/document/setup-in-use.js';
import { shown } from '../../core/quantity/number-problem.js';
import type { Problem } from '../../core/quantity/problem.js';
import { inTime } from '../delivery/in-time.js';
import { onCarHere, requestCar } from './car-context.js';
import { CarModel, type KeptAddress, type PagePart } from './car-model.js';
import { carriesCar, carriesNumbered } from './carries-car.js';
import type { AllPageSays } from './page-says.js';

/** What an element has in common with every other that reads and writes a car. */
export interface CarElement extends LitElement {
  car: CarModel | undefined;
  carId: string | undefined;
  keepInAddress: boolean;
}

/** @param isLinked whether the reader's car came by a link: whatever a user gave stays then */
type Recipe = (car: CarDocument, isLinked: boolean) => CarDocument;

/** What a page says of one part of a car. */
interface PageSays {
  recipe: Recipe;
  /** Whether it says anything. */
  isGiven: boolean;
  /** The recipe itself leaves alone what a user gave: it is taken at any time, beside a car from a link too. */
  sparesUsers: boolean;
  /** What of it cannot be read. */
  problems: Problem[];
}

/** Not by its class: two versions on one page have two of them. One whose document says nothing of who gave what is older than these. */
const isModel = (given: unknown): given is CarModel =>
  given instanceof EventTarget &&
  'update' in given &&
  'car' in given &&
  typeof (given.car as Partial<CarDocument> | undefined)?.provenance === 'object';

/** Whether an answer about a car rests on a page's readings, or would if they could be read. */
export function restsOnReadings(car: CarDocument): boolean {
  const { given, whole, curve } = car;
  const isBare = whole === undefined && !curve && !given.measures && givenPointCount(car) === 0;
  return sourceKindOf(car) === 'readings' || (!isUsers(car, 'corner') && isBare);
}

const newCar = (): CarModel => new CarModel(EMPTY_CAR);

/**
 * Which car an element reads and writes: the one given as a property, that of the `bumpline-car` named by `car-id`, that of the
 * nearest one around it, else one of its own. Add it to the host when what `changed` needs is there.
 */
export class CarController implements ReactiveController {
  #host: CarElement;
  #changed: () => void;
  #own = newCar();
  #model = this.#own;
  #isProvided = false;
  /** The one that has taken what the page says. */
  #taken: CarModel | undefined;
  /** What a page's script handed over as a car, and is none. */
  #strange: unknown;
  #isListening = false;
  /** What the page says, by what it says it of. */
  #page = new Map<PagePart, PageSays>();
  /** What keeps an address that brings no car, on its way; not before it may come. */
  #keeping: Promise<void> | undefined;
  #mayKeep = false;
  /** The address on its way. */
  #reading: Promise<void> | undefined;
  #address: KeptAddress | undefined;
  /** Whether the car is written into the address. */
  #keeps = false;
  /** Whether the address has still to be read: what reads it did not come. */
  #isUnread = false;
  #stop: (() => void) | undefined;

  /** Counts what the page says. */
  pageRevision = 0;

  /** @param changed called when the car is another, or was changed */
  constructor(host: CarElement, changed: () => void) {
    this.#host = host;
    this.#changed = changed;
  }

  get model(): CarModel {
    return this.#model;
  }

  /** Whether the car is known; while the address is on its way, an answer would be about the wrong one. */
  get isReady(): boolean {
    return !this.#reading;
  }

  /** Resolves when the car is known. Never rejects. */
  async settle(): Promise<void> {
    while (this.#reading) await this.#reading;
    await this.#keeping;
  }

  /** Has come what keeps an address without a car: nobody needs it before the first answer. Never rejects. */
  async keep(): Promise<void> {
    if (!this.#mayKeep) {
      this.#mayKeep = true;
      if (this.#isListening && !this.#reading && !this.#address) this.#getAddress();
    }
    await this.settle();
  }

  /** Whether what the page says inside this element is about the car that is shown. */
  get isPages(): boolean {
    const { address, car } = this.#model;
    const isFree = !isUsers(car, 'corner');
    return this.#model === this.#own ? isFree || !address?.isLinked : this.#isProvided && isFree;
  }

  /**
   * What the page says in this element's attributes and light DOM. A shared car takes it only where it `isGiven`, and not once a
   * user has changed anything.
   *
   * @param what of which there is one in an element: the newest counts
   */
  pageGives(what: PagePart, recipe: Recipe, isGiven: boolean, sparesUsers = false, problems: Problem[] = []): void {
    this.#page.set(what, { recipe, isGiven, sparesUsers, problems });
    this.pageRevision++;
    this.#takePage(what);
  }

  /**
   * What is wrong with what a page says, in this element or another that shares the car, of parts that the answer rests on: as long
   * as nobody has put something of their own in its place. While there is any, an answer would be about another car.
   */
  pageProblems(...parts: PagePart[]): Problem[] {
    if (this.#strange !== undefined) return [{ code: 'wrong-shape', path: 'car', value: shown(this.#strange) }];
    const { car, undoLabel } = this.#model;
    const isPages = !isUsers(car, 'corner');
    const counts: Record<PagePart, boolean> = {
      source: isPages,
      heights: isPages && undoLabel === undefined && car.provenance.drop?.by !== 'user',
      setups: setupsBy(car) !== 'user',
      fit: !isUsers(car, 'fit'),
      limits: isPages && !isUsers(car, 'fit'),
      car: isPages && setupsBy(car) !== 'user' && !isUsers(car, 'fit'),
    };
    return [...parts, 'car' as const].flatMap((part) => (counts[part] ? this.#model.pageProblems(part) : []));
  }

  /** All that the page says in this element. */
  get allPageSays(): AllPageSays {
    const said = [...this.#page.values()].filter(({ isGiven }) => isGiven);
    return {
      car: said.reduce((car, { recipe }) => recipe(car, false), EMPTY_CAR),
      problems: [...this.#page.values()].flatMap(({ problems }) => problems),
    };
  }

  /** The id of a car that the page names and nobody has, so far. */
  get unknownCar(): string | undefined {
    const { carId, car } = this.#host;
    return carId && !car && !this.#isProvided ? carId : undefined;
  }

  #takePage(what: PagePart): void {
    const { recipe, isGiven, sparesUsers, problems } = this.#page.get(what)!;
    const isOwn = this.#model === this.#own;
    // Before anybody answers from what is left of it; mended, once it is there.
    if (problems.length > 0) this.#tellProblems(what);
    const { address, undoLabel } = this.#model;
    const isLinked = address?.isLinked === true;
    const spares = sparesUsers || isLinked;
    const isFree = isOwn || (isGiven && (spares || undoLabel === undefined));
    if (isFree && (spares ? isOwn || this.#isProvided : this.isPages)) {
      this.#model.replace((car) => this.#filled(what, recipe(car, isLinked), isLinked));
    }
    // Who waited for it has to know that it came to nothing.
    else if (this.#isListening) this.#changed();
    if (problems.length === 0) this.#tellProblems(what);
  }

  /** What a page says in attributes comes before what it says of a whole car. */
  #filled(what: PagePart, car: CarDocument, isLinked: boolean): CarDocument {
    const whole = what === 'car' ? undefined : this.#page.get('car');
    return whole ? whole.recipe(car, isLinked) : car;
  }

  /** The car is begun anew: what the page says is its own again. */
  readonly #sayAgain = (): void => {
    for (const what of this.#page.keys()) this.#takePage(what);
  };

  #tellProblems(what: PagePart): void {
    if (this.#model === this.#own || this.#isProvided)
      this.#model.tellPageProblems(this, what, this.#page.get(what)!.problems);
  }

  hostConnected(): void {
    this.#stop = onCarHere(this.#host.ownerDocument, () => this.find());
    this.find();
  }

  hostDisconnected(): void {
    this.#stop?.();
    this.#letGo();
  }

  /** Looks for the car again: a property has changed, or a provider has come. */
  find(): void {
    const { car, carId, keepInAddress, isConnected } = this.#host;
    if (!isConnected) return;
    const request = car ? undefined : requestCar(this.#host, carId, newCar);
    const given: unknown = car ?? request?.car;
    this.#strange = given === undefined || isModel(given) ? undefined : given;
    const next = isModel(given) ? given : this.#own;
    if (next === this.#model && this.#isListening) return;
    this.#letGo();
    this.#model = next;
    this.#isProvided = isModel(request?.car);
    // What somebody gave before the shared car came is not lost.
    if (this.#isProvided && isUsers(this.#own.car, 'corner') && !isUsers(next.car, 'corner')) {
      next.replace(() => this.#own.car);
    }
    // A car that has taken what the page says keeps what became of it: an element is moved, or its car is found again.
    for (const what of this.#page.keys()) {
      if (next === this.#taken) this.#tellProblems(what);
      else this.#takePage(what);
    }
    this.#taken = next;
    this.#isListening = true;
    next.addEventListener('change', this.#changed);
    next.addEventListener('restart', this.#sayAgain);
    this.#keeps = keepInAddress || request?.keepInAddress === true;
    if (!this.#isCarried) this.#changed();
    this.#getAddress();
  }

  /** A link that was copied here brings its car, whether the address is kept up or not. */
  get #isCarried(): boolean {
    return this.#keeps ? carriesCar(location.hash) : carriesNumbered(location.hash);
  }

  #getAddress(): void {
    if (this.#isCarried) this.#reading = this.#readAddress(this.#model);
    // An address without a car has nothing to wait for: what keeps it comes after the answer.
    else if (this.#keeps && this.#mayKeep) this.#keeping = this.#readAddress(this.#model);
  }

  /** Reads the address, where what reads it did not come. */
  retry(): void {
    if (!this.#isUnread || this.#reading || !this.#isListening) return;
    this.#isUnread = false;
    this.#getAddress();
  }

  async #readAddress(model: CarModel): Promise<void> {
    try {
      const { AddressKeeper } = await inTime(import('./address.js'));
      if (model === this.#model && this.#isListening) {
        this.#address ??= AddressKeeper.hold(model, this.#host, this.#keeps);
      }
    } catch (error) {
      this.#isUnread = true;
      console.warn('Bumpline: the address could not be read; it is tried again when the connection is back.', error);
    }
    if (model !== this.#model) return;
    const waited = this.#reading !== undefined;
    this.#reading = undefined;
    // The link itself, and what became of it, is to be seen all the same.
    if (waited) this.#changed();
    else this.#host.requestUpdate();
  }

  #letGo(): void {
    this.#isListening = false;
    this.#reading = undefined;
    this.#model.removeEventListener('change', this.#changed);
    this.#model.removeEventListener('restart', this.#sayAgain);
    for (const what of this.#page.keys()) this.#model.tellPageProblems(this, what, []);
    this.#address?.release();
    this.#address = undefined;
  }
}
