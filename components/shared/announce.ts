import { html, type ReactiveController, type ReactiveControllerHost, type TemplateResult } from 'lit';
import { createRef, ref } from 'lit/directives/ref.js';

/** Long enough that dragging a slider speaks once, when it rests. */
export const ANNOUNCE_DELAY_MS = 500;

/**
 * A visually hidden polite status region. Render it from the first render on and never under a condition: a region that
 * appears together with its text is not spoken. Only its text changes, and only by `announce`.
 */
export class Announcer implements ReactiveController {
  readonly #region = createRef<HTMLElement>();
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost) {
    host.addController(this);
  }

  hostDisconnected(): void {
    clearTimeout(this.#timer);
  }

  render(): TemplateResult {
    return html`<div class="visually-hidden" role="status" ${ref(this.#region)}></div>`;
  }

  /** Speaks the text half a second after the last call; only the last text of a burst is spoken. */
  announce(text: string): void {
    clearTimeout(this.#timer);
    const region = this.#region.value;
    // The same words again are no change, so they would not be spoken again.
    if (region && region.textContent === text) region.textContent = '';
    this.#timer = setTimeout(() => {
      if (this.#region.value) this.#region.value.textContent = text;
    }, ANNOUNCE_DELAY_MS);
  }
}
