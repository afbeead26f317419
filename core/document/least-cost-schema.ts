import * as v from 'valibot';
import { COST_WEIGHTS, JOINT_RODS, LEAST_COSTS, SETTING_WAYS } from './cost-weights.js';
import { LEAST_COST_RANGES } from './field-ranges.js';
import { maybe, numbers, record } from './schema-shapes.js';

const weight = maybe(v.picklist(COST_WEIGHTS));
const weights = Object.fromEntries(LEAST_COSTS.map((cost) => [cost, weight])) as Record<
  (typeof LEAST_COSTS)[number],
  typeof weight
>;

/**
 * What is asked about reaching an inclination at the least cost: mm, degrees, N/mm, kg, g; prices in any currency. What sets camber, whether
 * tie-rod ends match new joints, and how much each cost matters.
 */
export const leastCostSchema = record({
  ...numbers(LEAST_COST_RANGES),
  way: maybe(v.picklist(SETTING_WAYS)),
  rods: maybe(v.picklist(JOINT_RODS)),
  ...weights,
});
