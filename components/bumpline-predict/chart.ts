import { type Curve, curveOf } from '../../core/curve/curve.js';
import type { CurveData } from '../../core/curve/curve-data.js';
import { interpolate } from '../../core/math/interpolate.js';
import { formatQuantity } from '../../core/quantity/format.js';
import { plusMinus95 } from '../../core/uncertainty/combine.js';
import { angleAxis, travelAxis } from '../chart/axes.js';
import { heightName as nameOf, overName, travelsAround } from '../chart/height-names.js';
import type { ChartModel, ChartSeries } from '../chart/model.js';
import { numbersFormat } from '../controls/numbers-format.js';
import type { NumbersColumn } from '../controls/table.js';
import type { Display } from '../element/sentence.js';
import { NAMES } from './bumpline-predict.labels.js';
import type { Agreed, PredictOnSheet, PredictView } from './predict-view.js';

const STEP_MM = 2.5;
/** Shown before and after the travel that is asked about, mm: with more, nobody would see the bands. */
const BEFORE_MM = 40;
const AFTER_MM = 12;

/** A line over travel from stock height, as change from where the car stands, and the half-width of its 95 % interval. */
export interface Line {
  x: Float64Array;
  y: Float64Array;
  half: Float64Array;
}

/** What chart and table are made from. */
export interface Lines {
  predicted: Line;
  byTape: Line;
  /** Not known yet right after another reading. */
  stock: Line | undefined;
  /** Travels between which something was read as the car stood. */
  measured: readonly [number, number];
}

type Now = Pick<PredictView, 'moved'> & { drop: number; stock: CurveData | undefined };

/** By the answer on the sheet; while parts or the drop are changed, with its bands on the curve as it becomes. */
export function linesOf(answer: PredictOnSheet, { moved, drop, stock: asItIs }: Now): Lines {
  const { curves, measuredAt, over } = answer;
  const measured = answer.measured.map((end) => end + measuredAt) as [number, number];
  const [low, high] = curves.predicted.domain.map((end) => end + measuredAt) as [number, number];
  const [before, after] = over < 0 ? [AFTER_MM, BEFORE_MM] : [BEFORE_MM, AFTER_MM];
  const from = Math.max(low, Math.min(drop, drop + over) - before);
  const to = Math.min(high, Math.max(drop, drop + over) + after);
  const count = Math.max(2, Math.round((to - from) / STEP_MM) + 1);
  const x = Float64Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));
  // A drop that the answer does not cover yet.
  const at = Math.min(high, Math.max(low, drop)) - measuredAt;
  const line = (data: CurveData): Line => lineOf(curveOf(data), x, at, measuredAt);
  const [predicted, byTape, stock] = [line(curves.predicted), line(curves.byTape), asItIs && line(asItIs)];
  if (!moved) return { predicted, byTape, stock, measured };
  const shape = x.map((travel) => interpolate(moved.travel, moved.value, travel - measuredAt));
  const standing = interpolate(moved.travel, moved.value, at);
  const y = shape.map((value) => value - standing);
  // What the tape alone says moves along: its own curve would have to be worked out.
  const tape = byTape.y.map((value, i) => value + y[i]! - predicted.y[i]!);
  return { predicted: { ...predicted, y }, byTape: { ...byTape, y: tape }, stock, measured };
}

function lineOf(curve: Curve, x: Float64Array, at: number, measuredAt: number): Line {
  const estimates = [...x].map((travel) => curve.changeEstimate(travel - measuredAt, at));
  return {
    x,
    y: Float64Array.from(estimates, ({ value }) => value),
    half: Float64Array.from(estimates, (one) => plusMinus95(one, curve.data.sources)),
  };
}

/** A stretch of a line; its ends stand on it. */
function clipped({ x, y, half }: Line, low: number, high: number): Line {
  const inside = [...x].filter((travel) => travel > low && travel < high);
  const all = Float64Array.from([Math.max(low, x[0]!), ...inside, Math.min(high, x.at(-1)!)]);
  return { x: all, y: all.map((one) => interpolate(x, y, one)), half: all.map((one) => interpolate(x, half, one)) };
}

export function chartModel(
  answer: PredictOnSheet,
  lines: Lines,
  {
    drop,
    display,
    agreed,
    stock: asItIs,
  }: { drop: number; display: Display; agreed: Agreed | undefined; stock: CurveData | undefined },
): ChartModel {
  const { predicted, byTape, stock, measured } = lines;
  const { x } = predicted;
  const [first, last] = [x[0]!, x.at(-1)!];
  const [low, high] = measured;
  const isOwn = answer.set !== undefined;
  const stretch = (id: string, from: number, to: number, isBeyond: boolean) =>
    to > from ? [{ id, line: clipped(predicted, from, to), isBeyond }] : [];
  const stretches = [
    ...stretch('below', first, Math.min(last, low), true),
    ...stretch('now', Math.max(first, low), Math.min(last, high), false),
    ...stretch('beyond', Math.max(first, high), last, true),
  ];
  const labelled = stretches.at(-1)!.id;
  const unmeasured = (from: number, to: number) => ({ from, to, label: NAMES.unmeasured, kind: 'outside' as const });
  const points = asItIs && stock && pointsOf(answer, asItIs, stock, drop);
  return {
    x: travelAxis(NAMES.chartX, [first, last], display),
    y: angleAxis(
      answer.quantity === 'toe' ? NAMES.chartToe : NAMES.chartY,
      answer.quantity === 'toe' ? 'toe' : 'camberChange',
      display,
      0.4,
    ),
    series: [
      { id: 'tape', label: '', x: byTape.x, y: byTape.y, role: 'before', dash: [1, 5], quiet: true },
      ...(isOwn && stock ? [{ id: 'stock', label: NAMES.stock, x: stock.x, y: stock.y, role: 'before' as const }] : []),
      ...stretches.map(
        ({ id, line, isBeyond }): ChartSeries => ({
          id,
          label: id === labelled ? (isOwn ? NAMES.predicted : NAMES.stock) : '',
          name: isOwn ? NAMES.predicted : NAMES.stock,
          x: line.x,
          y: line.y,
          role: 'now',
          ...(isBeyond && { dash: [6, 4] }),
        }),
      ),
    ],
    bands: [
      { of: 'tape', low: minus(byTape), high: plus(byTape), thin: true },
      ...stretches.map(({ id, line }) => ({ of: id, low: minus(line), high: plus(line) })),
    ],
    regions: [
      ...(low > first ? [unmeasured(Number.NEGATIVE_INFINITY, low)] : []),
      ...(high < last ? [unmeasured(high, Number.POSITIVE_INFINITY)] : []),
    ],
    markers: [
      { x: drop, y: 0, label: heightName(drop, display), kind: 'now' },
      ...(drop + answer.over >= first && drop + answer.over <= last
        ? [
            {
              x: drop + answer.over,
              y: interpolate(x, predicted.y, drop + answer.over),
              label: overName(answer.over, display),
              kind: 'turn' as const,
            },
          ]
        : []),
    ],
    points: [
      ...(points ? [{ ...points, role: 'ink' as const }] : []),
      ...(agreed ? [{ ...agreedPoints(agreed, predicted, drop), role: 'now' as const, mark: 'circle' as const }] : []),
    ],
    description: NAMES.chart(heightName(drop, display)),
  };
}

const minus = ({ y, half }: Line) => y.map((one, i) => one - half[i]!);
const plus = ({ y, half }: Line) => y.map((one, i) => one + half[i]!);

/** What was read as the car stood, as changes from where it stands now. */
function pointsOf(
  { readings, measuredAt }: PredictOnSheet,
  data: CurveData,
  stock: Line,
  drop: number,
): { x: Float64Array; y: Float64Array } | undefined {
  if (!readings) return undefined;
  const curve = curveOf(data);
  const [low, high] = curve.domain;
  const standing = curve.value(Math.min(high, Math.max(low, drop - measuredAt)));
  const all = [...readings.travel.keys()].filter((i) => {
    const at = readings.travel[i]! + measuredAt;
    return at >= stock.x[0]! && at <= stock.x.at(-1)!;
  });
  // A gauge has a zero of its own: what was read is laid on the links' curve as a whole.
  const off = readings.value.map((value, i) => value - curve.value(readings.travel[i]!)).filter(Number.isFinite);
  const zero = off.reduce((sum, one) => sum + one, 0) / Math.max(1, off.length);
  return {
    x: Float64Array.from(all, (i) => readings.travel[i]! + measuredAt),
    y: Float64Array.from(all, (i) => readings.value[i]! - zero - standing),
  };
}

/** What was read with the parts on, as changes from where the car stands now: it was predicted from its own drop. */
function agreedPoints(
  { travel, value, from, predicted: then }: Agreed,
  predicted: Line,
  drop: number,
): { x: Float64Array; y: Float64Array } {
  const moved = interpolate(from, then, drop);
  const all = [...travel.keys()].filter((i) => travel[i]! >= predicted.x[0]! && travel[i]! <= predicted.x.at(-1)!);
  return { x: Float64Array.from(all, (i) => travel[i]!), y: Float64Array.from(all, (i) => value[i]! - moved) };
}

/** "25 mm lower", at the marker of where the car stands. */
export const heightName = (drop: number, display: Display): string => nameOf(drop, display, NAMES.heights);

/** Every 10 mm, or half inch, counted from where the car stands. */
export function numbers(
  answer: PredictOnSheet,
  { predicted, byTape, stock }: Lines,
  display: Display,
): { columns: NumbersColumn[]; rows: (number | null)[][] } {
  const travels = travelsAround(answer.drop, [predicted.x[0]!, predicted.x.at(-1)!], display);
  const { angle, shown, write } = numbersFormat(display);
  const degrees = (line: Line, of: 'y' | 'half', travel: number) =>
    shown(interpolate(line.x, line[of], travel), 'angle');
  const change = (label: string): NumbersColumn => ({ label, unit: angle, format: write('toe', 'angle', 'always') });
  const doubt = (label: string): NumbersColumn => ({ label, unit: angle, format: write('toe', 'angle', 'auto') });
  return {
    columns: [
      { label: NAMES.columns.travel, unit: display.units.length, format: write('travel', 'length', 'always') },
      change(NAMES.columns.predicted),
      doubt('±'),
      doubt(NAMES.columns.tape),
      change(NAMES.columns.stock),
    ],
    rows: travels.map((travel) => [
      shown(travel, 'length'),
      degrees(predicted, 'y', travel),
      degrees(predicted, 'half', travel),
      degrees(byTape, 'half', travel),
      stock ? degrees(stock, 'y', travel) : null,
    ]),
  };
}

/** A travel of the chart, read aloud. */
export function atCursor(travel: number, { predicted, byTape, measured }: Lines, { units, language }: Display): string {
  const at = formatQuantity(travel, 'travel', units, { language, sign: 'always' }).text;
  const of = (line: Line) =>
    formatQuantity(interpolate(line.x, line.y, travel), 'toe', units, {
      language,
      sign: 'always',
      plusMinus: interpolate(line.x, line.half, travel),
    }).text;
  if (travel < predicted.x[0]! || travel > predicted.x.at(-1)!) return NAMES.cursorUnknown(at);
  const isMeasured = travel >= measured[0] && travel <= measured[1];
  return NAMES.cursor(at, of(predicted), of(byTape), isMeasured);
}
