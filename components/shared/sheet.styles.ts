import { css } from 'lit';

/** The one dialog of an element: from the bottom edge on a phone, in the middle on a wide screen. */
export const sheetStyles = css`
  dialog {
    inline-size: 100%;
    max-inline-size: 460px;
    max-block-size: 92%;
    margin: auto auto 0;
    padding: 16px;
    overflow: auto;
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
  dialog .axes {
    float: inline-end;
    inline-size: 104px;
    margin: 0 0 6px 12px;
  }
  dialog .fields {
    display: grid;
    gap: 10px;
    clear: both;
  }
  .field {
    display: grid;
    grid-template-columns: minmax(0, 1fr) 116px;
    align-items: center;
    gap: 4px 10px;
  }
  .field label {
    font-size: 15px;
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
  fieldset {
    margin: 14px 0 0;
    padding: 0;
    border: 0;
  }
  legend {
    padding: 0;
    font-size: 15px;
  }
  .sure {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    align-items: center;
    margin-block-start: 4px;
  }
  .sure label.choice {
    display: flex;
    align-items: center;
    gap: 6px;
    min-block-size: 44px;
    padding-inline: 10px;
    border: 1px solid var(--_hair);
    border-radius: 4px;
    font-size: 15px;
  }
  .sure label.choice:has(:checked) {
    border-color: var(--_now);
    background: var(--_now-wash);
  }
  .sure input[type='radio'] {
    inline-size: 18px;
    block-size: 18px;
    margin: 0;
    accent-color: var(--_now);
  }
  .sure .text {
    inline-size: 92px;
  }
  dialog .cautions {
    margin-block-start: 14px;
  }
  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    margin-block-start: 14px;
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
