import type { LitElement, ReactiveController } from 'lit';
import { type CarDocument, EMPTY_CAR } from '../../core/document/car.js';
import type { AddressKeeper } from './address.js';
import { onCarHere, requestCar } from './car-context.js';
import { CarModel } from './car-model.js';

/** What an element has in common with every other that reads and writes a car. */
export interface CarElement extends LitElement {
  car: CarModel | undefined;
  carId: string | undefined;
  keepInAddress: boolean;
}

type Recipe = (car: CarDocument) => CarDocument;

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
  #isListening = false;
  /** What the page says, by what it says it of. */
  #page = new Map<string, { recipe: Recipe; isGiven: boolean; sparesUsers: boolean }>();
  /** The address on its way. */
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

  /** Whether the car is known; while the address is on its way, an answer would be about the wrong one. */
  get isReady(): boolean {
    return !this.#reading;
  }

  /** Resolves when the car is known. Never rejects. */
  async settle(): Promise<void> {
    while (this.#reading) await this.#reading;
  }

  /** Whether what the page says inside this element is about the car that is shown. */
  get isPages(): boolean {
    const { address, car } = this.#model;
    return !address?.isLinked && (this.#model === this.#own || (this.#isProvided && car.givenBy === 'page'));
  }

  /**
   * What the page says in this element's attributes and light DOM. A shared car takes it only where it `isGiven`, and not once a
   * user has changed anything.
   *
   * @param what of which there is one in an element: the newest counts
   * @param sparesUsers the recipe itself leaves alone what a user gave: it is taken at any time, beside a car from a link too
   */
  pageGives(what: string, recipe: Recipe, isGiven: boolean, sparesUsers = false): void {
    this.#page.set(what, { recipe, isGiven, sparesUsers });
    this.#takePage(what);
  }

  #takePage(what: string): void {
    const { recipe, isGiven, sparesUsers } = this.#page.get(what)!;
    const isOwn = this.#model === this.#own;
    const isFree = isOwn || (isGiven && (sparesUsers || this.#model.undoLabel === undefined));
    if (isFree && (sparesUsers ? isOwn || this.#isProvided : this.isPages)) this.#model.replace(recipe);
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

  /** Looks for the car again: a property has changed, or a provider has come. */
  find(): void {
    const { car, carId, keepInAddress, isConnected } = this.#host;
    if (!isConnected) return;
    const request = car ? undefined : requestCar(this.#host, carId, newCar);
    const next = car ?? request?.car ?? this.#own;
    if (next === this.#model && this.#isListening) return;
    this.#letGo();
    this.#model = next;
    this.#isProvided = request?.car !== undefined;
    // What somebody gave before the shared car came is not lost.
    if (this.#isProvided && this.#own.car.givenBy === 'user' && next.car.givenBy === 'page') {
      next.replace(() => this.#own.car);
    }
    for (const what of this.#page.keys()) this.#takePage(what);
    this.#isListening = true;
    next.addEventListener('change', this.#changed);
    if (keepInAddress || request?.keepInAddress) this.#reading = this.#keepInAddress(next);
    else this.#changed();
  }

  async #keepInAddress(model: CarModel): Promise<void> {
    try {
      const { AddressKeeper } = await import('./address.js');
      if (model === this.#model && this.#isListening) this.#address ??= AddressKeeper.hold(model);
    } catch (error) {
      console.warn('Bumpline: the address could not be read; the example is shown.', error);
    }
    if (model !== this.#model) return;
    this.#reading = undefined;
    this.#changed();
  }

  #letGo(): void {
    this.#isListening = false;
    this.#reading = undefined;
    this.#model.removeEventListener('change', this.#changed);
    this.#address?.release();
    this.#address = undefined;
  }
}
