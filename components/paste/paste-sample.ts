import { html, nothing, type TemplateResult } from 'lit';
import { formatNumber } from '../../core/quantity/format.js';
import { worded } from '../../core/quantity/words.js';
import type { ReadingQuantity } from '../../core/readings/reading.js';
import type { Display } from '../element/sentence.js';
import { NAMES } from './paste.labels.js';

interface Sample {
  howTo: string;
  heads: readonly string[];
  /** Travel, mm, then what was read. */
  rows: readonly (readonly [string, ...number[]])[];
  asks?: string;
  line: string;
  /** Degrees, at those travels. */
  angles: readonly [number, number, number];
}

/** Invented: of camber two sets of parts, degrees; of toe two dials, mm. */
const SAMPLES: Readonly<Record<ReadingQuantity, Sample>> = worded(() => ({
  camber: {
    howTo: NAMES.howTo,
    heads: NAMES.sampleHeads,
    rows: [
      ['−30', 0.03, -0.06, 0.31],
      ['0', -0.55, -0.66, -0.46],
      ['+30', -0.97, -1.04, -1.02],
    ],
    line: NAMES.sampleLine,
    angles: [0.03, -0.55, -0.97],
  },
  toe: {
    howTo: NAMES.howToOfToe,
    heads: NAMES.sampleHeadsOfToe,
    rows: [
      ['−30', 6.62, 5.71],
      ['0', 6.02, 5.98],
      ['+30', 5.24, 6.31],
    ],
    asks: NAMES.sampleAsksOfToe,
    line: NAMES.sampleLineOfToe,
    angles: [0.17, 0.01, -0.21],
  },
}));

/** What a sheet of such readings may look like, before there is one. */
export function renderHowTo({ language }: Display, quantity: ReadingQuantity): TemplateResult {
  const figure = (value: number) => formatNumber(value, 2, language);
  const { howTo, heads, rows, asks, line, angles } = SAMPLES[quantity];
  return html`<div id="paste-how">
    <p>${howTo}</p>
    <table class="sample">
      <caption>${NAMES.sample}</caption>
      <thead>
        <tr>${heads.map((heading) => html`<th scope="col">${heading}</th>`)}</tr>
      </thead>
      <tbody>
        ${rows.map(([travel, ...values]) => html`<tr><td>${travel}</td>${values.map((value) => html`<td>${figure(value)}</td>`)}</tr>`)}
      </tbody>
    </table>
    ${asks ? html`<p class="hint">${asks}</p>` : nothing}
    <p class="hint">${line} <span class="line">−30: ${figure(angles[0])}; 0: ${figure(angles[1])}; 30: ${figure(angles[2])}</span></p>
  </div>`;
}
