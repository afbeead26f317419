import uPlot from 'uplot';
import { textScale } from '../controls/text-scale.js';
import { paintGround, paintMarkers } from './canvas-paint.js';
import type { ChartColours } from './chart-colours.js';
import type { Cursor } from './cursor.js';
import { onStep } from './cursor-keys.js';
import { type ChartModel, yExtent } from './model.js';
import { alignedData } from './series-data.js';
import { axisRange, niceTicks } from './ticks.js';

/** What the charts of a stack have in common. */
export interface CanvasSurroundings {
  cursor: Cursor;
  colours(): ChartColours;
  /** The stretch of x that is shown; undefined: all of it. */
  window(): [from: number, to: number] | undefined;
  zoom(window: [from: number, to: number] | undefined): void;
}

/** Narrower than this a drag was none, CSS px. */
const LEAST_DRAG_PX = 8;
const TICK_PX = 12;
/** A figure of the y axis stands in every so many px. */
const ROW_PX = 30;
const WIDTH_OF = { now: 2.5, before: 1.5 } as const;
const DASH_OF = { now: [], before: [7, 4] } as const;

/**
 * One chart on a canvas, for many synced series: drawn by uPlot, which nothing else imports. It takes the model that the SVG chart
 * takes. The cursor is the sheet's own, so that all charts, the drawing and the table share it.
 */
export class CanvasChart {
  readonly #box: HTMLElement;
  readonly #around: CanvasSurroundings;
  #model: ChartModel;
  #plot: uPlot | undefined;
  #shape = '';
  readonly #unsubscribe: () => void;

  constructor(box: HTMLElement, model: ChartModel, around: CanvasSurroundings) {
    this.#box = box;
    this.#model = model;
    this.#around = around;
    this.#unsubscribe = around.cursor.subscribe(() => this.#showCursor());
  }

  /** Draws, where the place has a width. */
  fit(): void {
    const { clientWidth: width, clientHeight: height } = this.#box;
    if (width === 0 || height === 0) return;
    if (this.#plot) this.#plot.setSize({ width, height });
    else this.#make(width, height);
    this.#showCursor();
  }

  setModel(model: ChartModel): void {
    this.#model = model;
    if (!this.#plot) return;
    // Another number of lines is another chart.
    if (shapeOf(model) !== this.#shape) {
      this.#plot.destroy();
      this.#plot = undefined;
      this.fit();
      return;
    }
    this.#plot.batch(() => {
      this.#plot!.setData(alignedData(model) as uPlot.AlignedData, false);
      this.#show();
    });
    this.#showCursor();
  }

  /** After another window or other colours. */
  redraw(): void {
    this.#show();
    this.#plot?.redraw(false, true);
    this.#showCursor();
  }

  destroy(): void {
    this.#unsubscribe();
    this.#plot?.destroy();
  }

  get #window(): [number, number] {
    return this.#around.window() ?? this.#model.x.domain;
  }

  #show(): void {
    const [min, max] = this.#window;
    this.#plot?.setScale('x', { min, max });
  }

  #showCursor(): void {
    const plot = this.#plot;
    if (!plot) return;
    const { travel } = this.#around.cursor;
    const [from, to] = this.#window;
    const left = travel >= from && travel <= to ? plot.valToPos(travel, 'x') : -10;
    plot.setCursor({ left, top: 0 }, false);
  }

  #make(width: number, height: number): void {
    const { colours, zoom } = this.#around;
    const scale = textScale(this.#box);
    const font = () => `${TICK_PX * scale}px ${colours().family}`;
    const model = () => this.#model;
    const rows = () => Math.max(2, Math.floor(height / ROW_PX / scale) - 1);
    const windowed = () => ({ ...model(), x: { ...model().x, domain: this.#window } });
    this.#shape = shapeOf(this.#model);
    const axis = (side: 'x' | 'y', most: () => number): uPlot.Axis => ({
      stroke: () => colours().soft,
      font: `${TICK_PX * scale}px ${colours().family}`,
      grid: { stroke: () => colours().hair, width: 0.5 },
      ticks: { stroke: () => colours().hair, width: 0.5, size: 4 },
      gap: 3,
      splits: (_, __, low, high) => niceTicks(low, high, most(), model()[side].unit),
      values: (_, splits) => splits.map((at) => (model()[side].tick ?? model()[side].format)(at)),
      size: side === 'x' ? Math.ceil(22 * scale) : (plot, values) => 10 + widestOf(plot, values ?? [], font()),
    });
    const plot = new uPlot(
      {
        width,
        height,
        pxAlign: 0,
        padding: [8, 20, 0, 0],
        legend: { show: false },
        scales: {
          x: { time: false, auto: false, range: () => this.#window },
          y: { range: () => axisRange(yExtent(windowed()), rows(), model().y.unit, model().y.minSpan) },
        },
        axes: [axis('x', () => Math.floor(width / 56 / scale)), axis('y', rows)],
        series: [
          {},
          ...this.#model.series.map(
            ({ role, dash = [...DASH_OF[role]] }): uPlot.Series => ({
              stroke: () => colours()[role],
              width: WIDTH_OF[role],
              dash,
              points: { show: false },
            }),
          ),
        ],
        cursor: {
          y: false,
          drag: { x: true, y: false, setScale: false },
          points: { size: 8, fill: (_, i) => colours()[this.#model.series[i - 1]?.role ?? 'now'], width: 0 },
          bind: {
            dblclick: () => () => {
              zoom(undefined);
              return null;
            },
          },
        },
        hooks: {
          drawClear: [(of) => paintGround(of, model(), colours())],
          draw: [
            (of) => {
              paintMarkers(of, model(), colours());
              // Only now it is known where a travel stands.
              this.#showCursor();
            },
          ],
          setSelect: [(of) => this.#selected(of)],
          setCursor: [(of) => this.#pointed(of)],
        },
      },
      alignedData(this.#model) as uPlot.AlignedData,
      this.#box,
    );
    // What it shows is told by the place that it stands in.
    plot.ctx.canvas.setAttribute('aria-hidden', 'true');
    this.#plot = plot;
    this.#touched(plot);
  }

  #selected(plot: uPlot): void {
    const { left, width } = plot.select;
    if (width < LEAST_DRAG_PX) return;
    plot.setSelect({ left: 0, top: 0, width: 0, height: 0 }, false);
    this.#around.zoom([plot.posToVal(left, 'x'), plot.posToVal(left + width, 'x')]);
  }

  /** Where the mouse is, the cursor of all goes; where it leaves, it stays. */
  #pointed({ cursor, posToVal }: uPlot): void {
    if (!cursor.event || cursor.left === undefined) return;
    if (cursor.left < 0) queueMicrotask(() => this.#showCursor());
    else this.#set(posToVal(cursor.left, 'x'));
  }

  /** A finger that goes sideways moves the cursor; up and down it scrolls the page. */
  #touched({ over, posToVal }: uPlot): void {
    const follow = (event: PointerEvent) => {
      if (event.pointerType === 'mouse') return;
      this.#set(posToVal(event.clientX - over.getBoundingClientRect().left, 'x'));
    };
    over.addEventListener('pointermove', follow);
    over.addEventListener('pointerup', follow);
  }

  #set(travel: number): void {
    const [from, to] = this.#window;
    this.#around.cursor.set(onStep(travel, { from, to, step: this.#model.x.step ?? 1 }), 'chart');
  }
}

const shapeOf = ({ series }: ChartModel): string => JSON.stringify(series.map(({ role, dash }) => [role, dash]));

/** CSS px. */
function widestOf({ ctx }: uPlot, texts: readonly string[], font: string): number {
  ctx.save();
  ctx.font = font;
  const widest = Math.max(0, ...texts.map((text) => ctx.measureText(text).width));
  ctx.restore();
  return Math.ceil(widest);
}
