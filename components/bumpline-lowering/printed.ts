import { html, type LitElement, type TemplateResult } from 'lit';
import { drivewayOf } from '../../core/document/car.js';
import { answeredCorner } from '../../core/document/setup-in-use.js';
import { dateText, today } from '../element/day.js';
import { onPrint } from '../element/on-print.js';
import { notCovered } from '../inputs/sheet.labels.js';
import { NAMES } from './bumpline-lowering.labels.js';
import { ownership } from './bumpline-lowering.words.js';
import type { LoweringView } from './lowering-view.js';

/** What a printed sheet says besides: which corner, when, and how it was worked out. */
export function renderPrinted({
  car,
  answer,
  display,
}: Pick<LoweringView, 'answer' | 'car' | 'display'>): TemplateResult {
  const { methods } = NAMES;
  const date = dateText(today(), display);
  const method = answer?.readings
    ? methods.readings(ownership(car), answer.readings.degree)
    : answer?.driveway
      ? methods.driveway(notCovered(drivewayOf(car), display) ?? '')
      : methods.points;
  return html`<p class="printed">${NAMES.printed(answeredCorner(car), date, car.curve && !answer?.readings ? methods.curve : method)}</p>`;
}

/** Opens what is folded for the time of printing: paper cannot be pressed. */
export class PrintUnfolder {
  #host: LitElement;
  #opened: HTMLDetailsElement[] = [];
  /** What is for paper alone is made then: a date costs a phone more than the answer. */
  isPrinting = false;

  constructor(host: LitElement) {
    this.#host = host;
  }

  #stop = () => {};

  connect(): void {
    this.#stop = onPrint(this.#unfold);
    addEventListener('afterprint', this.#fold);
  }

  disconnect(): void {
    this.#stop();
    removeEventListener('afterprint', this.#fold);
  }

  readonly #unfold = (): void => {
    this.isPrinting = true;
    this.#opened = [...this.#host.renderRoot.querySelectorAll<HTMLDetailsElement>('.inputs, .why')].filter(
      ({ open }) => !open,
    );
    for (const details of this.#opened) details.open = true;
    // What was folded was left as it was: paper takes what stands there now, before the event of unfolding comes.
    this.#host.requestUpdate();
  };

  readonly #fold = (): void => {
    this.isPrinting = false;
    for (const details of this.#opened) details.open = false;
    this.#opened = [];
  };
}
