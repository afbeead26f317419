import { type SVGTemplateResult, svg } from 'lit';

/** The measured distance of a drawing, upright, between two heights of it, px. */
export const whereArrow = (x: number, from: number, to: number): SVGTemplateResult =>
  svg`<path class="measure" stroke-width="2" d="M${x} ${from}V${to}M${x - 3.5} ${from + 7}L${x} ${from}L${x + 3.5} ${from + 7}M${x - 3.5} ${to - 7}L${x} ${to}L${x + 3.5} ${to - 7}" />`;
