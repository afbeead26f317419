import { html, type ReactiveController, type ReactiveControllerHost, type TemplateResult } from 'lit';

/** Long enough that dragging a slider speaks once, when it rests. */
export const ANNOUNCE_DELAY_MS = 500;

/**
 * A visually hidden polite status region. Render it from the first render on and never under a condition: a region that
 * appears together with its text is not spoken. Only its text changes, and only by `announce`.
 */
export class Announcer implements ReactiveController {
  readonly #host: ReactiveControllerHost & HTMLElement & { renderRoot: ParentNode };
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost & HTMLElement & { renderRoot: ParentNode }) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    clearTimeout(this.#timer);
  }

  render(): TemplateResult {
    return html`<div class="visually-hidden" role="status"></div>`;
  }

  /** Speaks the text half a second after the last call; only the last text of a burst is spoken. */
  announce(text: string): void {
    clearTimeout(this.#timer);
    const region = this.#host.renderRoot.querySelector('[role=status]');
    // The same words again are no change, so they would not be spoken again.
    if (region && region.textContent === text) region.textContent = '';
    this.#timer = setTimeout(() => {
      if (region) region.textContent = text;
    }, ANNOUNCE_DELAY_MS);
  }
}
