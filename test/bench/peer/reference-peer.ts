import { wrap } from 'comlink';
import { css, html, LitElement, svg } from 'lit';
import { camber } from './formula.js';
import FormulaWorker from './formula.worker.ts?worker&inline';

const MAIN_THREAD = Symbol.for('bumpline.main-thread');

/** What a page cannot do without that says a worker's number beside a slider: the least that an element of ours could cost. */
class ReferencePeer extends LitElement {
  static override properties = { drop: { type: Number }, change: { state: true } };
  static override styles = css`
    :host {
      display: block;
      font: 16px/1.45 system-ui, sans-serif;
    }
    input {
      inline-size: 100%;
      block-size: 44px;
      margin: 0;
    }
    path {
      fill: none;
      stroke: currentColor;
      stroke-width: 2;
    }
  `;
  declare drop: number;
  declare change: number | undefined;
  readonly #core = MAIN_THREAD in globalThis ? { camber } : wrap<{ camber: typeof camber }>(new FormulaWorker());

  constructor() {
    super();
    this.drop = 30;
  }

  get settled(): Promise<unknown> {
    return this.updateComplete;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    void this.#ask();
  }

  async #ask(): Promise<void> {
    const { drop } = this;
    const [after, before] = await Promise.all([this.#core.camber(drop), this.#core.camber(0)]);
    if (drop !== this.drop) return;
    this.change = after - before;
    this.dispatchEvent(new Event('bumpline-answer', { bubbles: true }));
  }

  #slide(event: Event): void {
    this.drop = (event.target as HTMLInputElement).valueAsNumber;
    void this.#ask();
  }

  override render() {
    const { drop, change } = this;
    const curve = Array.from({ length: 41 }, (_, i) => `${i * 8} ${60 - 40 * camber(i * 3 - 40)}`).join('L');
    return html`<p class="says">${drop} mm lower: ${change === undefined ? '…' : `${change.toFixed(2)}°`}</p>
      <input type="range" min="0" max="80" aria-label="Drop, mm" .valueAsNumber=${drop} @input=${this.#slide} />
      <svg viewBox="0 0 320 160" role="img" aria-label="Camber over wheel travel">
        ${svg`<path d="M${curve}" /><path d="M${(drop + 40) * 2.67} 0V160" />`}
      </svg>`;
  }
}

customElements.define('reference-peer', ReferencePeer);
