import { setViewport } from '@web/test-runner-commands';
import type { BumplineStaticCamber } from '../../../components/bumpline-static-camber/bumpline-static-camber.js';
import { CarModel } from '../../../components/car/car-model.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { byUser } from '../../../core/document/own-car.js';
import { takeCorner } from '../../../core/document/take-corner.js';
import { all, find, put, settled, textOf } from '../contract/stage.js';

export type Element = BumplineStaticCamber & Parameters<typeof settled>[0];

/** The element as a page has it. */
export async function shown(attributes = '', inside = '', width = 360): Promise<Element> {
  await setViewport({ width, height: 780 });
  const [element] = await put(
    'bumpline-static-camber',
    `<bumpline-static-camber ${attributes}>${inside}</bumpline-static-camber>`,
  );
  element!.parentElement!.style.width = `${width}px`;
  await settled(element!);
  return element as Element;
}

/** The example's corner as a car of one's own. */
export const OWN: CarDocument = { ...EMPTY_CAR, by: 'points', ...takeCorner(EXAMPLE_CORNER), drop: 25 };

/** About a car that can be looked at. */
export async function withCar(car: CarDocument = OWN, width = 360): Promise<Element & { car: CarModel }> {
  const element = await shown('', '', width);
  element.car = new CarModel(byUser(car));
  await settled(element);
  return element as Element & { car: CarModel };
}

export const said = (element: Element): string => textOf(find(element, '.says'));
export const sentenceFields = (element: Element): HTMLInputElement[] =>
  all<HTMLInputElement>(element, '.sentence input');
/** The ways as they stand in the table. */
export const order = (element: Element): string[] =>
  all(element, '.ways tbody tr[data-way]').map((row) => row.dataset.way!);
export const cell = (element: Element, way: string, cost: string): string =>
  textOf(find(element, `tr[data-way="${way}"] td[data-cost="${cost}"] b`));

export async function typeInto(element: Element, input: HTMLInputElement, text: string): Promise<void> {
  input.focus();
  input.value = text;
  input.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
  input.blur();
  await settled(element);
}
