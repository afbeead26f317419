import type { CarModel } from './car-model.js';

const REQUEST = 'bumpline-car-request';
const HERE = 'bumpline-car-here';

/** Asks for the car that an element stands in. Bubbles through shadow roots; the nearest provider answers and stops it. */
export class CarRequestEvent extends Event {
  /** Set by the provider, synchronously. */
  car: CarModel | Promise<CarModel> | undefined;

  constructor(bubbles: boolean) {
    super(REQUEST, { bubbles, composed: true });
  }
}

/** Answers the requests that reach an element. */
export function provideCar(provider: EventTarget, car: () => CarModel | Promise<CarModel>): void {
  provider.addEventListener(REQUEST, (event) => {
    event.stopPropagation();
    (event as CarRequestEvent).car = car();
  });
}

/** Has all elements of a document ask again: a provider has come, or its car is another. */
export const carIsHere = (document: Document): unknown => document.dispatchEvent(new Event(HERE));

/** Calls back whenever a provider has come. Gives back what stops it. */
export function onCarHere(document: Document, listener: () => void): () => void {
  document.addEventListener(HERE, listener);
  return () => document.removeEventListener(HERE, listener);
}

/**
 * The car of the provider with an id, or else of the nearest one around an element; undefined where there is none yet.
 *
 * @param id looked for in the element's own root, then in that of its host, and so on up
 */
export function findCar(element: Element, id: string | undefined): CarRequestEvent['car'] {
  const request = new CarRequestEvent(!id);
  const provider = id ? byId(element, id) : element;
  provider?.dispatchEvent(request);
  return request.car;
}

function byId(element: Element, id: string): Element | undefined {
  for (let root = element.getRootNode(); ; root = (root as ShadowRoot).host.getRootNode()) {
    const found = (root as Partial<DocumentOrShadowRoot & NonElementParentNode>).getElementById?.(id);
    if (found) return found;
    if (!(root instanceof ShadowRoot)) return undefined;
  }
}
