import type { CarDocument } from '../../core/document/car.js';

/** Whose the values are that stand in for what a user did not give. */
export const standInName = (car: CarDocument): string => (car.standIn ? 'the page’s' : 'the example’s');
