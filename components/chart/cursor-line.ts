import { html, type ReactiveController, type ReactiveControllerHost, type TemplateResult } from 'lit';
import { ref } from 'lit/directives/ref.js';
import { afterPaint } from '../element/after-paint.js';
import type { Cursor } from './cursor.js';

/** The line under a chart, which follows the cursor without a render of the element. */
export class CursorLine implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #cursor: Cursor;
  readonly #text: (travel: number) => string | undefined;
  #place: Element | undefined;
  #stop: (() => void) | undefined;

  /** @param text of a travel; undefined while there is nothing to say */
  constructor(host: ReactiveControllerHost, cursor: Cursor, text: (travel: number) => string | undefined) {
    this.#host = host;
    this.#cursor = cursor;
    this.#text = text;
    host.addController(this);
  }

  render(): TemplateResult {
    return html`<p class="at-cursor" ${ref(this.#placed)}></p>`;
  }

  /** A new answer may leave the cursor where it is. What stood there before follows as the chart does. */
  hostUpdated(): void {
    if (this.#place?.textContent) afterPaint(this.#host, this, () => this.#show());
    else this.#show();
  }

  readonly #placed = (place?: Element): void => {
    this.#stop?.();
    this.#place = place;
    this.#stop = place && this.#cursor.subscribe(() => this.#show());
  };

  #show(): void {
    if (!this.#place) return;
    const text = this.#text(this.#cursor.travel) ?? '';
    if (this.#place.textContent !== text) this.#place.textContent = text;
  }
}
