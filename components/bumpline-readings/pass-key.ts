import { html, nothing, svg, type TemplateResult } from 'lit';
import type { ReadingsAnswer } from '../../core/answers/readings.js';
import type { Setup } from '../../core/document/setup.js';
import { POINT_MARKS } from '../chart/picture.js';
import type { Display } from '../element/sentence.js';
import { driftText, NAMES, passText, upDownText, zeroText } from './bumpline-readings.labels.js';
import { passesOf } from './views.js';

/** Under the chart: the mark of each pass with what is to be said of it. */
export function renderPassKey(setup: Setup, answer: ReadingsAnswer, display: Display): TemplateResult {
  const upDown = upDownText(answer, display);
  const drift = driftText(answer, setup, display);
  return html`<ul class="passes">
    ${passesOf(setup, answer).map(
      (pass) => html`<li>
        <svg viewBox="-8 -8 16 16" width="16" height="16" aria-hidden="true">${svg`<path d="M0 0${POINT_MARKS[pass.mark]}"></path>`}</svg>
        ${passText(pass, display)}
      </li>`,
    )}
    ${upDown ? html`<li class="said">${upDown}</li>` : nothing}
    ${drift ? html`<li class="said drift">${drift}</li>` : nothing}
    ${answer.fit.zeroSd > 0 ? html`<li class="said">${zeroText(answer, display)}</li>` : nothing}
    <li class="said">${NAMES.hatched}</li>
  </ul>`;
}
