import { css } from 'lit';

/** The grid scrolls within itself; heights and passes stay in sight, keys below are a thumb's size. */
export const gridStyles = css`
  .reading-grid {
    display: grid;
    gap: 8px;
    min-inline-size: 0;
    padding-block-start: 4px;
  }
  .grid-scroll {
    max-block-size: min(18.75em, 42vh);
    overflow: auto;
    overscroll-behavior-x: contain;
    border: 1px solid var(--_hair);
    border-radius: 3px;
    background: var(--_sheet);
  }
  .reading-grid table {
    border-collapse: separate;
    border-spacing: 0;
    font-variant-numeric: tabular-nums;
  }
  .reading-grid th,
  .reading-grid td {
    padding: 0;
    font-weight: 400;
    border-block-end: 1px solid color-mix(in srgb, var(--_hair) 45%, transparent);
  }
  .reading-grid thead th {
    position: sticky;
    z-index: 2;
    inset-block-start: 0;
    background: var(--_paper);
    border-block-end: 1px solid var(--_hair);
    color: var(--_soft);
    font-size: 0.875em;
  }
  .reading-grid tr > :first-child {
    position: sticky;
    z-index: 1;
    inset-inline-start: 0;
    background: var(--_paper);
    border-inline-end: 1px solid var(--_hair);
  }
  .reading-grid thead tr > :first-child {
    z-index: 3;
  }
  .reading-grid .cell {
    inline-size: 4.4706em;
    block-size: max(44px, 2.5882em);
    padding: 0 8px;
    border: 0;
    background: none;
    color: var(--_ink);
    font: 500 1.0625em/1 var(--_sans);
    font-variant-numeric: tabular-nums;
    text-align: end;
  }
  .reading-grid .pairs td .cell {
    inline-size: 8.25em;
  }
  .reading-grid .becomes {
    display: block;
    padding: 0 8px 6px;
    margin-block-start: -6px;
    color: var(--_soft);
    font-size: 0.875em;
    text-align: end;
  }
  .reading-grid .pairs .pass-name {
    inline-size: auto;
  }
  .reading-grid th .cell {
    inline-size: 3.7647em;
    font-weight: 400;
  }
  .reading-grid .cell::placeholder {
    color: var(--_soft);
    font-style: italic;
    opacity: 1;
  }
  .reading-grid .cell:focus {
    outline: 3px solid var(--_now);
    outline-offset: -3px;
    background: var(--_now-wash);
  }
  .reading-grid .cell[aria-invalid='true'] {
    box-shadow: inset 0 0 0 2px var(--_contact);
  }
  .again-row > th {
    padding-inline: 8px;
    color: var(--_soft);
    font-size: 0.875em;
    text-align: end;
  }
  .again-row > * {
    border-block-start: 1px solid var(--_hair);
  }
  .pass-name,
  .add-pass,
  .remove-row {
    min-inline-size: 44px;
    min-block-size: 44px;
    padding: 0 6px;
    border: 0;
    background: none;
    color: var(--_now);
    font: 500 0.875em/1.2 var(--_sans);
    cursor: pointer;
  }
  .pass-name {
    inline-size: 5.4286em;
    text-align: end;
    text-decoration: underline dotted;
    text-underline-offset: 4px;
    overflow-wrap: anywhere;
  }
  .add-pass {
    font-size: 1.375em;
  }
  .remove-row {
    color: var(--_soft);
    font-size: 1.125em;
  }
  .pass-panel {
    padding: 4px 10px;
    border: 1px solid var(--_hair);
    border-radius: 3px;
  }
  .keys {
    display: grid;
    grid-template-columns: repeat(4, minmax(0, 1fr));
    gap: 6px;
    max-inline-size: 23.75em;
    /* In reach while the grid is in sight. */
    position: sticky;
    z-index: 4;
    inset-block-end: 0;
    padding-block: 6px calc(6px + env(safe-area-inset-bottom, 0px));
    background: var(--_paper);
  }
  .key {
    min-block-size: 50px;
    padding: 0;
    border: 1px solid var(--_soft);
    border-radius: 6px;
    background: var(--_sheet);
    color: var(--_ink);
    font: 500 1.375em/1 var(--_sans);
    touch-action: manipulation;
    user-select: none;
    -webkit-user-select: none;
    cursor: pointer;
  }
  .key.tall {
    grid-area: 3 / 4 / 5 / 5;
    border-color: var(--_now);
    background: var(--_now);
    color: var(--_sheet);
    font-size: 1.0625em;
  }
  .key:active {
    background: var(--_now-wash);
    color: var(--_ink);
  }
  .phone .live {
    margin: 0 0 8px;
    font-size: 1.25em;
  }
  @media print {
    .keys,
    .phone,
    .own-keys {
      display: none;
    }
    .grid-scroll {
      max-block-size: none;
      overflow: visible;
    }
  }
  @media (forced-colors: active) {
    .key.tall {
      border-color: Highlight;
      forced-color-adjust: none;
      background: Highlight;
      color: HighlightText;
    }
    .reading-grid .cell[aria-invalid='true'] {
      border: 2px solid;
    }
  }
`;
