import { css } from 'lit';
import { setStyles } from '../bumpline-geometry/set-list.styles.js';
import { sliderStyles } from '../controls/slider.js';
import { numbersStyles } from '../controls/table.js';
import { drawingStyles } from '../drawing/render.js';
import { whereStyles } from '../inputs/where.styles.js';
import { partsStyles } from '../parts/parts.styles.js';
import { sharedBodyStyles, twoColumnStyles } from '../theme/body.styles.js';
import { doubtStyles } from '../theme/doubt.styles.js';
import { sheetStyles } from '../theme/sheet.styles.js';
import { tableScrollStyles } from '../theme/table-scroll.styles.js';

const own = css`
  .rest {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    align-content: start;
    gap: 14px;
    min-inline-size: 0;
  }
  .column section,
  .rest section {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 6px;
  }
  .column section p,
  .rest section p {
    margin: 0;
  }
  .roll-ways .ways {
    display: flex;
    flex-wrap: wrap;
    column-gap: 16px;
  }
  .roll-ways [aria-pressed='true'] {
    font-weight: 600;
    text-decoration: none;
  }
  .of-roll {
    color: var(--_soft);
    white-space: nowrap;
  }
  .asked-of-turn {
    margin: 0;
    padding: 0;
    color: var(--_soft);
    font-size: 0.875em;
    list-style: none;
  }
  .asked-of-turn li {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    justify-content: space-between;
    column-gap: 12px;
  }
  .asked-of-turn .text-button {
    text-align: end;
  }
  .turn > section {
    margin-block-end: 6px;
  }
  .both-wheels .note,
  .setups .note {
    margin-block-start: 6px;
  }
  .wanted p {
    margin: 0 0 6px;
  }
  .bars {
    display: grid;
    grid-template-columns: max-content max-content minmax(0, 1fr);
    column-gap: 8px;
    padding-block-end: 10px;
    font-size: 0.8125em;
    line-height: 1.35;
  }
  .bars-name {
    grid-column: 1 / -1;
    font-size: 1.0769em;
  }
  .bars.now .bars-name {
    color: var(--_now);
    font-weight: 600;
  }
  .bars .size {
    text-align: end;
    font-variant-numeric: tabular-nums lining-nums;
  }
  .track {
    position: relative;
    background: linear-gradient(var(--_hair), var(--_hair)) var(--zero) / 1px 100% no-repeat;
  }
  .track i {
    position: absolute;
    inset-block: 0.2em;
    min-inline-size: 1px;
    background: var(--_soft);
  }
  .travel i,
  .steer i {
    background: var(--_now);
  }
  .roll i,
  .tyre i {
    background: var(--_limit);
  }
  .track u {
    position: absolute;
    inset-block: 0;
    margin-inline-start: -1.5px;
    border-inline-start: 3px solid var(--_ink);
  }
  .figures {
    inline-size: 100%;
    border-collapse: collapse;
    font-size: 0.875em;
    line-height: 1.35;
    font-variant-numeric: tabular-nums lining-nums;
  }
  .figures caption {
    text-align: start;
    color: var(--_soft);
  }
  .figures th,
  .figures td {
    padding: 5px 0 5px 10px;
    border-block-end: 1px solid var(--_hair);
    text-align: end;
    vertical-align: baseline;
  }
  .figures th {
    font-weight: 400;
  }
  .figures thead th {
    font-weight: 600;
    vertical-align: bottom;
  }
  .figures th:first-child {
    padding-inline-start: 0;
    text-align: start;
    overflow-wrap: anywhere;
  }
  .figures td {
    white-space: nowrap;
  }
  .figures .now > * {
    color: var(--_now);
    font-weight: 600;
  }
  @container (min-width: 47.5em) {
    .body {
      grid-template-rows: auto 1fr;
    }
    .column {
      grid-area: 1 / 2 / 3 / 3;
    }
  }
  @media print {
    .sets .add-set,
    .sets .pick,
    .asked-of-turn button,
    .roll-ways button,
    .enter-stop {
      display: none;
    }
    .track i,
    .track {
      print-color-adjust: exact;
    }
  }
  @media (forced-colors: active) {
    .track i {
      forced-color-adjust: none;
      background: CanvasText;
    }
    .track u {
      border-color: Highlight;
    }
  }
`;

export const bodyStyles = [
  tableScrollStyles,
  drawingStyles,
  sliderStyles,
  numbersStyles,
  sheetStyles,
  whereStyles,
  doubtStyles,
  sharedBodyStyles,
  twoColumnStyles,
  partsStyles,
  setStyles,
  own,
];
