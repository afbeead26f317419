import { words } from '../../core/quantity/words.js';

/** English words over a chart. */
export const CHART = words('chart/chart', {
  /** Before the figures that are read off there. */
  at: (travel: string): string => `at ${travel}`,
});
