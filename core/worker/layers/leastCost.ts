import { leastCostSteps } from '../../answers/least-cost.js';

/** Which setups bring the outer wheel where it is wanted, and what each costs. */
export const questions = { leastCost: leastCostSteps };
