import { html, type TemplateResult } from 'lit';
import { formatNumber } from '../../core/quantity/format.js';
import type { Display } from '../element/sentence.js';
import { NAMES } from './paste.labels.js';

/** Invented: two sets of parts, of the first two passes. Travel, mm, then degrees. */
const ROWS: readonly (readonly [string, ...number[]])[] = [
  ['−30', 0.03, -0.06, 0.31],
  ['0', -0.55, -0.66, -0.46],
  ['+30', -0.97, -1.04, -1.02],
];

/** What a sheet may look like, before there is one. */
export function renderHowTo({ language }: Display): TemplateResult {
  const figure = (value: number) => formatNumber(value, 2, language);
  return html`<div id="paste-how">
    <p>${NAMES.howTo}</p>
    <table class="sample">
      <caption>${NAMES.sample}</caption>
      <thead>
        <tr>${NAMES.sampleHeads.map((heading) => html`<th scope="col">${heading}</th>`)}</tr>
      </thead>
      <tbody>
        ${ROWS.map(([travel, ...values]) => html`<tr><td>${travel}</td>${values.map((value) => html`<td>${figure(value)}</td>`)}</tr>`)}
      </tbody>
    </table>
    <p class="hint">${NAMES.sampleLine} <span class="line">−30: ${figure(0.03)}; 0: ${figure(-0.55)}; 30: ${figure(-0.97)}</span></p>
  </div>`;
}
