import { html, type TemplateResult } from 'lit';

/** @param label names the block apart from others on the page */
export const renderCautionList = (texts: readonly string[], label: string): TemplateResult =>
  html`<aside class="cautions" aria-label=${label}>
    <ul>
      ${texts.map((text) => html`<li>${text}</li>`)}
    </ul>
  </aside>`;
