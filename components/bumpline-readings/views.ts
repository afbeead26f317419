import type { ReadingsAnswer } from '../../core/answers/readings.js';
import { type Curve, curveOf } from '../../core/curve/curve.js';
import type { Setup } from '../../core/document/setup.js';
import { studentTQuantile } from '../../core/math/student-t.js';
import { formatNumber } from '../../core/quantity/format.js';
import { plusMinus95 } from '../../core/uncertainty/combine.js';
import { shownName } from '../car/shown-names.words.js';
import { angleAxis, travelAxis } from '../chart/axes.js';
import type { ChartModel, ChartPoints, PointMark } from '../chart/model.js';
import { numbersFormat } from '../controls/numbers-format.js';
import type { NumbersColumn } from '../controls/table.js';
import type { Display } from '../element/sentence.js';
import { NAMES, overName } from './bumpline-readings.labels.js';
import type { PassView } from './pass-view.js';

/** How far outside the readings the chart goes on, as a share of their span: room to see that nothing is drawn there. */
const MARGIN = 0.08;
const STEPS = 60;
const MARKS: readonly PointMark[] = ['cross', 'circle', 'plus', 'triangle', 'square', 'diamond'];

/** The passes in the order of their names. */
export function passesOf(setup: Setup, { fit, used }: ReadingsAnswer): PassView[] {
  const groups = new Map<string, number[]>();
  for (const index of used) {
    const { pass = '' } = setup.readings[index]!;
    groups.set(pass, [...(groups.get(pass) ?? []), index]);
  }
  const names = [...groups.keys()].sort((a, b) => a.localeCompare(b, 'en', { numeric: true }));
  return names.map((pass, i) => {
    const found = fit.passOffsets.find((one) => one.pass === pass);
    const readings = groups.get(pass)!;
    const ways = new Set(readings.map((index) => setup.readings[index]!.going));
    const going =
      ways.has('up') && ways.has('down') ? 'both' : ways.has('up') ? 'up' : ways.has('down') ? 'down' : undefined;
    return {
      pass,
      name: pass ? shownName(pass) : NAMES.onePass,
      mark: MARKS[i % MARKS.length]!,
      offset: found?.offset ?? Number.NaN,
      standardError: found?.standardError ?? Number.NaN,
      ...(going && { going }),
      readings,
    };
  });
}

/** Half-widths of the 95 % bands at a travel, degrees: of the curve with the passes brought to one zero, and of one more reading. */
function halfWidths({ fit }: ReadingsAnswer, curve: Curve) {
  const t = fit.dof > 0 ? studentTQuantile(0.975, fit.dof) : Number.NaN;
  const { sources } = curve.data;
  const ofCurve = (travel: number) => {
    const { value, parts } = curve.estimate(travel);
    return plusMinus95({ value, parts: parts.map((part, i) => (sources[i]!.id === 'zero' ? 0 : part)) }, sources);
  };
  return { ofCurve, ofReading: (travel: number) => Math.hypot(ofCurve(travel), t * fit.residualSd) };
}

const evenly = (low: number, high: number, steps: number): Float64Array =>
  Float64Array.from({ length: steps + 1 }, (_, i) => low + ((high - low) * i) / steps);

/** Travel with a margin at both ends, which is hatched: nothing was measured there. */
function travelOf(answer: ReadingsAnswer, display: Display): Pick<ChartModel, 'x' | 'regions'> {
  const [low, high] = answer.fit.curve.domain;
  // Too narrow for a label of their own: the key below the chart says what hatching means.
  const margin = (high - low) * MARGIN;
  return {
    x: travelAxis(NAMES.travel, [low - margin, high + margin], display),
    regions: [
      { from: Number.NEGATIVE_INFINITY, to: low, label: '', kind: 'outside' },
      { from: high, to: Number.POSITIVE_INFINITY, label: '', kind: 'outside' },
    ],
  };
}

/** The readings of each pass, named in the key below the chart, and a ring around those that do not belong. */
function pointsOf(
  setup: Setup,
  { fit, used }: ReadingsAnswer,
  passes: PassView[],
  y: (index: number, pass: PassView) => number,
): ChartPoints[] {
  const strange = new Set(fit.strangers.map((i) => used[i]!));
  const at = (indexes: number[], pass: PassView) => ({
    x: Float64Array.from(indexes, (index) => setup.readings[index]!.travel),
    y: Float64Array.from(indexes, (index) => y(index, pass)),
  });
  return passes.flatMap((pass): ChartPoints[] => {
    const found = pass.readings.filter((index) => strange.has(index));
    return [
      { ...at(pass.readings, pass), role: 'ink', mark: pass.mark, name: pass.name },
      ...(found.length > 0 ? [{ ...at(found, pass), role: 'contact' as const, mark: 'ring' as const }] : []),
    ];
  });
}

/** Curve, bands and readings. `asRead`: each reading where the gauge had it; else its pass brought to the zero of them all, its drift taken off. */
export function curveChart(setup: Setup, answer: ReadingsAnswer, display: Display, asRead: boolean): ChartModel {
  const curve = curveOf(answer.fit.curve);
  const { x: axis, regions } = travelOf(answer, display);
  const [low, high] = answer.fit.curve.domain;
  const x = evenly(low, high, STEPS);
  const y = x.map((travel) => curve.value(travel));
  const { ofCurve, ofReading } = halfWidths(answer, curve);
  const [narrow, wide] = [x.map(ofCurve), x.map(ofReading)];
  const passes = passesOf(setup, answer);
  const drift = new Map(answer.used.map((index, i) => [index, answer.fit.drift?.ofReading[i] ?? 0]));
  const value = (index: number, { offset }: PassView) =>
    setup.readings[index]!.value - (asRead ? 0 : (Number.isNaN(offset) ? 0 : offset) + drift.get(index)!);
  const isInside = (travel: number) => travel >= low && travel <= high;
  const { over, turn, change } = answer;
  return {
    x: axis,
    y: angleAxis(NAMES[setup.quantity], setup.quantity, display, 0.2),
    series: [{ id: 'curve', label: '', name: NAMES.ofCurve, x, y, role: 'now' }],
    bands: Number.isFinite(narrow[0]!)
      ? [
          { of: 'curve', low: y.map((v, i) => v - wide[i]!), high: y.map((v, i) => v + wide[i]!), thin: true },
          { of: 'curve', low: y.map((v, i) => v - narrow[i]!), high: y.map((v, i) => v + narrow[i]!) },
        ]
      : [],
    regions,
    points: pointsOf(setup, answer, passes, value),
    markers: [
      ...(isInside(0) ? [{ x: 0, y: curve.value(0), label: NAMES.zero, kind: 'before' as const }] : []),
      ...(change ? [{ x: over, y: curve.value(over), label: overName(over, display), kind: 'now' as const }] : []),
      ...(turn ? [{ x: turn.value, y: curve.value(turn.value), label: NAMES.turns, kind: 'turn' as const }] : []),
    ],
    description: NAMES.chart(NAMES[setup.quantity], answer.used.length, axis.format(low), axis.format(high)),
  };
}

/** What is left of each reading once curve and zero of its pass are taken off. */
export function residualChart(setup: Setup, answer: ReadingsAnswer, display: Display): ChartModel {
  const { fit, used, readingPlusMinus } = answer;
  const [low, high] = fit.curve.domain;
  const residual = new Map(used.map((index, i) => [index, fit.residuals[i]!]));
  const x = Float64Array.of(low, high);
  const flat = (level: number) => x.map(() => level);
  return {
    ...travelOf(answer, display),
    y: angleAxis(NAMES.left, 'camberChange', display, 0.1),
    series: [{ id: 'none', label: '', x, y: flat(0), role: 'now', quiet: true }],
    bands: Number.isFinite(readingPlusMinus)
      ? [{ of: 'none', low: flat(-readingPlusMinus), high: flat(readingPlusMinus), thin: true }]
      : [],
    points: pointsOf(setup, answer, passesOf(setup, answer), (index) => residual.get(index) ?? Number.NaN),
    markers: [],
    description: NAMES.residualChart,
  };
}

/** At every height that was read: curve, change from zero with its ±, and the plain mean of what was read there. */
export function numbers(
  setup: Setup,
  answer: ReadingsAnswer,
  { units, language }: Display,
): { columns: NumbersColumn[]; rows: (number | null)[][] } {
  const curve = curveOf(answer.fit.curve);
  const { ofCurve } = halfWidths(answer, curve);
  const read = new Map<number, number[]>();
  for (const index of answer.used) {
    const { travel, value } = setup.readings[index]!;
    read.set(travel, [...(read.get(travel) ?? []), value]);
  }
  const { angle, shown, write } = numbersFormat({ units, language });
  // Near zero a change's ± is thousandths of a degree: 0.00 would claim that there is none.
  const doubt = (amount: number) => formatNumber(amount, units.angle === 'arcminutes' ? 1 : 3, language);
  const signed = setup.quantity === 'toe' ? 'always' : 'auto';
  const cell = (amount: number) => (Number.isFinite(amount) ? shown(amount, 'angle') : null);
  return {
    columns: [
      { label: NAMES.travel, unit: units.length, format: write('travel', 'length', 'always') },
      { label: NAMES.curve, unit: angle, format: write(setup.quantity, 'angle', signed) },
      { label: NAMES.plusMinus, unit: angle, format: doubt },
      { label: NAMES.changeFromZero, unit: angle, format: write('camberChange', 'angle', 'always') },
      { label: NAMES.plusMinus, unit: angle, format: doubt },
      { label: NAMES.rawMean, unit: angle, format: write(setup.quantity, 'angle', signed) },
      { label: NAMES.count },
    ],
    rows: [...read.keys()]
      .sort((a, b) => a - b)
      .map((travel) => {
        const values = read.get(travel)!;
        return [
          shown(travel, 'length'),
          cell(curve.value(travel)),
          cell(ofCurve(travel)),
          cell(curve.change(travel, 0)),
          cell(plusMinus95(curve.changeEstimate(travel, 0), curve.data.sources)),
          cell(values.reduce((sum, value) => sum + value, 0) / values.length),
          values.length,
        ];
      }),
  };
}
