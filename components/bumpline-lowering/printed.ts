import { html, type TemplateResult } from 'lit';
import { drivewayOf } from '../../core/document/car.js';
import { answeredCorner } from '../../core/document/setup-in-use.js';
import { dateText, today } from '../element/day.js';
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
