import type { CarDocument } from '../../core/document/car.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { Display } from '../element/sentence.js';
import type { SheetSpec } from './sheet-spec.js';

/** A value of a sheet as rows show it: of several coordinates without the unit. */
export function valueText(value: number, sheet: SheetSpec, index: number, { units, language }: Display): string {
  const { quantity } = sheet.fields[index]!;
  return formatQuantity(value, quantity, units, {
    language,
    unit: quantity !== 'coordinate' || sheet.fields.length === 1,
  }).text;
}

/** All that was given on a sheet, with its ±. */
export function sheetValuesText(sheet: SheetSpec, car: CarDocument, display: Display): string {
  const values = sheet.read(car)?.map((value, i) => valueText(value, sheet, i, display)) ?? [];
  const plusMinus = sheet.doubt?.read(car);
  const quantity = sheet.fields[0]?.quantity;
  const doubtOf = quantity === 'coordinate' || quantity === 'loadedRadius' ? 'plusMinusLength' : 'plusMinusAngle';
  const { units, language } = display;
  const doubt =
    plusMinus === undefined ? [] : [`±\u202f${formatQuantity(plusMinus, doubtOf, units, { language }).text}`];
  return [...values, ...doubt].join('  ');
}
