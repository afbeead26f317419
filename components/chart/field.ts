import { CHART } from './chart.labels.js';
import { type MeasureText, namedAtEdge } from './edge-names.js';
import type { Box, Point } from './labels.js';
import { type ChartMarker, type ChartModel, type ChartRegion, nameOf, readOut, yExtent } from './model.js';
import { axisRange, niceTicks } from './ticks.js';

/** The plotting area on the sheet, and where a value stands on it; CSS px from the sheet's corner. */
export interface Field extends Box {
  x(value: number): number;
  y(value: number): number;
}

/** A chart laid out: the plotting area, its axes' figures, and the margin kept free for the lines' names. */
export interface ChartFrame {
  field: Field;
  margin: number;
  xTicks: { at: number; text: string }[];
  yTicks: { at: number; text: string }[];
}

/** Over the plot the axis' name and what is read at the cursor stand in rows, CSS px, above a gap. */
export const HEAD_ROW = 20;
const HEAD_GAP = 8;
/** Of the line before a figure, with the gap behind it. */
const SWATCH = 19;
/** Between what stands over the plot. */
export const HEAD_SPACE = 10;
const AXIS_NAME_PX = 12;
/** Ticks, their figures and the axis' name below the plot. */
export const FOOT = 44;
/** Room for the last figure of the x axis, where no line is named in the margin. */
const END = 16;
/** From this width on the lines' names stand right of the plot. */
const WIDE = 480;
const ROW = 30;

/** How wide the axis' name is, with the space behind it. */
export const titleWidth = (model: ChartModel, measure: MeasureText): number =>
  measure(model.y.label, 400, AXIS_NAME_PX) + 2 + HEAD_SPACE;

/** How many rows the axis' name and the figures at the cursor need, wherever the cursor is. */
function headRows(model: ChartModel, width: number, measure: MeasureText): number {
  const [low, high] = yExtent(model) ?? [0, 0];
  const widest = (...texts: string[]) => Math.max(...texts.map((text) => measure(text, 600)));
  const items = [
    widest(...model.x.domain.map((x) => CHART.at(model.x.format(x)))),
    ...readOut(model).map(
      (series) => SWATCH + measure(nameOf(series), 400) + 5 + widest(model.y.format(low), model.y.format(high)),
    ),
  ];
  let rows = 1;
  let used = titleWidth(model, measure);
  for (const item of items) {
    if (used + item > width) {
      rows++;
      used = 0;
    }
    used += item + HEAD_SPACE;
  }
  return rows;
}

/** Lays a chart out on a sheet of this size, CSS px. Pure but for the widths of texts, which are given. */
export function layOut(model: ChartModel, width: number, height: number, measure: MeasureText): ChartFrame {
  const head = HEAD_GAP + HEAD_ROW * headRows(model, width, measure);
  const rows = Math.max(3, Math.floor((height - head - FOOT) / ROW));
  const [low, high] = axisRange(yExtent(model), rows, model.y.unit, model.y.minSpan);
  const write = (axis: 'x' | 'y') => (at: number) => ({ at, text: (model[axis].tick ?? model[axis].format)(at) });
  const yTicks = niceTicks(low, high, rows, model.y.unit).map(write('y'));

  const names = Math.max(0, ...namedAtEdge(model).map(({ label }) => measure(label, 600)));
  const margin = width >= WIDE && names > 0 && names < width / 4 ? names + 14 : 0;
  const left = 12 + Math.max(16, ...yTicks.map(({ text }) => measure(text, 400)));
  const inner = width - left - Math.max(margin, END);

  const [from, to] = model.x.domain;
  const widest = Math.max(...[from, to].map((at) => measure(write('x')(at).text, 400)));
  const at =
    model.x.ticks?.filter((x) => x >= from && x <= to) ??
    niceTicks(from, to, Math.floor(inner / (widest + 16)), model.x.unit);
  const plot = height - head - FOOT;
  return {
    margin,
    xTicks: at.map(write('x')),
    yTicks,
    field: {
      left,
      top: head,
      width: inner,
      height: plot,
      x: (value) => left + ((value - from) / (to - from)) * inner,
      y: (value) => head + ((high - value) / (high - low)) * plot,
    },
  };
}

/** Where a region lies on the sheet, cut to the plotting area; undefined where nothing of it is left. */
export function regionBox(field: Field, { from, to }: ChartRegion): Box | undefined {
  const edge = (value: number, infinite: number) =>
    Number.isFinite(value) ? Math.min(Math.max(field.x(value), field.left), field.left + field.width) : infinite;
  const left = edge(from, field.left);
  const right = edge(to, field.left + field.width);
  return right - left >= 1 ? { left, top: field.top, width: right - left, height: field.height } : undefined;
}

/** A line from the marker down to the axis, so that its travel can be read off. */
export function dropLine(field: Field, { x, y }: ChartMarker): [Point, Point] {
  return [
    { x: field.x(x), y: field.y(y) },
    { x: field.x(x), y: field.top + field.height },
  ];
}
