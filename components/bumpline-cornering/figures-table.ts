import { html, type TemplateResult } from 'lit';

/** A table of figures that scrolls within itself where large text makes it wider than the page. @param inside caption, head and body */
export const renderFigures = (title: string, inside: TemplateResult): TemplateResult =>
  html`<div class="table-scroll" role="group" aria-label=${title} tabindex="0"><table class="figures">${inside}</table></div>`;
