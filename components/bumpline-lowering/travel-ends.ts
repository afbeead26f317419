import { withBudget } from '../../core/answers/with-budget.js';
import type { CarDocument } from '../../core/document/car.js';
import { give, isUsers } from '../../core/document/provenance.js';
import type { Problem } from '../../core/quantity/problem.js';
import { readLimits } from '../page-data/limits-attribute.js';

export { withBudget };

/** What ends travel by a page's attribute, for a car whose user has given nothing of it. */
export function limitsOf(text: string): { recipe: (car: CarDocument) => CarDocument; problems: Problem[] } {
  const problems: Problem[] = [];
  const { stopGap, ...limits } = readLimits(text, problems);
  return {
    problems,
    recipe: (car) =>
      isUsers(car, 'fit') || isUsers(car, 'corner')
        ? car
        : give(car, 'fit', 'page', ({ fit }) => ({
            ...(fit && { fit }),
            limits,
            ...(stopGap !== undefined && { stopGap }),
          })),
  };
}
