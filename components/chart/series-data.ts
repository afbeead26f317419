import { type ChartModel, valueAt } from './model.js';

/** Lines on one x, as a canvas chart takes them: null where a line is not known. */
export function alignedData({ series }: Pick<ChartModel, 'series'>): [x: number[], ...y: (number | null)[][]] {
  const x = [...new Set(series.flatMap((line) => [...line.x]))].sort((a, b) => a - b);
  const columns = series.map((line) =>
    x.map((at) => {
      const y = valueAt(line, at);
      return Number.isFinite(y) ? y : null;
    }),
  );
  return [x, ...columns];
}
