import type { DrawnClearance } from '../../core/answers/clearance-questions.js';
import { formatQuantity } from '../../core/quantity/format.js';
import { fromShown, toShown } from '../../core/quantity/units.js';
import type { WheelComparison } from '../../core/wheel/compare-wheels.js';
import type { Place } from '../../core/wheel/place.js';
import { lengthAxis, travelAxis } from '../chart/axes.js';
import type { ChartModel, ChartSeries } from '../chart/model.js';
import type { NumbersColumn } from '../controls/table.js';
import { type Display, show } from '../element/sentence.js';
import { NAMES, percent } from './bumpline-clearance.labels.js';
import { placeName, verdictText } from './bumpline-clearance.words.js';

/** How far beyond full bump the chart goes on, mm. */
const BEYOND_MM = 15;
const DROOP_MM = 40;

export interface Viewed {
  answer: DrawnClearance;
  places: readonly Place[];
  isLeft: boolean;
  selected: number;
}

/** The gap of one place over travel, with both ends. */
export function chartModel({ answer, places, isLeft, selected }: Viewed, display: Display): ChartModel {
  const { budget, drop, travel, allowance } = answer;
  const found = answer.places[selected]!;
  const { solid, touch } = budget.bump;
  const high = Math.min(travel.at(-1)!, (solid?.travel ?? drop + 60) + BEYOND_MM);
  const low = Math.max(travel[0]!, Math.min(0, drop) - DROOP_MM);
  const keep = [...travel.keys()].filter((i) => travel[i]! >= low - 2.5 && travel[i]! <= high + 2.5);
  const line = (from: Float64Array) => Float64Array.from(keep.map((i) => from[i]!));
  const x = line(travel);
  const needed = found.margin + allowance;
  const series: ChartSeries[] = [
    { id: 'before', label: NAMES.old, x, y: line(found.before), role: 'before' },
    { id: 'needed', label: NAMES.needed, x, y: x.map(() => needed), role: 'before', dash: [2, 3], quiet: true },
    { id: 'now', label: '', x, y: line(found.least), role: 'now' },
  ];
  const name = placeName(places[selected]!, isLeft);
  return {
    x: travelAxis(NAMES.chartX, [low, high], display),
    y: lengthAxis(NAMES.chartY, display, 20),
    series,
    bands: [
      {
        of: 'now',
        low: line(found.least).map((gap) => gap - found.decisive.plusMinus),
        high: line(found.least).map((gap) => gap + found.decisive.plusMinus),
      },
    ],
    regions: [
      ...(solid
        ? [{ from: solid.travel, to: Number.POSITIVE_INFINITY, label: NAMES.solid, kind: 'limit' as const }]
        : []),
    ],
    markers: [
      { x: drop, y: at(travel, found.least, drop), label: NAMES.ride, kind: 'now' as const },
      ...(touch && solid && touch.governedBy === 'stop' && touch.travel > drop && solid.travel - touch.travel > 0.5
        ? [{ x: touch.travel, y: at(travel, found.least, touch.travel), label: NAMES.touch, kind: 'limit' as const }]
        : []),
    ],
    description: `${NAMES.chart(name, show(found.ride.gap, 'travel', display), show(found.worst.gap, 'travel', display), verdictText(found))} ${NAMES.dashed}`,
  };
}

function at(x: Float64Array, y: Float64Array, value: number): number {
  const next = Math.max(
    1,
    x.findIndex((sample) => sample >= value),
  );
  const share = (value - x[next - 1]!) / (x[next]! - x[next - 1]!);
  return y[next - 1]! + share * (y[next]! - y[next - 1]!);
}

/** Every place: gap at ride height, at first touch of the stop, at solid, the smallest, and the verdict. */
export function placesTable({ answer, places, isLeft }: Omit<Viewed, 'selected'>, display: Display) {
  const { units, language } = display;
  const shown = (mm: number | undefined) =>
    mm === undefined ? null : Math.round(toShown(mm, 'length', units) * 1e6) / 1e6;
  const write = (mm: number) =>
    formatQuantity(fromShown(mm, 'length', units), 'travel', units, { language, unit: false }).text;
  const { columns: words } = NAMES;
  const column = (label: string): NumbersColumn => ({ label, unit: units.length, format: write });
  return {
    columns: [
      { label: words.place },
      column(words.ride),
      column(words.solid),
      column(words.least),
      column(words.doubt),
      column(words.largest),
      { label: words.verdict },
    ],
    rows: answer.places.map((found, i) => [
      placeName(places[i]!, isLeft).replace(NAMES.article, ''),
      shown(found.ride.gap),
      shown(found.solid?.gap),
      shown(found.worst.gap),
      shown(found.decisive.plusMinus),
      shown(found.largest),
      verdictText(found),
    ]),
  };
}

/** Old and new side by side. */
export function wheelRows(
  wheels: WheelComparison,
  display: Display,
): { label: string; before: string; after: string; change: string }[] {
  const { before, after } = wheels;
  const size = (mm: number) => show(Math.round(mm * 10) / 10, 'travel', display);
  const change = (mm: number) =>
    formatQuantity(Math.round(mm * 10) / 10, 'travel', display.units, { language: display.language, sign: 'always' })
      .text;
  const row = (label: string, was: number, is: number) => ({
    label,
    before: size(was),
    after: size(is),
    change: change(is - was),
  });
  const { wheelRows: words } = NAMES;
  return [
    { label: words.tyre, before: before.dimensions.size.text, after: after.dimensions.size.text, change: '' },
    row(words.sectionWidth, before.sectionWidth, after.sectionWidth),
    row(words.sectionHeight, before.dimensions.sectionHeight, after.dimensions.sectionHeight),
    row(words.freeDiameter, 2 * before.freeRadius, 2 * after.freeRadius),
    row(words.outerEdge, before.outerEdge, after.outerEdge),
    row(words.innerEdge, before.innerEdge, after.innerEdge),
    { label: words.rideHeight, before: '', after: '', change: change(wheels.rideHeight) },
    { label: words.gearing, before: '', after: '', change: percent(wheels.gearing, display.language) },
    row(words.largestWidth, before.largest.sectionWidth, after.largest.sectionWidth),
    row(words.largestDiameter, 2 * before.largest.freeRadius, 2 * after.largest.freeRadius),
  ];
}
