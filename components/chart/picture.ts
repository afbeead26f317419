import { nothing, type SVGTemplateResult, svg } from 'lit';
import { type ChartFrame, dropLine, type Field, FOOT, HEAD_ROW, regionBox } from './field.js';
import type { Box, Point } from './labels.js';
import type { ChartBand, ChartMarker, ChartModel, ChartPoints, ChartRegion, ChartSeries, PointMark } from './model.js';
import type { Word } from './words.js';

/** Distance of hatching lines, CSS px: closer where a limit stands. */
const HATCH_PX = { limit: 7, outside: 11 } as const;

const round = (px: number): number => Math.round(px * 100) / 100;
const spot = ({ x, y }: Point): string => `${round(x)} ${round(y)}`;
const open = (points: readonly Point[]): string => (points.length > 0 ? `M${points.map(spot).join('L')}` : '');

/** Runs of points that are known, broken at gaps. */
function runs(field: Field, x: Float64Array, y: Float64Array): Point[][] {
  const found: Point[][] = [[]];
  for (let i = 0; i < x.length; i++) {
    if (Number.isFinite(y[i]!)) found[found.length - 1]!.push({ x: field.x(x[i]!), y: field.y(y[i]!) });
    else if (found[found.length - 1]!.length > 0) found.push([]);
  }
  return found.filter((run) => run.length > 0);
}

/** 45° lines (ISO 128-50) as real lines: a pattern would need an id that is unique on somebody else's page. */
function hatch({ left, top, width, height }: Box, spacing: number): string {
  let d = '';
  const right = left + width;
  for (let foot = Math.ceil((left - height) / spacing) * spacing; foot < right; foot += spacing) {
    const from = Math.max(foot, left);
    const to = Math.min(foot + height, right);
    if (to > from)
      d += `M${spot({ x: from, y: top + height - (from - foot) })}L${spot({ x: to, y: top + height - (to - foot) })}`;
  }
  return d;
}

function region(field: Field, { kind, from, to }: ChartRegion, box: Box): SVGTemplateResult {
  const edges = [from, to]
    .map((value) => field.x(value))
    .filter((x) => x > field.left + 1 && x < field.left + field.width - 1)
    .map((x) => `M${round(x)} ${field.top}v${field.height}`)
    .join('');
  return svg`<path class="hatch ${kind}" d=${hatch(box, HATCH_PX[kind])}></path><path class="edge ${kind}" d=${edges}></path>`;
}

/** Doubt: a wash of the line's own colour, and hairlines at its bounds so that it is seen in print and in forced colours. */
function band(field: Field, { low, high, thin }: ChartBand, series: ChartSeries): SVGTemplateResult {
  const { x, role } = series;
  const both = high.map((value, i) => (Number.isFinite(value) && Number.isFinite(low[i]!) ? value : Number.NaN));
  const bottom = low.map((value, i) => (Number.isNaN(both[i]!) ? Number.NaN : value));
  const above = runs(field, x, both);
  const below = runs(field, x, bottom);
  const area = above.map((run, i) => `${open(run)}L${[...below[i]!].reverse().map(spot).join('L')}Z`).join('');
  return svg`${thin ? '' : svg`<path class="wash ${role}" d=${area}></path>`}
    <path class="bound ${role} ${thin ? 'thin' : ''}" d=${[...above, ...below].map(open).join('')}></path>`;
}

/** Each set of readings has its own shape, from its middle. */
export const POINT_MARKS: Record<PointMark, string> = {
  cross: 'm-3.5 -3.5l7 7m0 -7l-7 7',
  plus: 'm-4.5 0h9m-4.5 -4.5v9',
  circle: 'm-3.5 0a3.5 3.5 0 1 0 7 0a3.5 3.5 0 1 0 -7 0z',
  square: 'm-3 -3h6v6h-6z',
  triangle: 'm0 -4.5l4.5 7.5h-9z',
  diamond: 'm0 -4.5l4.5 4.5l-4.5 4.5l-4.5 -4.5z',
  ring: 'm-8 0a8 8 0 1 0 16 0a8 8 0 1 0 -16 0z',
};

function points(field: Field, { x, y, role, mark = 'cross' }: ChartPoints): SVGTemplateResult {
  let d = '';
  for (let i = 0; i < x.length; i++) {
    const at = { x: field.x(x[i]!), y: field.y(y[i]!) };
    if (Number.isFinite(at.x) && Number.isFinite(at.y)) d += `M${spot(at)}${POINT_MARKS[mark]}`;
  }
  return svg`<path class="points ${role}" d=${d}></path>`;
}

/** Each kind has its own shape, so that none depends on its colour. */
const MARKS: Record<ChartMarker['kind'], string> = {
  now: 'm-6 0a6 6 0 1 0 12 0a6 6 0 1 0 -12 0z',
  before: 'm-5 0a5 5 0 1 0 10 0a5 5 0 1 0 -10 0z',
  turn: 'm0 -6l6 6l-6 6l-6 -6z',
  limit: 'm-5 -5h10v10h-10z',
};

function marker(field: Field, one: ChartMarker): SVGTemplateResult {
  const [at, foot] = dropLine(field, one);
  const drop = one.kind === 'limit' ? '' : open([at, foot]);
  return svg`<path class="plumb ${one.kind}" d=${drop}></path><path class="mark ${one.kind}" d="M${spot(at)}${MARKS[one.kind]}"></path>`;
}

/** Round a label, CSS px: what it stands on is hidden so far. */
const PLATE = { aside: 2, above: 0 } as const;

/** On a plate of the paper's colour: where a label has to stand on a line of the ground, it is not crossed by it. */
function word({ text, ink, weight, plate, place: { left, top, width, height, turned } }: Word): SVGTemplateResult {
  const [aside, above] = turned ? [PLATE.above, PLATE.aside] : [PLATE.aside, PLATE.above];
  const x = round(left + width / 2);
  const y = round(top + height / 2);
  return svg`${plate ? svg`<rect class="plate" x=${round(left - aside)} y=${round(top - above)} width=${round(width + 2 * aside)} height=${round(height + 2 * above)}></rect>` : ''}
    <text class="word ${ink}" x=${x} y=${y} dy="0.35em" font-weight=${weight} transform=${turned ? `rotate(-90 ${x} ${y})` : nothing}>${text}</text>`;
}

/**
 * The chart as SVG: grid and regions, doubt, lines, marks, words. Colours, widths and dashes are the style sheet's, so that
 * theme, forced colours and print need no new drawing.
 *
 * @param clip an id of this chart's own within its root
 */
export function drawChart(model: ChartModel, frame: ChartFrame, words: Word[], clip: string): SVGTemplateResult {
  const { field, xTicks, yTicks } = frame;
  const { left, top, width, height } = field;
  const bottom = top + height;
  const zero = field.y(0);
  const boxes = model.regions.map((one) => ({ one, box: regionBox(field, one) }));
  return svg`<clipPath id=${clip}><rect x=${left} y=${top} width=${width} height=${height}></rect></clipPath>
    ${boxes.map(({ one, box }) => (box ? region(field, one, box) : ''))}
    <path class="grid" d=${yTicks.map(({ at }) => `M${round(left)} ${round(field.y(at))}h${round(width)}`).join('')}></path>
    <path class="axis" d="M${round(left)} ${bottom}h${round(width)}${xTicks.map(({ at }) => `M${round(field.x(at))} ${bottom}v5`).join('')}"></path>
    ${zero > top && zero < bottom ? svg`<path class="zero" d="M${round(left)} ${round(zero)}h${round(width)}"></path>` : ''}
    ${xTicks.map(({ at, text }) => svg`<text class="tick" x=${round(field.x(at))} y=${bottom + 18}>${text}</text>`)}
    ${yTicks.map(({ at, text }) => svg`<text class="tick y" x=${round(left - 6)} y=${round(field.y(at))} dy="0.35em">${text}</text>`)}
    <text class="tick name" x="2" y=${HEAD_ROW / 2 + 2} dy="0.35em">${model.y.label}</text>
    <text class="tick y" x=${round(left + width)} y=${bottom + FOOT - 6}>${model.x.label}</text>
    <g clip-path="url(#${clip})">
      ${model.bands.map((one) => {
        const series = model.series.find(({ id }) => id === one.of);
        return series ? band(field, one, series) : '';
      })}
      ${model.series.map(
        ({ x, y, role, dash }) =>
          svg`<path class="line ${role}" stroke-dasharray=${dash?.join(' ') ?? nothing} d=${runs(field, x, y).map(open).join('')}></path>`,
      )}
      ${(model.points ?? []).map((some) => points(field, some))}
    </g>
    ${model.markers.map((one) => marker(field, one))} ${words.map(word)}`;
}
