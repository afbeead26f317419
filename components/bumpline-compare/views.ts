import type { At } from '../../core/answers/compare.js';
import { plusMinus95 } from '../../core/uncertainty/combine.js';
import { angleAxis, travelAxis } from '../chart/axes.js';
import type { ChartModel, ChartSeries } from '../chart/model.js';
import type { Display } from '../element/sentence.js';
import { LABELS } from './bumpline-compare.labels.js';
import { cellName } from './bumpline-compare.words.js';
import { DROOP_MM } from './compare-settings.js';
import type { Answered } from './compare-view.js';

/** How far beyond the bump that is compared the chart goes. */
const BEYOND = 1.25;
const STEPS = 50;
/** More lines than these nobody tells apart: then the two that are compared stand alone. */
const MOST_LINES = 6;
/** Of lines that are neither of the two: each its own, and its cell in the table shows it. */
const DASHES = [
  [1, 3],
  [7, 3, 1, 3],
  [2, 6],
  [10, 4],
];

const isAt = (at: At, curve: number, height: number): boolean => at.curve === curve && at.height === height;

/** The lines of the chart, and the dash of those that are not compared: by "curve height". */
export function linesOf({ request }: Answered, from: At, to: At): { shown: At[]; dashes: Map<string, number[]> } {
  const all = request.curves.flatMap((_, curve) => request.heights.map((__, height) => ({ curve, height })));
  const others = all.filter(({ curve, height }) => !isAt(from, curve, height) && !isAt(to, curve, height));
  if (all.length > MOST_LINES) {
    return { shown: all.filter((at) => !others.includes(at)), dashes: new Map() };
  }
  const dashes = new Map(others.map(({ curve, height }, i) => [`${curve} ${height}`, DASHES[i % DASHES.length]!]));
  return { shown: all, dashes };
}

/** Every curve from every height, counted from there: what a bump from that height does. */
export function chartModel(answer: Answered, from: At, to: At, display: Display): ChartModel {
  const { request, names } = answer;
  const { curves, heights, bump, solid } = request;
  const domain: [number, number] = [-DROOP_MM, Math.ceil(bump * BEYOND)];
  const evenly = Array.from({ length: STEPS + 1 }, (_, i) => domain[0] + ((domain[1] - domain[0]) * i) / STEPS);
  // What is asked for is one of them: readings may end there.
  const x = Float64Array.from([...new Set([...evenly, bump])]).sort();
  const { shown, dashes } = linesOf(answer, from, to);
  const line = ({ curve, height }: At): ChartSeries => {
    const { curve: one } = curves[curve]!;
    const isTo = isAt(to, curve, height);
    const isFrom = isAt(from, curve, height);
    const name = cellName({ curve, height }, { names, heights }, display);
    return {
      id: `${curve} ${height}`,
      label: isTo || isFrom ? name : '',
      name,
      x,
      y: x.map((t) => one.change(heights[height]! + t, heights[height]!)),
      role: isTo ? 'now' : 'before',
      ...(!isTo && !isFrom && { dash: dashes.get(`${curve} ${height}`)!, quiet: true }),
    };
  };
  // The one asked about is drawn last, over the others.
  const series = [...shown.filter((at) => !isAt(to, at.curve, at.height)), to].map(line);
  const { curve } = curves[to.curve]!;
  const start = heights[to.height]!;
  const half = x.map((t) => {
    const estimate = curve.changeEstimate(start + t, start);
    return Number.isNaN(estimate.value) ? Number.NaN : plusMinus95(estimate, curve.data.sources);
  });
  const now = series.at(-1)!;
  const changeAtEnd = curve.change(start + bump, start);
  const end = solid === undefined ? undefined : solid - start;
  return {
    x: travelAxis(LABELS.chart.x, domain, display),
    y: angleAxis(LABELS.chart.y, 'camberChange', display, 0.4),
    series,
    bands:
      curve.data.sources.length > 0
        ? [{ of: now.id, low: now.y.map((c, i) => c - half[i]!), high: now.y.map((c, i) => c + half[i]!) }]
        : [],
    regions:
      end !== undefined && end < domain[1]
        ? [{ from: end, to: Number.POSITIVE_INFINITY, label: LABELS.chart.solid, kind: 'limit' }]
        : [],
    markers: Number.isNaN(changeAtEnd) ? [] : [{ x: bump, y: changeAtEnd, label: '', kind: 'now' }],
    description: LABELS.chart.described(
      series
        .map(({ label }) => label)
        .filter(Boolean)
        .join(LABELS.chart.and),
    ),
  };
}
