import { css } from 'lit';

/** The pasted sheet as a table that scrolls in its own box, under its heads and beside its heights. */
export const previewStyles = css`
  .preview {
    position: relative;
    inline-size: fit-content;
    max-inline-size: 100%;
    max-block-size: min(0.62 * var(--_window-height, 100vh), 35em);
    overflow: auto;
    overscroll-behavior-x: contain;
    border: 1px solid var(--_hair);
  }
  .preview table {
    border-collapse: separate;
    border-spacing: 0;
    font-size: 0.875em;
    line-height: 1.2857em;
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
    inline-size: 2.8333em;
    min-inline-size: 2.8333em;
    padding-inline: 4px 8px;
    background: var(--_paper);
    color: var(--_soft);
    font-size: 0.8571em;
  }
  .preview .lead {
    position: sticky;
    z-index: 1;
    inset-inline-start: 2.4286em;
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
    font-size: 0.8571em;
    line-height: 1.3333em;
  }
  .preview .role {
    color: var(--_now);
    font-weight: 600;
  }
  .preview td > span:first-child {
    display: block;
    inline-size: fit-content;
    max-inline-size: 15.7143em;
    margin-inline-start: auto;
    overflow: hidden;
    text-overflow: ellipsis;
  }
  .preview .lead > span:first-child {
    max-inline-size: 8.5714em;
  }
  .preview .line,
  .preview .line > span:first-child {
    max-inline-size: min(76vw, 45.7143em);
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
    font: 400 0.9286em/1.2308em var(--_sans);
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
    font-size: 0.8571em;
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
  @media (forced-colors: active) {
    .preview td.asked {
      border-block-end: 2px dashed;
    }
    .preview td.problem {
      outline: 2px solid;
      outline-offset: -2px;
    }
  }
`;
