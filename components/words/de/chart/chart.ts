import type { CHART } from '../../../chart/chart.labels.js';

/** German words over a chart. */
export const CHART_DE: typeof CHART = {
  at: (travel) => `bei ${travel}`,
};
