/** An axis. Values are in the API's units (mm, degrees); what the reader sees comes from `format` and `tick` only. */
export interface ChartAxis {
  /** With its unit, e.g. "Wheel travel, mm". */
  label: string;
  /** For read-outs and screen readers: signed and with the unit, e.g. "+30 mm". */
  format(value: number): string;
  /** For the axis: without the unit. Default: `format`. */
  tick?(value: number): string;
  /** How much of the axis is one unit of what the reader sees, e.g. 25.4 where mm are shown in inches. Ticks are round in it. Default 1. */
  unit?: number;
}

/** A line. `x` ascending; a y that is not finite is a gap. */
export interface ChartSeries {
  id: string;
  /** Stands at the line's end. Empty: none. */
  label: string;
  /** What its figure is called over the chart and read aloud. Default: the label. */
  name?: string;
  x: Float64Array;
  y: Float64Array;
  role: 'now' | 'before';
  /** Dashes and gaps, CSS px, to tell two lines of one role apart. Default: `now` solid, `before` dashed. */
  dash?: number[];
  /** A level to compare with: it has no mark and no figure of its own at the cursor. */
  quiet?: boolean;
}

/** Doubt around a series: lower and upper bound at that series' x. Thin: bounds only, around a band that is filled. */
export interface ChartBand {
  of: string;
  low: Float64Array;
  high: Float64Array;
  thin?: boolean;
}

/** A hatched stretch of x: beyond a limit, or outside what is known. Ends may be infinite. */
export interface ChartRegion {
  from: number;
  to: number;
  label: string;
  kind: 'limit' | 'outside';
}

export interface ChartMarker {
  x: number;
  y: number;
  label: string;
  kind: 'now' | 'before' | 'turn' | 'limit';
}

export type PointMark = 'cross' | 'plus' | 'circle' | 'square' | 'triangle' | 'diamond' | 'ring';

/** Separate readings, drawn as small marks; x in any order, repeats allowed. */
export interface ChartPoints {
  x: Float64Array;
  y: Float64Array;
  role: 'now' | 'before' | 'ink' | 'contact';
  /** Default: cross. */
  mark?: PointMark;
  /** Stands at the last of them, where there is room. */
  label?: string;
  /** What they are called in a key to the marks. */
  name?: string;
}

/** Everything a chart shows, as plain data. y grows upward, so more negative camber is lower. */
export interface ChartModel {
  x: ChartAxis & {
    domain: [number, number];
    /** Where the axis is labelled. Default: round figures, as many as fit. */
    ticks?: number[];
    /** What one arrow key moves the cursor by; Page moves ten. Default 1. */
    step?: number;
  };
  y: ChartAxis & {
    /** The least height of the axis, so that a flat curve's last digits are not blown up to a mountain. */
    minSpan?: number;
  };
  series: ChartSeries[];
  bands: ChartBand[];
  regions: ChartRegion[];
  markers: ChartMarker[];
  points?: ChartPoints[];
  /** What the chart shows, in a sentence or two, for screen readers. */
  description: string;
}

/**
 * Value of a line at x, linear between its points; NaN outside them and in gaps.
 * @param x ascending.
 */
export function valueAt(line: { x: Float64Array; y: Float64Array }, at: number): number {
  const { x, y } = line;
  const last = x.length - 1;
  if (last < 0 || !(at >= x[0]! && at <= x[last]!)) return Number.NaN;
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (x[middle]! <= at) low = middle;
    else high = middle;
  }
  if (at === x[high]) return y[high]!;
  if (at === x[low]) return y[low]!;
  return y[low]! + ((at - x[low]!) / (x[high]! - x[low]!)) * (y[high]! - y[low]!);
}

/** Least and greatest y of everything that is drawn inside the x domain, or undefined where nothing is. */
export function yExtent(model: ChartModel): [low: number, high: number] | undefined {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  const [from, to] = model.x.domain;
  const take = (x: number, y: number) => {
    if (!(x >= from && x <= to) || !Number.isFinite(y)) return;
    low = Math.min(low, y);
    high = Math.max(high, y);
  };
  const line = (x: Float64Array, y: Float64Array) => {
    for (let i = 0; i < x.length; i++) take(x[i]!, y[i]!);
    take(from, valueAt({ x, y }, from));
    take(to, valueAt({ x, y }, to));
  };
  for (const { x, y } of model.series) line(x, y);
  for (const band of model.bands) {
    const series = model.series.find(({ id }) => id === band.of);
    if (!series) continue;
    line(series.x, band.low);
    line(series.x, band.high);
  }
  for (const { x, y } of model.markers) take(x, y);
  for (const { x, y } of model.points ?? []) for (let i = 0; i < x.length; i++) take(x[i]!, y[i]!);
  return low <= high ? [low, high] : undefined;
}

export const nameOf = ({ name, label }: ChartSeries): string => name ?? label;

/** Three figures are what there is room for over a chart on a phone. */
const MOST_READ_OUT = 3;

/** Those whose figures stand over the chart, what is asked about first. */
export const readOut = ({ series }: ChartModel): ChartSeries[] =>
  series
    .filter(({ quiet }) => !quiet)
    .slice(0, MOST_READ_OUT)
    .sort((a, b) => Number(b.role === 'now') - Number(a.role === 'now'));

/** Who reads a travel aloud: "+30 mm: now −0.40°, before −0.21°". */
export function readAloud(model: ChartModel, travel: number): string {
  const values = model.series
    .filter(({ quiet }) => !quiet)
    .map((series) => ({ series, y: valueAt(series, travel) }))
    .filter(({ y }) => Number.isFinite(y))
    .map(({ series, y }) => `${nameOf(series)} ${model.y.format(y)}`.trim());
  return [model.x.format(travel), values.join(', ')].filter(Boolean).join(': ');
}
