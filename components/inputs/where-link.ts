import { type SVGTemplateResult, svg } from 'lit';

/** A word in a sketch of where to measure. */
export const whereLink = (text: string, x: number, y: number): SVGTemplateResult =>
  svg`<text class="link" x=${x} y=${y}>${text}</text>`;
