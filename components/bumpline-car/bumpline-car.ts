import { css, html, LitElement, type PropertyValues, type TemplateResult } from 'lit';
import { VERSION } from '../../core/version.js';
import type { AddressKeeper } from '../shared/address.js';
import { carIsHere, provideCar } from '../shared/car-context.js';
import type { CarModel } from '../shared/car-model.js';

/**
 * One car for several elements: those inside it, or that name its id in `car-id`, read and write the same one, so that what is
 * given in one shows in all and undo is shared. Holds data and draws nothing.
 *
 * @element bumpline-car
 * @slot - The elements that share the car, and whatever stands between them.
 */
export class BumplineCar extends LitElement {
  static readonly version = VERSION;
  static override styles = css`
    :host {
      display: contents;
    }
  `;
  static override properties = {
    car: { attribute: false },
    keepInAddress: { type: Boolean, attribute: 'keep-in-address' },
  };

  /** The car's state; one of its own unless a page sets another. Undefined until that is there. */
  declare car: CarModel | undefined;
  /** Reads the car from the page's address and keeps it there, so that a reload or a sent link shows the same. */
  declare keepInAddress: boolean;

  #coming: Promise<CarModel> | undefined;
  #ready: CarModel | undefined;
  #address: AddressKeeper | undefined;

  constructor() {
    super();
    this.keepInAddress = false;
    provideCar(this, () => this.#give());
  }

  /** Resolves when the car is there. Never rejects. */
  get settled(): Promise<void> {
    return this.updateComplete
      .then(() => this.#coming)
      .then(
        () => {},
        () => {},
      );
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#prepare();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#address?.release();
    this.#address = undefined;
    this.#ready = undefined;
  }

  #give(): CarModel | Promise<CarModel> {
    return this.#ready ?? this.#coming ?? this.#start();
  }

  #prepare(): void {
    this.#address?.release();
    this.#address = undefined;
    this.#ready = undefined;
    this.#start().catch((error) => console.warn('Bumpline: the shared car could not be fetched.', error));
    carIsHere(this.ownerDocument);
  }

  #start(): Promise<CarModel> {
    const coming = this.#load().then((car) => {
      if (this.#coming === coming) this.#ready = car;
      return car;
    });
    this.#coming = coming;
    return coming;
  }

  async #load(): Promise<CarModel> {
    if (!this.car) {
      const { emptyCar } = await import('./shared-car.js');
      this.car ??= emptyCar();
    }
    const { car } = this;
    if (!this.keepInAddress) return car;
    try {
      const { AddressKeeper } = await import('../shared/address.js');
      if (this.isConnected && car === this.car) this.#address ??= AddressKeeper.hold(car);
    } catch (error) {
      console.warn('Bumpline: the address could not be read; the example is shown.', error);
    }
    return car;
  }

  protected override updated(changed: PropertyValues): void {
    // Set by a page, not by us.
    if (changed.get('car') && this.isConnected && this.#ready && this.car !== this.#ready) this.#prepare();
  }

  protected override render(): TemplateResult {
    return html`<slot></slot>`;
  }
}
