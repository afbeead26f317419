import type { ToeCure } from '../../core/answers/toe-cure.js';
import { toeAtAmount } from '../../core/answers/toe-cure.js';
import { interpolate } from '../../core/math/interpolate.js';
import { formatQuantity } from '../../core/quantity/format.js';
import { plusMinus95 } from '../../core/uncertainty/combine.js';
import { angleAxis, travelAxis } from '../chart/axes.js';
import { heightName as nameOf, overName, travelsAround } from '../chart/height-names.js';
import type { ChartModel, ChartSeries } from '../chart/model.js';
import { numbersFormat } from '../controls/numbers-format.js';
import type { NumbersColumn } from '../controls/table.js';
import type { Display } from '../element/sentence.js';
import { NAMES } from './bumpline-toe.labels.js';
import type { ToeOnSheet } from './toe-view.js';

/** Travels, mm, that chart and table show around where the car stands, and further where more was asked. */
const SHOWN_MM = 60;
const STEP_MM = 2.5;
/** Room at both ends for what was not measured, as a share of what was. */
const MARGIN = 0.08;

/** Toe changes with something moved or turned, over travel from stock height. */
export interface Changed {
  /** At the line's end. */
  label: string;
  /** Over its column. */
  heading: string;
  travel: Float64Array;
  /** Degrees, from where the car stands. */
  change: Float64Array;
}

/** What the curve becomes with an end of the rod moved; of the other wheel where the steering is turned. */
export function changedBy(
  cure: ToeCure,
  { drop, measuredAt }: ToeOnSheet,
  amount: number,
  names: Pick<Changed, 'label' | 'heading'>,
  side: 'this' | 'other' = 'this',
): Changed {
  const toe = toeAtAmount(cure, amount, side);
  const travel = cure.travel.map((one) => one + measuredAt);
  const at = interpolate(travel, toe, drop);
  return { ...names, travel, change: toe.map((one) => one - at) };
}

const known = ({ curve, drop, over }: ToeOnSheet): [number, number] => {
  const reach = Math.max(SHOWN_MM, Math.abs(over) + 10);
  return [Math.max(curve.domain[0], drop - reach), Math.min(curve.domain[1], drop + reach)];
};

/** Half-width of the 95 % interval of a change from where the car stands. */
const halfWidth = ({ curve, drop }: ToeOnSheet, travel: number): number =>
  plusMinus95(curve.changeEstimate(travel, drop), curve.data.sources);

const clipped = ({ travel, change }: Changed, [low, high]: readonly [number, number]) => {
  const within = [...travel.keys()].filter((i) => travel[i]! >= low && travel[i]! <= high);
  return { x: Float64Array.from(within, (i) => travel[i]!), y: Float64Array.from(within, (i) => change[i]!) };
};

/** How far the wheel turns by itself, from where the car stands: as it is, with what is moved, and of the other wheel where it differs. */
export function chartModel(
  answer: ToeOnSheet,
  display: Display,
  now: Changed | undefined,
  other: Changed | undefined,
): ChartModel {
  const { curve, drop, over, readings } = answer;
  const shown = known(answer);
  const margin = readings ? Math.ceil(MARGIN * (shown[1] - shown[0])) : 0;
  const domain: [number, number] = [shown[0] - margin, shown[1] + margin];
  const count = Math.max(2, Math.round((shown[1] - shown[0]) / STEP_MM) + 1);
  const x = Float64Array.from({ length: count }, (_, i) => shown[0] + ((shown[1] - shown[0]) * i) / (count - 1));
  const y = x.map((travel) => curve.change(travel, drop));
  const half = x.map((travel) => halfWidth(answer, travel));
  const asIs: ChartSeries = { id: 'as-is', label: now ? NAMES.asIs : '', x, y, role: now ? 'before' : 'now' };
  const line = (id: string, changed: Changed, more: Partial<ChartSeries> = {}): ChartSeries => ({
    id,
    label: changed.label,
    ...clipped(changed, shown),
    role: 'now',
    ...more,
  });
  const at = (travel: number) => {
    const source = now ? clipped(now, shown) : { x, y };
    return interpolate(source.x, source.y, travel);
  };
  const [low, high] = curve.domain;
  const standing = curve.value(drop);
  return {
    x: travelAxis(NAMES.chartX, domain, display),
    y: angleAxis(NAMES.chartY, 'toe', display, 0.2),
    series: [
      asIs,
      ...(other ? [line('other', other, { role: 'before', dash: [2, 3] })] : []),
      ...(now ? [line('now', now)] : []),
    ],
    bands: half.some((width) => width > 0)
      ? [{ of: 'as-is', low: y.map((one, i) => one - half[i]!), high: y.map((one, i) => one + half[i]!) }]
      : [],
    regions: [
      ...(low > domain[0]
        ? [{ from: Number.NEGATIVE_INFINITY, to: low, label: NAMES.unmeasured, kind: 'outside' as const }]
        : []),
      ...(high < domain[1]
        ? [{ from: high, to: Number.POSITIVE_INFINITY, label: NAMES.unmeasured, kind: 'outside' as const }]
        : []),
    ],
    markers: [
      { x: drop, y: 0, label: heightName(drop, display), kind: 'now' },
      ...(drop + over >= shown[0] && drop + over <= shown[1]
        ? [{ x: drop + over, y: at(drop + over), label: overName(over, display), kind: 'turn' as const }]
        : []),
    ],
    ...(readings && {
      points: [{ x: readings.travel, y: readings.value.map((one) => one - standing), role: 'ink' as const }],
    }),
    description: NAMES.chart(heightName(drop, display)),
  };
}

/** "30 mm lower", at the marker of where the car stands. */
export const heightName = (drop: number, display: Display): string => nameOf(drop, display, NAMES);

/** Every 10 mm, or half inch, counted from where the car stands. */
export function numbers(
  answer: ToeOnSheet,
  display: Display,
  now: Changed | undefined,
): { columns: NumbersColumn[]; rows: (number | null)[][] } {
  const { curve, drop } = answer;
  const travels = travelsAround(drop, known(answer), display);
  const { angle, shown, write } = numbersFormat(display);
  const hasDoubt = curve.data.sources.length > 0;
  const degrees = (size: number) => (Number.isFinite(size) ? shown(size, 'angle') : null);
  return {
    columns: [
      { label: NAMES.columns.travel, unit: display.units.length, format: write('travel', 'length', 'always') },
      { label: NAMES.columns.toe, unit: angle, format: write('toe', 'angle', 'always') },
      { label: NAMES.columns.change, unit: angle, format: write('toe', 'angle', 'always') },
      ...(hasDoubt ? [{ label: '±', unit: angle, format: write('toe', 'angle', 'auto') }] : []),
      ...(now
        ? [{ label: NAMES.columns.after(now.heading), unit: angle, format: write('toe', 'angle', 'always') }]
        : []),
    ],
    rows: travels.map((travel) => [
      shown(travel, 'length'),
      degrees(curve.value(travel)),
      degrees(curve.change(travel, drop)),
      ...(hasDoubt ? [degrees(halfWidth(answer, travel))] : []),
      ...(now ? [degrees(interpolate(now.travel, now.change, travel))] : []),
    ]),
  };
}

/** A travel of the chart, read aloud. */
export function atCursor(travel: number, { curve, drop }: ToeOnSheet, { units, language }: Display): string {
  const at = formatQuantity(travel, 'travel', units, { language, sign: 'always' }).text;
  const toe = (size: number) => formatQuantity(size, 'toe', units, { language, sign: 'always' }).text;
  const value = curve.value(travel);
  return Number.isFinite(value)
    ? NAMES.cursor(at, toe(value), toe(curve.change(travel, drop)))
    : NAMES.cursorUnmeasured(at);
}
