import { CHART } from './chart.labels.js';
import type { Cursor } from './cursor.js';
import { onStep, travelByKey } from './cursor-keys.js';
import { type Field, HEAD_SPACE } from './field.js';
import { type ChartModel, type ChartSeries, nameOf, readAloud, readOut, valueAt } from './model.js';

/** A finger that has moved less than this has tapped. */
const TAP_PX = 5;
/** In the type of the chart's own words. */
const READ_OUT_PX = 13;
const SIDES = ['left', 'top', 'width', 'height'] as const;

function child(parent: Element, className: string, tag = 'span'): HTMLElement {
  const element = document.createElement(tag);
  element.className = className;
  parent.append(element);
  return element;
}

/** Those that are read at the cursor. */
const seriesOf = ({ series }: ChartModel): ChartModel['series'] => series.filter(({ quiet }) => !quiet);

/** What their marks look like and are called. */
const looks = (series: readonly ChartSeries[]): string =>
  series.map((one) => [one.role, Boolean(nameOf(one)), one.dash].join()).join(';');

/**
 * The cursor over the plot: a line, a dot on each series and over the plot what is read there, moved by pointer and keys. It is a slider to
 * assistive technology. Everything here lies over the picture, so moving it draws nothing anew.
 */
export class Scrub {
  readonly #root: HTMLElement;
  readonly #line: HTMLElement;
  readonly #head: HTMLElement;
  #dots: HTMLElement[] = [];
  #values: HTMLElement[] = [];
  readonly #cursor: Cursor;
  readonly #rest: () => number;
  readonly #unsubscribe: () => void;
  #model: ChartModel;
  /** Of the series that there are marks for. */
  #looks: string | undefined;
  #field: Field | undefined;
  #start: { id: number; x: number; moved: boolean } | undefined;

  constructor(box: HTMLElement, model: ChartModel, cursor: Cursor, rest: () => number) {
    this.#cursor = cursor;
    this.#rest = rest;
    this.#model = model;
    this.#root = child(box, 'chart-scrub', 'div');
    this.#root.tabIndex = 0;
    this.#root.setAttribute('role', 'slider');
    this.#line = child(this.#root, 'chart-line');
    this.#head = child(this.#root, 'chart-head', 'div');
    this.setModel(model);
    this.#root.addEventListener('keydown', this.#key);
    this.#root.addEventListener('pointerdown', this.#down);
    this.#root.addEventListener('pointermove', this.#move);
    this.#root.addEventListener('pointerup', this.#up);
    this.#root.addEventListener('pointercancel', this.#end);
    this.#root.addEventListener('lostpointercapture', this.#end);
    this.#unsubscribe = cursor.subscribe(this.#show);
  }

  destroy(): void {
    this.#unsubscribe();
    this.#root.remove();
  }

  /** `place` shows it. */
  setModel(model: ChartModel): void {
    this.#model = model;
    const [from, to] = model.x.domain;
    const says = { 'aria-label': model.x.label, 'aria-valuemin': String(from), 'aria-valuemax': String(to) };
    for (const [name, value] of Object.entries(says)) {
      if (this.#root.getAttribute(name) !== value) this.#root.setAttribute(name, value);
    }
    const series = seriesOf(model);
    const shown = looks(series);
    if (shown !== this.#looks) this.#make(model, series);
    this.#looks = shown;
    // A name may have the drop in it, and change with every step of a drag.
    readOut(model).forEach((one, index) => {
      const called = this.#values[index]!.previousElementSibling!;
      const name = nameOf(one);
      if (name && called.textContent !== name) called.textContent = name;
    });
  }

  #make(model: ChartModel, series: readonly ChartSeries[]): void {
    for (const dot of this.#dots) dot.remove();
    this.#dots = series.map(({ role }) => child(this.#root, `chart-dot ${role}`));
    this.#head.replaceChildren(child(this.#head, 'title'), child(this.#head, 'at'));
    this.#values = readOut(model).map((one) => {
      const value = child(this.#head, one.role);
      child(value, '', 'i');
      if (nameOf(one)) child(value, 'called');
      return child(value, '', 'b');
    });
  }

  /** Lays the overlay over the plotting area of a sheet that is drawn `scale` times larger than it was laid out. */
  place(field: Field, sheetWidth: number, titleEnd: number, scale: number): void {
    const sides = {} as Record<(typeof SIDES)[number], number>;
    for (const side of SIDES) {
      sides[side] = field[side] * scale;
      this.#root.style[side] = `${sides[side]}px`;
    }
    this.#root.style.fontSize = `${READ_OUT_PX * scale}px`;
    Object.assign(this.#head.style, {
      width: `${sheetWidth * scale}px`,
      height: `${sides.top}px`,
      transform: `translate(${-sides.left}px, ${-sides.top}px)`,
    });
    (this.#head.firstElementChild as HTMLElement).style.width = `${(titleEnd - HEAD_SPACE) * scale}px`;
    this.#field = { ...sides, x: (value) => field.x(value) * scale, y: (value) => field.y(value) * scale };
    this.#show();
  }

  readonly #show = (): void => {
    const model = this.#model;
    const { travel } = this.#cursor;
    const [from, to] = model.x.domain;
    this.#root.setAttribute('aria-valuenow', String(Math.min(Math.max(travel, from), to)));
    this.#root.setAttribute('aria-valuetext', readAloud(model, travel));
    const field = this.#field;
    const shown = field !== undefined && travel >= from && travel <= to;
    this.#line.hidden = !shown;
    this.#head.hidden = !shown;
    if (!shown) {
      for (const dot of this.#dots) dot.hidden = true;
      return;
    }

    const x = field.x(travel) - field.left;
    this.#line.style.transform = `translateX(${x}px)`;
    this.#head.children[1]!.textContent = CHART.at(model.x.format(travel));
    seriesOf(model).forEach((series, index) => {
      const y = valueAt(series, travel);
      const known = Number.isFinite(y);
      const dot = this.#dots[index]!;
      dot.hidden = !known;
      if (known) dot.style.transform = `translate(${x}px, ${field.y(y) - field.top}px)`;
    });
    readOut(model).forEach((series, index) => {
      const y = valueAt(series, travel);
      const value = this.#values[index]!;
      value.parentElement!.hidden = !Number.isFinite(y);
      if (Number.isFinite(y)) value.textContent = model.y.format(y);
    });
  };

  get #along() {
    const [from, to] = this.#model.x.domain;
    return { travel: this.#cursor.travel, from, to, step: this.#model.x.step ?? 1, rest: this.#rest() };
  }

  #setAt(event: PointerEvent): void {
    const field = this.#field;
    if (!field) return;
    const [from, to] = this.#model.x.domain;
    const { left, width } = this.#root.getBoundingClientRect();
    this.#cursor.set(onStep(from + ((event.clientX - left) / width) * (to - from), this.#along), 'chart');
  }

  readonly #key = (event: KeyboardEvent): void => {
    const travel = travelByKey(event, this.#along);
    if (travel === undefined) return;
    this.#cursor.set(travel, 'chart');
    event.preventDefault();
    event.stopPropagation();
  };

  readonly #down = (event: PointerEvent): void => {
    if (!event.isPrimary || event.button !== 0) return;
    this.#start = { id: event.pointerId, x: event.clientX, moved: false };
    // A finger may be about to scroll the page: it has to move sideways, or lift, before it means the cursor.
    if (event.pointerType !== 'mouse') return;
    this.#start.moved = true;
    this.#root.setPointerCapture(event.pointerId);
    this.#setAt(event);
  };

  readonly #move = (event: PointerEvent): void => {
    const start = this.#start;
    if (start?.id !== event.pointerId) return;
    if (!start.moved) {
      if (Math.abs(event.clientX - start.x) < TAP_PX) return;
      start.moved = true;
      this.#root.setPointerCapture(event.pointerId);
    }
    this.#setAt(event);
  };

  readonly #up = (event: PointerEvent): void => {
    if (this.#start?.id !== event.pointerId) return;
    this.#setAt(event);
    this.#start = undefined;
  };

  readonly #end = (event: PointerEvent): void => {
    if (this.#start?.id === event.pointerId) this.#start = undefined;
  };
}
