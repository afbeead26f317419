import { type CSSResultGroup, css } from 'lit';
import { previewStyles } from './paste-preview.styles.js';

const sheet = css`
  dialog.paste {
    max-inline-size: 60em;
  }
  .paste h2:focus,
  .paste .summary:focus {
    outline: none;
  }
  .paste textarea {
    display: block;
    inline-size: 100%;
    padding: 8px 10px;
    border: 1px solid var(--_soft);
    border-radius: 4px;
    background: var(--_paper);
    color: var(--_ink);
    font: 0.875em / 1.4 ui-monospace, monospace;
    tab-size: 10;
    resize: vertical;
  }
  .paste textarea.short {
    block-size: 4.1429em;
  }
  .paste .file {
    display: inline-flex;
    position: relative;
    align-items: center;
  }
  .paste .file:focus-within {
    outline: 3px solid var(--_now);
    outline-offset: 2px;
  }
  .paste .summary {
    margin: 12px 0;
    font: 400 1.125em/1.35 var(--_serif);
  }
  .paste .summary:empty {
    margin: 0;
  }
  .questions,
  .unread {
    margin: 0 0 12px;
    padding: 0;
    list-style: none;
  }
  .questions li,
  .unread li {
    padding: 2px 0 4px 10px;
    border-inline-start: 3px solid var(--_limit);
  }
  .questions li + li,
  .unread li + li {
    margin-block-start: 8px;
  }
  .unread li {
    display: flex;
    gap: 4px 12px;
    align-items: center;
    justify-content: space-between;
    padding-block: 2px;
    border-color: var(--_contact);
    font-size: 0.9375em;
    line-height: 1.35;
  }
  .unread span {
    min-inline-size: 0;
    overflow-wrap: anywhere;
  }
  .unread .button {
    flex: none;
  }
  .questions p {
    margin: 0;
  }
  .paste .questions small {
    font-size: 0.8125em;
  }
  .paste .hint {
    color: var(--_soft);
    font-size: 0.875em;
  }
  .questions .choices,
  .choices.which {
    align-items: center;
  }
  .choices.which {
    margin-block-end: 10px;
  }
  .questions .entry-box .text {
    inline-size: 4.9412em;
  }
  .questions .problem {
    flex-basis: 100%;
  }
  .answer[data-chosen] {
    border-style: dashed;
    border-color: var(--_now);
  }
  .answer[aria-pressed='true'] {
    border-style: solid;
    background: var(--_now-wash);
  }
  .answer small {
    line-height: 1.3;
  }
  .sample {
    display: block;
    overflow-x: auto;
    margin-block: 4px 8px;
    border-collapse: collapse;
    font-size: 0.875em;
    font-variant-numeric: tabular-nums;
  }
  .sample caption {
    padding-block-end: 2px;
    color: var(--_soft);
    text-align: start;
  }
  .sample th,
  .sample td {
    padding: 2px 8px;
    border: 1px solid var(--_hair);
    font-weight: 400;
    text-align: end;
  }
  .sample th {
    background: var(--_paper);
    font-weight: 600;
  }
  #paste-derived {
    margin-block: 0 12px;
  }
  #paste-how .hint {
    margin-block: 0 10px;
  }
  #paste-how .line {
    display: inline-block;
    max-inline-size: 100%;
  }
  .set-names {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 16.25em), 1fr));
    gap: 8px 16px;
    margin-block-end: 12px;
  }
  .set-names label {
    display: grid;
    gap: 2px;
    font-size: 0.9375em;
    line-height: 1.3;
  }
  .panel {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 16.25em), 1fr));
    gap: 8px 16px;
    margin-block-end: 12px;
    padding: 10px 12px 12px;
    border: 1px solid var(--_hair);
    border-radius: 4px;
    background: var(--_paper);
  }
  .panel > p,
  .panel > .choices {
    grid-column: 1 / -1;
    margin: 0;
  }
  .panel > p:first-child {
    font-weight: 600;
    overflow-wrap: anywhere;
  }
  .panel label {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(0, 1.2fr);
    gap: 10px;
    align-items: center;
    font-size: 0.9375em;
    line-height: 1.3;
  }
  .paste .rest {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 12px;
    align-items: center;
    margin: 8px 0 0;
    font-size: 0.875em;
  }
  .paste > .buttons {
    z-index: 4;
    flex-wrap: wrap;
  }
  .paste .assumed {
    flex: 1 0 100%;
    margin: 0;
    font-size: 0.875em;
    line-height: 1.35;
  }
  .paste > .choices {
    margin-block-start: 10px;
  }
  .paste .main.wide {
    flex: 1 0 100%;
  }
  .paste .main:disabled {
    border-color: var(--_hair);
    background: var(--_sheet);
    color: var(--_soft);
    cursor: default;
  }
`;

/** Beside the theme and the styles of sheets. */
export const pasteStyles: CSSResultGroup = [sheet, previewStyles];
