import type { CarModel } from './car-model.js';

const REQUEST = 'bumpline-car-request';
const HERE = 'bumpline-car-here';

/** Asks for the car that an element stands in. Bubbles through shadow roots; the nearest provider answers and stops it. */
export class CarRequestEvent extends Event {
  /** Makes a car for a provider that has none yet: so a provider needs to know nothing of cars. */
  readonly offer: () => CarModel;
  /** Set by the provider, at once. */
  car?: CarModel;
  /** Whether the provider wants it kept in the page's address. */
  keepInAddress?: boolean;

  constructor(bubbles: boolean, offer: () => CarModel) {
    super(REQUEST, { bubbles, composed: true });
    this.offer = offer;
  }
}

/** Answers the requests that reach an element. */
export function provideCar(provider: EventTarget, answer: (request: CarRequestEvent) => void): void {
  provider.addEventListener(REQUEST, (event) => {
    event.stopPropagation();
    answer(event as CarRequestEvent);
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
 * Asks the provider with an id, or else the nearest one around an element; its `car` is undefined where there is none yet.
 *
 * @param id looked for in the element's own root, then in that of its host, and so on up
 */
export function requestCar(element: Element, id: string | undefined, offer: () => CarModel): CarRequestEvent {
  const request = new CarRequestEvent(!id, offer);
  (id ? byId(element, id) : element)?.dispatchEvent(request);
  return request;
}

function byId(element: Element, id: string): Element | undefined {
  for (let root = element.getRootNode(); ; root = (root as ShadowRoot).host.getRootNode()) {
    const found = (root as Partial<NonElementParentNode>).getElementById?.(id);
    if (found) return found;
    if (!(root instanceof ShadowRoot)) return undefined;
  }
}
