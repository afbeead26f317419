import type { LitElement, ReactiveController } from 'lit';
import { type CarDocument, EMPTY_CAR } from '../../core/document/car.js';
import type { AddressKeeper } from './address.js';
import { findCar, onCarHere } from './car-context.js';
import { CarModel } from './car-model.js';

/** What an element has in common with every other that reads and writes a car. */
export interface CarElement extends LitElement {
  car: CarModel | undefined;
  carId: string | undefined;
  keepInAddress: boolean;
}

type Recipe = (car: CarDocument) => CarDocument;

/**
 * Which car an element reads and writes: the one given as a property, that of the `bumpline-car` named by `car-id`, that of the
 * nearest one around it, else one of its own. Add it to the host when what `changed` needs is there.
 */
export class CarController implements ReactiveController {
  #host: CarElement;
  #changed: () => void;
  #own = new CarModel(EMPTY_CAR);
  #model = this.#own;
  #isFound = false;
  #isListening = false;
  /** What the page says, by what it says it of. */
  #page = new Map<string, { recipe: Recipe; isGiven: boolean }>();
  #turn = 0;
  /** The provider's car on its way, and the address. */
  #finding: Promise<void> | undefined;
  #reading: Promise<void> | undefined;
  #address: AddressKeeper | undefined;
  #stop: (() => void) | undefined;

  /** @param changed called when the car is another, or was changed */
  constructor(host: CarElement, changed: () => void) {
    this.#host = host;
    this.#changed = changed;
  }

  get model(): CarModel {
    return this.#model;
  }

  get address(): AddressKeeper | undefined {
    return this.#model.address;
  }

  /** Whether the car is known; while it is on its way, an answer would be about the wrong one. */
  get isReady(): boolean {
    return !this.#finding && !this.#reading;
  }

  /** Resolves when the car is known. Never rejects. */
  async settle(): Promise<void> {
    while (!this.isReady) await (this.#finding ?? this.#reading);
  }

  /** Whether what the page says inside this element is about the car that is shown. */
  get isPages(): boolean {
    if (this.address?.isLinked) return false;
    return this.#model === this.#own || (this.#isFound && this.#model.car.givenBy === 'page');
  }

  /**
   * What the page says in this element's attributes and light DOM. A shared car takes it only where it `isGiven`, and not once a
   * user has changed anything.
   */
  pageGives(what: string, recipe: Recipe, isGiven: boolean): void {
    this.#page.set(what, { recipe, isGiven });
    this.#takePage(what);
  }

  #takePage(what: string): void {
    const { recipe, isGiven } = this.#page.get(what)!;
    const isOwn = this.#model === this.#own;
    if (this.isPages && (isOwn || (isGiven && this.#model.undoLabel === undefined))) this.#model.replace(recipe);
    // Who waited for it has to know that it came to nothing.
    else if (this.#isListening) this.#changed();
  }

  hostConnected(): void {
    this.#stop = onCarHere(this.#host.ownerDocument, () => this.find());
    this.find();
  }

  hostDisconnected(): void {
    this.#stop?.();
    this.#letGo();
  }

  /** Looks for the car again: a property has changed, or the element stands elsewhere. */
  find(): void {
    const { car, carId, isConnected } = this.#host;
    if (!isConnected) return;
    const turn = ++this.#turn;
    const found = car ? undefined : findCar(this.#host, carId);
    const wasFinding = this.#finding !== undefined;
    this.#finding = undefined;
    if (!(found instanceof Promise)) {
      this.#use(car ?? found, found !== undefined, wasFinding);
      return;
    }
    const take = (model?: CarModel) => {
      if (turn !== this.#turn) return;
      this.#finding = undefined;
      if (this.#host.isConnected) this.#use(model, model !== undefined, true);
    };
    this.#finding = found.then(take, () => take());
  }

  /** @param isLate whether the element has waited for it */
  #use(model: CarModel | undefined, isFound: boolean, isLate: boolean): void {
    const next = model ?? this.#own;
    if (next !== this.#model || !this.#isListening) this.#listen(next, isFound);
    else if (!isLate) return;
    if (this.isReady) this.#changed();
  }

  #listen(model: CarModel, isFound: boolean): void {
    this.#letGo();
    this.#model = model;
    this.#isFound = isFound;
    // What somebody typed before the shared car came is not lost.
    if (isFound && this.#own.car.givenBy === 'user' && model.car.givenBy === 'page') model.replace(() => this.#own.car);
    for (const what of this.#page.keys()) this.#takePage(what);
    this.#isListening = true;
    model.addEventListener('change', this.#changed);
    if (!this.#host.keepInAddress) return;
    const reading = this.#keepInAddress(model).then(() => {
      if (reading !== this.#reading) return;
      this.#reading = undefined;
      this.#changed();
    });
    this.#reading = reading;
  }

  async #keepInAddress(model: CarModel): Promise<void> {
    try {
      const { AddressKeeper } = await import('./address.js');
      if (model === this.#model && this.#isListening) this.#address ??= AddressKeeper.hold(model);
    } catch (error) {
      console.warn('Bumpline: the address could not be read; the example is shown.', error);
    }
  }

  #letGo(): void {
    this.#isListening = false;
    this.#reading = undefined;
    this.#model.removeEventListener('change', this.#changed);
    this.#address?.release();
    this.#address = undefined;
  }
}
