import { html, nothing, type TemplateResult } from 'lit';
import { formatNumber } from '../../core/quantity/format.js';
import { camberFromOrientation } from '../../core/readings/instruments.js';
import type { ReadingsHost } from '../paste/readings-host.js';
import { GRID } from './reading-grid.labels.js';

/** How long readings are averaged, ms, and how far they may scatter to be called steady, degrees: two of the steps of 0.1° that browsers tell. Common practice, no source. */
const AVERAGED_MS = 1000;
const STEADY = 0.25;
/** How often the shown angle changes, ms. */
const SHOWN_EVERY_MS = 200;

type Orientation = typeof DeviceOrientationEvent & { requestPermission?: () => Promise<'granted' | 'denied'> };

/** This phone as the gauge: its back on the wheel, camber from its tilt. */
export class PhoneGauge {
  #app: ReadingsHost;
  #onTake: (value: number) => void;
  #state: 'off' | 'on' | 'denied' = 'off';
  #samples: { at: number; camber: number }[] = [];
  #shown = 0;

  /** @param onTake degrees, top outward positive */
  constructor(app: ReadingsHost, onTake: (value: number) => void) {
    this.#app = app;
    this.#onTake = onTake;
    app.host.addController({ hostDisconnected: () => this.#stop() });
  }

  /** Only where a finger is: a desktop browser knows the event and never sends one. */
  get #isOffered(): boolean {
    return 'DeviceOrientationEvent' in globalThis && matchMedia('(pointer: coarse)').matches;
  }

  render(): TemplateResult | typeof nothing {
    if (!this.#isOffered || this.#app.setup.quantity !== 'camber') return nothing;
    if (this.#state !== 'on') {
      return html`<div class="phone">
        <button type="button" class="button phone-start" @click=${() => void this.#start()}>${GRID.phone}</button>
        ${this.#state === 'denied' ? html`<p class="note" role="alert">${GRID.phoneDenied}</p>` : nothing}
      </div>`;
    }
    const mean = this.#mean;
    const { language } = this.#app.display;
    return html`<div class="phone">
      <p class="note">${GRID.phoneNote}</p>
      ${
        mean === undefined
          ? html`<p class="note">${GRID.phoneWaiting}</p>`
          : html`<p class="live"><b>${formatNumber(mean, 2, language)}°</b> ${this.#isSteady ? GRID.steady : GRID.unsteady}</p>`
      }
      <button type="button" class="button main phone-take" ?disabled=${mean === undefined} @click=${() => this.#take()}>${GRID.phoneTake}</button>
      <button type="button" class="button" @click=${() => this.#stop()}>${GRID.phoneStop}</button>
    </div>`;
  }

  get #mean(): number | undefined {
    const { length } = this.#samples;
    return length === 0 ? undefined : this.#samples.reduce((sum, { camber }) => sum + camber, 0) / length;
  }

  get #isSteady(): boolean {
    const cambers = this.#samples.map(({ camber }) => camber);
    return cambers.length > 3 && Math.max(...cambers) - Math.min(...cambers) < STEADY;
  }

  async #start(): Promise<void> {
    try {
      const asked = await (DeviceOrientationEvent as Orientation).requestPermission?.();
      this.#state = asked === 'denied' ? 'denied' : 'on';
    } catch {
      this.#state = 'denied';
    }
    if (this.#state === 'on') addEventListener('deviceorientation', this.#turned);
    this.#app.host.requestUpdate();
  }

  #stop(): void {
    if (this.#state !== 'on') return;
    this.#state = 'off';
    this.#samples = [];
    removeEventListener('deviceorientation', this.#turned);
    this.#app.host.requestUpdate();
  }

  #take(): void {
    const mean = this.#mean;
    if (mean !== undefined) this.#onTake(mean);
  }

  readonly #turned = ({ beta, gamma, timeStamp }: DeviceOrientationEvent): void => {
    if (beta === null || gamma === null) return;
    this.#samples.push({ at: timeStamp, camber: camberFromOrientation(beta, gamma) });
    this.#samples = this.#samples.filter(({ at }) => timeStamp - at <= AVERAGED_MS);
    if (timeStamp - this.#shown < SHOWN_EVERY_MS) return;
    this.#shown = timeStamp;
    this.#app.host.requestUpdate();
  };
}
