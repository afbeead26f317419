import { type ReactiveController, type ReactiveControllerHost, render } from 'lit';
import type { Cursor } from '../shared/cursor.js';
import type { Drawing } from '../shared/drawing/items.js';
import { layout } from '../shared/drawing/layout.js';
import { renderDrawing } from '../shared/drawing/render.js';
import { watchInlineSize } from '../shared/resize.js';

/**
 * A drawing in a place of its own, apart from the host's template: it follows the cursor, and moving that renders nothing else.
 */
export class DrawingPlace implements ReactiveController {
  readonly #draw: (travel: number) => Drawing | undefined;
  readonly #key: (travel: number) => string;
  readonly #cursor: Cursor;
  readonly #onSelect: ((key: string) => void) | undefined;
  #place: HTMLElement | undefined;
  #width = 0;
  #drawn = '';
  #stop: (() => void)[] = [];

  /**
   * @param draw what to show at a travel; undefined for nothing yet
   * @param key changes whenever what is shown does: nothing is drawn twice
   */
  constructor(
    host: ReactiveControllerHost,
    cursor: Cursor,
    draw: (travel: number) => Drawing | undefined,
    key: (travel: number) => string,
    onSelect?: (key: string) => void,
  ) {
    this.#draw = draw;
    this.#key = key;
    this.#cursor = cursor;
    this.#onSelect = onSelect;
    host.addController(this);
  }

  /** For lit's `ref`: where to draw. */
  readonly placed = (place?: Element): void => {
    for (const stop of this.#stop) stop();
    this.#stop = [];
    this.#place = place as HTMLElement | undefined;
    if (!place) return;
    this.#width = 0;
    this.#drawn = '';
    this.#stop = [
      watchInlineSize(place, (width) => {
        this.#width = width;
        this.draw();
      }),
      this.#cursor.subscribe(() => this.draw()),
    ];
  };

  hostUpdated(): void {
    this.draw();
  }

  draw(): void {
    if (!this.#place) return;
    // The place is handed over before it is in the document, and has no width until then.
    this.#width ||= this.#place.clientWidth;
    const key = `${Math.round(this.#width)} ${this.#key(this.#cursor.travel)}`;
    const drawing = this.#width > 0 && key !== this.#drawn ? this.#draw(this.#cursor.travel) : undefined;
    if (!drawing) return;
    this.#drawn = key;
    const handlers = this.#onSelect ? { onSelect: this.#onSelect } : {};
    render(renderDrawing(layout(drawing, Math.round(this.#width)), handlers), this.#place);
  }
}
