import type { Understanding } from '../../core/readings/understanding.js';
export const readReadingTable = (_t: HTMLTableElement, _o: unknown): Understanding => {
  throw new Error('x');
};
