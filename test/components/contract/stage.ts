import '../../../components/define.js';
import { CarModel } from '../../../components/car/car-model.js';
import type { CarDocument } from '../../../core/document/car.js';
import type { ContractElement } from './elements.js';

/** What the suite knows of any sheet. */
export interface Sheet extends HTMLElement {
  readonly state: string;
  readonly answer: unknown;
  readonly problems: { path: string }[];
  readonly settled: Promise<void>;
  readonly updateComplete: Promise<boolean>;
  car: CarModel | undefined;
}

export const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));
export const root = (element: Element): ShadowRoot => element.shadowRoot!;
export const find = <E extends Element = HTMLElement>(element: Element, selector: string): E | null =>
  root(element).querySelector<E>(selector);
export const all = <E extends Element = HTMLElement>(element: Element, selector: string): E[] => [
  ...root(element).querySelectorAll<E>(selector),
];
export const textOf = (node: Node | null): string => (node?.textContent ?? '').replace(/\s+/g, ' ').trim();

let place: HTMLElement | undefined;

/** Takes away what the test before put on the page. */
export function clear(): void {
  place?.remove();
  place = undefined;
}

/** Looks again and again until something is so, for some seconds at the most: machines differ. */
export async function until(what: string, isSo: () => unknown): Promise<void> {
  for (const from = performance.now(); !isSo(); await wait(10))
    if (performance.now() - from > 30_000) throw new Error(`Waited in vain: ${what}.`);
}

/** After the next frame has been painted. */
const painted = (): Promise<void> => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));

/** The elements of some markup once they have settled, in order. */
export async function put(tag: string, markup: string): Promise<Sheet[]> {
  clear();
  place = document.createElement('main');
  place.style.width = '360px';
  place.innerHTML = markup;
  document.body.append(place);
  const elements = [...place.querySelectorAll<Sheet>(tag)];
  await settled(...elements);
  return elements;
}

export async function settled(...elements: Sheet[]): Promise<void> {
  for (const element of elements) {
    await element.settled;
    await wait(0);
    await element.settled;
  }
}

/** One element alone, with attributes and light DOM. */
export async function one({ tag }: Pick<ContractElement, 'tag'>, attributes = '', inside = ''): Promise<Sheet> {
  const [element] = await put(tag, `<${tag} ${attributes}>${inside}</${tag}>`);
  return element!;
}

/** One about a given car. */
export async function withCar(record: ContractElement, car: CarDocument): Promise<Sheet> {
  const element = await one(record);
  element.car = new CarModel(car);
  await settled(element);
  return element;
}

/** The number in its sentence. */
export const field = (element: Element): HTMLInputElement => find<HTMLInputElement>(element, '.sentence input')!;

export async function type(element: Sheet, text: string): Promise<void> {
  const input = field(element);
  input.focus();
  input.value = text;
  input.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
  input.dispatchEvent(new Event('change', { bubbles: true }));
  input.blur();
  await settled(element);
}

export async function press(element: Sheet, selector: string): Promise<void> {
  const button = find<HTMLButtonElement>(element, selector);
  if (!button) throw new Error(`<${element.localName}> has no ${selector}.`);
  button.click();
  await settled(element);
}

/** The charts that stand in the window are drawn. */
export async function charted(element: Sheet): Promise<void> {
  // An observer tells a frame later what has come near.
  await painted();
  await painted();
  const isDue = (box: Element) => {
    const { top, bottom } = box.getBoundingClientRect();
    return box.checkVisibility() && bottom > 0 && top < innerHeight;
  };
  await until('a chart in the window is drawn', () =>
    all(element, '.chart-box').every((box) => box.querySelector('svg') || !isDue(box)),
  );
  await settled(element);
}

/** Everything unfolded. */
export async function unfold(element: Sheet): Promise<void> {
  for (const details of all<HTMLDetailsElement>(element, 'details')) details.open = true;
  await settled(element);
  await charted(element);
}

/** Of its answer; undefined while there is none. */
export const read = ({ read: of }: ContractElement, element: Sheet): number | undefined =>
  element.answer === undefined ? undefined : of(element.answer as never);

const bare = () => location.href.replace(/#.*$/, '');
export function setAddress(hash: string): void {
  const address = `${bare()}${hash}`;
  // One engine refuses the hundredth change in ten seconds.
  if (location.href !== new URL(address, location.href).href || history.state !== null) {
    history.replaceState(null, '', address);
  }
}
