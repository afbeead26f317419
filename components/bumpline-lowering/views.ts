import type { LoweringAnswer } from '../../core/answers/lowering.js';
import { type Curve, curveOf } from '../../core/curve/curve.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { End } from '../../core/travel/budget.js';
import { plusMinus95 } from '../../core/uncertainty/combine.js';
import { angleAxis, travelAxis } from '../chart/axes.js';
import type { ChartModel } from '../chart/model.js';
import { numbersFormat } from '../controls/numbers-format.js';
import type { SliderTick } from '../controls/slider-ticks.js';
import type { NumbersColumn } from '../controls/table.js';
import { dropText } from '../element/drop-words.js';
import { heightName, isChangeOnly, NAMES } from './bumpline-lowering.labels.js';
import { type Display, show } from './bumpline-lowering.words.js';

/** Travels, mm, that a chart and a table of lowering show where the curve reaches so far. */
const SHOWN_DROOP_MM = -50;
const SHOWN_BUMP_MM = 100;
/** How far into droop the ghost begins: further up it would only take height from the rest. */
const GHOST_DROOP_MM = 30;
/** Ends nearer to each other than this are told as one, mm. */
const LEAST_APART_MM = 0.5;
const CHART_STEP_MM = 2.5;
const TABLE_STEP_MM = 10;
/** Room at both ends for what was not measured, as a share of what was. */
const MARGIN = 0.12;
const withMargins = ([low, high]: [number, number]): [number, number] => {
  const margin = Math.ceil(MARGIN * (high - low));
  return [low - margin, high + margin];
};

function shownDomain(curve: Curve): [number, number] {
  const [low, high] = curve.domain;
  return [Math.max(low, Math.min(SHOWN_DROOP_MM, high)), Math.min(high, Math.max(SHOWN_BUMP_MM, low))];
}

/** Half-width of the 95 % interval of a change from stock height. */
function halfWidth(curve: Curve, travel: number): number {
  return plusMinus95(curve.changeEstimate(travel, 0), curve.data.sources);
}

type BumpEnd = End & { isTouch?: boolean };

/** Where bump ends, and where the stop is touched before that; the first touch alone where nothing else is known. */
function endsOf({ budget }: LoweringAnswer): { solid?: BumpEnd; touch?: End } {
  const { solid, touch } = budget?.bump ?? {};
  if (!solid) return touch ? { solid: { ...touch, isTouch: true } } : {};
  return touch && solid.travel - touch.travel > LEAST_APART_MM ? { solid, touch } : { solid };
}

/** What stands where bump ends: the stop may be touched there, solid, or not be what ends it. */
function nameOfEnd({ governedBy, isTouch }: BumpEnd): string {
  if (isTouch) return NAMES.touched;
  return governedBy === 'stop' || governedBy === 'bumpTravel' ? NAMES.solid : NAMES.end;
}

/** The curve with both heights, its turn, and what lies beyond the stop. */
export function chartModel(answer: LoweringAnswer, display: Display): ChartModel {
  const curve = curveOf(answer.curve);
  const { drop, reversal } = answer;
  const known = shownDomain(curve);
  const domain = answer.readings ? withMargins(known) : known;
  const count = Math.max(2, Math.round((known[1] - known[0]) / CHART_STEP_MM) + 1);
  const x = Float64Array.from({ length: count }, (_, i) => known[0] + ((known[1] - known[0]) * i) / (count - 1));
  const y = x.map((travel) => curve.value(travel));
  const half = x.map((travel) => halfWidth(curve, travel));
  const hasDoubt = half.some((width) => width > 0);
  const camber = (travel: number) => show(curve.value(travel), 'camber', display);
  const { solid: end, touch } = endsOf(answer);
  const { droop } = answer.budget ?? {};
  const [low, high] = answer.curve.domain;
  const outside = answer.readings ? NAMES.unmeasured : NAMES.outside;
  // The same curve moved on by the drop: what the car had at the same bump from where it stood then.
  const from = x.filter((travel) => travel >= drop - GHOST_DROOP_MM && travel - drop >= low && travel - drop <= high);
  const ghost =
    drop === 0
      ? []
      : [
          {
            id: 'before',
            label: NAMES.before,
            x: from,
            y: from.map((t) => curve.value(t - drop)),
            role: 'before' as const,
          },
        ];
  return {
    x: travelAxis(NAMES.chartX, domain, display),
    y: angleAxis(isChangeOnly(answer) ? NAMES.chartYChange : NAMES.chartY, 'camber', display, 0.4),
    series: [
      ...ghost,
      {
        id: 'camber',
        label: '',
        ...(drop !== 0 && { name: drop < 0 ? NAMES.raised : NAMES.lowered }),
        x,
        y,
        role: 'now',
      },
    ],
    bands: hasDoubt ? [{ of: 'camber', low: y.map((c, i) => c - half[i]!), high: y.map((c, i) => c + half[i]!) }] : [],
    regions: [
      ...(end && end.travel < domain[1]
        ? [{ from: end.travel, to: Number.POSITIVE_INFINITY, label: nameOfEnd(end), kind: 'limit' as const }]
        : []),
      ...(droop?.solid && droop.solid.travel > domain[0]
        ? [{ from: Number.NEGATIVE_INFINITY, to: droop.solid.travel, label: NAMES.droop, kind: 'limit' as const }]
        : []),
      ...(low > domain[0]
        ? [{ from: Number.NEGATIVE_INFINITY, to: low, label: outside, kind: 'outside' as const }]
        : []),
      ...(high < domain[1]
        ? [{ from: high, to: Number.POSITIVE_INFINITY, label: outside, kind: 'outside' as const }]
        : []),
    ],
    markers: [
      { x: 0, y: curve.value(0), label: NAMES.stock, kind: 'before' },
      ...(drop === 0
        ? []
        : [{ x: drop, y: curve.value(drop), label: heightName(drop, display), kind: 'now' as const }]),
      ...(touch && touch.travel > domain[0] && touch.travel < domain[1]
        ? [{ x: touch.travel, y: curve.value(touch.travel), label: NAMES.touched, kind: 'limit' as const }]
        : []),
      ...(reversal && reversal.travel.value < domain[1]
        ? [
            {
              x: reversal.travel.value,
              y: curve.value(reversal.travel.value),
              label: NAMES.turns,
              kind: 'turn' as const,
            },
          ]
        : []),
    ],
    ...(answer.readings && { points: [{ x: answer.readings.travel, y: answer.readings.value, role: 'ink' as const }] }),
    description: `${NAMES.chart(camber(0), camber(drop), heightName(drop, display))}${ghost.length > 0 ? ` ${NAMES.ghost}` : ''}`,
  };
}

/** Every 10 mm, or every half inch, with the new height as a row of its own. */
export function numbers(
  answer: LoweringAnswer,
  display: Display,
): { columns: NumbersColumn[]; rows: (number | null)[][] } {
  const curve = curveOf(answer.curve);
  const { units } = display;
  const domain = shownDomain(curve);
  const step = units.length === 'in' ? 12.7 : TABLE_STEP_MM;
  const travels = new Set<number>([answer.drop]);
  for (let k = Math.ceil(domain[0] / step); k * step <= domain[1]; k++) travels.add(k * step);
  const sorted = [...travels].filter((t) => t >= curve.domain[0] && t <= curve.domain[1]).sort((a, b) => a - b);
  const hasDoubt = curve.data.sources.length > 0;
  const { angle, shown, write } = numbersFormat(display);
  const columns: NumbersColumn[] = [
    { label: NAMES.columns.travel, unit: units.length, format: write('travel', 'length', 'always') },
    { label: NAMES.columns.camber, unit: angle, format: write('camber', 'angle', 'auto') },
    { label: NAMES.columns.change, unit: angle, format: write('camberChange', 'angle', 'always') },
    ...(hasDoubt ? [{ label: '±', unit: angle, format: write('camberChange', 'angle', 'auto') }] : []),
  ];
  return {
    columns,
    rows: sorted.map((travel) => [
      shown(travel, 'length'),
      shown(curve.value(travel), 'angle'),
      shown(curve.change(travel, 0), 'angle'),
      ...(hasDoubt ? [shown(halfWidth(curve, travel), 'angle')] : []),
    ]),
  };
}

/** Where something happens along the slider, mm. */
export function sliderTicks(answer: LoweringAnswer | undefined, display: Display): SliderTick[] {
  const ticks: SliderTick[] = [{ at: 0, label: NAMES.stock, kind: 'plain' }];
  if (!answer) return ticks;
  const { reversal } = answer;
  const { solid, touch } = endsOf(answer);
  const limit = (travel: number, name: string) =>
    ticks.push({ at: travel, label: `${name} ${dropText(Math.round(travel), display)}`, kind: 'limit' });
  if (touch && touch.travel > 0) limit(touch.travel, NAMES.touched);
  if (solid) limit(solid.travel, nameOfEnd(solid));
  if (reversal && reversal.travel.value > 0) {
    const { value } = formatQuantity(reversal.travel.value, 'travel', display.units, {
      language: display.language,
      plusMinus: reversal.travel.plusMinus,
    });
    ticks.push({ at: reversal.travel.value, label: `${NAMES.turns} ${value}`, kind: 'turn' });
  }
  return ticks;
}
