import { type CarDocument, isAnyEnd } from '../../core/document/car.js';
import { isBare, isFilled } from '../../core/document/provenance.js';
import type { Problem } from '../../core/quantity/problem.js';

/** What a page says in one element, as a car of which nobody said anything else. */
export interface AllPageSays {
  car: CarDocument;
  /** What of it cannot be read. */
  problems: readonly Problem[];
}

/** Whether it says anything of a car, besides the heights that are asked about: those alone are asked of the example. */
export const isAnyData = ({ car, problems }: AllPageSays): boolean => {
  const { given, whole, curve, setups, fit, provenance } = car;
  const isCar = !isBare(given) || whole !== undefined || curve !== undefined || setups !== undefined;
  return isCar || fit !== undefined || isAnyEnd(car) || isFilled(provenance.asked ?? {}) || problems.length > 0;
};
