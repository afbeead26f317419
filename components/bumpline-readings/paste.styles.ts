import { css } from 'lit';

/** Beside the theme and the styles of sheets. */
export const pasteStyles = css`
  dialog.paste {
    max-inline-size: 960px;
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
    font: 14px / 1.4 ui-monospace, monospace;
    tab-size: 10;
    resize: vertical;
  }
  .paste textarea.short {
    block-size: 58px;
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
    font: 400 18px/1.35 var(--_serif);
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
    font-size: 15px;
    line-height: 1.35;
  }
  .unread .button {
    flex: none;
  }
  .questions p {
    margin: 0;
  }
  .paste .questions small {
    padding-inline-start: 6px;
    font-size: 13px;
  }
  .paste .questions .hint {
    color: var(--_soft);
    font-size: 14px;
  }
  .questions .choices {
    align-items: center;
  }
  .questions .entry-box .text {
    inline-size: 84px;
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
  .panel {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 260px), 1fr));
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
    font-size: 15px;
    line-height: 1.3;
  }
  .panel select,
  .panel .text {
    inline-size: 100%;
    block-size: 44px;
    padding: 0 10px;
    border: 1px solid var(--_soft);
    border-radius: 4px;
    background: var(--_sheet);
    color: var(--_ink);
    font: 400 16px/1.2 var(--_sans);
    text-align: start;
  }
  .preview {
    position: relative;
    max-block-size: min(62vh, 560px);
    overflow: auto;
    overscroll-behavior-x: contain;
    border: 1px solid var(--_hair);
  }
  .preview table {
    border-collapse: separate;
    border-spacing: 0;
    min-inline-size: 100%;
    font-size: 14px;
    line-height: 18px;
  }
  .preview th,
  .preview td {
    padding: 5px 10px;
    border-block-end: 1px solid color-mix(in srgb, var(--_hair) 45%, transparent);
    background: var(--_sheet);
    text-align: end;
    vertical-align: top;
    font-weight: 400;
    white-space: nowrap;
  }
  .preview thead > tr > * {
    position: sticky;
    z-index: 2;
    inset-block-start: 0;
    padding: 0;
    border-block-end: 1px solid var(--_ink);
    background: var(--_paper);
  }
  .preview .row {
    position: sticky;
    z-index: 1;
    inset-inline-start: 0;
    inline-size: 34px;
    min-inline-size: 34px;
    padding-inline: 4px 8px;
    background: var(--_paper);
    color: var(--_soft);
    font-size: 12px;
  }
  .preview .lead {
    position: sticky;
    z-index: 1;
    inset-inline-start: 34px;
    border-inline-end: 1px solid var(--_hair);
  }
  .preview thead > tr > .row,
  .preview thead > tr > .lead {
    z-index: 3;
  }
  .preview button {
    border: 0;
    background: none;
    color: inherit;
    font: inherit;
    text-align: inherit;
    cursor: pointer;
  }
  .preview th button {
    display: grid;
    align-content: start;
    justify-items: end;
    inline-size: 100%;
    min-block-size: 64px;
    padding: 4px 10px 6px;
  }
  .preview button:focus-visible {
    outline-offset: -3px;
  }
  .preview .letter,
  .preview .note {
    color: var(--_soft);
    font-size: 12px;
    line-height: 16px;
  }
  .preview .role {
    color: var(--_now);
    font-weight: 600;
  }
  .preview td > span:first-child {
    display: block;
    inline-size: fit-content;
    max-inline-size: 220px;
    margin-inline-start: auto;
    overflow: hidden;
    text-overflow: ellipsis;
  }
  .preview .lead > span:first-child {
    max-inline-size: 120px;
  }
  .preview .line,
  .preview .line > span:first-child {
    max-inline-size: min(76vw, 640px);
    margin: 0;
    text-align: start;
    white-space: normal;
  }
  .preview .heading {
    background: var(--_paper);
    font-weight: 600;
  }
  .preview small {
    display: block;
    color: var(--_now);
    font: 400 13px/16px var(--_sans);
  }
  .preview .left-out,
  .preview .unused .role {
    color: var(--_soft);
    font-style: italic;
    font-weight: 400;
  }
  .preview .left-out > small,
  .preview small.gap {
    color: var(--_soft);
    font-size: 12px;
    font-style: italic;
  }
  .preview td.asked {
    box-shadow: inset 0 -2px var(--_limit);
  }
  .preview .asked small,
  .preview .mark {
    color: var(--_limit);
    font-weight: 600;
  }
  .preview td.problem {
    padding: 0;
    box-shadow: inset 0 0 0 2px var(--_contact);
  }
  .preview td button {
    min-block-size: 44px;
    min-inline-size: 100%;
    padding: 5px 10px;
  }
  .preview .problem small {
    color: var(--_contact);
    font-weight: 600;
  }
  .preview .mended {
    padding: 0;
    text-decoration: underline dotted;
    text-underline-offset: 3px;
  }
  .paste .rest {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 12px;
    align-items: center;
    margin: 8px 0 0;
    font-size: 14px;
  }
  .paste > .buttons {
    z-index: 4;
    flex-wrap: wrap;
  }
  .paste .assumed {
    flex: 1 0 100%;
    margin: 0;
    font-size: 14px;
    line-height: 1.35;
  }
  .paste .main:disabled {
    border-color: var(--_hair);
    background: var(--_sheet);
    color: var(--_soft);
    cursor: default;
  }
`;
