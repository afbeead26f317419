import { type CarFromLink, carFromLink, carToLink } from '../../core/document/link.js';
import type { CarModel } from '../shared/car-model.js';

/** A pause in editing after which the address follows, ms. */
const PAUSE_MS = 300;

/** The car in a page's address: read from it, and kept there while it is edited, so that a reload or a sent link shows the same. */
export class AddressKeeper {
  #timer: ReturnType<typeof setTimeout> | undefined;

  /** What the address carries now. */
  read(): CarFromLink {
    return carFromLink(location.hash);
  }

  /** Shortly after the last change; no entry of its own in the browser's history. */
  follow(model: CarModel): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => history.replaceState(history.state, '', this.linkTo(model)), PAUSE_MS);
  }

  linkTo({ car }: CarModel): string {
    return `${location.href.replace(/#.*$/, '')}#${carToLink(car)}`;
  }
}
