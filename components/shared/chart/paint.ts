import type { Colours } from './colours.js';
import type { Box, Place, Point } from './labels.js';
import type { ChartBand, ChartMarker, ChartPoints, ChartRegion, ChartSeries } from './model.js';

/** The plotting area on the canvas, and where a value stands on it; CSS px from the canvas' corner. */
export interface Field extends Box {
  x(value: number): number;
  y(value: number): number;
}

type Context = CanvasRenderingContext2D;

const HATCH_PX = { limit: 7, outside: 11 } as const;

function clipTo(context: Context, { left, top, width, height }: Box): void {
  context.beginPath();
  context.rect(left, top, width, height);
  context.clip();
}

/** Where a region lies on the canvas, cut to the plotting area; undefined where nothing of it is left. */
export function regionBox(field: Field, { from, to }: ChartRegion): Box | undefined {
  const edge = (value: number, infinite: number) =>
    Number.isFinite(value) ? Math.min(Math.max(field.x(value), field.left), field.left + field.width) : infinite;
  const left = edge(from, field.left);
  const right = edge(to, field.left + field.width);
  return right - left >= 1 ? { left, top: field.top, width: right - left, height: field.height } : undefined;
}

/** Hatching at 45° (ISO 128-50), closer and with an edge where a limit stands. */
export function paintRegion(context: Context, field: Field, region: ChartRegion, colours: Colours): void {
  const box = regionBox(field, region);
  if (!box) return;
  const { left, top, width, height } = box;
  context.save();
  clipTo(context, box);
  context.strokeStyle = region.kind === 'limit' ? colours.limit : colours.hair;
  context.globalAlpha = region.kind === 'limit' ? 0.55 : 0.8;
  context.lineWidth = 1;
  const spacing = HATCH_PX[region.kind];
  context.beginPath();
  for (let foot = left - height - ((left - height) % spacing); foot < left + width; foot += spacing) {
    context.moveTo(foot, top + height);
    context.lineTo(foot + height, top);
  }
  context.stroke();
  context.globalAlpha = 1;
  context.lineWidth = region.kind === 'limit' ? 2 : 1;
  context.beginPath();
  for (const value of [region.from, region.to]) {
    const x = field.x(value);
    if (!(x > field.left + 1 && x < field.left + field.width - 1)) continue;
    // Drawn whole on the region's own side: the clip would halve it.
    const inset = (value === region.from ? 0.5 : -0.5) * context.lineWidth;
    context.moveTo(x + inset, top);
    context.lineTo(x + inset, top + height);
  }
  context.stroke();
  context.restore();
}

/** Doubt: a wash of the line's own colour, and hairlines at its bounds so that it is seen in print and in forced colours. */
export function paintBand(
  context: Context,
  field: Field,
  band: ChartBand,
  series: ChartSeries,
  colours: Colours,
): void {
  const { x } = series;
  context.save();
  clipTo(context, field);
  context.fillStyle = colours[series.role];
  context.strokeStyle = colours[series.role];
  context.lineWidth = 0.75;
  const known = (i: number) => Number.isFinite(band.low[i]) && Number.isFinite(band.high[i]);
  for (let start = 0; start < x.length; start++) {
    if (!known(start)) continue;
    let end = start;
    while (end + 1 < x.length && known(end + 1)) end++;
    const high = new Path2D();
    const low = new Path2D();
    const fill = new Path2D();
    for (let i = start; i <= end; i++) {
      high.lineTo(field.x(x[i]!), field.y(band.high[i]!));
      fill.lineTo(field.x(x[i]!), field.y(band.high[i]!));
    }
    for (let i = end; i >= start; i--) {
      low.lineTo(field.x(x[i]!), field.y(band.low[i]!));
      fill.lineTo(field.x(x[i]!), field.y(band.low[i]!));
    }
    context.globalAlpha = 0.17;
    context.fill(fill);
    context.globalAlpha = 0.4;
    context.stroke(high);
    context.stroke(low);
    start = end;
  }
  context.restore();
}

/** The zero line, where zero is on the axis: what "no camber" or "no change" is read against. */
export function paintZero(context: Context, field: Field, colours: Colours): void {
  const y = Math.round(field.y(0)) + 0.5;
  if (!(y > field.top && y < field.top + field.height)) return;
  context.save();
  context.strokeStyle = colours.soft;
  context.lineWidth = 1;
  context.beginPath();
  context.moveTo(field.left, y);
  context.lineTo(field.left + field.width, y);
  context.stroke();
  context.restore();
}

export function paintPoints(context: Context, field: Field, points: ChartPoints, colours: Colours): void {
  context.save();
  clipTo(context, field);
  context.strokeStyle = colours[points.role];
  context.lineWidth = 1.5;
  context.beginPath();
  for (let i = 0; i < points.x.length; i++) {
    const x = field.x(points.x[i]!);
    const y = field.y(points.y[i]!);
    if (!Number.isFinite(x) || !Number.isFinite(y)) continue;
    context.moveTo(x - 3.5, y - 3.5);
    context.lineTo(x + 3.5, y + 3.5);
    context.moveTo(x + 3.5, y - 3.5);
    context.lineTo(x - 3.5, y + 3.5);
  }
  context.stroke();
  context.restore();
}

/** A line from the marker down to the axis, so that its travel can be read off. */
export function dropLine(field: Field, { x, y }: ChartMarker): [Point, Point] {
  return [
    { x: field.x(x), y: field.y(y) },
    { x: field.x(x), y: field.top + field.height },
  ];
}

/** Each kind has its own shape, so that none depends on its colour: disc, ring, diamond, square. */
export function paintMarker(context: Context, field: Field, marker: ChartMarker, colours: Colours): void {
  const x = field.x(marker.x);
  const y = field.y(marker.y);
  const colour = marker.kind === 'turn' ? colours.ink : colours[marker.kind];
  context.save();
  context.strokeStyle = colour;
  context.lineWidth = 1;
  if (marker.kind !== 'limit') {
    const [from, to] = dropLine(field, marker);
    context.setLineDash(marker.kind === 'now' ? [] : marker.kind === 'before' ? [4, 3] : [8, 3, 1, 3]);
    context.beginPath();
    context.moveTo(from.x, from.y);
    context.lineTo(to.x, to.y);
    context.stroke();
    context.setLineDash([]);
  }
  context.beginPath();
  if (marker.kind === 'turn') {
    for (const [dx, dy] of [
      [0, -6],
      [6, 0],
      [0, 6],
      [-6, 0],
    ])
      context.lineTo(x + dx!, y + dy!);
    context.closePath();
  } else if (marker.kind === 'limit') context.rect(x - 5, y - 5, 10, 10);
  else context.arc(x, y, marker.kind === 'now' ? 6 : 5, 0, 2 * Math.PI);
  const hollow = marker.kind === 'before' || marker.kind === 'turn';
  // Solid marks stand off from their line by a ring of paper, hollow ones by their filling.
  context.fillStyle = hollow ? colours.paper : colour;
  context.strokeStyle = hollow ? colour : colours.paper;
  context.lineWidth = 2;
  context.fill();
  context.stroke();
  context.restore();
}

/** Words in the place chosen for them, on a ground of paper so that hatching and lines do not run through them. */
export function paintLabel(
  context: Context,
  place: Place,
  text: string,
  font: string,
  colour: string,
  paper: string,
): void {
  context.save();
  context.font = font;
  context.textAlign = 'center';
  context.textBaseline = 'middle';
  context.fillStyle = paper;
  context.globalAlpha = 0.86;
  context.fillRect(place.left - 2, place.top, place.width + 4, place.height);
  context.globalAlpha = 1;
  context.translate(place.left + place.width / 2, place.top + place.height / 2);
  if (place.turned) context.rotate(-Math.PI / 2);
  context.fillStyle = colour;
  context.fillText(text, 0, 0.5);
  context.restore();
}
