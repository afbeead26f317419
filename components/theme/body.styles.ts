import { css } from 'lit';
import { compactStyles } from './compact.styles.js';

const own = css`
  .quiet {
    min-block-size: 44px;
    padding: 0 2px;
    border: 0;
    border-radius: 4px;
    background: none;
    color: var(--_soft);
    font: 500 0.875em/1 var(--_sans);
    cursor: pointer;
  }
  /* As wide together as the room that is kept for them, whatever the font. */
  .head .quiet {
    inline-size: 3.5714em;
    font-size: 1em;
  }
  .head .quiet + .quiet {
    inline-size: 5.9286em;
  }
  .quiet option {
    background: var(--_sheet);
    color: var(--_ink);
  }
  /* A value of the sentence that opens a field when it is pressed. */
  .asked {
    min-block-size: 44px;
    min-inline-size: 44px;
    margin-block: calc((1.3636em - max(44px, 1.3636em)) / 2);
    padding: 0;
    border: 0;
    background: none;
    color: var(--_ink);
    font: inherit;
    font-weight: 600;
    font-variant-numeric: tabular-nums lining-nums;
    text-decoration: underline dotted 1.5px;
    text-underline-offset: 4px;
    white-space: nowrap;
    cursor: pointer;
  }
  /* Large text on a phone. */
  @container (max-width: 18em) {
    .asked {
      white-space: normal;
    }
  }
  .sentence .asked:focus-visible {
    position: relative;
    z-index: 1;
    outline-offset: calc((1.3636em - max(44px, 1.3636em)) / 2 - 3px);
  }
  .fitted-choice {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 6px;
    font-size: 0.9375em;
  }
  .fitted-choice select {
    min-inline-size: 0;
    max-inline-size: 100%;
    color: var(--_now);
    font-size: 0.9375em;
  }
  .problems {
    padding: 8px 12px;
    border: 1px solid var(--_contact);
    border-inline-start-width: 4px;
    border-radius: 3px;
    font-size: 0.9375em;
  }
  .queries {
    margin: 0;
    padding: 8px 12px;
    border: 1px solid var(--_limit);
    border-inline-start-width: 4px;
    border-radius: 3px;
    font-size: 0.9375em;
    list-style: none;
  }
  .queries li + li {
    margin-block-start: 8px;
  }
  /* For the author of the page: quieter than what concerns the reader. */
  .queries.attributes {
    padding: 2px 8px;
    border-width: 0 0 0 4px;
    font-size: 0.875em;
    color: var(--_soft);
  }
  .queries.attributes li + li {
    margin-block-start: 0;
  }
  .queries .button {
    display: block;
    margin-block-start: 6px;
  }
  .problems ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .problems .button {
    display: block;
    margin-block-start: 6px;
  }
  .problems li + li {
    margin-block-start: 6px;
  }
  .problems p {
    margin: 6px 0 0;
    color: var(--_soft);
    font-size: 0.875em;
  }
  .body,
  .column {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    align-content: start;
    gap: 10px;
    min-inline-size: 0;
  }
  .stacked {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: inherit;
    min-inline-size: 0;
  }
  /* Pictures only: text beside them keeps its contrast. */
  .sheet[data-state='stale'] .drawing svg,
  .sheet[data-state='stale'] .chart-sheet {
    opacity: 0.7;
  }
  .sheet[data-state='stale'] .hint,
  .sheet[data-state='stale'] .slider-ticks {
    visibility: hidden;
  }
  .sheet[data-state='stale'] .chart-head {
    visibility: hidden;
  }
  .hint {
    margin: 0;
    padding: 2px 0 2px 10px;
    border-inline-start: 3px solid var(--_next);
    font-size: 0.9375em;
  }
  .at-cursor {
    min-block-size: 1.4286em;
    margin: 2px 0 0;
    font-size: 0.875em;
    line-height: 1.4286em;
    color: var(--_soft);
  }
  .actions,
  /* Together: neither of the two stands in a row of its own. */
  .link-tools {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 12px;
    align-items: center;
  }
  .link-said:not(:empty) {
    font-size: 0.875em;
    color: var(--_soft);
  }
  .link-text {
    inline-size: 100%;
    font: 400 0.8125em/1.3 monospace;
  }
  .more {
    /* Three folded lists, before they are there. */
    min-block-size: 8.5em;
    border-block-start: 1px solid var(--_hair);
  }
  details {
    border-block-end: 1px solid var(--_hair);
  }
  summary {
    display: list-item;
    min-block-size: 44px;
    padding-block: 11px;
    line-height: 1.375em;
    color: var(--_now);
    cursor: pointer;
  }
  .note {
    margin: 0 0 8px;
    font-size: 0.875em;
    color: var(--_soft);
  }
  dl {
    margin: 0 0 8px;
    font-size: 0.9375em;
  }
  dl > div {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    gap: 0 12px;
    padding-block: 3px;
  }
  dd {
    margin: 0;
    min-inline-size: 0;
    font-weight: 600;
    /* Numbers do not break, unless they would be cut off. */
    overflow-wrap: anywhere;
  }
  /* Paper cannot be pressed: what is a tool is not on it, and a value that opens something is a value. */
  @media print {
    .head .quiet,
    .actions,
    .button,
    .text-button,
    .numbers-copy,
    .slider,
    .take-along,
    .corner-json {
      display: none;
    }
    :is(.least-cost, .search-inputs, .wanted, .steered, .turn, .setups):not([open]) {
      display: none;
    }
    /* Nothing stands in it yet. */
    li:has(> .input-row .enter),
    li:has(> .input-row > .name:last-child) {
      display: none;
    }
    .more {
      min-block-size: 0;
    }
    details {
      border: 0;
    }
    summary {
      min-block-size: 0;
      padding-block: 8px 4px;
      list-style: none;
      color: var(--_ink);
      font-weight: 600;
      break-after: avoid;
    }
    summary::-webkit-details-marker {
      display: none;
    }
    .sheet select {
      appearance: none;
      block-size: auto;
      min-block-size: 0;
      padding: 0;
      border: 0;
      background: none;
      color: var(--_ink);
    }
    .drop,
    .asked {
      background: none;
      color: var(--_ink);
      text-decoration: none;
    }
    .input-row {
      min-block-size: 0;
      padding-block: 2px;
    }
    .input-row .value::after {
      content: none;
    }
  }
`;

/** What lies under the sentence of every element: problems, hints, buttons, folded lists. */
export const sharedBodyStyles = css`
  ${own}
  ${compactStyles}
`;

const twoColumns = css`
  .body {
    grid-template-columns: minmax(0, 1.05fr) minmax(0, 1fr);
    grid-template-rows: auto 1fr;
    gap: 20px 32px;
  }
  .column {
    grid-area: 1 / 2 / 3 / 3;
  }
  .body > .cautions {
    align-self: start;
  }
  .no-drawing .column {
    grid-area: 1 / 1 / 2 / 3;
  }
`;

/** Drawing and column side by side where there is room. */
export const twoColumnStyles = css`
  .body.coming,
  .body.coming + .under {
    visibility: hidden;
  }
  .drawing-place {
    min-inline-size: 0;
  }
  @container (min-width: 47.5em) {
    ${twoColumns}
  }
  /* A phone on its side: the slider stands beside the drawing, right under the answer. */
  @media (max-height: 30em) {
    @container (min-width: 36em) {
      ${twoColumns}
    }
  }
`;
