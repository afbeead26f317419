import type { CSSResultGroup } from 'lit';
import { CanvasChart, type CanvasSurroundings } from './canvas-chart.js';
import { canvasChartStyles } from './canvas-chart.styles.js';
import { ChartColourReader, type ChartColours } from './chart-colours.js';
import type { ChartModel } from './model.js';

/** The charts of a stack on their canvases, in one set of colours. Fetched when they are first shown. */
export class CanvasCharts {
  static readonly styles: readonly CSSResultGroup[] = [canvasChartStyles];
  readonly #place: HTMLElement;
  readonly #around: CanvasSurroundings;
  readonly #reader: ChartColourReader;
  readonly #charts = new Map<string, { box: HTMLElement; model: ChartModel; chart: CanvasChart }>();
  #colours: ChartColours;

  constructor(place: HTMLElement, around: Omit<CanvasSurroundings, 'colours'>) {
    this.#place = place;
    this.#reader = new ChartColourReader(place, () => {
      this.#colours = this.#reader.read();
      this.redraw();
    });
    this.#colours = this.#reader.read();
    this.#around = { ...around, colours: () => this.#colours };
  }

  destroy(): void {
    this.#reader.destroy();
    for (const { chart } of this.#charts.values()) chart.destroy();
    this.#charts.clear();
  }

  /** Draws what is another model, in the places that are there by now. */
  show(charts: readonly { id: string; model: ChartModel }[]): void {
    for (const [id, { chart }] of this.#charts) {
      if (charts.some((one) => one.id === id)) continue;
      chart.destroy();
      this.#charts.delete(id);
    }
    for (const { id, model } of charts) {
      const box = this.#place.querySelector<HTMLElement>(`[data-chart="${id}"]`);
      const known = this.#charts.get(id);
      if (!box || (known?.box === box && known.model === model)) continue;
      if (known?.box === box) {
        known.model = model;
        known.chart.setModel(model);
        continue;
      }
      known?.chart.destroy();
      const chart = new CanvasChart(box, model, this.#around);
      this.#charts.set(id, { box, model, chart });
      chart.fit();
    }
  }

  fit(): void {
    for (const { chart } of this.#charts.values()) chart.fit();
  }

  redraw(): void {
    for (const { chart } of this.#charts.values()) chart.redraw();
  }
}
