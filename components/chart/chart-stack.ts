import type { CSSResultGroup } from 'lit';
import { html, type LitElement, nothing, type ReactiveController, render, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { ref } from 'lit/directives/ref.js';
import { repeat } from 'lit/directives/repeat.js';
import { watchInlineSize } from '../controls/resize.js';
import { inTime } from '../delivery/in-time.js';
import { afterPaint } from '../element/after-paint.js';
import type { MadePicture, PictureMaker, PictureRoom } from '../publish/savable.js';
import type { CanvasCharts } from './canvas-charts.js';
import { CHART } from './chart.labels.js';
import { comesNear, painted } from './comes-near.js';
import type { Cursor } from './cursor.js';
import { travelByKey } from './cursor-keys.js';
import { type ChartModel, nameOf, readAloud, valueAt } from './model.js';
import { pictureToTake } from './paper.js';
import { sampleOf } from './sample.js';
import { STACK } from './stack.labels.js';
import { StackPaper } from './stack-paper.js';

/** One chart of a stack. */
export interface StackedChart {
  id: string;
  /** What it is of, without its unit. */
  name: string;
  model: ChartModel;
}

export interface ChartStackOptions {
  cursor: Cursor;
  /** What to show; undefined until there is an answer. The same list again means nothing has changed. */
  charts: () => readonly StackedChart[] | undefined;
  /** The travel that Escape goes back to, mm. */
  rest: () => number;
  addStyles: (...styles: readonly CSSResultGroup[]) => void;
}

/** Zooming in keeps this share of what is shown. */
const CLOSER = 0.5;
/** Nearer than this nothing more is to be seen, mm. */
const LEAST_WINDOW_MM = 5;

/**
 * Charts over each other with one cursor, zoomed together; one at a time where there is no width for more. What draws them comes late and
 * only where they are shown; on paper they are SVG.
 */
export class ChartStack implements ReactiveController, PictureMaker {
  readonly #host: LitElement;
  readonly #options: ChartStackOptions;
  readonly #paper: StackPaper;
  #place: HTMLElement | undefined;
  #drawn: CanvasCharts | undefined;
  #coming: AbortController | undefined;
  #isLost = false;
  #chosen = '';
  #window: [from: number, to: number] | undefined;
  #stop: (() => void)[] = [];

  constructor(host: LitElement, options: ChartStackOptions) {
    this.#host = host;
    this.#options = options;
    this.#paper = new StackPaper(
      () => this.#place,
      () => options.charts() ?? [],
    );
    host.addController(this);
  }

  hostConnected(): void {
    this.#paper.connect();
  }

  hostDisconnected(): void {
    this.#paper.disconnect();
  }

  get state(): 'waiting' | 'drawn' | 'lost' {
    return this.#drawn ? 'drawn' : this.#isLost ? 'lost' : 'waiting';
  }

  get isThere(): boolean {
    return this.#place !== undefined;
  }

  get choices(): readonly StackedChart[] {
    return this.#options.charts() ?? [];
  }

  get choice(): string {
    const { choices } = this;
    return choices.some(({ id }) => id === this.#chosen) ? this.#chosen : (choices[0]?.id ?? '');
  }

  toPicture(room: PictureRoom, choice: string): MadePicture | undefined {
    const chart = this.choices.find(({ id }) => id === choice);
    return chart && pictureToTake(chart.model, room);
  }

  /** Fetches again what did not come. */
  retry(): void {
    if (!this.#isLost) return;
    this.#isLost = false;
    this.hostUpdated();
  }

  /** @param legend what each line is */
  render(legend: TemplateResult): TemplateResult | typeof nothing {
    const charts = this.#options.charts();
    if (!charts) return nothing;
    const chosen = this.choice;
    return html`<div class="stack" ${ref(this.#placed)}>
      <div class="stack-tools">
        <label class="stack-choice">${STACK.chart}
          <select class="text listed" .value=${live(chosen)} @change=${(event: Event) => this.#choose((event.target as HTMLSelectElement).value)}>
            ${charts.map(({ id, name }) => html`<option value=${id} ?selected=${id === chosen}>${name}</option>`)}
          </select>
        </label>
        <button type="button" class="text-button closer" aria-label=${STACK.closerAt} @click=${() => this.#closer()}>${STACK.closer}</button>
        ${this.#window ? html`<button type="button" class="text-button all-travel" @click=${() => this.#zoom(undefined)}>${STACK.all}</button>` : nothing}
        ${legend}
      </div>
      ${this.#isLost ? html`<p class="late" role="status">${STACK.lost}</p>` : nothing}
      <div class="stack-charts">
        ${repeat(
          charts,
          ({ id }) => id,
          (chart) => this.#renderChart(chart, chart.id === chosen),
        )}
      </div>
      <p class="note stack-how">${STACK.howTo}</p>
    </div>`;
  }

  #renderChart({ id, name, model }: StackedChart, isChosen: boolean): TemplateResult {
    const [from, to] = model.x.domain;
    const { travel } = this.#options.cursor;
    return html`<figure class="stack-chart ${isChosen ? 'chosen' : ''}">
      <figcaption><b>${model.y.label}</b> <span class="stack-values"></span></figcaption>
      <div class="canvas-box" data-chart=${id} role="slider" tabindex="0" aria-label=${STACK.slider(name)}
        aria-valuemin=${from} aria-valuemax=${to} aria-valuenow=${Math.min(Math.max(travel, from), to)}
        @keydown=${(event: KeyboardEvent) => this.#pressed(event, model)}></div>
      <div class="stack-paper chart-sheet"></div>
    </figure>`;
  }

  readonly #placed = (place?: Element): void => {
    this.#coming?.abort();
    this.#coming = undefined;
    for (const stop of this.#stop) stop();
    this.#drawn?.destroy();
    this.#drawn = undefined;
    this.#place = place as HTMLElement | undefined;
    if (!place) return;
    this.#stop = [
      watchInlineSize(place, () => this.#drawn?.fit()),
      this.#options.cursor.subscribe(() => this.#showValues()),
    ];
    queueMicrotask(() => this.hostUpdated());
  };

  hostUpdated(): void {
    if (!this.#place) return;
    this.#showValues();
    if (!this.#drawn) {
      if (!this.#isLost) this.#coming ??= this.#come(this.#place);
      return;
    }
    afterPaint(this.#host, this, () => this.#draw());
  }

  #draw(): void {
    this.#drawn?.show(this.#options.charts() ?? []);
    this.#paper.draw();
  }

  #come(place: HTMLElement): AbortController {
    const coming = new AbortController();
    const { signal } = coming;
    const come = async () => {
      await painted();
      if (!signal.aborted) await comesNear(place, signal);
      if (signal.aborted) return;
      try {
        const { CanvasCharts } = await inTime(import('./canvas-charts.js'));
        if (signal.aborted) return;
        const { cursor, addStyles } = this.#options;
        addStyles(...CanvasCharts.styles);
        this.#drawn = new CanvasCharts(place, {
          cursor,
          window: () => this.#window,
          zoom: (window) => this.#zoom(window),
        });
        this.#draw();
      } catch (error) {
        console.warn('Bumpline: the charts could not be fetched; they are tried again.', error);
        this.#isLost = true;
        this.#coming = undefined;
      }
      this.#host.requestUpdate();
    };
    void come();
    return coming;
  }

  /** Beside each chart's name, at the cursor: no rendering, it moves too often. */
  #showValues(): void {
    const { travel } = this.#options.cursor;
    for (const { id, model } of this.#options.charts() ?? []) {
      const box = this.#place?.querySelector(`[data-chart="${id}"]`);
      if (!box) continue;
      const [from, to] = model.x.domain;
      box.setAttribute('aria-valuenow', String(Math.min(Math.max(travel, from), to)));
      box.setAttribute('aria-valuetext', readAloud(model, travel));
      const values = model.series.map((series) => {
        const y = valueAt(series, travel);
        return { series, text: Number.isFinite(y) ? model.y.format(y) : '–' };
      });
      render(
        html`${CHART.at(model.x.format(travel))} ${values.map(
          ({ series, text }) =>
            html`<span class="at-${series.role}">${sampleOf(series)}<span class="called">${nameOf(series)}</span> <b>${text}</b></span>`,
        )}`,
        box.parentElement!.querySelector<HTMLElement>('.stack-values')!,
      );
    }
  }

  #choose(id: string): void {
    this.#chosen = id;
    this.#host.requestUpdate();
    // It has had no width so far.
    void this.#host.updateComplete.then(() => this.#drawn?.fit());
  }

  get #domain(): [number, number] {
    return this.#window ?? this.#options.charts()?.[0]?.model.x.domain ?? [0, 0];
  }

  #closer(): void {
    const [from, to] = this.#domain;
    const half = (CLOSER * (to - from)) / 2;
    const middle = Math.min(Math.max(this.#options.cursor.travel, from + half), to - half);
    this.#zoom([middle - half, middle + half]);
  }

  #zoom(window: [number, number] | undefined): void {
    if (window && window[1] - window[0] < LEAST_WINDOW_MM) return;
    this.#window = window;
    this.#drawn?.redraw();
    this.#host.requestUpdate();
  }

  #pressed(event: KeyboardEvent, model: ChartModel): void {
    const { cursor, rest } = this.#options;
    const [from, to] = this.#window ?? model.x.domain;
    const travel = travelByKey(event, { travel: cursor.travel, from, to, step: model.x.step ?? 1, rest: rest() });
    if (travel === undefined) return;
    cursor.set(travel, 'chart');
    event.preventDefault();
    event.stopPropagation();
  }
}
