import { asLinks } from '../../core/document/as-links.js';
import type { CornerSide } from '../drawing/corner-view.js';
import type { SheetSpec } from '../inputs/sheet-spec.js';
import { NAMES } from './bumpline-geometry.labels.js';
import type { GeometryView } from './geometry-view.js';

/** What one step to the right and one up is in a view, by axis: x forward, y left, z up. */
const STEPS: Record<CornerSide, readonly [right: readonly number[], up: readonly number[]]> = {
  front: [
    [0, 1, 0],
    [0, 0, 1],
  ],
  side: [
    [-1, 0, 0],
    [0, 0, 1],
  ],
  top: [
    [0, 1, 0],
    [1, 0, 0],
  ],
};
const ARROWS: Partial<Record<string, readonly [right: number, up: number]>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};
/** Nearer than this to where it was put down a pointer has pressed, px. */
const PRESS_PX = 4;

/** Moves hard points in a drawing, by arrow keys and by mouse or pen: along the same way as a field, to whole millimetres. */
export class PointMover {
  readonly #view: GeometryView;
  readonly #side: () => CornerSide;
  readonly #sheetOf: (key: string) => SheetSpec | undefined;
  readonly #pxPerMm: () => number;
  #hasDragged = false;

  constructor(
    view: GeometryView,
    side: () => CornerSide,
    sheetOf: (key: string) => SheetSpec | undefined,
    pxPerMm: () => number,
  ) {
    this.#view = view;
    this.#side = side;
    this.#sheetOf = sheetOf;
    this.#pxPerMm = pxPerMm;
  }

  /** Whether the press that comes now is the end of a drag. */
  takeDragged(): boolean {
    const has = this.#hasDragged;
    this.#hasDragged = false;
    return has;
  }

  readonly onKey = (key: string, event: KeyboardEvent): void => {
    const by = ARROWS[event.key];
    const from = this.#pointOf(key);
    if (!by || !from || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    this.#move(key, from, ...by);
    this.#view.endStep();
  };

  /** A finger scrolls the page: it presses, and types. */
  readonly onGrab = (key: string, event: PointerEvent): void => {
    const from = this.#pointOf(key);
    if (!from || event.pointerType === 'touch' || event.button !== 0) return;
    const button = event.currentTarget as HTMLElement;
    const { clientX, clientY, pointerId } = event;
    this.#hasDragged = false;
    const moved = (to: PointerEvent) => {
      const [right, up] = [to.clientX - clientX, clientY - to.clientY];
      if (!this.#hasDragged && Math.hypot(right, up) < PRESS_PX) return;
      if (!this.#hasDragged) {
        this.#hasDragged = true;
        button.setPointerCapture(pointerId);
        this.#view.beginEdit();
      }
      this.#move(key, from, right / this.#pxPerMm(), up / this.#pxPerMm());
    };
    const ended = () => {
      removeEventListener('pointermove', moved);
      removeEventListener('pointerup', ended);
      removeEventListener('pointercancel', ended);
      if (this.#hasDragged) this.#view.endStep();
    };
    addEventListener('pointermove', moved);
    addEventListener('pointerup', ended);
    addEventListener('pointercancel', ended);
  };

  #pointOf(key: string): readonly number[] | undefined {
    const sheet = this.#sheetOf(key);
    const car = asLinks(this.#view.car);
    return sheet?.fields.length === 3 ? (sheet.read(car) ?? sheet.standIn?.(car)) : undefined;
  }

  #move(key: string, from: readonly number[], right: number, up: number): void {
    const sheet = this.#sheetOf(key)!;
    const [across, upward] = STEPS[this.#side()];
    const to = from.map((value, axis) => Math.round(10 * (value + right * across[axis]! + up * upward[axis]!)) / 10);
    const values = to.map((value, axis) => (across[axis] || upward[axis] ? Math.round(value) : value));
    this.#view.change(key, NAMES.moved(sheet.title), (car) => sheet.write(car, values), `move ${key}`);
  }
}
