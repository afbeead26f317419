import { type ChartModel, type ChartSeries, valueAt } from './model.js';

/** Width of a text in the labels' font and weight, CSS px. `size`: default that of the labels. */
export type MeasureText = (text: string, weight: number, size?: number) => number;

/** Series that are named and run to the right end of the plot: they can be named in the margin there. */
export function namedAtEdge(model: ChartModel): ChartSeries[] {
  const end = model.x.domain[1];
  return model.series.filter((series) => series.label && Number.isFinite(valueAt(series, end)));
}
