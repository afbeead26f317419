import { setViewport } from '@web/test-runner-commands';
import type { BumplinePredict } from '../../../components/bumpline-predict/bumpline-predict.js';
import { CarModel } from '../../../components/car/car-model.js';
import { curveOf } from '../../../core/curve/curve.js';
import { solveSource } from '../../../core/curve-sources/solve-source.js';
import { type CarDocument, EMPTY_CAR } from '../../../core/document/car.js';
import { EXAMPLE_CORNER } from '../../../core/document/example-corner.js';
import { EXAMPLE_DRIVEWAY } from '../../../core/document/example-driveway.js';
import { EXAMPLE_SETUPS } from '../../../core/document/example-setups.js';
import { EXAMPLE_PARTS } from '../../../core/document/linked-sets.js';
import { byUser } from '../../../core/document/own-car.js';
import type { Setup } from '../../../core/document/setup.js';
import { takeCorner } from '../../../core/document/take-corner.js';
import { find, put, settled, textOf } from '../contract/stage.js';

export type Element = BumplinePredict & Parameters<typeof settled>[0] & { car: CarModel };

export async function shown(attributes = '', inside = '', width = 360): Promise<Element> {
  await setViewport({ width, height: 780 });
  const [element] = await put('bumpline-predict', `<bumpline-predict ${attributes}>${inside}</bumpline-predict>`);
  element!.parentElement!.style.width = `${width}px`;
  await settled(element!);
  return element as Element;
}

export async function withCar(car: CarDocument, width = 360): Promise<Element> {
  const element = await shown('', '', width);
  element.car = new CarModel(byUser(car));
  await settled(element);
  return element;
}

export const [STOCK] = EXAMPLE_SETUPS as readonly [Setup];
export const [JOINT] = EXAMPLE_PARTS as readonly [Setup];
const { camber: _, ...measures } = EXAMPLE_DRIVEWAY;
export const LINKS: CarDocument = { ...EMPTY_CAR, by: 'points', ...takeCorner(EXAMPLE_CORNER), drop: 25 };
export const TAPED: CarDocument = { ...EMPTY_CAR, given: { points: {}, measures }, drop: 25 };
/** All that a prediction needs, of somebody's own. */
export const OWN: CarDocument = { ...LINKS, setups: [STOCK, JOINT], fitted: 1 };

const truth = curveOf(
  solveSource({ kind: 'parts', of: { kind: 'corner', corner: EXAMPLE_CORNER }, parts: JOINT.parts! }).camber,
);
/** The joint on, and read in two passes: as the links have it, within what a gauge shows; `times` as much. */
export const fitted = (times = 1): Setup => ({
  ...JOINT,
  readings: ['1', '2'].flatMap((pass, p) =>
    Array.from({ length: 20 }, (_, i) => {
      const travel = -25 + 5 * i;
      const value = times * truth.value(travel) + 0.02 * ((i % 3) - 1) + 0.1 * p;
      return { travel, value: Math.round(100 * value) / 100, pass };
    }),
  ),
});

export const said = (element: Element): string => textOf(find(element, '.sentence'));
