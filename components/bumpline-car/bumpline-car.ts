import { css, html, LitElement, type TemplateResult } from 'lit';
import { VERSION } from '../../core/version.js';
import { carIsHere, provideCar } from '../car/car-context.js';
import type { CarModel } from '../car/car-model.js';

/**
 * One car for several elements.
 *
 * Those inside it, or that name its id in `car-id`, read and write the same car, so that what is given in one shows in all and undo is
 * shared. It holds data and draws nothing. JSON of a whole car, inside any of them, has these fields: `CarDocument`.
 *
 * @element bumpline-car
 * @tells CarDocument of core/document/car-schema.ts alone
 * @slot - The elements that share the car, and whatever stands between them.
 */
export class BumplineCar extends LitElement {
  /** Of the package. */
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

  /** The car's state: the page's own `CarModel` from `bumpline`, or one that the first element brings that asks for it. */
  declare car: CarModel | undefined;
  /**
   * Reads a reader's car from your page's address and keeps it there (the part after #), for all elements that share this car. It takes
   * no value.
   */
  declare keepInAddress: boolean;

  constructor() {
    super();
    this.keepInAddress = false;
    provideCar(this, (request) => {
      this.car ??= request.offer();
      request.car = this.car;
      request.keepInAddress = this.keepInAddress;
    });
  }

  /** The first time as well: elements may have been there before. */
  protected override updated(): void {
    carIsHere(this.ownerDocument);
  }

  protected override render(): TemplateResult {
    return html`<slot></slot>`;
  }
}
