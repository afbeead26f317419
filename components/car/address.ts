import { type CarDocument, withHeights } from '../../core/document/car.js';
import { carFromLink, carToLink } from '../../core/document/link.js';
import { gave, give, isUsers } from '../../core/document/provenance.js';
import type { CarModel, KeptAddress } from './car-model.js';

/** A pause in editing after which the address follows, ms. */
const PAUSE_MS = 300;

/**
 * The car in a page's address: read from it, and kept there while it is edited, so that a reload or a sent link shows the same.
 * One a model, however many elements ask for it.
 */
export class AddressKeeper implements KeptAddress {
  problem: 'newer' | 'damaged' | undefined;
  isLinked = false;
  #model: CarModel;
  #holders = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;

  private constructor(model: CarModel) {
    this.#model = model;
    this.#read();
  }

  /** The keeper of a model; the first call reads the address. Each call wants its `release`. */
  static hold(model: CarModel): KeptAddress {
    model.address ??= new AddressKeeper(model);
    model.address.hold();
    return model.address;
  }

  hold(): void {
    if (this.#holders++ > 0) return;
    addEventListener('hashchange', this.#read);
    this.#model.addEventListener('change', this.#follow);
  }

  release(): void {
    if (--this.#holders > 0) return;
    removeEventListener('hashchange', this.#read);
    this.#model.removeEventListener('change', this.#follow);
  }

  readonly #read = (): void => {
    const read = carFromLink(location.hash);
    this.problem = read.ok || read.reason === 'not-a-car' ? undefined : read.reason;
    if (read.ok && isUsers(read.car, 'corner')) {
      this.isLinked = true;
      this.#model.restart(read.car);
    } else {
      // A car of its own even so: elements tell anew what happened to the link.
      this.#model.replace((car) => (read.ok ? withoutCorner(car, read.car) : { ...car }));
    }
  };

  /** Shortly after a user's last change; no entry of its own in the browser's history. */
  readonly #follow = (): void => {
    if ((this.#model.undoLabel ?? this.#model.redoLabel) === undefined) return;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => history.replaceState(history.state, '', this.link), PAUSE_MS);
  };

  get link(): string {
    return `${location.href.replace(/#.*$/, '')}#${carToLink(this.#model.car)}`;
  }
}

/** What a link says without a corner is of the car that is there: heights, what is compared, the user's wheels, places and limits. */
function withoutCorner(car: CarDocument, linked: CarDocument): CarDocument {
  const { lowered, measuredAt, compare, readingsOver } = linked;
  const at = {
    ...withHeights(car, linked, 'user'),
    ...(lowered && { lowered }),
    ...(measuredAt !== undefined && { measuredAt }),
    ...(compare && { compare }),
    ...(readingsOver !== undefined && { readingsOver }),
  };
  return isUsers(linked, 'fit') ? give(at, 'fit', 'user', () => gave(linked, 'fit', 'user')) : at;
}
