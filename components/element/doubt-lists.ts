import { html, type TemplateResult } from 'lit';
import type { Contribution } from '../../core/uncertainty/combine.js';
import { shareRows } from './doubts.words.js';
import { PARTS } from './parts.labels.js';

const { doubts: NAMES } = PARTS;

/** What a ± is made of. */
export function renderShares(contributions: readonly Contribution[], language: string): TemplateResult {
  return html`<p class="note">${NAMES.shares}</p>
    <ul class="shares">
      ${shareRows(contributions, language).map(
        ({ label, percent, share }) =>
          html`<li><span class="bar" .style=${`--share: ${share}`}></span><span>${label}</span><b>${percent}</b></li>`,
      )}
    </ul>`;
}

/** Why a ± is as large as it is, folded. @param more said under what it is made of */
export function renderWhy(
  contributions: readonly Contribution[],
  language: string,
  { why, noDoubt }: { why: string; noDoubt: string },
  more: unknown,
): TemplateResult {
  return html`<details class="why">
    <summary>${why}</summary>
    ${contributions.length > 0 ? html`${renderShares(contributions, language)} ${more}` : html`<p class="note">${noDoubt}</p>`}
  </details>`;
}

/** What no ± of an answer covers. */
export function renderNotIn(lines: readonly string[]): TemplateResult {
  return html`<div class="not-in">
    <p><b>${NAMES.notIn}</b></p>
    <ul>${lines.map((line) => html`<li>${line}</li>`)}</ul>
  </div>`;
}
