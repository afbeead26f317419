import { css } from 'lit';
import { inputRowStyles } from '../inputs/input-row.styles.js';

/** The one dialog of an element: from the bottom edge on a phone, in the middle on a wide screen. */
const own = css`
  dialog {
    inline-size: 100%;
    max-inline-size: 460px;
    max-block-size: 92%;
    margin: auto auto 0;
    padding: 12px 16px 0;
    overflow: auto;
    overscroll-behavior: contain;
    border: 1px solid var(--_ink);
    border-block-end: 0;
    border-radius: 10px 10px 0 0;
    background: var(--_sheet);
    color: var(--_ink);
  }
  @media (min-width: 520px) {
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
    font: 600 18px/1.3 var(--_sans);
  }
  dialog .number {
    flex: none;
    inline-size: 28px;
    block-size: 28px;
    border: 1.5px solid var(--_ink);
    border-radius: 50%;
    text-align: center;
    font: 600 15px/25px var(--_sans);
  }
  dialog p {
    margin: 0 0 10px;
    font-size: 15px;
  }
  dialog .title {
    flex: 1;
  }
  dialog small {
    color: var(--_soft);
    font: 400 14px/1 var(--_sans);
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
  .entry-box {
    display: flex;
    align-items: center;
  }
  .entry-box .text {
    inline-size: 92px;
  }
  .entry-box .unit {
    flex: none;
    inline-size: 36px;
    padding-inline-start: 6px;
    white-space: nowrap;
    color: var(--_soft);
    font-size: 15px;
  }
  .sign {
    inline-size: 44px;
    block-size: 44px;
    margin-inline-end: 6px;
    padding: 0;
    border: 1px solid var(--_hair);
    border-radius: 4px;
    background: var(--_sheet);
    color: var(--_ink);
    font: 500 16px/1 var(--_sans);
    cursor: pointer;
  }
  .field label {
    font-size: 15px;
  }
  .field label em {
    display: block;
    font: 400 13px/1.2 var(--_sans);
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
    block-size: 44px;
    padding: 0 10px;
    border: 1px solid var(--_soft);
    border-radius: 4px;
    background: var(--_paper);
    color: var(--_ink);
    font: 500 17px/1 var(--_sans);
    font-variant-numeric: tabular-nums;
    text-align: end;
  }
  .text.words {
    background: var(--_sheet);
    font: 400 16px/1.2 var(--_sans);
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
    font-size: 14px;
    line-height: 1.4;
  }
  /* The buttons stick to the lower edge: what is scrolled into view stays clear of them. */
  .entry [role='alert'] {
    scroll-margin-block-end: 84px;
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
    font-size: 15px;
  }
  .options {
    display: grid;
    gap: 8px;
    margin-block-start: 4px;
  }
  select.listed {
    inline-size: auto;
    text-align: start;
  }
  .options.many {
    display: flex;
    flex-wrap: wrap;
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
    font-size: 15px;
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
    inline-size: 18px;
    block-size: 18px;
    margin: 0;
    accent-color: var(--_now);
  }
  .sure .text {
    inline-size: 84px;
  }
  .sure .figure {
    display: flex;
    align-items: center;
    gap: 6px;
    font-size: 15px;
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
  .choices {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    margin-block-start: 6px;
  }
  dialog .text-button {
    display: block;
  }
  .text-button {
    min-block-size: 44px;
    padding: 4px 0;
    border: 0;
    background: none;
    color: var(--_now);
    font: 500 15px/1.3 var(--_sans);
    text-align: start;
    text-decoration: underline dotted;
    text-underline-offset: 4px;
    cursor: pointer;
  }
  .button {
    min-block-size: 44px;
    min-inline-size: 44px;
    padding: 4px 14px;
    border: 1px solid var(--_soft);
    border-radius: 4px;
    background: var(--_sheet);
    color: var(--_ink);
    font: 500 15px/1.3 var(--_sans);
    cursor: pointer;
  }
  .button.main {
    border-color: var(--_now);
    background: var(--_now);
    color: var(--_sheet);
  }
  @media (forced-colors: active) {
    .button.main {
      border-width: 3px;
    }
  }
`;

export const sheetStyles = css`
  ${own}
  ${inputRowStyles}
`;
