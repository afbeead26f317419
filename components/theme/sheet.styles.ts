import { css } from 'lit';
import { inRowStyles } from '../inputs/in-row.styles.js';
import { inputRowStyles } from '../inputs/input-row.styles.js';
import { answerStyles } from './answer.styles.js';

/**
 * The one dialog of an element: from the bottom edge on a phone, in the middle on a wide screen. A frame as high as its page has its
 * edge and its middle where nobody looks: there its page says which part of it the reader sees (site/frame/in-frame.ts).
 */
const own = css`
  dialog {
    inline-size: 100%;
    max-inline-size: 28.75em;
    inset-block: var(--_window-top, 0) calc(100% - var(--_window-top, 0px) - var(--_window-height, 100%));
    max-block-size: calc(0.92 * var(--_window-height, 100%));
    margin: auto auto 0;
    padding: 12px 16px 0;
    overflow: auto;
    /* What has the focus stays clear of the buttons at the lower edge. */
    scroll-padding-block-end: 5.25em;
    overscroll-behavior: contain;
    border: 1px solid var(--_ink);
    border-block-end: 0;
    border-radius: 10px 10px 0 0;
    background: var(--_sheet);
    color: var(--_ink);
  }
  @media (min-width: 32.5em) {
    dialog {
      margin: auto;
      border-block-end: 1px solid var(--_ink);
      border-radius: 6px;
    }
  }
  dialog::backdrop {
    background: rgb(12 16 20 / 45%);
  }
  dialog h2 {
    display: flex;
    gap: 10px;
    align-items: center;
    margin: 0 0 8px;
    font: 600 1.125em/1.3 var(--_sans);
  }
  dialog .number {
    flex: none;
    inline-size: 1.8667em;
    block-size: 1.8667em;
    border: 1.5px solid var(--_ink);
    border-radius: 50%;
    text-align: center;
    font: 600 0.8333em/1.6667em var(--_sans);
  }
  dialog p {
    margin: 0 0 10px;
    font-size: 0.9375em;
  }
  dialog .title {
    flex: 1;
  }
  dialog small {
    color: var(--_soft);
    font: 400 0.9333em/1 var(--_sans);
  }
  dialog h2 small {
    font-size: 0.7778em;
  }
  dialog .fields {
    display: grid;
    gap: 10px;
    clear: both;
  }
  /* Clear of the ring about a field. */
  dialog .fields + .note {
    margin-top: 10px;
  }
  .field {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    align-items: center;
    gap: 4px 10px;
  }
  /* Large text on a phone. */
  @container (max-width: 18em) {
    .field {
      grid-template-columns: minmax(0, 1fr);
    }
  }
  .entry-box {
    display: flex;
    align-items: center;
  }
  .entry-box .text {
    inline-size: 5.4118em;
  }
  .entry-box .unit {
    flex: none;
    min-inline-size: 2.4em;
    padding-inline-start: 6px;
    white-space: nowrap;
    color: var(--_soft);
    font-size: 0.9375em;
  }
  .sign {
    inline-size: max(44px, 2.75em);
    block-size: max(44px, 2.75em);
    margin-inline-end: 6px;
    padding: 0;
    border: 1px solid var(--_hair);
    border-radius: 4px;
    background: var(--_sheet);
    color: var(--_ink);
    font: 500 1em/1 var(--_sans);
    cursor: pointer;
  }
  .field label {
    font-size: 0.9375em;
  }
  .field label em {
    display: block;
    font: 400 0.8667em/1.2 var(--_sans);
    color: var(--_soft);
  }
  .field label em.stands-in {
    font-style: italic;
  }
  .field .problem {
    grid-column: 1 / -1;
  }
  .text {
    inline-size: 100%;
    block-size: max(44px, 2.5882em);
    padding: 0 10px;
    border: 1px solid var(--_soft);
    border-radius: 4px;
    background: var(--_paper);
    color: var(--_ink);
    font: 500 1.0625em/1 var(--_sans);
    font-variant-numeric: tabular-nums;
    text-align: end;
  }
  .text.words {
    background: var(--_sheet);
    font: 400 1em/1.2 var(--_sans);
    text-align: start;
  }
  .text::placeholder {
    color: var(--_soft);
    font-style: italic;
    font-weight: 400;
    opacity: 1;
  }
  .text[aria-invalid='true'] {
    border: 2px solid var(--_contact);
  }
  .problem {
    color: var(--_contact);
    font-size: 0.875em;
    line-height: 1.4;
  }
  dialog .query {
    margin: 10px 0 0;
    padding-inline-start: 10px;
    border-inline-start: 3px solid var(--_limit);
  }
  fieldset {
    margin: 14px 0 0;
    padding: 0;
    border: 0;
  }
  legend {
    padding: 0;
    font-size: 0.9375em;
  }
  .options {
    display: grid;
    gap: 8px;
    margin-block-start: 4px;
  }
  select.listed {
    inline-size: auto;
    min-inline-size: 0;
    max-inline-size: 100%;
    text-align: start;
  }
  .options label.choice {
    padding-block: 6px;
    line-height: 1.35;
  }
  .sure {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    align-items: center;
    margin-block-start: 4px;
  }
  .options label.choice,
  .sure label.choice {
    display: flex;
    align-items: center;
    gap: 6px;
    min-block-size: 44px;
    padding-inline: 8px;
    border: 1px solid var(--_hair);
    border-radius: 4px;
    font-size: 0.9375em;
  }
  .choice:has(:checked) {
    border-color: var(--_now);
    background: var(--_now-wash);
  }
  .choice input[type='radio']:focus-visible {
    outline-offset: 1px;
    border-radius: 50%;
  }
  .choice input[type='radio'] {
    flex: none;
    inline-size: 1.2em;
    block-size: 1.2em;
    margin: 0;
    font: inherit;
    accent-color: var(--_now);
  }
  .sure .text {
    inline-size: 4.9412em;
    font-size: 1.1333em;
  }
  .sure .figure {
    display: flex;
    align-items: center;
    gap: 6px;
    font-size: 0.9375em;
  }
  .choice .amount {
    white-space: nowrap;
    color: var(--_soft);
  }
  dialog .cautions {
    margin-block-start: 14px;
  }
  /* Always in reach, and always in one place: a thumb finds Next where it was. */
  .buttons {
    position: sticky;
    z-index: 1;
    inset-block-end: 0;
    display: flex;
    gap: 8px;
    margin: 10px -16px 0;
    padding: 10px 16px calc(12px + env(safe-area-inset-bottom, 0px));
    border-block-start: 1px solid var(--_hair);
    background: var(--_sheet);
  }
  .buttons .main {
    flex: 1;
  }
  dialog .text-button {
    display: block;
  }
  .text-button {
    min-block-size: 44px;
    min-inline-size: 44px;
    padding: 4px 0;
    border: 0;
    background: none;
    color: var(--_now);
    font: 500 0.9375em/1.3 var(--_sans);
    text-align: start;
    text-decoration: underline dotted;
    text-underline-offset: 4px;
    cursor: pointer;
  }
  :is(.problems, .queries, .hint, .unread) :is(.button, .text-button) {
    font-size: 1em;
  }
  .button {
    min-block-size: 44px;
    min-inline-size: 44px;
    padding: 4px 14px;
    border: 1px solid var(--_soft);
    border-radius: 4px;
    background: var(--_sheet);
    color: var(--_ink);
    font: 500 0.9375em/1.3 var(--_sans);
    cursor: pointer;
  }
  .button.main {
    border-color: var(--_now);
    background: var(--_now);
    color: var(--_sheet);
  }
  @media (forced-colors: active) {
    /* Its own pair of colours, and no plate of the paper's under its text. */
    .button.main:enabled {
      forced-color-adjust: none;
      border-color: Highlight;
      background: Highlight;
      color: HighlightText;
    }
    .button:disabled {
      border-color: GrayText;
      color: GrayText;
    }
    /* A wash and a shadow are not seen. */
    label.choice:has(:checked),
    .button[aria-pressed='true'] {
      border: 3px solid Highlight;
    }
  }
`;

export const sheetStyles = css`
  ${own}
  ${inRowStyles}
  ${answerStyles}
  ${inputRowStyles}
`;
