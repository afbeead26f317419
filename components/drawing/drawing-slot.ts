import { type ReactiveController, type ReactiveControllerHost, render } from 'lit';
import type { Cursor } from '../chart/cursor.js';
import { watchInlineSize } from '../controls/resize.js';
import { pictureScale, textScale } from '../controls/text-scale.js';
import { afterPaint } from '../element/after-paint.js';
import type { Drawing } from './items.js';
import { layout } from './layout.js';
import { type DrawingHandlers, renderDrawing } from './render.js';

export interface DrawingOptions extends DrawingHandlers {
  cursor: Cursor;
  /** What to show at a travel; undefined for nothing yet. */
  draw(travel: number): Drawing | undefined;
  /** Some part of it changes whenever what is shown does: nothing is drawn twice. */
  key(travel: number): readonly unknown[];
}

/** A drawing in a place of its own, apart from the host's template: it follows the cursor, and moving that renders nothing else. */
export class DrawingSlot implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #options: DrawingOptions;
  #place: HTMLElement | undefined;
  #width = 0;
  /** How many times larger than laid out it is drawn. */
  #scale = 1;
  #pxPerMm = 1;
  #drawn: readonly unknown[] = [];
  #stop: (() => void)[] = [];
  #state: 'none' | 'coming' | 'drawn' = 'none';
  /** Resolves when the first drawing stands; at once when there is none to come. */
  first: Promise<void> = Promise.resolve();

  constructor(host: ReactiveControllerHost, options: DrawingOptions) {
    this.#host = host;
    this.#options = options;
    host.addController(this);
  }

  /** How large the drawing is: CSS px of one mm. */
  get pxPerMm(): number {
    return this.#pxPerMm;
  }

  /** For lit's `ref`: where to draw. */
  readonly placed = (place?: Element): void => {
    for (const stop of this.#stop) stop();
    this.#stop = [];
    this.#place = place as HTMLElement | undefined;
    if (!place) return;
    this.#width = 0;
    this.#drawn = [];
    this.#stop = [
      watchInlineSize(place, (width) => {
        this.#width = width;
        this.#scale = pictureScale(textScale(place), width);
        this.draw();
      }),
      this.#options.cursor.subscribe(() => this.draw()),
    ];
  };

  hostUpdated(): void {
    if (!this.#place) return;
    if (this.#state === 'drawn') afterPaint(this.#host, this, () => this.draw());
    if (this.#state !== 'none') return;
    // What it lays out to is known already, so the place is kept and nothing moves.
    const room = this.#layOut();
    if (!room) return;
    // In a task of its own: with the rest of the body it would hold a slow phone's thread for more than a tenth of a second.
    this.#state = 'coming';
    this.#place.style.blockSize = `${room.height * this.#scale}px`;
    this.first = new Promise((resolve) => {
      setTimeout(() => {
        this.#state = 'drawn';
        resolve();
        this.draw();
        if (this.#place) this.#place.style.blockSize = '';
      });
    });
  }

  draw(): void {
    if (!this.#place) return;
    const { cursor, key, onSelect, onKey, onGrab } = this.#options;
    const drawn = [Math.round(this.#width), ...key(cursor.travel)];
    // A new answer moves the cursor as well: the second time there is nothing left to do.
    const isSame = drawn.length === this.#drawn.length && drawn.every((part, i) => part === this.#drawn[i]);
    const room = isSame ? undefined : this.#layOut();
    if (!room) return;
    this.#drawn = drawn;
    this.#pxPerMm = room.scale * this.#scale;
    const handlers = { ...(onSelect && { onSelect }), ...(onKey && { onKey }), ...(onGrab && { onGrab }) };
    render(renderDrawing(room, handlers), this.#place);
  }

  #layOut(): ReturnType<typeof layout> | undefined {
    // The place is handed over before it is in the document, and has no width until then.
    if (this.#width === 0) {
      this.#width = this.#place!.clientWidth;
      this.#scale = pictureScale(textScale(this.#place!), this.#width);
    }
    const drawing = this.#width > 0 ? this.#options.draw(this.#options.cursor.travel) : undefined;
    if (!drawing) return undefined;
    return layout(drawing, Math.round(this.#width / this.#scale));
  }
}
