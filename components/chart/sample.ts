import { html, svg, type TemplateResult } from 'lit';
import type { ChartSeries } from './model.js';

/** A short piece of a line as a chart draws it, before its name. */
export function sampleOf({ role, dash }: Pick<ChartSeries, 'role' | 'dash'>): TemplateResult {
  const dashes = dash?.join(' ') ?? (role === 'now' ? 'none' : '7 4');
  return html`<svg class="sample" viewBox="0 0 28 8" aria-hidden="true">${svg`<path d="M0 4H28" stroke-dasharray=${dashes}></path>`}</svg>`;
}
