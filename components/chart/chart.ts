import { html, type ReactiveController, type ReactiveControllerHost, type TemplateResult } from 'lit';
import { ref } from 'lit/directives/ref.js';
import { afterPaint } from '../element/after-paint.js';
import { onPrint } from '../element/on-print.js';
import type { MadePicture, PictureMaker, PictureRoom } from '../publish/savable.js';
import { comesNear, painted } from './comes-near.js';
import type { Cursor } from './cursor.js';
import type { ChartModel } from './model.js';
import { pictureToTake } from './paper.js';
import { Plot } from './plot.js';

export interface ChartOptions {
  cursor: Cursor;
  /** What to show; undefined until there is an answer. The same object again means nothing has changed. */
  model: () => ChartModel | undefined;
  /** The travel that Escape goes back to, mm. */
  rest: () => number;
}

/**
 * A chart inside a host's shadow root. It keeps its place from the first render, and comes late: in a task of its own after the
 * first answer is painted, and when the place is near the viewport.
 */
export class ChartController implements ReactiveController, PictureMaker {
  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #options: ChartOptions;
  #box: HTMLElement | undefined;
  #shown: ChartModel | undefined;
  #plot: Plot | undefined;
  #coming: AbortController | undefined;

  constructor(host: ReactiveControllerHost & HTMLElement, options: ChartOptions) {
    this.#host = host;
    this.#options = options;
    host.addController(this);
  }

  get state(): 'waiting' | 'drawn' {
    return this.#plot ? 'drawn' : 'waiting';
  }

  render(): TemplateResult {
    return html`<div class="chart">
      <div class="chart-box" ${ref(this.#placed)}></div>
    </div>`;
  }

  /** The same in its place, over what stands below it: what the cursor says, a key. */
  renderPlace(...below: unknown[]): TemplateResult {
    return html`<div class="chart-place" part="chart">${this.render()} ${below}</div>`;
  }

  hostUpdated(): void {
    if (!this.#box) return;
    // The model is work as well: not before its time.
    if (!this.#plot) {
      this.#coming ??= this.#come(this.#box);
      return;
    }
    afterPaint(this.#host, this, () => this.#draw());
  }

  #draw(): void {
    const model = this.#plot && this.#options.model();
    if (!model || model === this.#shown) return;
    this.#shown = model;
    this.#plot!.setModel(model);
  }

  get isThere(): boolean {
    return this.#box !== undefined;
  }

  /** Of what is shown, whether its place has come near or not. */
  toPicture(room: PictureRoom): MadePicture | undefined {
    const model = this.#options.model() ?? this.#shown;
    return model && pictureToTake(model, room);
  }

  /** Called when the place enters the document, leaves it with its host, and comes back. */
  readonly #placed = (element?: Element): void => {
    this.#coming?.abort();
    this.#coming = undefined;
    this.#plot?.destroy();
    this.#plot = undefined;
    this.#box = element as HTMLElement | undefined;
    // A reconnected host has no reason to render by itself.
    if (element) queueMicrotask(() => this.hostUpdated());
  };

  #come(box: HTMLElement): AbortController {
    const coming = new AbortController();
    const { signal } = coming;
    const draw = () => {
      stop();
      if (signal.aborted || this.#plot) return;
      const model = this.#options.model() ?? this.#shown;
      if (!model) {
        // The next rendering tries again.
        coming.abort();
        this.#coming = undefined;
        return;
      }
      const { cursor, rest } = this.#options;
      this.#shown = model;
      this.#plot = new Plot({ box, cursor, rest }, model);
      this.#host.requestUpdate();
    };
    const come = async () => {
      await painted();
      if (!signal.aborted) await comesNear(box, signal);
      draw();
    };
    void come();
    // Paper has no later.
    const stop = onPrint(draw);
    signal.addEventListener('abort', stop);
    return coming;
  }
}
