import type { GeometryOutput } from '../../core/answers/geometry.js';
import { type LinksOverTravel, outputAt } from '../../core/answers/geometry-at.js';
import { interpolate } from '../../core/math/interpolate.js';
import { formatQuantity } from '../../core/quantity/format.js';
import type { Quantity } from '../../core/quantity/quantities.js';
import { MM_PER_INCH } from '../../core/quantity/units.js';
import { shownName } from '../car/shown-names.words.js';
import { travelAxis } from '../chart/axes.js';
import type { StackedChart } from '../chart/chart-stack.js';
import type { ChartModel, ChartSeries } from '../chart/model.js';
import { numbersFormat } from '../controls/numbers-format.js';
import type { NumbersColumn } from '../controls/table.js';
import { type Display, show } from '../element/sentence.js';
import { NAMES } from './bumpline-geometry.labels.js';
import { isDoubtStated, type WorkbenchAnswer } from './geometry-view.js';
import { endsText, regionsOf, type TravelEnds } from './travel-ends.js';

/** How a value is shown, and the least of its axis, so that a flat line's last digits are no mountain. */
const SHOWN: Record<GeometryOutput, { quantity: Quantity; least: number }> = {
  camber: { quantity: 'camber', least: 0.4 },
  toe: { quantity: 'toe', least: 0.2 },
  caster: { quantity: 'camber', least: 0.4 },
  kingpin: { quantity: 'camber', least: 0.4 },
  scrubRadius: { quantity: 'travel', least: 6 },
  casterTrail: { quantity: 'travel', least: 6 },
  halfTrack: { quantity: 'travel', least: 6 },
  rollCentreHeight: { quantity: 'travel', least: 10 },
  motionRatio: { quantity: 'ratio', least: 0.05 },
  instantCentreY: { quantity: 'travel', least: 100 },
  instantCentreZ: { quantity: 'travel', least: 100 },
};

/** Beyond this an instant centre is at infinity for any eye, mm. */
const FARTHEST_MM = 5_000;
/** Tell sets apart that are not the one in the sentence. */
const DASHES = [
  [2, 3],
  [10, 3, 2, 3],
  [5, 2],
  [1, 2],
] as const;

interface Line {
  name: string;
  links: LinksOverTravel;
  isShown: boolean;
  dash: number[] | undefined;
}

/** The bare links first, then every set of parts; the one in the sentence is drawn through. */
export function linesOf({ bare, sets, shown }: WorkbenchAnswer): Line[] {
  let others = 0;
  return [
    { name: NAMES.bare, links: bare, isShown: sets.length === 0, dash: undefined },
    ...sets.map((fitted, i): Line => {
      const isShown = i === shown;
      return {
        name: shownName(fitted.set.setup.name),
        links: fitted,
        isShown,
        dash: isShown ? undefined : [...DASHES[others++ % DASHES.length]!],
      };
    }),
  ];
}

/** What a driver asks first, first. */
const ORDER: readonly GeometryOutput[] = [
  ...(['camber', 'toe', 'rollCentreHeight', 'scrubRadius', 'kingpin', 'caster', 'casterTrail'] as const),
  ...(['halfTrack', 'motionRatio', 'instantCentreZ', 'instantCentreY'] as const),
];

const outputsOf = ({ bare }: WorkbenchAnswer): GeometryOutput[] =>
  ORDER.filter((output) => bare.curves.outputs[output]);

const isFar = (output: GeometryOutput, links: LinksOverTravel, i: number): boolean =>
  output.startsWith('instantCentre') && !(Math.abs(links.curves.outputs.instantCentreY![i]!) <= FARTHEST_MM);

/** What is drawn of an output: not what runs to infinity. */
const valuesOf = (output: GeometryOutput, links: LinksOverTravel): Float64Array =>
  links.curves.outputs[output]!.map((value, i) => (isFar(output, links, i) ? Number.NaN : value));

/** Whether only changes of camber are known. */
const isChangeOnly = ({ bare: { curves } }: WorkbenchAnswer): boolean =>
  curves.driveway !== undefined && curves.driveway.camber === undefined;

const nameOf = (output: GeometryOutput, answer: WorkbenchAnswer): string =>
  output === 'camber' && isChangeOnly(answer) ? NAMES.cambers : NAMES.outputs[output];

/** A chart an output, all sets over each other. */
export function charts(answer: WorkbenchAnswer, display: Display, ends: TravelEnds = {}): StackedChart[] {
  const lines = linesOf(answer);
  return outputsOf(answer).map((output) => {
    const name = nameOf(output, answer);
    return { id: output, name, model: chartModel(output, name, lines, answer, display, ends) };
  });
}

/** So far beyond the end of the links the axis goes, so that it is seen as one, mm. */
const BEYOND_MM = 6;
/** Lines stop this near the end of reach, mm. */
const AT_END_MM = 1.01;

/** All that is drawn, and a little beyond where the links end there. */
export function domainOf(answer: WorkbenchAnswer, { bump, droop }: TravelEnds = {}): [number, number] {
  const travels = linesOf(answer).map(({ links: { curves } }) => curves.travel);
  const low = Math.min(...travels.map((travel) => travel[0]!));
  const high = Math.max(...travels.map((travel) => travel[travel.length - 1]!));
  const isEnd = (end: TravelEnds['bump'], at: number) =>
    end?.governedBy === 'linkage' && Math.abs(end.travel - at) < AT_END_MM;
  return [isEnd(droop, low) ? low - BEYOND_MM : low, isEnd(bump, high) ? high + BEYOND_MM : high];
}

function chartModel(
  output: GeometryOutput,
  name: string,
  lines: readonly Line[],
  answer: WorkbenchAnswer,
  display: Display,
  ends: TravelEnds,
): ChartModel {
  const { drop } = answer;
  const series = lines.map(
    ({ name: label, links, isShown, dash }, i): ChartSeries => ({
      id: String(i),
      label,
      x: links.curves.travel,
      y: valuesOf(output, links),
      role: isShown ? 'now' : 'before',
      ...(dash && { dash }),
    }),
  );
  const domain = domainOf(answer, ends);
  const shown = lines.find(({ isShown }) => isShown)!;
  const at = (travel: number) => outputAt(shown.links, output, travel).value;
  return {
    x: travelAxis(NAMES.chartX, domain, display),
    y: axisOf(output, name, display),
    series,
    bands: isDoubtStated(answer) ? bandsOf(output, shown, String(lines.indexOf(shown))) : [],
    regions: regionsOf(ends, domain),
    markers: [
      { x: 0, y: at(0), label: NAMES.stock, kind: 'before' },
      ...(drop === 0 ? [] : [{ x: drop, y: at(drop), label: heightName(drop, display), kind: 'now' as const }]),
    ],
    description: [NAMES.chart(name, lines.map((line) => line.name).join(', ')), endsText(ends, domain, display)]
      .filter(Boolean)
      .join(' '),
  };
}

/** The 95 % band of the set in the sentence; none of what runs to infinity. */
function bandsOf(output: GeometryOutput, { links }: Line, of: string): ChartModel['bands'] {
  const { doubt, curves } = links;
  if (!doubt || doubt.sources.length === 0 || output.startsWith('instantCentre')) return [];
  const known = doubt.travel.map((travel) => outputAt(links, output, travel).plusMinus ?? Number.NaN);
  const half = curves.travel.map((travel) => interpolate(doubt.travel, known, travel));
  const values = curves.outputs[output]!;
  return [{ of, low: values.map((value, i) => value - half[i]!), high: values.map((value, i) => value + half[i]!) }];
}

function axisOf(output: GeometryOutput, name: string, { units, language }: Display): ChartModel['y'] {
  const { quantity, least } = SHOWN[output];
  const write = (unit: boolean) => (amount: number) =>
    formatQuantity(amount, quantity, units, { language, unit, sign: output === 'toe' ? 'always' : 'auto' }).text;
  const isAngle = quantity === 'camber' || quantity === 'toe';
  const unit = quantity === 'ratio' ? '' : isAngle ? (units.angle === 'arcminutes' ? '° ′' : '°') : units.length;
  const step = isAngle && units.angle === 'arcminutes' ? 1 / 6 : !isAngle && unit === 'in' ? MM_PER_INCH : 1;
  return {
    label: unit ? `${name}, ${unit}` : name,
    format: write(true),
    tick: write(false),
    unit: step,
    minSpan: least,
  };
}

export const heightName = (drop: number, display: Display): string =>
  drop === 0 ? NAMES.stock : (drop < 0 ? NAMES.higher : NAMES.lower)(show(Math.abs(drop), 'drop', display));

const TABLE_STEP_MM = 10;

/** Every 10 mm, or half inch, all outputs of all sets. */
export function numbers(
  answer: WorkbenchAnswer,
  display: Display,
): { columns: NumbersColumn[]; rows: (number | null)[][] } {
  const lines = linesOf(answer);
  const outputs = outputsOf(answer);
  const { units } = display;
  const step = units.length === 'in' ? 12.7 : TABLE_STEP_MM;
  const { travel } = answer.bare.curves;
  const travels = new Set<number>([answer.drop]);
  for (let k = Math.ceil(travel[0]! / step); k * step <= travel[travel.length - 1]!; k++) travels.add(k * step || 0);
  const { angle, shown, write } = numbersFormat(display);
  const dimension = (output: GeometryOutput) => {
    const { quantity } = SHOWN[output];
    return quantity === 'ratio' ? 'plain' : quantity === 'travel' ? 'length' : 'angle';
  };
  const unitOf = { length: units.length, angle, plain: '' };
  const cells = outputs.flatMap((output) => lines.map((line) => ({ output, line })));
  return {
    columns: [
      { label: NAMES.travel, unit: units.length, format: write('travel', 'length', 'always') },
      ...cells.map(({ output, line }) => ({
        label: NAMES.column(nameOf(output, answer), line.name),
        unit: unitOf[dimension(output)],
        format: write(SHOWN[output].quantity, dimension(output), output === 'toe' ? 'always' : 'auto'),
      })),
    ],
    rows: [...travels]
      .sort((a, b) => a - b)
      .map((at) => [
        shown(at, 'length'),
        ...cells.map(({ output, line: { links } }) => {
          const { value } = outputAt(links, output, at);
          return Number.isFinite(value) ? shown(value, dimension(output)) : null;
        }),
      ]),
  };
}
