import { html, type ReactiveController, type ReactiveControllerHost, type TemplateResult } from 'lit';
import { ref } from 'lit/directives/ref.js';
import type { Cursor } from '../cursor.js';
import type { ChartModel } from './model.js';
import type { Plot } from './plot.js';

type PlotModule = { Plot: typeof Plot };

export interface ChartOptions {
  cursor: Cursor;
  /** What to show; undefined until there is an answer. The same object again means nothing has changed. */
  model: () => ChartModel | undefined;
  /** The travel that Escape goes back to, mm. */
  rest: () => number;
}

let loadPlot = (): Promise<PlotModule> => import('./plot.js');

/** Replaces the way the plotting code is fetched: a delivery that checks chunks by their hash does so here. */
export function setPlotLoader(loader: () => Promise<PlotModule>): void {
  loadPlot = loader;
}

/** How far below the fold a chart begins to be fetched. */
const NEAR = '300px 0px';

/** Resolves in a task of its own after the next frame has been painted. */
const painted = (): Promise<void> => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
const nextTask = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

function comesNear(element: Element, signal: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    const observer = new IntersectionObserver(
      (entries) => {
        if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
        observer.disconnect();
        resolve();
      },
      { rootMargin: NEAR },
    );
    observer.observe(element);
    signal.addEventListener('abort', () => observer.disconnect());
  });
}

/**
 * A chart inside a host's shadow root. It keeps its place from the first render, and comes late: after the first answer is
 * painted and when the place is near the viewport. Where it cannot come, its place goes away and `state` says so; sentence,
 * drawing and table do not depend on it.
 */
export class ChartController implements ReactiveController {
  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #options: ChartOptions;
  #state: 'waiting' | 'drawn' | 'absent' = 'waiting';
  #box: HTMLElement | undefined;
  #shown: ChartModel | undefined;
  #plot: Plot | undefined;
  #coming: AbortController | undefined;

  constructor(host: ReactiveControllerHost & HTMLElement, options: ChartOptions) {
    this.#host = host;
    this.#options = options;
    host.addController(this);
  }

  /** `absent`: the plotting code could not be had; open the table of numbers in its stead. The host is re-rendered when this changes. */
  get state(): 'waiting' | 'drawn' | 'absent' {
    return this.#state;
  }

  render(): TemplateResult {
    return html`<div class="chart" ?hidden=${this.#state === 'absent'}>
      <div class="chart-box" ${ref(this.#placed)}></div>
    </div>`;
  }

  hostUpdated(): void {
    const model = this.#options.model();
    if (!model || !this.#box || this.#state === 'absent') return;
    if (!this.#plot) {
      this.#coming ??= this.#come(this.#box);
      return;
    }
    if (model === this.#shown) return;
    this.#shown = model;
    try {
      this.#plot.setModel(model);
    } catch (error) {
      this.#giveUp(error);
    }
  }

  /** The chart as a PNG; null where there is no chart. */
  toPng(): Promise<Blob | null> {
    return this.#plot?.toPng() ?? Promise.resolve(null);
  }

  /** Called when the place enters the document, leaves it with its host, and comes back. */
  readonly #placed = (element?: Element): void => {
    this.#coming?.abort();
    this.#coming = undefined;
    this.#plot?.destroy();
    this.#plot = undefined;
    if (this.#state === 'drawn') this.#state = 'waiting';
    this.#box = element as HTMLElement | undefined;
    // A host that was only moved has no reason to render; one that is rendering comes by there itself.
    if (element) queueMicrotask(() => this.hostUpdated());
  };

  #come(box: HTMLElement): AbortController {
    const coming = new AbortController();
    const { signal } = coming;
    const come = async () => {
      try {
        await painted();
        if (!signal.aborted) await comesNear(box, signal);
        if (signal.aborted) return;
        const { Plot } = await loadPlot();
        // Importing the library and drawing the first chart each take a slow phone most of a tenth of a second.
        await nextTask();
        const model = this.#options.model() ?? this.#shown;
        if (signal.aborted || !model) return;
        const { cursor, rest } = this.#options;
        this.#shown = model;
        this.#plot = new Plot({ host: this.#host, box, cursor, rest }, model);
        this.#state = 'drawn';
        this.#host.requestUpdate();
      } catch (error) {
        if (!signal.aborted) this.#giveUp(error);
      }
    };
    void come();
    return coming;
  }

  #giveUp(error: unknown): void {
    console.warn('Bumpline: no chart, its numbers are in the table.', error);
    this.#plot?.destroy();
    this.#plot = undefined;
    this.#state = 'absent';
    this.#host.requestUpdate();
  }
}
