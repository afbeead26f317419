import { css } from 'lit';
import { stackStyles } from '../chart/stack.styles.js';
import { numbersStyles } from '../controls/table.js';
import { drawingStyles } from '../drawing/render.js';
import { whereStyles } from '../inputs/where.styles.js';
import { partsStyles } from '../parts/parts.styles.js';
import { sharedBodyStyles, twoColumnStyles } from '../theme/body.styles.js';
import { doubtStyles } from '../theme/doubt.styles.js';
import { sheetStyles } from '../theme/sheet.styles.js';
import { setStyles } from './set-list.styles.js';

const own = css`
  .under {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 10px;
    min-inline-size: 0;
  }
  .views {
    display: flex;
    gap: 6px;
    margin: 0;
    padding: 0;
    border: 0;
  }
  .views .button {
    flex: 1;
  }
  .views .button[aria-pressed='true'] {
    border-color: var(--_now);
    background: var(--_now-wash);
    color: var(--_now);
    font-weight: 600;
  }
  /* Who has no mouse has no keyboard at hand either. */
  @media (hover: none) {
    .by-keys {
      display: none;
    }
  }
  .corner-json label {
    display: block;
    margin-block-end: 4px;
  }
  .corner-json .json-text {
    display: block;
    inline-size: 100%;
    block-size: 15em;
    padding: 6px 8px;
    border: 1px solid var(--_hair);
    border-radius: 4px;
    background: var(--_sheet);
    color: var(--_ink);
    font: 400 0.8125em/1.4 ui-monospace, monospace;
    text-align: start;
  }
  .pasted {
    margin-block-end: 8px;
  }
  .pasted p {
    margin: 0;
    font-weight: 600;
  }
  .pasted ul {
    margin: 2px 0 8px;
    padding: 0;
    list-style: none;
    font-size: 0.9375em;
  }
  .pasted li {
    padding-block: 2px;
    border-block-end: 1px solid var(--_hair);
    overflow-wrap: anywhere;
  }
  .pasted-rows li {
    display: flex;
    flex-wrap: wrap;
    gap: 0 10px;
    justify-content: space-between;
  }
  .pasted-rows b {
    font-weight: 400;
    font-variant-numeric: tabular-nums;
  }
  .pasted-not li {
    padding-inline-start: 8px;
    border-inline-start: 3px solid var(--_contact);
  }
  .corner-json .actions {
    margin-block-end: 10px;
  }
  .legend {
    display: flex;
    flex-wrap: wrap;
    gap: 2px 14px;
    margin: 0;
    padding: 0;
    list-style: none;
    font-size: 0.875em;
  }
  .legend li {
    display: flex;
    gap: 6px;
    align-items: center;
  }
  .legend .now {
    color: var(--_now);
  }
  @media print {
    .views,
    .note:has(.by-keys),
    .sets .add-set {
      display: none;
    }
  }
`;

export const bodyStyles = [
  drawingStyles,
  stackStyles,
  numbersStyles,
  sheetStyles,
  whereStyles,
  partsStyles,
  doubtStyles,
  sharedBodyStyles,
  twoColumnStyles,
  setStyles,
  own,
];
