import type { Problem } from '../../core/quantity/problem.js';

/** Whether a figure is asked for the panel of least cost alone: what is wrong with it is told there. */
export const isOfPanel = ({ path }: Problem): boolean =>
  /^(?:plusMinus\.)?(?:leastCost\.|turn\.(?!roll$)|bumpTravel$)/.test(path);

/** Whether the ways and their costs stand all the same: it is asked of the turn, or of the panel. */
export const isBesides = (problem: Problem): boolean => isOfPanel(problem) || problem.path === 'turn.roll';
