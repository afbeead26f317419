import type { ChartColours } from './chart-colours.js';
import type { ChartModel } from './model.js';

/** What of a canvas chart is needed to paint on it; its pixels, not the page's. */
interface Canvas {
  readonly ctx: CanvasRenderingContext2D;
  readonly bbox: { left: number; top: number; width: number; height: number };
  valToPos(value: number, scale: string, canvasPixels: boolean): number;
}

/** Distance of hatching lines, CSS px. */
const HATCH_PX = { limit: 7, outside: 11 } as const;
const WASH = 0.17;

/** Inside the plot only. */
function clipped({ ctx, bbox }: Canvas, paint: () => void): void {
  ctx.save();
  ctx.beginPath();
  ctx.rect(bbox.left, bbox.top, bbox.width, bbox.height);
  ctx.clip();
  paint();
  ctx.restore();
}

/** What lies under the lines: hatched stretches, and the doubt around a line. */
export function paintGround(canvas: Canvas, model: ChartModel, colours: ChartColours): void {
  clipped(canvas, () => {
    for (const region of model.regions) hatch(canvas, region, colours);
    for (const band of model.bands) wash(canvas, model, band, colours);
  });
}

function hatch(canvas: Canvas, { from, to, kind }: ChartModel['regions'][number], colours: ChartColours): void {
  const { ctx, bbox } = canvas;
  const ratio = devicePixelRatio;
  const x = (at: number, end: number) => (Number.isFinite(at) ? canvas.valToPos(at, 'x', true) : end);
  const [left, right] = [x(from, bbox.left), x(to, bbox.left + bbox.width)];
  if (!(right > left)) return;
  ctx.save();
  ctx.beginPath();
  ctx.rect(left, bbox.top, right - left, bbox.height);
  ctx.clip();
  ctx.strokeStyle = kind === 'limit' ? colours.limit : colours.hair;
  ctx.lineWidth = ratio;
  ctx.beginPath();
  for (let foot = left - bbox.height; foot < right; foot += HATCH_PX[kind] * ratio) {
    ctx.moveTo(foot, bbox.top + bbox.height);
    ctx.lineTo(foot + bbox.height, bbox.top);
  }
  ctx.stroke();
  ctx.restore();
}

function wash(canvas: Canvas, model: ChartModel, band: ChartModel['bands'][number], colours: ChartColours): void {
  const { ctx } = canvas;
  const series = model.series.find(({ id }) => id === band.of);
  if (!series) return;
  const known = [...series.x.keys()].filter((i) => Number.isFinite(band.low[i]!) && Number.isFinite(band.high[i]!));
  const spot = (i: number, y: Float64Array): [number, number] => [
    canvas.valToPos(series.x[i]!, 'x', true),
    canvas.valToPos(y[i]!, 'y', true),
  ];
  ctx.save();
  ctx.fillStyle = colours[series.role];
  ctx.globalAlpha = WASH;
  ctx.beginPath();
  for (const i of known) ctx.lineTo(...spot(i, band.high));
  for (const i of known.toReversed()) ctx.lineTo(...spot(i, band.low));
  ctx.fill();
  ctx.restore();
}

/** A plumb line and a dot where something stands. */
export function paintMarkers(canvas: Canvas, model: ChartModel, colours: ChartColours): void {
  const { ctx, bbox } = canvas;
  const ratio = devicePixelRatio;
  clipped(canvas, () => {
    for (const { x, y, kind } of model.markers) {
      if (!Number.isFinite(y)) continue;
      const [left, top] = [canvas.valToPos(x, 'x', true), canvas.valToPos(y, 'y', true)];
      const colour = kind === 'turn' ? colours.ink : colours[kind];
      ctx.strokeStyle = colour;
      ctx.lineWidth = ratio;
      ctx.setLineDash([3 * ratio, 3 * ratio]);
      ctx.beginPath();
      ctx.moveTo(left, top);
      ctx.lineTo(left, bbox.top + bbox.height);
      ctx.stroke();
      ctx.setLineDash([]);
      ctx.fillStyle = kind === 'before' ? colours.paper : colour;
      ctx.beginPath();
      ctx.arc(left, top, 4 * ratio, 0, 2 * Math.PI);
      ctx.fill();
      ctx.stroke();
    }
  });
}
