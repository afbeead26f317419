import { html, type ReactiveController, type ReactiveControllerHost, render, type TemplateResult } from 'lit';
import { ref } from 'lit/directives/ref.js';
import type { Cursor } from '../chart/cursor.js';
import { watchInlineSize } from '../controls/resize.js';
import { pictureScale, textScale } from '../controls/text-scale.js';
import { afterFrame, afterPaint } from '../element/after-paint.js';
import { onPrint } from '../element/on-print.js';
import type { MadePicture, PictureMaker, PictureRoom } from '../publish/savable.js';
import type { BalloonState, Drawing, Item } from './items.js';
import { layout } from './layout.js';
import { type DrawingHandlers, renderDrawing, renderPicture } from './render.js';

export interface DrawingOptions extends DrawingHandlers {
  cursor: Cursor;
  /** What to show at a travel; undefined for nothing yet. */
  draw(travel: number): Drawing | undefined;
  /** Some part of it changes whenever what is shown does: nothing is drawn twice. */
  key(travel: number): readonly unknown[];
  /** What a number in it stands for, where a picture is taken along. Default: what a screen reader says. */
  named?(key: string): string | undefined;
  /** Whether it is in sight: what is not stands as it was first drawn, until it is shown or printed. Default: always. */
  isShown?(): boolean;
}

/** In a picture a value is somebody's or the example's; what to do next is said on the page alone. */
const IN_PICTURE = { next: 'yours', wanted: 'example' } as const satisfies Partial<Record<BalloonState, BalloonState>>;

const inPicture = (item: Item): Item =>
  'state' in item && item.state in IN_PICTURE
    ? { ...item, state: IN_PICTURE[item.state as keyof typeof IN_PICTURE] }
    : item;

/** How many drawings a body waits for. */
const coming = new WeakMap<Element, number>();

/** A drawing in a place of its own, apart from the host's template: it follows the cursor, and moving that renders nothing else. */
export class DrawingSlot implements ReactiveController, PictureMaker {
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
  #unhide = (): void => {};
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

  get isThere(): boolean {
    return this.#place !== undefined;
  }

  /** At the travel that is shown. */
  toPicture({ width }: PictureRoom): MadePicture | undefined {
    const drawing = this.#options.draw(this.#options.cursor.travel);
    if (!drawing) return undefined;
    const room = layout({ ...drawing, items: drawing.items.map(inPicture) }, width);
    const { height, title, balloons } = room;
    const numbered = balloons.map(({ key, number, label }) => ({ number, label: this.#options.named?.(key) ?? label }));
    return { template: renderPicture(room), height, title, within: 'drawing', numbered };
  }

  /** Its place, for who has no other. */
  renderPlace(): TemplateResult {
    return html`<div class="drawing-place" part="drawing" ${ref(this.placed)}></div>`;
  }

  /** For lit's `ref`: where to draw. */
  readonly placed = (place?: Element): void => {
    for (const stop of this.#stop) stop();
    this.#stop = [];
    this.#unhide();
    this.#place = place as HTMLElement | undefined;
    if (!place) return;
    this.#width = 0;
    this.#drawn = [];
    this.#stop = [
      watchInlineSize(place, (width) => {
        this.#width = width;
        this.#scale = pictureScale(textScale(place), width);
        if (this.#state === 'drawn') this.draw();
      }),
      this.#options.cursor.subscribe(() => this.draw()),
      onPrint(() => this.draw(true)),
    ];
  };

  hostUpdated(): void {
    if (!this.#place) return;
    if (this.#state === 'drawn') afterPaint(this.#host, this, () => this.draw());
    if (this.#state !== 'none') return;
    // In a task of its own, once the body is laid out: with the rest of it, it would hold a slow phone's thread for a tenth of a second.
    this.#state = 'coming';
    this.#hide(this.#place);
    this.first = new Promise((resolve) => {
      afterFrame(() => {
        this.#state = 'drawn';
        resolve();
        try {
          this.draw();
        } finally {
          this.#unhide();
        }
      });
    });
  }

  /** What stands below a drawing would move when it comes: until then nothing of the body is seen. */
  #hide(place: Element): void {
    const body = place.closest('.body, .compact');
    if (!body) return;
    const count = (at: number) => {
      coming.set(body, (coming.get(body) ?? 0) + at);
      body.classList.toggle('coming', coming.get(body)! > 0);
    };
    count(1);
    this.#unhide = () => {
      this.#unhide = () => {};
      count(-1);
    };
  }

  /** @param isPrinted drawn though it is out of sight */
  draw(isPrinted = false): void {
    if (!this.#place) return;
    const { cursor, key, isShown, onSelect, onKey, onGrab } = this.#options;
    if (!isPrinted && this.#drawn.length > 0 && isShown?.() === false) return;
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
