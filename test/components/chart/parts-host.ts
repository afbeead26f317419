import { css, html, LitElement } from 'lit';
import { ChartController } from '../../../components/chart/chart.js';
import { chartStyles } from '../../../components/chart/chart.styles.js';
import { Cursor } from '../../../components/chart/cursor.js';
import type { ChartModel } from '../../../components/chart/model.js';
import { renderSlider, sliderStyles } from '../../../components/controls/slider.js';
import { numbersStyles, renderNumbers } from '../../../components/controls/table.js';
import { Announcer } from '../../../components/element/announce.js';
import { sharedBodyStyles } from '../../../components/theme/body.styles.js';
import { theme } from '../../../components/theme/theme.js';
import { camber, exampleModel, signed } from './example-model.js';

/** All shared parts in one small element, as an element of the project would put them together. */
export class PartsHost extends LitElement {
  static override properties = { model: { attribute: false }, drop: { type: Number } };
  static override styles = [
    theme,
    chartStyles,
    sliderStyles,
    numbersStyles,
    sharedBodyStyles,
    css`
      :host {
        padding: 16px;
      }
    `,
  ];
  declare model: ChartModel | undefined;
  declare drop: number;
  renders = 0;
  readonly cursor = new Cursor(12);
  readonly announcer = new Announcer(this);
  readonly chart = new ChartController(this, {
    cursor: this.cursor,
    model: () => this.model,
    rest: () => this.drop,
  });

  constructor() {
    super();
    this.model = exampleModel();
    this.drop = 30;
  }

  override render() {
    this.renders++;
    const rows = Array.from({ length: 16 }, (_, i) => 10 * i - 60).map((t) => [t, camber(t, 0.0105), camber(t)]);
    return html`
      ${this.announcer.render()}
      ${renderSlider({
        id: 'drop',
        label: 'Drop',
        quantity: 'drop',
        display: { units: { length: 'mm', angle: 'degrees' }, language: 'en' },
        value: this.drop,
        min: 0,
        max: 80,
        ticks: [
          { at: 0, label: '0', kind: 'plain' },
          { at: 30, label: '30', kind: 'plain' },
          { at: 62, label: 'stop 62', kind: 'limit' },
          { at: 69, label: 'turns 69', kind: 'turn' },
        ],
        onInput: (v) => {
          this.drop = v;
          this.model = exampleModel(v);
        },
        onChange: () => this.announcer.announce(`${this.drop} mm lower`),
      })}
      ${this.chart.render()}
      ${renderNumbers({
        id: 'numbers',
        caption: 'Camber at each travel',
        columns: [
          { label: 'Travel', unit: 'mm', format: signed(0, '') },
          { label: 'Old arms', unit: '°', format: signed(2, '') },
          { label: 'Now', unit: '°', format: signed(2, '') },
        ],
        rows,
        cursor: this.cursor,
        onStatus: (text) => this.announcer.announce(text),
      })}
    `;
  }
}
if (!customElements.get('parts-host')) customElements.define('parts-host', PartsHost);

/** Resolves when the condition holds; rejects after three seconds with the name of what did not come. */
export async function until(what: string, condition: () => boolean): Promise<void> {
  const end = performance.now() + 3000;
  while (!condition()) {
    if (performance.now() > end) throw new Error(`waited in vain for: ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 16));
  }
}
