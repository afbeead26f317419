import uPlot from 'uplot';
import type { Cursor } from '../cursor.js';
import { watchInlineSize } from '../resize.js';
import { type Colours, followLook, resolveColours } from './colours.js';
import { alignSeries, type ChartModel, yExtent } from './model.js';
import { type Field, paintBand, paintLabel, paintMarker, paintPoints, paintRegion, paintZero } from './paint.js';
import { Scrub } from './scrub.js';
import { axisRange, niceTicks } from './ticks.js';
import { namedAtEdge, placeWords, type Word } from './words.js';

/** What a chart needs from the element around it. */
export interface PlotSurroundings {
  /** Where the theme is set. */
  host: HTMLElement;
  /** Empty, positioned, its height following from its width. */
  box: HTMLElement;
  cursor: Cursor;
  /** The travel that Escape goes back to, mm. */
  rest: () => number;
}

/** Strip above the plot for the axis' name and the read-out, CSS px. */
const STRIP = 28;
/** Ticks, their figures and the axis' name below the plot. */
const FOOT = 44;
/** From this width on the lines' names stand right of the plot. */
const WIDE = 480;

/** The only place that knows the plotting library. */
export class Plot {
  readonly #around: PlotSurroundings;
  readonly #scrub: Scrub;
  readonly #unwatch: (() => void)[];
  readonly #family: string;
  readonly #pen = document.createElement('canvas').getContext('2d')!;
  #model: ChartModel;
  #colours: Colours;
  #chart: uPlot | undefined;
  #yRange: [number, number] = [0, 1];
  #gutter = 0;
  #words: Word[] = [];

  constructor(around: PlotSurroundings, model: ChartModel) {
    this.#around = around;
    this.#model = model;
    this.#family = getComputedStyle(around.box).fontFamily;
    this.#colours = resolveColours(around.box);
    this.#scrub = new Scrub(around.box, model, around.cursor, around.rest);
    try {
      this.#fit();
    } catch (error) {
      this.#scrub.destroy();
      throw error;
    }
    this.#unwatch = [watchInlineSize(around.box, () => this.#fit()), followLook(around.host, () => this.#recolour())];
  }

  destroy(): void {
    for (const stop of this.#unwatch) stop();
    this.#scrub.destroy();
    this.#chart?.destroy();
    this.#chart = undefined;
  }

  setModel(model: ChartModel): void {
    const before = this.#model;
    this.#model = model;
    this.#scrub.setModel(model);
    const chart = this.#chart;
    if (!chart) return;
    const alike =
      before.series.length === model.series.length &&
      before.series.every(({ role, dash }, index) => {
        const other = model.series[index]!;
        return role === other.role && String(dash) === String(other.dash);
      });
    if (!alike) {
      const { width, height } = chart;
      chart.destroy();
      this.#create(width, height);
      return;
    }
    this.#measure(chart.width, chart.height);
    this.#describe(chart);
    chart.batch(() => {
      chart.setData(alignSeries(model), false);
      chart.redraw(true, true);
    });
  }

  /** The chart as a picture, on paper of its own colour, at the screen's resolution. */
  toPng(): Promise<Blob | null> {
    const source = this.#chart?.ctx.canvas;
    if (!source) return Promise.resolve(null);
    const canvas = document.createElement('canvas');
    canvas.width = source.width;
    canvas.height = source.height;
    const context = canvas.getContext('2d')!;
    context.fillStyle = this.#colours.paper;
    context.fillRect(0, 0, canvas.width, canvas.height);
    context.drawImage(source, 0, 0);
    return new Promise((resolve) => canvas.toBlob(resolve));
  }

  #fit(): void {
    const { clientWidth: width, clientHeight: height } = this.#around.box;
    if (width === 0 || height === 0) return;
    const chart = this.#chart;
    if (!chart) this.#create(width, height);
    else if (chart.width !== width || chart.height !== height) {
      this.#measure(width, height);
      chart.setSize({ width, height });
    }
  }

  #recolour(): void {
    const colours = resolveColours(this.#around.box);
    if (JSON.stringify(colours) === JSON.stringify(this.#colours)) return;
    this.#colours = colours;
    this.#chart?.redraw(false, false);
  }

  #describe(chart: uPlot): void {
    const { canvas } = chart.ctx;
    canvas.setAttribute('role', 'img');
    canvas.setAttribute('aria-label', this.#model.description);
  }

  #font(size: number, weight = 400): string {
    return `${weight} ${size}px ${this.#family}`;
  }

  #widthOf(text: string, font: string): number {
    this.#pen.font = font;
    return Math.ceil(this.#pen.measureText(text).width);
  }

  /** What has to be known before the library lays out its axes. */
  #measure(width: number, height: number): void {
    const { y } = this.#model;
    this.#yRange = axisRange(yExtent(this.#model), this.#rows(height), y.unit, y.minSpan);
    const widest = Math.max(
      0,
      ...namedAtEdge(this.#model).map(({ label }) => this.#widthOf(label, this.#font(13, 600))),
    );
    this.#gutter = width >= WIDE && widest > 0 && widest < width / 4 ? widest + 14 : 0;
  }

  #rows(height: number): number {
    return Math.max(3, Math.floor((height - STRIP - FOOT) / 30));
  }

  #create(width: number, height: number): void {
    this.#measure(width, height);
    const colour = (name: keyof Colours) => () => this.#colours[name];
    const font = this.#font(12);
    const tick = (axis: 'x' | 'y', value: number) => {
      const { tick, format } = this.#model[axis];
      return tick ? tick(value) : format(value);
    };
    const options: uPlot.Options = {
      width,
      height,
      padding: [STRIP, () => Math.max(this.#gutter, 16), 0, 0],
      legend: { show: false },
      cursor: { show: false },
      scales: {
        x: { time: false, range: () => this.#model.x.domain },
        y: { range: () => this.#yRange },
      },
      axes: [
        {
          font,
          size: FOOT,
          gap: 5,
          stroke: colour('soft'),
          grid: { show: false },
          border: { show: true, stroke: colour('soft'), width: 1 },
          ticks: { stroke: colour('soft'), width: 1, size: 5 },
          splits: (chart, _axis, low, high) => {
            const widest = Math.max(this.#widthOf(tick('x', low), font), this.#widthOf(tick('x', high), font));
            const most = Math.floor((chart.width - 60 - this.#gutter) / (widest + 16));
            return (
              this.#model.x.ticks?.filter((at) => at >= low && at <= high) ??
              niceTicks(low, high, most, this.#model.x.unit)
            );
          },
          values: (_chart, splits) => splits.map((value) => tick('x', value)),
        },
        {
          font,
          gap: 6,
          stroke: colour('soft'),
          size: (_chart, values) => 12 + Math.max(16, ...(values ?? []).map((value) => this.#widthOf(value, font))),
          grid: { stroke: colour('hair'), width: 0.5 },
          ticks: { show: false },
          splits: (chart, _axis, low, high) => niceTicks(low, high, this.#rows(chart.height), this.#model.y.unit),
          values: (_chart, splits) => splits.map((value) => tick('y', value)),
        },
      ],
      series: [
        {},
        ...this.#model.series.map(
          ({ role, dash }): uPlot.Series => ({
            stroke: colour(role),
            width: role === 'now' ? 3 : 1.75,
            dash: dash ?? (role === 'now' ? [] : [7, 4]),
            // The default rounds every point to a whole pixel, and a gentle curve comes out as stairs.
            pxAlign: 0,
            points: { show: false },
          }),
        ),
      ],
      hooks: {
        drawClear: [(chart) => this.#paint(chart, this.#ground)],
        drawAxes: [(chart) => this.#paint(chart, this.#doubt)],
        draw: [(chart) => this.#paint(chart, this.#marks)],
      },
    };
    this.#chart = new uPlot(options, alignSeries(this.#model), this.#around.box);
    // Above the new canvas again, where a chart was made anew.
    this.#around.box.prepend(this.#chart.root);
    this.#describe(this.#chart);
  }

  #field(chart: uPlot): Field {
    const ratio = uPlot.pxRatio;
    const left = chart.bbox.left / ratio;
    const top = chart.bbox.top / ratio;
    return {
      left,
      top,
      width: chart.bbox.width / ratio,
      height: chart.bbox.height / ratio,
      x: (value) => left + chart.valToPos(value, 'x'),
      y: (value) => top + chart.valToPos(value, 'y'),
    };
  }

  #paint(chart: uPlot, layer: (context: CanvasRenderingContext2D, field: Field) => void): void {
    const { ctx } = chart;
    ctx.save();
    ctx.scale(uPlot.pxRatio, uPlot.pxRatio);
    layer.call(this, ctx, this.#field(chart));
    ctx.restore();
  }

  #ground(context: CanvasRenderingContext2D, field: Field): void {
    for (const region of this.#model.regions) paintRegion(context, field, region, this.#colours);
    const measure = (text: string, weight: number) => this.#widthOf(text, this.#font(13, weight));
    this.#words = placeWords(this.#model, field, this.#gutter, measure);
    this.#write(context, true);
  }

  #doubt(context: CanvasRenderingContext2D, field: Field): void {
    paintZero(context, field, this.#colours);
    for (const band of this.#model.bands) {
      const series = this.#model.series.find(({ id }) => id === band.of);
      if (series) paintBand(context, field, band, series, this.#colours);
    }
  }

  #marks(context: CanvasRenderingContext2D, field: Field): void {
    const { points = [], markers } = this.#model;
    for (const some of points) paintPoints(context, field, some, this.#colours);
    for (const marker of markers) paintMarker(context, field, marker, this.#colours);
    this.#write(context, false);
    const titleEnd = this.#titles(context, field);
    this.#scrub.place(field, this.#chart!.width, titleEnd);
  }

  /** @returns where the y axis' name ends, CSS px. */
  #titles(context: CanvasRenderingContext2D, field: Field): number {
    const { x, y } = this.#model;
    const font = this.#font(12);
    context.font = font;
    context.fillStyle = this.#colours.soft;
    context.textBaseline = 'middle';
    context.textAlign = 'left';
    context.fillText(y.label, 2, STRIP / 2 - 1);
    context.textAlign = 'right';
    context.fillText(x.label, field.left + field.width, field.top + field.height + FOOT - 9);
    return this.#widthOf(y.label, font) + 8;
  }

  #write(context: CanvasRenderingContext2D, ground: boolean): void {
    for (const { text, colour, weight, place, ground: low } of this.#words)
      if (low === ground)
        paintLabel(context, place, text, this.#font(13, weight), this.#colours[colour], this.#colours.paper);
  }
}
