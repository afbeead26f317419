import { html, type TemplateResult } from 'lit';

/**
 * @param label names the block apart from others on the page
 * @param summary what it is folded under, where the element shows only a part of itself; paper unfolds it
 */
export function renderCautionList(texts: readonly string[], label: string, summary?: string): TemplateResult {
  const list = html`<ul>
    ${texts.map((text) => html`<li>${text}</li>`)}
  </ul>`;
  return html`<aside class="cautions" aria-label=${label}>
    ${summary ? html`<details class="prints"><summary>${summary}</summary>${list}</details>` : list}
  </aside>`;
}
