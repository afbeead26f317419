import { nothing, render } from 'lit';
import type { ChartModel } from './model.js';
import { picture } from './paper.js';

/** On paper a chart has this size, CSS px, whatever the window is. */
const SIZE = { width: 520, height: 300 } as const;

let papers = 0;

/** A stack of charts as SVG for as long as the page is printed: a canvas keeps the screen's colours and its pixels. */
export class StackPaper {
  readonly #place: () => HTMLElement | undefined;
  readonly #charts: () => readonly { id: string; model: ChartModel }[];
  readonly #media = matchMedia('print');
  readonly #id = `paper-${++papers}`;
  #isPrinting = false;

  constructor(place: () => HTMLElement | undefined, charts: () => readonly { id: string; model: ChartModel }[]) {
    this.#place = place;
    this.#charts = charts;
  }

  connect(): void {
    addEventListener('beforeprint', this.#begin);
    addEventListener('afterprint', this.#end);
    this.#media.addEventListener('change', this.#turned);
  }

  disconnect(): void {
    removeEventListener('beforeprint', this.#begin);
    removeEventListener('afterprint', this.#end);
    this.#media.removeEventListener('change', this.#turned);
  }

  /** What is printed is drawn anew with what is shown. */
  draw(): void {
    const place = this.#place();
    if (!place) return;
    const family = getComputedStyle(place).fontFamily;
    for (const { id, model } of this.#charts()) {
      const box = place
        .querySelector(`[data-chart="${id}"]`)
        ?.parentElement?.querySelector<HTMLElement>('.stack-paper');
      if (!box) continue;
      const drawn = this.#isPrinting ? picture(model, SIZE, 1, family, `${this.#id}-${id}`).template : nothing;
      render(drawn, box);
    }
  }

  readonly #begin = (): void => this.#set(true);
  readonly #end = (): void => this.#set(this.#media.matches);
  readonly #turned = (): void => this.#set(this.#media.matches);

  #set(isPrinting: boolean): void {
    if (isPrinting === this.#isPrinting) return;
    this.#isPrinting = isPrinting;
    this.draw();
  }
}
