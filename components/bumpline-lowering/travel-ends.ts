import { withBudget } from '../../core/answers/with-budget.js';
import type { CarDocument } from '../../core/document/car.js';
import type { Problem } from '../../core/quantity/problem.js';
import { readLimits } from '../shared/limits-attribute.js';

export { withBudget };

/** What ends travel by a page's attribute, for a car whose user has given nothing of it. */
export function limitsOf(text: string): { recipe: (car: CarDocument) => CarDocument; problems: Problem[] } {
  const problems: Problem[] = [];
  const { stopGap, ...limits } = readLimits(text, problems);
  return {
    problems,
    recipe: (car) =>
      car.fitGivenBy === 'user' || car.givenBy === 'user'
        ? car
        : { ...car, limits, ...(stopGap !== undefined && { stopGap }), fitGivenBy: 'page' },
  };
}
