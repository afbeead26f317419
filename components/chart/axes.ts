import { formatQuantity } from '../../core/quantity/format.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { MM_PER_INCH } from '../../core/quantity/units.js';
import type { Display } from '../element/sentence.js';
import type { ChartModel } from './model.js';

/** Values of a quantity, with their unit and for the axis without. */
function written(quantity: Quantity, sign: 'auto' | 'always', { units, language }: Display) {
  const write = (unit: boolean) => (amount: number) =>
    formatQuantity(amount, quantity, units, { language, sign, unit }).text;
  return { format: write(true), tick: write(false) };
}

/** @param domain mm */
export function travelAxis(label: string, domain: [number, number], display: Display): ChartModel['x'] {
  const { length } = display.units;
  const [unit, step] = length === 'in' ? [MM_PER_INCH, 1.27] : [1, 1];
  return { label: `${label}, ${length}`, domain, ...written('travel', 'always', display), unit, step };
}

/** @param least of it that is shown, degrees */
export function angleAxis(
  label: string,
  quantity: 'camber' | 'toe' | 'camberChange',
  display: Display,
  least: number,
): ChartModel['y'] {
  const isFine = display.units.angle === 'arcminutes';
  return {
    label: `${label}, ${isFine ? '° ′' : '°'}`,
    ...written(quantity, quantity === 'camber' ? 'auto' : 'always', display),
    unit: isFine ? 1 / 6 : 1,
    minSpan: least,
  };
}

/** @param least of it that is shown, mm */
export function lengthAxis(label: string, display: Display, least: number): ChartModel['y'] {
  const { length } = display.units;
  const unit = length === 'in' ? MM_PER_INCH : 1;
  return { label: `${label}, ${length}`, ...written('travel', 'auto', display), unit, minSpan: least };
}
