import { bumpTravelOf, type CarDocument, limitsOf } from '../../core/document/car.js';
import { travelBudget } from '../../core/travel/budget.js';

/**
 * Travel from stock height at which the first of a car's limits is solid, mm. What is along the damper's rod counts where its motion
 * ratio was given: no linkage is known here.
 *
 * @throws InputError as `travelBudget`
 */
export function solidTravel(car: CarDocument): number | undefined {
  const { stopGap, limits } = limitsOf(car);
  const bumpTravel = bumpTravelOf(car);
  const budget = travelBudget({
    path: undefined,
    limits: { ...limits, ...(stopGap !== undefined && { stopGap }) },
    drop: 0,
    ...(bumpTravel !== undefined && { bumpTravel }),
    ...(car.measuredAt !== undefined && { measuredAt: car.measuredAt }),
  });
  return budget.bump.solid?.travel;
}
