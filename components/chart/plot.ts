import { render } from 'lit';
import { watchInlineSize } from '../controls/resize.js';
import { pictureScale, textScale } from '../controls/text-scale.js';
import type { Cursor } from './cursor.js';
import { titleWidth } from './field.js';
import type { ChartModel } from './model.js';
import { picture } from './paper.js';
import { Scrub } from './scrub.js';

/** What a chart needs from the element around it. */
export interface PlotSurroundings {
  /** Empty, positioned, its height following from its width. */
  box: HTMLElement;
  cursor: Cursor;
  /** The travel that Escape goes back to, mm. */
  rest: () => number;
}

let charts = 0;
const PARTS = ['width', 'height', 'scale', 'family'] as const;

/** A chart in its place: the picture as SVG, and over it the cursor, which moves without a new picture. */
export class Plot {
  readonly #around: PlotSurroundings;
  readonly #sheet = document.createElement('div');
  readonly #scrub: Scrub;
  readonly #unwatch: () => void;
  readonly #clip = `chart-${++charts}`;
  #model: ChartModel;
  #place = { width: 0, height: 0, scale: 1, family: '' };

  constructor(around: PlotSurroundings, model: ChartModel) {
    this.#around = around;
    this.#model = model;
    this.#sheet.className = 'chart-sheet';
    around.box.append(this.#sheet);
    this.#scrub = new Scrub(around.box, model, around.cursor, around.rest);
    this.#fit();
    this.#unwatch = watchInlineSize(around.box, () => this.#fit());
  }

  destroy(): void {
    this.#unwatch();
    this.#scrub.destroy();
    this.#sheet.remove();
  }

  setModel(model: ChartModel): void {
    this.#model = model;
    this.#scrub.setModel(model);
    this.#draw();
  }

  /** The picture, for export. */
  get picture(): SVGSVGElement | null {
    return this.#sheet.querySelector('svg');
  }

  /** Asked of the page where the place has another size, and not while a number is dragged: each time costs a layout. */
  #fit(): void {
    const { box } = this.#around;
    const { clientWidth: width, clientHeight: height } = box;
    const scale = pictureScale(textScale(box.parentElement!), width);
    const place = { width, height, scale, family: getComputedStyle(box).fontFamily };
    // A watched size is told once without having changed.
    if (PARTS.every((part) => place[part] === this.#place[part])) return;
    this.#place = place;
    this.#draw();
  }

  #draw(): void {
    const { scale, family, ...place } = this.#place;
    // A closed <details> or a hidden tab: what was drawn is right again when the place is shown again.
    if (place.width === 0 || place.height === 0) return;
    const { template, frame, measure, width } = picture(this.#model, place, scale, family, this.#clip);
    render(template, this.#sheet);
    this.#scrub.place(frame.field, width, titleWidth(this.#model, measure), scale);
  }
}
