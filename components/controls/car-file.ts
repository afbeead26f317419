import type { CarDocument } from '../../core/document/car.js';
import { byUser, isAnyUsers, pagesOnly, usersOnly, withUsers } from '../../core/document/own-car.js';
import { readCar } from '../../core/document/read-car.js';
import { InputError } from '../../core/quantity/problem.js';
import { CONTROLS } from './controls.labels.js';

/** A car as a file: what its user gave, as JSON of the document. */
export const carFile = (car: CarDocument): string => `${JSON.stringify(usersOnly(car), undefined, 1)}\n`;

/** The car in such a file, or for people what is wrong with it. Never throws. */
export function carInFile(text: string): { car: CarDocument } | { problem: string } {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return { problem: CONTROLS.noJson };
  }
  try {
    const car = readCar(data);
    return { car: isAnyUsers(car) ? car : byUser(car) };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const [{ path, value }] = error.problems as [InputError['problems'][number]];
    return { problem: CONTROLS.badFile(path, value === undefined ? CONTROLS.nothing : String(value)) };
  }
}

/** A page's car with that of a file over it. */
export const withFile = (car: CarDocument, file: CarDocument): CarDocument => withUsers(pagesOnly(car), file);
