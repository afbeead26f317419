import { withBudget } from '../../core/answers/with-budget.js';
import type { CarDocument } from '../../core/document/car.js';
import { give, givenBy } from '../../core/document/provenance.js';
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
      givenBy(car, 'fit') === 'user' || givenBy(car, 'corner') === 'user'
        ? car
        : give(car, 'fit', 'page', ({ fit }) => ({
            ...(fit && { fit }),
            limits,
            ...(stopGap !== undefined && { stopGap }),
          })),
  };
}
